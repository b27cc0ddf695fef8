import { expect, test } from 'vitest';
import { defaultLumber } from '../../src/job/defaults.ts';
import { demoJob } from '../../src/job/demo.ts';
import { MIGRATIONS, type Migration, migrated } from '../../src/job/migrate.ts';
import { VERSION } from '../../src/job/schema.ts';
import { INCH } from '../../src/units/grid.ts';

const steps: readonly Migration[] = [
  { to: 2, change: (job) => `${job} → 2` },
  { to: 3, change: (job) => `${job} → 3` },
];

test('there is one step for every version but the first, in order', () => {
  expect(MIGRATIONS.map(({ to }) => to)).toEqual(
    Array.from({ length: VERSION - 1 }, (_, n) => n + 2),
  );
});

test('a job is brought forward from where it stands', () => {
  expect(migrated('1', 1, steps)).toBe('1 → 2 → 3');
  expect(migrated('2', 2, steps)).toBe('2 → 3');
  expect(migrated('3', 3, steps)).toBe('3');
});

test('a gap between steps is our own mistake, and loud', () => {
  expect(() => migrated('1', 1, [{ to: 3, change: (job) => job }])).toThrow('leads to version 3');
});

test('version 2 keeps the spacing and the nails that version 1 said, for the board they were set for', () => {
  const { practices, lumber: ___, meshStock: _, handStakes, ...rest } = demoJob();
  const { stakeSpacings, fastening, steel: __, ...others } = practices;
  const old = {
    ...rest,
    practices: {
      ...others,
      formBoard: '2x6',
      stakeSpacing: 20 * INCH,
      nailsPerStake: 3,
      nailsPerCorner: 5,
      nailsPerPound: 44,
    },
  };
  expect(migrated(old, 1)).toMatchObject({
    practices: {
      formBoard: '2x6',
      stakeSpacings: { ...stakeSpacings, '2x6': 20 * INCH },
      fastening: { ...fastening, perStake: 3, perCorner: 5, nailsPerPound: 44 },
    },
    lumber: defaultLumber(),
    handStakes,
  });
  expect(migrated(old, 1)).not.toHaveProperty('practices.stakeSpacing');
  // What isn't a job is left for the check to say.
  expect(migrated('nothing', 1)).toBe('nothing');
});

test('version 2 keeps the sheet, the laps and the wire that version 1 said', () => {
  const { practices, meshStock: _, ...rest } = demoJob();
  const { steel, ...others } = practices;
  const mesh = { sheetLength: 96 * INCH, sheetWidth: 48 * INCH, lap: 7 * INCH, cover: 3 * INCH };
  const of = (wire: { square: number; weight: number }) =>
    migrated({ ...rest, practices: { ...others, mesh: { ...mesh, ...wire } } }, 1);
  expect(of({ square: 4 * INCH, weight: 1.25 })).toMatchObject({
    practices: {
      steel: {
        kind: 'mesh',
        mesh: {
          style: 'own',
          own: { square: 4 * INCH, weight: 1.25 },
          lapEnds: 7 * INCH,
          lapSides: 7 * INCH,
          cover: 3 * INCH,
        },
      },
    },
    meshStock: { truck: [], yard: [{ form: 'sheet', length: 96 * INCH, width: 48 * INCH }] },
  });
  // The wire that version 1 started with has a name now.
  expect(of(steel.mesh.own)).toMatchObject({
    practices: { steel: { mesh: { style: '6x6-W1.4' } } },
  });
  expect(of(steel.mesh.own)).not.toHaveProperty('practices.mesh');
});

test('version 3 keeps the strip that version 2 said, and lays joints out as a new job does', () => {
  const { practices, ...rest } = demoJob();
  const { joints, isolation, ...others } = practices;
  const { bondAtPatch, thickness, recess, ...strip } = isolation;
  const old = { ...rest, practices: { ...others, isolation: { ...strip, wall: false } } };
  expect(migrated(old, 2)).toMatchObject({
    practices: { joints, isolation: { ...isolation, wall: false } },
  });
  expect(migrated('nothing', 2)).toBe('nothing');
});

test('version 3 gives a mix of before the set times of such a mix, marked as common practice', () => {
  const { practices, ...rest } = demoJob();
  const old = (id: string) => {
    const mixes = practices.mix.mixes.map(({ set: _, ...bag }) => ({ ...bag, id }));
    return { ...rest, practices: { ...practices, mix: { ...practices.mix, mixes } } };
  };
  const setOf = (id: string) => ({
    practices: {
      mix: { mixes: [{ set: practices.mix.mixes.find((bag) => bag.id === id)?.set }, {}] },
    },
  });
  expect(migrated(old('fast'), 2)).toMatchObject(setOf('fast'));
  expect(migrated(old('regular'), 2)).toMatchObject(setOf('regular'));
  expect(migrated(old('mine'), 2)).toMatchObject(setOf('regular'));
});
