import { describe, expect, test } from 'vitest';
import type { Mark } from '../../src/drawing/marks.ts';
import { drawPlan } from '../../src/drawing/plan.ts';
import { EDGE_STYLES, pourEdges } from '../../src/drawing/pour.ts';
import { en } from '../../src/drawing/words/en.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Corner, Job } from '../../src/job/job.ts';
import { blankJob, rectangleJob } from '../../src/job/start.ts';
import type { Station } from '../../src/takeoff/figure.ts';
import { EDGE_KINDS } from '../../src/takeoff/outline/pour.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT, INCH } from '../../src/units/grid.ts';
import { measuredArea, measuredLength } from './measure.ts';
import { randomPadJob } from './randomPads.ts';

function drawn(job: Job, station: Station | 'sheet' = 'ground', gridPerMm = 10_000) {
  return drawPlan(job, takeoff(job), {
    station,
    scale: { gridPerMm },
    words: en,
    dimensions: true,
  });
}

function pad(...places: readonly (readonly [number, number])[]): Job {
  const corners = places.map(
    ([x, y], i): Corner => ({ id: `c${i}`, x: x * INCH, y: y * INCH, rise: 0 }),
  );
  return {
    ...blankJob(),
    features: [
      { id: 'p', name: '', kind: 'pad', shape: { form: 'outline', closed: true, corners } },
    ],
    nextId: 50,
  };
}

const inPour = (mark: Mark) => mark.layer === 'pour';

describe('what is painted is what was figured', () => {
  const jobs: readonly (readonly [string, Job])[] = [
    ['the sample job', demoJob()],
    ...Array.from({ length: 40 }, (_, i) => [`pad ${i}`, randomPadJob(i)] as const),
  ];
  test.each(jobs)('%s: edges add up to the perimeter and the fill to the net area', (_, job) => {
    const { pour } = takeoff(job);
    if (!pour) throw new Error('no pour');
    // Each edge was rounded once, to a whole grid unit.
    const edges = pour.pieces.flatMap(({ rings }) => rings.flatMap((ring) => ring.edges)).length;
    const length = measuredLength(pourEdges(pour), () => true);
    expect(Math.abs(length - pour.perimeter)).toBeLessThanOrEqual(edges / 2 + 1);
    const area = measuredArea(drawn(job), inPour);
    // An arc that another shape cuts ends on the grid: up to 0.7 of a unit off its circle.
    expect(Math.abs(area / pour.area - 1)).toBeLessThan(1e-7);
  });

  test('each kind of edge is drawn in its own line, as long as it was figured', () => {
    const { pour } = takeoff(demoJob());
    if (!pour) throw new Error('no pour');
    for (const kind of EDGE_KINDS) {
      const length = measuredLength(
        pourEdges(pour),
        (mark) => mark.kind === 'line' && mark.style === EDGE_STYLES[kind],
      );
      expect(Math.abs(length - pour.lengthByKind[kind])).toBeLessThan(20);
    }
    expect(new Set(Object.values(EDGE_STYLES)).size).toBe(EDGE_KINDS.length);
  });
});

describe('the drawing is never lost', () => {
  test('an outline that crosses itself is drawn, marked and said', () => {
    // 0,0 → 100,100 → 100,0 → 0,100: a bow tie, crossing at 50,50.
    const marks = drawn(pad([0, 0], [100, 100], [100, 0], [0, 100]));
    expect(marks.some((mark) => mark.kind === 'line' && mark.style === 'outline')).toBe(true);
    expect(marks).toContainEqual(
      expect.objectContaining({ symbol: 'cross', at: { x: 50 * INCH, y: 50 * INCH } }),
    );
    expect(marks).toContainEqual(expect.objectContaining({ text: en.faults['crosses-itself'] }));
    expect(marks.filter(inPour)).toEqual([]);
  });

  test.each([
    ['nothing at all', blankJob()],
    ['a pad of one corner', pad([0, 0])],
    ['a pad of two corners', pad([0, 0], [10, 0])],
    ['corners on one place', pad([5, 5], [5, 5], [5, 5])],
    ['a number that is none', pad([0, 0], [Number.NaN, 0], [0, 9])],
  ])('%s draws without a fault', (_, job) => {
    for (const station of ['ground', 'forms', 'sheet'] as const) {
      expect(() => drawn(job, station)).not.toThrow();
    }
  });
});

describe('layers', () => {
  test('without a board plan forms stand outside the edges, at the board’s thickness', () => {
    const job = rectangleJob(10 * FOOT, 8 * FOOT);
    if (!job.ok) throw new Error('no job');
    const { boards: _, ...figured } = takeoff(job.value);
    const marks = drawPlan(job.value, figured, {
      station: 'forms',
      scale: { gridPerMm: 2000 },
      words: en,
      dimensions: true,
    });
    const boards = marks.filter((mark) => mark.kind === 'area' && mark.material === 'lumber');
    expect(boards).toHaveLength(4);
    // 36 ft of 1 1/2 in: each band as long as its edge.
    const area = Math.abs(measuredArea(boards, () => true));
    expect(area).toBeCloseTo(36 * FOOT * 1.5 * INCH, -3);
  });

  test('every stake is on the forms drawing, and all that holds the form elsewhere', () => {
    const job = demoJob();
    const { stakes } = takeoff(job);
    const marks = drawn(job, 'forms');
    const count = (symbol: string) =>
      marks.filter((mark) => mark.kind === 'symbol' && mark.symbol === symbol).length;
    const held = (how: string) => stakes?.held.filter((place) => place.how === how).length ?? 0;
    expect(count('stake')).toBe(stakes?.stakes.length);
    expect(stakes?.held.length).toBeGreaterThan(0);
    expect(count('stake-inside')).toBe(held('inside-stake'));
    expect(count('weight')).toBe(held('weight'));
    expect(count('end-bar')).toBe(2 * held('spreader'));
  });

  test('mesh pieces are drawn at their size', () => {
    const job = demoJob();
    const { steel } = takeoff(job);
    const length = measuredLength(
      drawn(job, 'steel'),
      (mark) => mark.kind === 'line' && (mark.style === 'mesh' || mark.style === 'mesh-under'),
    );
    const expected = steel!.mesh!.plan.pieces.reduce(
      (sum, piece) => sum + 2 * (piece.length + piece.width),
      0,
    );
    expect(length / expected).toBeCloseTo(1, 9);
  });

  test('the strip is as long as it was figured, but for standing inside the edge', () => {
    const job = demoJob();
    const { joints } = takeoff(job);
    const length = measuredLength(
      drawn(job, 'joints', 100),
      (mark) => mark.kind === 'line' && mark.style === 'strip',
    );
    expect(Math.abs(length / joints!.total - 1)).toBeLessThan(0.01);
  });
});

describe('speed', () => {
  test('an outline of 2,000 corners is drawn with a limit to its dimensions', () => {
    const corners = Array.from({ length: 2000 }, (_, i): readonly [number, number] => {
      const angle = (2 * Math.PI * i) / 2000;
      const radius = i % 2 === 0 ? 3000 : 2900;
      return [Math.round(radius * Math.cos(angle)), Math.round(radius * Math.sin(angle))];
    });
    const job = pad(...corners);
    const figured = takeoff(job);
    const marks = drawPlan(job, figured, {
      station: 'ground',
      scale: { gridPerMm: 2000 },
      words: en,
      dimensions: true,
      dimensionLimit: 20,
    });
    const said = marks.filter((mark) => mark.kind === 'text' && mark.style === 'dimension');
    expect(said.length).toBeGreaterThan(0);
    expect(said.length).toBeLessThanOrEqual(20);
  });
});
