import { describe, expect, test } from 'vitest';
import type { PickedStake } from '../../src/sketch/formLine.ts';
import { hit, MOUSE_REACH_PX, TOUCH_REACH_PX } from '../../src/sketch/hit.ts';
import { siteOf } from '../../src/sketch/site.ts';
import { FOOT } from '../../src/units/grid.ts';
import { formLineFor, formsJob } from './forms.ts';
import { PAD } from './jobs.ts';

/** Stakes of the lower edge stand at 1, 4, 7… ft; 30 px are a foot. */
const job = formsJob(PAD);
const site = siteOf(job);
const formLine = formLineFor(job);
const PX = FOOT / 30;

interface Look {
  readonly reachPx?: number;
  readonly selected?: string;
  readonly picked?: PickedStake;
}

/** What is hit so many pixels from a place in feet. */
function at(x: number, y: number, px: readonly [number, number] = [0, 0], look: Look = {}) {
  const found = hit({
    at: { x: Math.round(x * FOOT + px[0] * PX), y: Math.round(y * FOOT + px[1] * PX) },
    site,
    dimensions: [],
    reach: (look.reachPx ?? TOUCH_REACH_PX) * PX,
    selected: look.selected ?? null,
    formLine,
    picked: look.picked ?? null,
  });
  return found.on === 'stake'
    ? `stake ${found.stake.run.mark} ${found.stake.along / FOOT}`
    : found.on;
}

describe('a stake is hit', () => {
  test.each([
    ['on it', [0, -5], 'stake R1 4'],
    ['on the edge beside it', [0, 0], 'stake R1 4'],
    ['22 px to one side', [21.9, -8.8], 'stake R1 4'],
    ['22 px to the other', [-21.9, -8.8], 'stake R1 4'],
    ['30 px out: the ground', [0, -32], 'ground'],
    ['on the edge between stakes', [45, 0], 'edge'],
  ] as const)('by a finger %s', (_, px, found) => {
    expect(at(4, 0, px)).toBe(found);
  });

  test('by a mouse within a few pixels', () => {
    const mouse = { reachPx: MOUSE_REACH_PX };
    expect(at(4, 0, [5, -4], mouse)).toBe('stake R1 4');
    expect(at(4, 0, [12, 0], mouse)).toBe('edge');
  });

  test('the nearest of several, though the picked one wins within reach', () => {
    const wide = { reachPx: 80 };
    expect(at(4, 0, [40, 0], wide)).toBe('stake R1 4');
    expect(at(4, 0, [50, 0], wide)).toBe('stake R1 7');
    expect(at(4, 0, [50, 0], { ...wide, picked: { run: 'R1', along: 4 * FOOT } })).toBe(
      'stake R1 4',
    );
  });
});

describe('a corner with a stake near it', () => {
  const wide = { reachPx: 40 };
  test.each([
    ['on the corner', [0, 0], 'corner'],
    ['inside of it', [6, 6], 'corner'],
    ['a third of the way to the stake', [10, 0], 'corner'],
    ['nearer the stake than half as far', [24, -6], 'stake R1 1'],
  ] as const)('%s', (_, px, found) => {
    expect(at(0, 0, px, wide)).toBe(found);
  });

  test('a selected shape’s corner wins within reach', () => {
    expect(at(0, 0, [24, -6], { ...wide, selected: 'pad' })).toBe('corner');
  });

  test('a picked stake wins over it', () => {
    const picked = { run: 'R1', along: FOOT };
    expect(at(0, 0, [4, -4], { ...wide, selected: 'pad', picked })).toBe('stake R1 1');
  });
});

test('at a station without stakes the edge is hit there', () => {
  const place = { x: 4 * FOOT, y: 0 };
  const query = { at: place, site, dimensions: [], reach: 20 * PX, selected: null };
  expect(hit({ ...query, formLine: null })).toMatchObject({ on: 'edge' });
});
