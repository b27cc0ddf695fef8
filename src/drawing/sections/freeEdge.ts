import { DRESSED, formDepth } from '../../takeoff/forms/rules.ts';
import type { ThickenedResult } from '../../takeoff/result.ts';
import { HALF_STAKE } from '../../takeoff/stakes/rules.ts';
import { INCH } from '../../units/grid.ts';
import { formatLength } from '../../units/length.ts';
import { area, box, type Cut, type CutFrom, joinedCuts, line } from './cut.ts';
import { lowest, slabOf, steelOf, underSlab } from './slabLayers.ts';

/** A stake is cut below the form's top, so that the screed rides on the form: so much, for the drawing. Common practice. */
const STAKE_BELOW = INCH / 2;

/** A free edge in its form: board, stake behind it, the gap under it and the soil that closes it; thickened when it is. */
export function freeEdge(from: CutFrom): Cut {
  const { job, takeoff, words } = from;
  const { edgeRadius } = job.practices;
  const thickened = takeoff.volume?.thickened;
  return joinedCuts(thickened ? 'thickened' : 'free', [
    underSlab(from, 0, thickened),
    outsideGround(from, thickened),
    slabOf(from, 0, edgeRadius, thickened),
    formOf(from, true),
    steelOf(from, 0, thickened),
    thickened ? trenchOf(from, thickened) : {},
    edgeRadius > 0
      ? {
          flags: [
            {
              at: { x: edgeRadius * 0.3, y: -edgeRadius * 0.3 },
              text: words.sections.radius(formatLength(edgeRadius, job.units)),
            },
          ],
        }
      : {},
  ]);
}

/** The ground that the form stands on, and what is packed against the gap. */
function outsideGround(from: CutFrom, thickened?: ThickenedResult): Partial<Cut> {
  const { job, left, words } = from;
  const { formBoard, gapUnderForm: gap } = job.practices;
  const { thickness: wide, depth } = DRESSED[formBoard];
  const level = -formDepth(formBoard, gap);
  const ground = area('ground', 'earth', box(-left, 0, lowest(from, thickened), level));
  const surface = line('ground', 'outline-block-out', [
    { x: -left, y: level },
    { x: 0, y: level },
  ]);
  if (gap === 0) return { areas: [ground], lines: [surface] };
  // Up to a little over the board's underside.
  const high = -depth + Math.min(INCH / 2, depth / 4);
  const packed = [
    { x: -left * 0.85, y: level },
    { x: 0, y: level },
    { x: 0, y: -depth },
    { x: -wide, y: -depth },
    { x: -wide, y: high },
    { x: -wide - 2 * HALF_STAKE, y: high },
  ];
  return {
    areas: [ground, area('ground', 'earth', packed)],
    lines: [surface, line('ground', 'outline-block-out', [packed[0]!, packed.at(-1)!])],
    flags: [
      {
        at: { x: -wide * 0.5, y: (level - depth) / 2 },
        text: words.sections.gap(formatLength(gap, job.units)),
      },
    ],
  };
}

/** The board on edge, cut across, and the stake behind it. */
export function formOf(from: CutFrom, staked: boolean): Partial<Cut> {
  const { job, takeoff, words } = from;
  const { formBoard } = job.practices;
  const { thickness: wide, depth } = DRESSED[formBoard];
  const board = box(-wide, 0, -depth, 0);
  const hasStake = staked && (takeoff.stakes?.stakes.length ?? 0) > 0;
  const stake = box(-wide - 2 * HALF_STAKE, -wide, lowest(from), -STAKE_BELOW);
  return {
    areas: [
      ...(hasStake ? [area('forms', 'lumber', stake)] : []),
      area('forms', 'cut-lumber', board),
    ],
    lines: [
      ...(hasStake ? [line('forms', 'board', [stake[0]!, stake[3]!, stake[2]!, stake[1]!])] : []),
      line('forms', 'outline', [...board, board[0]!]),
    ],
    flags: [
      {
        at: { x: -wide / 2, y: -depth * 0.4 },
        text: words.sections.form(formBoard, formatLength(depth, job.units)),
      },
      ...(hasStake
        ? [
            {
              at: { x: -wide - HALF_STAKE, y: -STAKE_BELOW - INCH / 4 },
              text: words.sections.stake,
            },
          ]
        : []),
    ],
  };
}

function trenchOf(
  { job, words, left }: CutFrom,
  { depth, width, taper, below }: ThickenedResult,
): Partial<Cut> {
  const under = -job.practices.thickness;
  return {
    flags: [{ at: { x: width * 0.3, y: under - below * 0.55 }, text: words.sections.thickened }],
    sizes: [
      { from: { x: -left, y: 0 }, to: { x: -left, y: -depth }, side: 'left', lane: 0 },
      { from: { x: 0, y: -depth }, to: { x: width, y: -depth }, side: 'below', lane: 0 },
      ...(taper > 0
        ? [
            {
              from: { x: width, y: -depth },
              to: { x: width + taper, y: under },
              side: 'below' as const,
              lane: 0,
            },
          ]
        : []),
    ],
  };
}
