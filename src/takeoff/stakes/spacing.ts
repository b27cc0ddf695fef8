import type { Practices } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { FormRun, Governs } from '../result.ts';
import type { SpacingLimits } from './bending.ts';

/** The widest gap between the stakes of a run, and what sets it. */
export interface RunSpacing {
  readonly spacing: Grid;
  readonly governs: Governs;
}

/**
 * On curves a bent board springs back, and between stakes it lies straight: no wider than the practice for curves, and no
 * wider than lets it stand off the arc by so much.
 */
export function spacingOf(
  run: FormRun,
  limits: SpacingLimits,
  curve: Practices['curve'],
): RunSpacing {
  const { spacing, governs } = limits;
  const arc = run.edges[0]!.arc;
  if (!arc) return { spacing, governs };
  const most = Math.min(curve.spacing, chordOff(arc.radius, curve.flat));
  return most < spacing ? { spacing: most, governs: 'curve' } : { spacing, governs };
}

/**
 * The chord that stands off its arc by `flat` in the middle: 2·√(2·R·f − f²). Stakes that far apart along the arc are
 * nearer than that across, so the board stands off by less. All of the way across where `flat` is the radius or more.
 */
export function chordOff(radius: number, flat: Grid): Grid {
  const f = Math.min(flat, radius);
  return Math.max(1, Math.floor(2 * Math.sqrt(2 * radius * f - f * f)));
}
