import type { Practices } from '../../job/job.ts';
import type { Figure, Working, WorkingStep } from '../figure.ts';
import { count, length, number, text, weight } from '../quantity.ts';
import type { FormsResult, StakesResult } from '../result.ts';
import { CURVE_SPACING } from './rules.ts';
import { closesOnItself, spacingOn } from './stakes.ts';

/** Stakes that can be driven, those that can't, and the nails. */
export function stakeFigures(
  practices: Practices,
  forms: FormsResult,
  stakes: StakesResult,
): readonly Figure[] {
  const places = () => placesWorking(practices, forms, stakes);
  const nailWeight = stakes.fastening.weight;
  return [
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
    ...(stakes.held.length > 0 ? [blockedFigure(stakes)] : []),
    {
      key: 'nails',
      role: 'order',
      value: count(stakes.fastening.count, 'nail'),
      working: () => ({
        of: 'nails',
        formula: 'N = k · n + c · m',
        inputs: [
          { key: 'nails-per-stake', value: number(practices.fastening.perStake), from: 'practice' },
          { key: 'stakes', value: count(stakes.stakes.length, 'stake'), from: 'figure' },
          {
            key: 'nails-per-corner',
            value: number(practices.fastening.perCorner),
            from: 'practice',
          },
          { key: 'form-corners', value: count(forms.corners, 'corner'), from: 'sketch' },
        ],
        rounding: 'none',
        source: ['user', 'common-practice'],
      }),
    },
    ...(nailWeight === undefined ? [] : [nailWeightFigure(practices, stakes, nailWeight)]),
  ];
}

function nailWeightFigure(practices: Practices, stakes: StakesResult, nailWeight: number): Figure {
  return {
    key: 'nail-weight',
    role: 'order',
    value: weight(nailWeight),
    working: () => ({
      of: 'nail-weight',
      formula: 'W = N ÷ p',
      inputs: [
        { key: 'nails', value: count(stakes.fastening.count, 'nail'), from: 'figure' },
        {
          key: 'nails-per-pound',
          value: number(practices.fastening.nailsPerPound),
          from: 'practice',
        },
      ],
      rounding: 'none',
      source: ['user', 'nails-per-pound'],
    }),
  };
}

function blockedFigure(stakes: StakesResult): Figure {
  return {
    key: 'stakes-blocked',
    value: count(stakes.held.length, 'stake'),
    working: () => ({
      of: 'stakes-blocked',
      formula: 'b',
      inputs: [],
      rounding: 'none',
      source: ['geometry'],
      steps: stakes.byRun
        .filter(({ held }) => held > 0)
        .map(({ run, held }) => ({ label: run, value: count(held, 'stake') })),
    }),
  };
}

function placesWorking(
  practices: Practices,
  forms: FormsResult,
  stakes: StakesResult,
): Omit<Working, 'of' | 'formula'> {
  const curved = forms.runs.some((run) => run.curved);
  return {
    inputs: [
      {
        key: 'stake-spacing',
        value: length(practices.stakeSpacings[practices.formBoard]),
        from: 'practice',
      },
      ...(curved
        ? [
            {
              key: 'stake-spacing-curved',
              value: length(Math.min(practices.stakeSpacings[practices.formBoard], CURVE_SPACING)),
              from: 'practice',
            } as const,
          ]
        : []),
      { key: 'stake-from-end', value: length(practices.stakeFromEnd), from: 'practice' },
      { key: 'close-enough', value: length(practices.closeEnough), from: 'practice' },
      ...(stakes.held.length > 0
        ? [
            {
              key: 'stakes-blocked',
              value: count(stakes.held.length, 'stake'),
              from: 'figure',
            } as const,
          ]
        : []),
    ],
    rounding: 'up-each',
    source: ['en5151-support-count', 'stake-spacing-article', 'common-practice', 'user'],
    steps: forms.runs.map((run, i): WorkingStep => {
      const { count: places, fromEnd, evenly } = stakes.byRun[i]!;
      const spacing = spacingOn(run, practices.stakeSpacings[practices.formBoard]);
      const label = run.mark;
      const value = count(places, 'stake');
      if (closesOnItself(run)) {
        return {
          label,
          value,
          template: '⌈{0} ÷ {1}⌉',
          values: [length(run.length), length(spacing)],
        };
      }
      if (places === 1)
        return {
          label,
          value,
          template: '{0} ≤ {1}: 1',
          values: [length(run.length), length(practices.stakeFromEnd)],
        };
      const even = [length(run.length), length(fromEnd), length(spacing), text('1')];
      if (places === evenly) {
        return { label, value, template: '⌈({0} − 2 × {1}) ÷ {2}⌉ + {3}', values: even };
      }
      return {
        label,
        value,
        template: `⌈({0} − 2 × {1}) ÷ {2}⌉ + {3} ${places > evenly ? '+' : '−'} {4}`,
        values: [...even, number(Math.abs(places - evenly))],
      };
    }),
  };
}
