import { expect, test } from 'vitest';
import { MIGRATIONS, type Migration, migrated } from '../../src/job/migrate.ts';
import { VERSION } from '../../src/job/schema.ts';

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
