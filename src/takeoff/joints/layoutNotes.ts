import type { Practices } from '../../job/job.ts';
import type { Note, Quantity } from '../figure.ts';
import { tradeNote } from '../notes.ts';
import { angle, count, length, number, text } from '../quantity.ts';
import type { JointLayout } from '../result.ts';
import type { DrawnJoints } from './drawnJoints.ts';
import type { JointNoteCode } from './keys.ts';
import type { BrokenJointRule, JointRule } from './layout.ts';
import { panelMark } from './marks.ts';
import { panelsAt } from './panelsAt.ts';

/** What must be said of a layout: every rule that it breaks and at which panels, and what was taken as so. */
export function layoutNotes(
  practices: Practices,
  layout: JointLayout,
  { outside, apart }: DrawnJoints,
): readonly Note[] {
  const { joints: rule } = practices;
  const { most, joints } = layout;
  const stops = joints.some(({ kind }) => kind === 'construction');
  return [
    ...RULES.flatMap((one) => brokenNote(practices, layout, one)),
    ...(outside.length > 0
      ? [tradeNote('joints', 'caution', 'joint-outside', { features: outside })]
      : []),
    ...(apart.length > 0
      ? [tradeNote('joints', 'caution', 'joint-existing-apart', { features: apart })]
      : []),
    tradeNote('joints', 'assumption', 'joints-rules-used', {
      facts: { most: length(most), ratio: number(rule.ratio), least: length(rule.least) },
    }),
    ...(joints.length === 0
      ? [tradeNote('joints', 'assumption', 'joints-none-needed')]
      : [
          tradeNote(
            'joints',
            'assumption',
            rule.made === 'tooled' ? 'joints-tooled-when' : 'joints-sawn-when',
          ),
        ]),
    ...(stops ? [tradeNote('joints', 'assumption', 'joints-stop')] : []),
    tradeNote('joints', 'assumption', 'joints-may-crack'),
  ];
}

/** In the order in which they matter. */
const BROKEN: Readonly<Record<JointRule, JointNoteCode>> = {
  'inside-corner': 'joint-broken-inside-corner',
  'too-long': 'joint-broken-too-long',
  ratio: 'joint-broken-ratio',
  sliver: 'joint-broken-sliver',
  'block-out': 'joint-broken-block-out',
  'old-joint': 'joint-broken-old-joint',
  sharp: 'joint-broken-sharp',
  'ends-inside': 'joint-broken-ends-inside',
  'ends-on-joint': 'joint-broken-ends-on-joint',
};
const RULES = Object.keys(BROKEN) as readonly JointRule[];

/** One note a rule, with all panels that break it and the worst that was found. */
function brokenNote(practices: Practices, layout: JointLayout, rule: JointRule): readonly Note[] {
  const found = layout.broken.filter((one) => one.rule === rule);
  if (found.length === 0) return [];
  const panels = [...new Set(found.flatMap((one) => panelsAt(layout, one)))].toSorted(
    (a, b) => a - b,
  );
  const marks = panels.map(panelMark).join(', ');
  return [
    tradeNote('joints', 'caution', BROKEN[rule], {
      facts: {
        panels: text(marks),
        places: count(found.length, 'joint-place'),
        ...measured(practices, layout, rule, found),
      },
      at: found.map(({ at }) => at),
    }),
  ];
}

/** What was found at the worst place, and what is allowed. */
function measured(
  { joints }: Practices,
  { most }: JointLayout,
  rule: JointRule,
  found: readonly BrokenJointRule[],
): Readonly<Record<string, Quantity>> {
  const values = found.map((one) => one.found ?? 0);
  switch (rule) {
    case 'too-long':
      return { found: length(Math.max(...values)), allowed: length(most) };
    case 'ratio':
      return { found: number(Math.max(...values)), allowed: number(joints.ratio) };
    case 'sliver':
      return { found: length(Math.min(...values)), allowed: length(joints.least) };
    case 'sharp':
      return { found: angle(Math.min(...values)), allowed: angle(joints.angle) };
    default:
      return {};
  }
}
