import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/job/job.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { ticketOf } from '../../../src/takeoff/tickets.ts';
import { CUBIC_FOOT, FOOT, SQUARE_FOOT } from '../../../src/units/grid.ts';
import { fromFahrenheit } from '../../../src/units/temperature.ts';
import { joint } from '../joints/jointJobs.ts';
import { jobOf, shape, wall } from '../outline/site.ts';
import { evenly, FAR_WALL, PLACING_JOBS, pad, TEN_BY_TWELVE } from './placingJobs.ts';

function placed(job: Job) {
  const { placing } = takeoff(job);
  if (!placing) throw new Error('not placed');
  return placing;
}

const codesOf = (job: Job) => takeoff(job).notes.map(({ code }) => code);
const slab = pad(...TEN_BY_TWELVE);

describe('14 ft³ an hour at 3 1/2 in', () => {
  // 14 ÷ (3.5/12) = 48 ft² an hour; 120 ft² take 2 1/2 h.
  test('cover 48 ft² an hour, and 10 by 12 ft take two hours and a half', () => {
    const { batch, timeline } = placed(evenly([slab]));
    expect(batch.minutes).toBe(5);
    expect((60 * batch.area) / batch.minutes / SQUARE_FOOT).toBeCloseTo(48, 6);
    expect(timeline.batches).toHaveLength(30);
    expect(timeline.placed).toBeCloseTo(150, 6);
  });

  // Three sections of 40 ft²: 11.67 ft³, ten batches, 50 min.
  test('three sections between bulkheads at joints are under an hour each', () => {
    const job = evenly(
      [
        slab,
        joint('one', [
          [4, 0],
          [4, 10],
        ]),
        joint('two', [
          [8, 0],
          [8, 10],
        ]),
      ],
      {},
      { initial: 60, final: 300 },
    );
    const { trouble, offers } = placed(job);
    expect(trouble.setsFirst).toBe(true);
    const bulkhead = offers.find(({ by }) => by === 'bulkhead');
    expect(bulkhead).toMatchObject({ works: true, joints: [0, 1] });
    expect(bulkhead!.placed).toBeCloseTo(50, 6);
    expect(bulkhead).toHaveProperty('areas');
    const { areas } = bulkhead as { areas: readonly number[] };
    expect(areas.map((area) => area / SQUARE_FOOT)).toEqual([40, 40, 40]);
  });

  // Strips of 4 ft across the 10 ft side: 40 ft² each, so an edge waits 50 min; one of 6 ft 75 min.
  test.each([
    [6, 3, 50],
    [8, 2, 75],
  ])('with a board of %i ft: %i strips, whose edges wait %i min', (board, strips, age) => {
    const { strips: all, oldest, trouble } = placed(evenly([slab], { board: board * FOOT }));
    expect(all).toHaveLength(strips);
    expect(oldest.age).toBeCloseTo(age, 6);
    expect(trouble.coldJoint).toBe(age > 60);
  });
});

describe('two hands', () => {
  // By the mixer 5 min, one trip (2 × 25 ÷ 200 + 0.75 = 1 min), 14/12 ft³ at 27 an hour (2.59 min), 4 ft² at 200 (1.2 min).
  const work = 5 + 1 + (60 * 14) / 12 / 27 + 1.2;

  test('share the work of a batch, and the mixer waits for them', () => {
    const { batch } = placed(evenly([slab], { crew: 2 }));
    expect(batch.work.all).toBeCloseTo(work, 6);
    expect(batch.minutes).toBe(5);
    expect(placed(evenly([slab], { crew: 1 })).batch.minutes).toBeCloseTo(work, 6);
  });

  test('are one at the mixer once finishing starts', () => {
    // Strips of 2 ft: the first lies after 25 min, and is ready for the float 18 min later.
    const job = evenly(
      [slab],
      { crew: 2, board: 4 * FOOT, floatRate: 20 * SQUARE_FOOT },
      { initial: 30, final: 600 },
    );
    const { timeline } = placed(job);
    const floated = timeline.strips[0]!.passes[0]!.from;
    expect(floated).toBeCloseTo(25 + 18, 6);
    const gaps = timeline.batches.map(({ from, to }) => to - from);
    expect(gaps[0]).toBeCloseTo(5, 6);
    const during = timeline.batches.findIndex(({ from }) => from >= floated);
    expect(gaps[during]).toBeCloseTo(work, 6);
    expect(timeline.placed).toBeGreaterThan(150);
  });

  test('one alone lets the mixer stand, and is told so', () => {
    expect(codesOf(PLACING_JOBS['alone']!)).toContain('placing-alone');
  });
});

describe('what the board rides on', () => {
  test('forms on both sides, where it reaches', () => {
    const { strips } = placed(evenly([slab]));
    expect(strips.map(({ rides }) => rides)).toEqual([[['form'], ['form']]]);
    expect(codesOf(evenly([slab]))).not.toContain('screed-rails');
  });

  test('temporary rails between strips, two for each strip', () => {
    const { strips } = placed(evenly([slab], { board: 6 * FOOT }));
    expect(strips.map(({ rides }) => rides.map(([first]) => first).sort())).toEqual([
      ['form', 'rail'],
      ['rail', 'rail'],
      ['form', 'rail'],
    ]);
    expect(codesOf(evenly([slab], { board: 6 * FOOT }))).toContain('screed-rails');
  });

  test('along a wall a wet screed; on an old slab that slab', () => {
    const older = shape('existing-slab', 'older', [
      [0, -4],
      [12, -4],
      [12, 0],
      [0, 0],
    ]);
    const { strips } = placed(evenly([slab, FAR_WALL, older]));
    expect(strips[0]!.rides.map(([first]) => first).sort()).toEqual(['old-slab', 'wet-screed']);
    expect(codesOf(evenly([slab, FAR_WALL, older]))).toContain('screed-wet');
  });

  test('one person strikes off no wider than is set', () => {
    const { strips, span } = placed(evenly([slab], { pulledBy: 'one' }));
    expect(span).toBe(6 * FOOT);
    expect(strips).toHaveLength(2);
  });
});

describe('the way out', () => {
  test('work goes from the wall to where one can step out', () => {
    // Across: the pull goes from the wall at y 10 to the free edge at y 0.
    const { strips } = placed(evenly([slab, FAR_WALL], { strips: 'across' }));
    for (const { pull } of strips) expect(pull[0].y).toBeGreaterThan(pull[1].y);
    expect(strips.every(({ wayOut }) => wayOut)).toBe(true);
    // Along: the strip by the wall comes first.
    const along = placed(evenly([slab, FAR_WALL], { strips: 'along', board: 7 * FOOT }));
    expect(along.strips.map(({ pull }) => pull[0].y / FOOT)).toEqual([7.5, 2.5]);
  });

  test('walls all round leave none', () => {
    const codes = codesOf(PLACING_JOBS['shut in']!);
    expect(codes).toContain('placing-no-way-out');
    expect(codes).toContain('placing-edge-wall-first');
  });

  test('the edge by a wall is finished first; what no pole reaches is said', () => {
    expect(codesOf(PLACING_JOBS['a short pole']!)).toEqual(
      expect.arrayContaining(['placing-edge-wall-first', 'placing-out-of-reach']),
    );
    expect(codesOf(evenly([slab]))).not.toContain('placing-out-of-reach');
  });
});

describe('the weather', () => {
  const weather = (fahrenheit: number) => ({ air: fromFahrenheit(fahrenheit) });

  // A third less for each 10 °F more: 240 min are 180 at 80 °F, the window of 60 min is 45.
  test('heat shortens the set and the window, cold lengthens the set alone', () => {
    const warm = placed({ ...evenly([slab]), weather: weather(80) });
    expect(warm.clock.initial).toBeCloseTo(180, 6);
    expect(warm.window).toBeCloseTo(45, 6);
    const cool = placed({ ...evenly([slab]), weather: weather(60) });
    expect(cool.clock.initial).toBeCloseTo(320, 6);
    expect(cool.window).toBe(60);
    expect(cool.clock.strip).toBeCloseTo(32 * 60, 6);
  });

  test('cool water is offered for what it does, and not where nothing is warm', () => {
    const hot = { ...evenly([slab], {}, { initial: 240, final: 900 }), weather: weather(90) };
    const { offers, clock } = placed(hot);
    // 135 min at 90 °F; water of 50 °F cools the mix by 10 °F: 180 min, and 150 are enough.
    expect(clock.initial).toBeCloseTo(135, 6);
    expect(offers.find(({ by }) => by === 'water')).toMatchObject({ works: true });
    const dull = evenly([slab], {}, { initial: 120, final: 900 });
    expect(placed(dull).offers.map(({ by }) => by)).not.toContain('water');
  });
});

describe('what would help', () => {
  const soon = { initial: 90, final: 900 };

  test('more hands help where hands are short, a second mixer where it is', () => {
    const { offers } = placed(evenly([slab], {}, soon));
    expect(offers.find(({ by }) => by === 'hands')).toBeUndefined();
    expect(offers.find(({ by }) => by === 'mixer')).toMatchObject({ works: true, mixers: 1 });
    const short = placed(evenly([slab], { crew: 1 }, { initial: 170, final: 900 }));
    expect(short.offers.find(({ by }) => by === 'hands')).toMatchObject({ works: true, hands: 1 });
  });

  test('a slower mix is offered by its name, with the batches that it takes', () => {
    const job = evenly([slab], {}, soon);
    const [bag] = job.practices.mix.mixes;
    const slow = { ...bag!, id: 'slow', name: 'Slow', set: { ...bag!.set, initial: 300 } };
    const mix = { ...job.practices.mix, mixes: [bag!, slow] };
    const { offers } = placed({ ...job, practices: { ...job.practices, mix } });
    expect(offers.find(({ by }) => by === 'mix')).toMatchObject({ works: true, name: 'Slow' });
  });

  test('narrower strips where an edge gets too old', () => {
    const { offers, oldest } = placed(evenly([slab], { board: 8 * FOOT }));
    expect(oldest.age).toBeGreaterThan(60);
    const narrow = offers.find(({ by }) => by === 'narrow')!;
    expect(narrow).toMatchObject({ works: true, width: 3 * FOOT });
    // 30 ft² at 48 an hour.
    expect(narrow.oldest).toBeCloseTo(37.5, -1);
  });

  test('nothing is offered where nothing goes wrong; where nothing is enough that is said', () => {
    expect(placed(evenly([slab])).offers).toEqual([]);
    expect(codesOf(PLACING_JOBS['a hopeless mix']!)).toContain('placing-nothing-works');
  });
});

describe('what can’t be timed', () => {
  test.each([
    ['a short board', 'screed-board-short', 'stop'],
    ['no rate', 'placing-rates-wrong', 'stop'],
    ['an eye of a mixer', 'placing-no-batches', 'caution'],
    ['a lot of batches', 'placing-too-many', 'caution'],
  ])('%s', (name, code, weight) => {
    const { placing, notes, pour } = takeoff(PLACING_JOBS[name]!);
    expect(placing).toBeUndefined();
    expect(pour).toBeDefined();
    expect(notes.find((note) => note.code === code)?.weight).toBe(weight);
  });
});

test('a blend is taken to set as its fastest mix does', () => {
  const job = jobOf([slab]);
  const { mix } = job.practices;
  const blend = { main: 'regular', mainParts: 3, other: 'fast', otherParts: 1 };
  const blended = {
    ...job,
    practices: { ...job.practices, mix: { ...mix, blend, batchVolume: 2.2 * CUBIC_FOOT } },
  };
  expect(placed(blended).set).toMatchObject({ initial: 30, fastest: true });
  expect(codesOf(blended)).toContain('placing-blend-fastest');
});

test('every figure of placing says how it was reached, and its table has a row a strip', () => {
  const job = evenly([slab], { board: 6 * FOOT });
  const { figures, tables } = ticketOf(job, takeoff(job), 'mix');
  for (const key of ['placing-time', 'open-edge', 'forms-off', 'screed-strips'] as const) {
    expect(figures.find((one) => one.key === key)!.working().of).toBe(key);
  }
  const strips = tables.find(({ key }) => key === 'placing-strips')!;
  expect(strips.rows).toHaveLength(3);
  expect(strips.rows.map((row) => row[3])).toEqual([
    { of: 'text', text: '1–10' },
    { of: 'text', text: '11–20' },
    { of: 'text', text: '21–30' },
  ]);
});

test('a wall that can’t be poured against has a form that nobody can stand behind', () => {
  const skirting = wall(
    'skirting',
    [
      [-2, 10],
      [14, 10],
    ],
    { closed: false, pourAgainst: false },
  );
  const { strips, reach } = placed(evenly([slab, skirting], { strips: 'along' }));
  expect(strips[0]!.rides.map(([first]) => first)).toEqual(['form', 'form']);
  expect(reach.wallsFirst).toHaveLength(1);
});
