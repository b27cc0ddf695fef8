import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { reference } from '../../references/references.ts';

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

/** Degrees round the colour circle: red 0, yellow 60, green 120, blue 240. */
function hue(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) =>
    Number.parseInt(colour.slice(at, at + 2), 16),
  );
  const [most, least] = [Math.max(r, g, b), Math.min(r, g, b)];
  const turn =
    most === r
      ? (g - b) / (most - least)
      : most === g
        ? 2 + (b - r) / (most - least)
        : 4 + (r - g) / (most - least);
  return (turn * 60 + 360) % 360;
}

describe('buried lines have the colours that they are marked with on the ground', () => {
  const { says } = reference('utility-marking-colours');
  // The published list names colours; these are their places on the circle, none shared.
  const published = [
    ['electric', 'Red: electric', -15, 12],
    ['communication', 'Orange: communication', 18, 32],
    ['gas', 'Yellow: gas', 42, 65],
    ['sewer', 'Green: sewers', 110, 150],
    ['water', 'Blue: potable water', 200, 235],
    ['reclaimed-water', 'Purple: slurry, irrigation and reclaimed water', 265, 295],
  ] as const;

  test.each(published)('%s', (service, named, from, to) => {
    expect(says).toContain(named);
    for (const colours of [sun, evening]) {
      const at = hue(colours?.[service] ?? '');
      expect(at > 180 && from < 0 ? at - 360 : at).toBeGreaterThanOrEqual(from);
      expect(at > 180 && from < 0 ? at - 360 : at).toBeLessThanOrEqual(to);
      // Guidelines ask 3 to 1 of lines that mean something.
      for (const ground of ['yard', 'tolerance', 'fresh']) {
        expect(contrast(colours?.[service] ?? '', colours?.[ground] ?? '')).toBeGreaterThanOrEqual(
          3,
        );
      }
    }
  });
});

test('the sum itself: black on white is 21 to 1', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
});
