import { practicesEdgeEn } from './practicesEdgeEn.ts';
import { practicesFormsEn } from './practicesFormsEn.ts';
import { practicesJointsEn } from './practicesJointsEn.ts';
import { practicesMixEn } from './practicesMixEn.ts';
import { practicesOrderEn } from './practicesOrderEn.ts';
import { practicesPlacingEn } from './practicesPlacingEn.ts';
import { practicesPourDayEn } from './practicesPourDayEn.ts';
import { practicesSteelEn } from './practicesSteelEn.ts';

/** What each practice is, in words, and how far practitioners differ. Sources are in words, for people. */
export const practicesEn = {
  title: 'Practices',
  intro: 'Your own rules. Every figure says which of them it used.',
  of: (place: string) => `Practices: ${place}`,
  range: (least: string, most: string) => `Must be from ${least} to ${most}.`,
  whole: 'Must be a whole number.',
  differs: 'How others do it',
  takeFormDepth: (depth: string) => `Use the form’s depth, ${depth}`,
  depthDiffers: (thickness: string, depth: string) =>
    `The board and its gap give ${depth}; the volume is figured at ${thickness}.`,
  units: {
    plain: '',
    ...practicesJointsEn.units,
    ...practicesPourDayEn.units,
    ...practicesOrderEn.units,
    ...practicesPlacingEn.units,
    psi: 'psi',
    megapascals: 'MPa',
    millionPsi: 'million psi',
    gigapascals: 'GPa',
    poundsPerCubicFoot: 'lb/ft³',
    kgPerCubicMetre: 'kg/m³',
    poundsPer100: 'lb per 100 ft²',
    kgPerSquareMetre: 'kg/m²',
  },
  groups: {
    boards: 'Boards',
    edge: 'Edge and base',
    stakes: 'Stakes',
    bearing: 'What the board bears',
    fastening: 'Nails or screws',
    ...practicesOrderEn.groups,
    ...practicesPlacingEn.groups,
  },
  choices: {
    'duplex-nails': 'Duplex nails',
    screws: 'Screws',
    ...practicesJointsEn.choices,
    ...practicesSteelEn.choices,
    ...practicesMixEn.choices,
    ...practicesOrderEn.choices,
    ...practicesPlacingEn.choices,
  },
  sign: 'Type the sign alone, like $: four letters at most, no digits.',
  fields: {
    thickness: { label: 'Thickness' },
    closeEnough: { label: 'Close enough' },
    ...practicesEdgeEn.fields,
    ...practicesFormsEn.fields,
    ...practicesJointsEn.fields,
    ...practicesSteelEn.fields,
    ...practicesPourDayEn.fields,
    ...practicesOrderEn.fields,
    ...practicesPlacingEn.fields,
    mixName: { label: 'Mix' },
    bagWeight: { label: 'Bag weight' },
    bagYield: { label: 'One bag makes' },
    mainMix: { label: 'Main mix' },
    mainParts: { label: 'Parts of the main mix' },
    otherMix: { label: 'Blended with' },
    otherParts: { label: 'Parts of the other' },
    batchVolume: { label: 'Mixer holds, mixed' },
    ...practicesMixEn.fields,
  },
  mix: practicesMixEn.mix,
  noOther: 'nothing: one mix alone',
  addMix: 'Add a mix',
  removeMix: (name: string) => `Take out ${name}`,
  mixInUse: 'The blend uses this mix. Choose another one first.',
  newMix: 'Another mix',
  nameNeeded: 'Type the name of the mix, as printed on the bag.',
  mixes: 'Mixes, as printed on your bags',
  blend: 'Blend',
  allowance: 'Allowance',
  boards: {
    '1x4': '1×4 (3 1/2 in deep)',
    '1x6': '1×6 (5 1/2 in deep)',
    '2x4': '2×4 (3 1/2 in deep)',
    '2x6': '2×6 (5 1/2 in deep)',
    '2x8': '2×8 (7 1/4 in deep)',
    '2x10': '2×10 (9 1/4 in deep)',
    '2x12': '2×12 (11 1/4 in deep)',
  },
  notes: {
    thickness: {
      says: '“4 inch” often means 3 1/2: a 2×4 on edge is 3 1/2 in deep unless it is lifted off the ground. Decide which, and the ticket shows both.',
      source: 'Common practice; dressed lumber sizes are from the lumber standard.',
    },
    closeEnough: {
      says: 'Two edges nearer than this are taken as one line, because two tape readings of one edge differ. The sliver between them is listed, not hidden.',
      source: 'Our own default, no source.',
    },
    ...practicesEdgeEn.notes,
    ...practicesFormsEn.notes,
    ...practicesJointsEn.notes,
    ...practicesSteelEn.notes,
    ...practicesMixEn.notes,
    ...practicesPourDayEn.notes,
    ...practicesOrderEn.notes,
    ...practicesPlacingEn.notes,
    bags: {
      says: 'Yield is what the bag says: 80 lb makes about 0.60 ft³, 60 lb 0.45, 50 lb 0.375, 40 lb 0.30. Pages that promise 2/3 ft³ are 11 % too hopeful.',
      source: 'As printed on bags and in published tables.',
    },
    waste: {
      says: 'Seen from 3 % on the ground to 20 %: 5 % footings, 8 % slabs, 10 % in a military manual, 15 % and more by contractors. On a small job a share is less than a bag, so the larger of the share and a bag count is used.',
      source: 'Published manuals disagree; a setting, never part of the net.',
    },
    batch: {
      says: 'What the drum holds as mixed concrete, not the drum’s full size.',
      source: 'Common practice, no source.',
    },
  },
};
