import { expect, test } from 'vitest';
import { parseAngle } from '../../src/units/angle.ts';
import { formatAngle } from '../../src/units/format.ts';

test.each([
  ['45', 45],
  ['45°', 45],
  ['22.5 deg', 22.5],
  ['22,5', 22.5],
  ['-22 1/2°', -22.5],
  ['−90 degrees', -90],
  ['45° 30′', 45.5],
  [`45° 30' 36"`, 45.51],
  ['360 deg', 360],
  ['-0', 0],
  ['', 'angle-empty'],
  ['north', 'angle-unreadable'],
  ['45 min', 'angle-unreadable'],
  ["45'", 'angle-unreadable'],
  ['1 1/0', 'angle-unreadable'],
  ['NaN', 'angle-unreadable'],
  ['1e2', 'angle-unreadable'],
  ['361', 'angle-range'],
  ['9'.repeat(50), 'angle-range'],
])('%s', (typed, angle) => {
  const read = parseAngle(typed);
  expect(read.ok ? read.value : read.problems[0]?.code).toBe(angle);
});

test('comes back from how it is written', () => {
  for (let degrees = -360; degrees <= 360; degrees += 0.25) {
    expect(parseAngle(formatAngle(degrees))).toEqual({ ok: true, value: degrees + 0 });
  }
});
