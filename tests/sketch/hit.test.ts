import { describe, expect, test } from 'vitest';
import { type DimensionText, hit } from '../../src/sketch/hit.ts';
import { siteOf } from '../../src/sketch/site.ts';
import { FOOT, INCH } from '../../src/units/grid.ts';
import { jobOf, outline, PAD, POST } from './jobs.ts';

const SLAB = outline('slab', 'existing-slab', [
  [20, 0],
  [30, 0],
  [30, 10],
  [20, 10],
]);
const site = siteOf(jobOf(POST, PAD, SLAB));
const text: DimensionText = {
  feature: 'pad',
  corner: 'pad-0',
  middle: { x: 10 * FOOT, y: -2 * FOOT },
  halfLength: FOOT,
  halfHeight: FOOT / 4,
  angle: 0,
};

function at(x: number, y: number, selected: string | null = null) {
  const place = { x: Math.round(x * FOOT), y: Math.round(y * FOOT) };
  return hit({ at: place, site, dimensions: [text], reach: 6 * INCH, selected });
}

describe('what a pointer lands on', () => {
  test('a corner wins over the edges that meet there', () => {
    expect(at(0.2, 9.9)).toMatchObject({ on: 'corner', feature: 'pad', corner: 'pad-3' });
  });

  test('an edge wins over the inside, and says where on it', () => {
    expect(at(10, 0.3)).toEqual({
      on: 'edge',
      feature: 'pad',
      corner: 'pad-0',
      at: { x: 10 * FOOT, y: 0 },
    });
  });

  test('an edge wins over a text on it; a text on bare ground is hit in its box and a little round it', () => {
    expect(at(10, -1.9)).toEqual({ on: 'dimension', feature: 'pad', corner: 'pad-0' });
    expect(at(11.3, -2.4)).toMatchObject({ on: 'dimension' });
    expect(at(12, -2)).toEqual({ on: 'ground' });
    expect(at(10, -0.4)).toMatchObject({ on: 'edge' });
  });

  test('inside, the smaller thing wins though the pad was drawn after it', () => {
    expect(at(5, 5)).toEqual({ on: 'feature', feature: 'post' });
    expect(at(8, 5)).toEqual({ on: 'feature', feature: 'pad' });
  });

  test('a post smaller than a fingertip is within reach', () => {
    const far = hit({
      at: { x: 8 * FOOT, y: 5 * FOOT },
      site,
      dimensions: [],
      reach: 4 * FOOT,
      selected: null,
    });
    expect(far).toEqual({ on: 'feature', feature: 'post' });
  });

  test('on a shared corner or edge the selected feature wins, else the one drawn last', () => {
    expect(at(20, 10)).toMatchObject({ on: 'corner', feature: 'slab' });
    expect(at(20, 10, 'pad')).toMatchObject({ on: 'corner', feature: 'pad', corner: 'pad-2' });
    expect(at(20.1, 5, 'pad')).toMatchObject({ on: 'edge', feature: 'pad', corner: 'pad-1' });
  });

  test('a selected feature farther off than another still wins within reach', () => {
    expect(at(20.3, 10, 'pad')).toMatchObject({ feature: 'pad' });
  });

  test('nothing near is bare ground', () => {
    expect(at(50, 50)).toEqual({ on: 'ground' });
  });
});

test('an arc edge is hit on the arc, not on its chord', () => {
  const bulged = outline('arc', 'pad', [
    [0, 0],
    [10, 0],
    [10, 10],
  ]);
  if (bulged.shape.form !== 'outline') throw new Error('an outline was made');
  const corners = bulged.shape.corners.map((corner, index) =>
    index === 0 ? { ...corner, rise: 2 * FOOT } : corner,
  );
  const shape = { ...bulged.shape, corners };
  const arcs = siteOf(jobOf({ ...bulged, kind: 'pad', shape }));
  const query = { site: arcs, dimensions: [], reach: 3 * INCH, selected: null };
  // Positive rise: to the right of the way from (0,0) to (10,0), so below it.
  expect(hit({ ...query, at: { x: 5 * FOOT, y: -2 * FOOT } })).toMatchObject({
    on: 'edge',
    corner: 'arc-0',
  });
  expect(hit({ ...query, at: { x: 5 * FOOT, y: 0 } })).toEqual({ on: 'feature', feature: 'arc' });
});
