import { describe, expect, test } from 'vitest';
import { type Cutting, cutStrips, type Filling } from '../../../src/takeoff/steel/cutting.ts';
import type { MeshSupply } from '../../../src/takeoff/steel/plan.ts';
import type { Strip } from '../../../src/takeoff/steel/rows.ts';

/** Small numbers: sheets of 100 by 50, laps of 10, nothing smaller than 15. */
function sheet(change: Partial<MeshSupply> = {}): MeshSupply {
  return { id: 'a', from: 'yard', form: 'sheet', length: 100, width: 50, price: 5000, ...change };
}

function cut(
  strips: readonly (readonly [length: number, width: number])[],
  { filling = 'mixed' as Filling, ...change }: Partial<Cutting & { filling: Filling }> = {},
) {
  const laid = strips.map(
    ([length, width], row): Strip => ({ row, from: 0, to: length, bottom: 0, width }),
  );
  const cutting: Cutting = {
    supply: [sheet()],
    lap: 10,
    leastPiece: 15,
    closeness: 0.5,
    lies: 'either',
    ...change,
  };
  const plan = cutStrips(laid, cutting, filling);
  return (
    plan && {
      begun: plan.begun.map(({ supply, taken }) => [supply.id, Math.round(taken)]),
      pieces: plan.pieces.map(({ strip, offset, length, used }) => [
        strip.row,
        offset,
        length,
        used,
      ]),
      cuts: plan.cuts,
    }
  );
}

describe('a strip', () => {
  test('of one sheet is not cut, but for its length', () => {
    expect(cut([[100, 50]])).toEqual({ begun: [['a', 100]], pieces: [[0, 0, 100, 0]], cuts: 0 });
    expect(cut([[80, 50]])).toMatchObject({ pieces: [[0, 0, 80, 0]], cuts: 1 });
  });

  test('longer than a sheet goes on a lap back: 190 is two, 191 is three', () => {
    expect(cut([[190, 50]])!.pieces).toEqual([
      [0, 0, 100, 0],
      [0, 90, 100, 1],
    ]);
    // The third would be 11 long: it is cut as the least piece, and laps farther.
    expect(cut([[191, 50]])!.pieces).toEqual([
      [0, 0, 100, 0],
      [0, 90, 100, 1],
      [0, 176, 15, 2],
    ]);
  });
});

describe('offcuts', () => {
  test('are used again where they are long enough', () => {
    expect(
      cut([
        [60, 50],
        [35, 50],
      ])!.begun,
    ).toHaveLength(1);
    expect(
      cut(
        [
          [60, 50],
          [45, 50],
        ],
        { filling: 'whole' },
      )!.begun,
    ).toHaveLength(2);
  });

  test('are joined when that saves a sheet', () => {
    // Three offcuts of 40 each; 60 is two of them lapped.
    const strips = [
      [60, 50],
      [60, 50],
      [60, 50],
    ] as const;
    expect(cut(strips, { filling: 'whole' })!.begun).toHaveLength(3);
    expect(cut(strips, { filling: 'mixed' })!.begun).toHaveLength(2);
  });

  test('beside a narrow strip serve a narrow one, and turned by a quarter one as long as they are wide', () => {
    expect(
      cut([
        [100, 20],
        [100, 30],
      ])!.begun,
    ).toHaveLength(1);
    expect(
      cut([
        [80, 50],
        [50, 20],
      ])!.begun,
    ).toHaveLength(1);
    expect(
      cut(
        [
          [80, 50],
          [50, 20],
        ],
        { lies: 'along', filling: 'whole' },
      )!.begun,
    ).toHaveLength(2);
  });

  test('smaller than the least piece are let lie', () => {
    expect(
      cut([
        [90, 50],
        [20, 10],
      ])!.begun,
    ).toHaveLength(2);
  });
});

describe('what there is', () => {
  const left = sheet({ id: 't', from: 'truck', form: 'roll', length: 130, count: 1, price: 0 });

  test('on the truck goes first, and only so much of it', () => {
    expect(
      cut(
        [
          [130, 50],
          [100, 50],
        ],
        { supply: [left, sheet()] },
      )!.begun,
    ).toEqual([
      ['t', 130],
      ['a', 100],
    ]);
    expect(
      cut(
        [
          [130, 50],
          [100, 50],
        ],
        { supply: [left] },
      ),
    ).toBeUndefined();
  });

  test('off a roll is counted by the length taken', () => {
    const roll = sheet({ form: 'roll', length: 1000 });
    expect(
      cut(
        [
          [300, 50],
          [250, 40],
        ],
        { supply: [roll] },
      )!.begun,
    ).toEqual([['a', 550]]);
  });

  test('none is wide enough', () => {
    expect(cut([[60, 51]])).not.toBeUndefined();
    expect(cut([[60, 51]], { lies: 'along' })).toBeUndefined();
  });
});
