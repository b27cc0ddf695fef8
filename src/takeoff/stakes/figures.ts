import type { Practices } from '../../job/job.ts';
import type { Figure, Working, WorkingInput, WorkingStep } from '../figure.ts';
import type { CountUnit } from '../keys.ts';
import { count, length, number, text } from '../quantity.ts';
import type { FormsResult, Hold, StakesResult } from '../result.ts';
import { spacingLimits } from './bending.ts';
import { fasteningFigures } from './fasteningFigures.ts';
import type { StakeFigureKey } from './keys.ts';
import { closesOnItself } from './placeRun.ts';
import { spacingFigure } from './spacingFigure.ts';

/** The spacing; stakes behind the forms, and each kind of what holds them otherwise, apart; and what fastens them. */
export function stakeFigures(
  practices: Practices,
  forms: FormsResult,
  stakes: StakesResult,
): readonly Figure[] {
  const limits = spacingLimits(practices);
  const places = () => placesWorking(practices, forms, stakes);
  return [
    ...(limits ? [spacingFigure(practices, limits)] : []),
    {
      key: 'stakes',
      role: 'order',
      value: count(stakes.stakes.length, 'stake'),
      working: () => ({
        ...places(),
        of: 'stakes',
        formula: 'n = Σ (⌈(l − 2e) ÷ s⌉ + 1 + a) − b',
      }),
    },
    ...heldFigures(practices, stakes),
    ...fasteningFigures(practices, forms, stakes),
  ];
}

const HELD: readonly (readonly [Hold, StakeFigureKey, CountUnit])[] = [
  ['inside-stake', 'stakes-inside', 'stake'],
  ['kicker', 'kickers', 'kicker'],
  ['spreader', 'spreaders', 'spreader'],
  ['weight', 'weights', 'weight'],
];

/** One figure for each kind that there is. */
function heldFigures(practices: Practices, stakes: StakesResult): readonly Figure[] {
  const high = stakes.stakes.filter(({ kicker }) => kicker).length;
  return HELD.flatMap(([hold, key, unit]): readonly Figure[] => {
    const braced = hold === 'kicker' ? high : 0;
    const beyond = heldBy(stakes, hold);
    if (braced + beyond === 0) return [];
    return [
      {
        key,
        role: 'order',
        value: count(braced + beyond, unit),
        working: () => ({
          of: key,
          formula: hold === 'kicker' ? 'j = h + b' : 'b',
          inputs:
            hold === 'kicker'
              ? [
                  {
                    key: 'kickers-above',
                    value: length(practices.kickersAbove),
                    from: 'practice',
                  },
                  { key: 'kickers-high', value: count(braced, unit), from: 'worked-out' },
                  { key: 'kickers-beyond', value: count(beyond, unit), from: 'worked-out' },
                ]
              : [],
          rounding: 'none',
          source:
            braced > 0
              ? ['stake-spacing-article', 'common-practice', 'user', 'geometry']
              : ['common-practice', 'geometry'],
          steps: stakes.byRun.flatMap(({ run }) => {
            const here =
              stakes.held.filter((place) => place.how === hold && place.run === run).length +
              (hold === 'kicker'
                ? stakes.stakes.filter((one) => one.kicker && one.run === run).length
                : 0);
            return here > 0 ? [{ label: run, value: count(here, unit) }] : [];
          }),
        }),
      },
    ];
  });
}

export function heldBy({ held }: StakesResult, hold: Hold): number {
  return held.filter(({ how }) => how === hold).length;
}

function placesWorking(
  practices: Practices,
  forms: FormsResult,
  stakes: StakesResult,
): Omit<Working, 'of' | 'formula'> {
  const limits = spacingLimits(practices);
  return {
    inputs: [
      ...(limits
        ? [{ key: 'stake-spacing-used', value: length(limits.spacing), from: 'figure' } as const]
        : []),
      { key: 'stake-from-end', value: length(practices.stakeFromEnd), from: 'practice' },
      { key: 'close-enough', value: length(practices.closeEnough), from: 'practice' },
      // Kickers at stakes are no places of their own.
      ...HELD.flatMap(([hold, key, unit]): readonly WorkingInput[] => {
        const places = heldBy(stakes, hold);
        if (places === 0) return [];
        return hold === 'kicker'
          ? [{ key: 'kickers-beyond', value: count(places, unit), from: 'worked-out' }]
          : [{ key, value: count(places, unit), from: 'figure' }];
      }),
    ],
    rounding: 'up-each',
    source: ['en5151-support-count', 'stake-spacing-article', 'common-practice', 'user'],
    steps: forms.runs.map((run, i): WorkingStep => {
      const { count: places, fromEnd, evenly, spacing } = stakes.byRun[i]!;
      const label = run.mark;
      const value = count(places, 'stake');
      const more = places - evenly;
      const added = (template: string, values: WorkingStep['values'] & {}): WorkingStep =>
        more === 0
          ? { label, value, template, values }
          : {
              label,
              value,
              template: `${template} ${more > 0 ? '+' : '−'} {${values.length}}`,
              values: [...values, number(Math.abs(more))],
            };
      if (closesOnItself(run)) {
        return added('⌈{0} ÷ {1}⌉', [length(run.length), length(spacing)]);
      }
      if (evenly === 1) {
        return added('{0} ≤ {1}: 1', [length(run.length), length(practices.stakeFromEnd)]);
      }
      const values = [length(run.length), length(fromEnd), length(spacing), text('1')];
      return added('⌈({0} − 2 × {1}) ÷ {2}⌉ + {3}', values);
    }),
  };
}
