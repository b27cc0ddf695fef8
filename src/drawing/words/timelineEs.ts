import type { timelineEn } from './timelineEn.ts';

export const timelineEs: typeof timelineEn = {
  batches: 'Tanda',
  letters: { placed: 'C', float: 'F', edge: 'V', trowel: 'L', broom: 'E' },
  placed: 'colada',
  float: 'flotada',
  edge: 'orilla volteada',
  trowel: 'con llana',
  broom: 'escobillada',
  bleeding: 'sangrando',
  firstSets: (time: string) => `fragua el primer concreto ${time}`,
  lastPlaced: (time: string) => `último concreto colado ${time}`,
  more: (count: number) => `${count} más en la lista`,
};
