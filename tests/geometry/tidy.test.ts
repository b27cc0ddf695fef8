import { expect, test } from 'vitest';
import { tidyRing } from '../../src/geometry/tidy.ts';

function tidied(names: string): string {
  const spots = 'abcdefgh';
  const points = [...names].map((name) => ({
    x: spots.indexOf(name),
    y: spots.indexOf(name) ** 2,
  }));
  const tags = [...names].map((_, i) => i);
  tidyRing(points, tags);
  expect(tags).toHaveLength(points.length);
  return points.map(({ x }) => spots[x]).join('');
}

test.each([
  ['abcd', 'abcd', 'nothing to do'],
  ['abbcd', 'abcd', 'a repeat'],
  ['abcda', 'bcda', 'a repeat over the end'],
  ['abcbd', 'abd', 'a spike'],
  ['abcdcbe', 'abe', 'a spike of two'],
  ['babcd', 'bcd', 'a spike at the start'],
  ['bcdba', 'bcd', 'a spike over the end'],
  ['aba', '', 'nothing but a spike'],
  ['aab', '', 'too few'],
  ['abcba', '', 'out and back'],
])('%s becomes %s: %s', (given, left) => {
  const seen = tidied(given);
  const turns = [...left].map((_, i) => left.slice(i) + left.slice(0, i));
  if (left === '') expect(seen).toBe('');
  else expect(turns).toContain(seen);
});
