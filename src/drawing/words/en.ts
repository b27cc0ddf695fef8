import type { FeatureKind, JointUse, Service } from '../../job/job.ts';
import { sectionsEn } from './sectionsEn.ts';
import { timelineEn } from './timelineEn.ts';

/** The few words that stand in drawings. */
export const en = {
  kinds: {
    pad: 'Pad',
    'existing-slab': 'Existing slab',
    'building-line': 'Building',
    steps: 'Steps',
    'block-out': 'Block-out',
    patch: 'Patch',
    'no-stake-zone': 'No stakes',
    'utility-line': 'Utility line',
    joint: 'Joint',
  } satisfies Record<FeatureKind, string>,
  /** A buried line by its name, by what it carries, and short, in the line itself. */
  services: {
    electric: { name: 'Electric line', carries: 'Electric', short: 'ELEC' },
    gas: { name: 'Gas line', carries: 'Gas', short: 'GAS' },
    communication: { name: 'Communication line', carries: 'Communication', short: 'COMM' },
    water: { name: 'Water line', carries: 'Water', short: 'WATER' },
    'reclaimed-water': {
      name: 'Reclaimed water line',
      carries: 'Reclaimed water',
      short: 'RECL',
    },
    sewer: { name: 'Sewer or drain', carries: 'Sewer, drain', short: 'SEWER' },
  } satisfies Record<Service, { readonly [word in 'name' | 'carries' | 'short']: string }>,
  /** Joints by their use, and the letter that stands in the line. */
  joints: {
    control: { name: 'Control joint', letter: 'C' },
    construction: { name: 'Construction joint', letter: 'B' },
    existing: { name: 'Joint of the older slab', letter: 'X' },
  } satisfies Record<JointUse, { readonly [word in 'name' | 'letter']: string }>,
  serviceAndName: (service: string, name: string) => `${service}: ${name}`,
  radius: (length: string) => `R ${length}`,
  diameter: (length: string) => `Ø ${length}`,
  /** Two sides of a rectangular block-out. */
  sides: (one: string, other: string) => `${one} × ${other}`,
  /** The straight line between the ends of an arc. */
  chord: (length: string) => `${length} chord`,
  /** A length that was made longer or shorter by so much, so that its chain adds up. */
  carries: (length: string, by: string) => `${length} ±${by}`,
  /** A piece of mesh, and the sheet or roll that it is cut from. */
  meshMark: (piece: number, form: 'sheet' | 'roll', used: number) =>
    `${piece} · ${form === 'sheet' ? 'S' : 'R'}${used}`,
  /** The same with the size that it is cut to. */
  meshPiece: (mark: string, size: string) => `${mark}: ${size}`,
  /** So many rows of bars of a size, as far apart. */
  bars: (rows: number, size: string, apart: string) => `${rows} ${size} at ${apart}`,
  cornerBar: (size: string, length: string) => `${size} × ${length}`,
  lap: (length: string) => `L ${length}`,
  lapShort: 'L',
  /** Dowels along a seam, in the diameter and length that they have. */
  seam: (mark: string, count: number, diameter: string, length: string) =>
    `${mark}: ${count} × ${diameter} × ${length}`,
  sections: sectionsEn,
  timeline: timelineEn,
  letters: {
    free: 'F',
    'existing-slab': 'E',
    wall: 'W',
    'wall-formed': 'WF',
    steps: 'S',
    'block-out': 'B',
  },
  faults: {
    'crosses-itself': 'Outline crosses itself',
    'no-area': 'Encloses nothing',
    'arc-without-chord': 'Arc without length',
    other: 'Look here',
  },
};

export type DrawingWords = typeof en;
