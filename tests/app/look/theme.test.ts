import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const css = readFileSync(new URL('../../../src/app/look/theme.css', import.meta.url), 'utf8');
const [sun, evening] = css
  .split('}')
  .map((block) =>
    Object.fromEntries(
      [...block.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6});/g)].map((m) => [m[1], m[2]]),
    ),
  );

/** Relative luminance and contrast as the Web Content Accessibility Guidelines 2.2 define them (from memory). */
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

describe.each([
  ['sun', sun],
  ['evening', evening],
])('in the %s', (_, colours) => {
  test.each([
    ['ink', 'paper', 7],
    ['ink', 'slip', 7],
    ['ink', 'fresh', 7],
    ['ink-soft', 'paper', 4.5],
    ['ink-soft', 'slip', 4.5],
    ['chalk', 'paper', 4.5],
    ['chalk', 'fresh', 4.5],
    ['stop', 'paper', 4.5],
    ['caution', 'caution-ground', 4.5],
    ['on-chalk', 'chalk', 4.5],
  ] as const)('%s on %s keeps %f to 1', (text, ground, least) => {
    const [front, back] = [colours?.[text], colours?.[ground]];
    expect(contrast(front ?? '', back ?? '')).toBeGreaterThanOrEqual(least);
  });
});

test('the sum itself: black on white is 21 to 1', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
});
