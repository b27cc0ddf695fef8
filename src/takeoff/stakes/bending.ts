import type { BoardSize, Practices } from '../../job/job.ts';
import { type Grid, METRE } from '../../units/grid.ts';
import { DRESSED } from '../forms/rules.ts';
import type { Governs } from '../result.ts';

/** Standard gravity, m/s²: what a pound of force and a pascal of fresh concrete are reckoned with. */
export const GRAVITY = 9.80665;

/**
 * A knock in the middle between two stakes: 150 lb, a foot or the end of a screed. Newtons; common practice, no source.
 */
export const KNOCK = 150 * 0.45359237 * GRAVITY;

/**
 * A board on edge as a beam that concrete pushes sideways: it bends flat, about its weak axis.
 * Metres⁴ and metres³: d·t³ ÷ 12 and d·t² ÷ 6, with t its thickness and d its depth on edge.
 */
export interface Section {
  readonly inertia: number;
  readonly modulus: number;
}

export function sectionOf(board: BoardSize): Section {
  const t = DRESSED[board].thickness / METRE;
  const d = DRESSED[board].depth / METRE;
  return { inertia: (d * t ** 3) / 12, modulus: (d * t ** 2) / 6 };
}

/** What fresh concrete does to a form board. */
export interface Push {
  /** At the bottom of the board, Pa. */
  readonly pressure: number;
  /** All of it on each metre of the form, N/m. */
  readonly thrust: number;
}

/**
 * Fresh concrete as a fluid as deep as the board: w·h at its bottom, w·h² ÷ 2 on each length of it. The formulas for walls
 * allow less than w·h only where the concrete rises for so long that it stiffens below: at the edge of a slab, never.
 * @param freshWeight kg/m³
 */
export function pushOf(board: BoardSize, freshWeight: number): Push {
  const h = DRESSED[board].depth / METRE;
  const w = freshWeight * GRAVITY;
  return { pressure: w * h, thrust: (w * h * h) / 2 };
}

/** The widest gap between stakes by each rule, whole grid units; the least of them governs. */
export interface SpacingLimits {
  readonly practice: Grid;
  /** The board bows out no more than the practice allows. */
  readonly deflection: Grid;
  /** … no more than that share of the spacing. */
  readonly share: Grid;
  /** The board's bending stress stays within what it may bear. */
  readonly bending: Grid;
  readonly spacing: Grid;
  readonly governs: Exclude<Governs, 'curve'>;
}

/**
 * The spacing of practice, capped by what the board bears: a beam continuous over three spans or more, with the thrust q
 * spread evenly on it. Moment q·l² ÷ 10, deflection q·l⁴ ÷ (145·E·I); from statics, in the units of the formwork texts
 * l = 10.95·√(F·S ÷ w), 3.23·⁴√(E·I ÷ w) for 1/16 in and 1.69·³√(E·I ÷ w) for 1/360.
 * Undefined when a setting is nothing or less, or no number.
 */
export function spacingLimits({
  formBoard,
  stakeSpacings,
  bending: rule,
}: Practices): SpacingLimits | undefined {
  const { deflection, deflectionShare, elasticity, stress, freshWeight } = rule;
  const practice = stakeSpacings[formBoard];
  const all = [practice, deflection, deflectionShare, elasticity, stress, freshWeight];
  if (!all.every((value) => value > 0 && Number.isFinite(value))) return undefined;
  const { inertia, modulus } = sectionOf(formBoard);
  const { thrust } = pushOf(formBoard, freshWeight);
  const stiffness = (145 * elasticity * inertia) / thrust;
  const limits = {
    practice,
    deflection: onGrid(((deflection / METRE) * stiffness) ** (1 / 4)),
    share: onGrid(Math.cbrt(deflectionShare * stiffness)),
    bending: onGrid(Math.sqrt((10 * stress * modulus) / thrust)),
  };
  const spacing = Math.min(...Object.values(limits));
  // A spacing of nothing can't be staked.
  if (spacing < 1) return undefined;
  const governs = (
    [
      ['practice', limits.practice],
      ['deflection', limits.deflection],
      ['deflection-share', limits.share],
      ['bending', limits.bending],
    ] as const
  ).find(([, limit]) => limit === spacing)![0];
  return { ...limits, spacing, governs };
}

function onGrid(metres: number): Grid {
  return Math.floor(Math.min(metres * METRE, Number.MAX_SAFE_INTEGER));
}

/** How far a board bows between two stakes under the thrust of the concrete, as one span alone: 5·q·l⁴ ÷ (384·E·I). */
export function bowUnderThrust(
  board: BoardSize,
  spacing: Grid,
  { elasticity, freshWeight }: Practices['bending'],
): number {
  const { thrust } = pushOf(board, freshWeight);
  const l = spacing / METRE;
  return ((5 * thrust * l ** 4) / (384 * elasticity * sectionOf(board).inertia)) * METRE;
}

/** … under a knock in the middle, as one span alone: P·l³ ÷ (48·E·I). Grid units, a float. */
export function bowUnderKnock(
  board: BoardSize,
  spacing: Grid,
  { elasticity }: Practices['bending'],
): number {
  const l = spacing / METRE;
  return ((KNOCK * l ** 3) / (48 * elasticity * sectionOf(board).inertia)) * METRE;
}
