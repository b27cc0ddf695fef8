import { describe, expect, test } from 'vitest';
import type { Feature } from '../../../src/job/job.ts';
import type { BoardDemand, BoardEnd } from '../../../src/takeoff/boards/plan.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { jobOf, type Places, post, shape, wall } from '../outline/site.ts';
import { TWELVE_BY_TEN } from './boardJobs.ts';

function result(places: Places, ...others: readonly Feature[]) {
  return takeoff(jobOf([...others, shape('pad', 'pad', places)]));
}

function demandsOf(places: Places, ...others: readonly Feature[]): readonly BoardDemand[] {
  return result(places, ...others).boards!.problem.demands;
}

/** `passes 1.5 to 24`: what a board needs past its corner and the room it has there, inches. */
function said({ kind, past, room }: BoardEnd): string {
  const inches = (grid: number) => Number((grid / INCH).toFixed(2));
  return room === past ? `${kind} ${inches(past)}` : `${kind} ${inches(past)} to ${inches(room)}`;
}

function ends(demands: readonly BoardDemand[]): readonly string[] {
  return demands.map(({ start, end }) => `${said(start)}, ${said(end)}`);
}

const INCHES = (demands: readonly BoardDemand[]) => demands.map(({ need }) => need / INCH);

describe('a rectangle on open ground', () => {
  const demands = demandsOf(TWELVE_BY_TEN);

  test('each 2x4 passes at its end by 1 1/2 in, and may run 2 ft long', () => {
    expect(ends(demands)).toEqual(Array(4).fill('butts 0, passes 1.5 to 24'));
  });

  test('so 12 ft take 12\'-1 1/2", and 10 ft 10\'-1 1/2"', () => {
    expect(INCHES(demands)).toEqual([145.5, 121.5, 145.5, 121.5]);
  });

  test('a splice keeps half a cleat and a stake clear of both ends of the ground for stakes', () => {
    // 12 in of cleat and 1 1/2 of stake on either side; measured from the start of the boards, here the corner.
    expect(demands[0]?.spliceOn).toEqual([{ from: 13.5 * INCH, to: (144 - 13.5) * INCH }]);
  });

  test('boards 3/4 in thick pass by 3/4 in', () => {
    const job = jobOf([shape('pad', 'pad', TWELVE_BY_TEN)]);
    const { boards } = takeoff({ ...job, practices: { ...job.practices, formBoard: '1x4' } });
    expect(INCHES(boards!.problem.demands)).toEqual([144.75, 120.75, 144.75, 120.75]);
  });
});

describe('corners', () => {
  // Six corners, the fourth an inside one at (8, 4): from (12, 4) to (8, 4) is 4 ft, from there to (8, 10) 6 ft.
  const l: Places = [
    [0, 0],
    [12, 0],
    [12, 4],
    [8, 4],
    [8, 10],
    [0, 10],
  ];

  test('at an inside one the shorter comes to the corner, the longer stops short of it', () => {
    const demands = demandsOf(l);
    expect(ends(demands)[2]).toBe('butts 0, passes 0');
    expect(ends(demands)[3]).toBe('butts -1.5, passes 1.5 to 24');
    // 6 ft less 1 1/2 in at the inside corner, and 1 1/2 in past the other.
    expect(demands[3]?.need).toBe(6 * FOOT);
    // A stake's half off the pour, half a cleat and a stake; its boards begin 1 1/2 in after the run does.
    expect(demands[3]?.spliceOn[0]?.from).toBe((0.75 + 13.5 - 1.5) * INCH);
  });

  test('off square: past by t ÷ sin of the angle', () => {
    // A right triangle of 10 ft legs: 90° at the origin, 45° at the two others; 1 1/2 ÷ sin 45° = 2.12 in.
    const demands = demandsOf([
      [0, 0],
      [10, 0],
      [0, 10],
    ]);
    expect(ends(demands)).toEqual([
      'butts 0, passes 2.12 to 24',
      'butts 0, passes 2.12 to 24',
      'butts 0, passes 1.5 to 24',
    ]);
  });

  test('nearly straight: both are cut to it', () => {
    // One side broken by 1 ft in 6 on either half: a turn of 2 × 9.5° = 19°.
    const flat = demandsOf([
      [0, 0],
      [6, -1],
      [12, 0],
      [12, 8],
      [0, 8],
    ]);
    expect(ends(flat).slice(0, 2)).toEqual(['butts 0, flat 0', 'flat 0, passes 1.52 to 24']);
    // 1.2 in 6: 2 × 11.3° = 22.6°, so one passes: 1 1/2 ÷ sin 22.6° = 3.9 in.
    const bent = demandsOf([
      [0, 0],
      [6, -1.2],
      [12, 0],
      [12, 8],
      [0, 8],
    ]);
    expect(ends(bent)[0]).toBe('butts 0, passes 3.9 to 24');
  });

  test('blunt inside ones: the long point of the board that comes runs past by t ÷ tan', () => {
    // Two sides of 5 ft meet at an inside corner that turns back by 45°: 1 1/2 ÷ tan 45° = 1 1/2.
    const demands = demandsOf([
      [0, 0],
      [5, 0],
      [10, -5],
      [10, 12],
      [0, 12],
    ]);
    expect(ends(demands)[0]).toBe('butts 0, passes 1.5');
    expect(ends(demands)[1]?.startsWith('butts -2.12,')).toBe(true);
  });
});

describe('where there is no room past a corner', () => {
  /** 12 ft east of the pad something begins, `gap` inches from its corner. */
  const eastOf = (gap: number): Feature =>
    shape('existing-slab', 'slab', [
      [12 + gap / 12, -3],
      [16, -3],
      [16, 3],
      [12 + gap / 12, 3],
    ]);

  test('a board that just fits passes, one that doesn’t can’t', () => {
    // At a square corner both would pass over the same square of ground.
    expect(said(demandsOf(TWELVE_BY_TEN, eastOf(1.5))[0]!.end)).toBe('passes 1.5');
    expect(said(demandsOf(TWELVE_BY_TEN, eastOf(1))[0]!.end)).toBe('stops 0');
  });

  test('the other board passes where its ground is clear', () => {
    // At the triangle's sharp corner the ground past the south board lies south of that past the slanting one.
    const peg = post('peg', 10 + 0.4 / 12, -1.3 / 12, 0.2 / 12);
    const demands = demandsOf(
      [
        [0, 0],
        [10, 0],
        [0, 10],
      ],
      peg,
    );
    expect(said(demands[0]!.end)).toBe('butts 0');
    expect(said(demands[1]!.start)).toBe('passes 2.12 to 24');
  });

  test('it runs long as far as the ground is clear', () => {
    expect(said(demandsOf(TWELVE_BY_TEN, eastOf(9))[0]!.end)).toBe('passes 1.5 to 9');
  });

  test('another board is in the way as well', () => {
    // A second pad 1 ft east: its west board stands 1 1/2 in into the gap, and passes its own south corner.
    const second = shape('pad', 'second', [
      [13, 0],
      [20, 0],
      [20, 10],
      [13, 10],
    ]);
    const demands = demandsOf(TWELVE_BY_TEN, second);
    expect(demands).toHaveLength(8);
    const long = demands.map(({ end }) => said(end));
    expect(long).toContain('passes 1.5 to 10.5');
  });

  test('over a no-stake zone a board lies all the same', () => {
    const zone = shape('no-stake-zone', 'zone', [
      [12, -3],
      [16, -3],
      [16, 3],
      [12, 3],
    ]);
    expect(said(demandsOf(TWELVE_BY_TEN, zone)[0]!.end)).toBe('passes 1.5 to 24');
  });

  test('neither can pass: both end at the corner, and the place is named', () => {
    // A post an inch off the corner, in the way of both.
    const { boards, notes } = result(TWELVE_BY_TEN, post('post', 12 + 1 / 12, -1 / 12, 2 / 12));
    const [south, east] = boards!.problem.demands;
    expect(said(south!.end)).toBe('stops 0');
    expect(said(east!.start)).toBe('stops 0');
    expect(notes.find(({ code }) => code === 'boards-corner-tight')?.at).toEqual([
      { x: 12 * FOOT, y: 0 },
    ]);
  });

  test('a wall’s face is in the way as well, though it is but a line', () => {
    const face = wall(
      'face',
      [
        [-5, 10],
        [20, 10],
      ],
      { closed: false, pourAgainst: false },
    );
    const demands = demandsOf(TWELVE_BY_TEN, face);
    expect(ends(demands)).toEqual([
      'butts 0, passes 1.5 to 24',
      'butts 0, stops 0',
      'stops 0, stops 0',
      'stops 0, passes 1.5 to 24',
    ]);
  });
});

describe('where a run ends at what is there already', () => {
  test('lapped onto the side of an old slab that lies in line', () => {
    // The old slab goes on west of the pad, its south side in line with the pad's.
    const slab = shape('existing-slab', 'slab', [
      [-8, 0],
      [0, 0],
      [0, 10],
      [-8, 10],
    ]);
    const demands = demandsOf(TWELVE_BY_TEN, slab);
    expect(ends(demands)).toEqual([
      'laps 12 to 24, passes 1.5 to 24',
      'butts 0, passes 1.5 to 24',
      'butts 0, laps 12 to 24',
    ]);
    expect(INCHES(demands)).toEqual([157.5, 121.5, 156]);
  });

  test('stops at a slab that stands across it, braced there', () => {
    const slab = shape('existing-slab', 'slab', [
      [-8, -4],
      [0, -4],
      [0, 14],
      [-8, 14],
    ]);
    const { boards, notes } = result(TWELVE_BY_TEN, slab);
    expect(ends(boards!.problem.demands)).toEqual([
      'stops 0, passes 1.5 to 24',
      'butts 0, passes 1.5 to 24',
      'butts 0, stops 0',
    ]);
    expect(notes.find(({ code }) => code === 'boards-stop')?.at).toHaveLength(2);
  });

  test('as much as there is room for, from 4 in up', () => {
    const slab = shape('existing-slab', 'slab', [
      [-8, 0],
      [0, 0],
      [0, 10],
      [-8, 10],
    ]);
    /** A post on the line of the south side, so many inches beyond the pad. */
    const start = (inches: number) =>
      said(demandsOf(TWELVE_BY_TEN, slab, post('post', -inches / 12 - 1, -1, 2))[0]!.start);
    // Of a round post the strip meets the side, 1 1/2 in out at most: a little farther than its middle's line.
    expect(start(6)).toMatch(/^laps/);
    expect(start(-8)).toMatch(/^stops/);
  });
});

test('curved runs take no boards, and are listed with what is bent to them', () => {
  // The east side bows out by 2 ft on 10.
  const { boards, notes } = result(
    [
      [0, 0],
      [12, 0, 0],
      [12, 10],
      [0, 10],
    ].map(([x, y], i) => [x!, y!, i === 1 ? 2 : 0] as const),
  );
  expect(boards?.problem.demands.map(({ run }) => run)).toEqual(['R1', 'R3', 'R4']);
  const [curved] = boards!.curved;
  // Radius (5² + 2²) ÷ (2 × 2) = 7.25 ft; arc 2 × 7.25 × asin(5 ÷ 7.25) = 11.03 ft, and 6 in at either end.
  expect(curved?.run).toBe('R2');
  expect(curved!.length / FOOT).toBeCloseTo(2 * 7.25 * Math.asin(5 / 7.25) + 1, 4);
  expect(notes.some(({ code }) => code === 'boards-curved')).toBe(true);
});
