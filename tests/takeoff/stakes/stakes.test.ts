import { describe, expect, test } from 'vitest';
import { defaultPractices } from '../../../src/job/defaults.ts';
import type { Practices } from '../../../src/job/job.ts';
import { stakeFigures } from '../../../src/takeoff/stakes/figures.ts';
import { stakePlaces, stakePlacesRound } from '../../../src/takeoff/stakes/rules.ts';
import { FOOT, INCH, POUND_KG } from '../../../src/units/grid.ts';
import { blockOut, jobOf, shape, wall } from '../outline/site.ts';
import { spacings } from '../spacings.ts';
import { staked } from './staked.ts';

const square = shape('pad', 'pad', [
  [0, 0],
  [12, 0],
  [12, 10],
  [0, 10],
]);

describe('places along a run', () => {
  test.each([
    // length, spacing, from end (ft): count, from end, gap
    [12, 3, 1, 5, 1, 2.5],
    [8, 3, 1, 3, 1, 3],
    [3, 3, 1, 2, 0.75, 1.5],
    [2, 3, 1, 2, 0.5, 1],
    [1, 3, 1, 1, 0.5, 0],
    [9, 3, 0, 4, 0, 3],
  ])('%f ft at %f ft, %f from the ends: %i', (long, spacing, end, count, fromEnd, gap) => {
    expect(stakePlaces(long * FOOT, spacing * FOOT, end * FOOT, 0)).toEqual({
      count,
      fromEnd: fromEnd * FOOT,
      gap: gap * FOOT,
    });
  });

  test('no gap is wider than the spacing, no end farther than asked for, at any length', () => {
    for (let length = 1; length < 40 * FOOT; length += 1_237) {
      const { count, fromEnd, gap } = stakePlaces(length, 3 * FOOT, FOOT, 0);
      expect(gap).toBeLessThanOrEqual(3 * FOOT);
      expect(fromEnd).toBeLessThanOrEqual(FOOT);
      expect(2 * fromEnd + (count - 1) * gap).toBeCloseTo(length, 6);
      // One fewer would be too few: a gap would be wider, unless two is the least.
      if (count > 2) expect((length - 2 * fromEnd) / (count - 2)).toBeGreaterThan(3 * FOOT);
    }
  });

  test('a whole circle has as many as gaps, three at least', () => {
    expect(stakePlacesRound(31.4 * FOOT, 1.5 * FOOT, 0).count).toBe(21);
    expect(stakePlacesRound(FOOT, 1.5 * FOOT, 0).count).toBe(3);
  });
});

describe('stakes', () => {
  test('stand outside the form: board and half a stake from the face', () => {
    const { stakes } = staked(jobOf([square])).stakes!;
    const first = stakes[0]!;
    expect(first.at).toEqual({ x: FOOT, y: -2.25 * INCH });
    expect(first).toMatchObject({ run: 'R1', along: FOOT });
    const thin = staked(jobOf([square]), { formBoard: '1x4' }).stakes!.stakes[0]!;
    expect(thin.at.y).toBe(-1.5 * INCH);
  });

  test('are closer on a curve', () => {
    const rounded = jobOf([
      shape('pad', 'pad', [
        [0, 0],
        [12, 0],
        [12, 10],
        [0, 10, 5],
      ]),
    ]);
    const result = staked(rounded);
    // 15.71 ft, less 2 ft, at 15.46 in, from which a board stands 1/2 in off an arc of 5 ft: 11 gaps.
    expect(result.stakes!.byRun[3]!).toMatchObject({ count: 12, governs: 'curve' });
    expect(result.stakes!.byRun[3]!.spacing / INCH).toBeCloseTo(15.46, 2);
    expect(result.notes.map(({ code }) => code)).toContain('stakes-on-curves');
    // A closer spacing of the user's own holds on curves too.
    expect(staked(rounded, spacings(FOOT)).stakes!.byRun[3]!.count).toBe(15);
  });

  const strip = (from: number, to: number) =>
    shape('no-stake-zone', 'pipe', [
      [from, -3],
      [to, -3],
      [to, 13],
      [from, 13],
    ]);

  test('move out of a no-stake zone, and as many are added as it takes', () => {
    // Even places are at 1, 3 1/2, 6, 8 1/2 and 11 ft. With 5 to 7 ft taken no five do: the third would stand there.
    const { stakes, notes } = staked(jobOf([square, strip(5, 7)]));
    expect(stakes!.held).toEqual([]);
    expect(stakes!.byRun.map(({ count, evenly }) => [count, evenly])).toEqual([
      [6, 5],
      [4, 4],
      [6, 5],
      [4, 4],
    ]);
    const along = stakes!.stakes.filter(({ run }) => run === 'R1').map((stake) => stake.along);
    expect(along.some((place) => place > 4.9375 * FOOT && place < 7.0625 * FOOT)).toBe(false);
    expect(along).toContain(4.9375 * FOOT);
    expect(stakes!.byRun[0]!.gap).toBeLessThanOrEqual(3 * FOOT);
    expect(notes.map(({ code }) => code)).not.toContain('hold-kickers');
  });

  test('added for what is in the way show in the working', () => {
    const job = jobOf([square, strip(5, 7)]);
    const { forms, stakes } = staked(job);
    const working = stakeFigures(job.practices, forms!, stakes!)
      .find(({ key }) => key === 'stakes')!
      .working();
    const [front, side] = working.steps!;
    // ⌈(12 − 2) ÷ 3⌉ + 1 + 1 = 6, where the side has no more than ⌈(10 − 2) ÷ 3⌉ + 1 = 4.
    expect(front!.template).toBe('⌈({0} − 2 × {1}) ÷ {2}⌉ + {3} + {4}');
    expect(front!.values!.at(-1)).toMatchObject({ number: 1 });
    expect(front!.value).toMatchObject({ count: 6 });
    expect(side!.template).toBe('⌈({0} − 2 × {1}) ÷ {2}⌉ + {3}');
  });

  test('are missing where a no-stake zone is longer than the spacing, and it is named', () => {
    const { stakes, notes } = staked(jobOf([square, strip(4, 8)]));
    // 4 ft 1 1/2 in without one: one is missing, in the middle of it.
    expect(stakes!.held.map(({ run, along }) => [run, along / FOOT])).toEqual([
      ['R1', 6],
      ['R3', 6],
    ]);
    expect(stakes!.stakes).toHaveLength(16);
    const caution = notes.find(({ code }) => code === 'hold-kickers')!;
    expect(caution.features).toEqual(['pipe']);
    expect(caution.at).toHaveLength(2);
  });

  test('are moved by a zone that only their side would stand in', () => {
    // The front edge (y = 0) has stakes at 1, 3 1/2, 6, 8 1/2 and 11 ft. A stake is 1 1/2 in wide: this zone starts
    // so many inches right of the middle of the one at 6 ft.
    const zoneFrom = (inches: number) =>
      shape('no-stake-zone', 'pipe', [
        [6 + inches / 12, -2],
        [7, -2],
        [7, 1],
        [6 + inches / 12, 1],
      ]);
    const third = (inches: number) => {
      const { stakes, held } = staked(jobOf([square, zoneFrom(inches)])).stakes!;
      expect(held).toHaveLength(0);
      return stakes[2]!.along;
    };
    // So that its side touches the zone: 3/4 in from its middle.
    expect(third(0.5)).toBe(6 * FOOT - 0.25 * INCH);
    expect(third(1)).toBe(6 * FOOT);
  });

  test('that would stand in a slab, a building, steps or a block-out are blocked too', () => {
    const across = (id: string) =>
      [
        [11.99, 4],
        [14, 4],
        [14, 6],
        [11.99, 6],
      ].map(([x, y]) => [x! + (id === 'x' ? 1 : 0), y!] as const);
    for (const feature of [
      shape(
        'steps',
        's',
        across('s').map(([x, y]) => [x + 0.15, y] as const),
      ),
      shape(
        'existing-slab',
        'e',
        across('e').map(([x, y]) => [x + 0.15, y] as const),
      ),
      wall(
        'w',
        across('w').map(([x, y]) => [x + 0.15, y] as const),
      ),
      blockOut(
        'b',
        across('b').map(([x, y]) => [x + 0.15, y] as const),
      ),
    ]) {
      // R2 has stakes at 1, 3 2/3, 6 1/3 and 9 ft; one at 5 ft with five of them.
      const { stakes } = staked(jobOf([square, feature]), spacings(2 * FOOT));
      expect(
        stakes!.held.map(({ run }) => run),
        feature.kind,
      ).toEqual(['R2']);
    }
  });

  //   +----+  +----+    a slot 2 in wide: its stakes would stand in the other leg
  //   |    |__|    |
  test('that would stand in the pour across a slot are blocked', () => {
    const slot = jobOf([
      shape('pad', 'pad', [
        [0, 0],
        [10, 0],
        [10, 8],
        [5 + 1 / 6, 8],
        [5 + 1 / 6, 2],
        [5, 2],
        [5, 8],
        [0, 8],
      ]),
    ]);
    const { stakes } = staked(slot);
    const inSlot = stakes!.byRun.filter(({ held }) => held > 0).map(({ run }) => run);
    expect(inSlot).toEqual(['R4', 'R6']);
  });

  test('along a wall that is formed have no room at all', () => {
    const skirting = wall(
      'skirting',
      [
        [0, 10],
        [12, 10],
      ],
      { closed: false, pourAgainst: false },
    );
    const { stakes } = staked(jobOf([square, skirting]));
    expect(stakes!.held.map(({ run }) => run)).toEqual(['R3', 'R3', 'R3', 'R3', 'R3']);
  });

  test('nails go by stakes that can be driven and by corners', () => {
    const { fastening, stakes } = staked(jobOf([square]), {
      fastening: { ...defaultPractices().fastening, perStake: 3, perCorner: 4, nailsPerPound: 50 },
    }).stakes!;
    expect(stakes).toHaveLength(18);
    expect(fastening.count).toBe(18 * 3 + 4 * 4);
    expect(fastening.weight).toBeCloseTo(1.4 * POUND_KG, 12);
  });

  test('turned, the job has as many', () => {
    for (const degrees of [7, 33.3, 45, 61, 90]) {
      const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const turned = shape(
        'pad',
        'pad',
        [
          [0, 0],
          [28, 0],
          [28, 11],
          [0, 11],
        ].map(([x, y]) => [x! * cos - y! * sin, x! * sin + y! * cos] as const),
      );
      // 28 − 2 and 11 − 2 ft are whole numbers of gaps: the hardest case.
      const { byRun } = staked(jobOf([turned]), spacings(1 * FOOT)).stakes!;
      expect(
        byRun.map(({ count }) => count),
        `${degrees}`,
      ).toEqual([27, 10, 27, 10]);
    }
  });

  test.each([
    [spacings(0), 'stake-spacing-zero'],
    [spacings(Number.NaN), 'stake-spacing-zero'],
    [{ stakeFromEnd: -1 }, 'stake-spacing-zero'],
    [{ fastening: { ...defaultPractices().fastening, nailsPerPound: 0 } }, 'nails-per-pound-zero'],
    [spacings(10), 'stakes-too-many'],
  ] satisfies [Partial<Practices>, string][])(
    '%o: withheld, with the reason',
    (practices, code) => {
      const result = staked(jobOf([square]), practices);
      expect(result.stakes).toBeUndefined();
      expect(result.forms).toBeDefined();
      expect(result.notes.find((note) => note.code === code)?.weight).toBe('stop');
    },
  );
});
