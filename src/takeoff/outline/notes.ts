import type { Point } from '../../geometry/point.ts';
import type { Feature } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { Note, Quantity } from '../figure.ts';
import type { ShapeFault } from './shapes.ts';

/** Every code that the outline can give; the words files hold a sentence for each. */
export const OUTLINE_NOTE_CODES = [
  // stop
  'no-pad',
  'broken-number',
  'too-few-corners',
  'not-closed',
  'no-size',
  'no-area',
  'arc-without-chord',
  'crosses-itself',
  'too-large',
  'pad-inside-existing-slab',
  'pad-covered',
  'clip-failed',
  // caution
  'zone-ignored',
  'line-ignored',
  'separate-pieces',
  'pads-overlap',
  'adds-nothing',
  'patch-apart',
  'building-line-crosses-pad',
  'block-out-outside',
  'narrow-neck',
  'clip-retried',
  'second-engine',
  // assumption
  'close-enough',
  'slivers-dissolved',
] as const;

export type OutlineNoteCode = (typeof OUTLINE_NOTE_CODES)[number];

interface About {
  readonly features?: readonly string[];
  readonly at?: readonly Point[];
  readonly facts?: Readonly<Record<string, Quantity>>;
}

/** More places than this don't make a note clearer. */
const PLACES = 12;

export function outlineNote(
  code: OutlineNoteCode,
  weight: Note['weight'],
  about: About = {},
): Note {
  const { features, at, facts } = about;
  return {
    code,
    weight,
    station: 'ground',
    ...(features && features.length > 0 ? { features } : {}),
    ...(at && at.length > 0 ? { at: at.slice(0, PLACES).map(({ x, y }) => ({ x, y })) } : {}),
    ...(facts ? { facts } : {}),
  };
}

/** What is wrong with a feature's shape, as a note that stops the takeoff. */
export function faultNote(feature: Feature, fault: ShapeFault): Note {
  const features = [feature.id];
  switch (fault.code) {
    case 'too-few-corners':
      return outlineNote(fault.code, 'stop', {
        features,
        facts: { corners: count(fault.corners, 'corner') },
      });
    case 'too-large':
      return outlineNote(fault.code, 'stop', { features, facts: { extent: length(fault.extent) } });
    case 'crosses-itself':
    case 'no-area':
    case 'arc-without-chord':
      return outlineNote(fault.code, 'stop', { features, at: fault.at });
    default:
      return outlineNote(fault.code, 'stop', { features });
  }
}

export function length(grid: Grid): Quantity {
  return { of: 'length', grid };
}

export function area(grid2: number): Quantity {
  return { of: 'area', grid2 };
}

export function count(number: number, unit: string): Quantity {
  return { of: 'count', count: number, unit };
}
