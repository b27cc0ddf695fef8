import type { Practices } from '../../job/job.ts';
import type { Figure, Working, WorkingInput } from '../figure.ts';
import { area, bagVolume, count, length, number, share } from '../quantity.ts';
import type { AllowancePart, MixResult, VolumeResult } from '../result.ts';
import { WORST_SPREADS } from './rules.ts';

/** Each part of the allowance on a line of its own, then all of them. */
export function allowanceFigures(
  practices: Practices,
  slab: VolumeResult,
  mix: MixResult,
): readonly Figure[] {
  return [
    ...partFigures(practices, slab, mix),
    {
      key: 'allowance',
      role: 'allowance',
      value: bagVolume(mix.allowance),
      working: () => ({
        of: 'allowance',
        formula: practices.waste.by === 'share' ? 'a = max(f · V, m · y)' : 'a = max(Σ aᵢ, m · y)',
        inputs: [
          netInput(mix),
          { key: 'waste-bags', value: count(practices.waste.minimumBags, 'bag'), from: 'practice' },
        ],
        rounding: 'nearest',
        source: ['navedtra-14070-estimate', 'common-practice', 'user'],
        steps: mix.allowanceParts.map(({ name, part, volume }, i) => ({
          label: name ?? `a${subscript(i + 1)}`,
          value: bagVolume(volume),
          ...(part === 'share'
            ? { template: '{0} × {1}', values: [share(practices.waste.share), bagVolume(mix.net)] }
            : {}),
        })),
      }),
    },
  ];
}

const KEYS = {
  share: 'allowance-share',
  spread: 'allowance-spread',
  spillage: 'allowance-spillage',
  extra: 'allowance-extra',
  floor: 'allowance-floor',
} as const satisfies Record<AllowancePart['part'], Figure['key']>;

/** One line a kind of part; extras by hand are added up, and named in the working. */
function partFigures(practices: Practices, slab: VolumeResult, mix: MixResult): readonly Figure[] {
  return (['share', 'spread', 'spillage', 'extra', 'floor'] as const).flatMap((kind) => {
    const parts = mix.allowanceParts.filter(({ part }) => part === kind);
    if (parts.length === 0) return [];
    const key = KEYS[kind];
    return [
      {
        key,
        role: 'allowance' as const,
        value: bagVolume(parts.reduce((sum, { volume }) => sum + volume, 0)),
        working: () => ({ of: key, ...partWorking(kind, practices, slab, mix) }),
      },
    ];
  });
}

function partWorking(
  kind: AllowancePart['part'],
  { waste }: Practices,
  slab: VolumeResult,
  mix: MixResult,
): Omit<Working, 'of'> {
  const rounding = 'nearest';
  switch (kind) {
    case 'share':
      return {
        formula: 'f · V',
        inputs: [
          netInput(mix),
          { key: 'waste-share', value: share(waste.share), from: 'practice' },
        ],
        rounding,
        source: ['navedtra-14070-estimate', 'user'],
      };
    case 'spread':
      return {
        formula: 'a₁ = k · A · s',
        inputs: [
          { key: 'net-area', value: area(slab.area), from: 'figure' },
          spreadInput(slab),
          { key: 'spread-times', value: number(waste.spreadTimes), from: 'practice' },
        ],
        rounding,
        source: ['geometry', 'common-practice', 'user'],
      };
    case 'spillage':
      return {
        formula: 'a₂ = f · V',
        inputs: [
          netInput(mix),
          { key: 'spillage', value: share(waste.spillage), from: 'practice' },
        ],
        rounding,
        source: ['common-practice', 'user'],
      };
    case 'extra':
      return {
        formula: 'Σ a',
        inputs: [],
        rounding,
        source: ['user'],
        steps: waste.extras.map(({ name, volume }) => ({ label: name, value: bagVolume(volume) })),
      };
    case 'floor':
      return {
        formula: 'm · y − Σ aᵢ',
        inputs: [{ key: 'waste-bags', value: count(waste.minimumBags, 'bag'), from: 'practice' }],
        rounding,
        source: ['common-practice', 'user'],
      };
  }
}

/** The net with its depth off as far as it may well be. */
export function worstFigure({ waste }: Practices, slab: VolumeResult, mix: MixResult): Figure {
  const times = waste.by === 'share' ? WORST_SPREADS : Math.max(WORST_SPREADS, waste.spreadTimes);
  return {
    key: 'worst-volume',
    value: bagVolume(mix.worst),
    working: () => ({
      of: 'worst-volume',
      formula: waste.by === 'share' ? 'V + k · A · s' : 'V + k · A · s + a₂ + …',
      inputs: [
        netInput(mix),
        { key: 'net-area', value: area(slab.area), from: 'figure' },
        spreadInput(slab),
        { key: 'worst-times', value: number(times), from: 'worked-out' },
      ],
      rounding: 'nearest',
      source: ['common-practice'],
    }),
  };
}

function spreadInput({ spread, ground }: VolumeResult): WorkingInput {
  return ground
    ? { key: 'ground-spread', value: length(spread), from: 'figure' }
    : { key: 'depth-spread', value: length(spread), from: 'practice' };
}

function netInput(mix: MixResult): WorkingInput {
  return { key: 'net-volume', value: bagVolume(mix.net), from: 'figure' };
}

function subscript(number: number): string {
  return [...`${number}`].map((digit) => String.fromCharCode(0x2080 + Number(digit))).join('');
}
