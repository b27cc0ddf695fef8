import type { Grid } from '../units/grid.ts';
import type { ArcOf, Point } from './point.ts';
import { toGrid } from './round.ts';

/**
 * The circle that an arc edge lies on, from its chord and its rise (versine): radius = (c²/4 + h²) / 2h,
 * sweep = 4 atan(2h / c). Source: geometry.
 * @param rise Height of the arc over its chord, not 0; positive = the arc lies to the right of the way from → to, which
 *   turns counter-clockwise.
 */
export function arcOf(from: Point, to: Point, rise: Grid): ArcOf {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const chord = Math.sqrt(dx * dx + dy * dy);
  const height = Math.abs(rise);
  const radius = (chord * chord * 0.25 + height * height) / (2 * height);
  // From the middle of the chord to the centre, measured to the right of the way.
  const right = rise > 0 ? height - radius : radius - height;
  return {
    cx: (from.x + to.x) / 2 + (right * dy) / chord,
    cy: (from.y + to.y) / 2 - (right * dx) / chord,
    radius,
    sweep: 4 * Math.atan2(2 * height, chord) * Math.sign(rise),
  };
}

/** Length along an arc, grid units, a float. */
export function arcLength(arc: ArcOf): number {
  return arc.radius * Math.abs(arc.sweep);
}

/**
 * Area between an arc and its chord, square grid units: positive when the arc adds to what lies left of the chord.
 * Exact in the real numbers, so it undoes flattening when it is added to the area inside the chords.
 */
export function segmentArea(arc: ArcOf): number {
  return (arc.radius * arc.radius * (arc.sweep - Math.sin(arc.sweep))) / 2;
}

/** How many chords keep a circle's arc within `tolerance` of them: never fewer than one to an eighth of a turn. */
function chordCount(radius: number, sweep: number, tolerance: number): number {
  const step =
    tolerance < radius ? Math.min(2 * Math.acos(1 - tolerance / radius), Math.PI / 4) : Math.PI / 4;
  // A sweep that is a whole number of steps up to float error needs no extra chord.
  return Math.max(2, Math.ceil(Math.abs(sweep) / step - 1e-9));
}

/**
 * Points on an arc between its two ends, both ends left out, on the grid: the chords between them leave the arc by no
 * more than `tolerance` (grid units), and rounding moves no point by more than 0.71.
 */
export function flattenArc(from: Point, to: Point, rise: Grid, tolerance: Grid): Point[] {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const chord = Math.sqrt(dx * dx + dy * dy);
  if (rise === 0 || chord === 0) return [];
  const { radius, sweep } = arcOf(from, to, rise);
  const count = chordCount(radius, sweep, tolerance);
  const points: Point[] = [];
  for (let i = 1; i < count; i++) {
    // Chord of the first i steps: its length, and its turn from the direction in which the arc sets out.
    const turned = (sweep * i) / (2 * count);
    const reach = 2 * radius * Math.abs(Math.sin(turned));
    const off = sweep / 2 - turned;
    const along = (reach * Math.cos(off)) / chord;
    const right = (reach * Math.sin(off)) / chord;
    points.push({
      x: from.x + toGrid(along * dx + right * dy),
      y: from.y + toGrid(along * dy - right * dx),
    });
  }
  return points;
}

/** A circle as a counter-clockwise ring on the grid, chords within `tolerance` of it. */
export function flattenCircle(center: Point, diameter: Grid, tolerance: Grid): Point[] {
  const radius = diameter / 2;
  // A multiple of four, so that a quarter turn gives the same ring.
  const count = 4 * Math.ceil(chordCount(radius, 2 * Math.PI, tolerance) / 4);
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    return {
      x: center.x + toGrid(radius * Math.cos(angle)),
      y: center.y + toGrid(radius * Math.sin(angle)),
    };
  });
}
