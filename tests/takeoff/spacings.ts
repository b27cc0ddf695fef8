import { defaultSpacings } from '../../src/job/defaults.ts';
import type { Practices } from '../../src/job/job.ts';
import type { Grid } from '../../src/units/grid.ts';

/** One stake spacing for every size of board. */
export function spacings(spacing: Grid): Pick<Practices, 'stakeSpacings'> {
  const sizes = Object.keys(defaultSpacings());
  const all = Object.fromEntries(sizes.map((size) => [size, spacing]));
  return { stakeSpacings: all as Practices['stakeSpacings'] };
}
