import type { Point } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';
import type { BrokenRule } from '../result.ts';
import type { HandPlace } from './byHand.ts';
import { HALF_STAKE } from './rules.ts';
import { spliceReach } from './splices.ts';

/** A run as it is held once all is said: what its rules are measured on. */
export interface HeldRun {
  readonly run: string;
  readonly length: Grid;
  readonly spacing: Grid;
  readonly fromEnd: Grid;
  /** A whole circle: no ends. */
  readonly round: boolean;
  /** Along the run, in order. */
  readonly places: readonly Grid[];
  readonly splices: readonly Grid[];
  readonly removed: readonly HandPlace[];
  /** The widest that a gap may be over the spacing by rounding. */
  readonly closeness: Grid;
}

type At = (along: Grid) => Point;

/** The rules that stakes left out by hand, and splices where there is no room, leave broken: once each. */
export function brokenOn(run: HeldRun, at: At): readonly BrokenRule[] {
  const rules = [
    ...run.removed.flatMap((stake) => aboutRemoved(run, stake, at)),
    ...run.splices.flatMap((splice) => aboutSplice(run, splice, at)),
  ];
  // Two left out side by side leave one gap.
  const seen = new Set<string>();
  return rules.filter(({ rule, found, at: { x, y } }) => {
    const key = rule === 'splice' ? `${rule} ${x} ${y}` : `${rule} ${found}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function aboutRemoved(
  { run, length, spacing, fromEnd, round, places, closeness }: HeldRun,
  { id, along }: HandPlace,
  at: At,
): readonly BrokenRule[] {
  const next = places.find((place) => place > along);
  const before = places.findLast((place) => place < along);
  if (places.includes(along)) return [];
  const say = (rule: BrokenRule['rule'], found: Grid, allowed: Grid): BrokenRule[] =>
    found > allowed + closeness ? [{ run, rule, at: at(along), found, allowed, hand: id }] : [];
  if (round) {
    const from = before ?? (places.at(-1) ?? 0) - length;
    const to = next ?? (places[0] ?? length) + length;
    return say('spacing', to - from, spacing);
  }
  if (places.length === 0)
    return say('from-end', length, Math.min(fromEnd, Math.floor(length / 2)));
  if (before === undefined) return say('from-end', next!, fromEnd);
  if (next === undefined) return say('from-end', length - before, fromEnd);
  return say('spacing', next - before, spacing);
}

function aboutSplice(
  { run, length, fromEnd, places, removed }: HeldRun,
  splice: Grid,
  at: At,
): readonly BrokenRule[] {
  const allowed = spliceReach(fromEnd);
  const before = places.findLast((place) => place <= splice - HALF_STAKE) ?? 0;
  const after = places.find((place) => place >= splice + HALF_STAKE) ?? length;
  return [splice - before, after - splice]
    .filter((found) => found > allowed)
    .map((found) => {
      const near = removed.find(({ along }) => Math.abs(along - splice) <= allowed);
      return {
        run,
        rule: 'splice' as const,
        at: at(splice),
        found,
        allowed,
        ...(near ? { hand: near.id } : {}),
      };
    });
}
