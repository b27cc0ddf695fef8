import type { Practices } from '../../job/job.ts';
import type { Figure, Quantity, WorkingInput } from '../figure.ts';
import type { InputKey } from '../keys.ts';
import { count, length, number, share, tapeLength, term, tubeVolume } from '../quantity.ts';
import type { JointLayout, JointsResult, SealedJoints } from '../result.ts';
import type { JointLine } from './layout.ts';
import { jointMark } from './marks.ts';
import { lengthOf } from './meeting.ts';
import { lengthOfKind } from './sealing.ts';

/** Control joints and their panels, isolation strip with the pieces to get, and what seals them. */
export function jointFigures(practices: Practices, joints: JointsResult): readonly Figure[] {
  const { layout, sealed } = joints;
  return [
    ...(layout ? layoutFigures(practices, layout) : []),
    ...stripFigures(practices, joints),
    ...(sealed ? sealantFigures(practices, sealed) : []),
  ];
}

function layoutFigures(practices: Practices, layout: JointLayout): readonly Figure[] {
  const { joints: rule, thickness } = practices;
  const { most, depth, panels, joints, by, proof } = layout;
  const stops = lengthOfKind(joints, 'construction');
  return [
    {
      key: 'panel-most',
      value: length(most),
      working: () => ({
        of: 'panel-most',
        formula: 'm = min(f × t, c)',
        inputs: [
          setting('joint-factor', number(rule.factor)),
          { key: 'thickness', value: length(thickness), from: 'practice' },
          setting('joint-cap', length(rule.cap)),
        ],
        rounding: 'none',
        source: ['joint-spacing-table', 'joint-spacing-concrete-code', 'user'],
      }),
    },
    {
      key: 'joint-panels',
      value: count(panels.length, 'panel'),
      working: () => ({
        of: 'joint-panels',
        formula: 'n',
        inputs: [],
        rounding: 'none',
        source: ['geometry'],
      }),
    },
    { ...lengthFigure('joint-length', layout, 'control'), role: 'net' },
    ...(stops > 0 ? [lengthFigure('joint-stop-length', layout, 'construction')] : []),
    {
      key: 'joint-proof',
      value: term(by === 'by-hand' ? 'joints-by-hand' : `joints-${proof}`),
      working: () => ({
        of: 'joint-proof',
        formula: 'L → min',
        inputs: [
          { key: 'panel-most', value: length(most), from: 'figure' },
          setting('joint-ratio', number(rule.ratio)),
        ],
        rounding: 'none',
        source: ['geometry', 'user'],
      }),
    },
    {
      key: 'joint-depth',
      value: tapeLength(depth, 16),
      working: () => ({
        of: 'joint-depth',
        formula: 'd = max(s × t, d₀)',
        inputs: [
          setting('joint-share', share(rule.depthShare)),
          { key: 'thickness', value: length(thickness), from: 'practice' },
          setting('joint-least-depth', length(rule.leastDepth)),
        ],
        rounding: 'none',
        source: ['joint-spacing-association', 'user'],
      }),
    },
  ];
}

/** Joints of one kind end to end, each a step of its own. */
function lengthFigure(
  key: 'joint-length' | 'joint-stop-length',
  { joints }: JointLayout,
  kind: JointLine['kind'],
): Figure {
  return {
    key,
    value: length(lengthOfKind(joints, kind)),
    working: () => ({
      of: key,
      formula: 'L = Σ l',
      inputs: [],
      rounding: 'none',
      source: ['geometry'],
      steps: joints.flatMap((joint, i) =>
        joint.kind === kind
          ? [{ label: jointMark(joints, i), value: length(Math.round(lengthOf(joint))) }]
          : [],
      ),
    }),
  };
}

function stripFigures(
  { isolation, thickness }: Practices,
  joints: JointsResult,
): readonly Figure[] {
  const { pieces } = joints;
  // Withheld: why is said in the notes.
  if (pieces === undefined && joints.total === 0) return [];
  return [
    {
      key: 'strip-length',
      role: 'net',
      value: length(joints.total),
      working: () => ({
        of: 'strip-length',
        formula: 'L = Σ l',
        inputs: [],
        rounding: 'none',
        source: ['geometry', 'ready-mix-joints', 'user'],
        steps: joints.isolation.map((run, i) => ({ label: `${i + 1}`, value: length(run.length) })),
      }),
    },
    ...(joints.total > 0
      ? [
          {
            key: 'strip-depth',
            value: length(joints.stripDepth),
            working: () => ({
              of: 'strip-depth',
              formula: 'd = t − r',
              inputs: [
                { key: 'thickness', value: length(thickness), from: 'practice' },
                setting('strip-recess', length(isolation.recess)),
              ],
              rounding: 'none',
              source: ['ready-mix-joints', 'user'],
            }),
          } satisfies Figure,
        ]
      : []),
    ...(pieces === undefined
      ? []
      : [
          {
            key: 'strip-pieces',
            role: 'order',
            value: count(pieces, 'piece'),
            working: () => ({
              of: 'strip-pieces',
              formula: 'n = ⌈L ÷ p⌉',
              inputs: [
                { key: 'strip-length', value: length(joints.total), from: 'figure' },
                setting('strip-piece-length', length(isolation.pieceLength)),
              ],
              rounding: 'up',
              source: ['common-practice', 'user'],
            }),
          } satisfies Figure,
        ]),
  ];
}

function sealantFigures(
  { joints: { sealant }, isolation }: Practices,
  sealed: SealedJoints,
): readonly Figure[] {
  const seals = (of: SealedJoints['parts'][number]['of']) =>
    sealed.parts.some((part) => part.of === of);
  return [
    {
      key: 'sealant',
      role: 'net',
      value: tubeVolume(sealed.volume),
      working: () => ({
        of: 'sealant',
        formula: 'V = Σ l × w × d',
        inputs: [
          ...(seals('control')
            ? [
                setting('joint-width', length(sealant.width)),
                setting('seal-depth', length(sealant.depth)),
              ]
            : []),
          ...(seals('strip')
            ? [
                setting('strip-thickness', length(isolation.thickness)),
                setting('strip-recess', length(isolation.recess)),
              ]
            : []),
        ],
        rounding: 'none',
        source: ['geometry', 'user'],
        steps: sealed.parts.map((part, i) => ({
          label: `${i + 1}`,
          template: '{0} × {1} × {2}',
          values: [length(part.length), length(part.width), length(part.depth)],
          value: tubeVolume(part.volume),
        })),
      }),
    },
    {
      key: 'sealant-cartridges',
      role: 'order',
      value: count(sealed.cartridges, 'cartridge'),
      working: () => ({
        of: 'sealant-cartridges',
        formula: 'n = ⌈V ÷ v⌉',
        inputs: [
          { key: 'sealant', value: tubeVolume(sealed.volume), from: 'figure' },
          setting('cartridge-holds', tubeVolume(sealant.cartridge)),
        ],
        rounding: 'up',
        source: ['user'],
      }),
    },
    ...(sealed.backer > 0
      ? [
          {
            key: 'backer-length',
            role: 'order',
            value: length(sealed.backer),
            working: () => ({
              of: 'backer-length',
              formula: 'L',
              inputs: [
                { key: 'joint-length', value: length(sealed.backer), from: 'figure' },
                setting('joint-width', length(sealant.width)),
              ],
              rounding: 'none',
              source: ['common-practice'],
            }),
          } satisfies Figure,
        ]
      : []),
  ];
}

function setting(key: InputKey, value: Quantity): WorkingInput {
  return { key, value, from: 'practice' };
}
