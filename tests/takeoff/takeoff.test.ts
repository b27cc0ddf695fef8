import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { blankJob } from '../../src/job/start.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT } from '../../src/units/grid.ts';
import { jobOf, shape } from './outline/site.ts';
import { spacings } from './spacings.ts';

const square = shape('pad', 'pad', [
  [0, 0],
  [12, 0],
  [12, 10],
  [0, 10],
]);

test('has every part of the sample job, and nothing stands in the way', () => {
  const result = takeoff(demoJob());
  expect(Object.keys(result).sort()).toEqual(
    [
      'boards',
      'forms',
      'joints',
      'mix',
      'notes',
      'order',
      'placing',
      'pour',
      'stakes',
      'steel',
      'volume',
      'weather',
    ].sort(),
  );
  expect(result.notes.filter(({ weight }) => weight === 'stop')).toEqual([]);
});

test('is plain data: it crosses to a worker and back unchanged', () => {
  const result = takeoff(demoJob());
  expect(structuredClone(result)).toEqual(result);
  expect(JSON.parse(JSON.stringify(result))).toEqual(result);
});

test('the same job gives the same takeoff', () => {
  expect(takeoff(demoJob())).toEqual(takeoff(demoJob()));
});

describe('without a pour there is no figure at all', () => {
  const slab = shape('existing-slab', 'slab', [
    [-1, -1],
    [13, -1],
    [13, 11],
    [-1, 11],
  ]);
  const bow = shape('pad', 'bow', [
    [0, 0],
    [12, 10],
    [12, 0],
    [0, 10],
  ]);
  test.each([
    ['a blank site', blankJob(), 'no-pad'],
    ['a pad inside a slab', jobOf([square, slab]), 'pad-inside-existing-slab'],
    ['a pad that crosses itself', jobOf([bow]), 'crosses-itself'],
  ] as const)('%s', (_, job, code) => {
    const { notes, ...parts } = takeoff(job);
    expect(parts).toEqual({});
    expect(notes.find((note) => note.code === code)?.weight).toBe('stop');
  });
});

test('one trade that can’t be figured leaves the others', () => {
  const job = jobOf([square]);
  const { steel } = job.practices;
  const covered = { ...steel, mesh: { ...steel.mesh, cover: 6 * FOOT } };
  const result = takeoff({
    ...job,
    practices: { ...job.practices, steel: covered, ...spacings(0) },
  });
  expect(result.steel).toBeUndefined();
  expect(result.stakes).toBeUndefined();
  expect(result.forms!.total).toBe(44 * FOOT);
  expect(result.mix!.totalBags).toBeGreaterThan(0);
});

test('says what can hurt, at the stations where it does', () => {
  const cautions = takeoff(demoJob()).notes.filter(({ weight }) => weight === 'caution');
  const at = Object.fromEntries(cautions.map(({ code, station }) => [code, station]));
  expect(at).toMatchObject({
    'call-before-digging': 'forms',
    'mesh-springs-back': 'steel',
    'cement-burns': 'mix',
    'silica-dust': 'mix',
    'heavy-bags': 'mix',
  });
});

test('a job moved or turned by quarters comes to the same', () => {
  const places = [
    [0, 0],
    [23, 0],
    [23, 9.25],
    [11.5, 9.25],
    [11.5, 17],
    [0, 17],
  ] as const;
  const figures = (turn: (x: number, y: number) => readonly [number, number]) => {
    const { pour, forms, stakes, steel, mix } = takeoff(
      jobOf([
        shape(
          'pad',
          'pad',
          places.map(([x, y]) => turn(x, y)),
        ),
      ]),
    );
    return [
      pour!.area,
      pour!.perimeter,
      forms!.runs.map(({ length }) => length).sort(),
      stakes!.stakes.length,
      steel!.mesh!.plan.used.length,
      steel!.mesh!.need.area,
      mix!.made,
    ];
  };
  const still = figures((x, y) => [x, y]);
  expect(figures((x, y) => [x + 101, y - 57])).toEqual(still);
  expect(figures((x, y) => [-y, x])).toEqual(still);
  expect(figures((x, y) => [-x, -y])).toEqual(still);
  expect(figures((x, y) => [y, -x])).toEqual(still);
});
