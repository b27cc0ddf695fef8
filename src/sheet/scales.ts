import type { UnitStyle } from '../job/job.ts';
import { MILLIMETRE } from '../units/grid.ts';

/** A scale as it is printed, and how many mm of ground one mm of paper stands for. */
export interface Scale {
  readonly name: string;
  readonly ratio: number;
}

/** Architectural scales, then the engineer's where a job is larger than a house lot. Largest first. */
const INCH_SCALES: readonly Scale[] = [
  { name: '3" = 1\'-0"', ratio: 4 },
  { name: '1 1/2" = 1\'-0"', ratio: 8 },
  { name: '1" = 1\'-0"', ratio: 12 },
  { name: '3/4" = 1\'-0"', ratio: 16 },
  { name: '1/2" = 1\'-0"', ratio: 24 },
  { name: '3/8" = 1\'-0"', ratio: 32 },
  { name: '1/4" = 1\'-0"', ratio: 48 },
  { name: '3/16" = 1\'-0"', ratio: 64 },
  { name: '1/8" = 1\'-0"', ratio: 96 },
  { name: '1" = 10\'', ratio: 120 },
  { name: '1" = 20\'', ratio: 240 },
  { name: '1" = 40\'', ratio: 480 },
  { name: '1" = 60\'', ratio: 720 },
  { name: '1" = 100\'', ratio: 1200 },
  { name: '1" = 200\'', ratio: 2400 },
];

const METRIC_SCALES: readonly Scale[] = [10, 20, 25, 50, 100, 200, 250, 500, 1000, 2000].map(
  (ratio) => ({ name: `1:${ratio}`, ratio }),
);

export function scalesFor(units: UnitStyle): readonly Scale[] {
  return units === 'metric' ? METRIC_SCALES : INCH_SCALES;
}

/** Scales of sections, the smaller ones for footings alone. Largest first. */
export function sectionScalesFor(units: UnitStyle): readonly Scale[] {
  if (units !== 'metric') return INCH_SCALES.filter(({ ratio }) => ratio <= 48);
  return [5, 10, 20, 25, 50].map((ratio) => ({ name: `1:${ratio}`, ratio }));
}

/**
 * The scale that somebody typed: by its name (`1/2" = 1'-0"`, `1:50`), by its paper alone (`1/2"`, `1/2 in`, `1/2`), or as a
 * ratio in inches too (`1:24`).
 */
export function scaleOf(units: UnitStyle, typed: string): Scale | undefined {
  const plain = typed.replace(/[″”]/g, '"').replace(/\s+/g, ' ').trim();
  const paper = plain.replace(/ ?(in|")$/, '');
  return scalesFor(units).find(
    ({ name, ratio }) => name === plain || plain === `1:${ratio}` || name === `${paper}" = 1'-0"`,
  );
}

export function gridPerMmAt({ ratio }: Scale): number {
  return ratio * MILLIMETRE;
}
