import { describe, expect, test } from 'vitest';
import { distanceToRing, locate } from '../../../src/geometry/locate.ts';
import type { Feature } from '../../../src/job/job.ts';
import { placeAlong } from '../../../src/takeoff/forms/along.ts';
import { pourPolygons } from '../../../src/takeoff/pourPolygons.ts';
import { obstacles } from '../../../src/takeoff/stakes/blocked.ts';
import { clearStretches, groundOf } from '../../../src/takeoff/stakes/clearOf.ts';
import { HALF_STAKE } from '../../../src/takeoff/stakes/rules.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { type Chance, chance } from '../../random/chance.ts';
import { jobOf, type Places, shape } from '../outline/site.ts';

const OFF = 2.25 * INCH;
/** The spacing to start with, and what rounding a slanting run may add to it: 'close enough', 1/16 in. */
const WIDEST = 3 * FOOT + INCH / 16 + 1;

/** A pad with corners about a round, so that its sides slant every way, with zones strewn over its edge. */
function randomSite(luck: Chance) {
  const round = (x: number, y: number, radius: number, corners: number): Places =>
    Array.from({ length: corners }, (_, i) => {
      const angle = ((i + luck.between(0, 0.8)) / corners) * 2 * Math.PI;
      const r = radius * luck.between(0.4, 1);
      return [x + r * Math.cos(angle), y + r * Math.sin(angle)] as const;
    });
  const pad = shape('pad', 'pad', round(0, 0, 10, luck.whole(4, 8)));
  const zones = Array.from({ length: luck.whole(0, 4) }, (_, i): Feature => {
    const angle = luck.between(0, 2 * Math.PI);
    const reach = luck.between(4, 10);
    const size = luck.oneOf([0.2, 1, 4]);
    const corners = luck.whole(3, 6);
    return shape(
      'no-stake-zone',
      `zone-${i}`,
      round(reach * Math.cos(angle), reach * Math.sin(angle), size, corners),
    );
  });
  return jobOf([pad, ...zones]);
}

describe('ground clear for stakes', () => {
  test('is where no part of a stake stands in anything, tried place by place on 300 random sites', () => {
    const luck = chance(77);
    let tried = 0;
    let blocked = 0;
    for (let n = 0; n < 300; n++) {
      const job = randomSite(luck);
      const { forms, pour } = takeoff(job);
      if (!forms || !pour) continue;
      const polygons = pourPolygons(pour, 64);
      const ground = groundOf(obstacles(job), polygons);
      const rings = [
        ...ground.obstacles.map(({ points }) => points),
        ...polygons.flatMap(({ outer, holes }) => [outer, ...holes]),
      ];
      for (const run of forms.runs) {
        const clear = clearStretches(run, OFF, ground);
        for (let i = 0; i < 40; i++) {
          const along = luck.whole(0, run.length);
          const { x, y, outward } = placeAlong(run.edges, along);
          const place = { x: x + OFF * Math.cos(outward), y: y + OFF * Math.sin(outward) };
          const inside = rings.some((ring) => locate(place, ring) === 'inside');
          const room = Math.min(...rings.map((ring) => distanceToRing(place, ring))) - HALF_STAKE;
          // Nearer to the limit than a grid unit either way, rounding along the run may tell the other way.
          if (Math.abs(room) < 2) continue;
          tried++;
          if (inside || room < 0) blocked++;
          expect(
            clear.some(({ from, to }) => from <= along && along <= to),
            `site ${n}, ${run.mark} at ${along}`,
          ).toBe(!inside && room > 0);
        }
      }
    }
    expect(tried).toBeGreaterThan(30_000);
    expect(blocked).toBeGreaterThan(2_000);
  });

  test('holds every stake of a random site, at no more than the spacing', () => {
    const luck = chance(78);
    let moved = 0;
    for (let n = 0; n < 300; n++) {
      const job = randomSite(luck);
      const { stakes, forms } = takeoff(job);
      if (!stakes || !forms) continue;
      const zones = obstacles(job);
      for (const { at, run } of stakes.stakes) {
        for (const { points: ring, feature } of zones) {
          const told = `site ${n}, ${run}, ${feature}`;
          expect(locate(at, ring), told).toBe('outside');
          expect(distanceToRing(at, ring), told).toBeGreaterThan(HALF_STAKE - 2);
        }
      }
      for (const { run, gap, count, evenly } of stakes.byRun) {
        expect(gap, `site ${n}, ${run}`).toBeLessThanOrEqual(WIDEST);
        if (count !== evenly) moved++;
      }
    }
    expect(moved).toBeGreaterThan(10);
  });
});
