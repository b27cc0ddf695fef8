import type { Practices } from '../../job/job.ts';
import type { Figure, WorkingInput } from '../figure.ts';
import { count, number, weight } from '../quantity.ts';
import type { FormsResult, StakesResult } from '../result.ts';

/** Cleats, nails or screws, their weight where they are bought by it, and whole boxes. */
export function fasteningFigures(
  { fastening: practice }: Practices,
  forms: FormsResult,
  stakes: StakesResult,
): readonly Figure[] {
  const { by, count: needed, weight: kg, boxes, cleats } = stakes.fastening;
  const unit = by === 'screws' ? 'screw' : 'nail';
  const all: WorkingInput = { key: 'nails', value: count(needed, unit), from: 'figure' };
  const perPound: WorkingInput = {
    key: 'nails-per-pound',
    value: number(practice.nailsPerPound),
    from: 'practice',
  };
  const figures: (Figure | undefined)[] = [
    cleats === 0
      ? undefined
      : {
          key: 'cleats',
          role: 'order',
          value: count(cleats, 'cleat'),
          working: () => ({
            of: 'cleats',
            formula: 'p',
            inputs: [],
            rounding: 'none',
            source: ['common-practice'],
          }),
        },
    {
      key: 'nails',
      role: 'order',
      value: count(needed, unit),
      working: () => ({
        of: 'nails',
        formula: 'N = k · (n + i + 2 · j) + c · m + d · p',
        inputs: [
          { key: 'nails-per-stake', value: number(practice.perStake), from: 'practice' },
          ...counted(stakes),
          { key: 'nails-per-corner', value: number(practice.perCorner), from: 'practice' },
          { key: 'form-corners', value: count(forms.corners, 'corner'), from: 'sketch' },
          ...(cleats > 0
            ? ([
                { key: 'nails-per-cleat', value: number(practice.perCleat), from: 'practice' },
                { key: 'cleats', value: count(cleats, 'cleat'), from: 'figure' },
              ] as const)
            : []),
        ],
        rounding: 'none',
        source: ['user', 'common-practice'],
      }),
    },
    kg === undefined
      ? undefined
      : {
          key: 'nail-weight',
          role: 'order',
          value: weight(kg),
          working: () => ({
            of: 'nail-weight',
            formula: 'W = N ÷ p',
            inputs: [all, perPound],
            rounding: 'none',
            source: ['user', 'nails-per-pound'],
          }),
        },
    {
      key: 'fastening-boxes',
      role: 'order',
      value: count(boxes, 'box'),
      working: () => ({
        of: 'fastening-boxes',
        formula: by === 'screws' ? 'B = ⌈N ÷ b⌉' : 'B = ⌈N ÷ (p · b)⌉',
        inputs:
          by === 'screws'
            ? [
                all,
                {
                  key: 'screws-per-box',
                  value: number(practice.screwsPerBox),
                  from: 'practice',
                },
              ]
            : [
                all,
                perPound,
                { key: 'nail-box', value: weight(practice.nailBox), from: 'practice' },
              ],
        rounding: 'up',
        source: by === 'screws' ? ['user'] : ['user', 'nails-per-pound'],
      }),
    },
  ];
  return figures.filter((figure) => figure !== undefined);
}

/** What is nailed at stakes: behind the form, inside, and at either end of a kicker. */
function counted({ stakes, held }: StakesResult): readonly WorkingInput[] {
  const inside = held.filter(({ how }) => how === 'inside-stake').length;
  const kickers =
    held.filter(({ how }) => how === 'kicker').length +
    stakes.filter(({ kicker }) => kicker).length;
  return [
    { key: 'stakes', value: count(stakes.length, 'stake'), from: 'figure' },
    ...(inside > 0
      ? ([{ key: 'stakes-inside', value: count(inside, 'stake'), from: 'figure' }] as const)
      : []),
    ...(kickers > 0
      ? ([{ key: 'kickers', value: count(kickers, 'kicker'), from: 'figure' }] as const)
      : []),
  ];
}
