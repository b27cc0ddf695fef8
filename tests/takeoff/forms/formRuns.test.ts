import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/job/job.ts';
import { formRuns } from '../../../src/takeoff/forms/formRuns.ts';
import { netPour } from '../../../src/takeoff/outline/netPour.ts';
import { FOOT, SIXTEENTH } from '../../../src/units/grid.ts';
import { blockOut, jobOf, post, shape, wall } from '../outline/site.ts';

function runsOf(job: Job) {
  return formRuns(netPour(job).pour!, SIXTEENTH).figured!;
}

function lengths(job: Job): readonly string[] {
  return runsOf(job).runs.map(({ mark, kind, length }) => `${mark} ${kind} ${length / FOOT}`);
}

const square = shape('pad', 'pad', [
  [0, 0],
  [12, 0],
  [12, 10],
  [0, 10],
]);

describe('runs', () => {
  test('one between each two corners, counter-clockwise from the first', () => {
    expect(lengths(jobOf([square]))).toEqual([
      'R1 free 12',
      'R2 free 10',
      'R3 free 12',
      'R4 free 10',
    ]);
    expect(runsOf(jobOf([square])).corners).toBe(4);
  });

  //  +------+------+   two pads side by side: the edge goes on
  //  |      |      |
  //  +------+------+
  test('go on where one pad takes over from another', () => {
    const next = shape('pad', 'next', [
      [12, 0],
      [20, 0],
      [20, 10],
      [12, 10],
    ]);
    expect(lengths(jobOf([square, next]))).toEqual([
      'R1 free 20',
      'R2 free 10',
      'R3 free 20',
      'R4 free 10',
    ]);
  });

  //  +------+------+   the walk round the ring may begin in the middle of a run
  //  | next |      |
  //  +------+------+
  test('go on where the ring was opened', () => {
    const next = shape('pad', 'next', [
      [-8, 0],
      [0, 0],
      [0, 10],
      [-8, 10],
    ]);
    const { runs, corners } = runsOf(jobOf([square, next]));
    expect(runs.map(({ length }) => length / FOOT).sort((a, b) => a - b)).toEqual([10, 10, 20, 20]);
    expect(corners).toBe(4);
  });

  test('stop at an existing slab, and start again behind it', () => {
    const patio = shape('existing-slab', 'patio', [
      [12, 3],
      [20, 3],
      [20, 5],
      [12, 5],
    ]);
    const { runs, corners, total } = runsOf(jobOf([square, patio]));
    expect(runs.map(({ length }) => length / FOOT)).toEqual([12, 3, 5, 12, 10]);
    // Four corners of the square; where the patio is, the boards end at it.
    expect(corners).toBe(4);
    expect(total).toBe(42 * FOOT);
  });

  test('a wall that can’t be poured against is formed, and doesn’t join a free edge', () => {
    const skirting = wall(
      'skirting',
      [
        [4, 10],
        [12, 10],
      ],
      { closed: false, pourAgainst: false },
    );
    expect(lengths(jobOf([square, skirting]))).toEqual([
      'R1 free 12',
      'R2 free 10',
      'R3 wall-formed 8',
      'R4 free 4',
      'R5 free 10',
    ]);
  });

  test('a wall that can be poured against is not', () => {
    const house = wall('house', [
      [0, 10],
      [12, 10],
      [12, 20],
      [0, 20],
    ]);
    const { total, corners } = runsOf(jobOf([square, house]));
    expect(total).toBe(32 * FOOT);
    expect(corners).toBe(2);
  });

  test('block-outs are no forms', () => {
    const job = jobOf([
      square,
      post('post', 3, 3, 1),
      blockOut('drain', [
        [6, 6],
        [7, 6],
        [7, 7],
        [6, 7],
      ]),
    ]);
    expect(runsOf(job).total).toBe(44 * FOOT);
  });

  //      ,-------+
  //     (        |   an arc of 10 ft that leaves two straights smoothly
  //      '-------+
  test('an arc is a run of its own', () => {
    const rounded = shape('pad', 'pad', [
      [0, 0],
      [12, 0],
      [12, 10],
      [0, 10, 5],
    ]);
    const { runs } = runsOf(jobOf([rounded]));
    expect(runs.map(({ curved }) => curved)).toEqual([false, false, false, true]);
    expect(runs[3]!.length / FOOT).toBeCloseTo(5 * Math.PI, 4);
  });

  test('a pad of two arcs is one run without ends', () => {
    const disc = shape('pad', 'pad', [
      [0, 0, 5],
      [10, 0, 5],
    ]);
    const { runs, corners } = runsOf(jobOf([disc]));
    expect(runs).toHaveLength(1);
    expect(corners).toBe(0);
  });

  test('a corner that hardly is one doesn’t end a run: 1/32 in off over 12 ft', () => {
    const bent = shape('pad', 'pad', [
      [0, 0],
      [6, -1 / 384],
      [12, 0],
      [12, 10],
      [0, 10],
    ]);
    expect(runsOf(jobOf([bent])).runs).toHaveLength(4);
    const more = shape('pad', 'pad', [
      [0, 0],
      [6, -1 / 24],
      [12, 0],
      [12, 10],
      [0, 10],
    ]);
    expect(runsOf(jobOf([more])).runs).toHaveLength(5);
  });
});
