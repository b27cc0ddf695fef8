import { expect, test } from 'vitest';
import { cornerLetter } from '../../src/job/letters.ts';

test('A to Z, then two letters, and no letter twice', () => {
  expect([0, 25, 26, 51, 52, 701, 702].map(cornerLetter)).toEqual([
    'A',
    'Z',
    'AA',
    'AZ',
    'BA',
    'ZZ',
    'AAA',
  ]);
  const letters = Array.from({ length: 2000 }, (_, index) => cornerLetter(index));
  expect(new Set(letters).size).toBe(2000);
});
