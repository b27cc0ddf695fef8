import { boxesMeet, boxOf } from '../../geometry/box.ts';
import type { HandStake, Job } from '../../job/job.ts';
import type { Note } from '../figure.ts';
import { DRESSED, formDepth } from '../forms/rules.ts';
import { tradeNote } from '../notes.ts';
import { traceOf } from '../outline/shapes.ts';
import { count, length, tapeLength, text } from '../quantity.ts';
import type { BrokenRule, FormsResult, HeldPlace, Hold, StakesResult } from '../result.ts';
import { bowUnderKnock, bowUnderThrust, type SpacingLimits } from './bending.ts';
import type { StakeNoteCode } from './keys.ts';

/** What to look out for and what was taken as so. */
export function stakeNotes(
  job: Job,
  forms: FormsResult,
  result: StakesResult,
  limits: SpacingLimits,
  off: readonly HandStake[],
): readonly Note[] {
  const { stakes, held, broken } = result;
  const gone =
    off.length === 0
      ? []
      : [
          tradeNote('forms', 'caution', 'hand-stakes-off', {
            facts: { stakes: count(off.length, 'stake') },
            at: off.map(({ at }) => at),
          }),
        ];
  if (stakes.length + held.length === 0) return [...gone, ...brokenNotes(broken)];
  return [
    tradeNote('forms', 'caution', 'call-before-digging'),
    ...lineNotes(job, result),
    tradeNote('forms', 'caution', 'driving-stakes'),
    ...heldNotes(held),
    ...kickerNotes(job, result),
    ...brokenNotes(broken),
    ...gone,
    ...assumptions(job, forms, limits),
  ];
}

/** Buried lines that a form comes near. */
function lineNotes({ features, practices }: Job, { stakes, held }: StakesResult): readonly Note[] {
  const reach = practices.utilityTolerance + DRESSED[practices.formBoard].depth;
  const around = boxOf([...stakes, ...held].map(({ at }) => at));
  const near = features.filter((feature) => {
    if (feature.kind !== 'utility-line') return false;
    const { fault, chain } = traceOf(feature);
    return !fault && boxesMeet(chain.box, around, reach);
  });
  if (near.length === 0) return [];
  return [
    tradeNote('forms', 'caution', 'dig-by-hand', {
      facts: { tolerance: length(practices.utilityTolerance) },
      features: near.map(({ id }) => id),
    }),
  ];
}

const HELD_NOTES: readonly (readonly [Hold, StakeNoteCode, Parameters<typeof count>[1]])[] = [
  ['spreader', 'hold-spreaders', 'spreader'],
  ['kicker', 'hold-kickers', 'kicker'],
  ['inside-stake', 'hold-inside', 'stake'],
  ['weight', 'hold-weights', 'weight'],
];

/** One note a kind of hold. */
function heldNotes(held: readonly HeldPlace[]): readonly Note[] {
  return HELD_NOTES.flatMap(([hold, code, unit]) => {
    const places = held.filter(({ how }) => how === hold);
    if (places.length === 0) return [];
    return [
      tradeNote('forms', 'caution', code, {
        facts: { places: count(places.length, unit), runs: runsOf(places) },
        features: [...new Set(places.flatMap(({ feature }) => feature ?? []))],
        at: places.map(({ at }) => at),
      }),
    ];
  });
}

/** Marks of the runs, once each, in order. */
function runsOf(places: readonly { readonly run: string }[]) {
  return text([...new Set(places.map(({ run }) => run))].join(', '));
}

function kickerNotes({ practices }: Job, { stakes }: StakesResult): readonly Note[] {
  const kickers = stakes.filter(({ kicker }) => kicker).length;
  if (kickers === 0) return [];
  const { formBoard, gapUnderForm, kickersAbove } = practices;
  return [
    tradeNote('forms', 'caution', 'kickers-high', {
      facts: {
        kickers: count(kickers, 'kicker'),
        height: length(formDepth(formBoard, gapUnderForm)),
        above: length(kickersAbove),
      },
    }),
  ];
}

const BROKEN_NOTES: Readonly<Record<BrokenRule['rule'], StakeNoteCode>> = {
  spacing: 'broken-spacing',
  'from-end': 'broken-from-end',
  splice: 'broken-splice',
  blocked: 'broken-blocked',
};

/** One note a rule, with the worst of its places. */
function brokenNotes(broken: readonly BrokenRule[]): readonly Note[] {
  return (Object.keys(BROKEN_NOTES) as BrokenRule['rule'][]).flatMap((rule) => {
    const places = broken.filter((one) => one.rule === rule);
    if (places.length === 0) return [];
    const worst = places.reduce((a, b) => {
      const over = (one: BrokenRule) =>
        rule === 'blocked' ? one.allowed - one.found : one.found - one.allowed;
      return over(b) > over(a) ? b : a;
    });
    return [
      tradeNote('forms', 'caution', BROKEN_NOTES[rule], {
        facts: {
          found: length(worst.found),
          allowed: length(worst.allowed),
          runs: runsOf(places),
        },
        at: places.map(({ at }) => at),
      }),
    ];
  });
}

function assumptions(
  { practices }: Job,
  forms: FormsResult,
  limits: SpacingLimits,
): readonly Note[] {
  const { formBoard, bending, curve, stakeFromEnd } = practices;
  const { spacing, governs, deflection, share, bending: stress } = limits;
  const facts = {
    board: text(formBoard),
    spacing: length(spacing),
    practice: length(limits.practice),
    calculated: length(Math.min(deflection, share, stress)),
    bow: tapeLength(bowUnderThrust(formBoard, spacing, bending), 64),
    knocked: tapeLength(bowUnderKnock(formBoard, spacing, bending), 64),
  };
  return [
    tradeNote('forms', 'assumption', 'stakes-at-ends', {
      facts: { spacing: length(spacing), fromEnd: length(stakeFromEnd) },
    }),
    governs === 'practice'
      ? tradeNote('forms', 'assumption', 'stakes-by-practice', { facts })
      : tradeNote('forms', 'assumption', 'stakes-by-bending', { facts }),
    ...(forms.runs.some(({ curved }) => curved)
      ? [
          tradeNote('forms', 'assumption', 'stakes-on-curves', {
            facts: { spacing: length(Math.min(curve.spacing, spacing)), flat: length(curve.flat) },
          }),
        ]
      : []),
  ];
}
