import { describe, expect, test } from 'vitest';
import { demoJob } from '../../../src/job/demo.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { type Places, shape, wall } from '../outline/site.ts';
import { codes, layout, padJob, TEN_BY_TWELVE } from './forms.ts';

const ON_WALL: Places = [
  [2, 3],
  [12, 3],
  [12, 11],
  [2, 11],
];

describe('baseline and offsets', () => {
  test('from a wall: along it and square out, in feet', () => {
    const line = wall(
      'wall',
      [
        [0, 11],
        [20, 11],
      ],
      { closed: false },
    );
    const { offsets } = layout(padJob(ON_WALL, line));
    expect(offsets!.baseline.feature).toBe('wall');
    const rows = offsets!.rows.map(({ corner, station, offset }) => [
      corner.letter,
      station / FOOT,
      offset / FOOT,
    ]);
    expect(rows).toEqual([
      ['A', 2, 8],
      ['B', 12, 8],
      ['C', 12, 0],
      ['D', 2, 0],
    ]);
  });

  test('from a sloping line: a 3-4-5 worked by hand', () => {
    // Along (4, 3)/5 and out to the side of the pad.
    const slab = shape('existing-slab', 'old', [
      [0, 0],
      [-3, 4],
      [-8, -2],
    ]);
    const job = padJob(
      [
        [4, 3],
        [9, 3],
        [9, 8],
        [4, 8],
      ],
      slab,
    );
    const { offsets } = layout(job, { baseline: { feature: 'old', corner: 'old-0' } });
    // From (0, 0) along (−3, 4)/5 is −3x/5 + 4y/5, out of it 4x/5 + 3y/5. B would lie 3 ft before that end, so the
    // stations are counted from the other, 5 ft on.
    expect([offsets!.zeroLetter, offsets!.endLetter]).toEqual(['B', 'A']);
    const byLetter = new Map(offsets!.rows.map((row) => [row.corner.letter, row]));
    expect(byLetter.get('A')!.station / FOOT).toBeCloseTo(5, 9);
    expect(byLetter.get('A')!.offset / FOOT).toBeCloseTo(5, 9);
    expect(byLetter.get('C')!.station / FOOT).toBeCloseTo(5 - (-27 + 32) / 5, 9);
    expect(byLetter.get('C')!.offset / FOOT).toBeCloseTo((36 + 24) / 5, 9);
    expect(byLetter.get('B')!.station / FOOT).toBeCloseTo(5 - (-27 + 12) / 5, 9);
  });

  test('stations and offsets put every corner back to its place', () => {
    const job = demoJob();
    for (const { feature, corner } of layout(job).baselines) {
      const { offsets } = layout(job, { baseline: { feature, corner } });
      const { baseline, zero, rows } = offsets!;
      const end =
        zero.x === baseline.from.x && zero.y === baseline.from.y ? baseline.to : baseline.from;
      const [ux, uy] = [(end.x - zero.x) / baseline.length, (end.y - zero.y) / baseline.length];
      const back = (side: number) =>
        Math.max(
          ...rows.map(({ corner: { at }, station, offset }) =>
            Math.hypot(
              zero.x + ux * station - side * uy * offset - at.x,
              zero.y + uy * station + side * ux * offset - at.y,
            ),
          ),
        );
      expect(Math.min(back(1), back(-1))).toBeLessThan(1e-6);
    }
  });

  test('when none is chosen: the longest wall or old edge at the pad, else the longest of the pad', () => {
    const short = wall(
      'short',
      [
        [2, 11],
        [6, 11],
      ],
      { closed: false },
    );
    const far = wall(
      'far',
      [
        [0, 40],
        [50, 40],
      ],
      { closed: false },
    );
    expect(layout(padJob(ON_WALL, far, short)).offsets!.baseline.feature).toBe('short');
    expect(layout(padJob(ON_WALL, far)).offsets!.baseline.feature).toBe('far');
    const own = layout(padJob(TEN_BY_TWELVE)).offsets!.baseline;
    expect([own.feature, own.length / FOOT]).toEqual(['pad', 12]);
    const sample = layout(demoJob()).offsets!.baseline;
    expect([sample.kind, sample.length / INCH]).toEqual(['building-line', 182]);
  });

  test('a line that is gone, or curved now, or without length, is said so and nothing is figured', () => {
    const job = padJob([
      [0, 0, 1],
      [10, 0],
      [10, 12],
      [0, 12],
    ]);
    for (const [feature, corner] of [
      ['gone', 'c1'],
      ['pad', 'gone'],
      ['pad', 'pad-0'],
    ] as const) {
      const { offsets, notes } = layout(job, { baseline: { feature, corner } });
      expect(offsets).toBeUndefined();
      expect(codes(notes.baseline)).toEqual(['layout-baseline-gone']);
    }
    const dot = wall(
      'dot',
      [
        [0, 20],
        [0, 20],
        [4, 20],
      ],
      { closed: false },
    );
    const short = layout(padJob(TEN_BY_TWELVE, dot), {
      baseline: { feature: 'dot', corner: 'dot-0' },
    });
    expect(codes(short.notes.baseline)).toEqual(['layout-baseline-short']);
    expect(short.offsets).toBeUndefined();
  });
});
