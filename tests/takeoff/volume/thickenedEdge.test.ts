import { describe, expect, test } from 'vitest';
import type { Feature, Practices } from '../../../src/job/job.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { tickets } from '../../../src/takeoff/tickets.ts';
import { CUBIC_FOOT, FOOT, INCH, SQUARE_FOOT } from '../../../src/units/grid.ts';
import { blockOut, jobOf, type Places, shape, wall } from '../outline/site.ts';

const SQUARE: Places = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];

/** A slab 4 in thick whose edge goes 12 in down, 12 in wide at the bottom. */
function thickened(
  features: readonly Feature[],
  edge: Partial<Practices['thickenedEdge']> = {},
  practices: Partial<Practices> = {},
) {
  const job = jobOf(features);
  const thickenedEdge = { use: true, depth: FOOT, width: FOOT, taper: 0, ...edge };
  const all = { ...job, practices: { ...job.practices, ...practices, thickenedEdge } };
  return { job: all, result: takeoff(all) };
}

function edgeOf({ result }: ReturnType<typeof thickened>) {
  return result.volume!.thickened!;
}

const PAD = [shape('pad', 'pad', SQUARE)];

describe('a pad of 10 × 10, free all round', () => {
  test('a square step 12 in wide: 36 ft² by 8 in', () => {
    const made = thickened(PAD);
    expect(edgeOf(made).flatArea / SQUARE_FOOT).toBeCloseTo(36, 9);
    expect(edgeOf(made).volume / CUBIC_FOOT).toBeCloseTo(36 * (8 / 12), 9);
    expect(made.result.volume!.slab / CUBIC_FOOT).toBeCloseTo(100 / 3, 9);
    expect(made.result.volume!.net).toBe(made.result.volume!.slab + edgeOf(made).volume);
  });

  test('with a taper of 12 in: the mean of 40x − 4x² from 1 to 2 ft is 50 2/3 ft²', () => {
    // Within x of the edge lie 100 − (10 − 2x)² = 40x − 4x²; its integral 20x² − 4/3 x³ from 1 to 2 is 152/3.
    const made = thickened(PAD, { taper: FOOT });
    expect(edgeOf(made).meanArea / SQUARE_FOOT).toBeCloseTo(152 / 3, 7);
    expect(edgeOf(made).volume / CUBIC_FOOT).toBeCloseTo((152 / 3) * (8 / 12), 7);
  });

  test('the edge as a frustum turned over: the same by its three parts', () => {
    // What is left open below the slab is a pit: 8 × 8 at the bottom, 6 × 6… upside down, so h/3 (A + B + √AB).
    const pit = (8 / 12 / 3) * (64 + 36 + 48);
    const made = thickened(PAD, { taper: FOOT });
    expect(edgeOf(made).volume / CUBIC_FOOT).toBeCloseTo(100 * (8 / 12) - pit, 7);
  });

  test('a taper that meets itself in the middle fills no more than the pad', () => {
    // 4 ft wide, then 3 ft of taper, but the far sides are met after 1: ∫ over 4…5 of 40x − 4x² and 100 for 2 more.
    const within = (x: number) => 20 * x * x - (4 / 3) * x ** 3;
    const mean = (within(5) - within(4) + 200) / 3;
    const made = thickened(PAD, { width: 4 * FOOT, taper: 3 * FOOT });
    expect(edgeOf(made).meanArea / SQUARE_FOOT).toBeCloseTo(mean, 3);
  });
});

test('an edge against a slab or a wall isn’t thickened, and ends the others square', () => {
  const old = shape('existing-slab', 'old', [
    [-5, 10],
    [15, 10],
    [15, 14],
    [-5, 14],
  ]);
  const made = thickened([...PAD, old]);
  // Left, bottom and right: 10 + 10 + 10 ft by 1, two corners shared.
  expect(edgeOf(made).flatArea / SQUARE_FOOT).toBeCloseTo(28, 6);
  expect(edgeOf(made).length).toBe(30 * FOOT);
  const house = wall('house', [
    [-5, 10],
    [15, 10],
    [15, 14],
    [-5, 14],
  ]);
  expect(edgeOf(thickened([...PAD, house])).flatArea / SQUARE_FOOT).toBeCloseTo(28, 6);
});

test('a block-out in the strip takes its part of it', () => {
  const post = blockOut('post', [
    [4, 0.5],
    [5, 0.5],
    [5, 2.5],
    [4, 2.5],
  ]);
  // Half a foot of it lies within 1 ft of the edge; round the post itself nothing is thickened.
  expect(edgeOf(thickened([...PAD, post])).flatArea / SQUARE_FOOT).toBeCloseTo(35.5, 6);
});

test('a curved edge is thickened along its curve', () => {
  // A 10 ft square whose right side is bowed out by a half circle of radius 5.
  const bowed: Places = [
    [0, 0],
    [10, 0, 5],
    [10, 10],
    [0, 10],
  ];
  const made = thickened([shape('pad', 'pad', bowed)], { taper: 0 });
  // A half ring of 5 and 4 ft, then 10 + 10 + 10 ft straight with the two corners at the left shared.
  const area = (Math.PI / 2) * (25 - 16) + 30 - 2;
  expect(edgeOf(made).flatArea / SQUARE_FOOT).toBeCloseTo(area, 2);
});

describe('an edge no deeper than the slab', () => {
  test.each([4 * INCH, 2 * INCH])('of %d grid units: no volume, and why', (depth) => {
    const { result } = thickened(PAD, { depth });
    expect(result.volume).toBeUndefined();
    expect(result.mix).toBeUndefined();
    const note = result.notes.find(({ code }) => code === 'thickened-not-deeper');
    expect(note?.weight).toBe('stop');
  });

  test('without a free edge nothing is said of it', () => {
    const old = shape('existing-slab', 'old', [
      [-5, -5],
      [15, -5],
      [15, 15],
      [-5, 15],
    ]);
    const patch = shape('patch', 'patch', SQUARE);
    const { result } = thickened([old, patch], { depth: INCH });
    expect(result.volume!.thickened).toBeUndefined();
    expect(result.volume!.net).toBe(result.volume!.slab);
  });
});

test('the forms get no deeper: the trench is in the ground', () => {
  const { result } = thickened(PAD, { depth: FOOT });
  const plain = takeoff(jobOf(PAD));
  expect(result.volume!.formDepth).toBe(plain.volume!.formDepth);
  expect(result.stakes).toEqual(plain.stakes);
  expect(result.boards!.key).toBe(plain.boards!.key);
  const note = result.notes.find(({ code }) => code === 'edges-thickened');
  // A 2x4 is 3 1/2 in deep: 8 1/2 in of the face are cast against the ground.
  expect(note!.facts!['below']).toEqual({ of: 'length', grid: 8.5 * INCH });
  expect(result.notes.some(({ code }) => code === 'trench-bank')).toBe(true);
  expect(result.notes.some(({ code }) => code === 'edges-not-thickened')).toBe(false);
});

test('where the form sets the depth, the trench stays as deep from the finish down', () => {
  const { result } = thickened(PAD, {}, { formBoard: '2x6', gapUnderForm: 0 });
  // 100 ft² at 5 1/2 in, and 36 ft² for the other 6 1/2.
  const made = (100 * 5.5 + 36 * 6.5) / 12;
  expect(result.volume!.atFormDepth / CUBIC_FOOT).toBeCloseTo(made, 9);
});

test('on the ticket the parts stand before the net, and add up to it', () => {
  const { job, result } = thickened(PAD, { taper: 6 * INCH });
  const { figures } = tickets(job, result).find(({ station }) => station === 'mix')!;
  const value = (key: string) => {
    const found = figures.find((figure) => figure.key === key)!.value;
    return found.of === 'volume' ? found.grid3 : Number.NaN;
  };
  expect(value('slab-volume') + value('thickened-volume')).toBe(value('net-volume'));
  const keys = figures.map(({ key }) => key);
  expect(keys.slice(0, 4)).toEqual(['thickness', 'slab-volume', 'thickened-volume', 'net-volume']);
});
