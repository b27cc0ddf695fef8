import type { FeatureKind } from '../../job/job.ts';

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
  } satisfies Record<FeatureKind, string>,
  radius: (length: string) => `R ${length}`,
  diameter: (length: string) => `Ø ${length}`,
  /** Two sides of a rectangular block-out. */
  sides: (one: string, other: string) => `${one} × ${other}`,
  /** The straight line between the ends of an arc. */
  chord: (length: string) => `${length} chord`,
  sheetMark: (sheet: number) => `S${sheet}`,
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
