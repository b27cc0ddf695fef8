import { expect, test } from 'vitest';
import { cutText, TEXT_MOST } from '../../src/job/textLimits.ts';

test('a text is cut to its limit, but never through a letter of two units', () => {
  expect(cutText('short', 5)).toBe('short');
  expect(cutText('longer', 4)).toBe('long');
  expect(cutText('ab🧱cd', 3)).toBe('ab');
  expect(cutText('ab🧱cd', 4)).toBe('ab🧱');
  expect(cutText('x'.repeat(500), TEXT_MOST.name)).toHaveLength(200);
});
