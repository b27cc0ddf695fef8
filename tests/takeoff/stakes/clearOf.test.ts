import { describe, expect, test } from 'vitest';
import { distanceToRing, locate } from '../../../src/geometry/locate.ts';
import type { Feature, Job } from '../../../src/job/job.ts';
import { placeAlong } from '../../../src/takeoff/forms/along.ts';
import { formRuns } from '../../../src/takeoff/forms/formRuns.ts';
import { netPour } from '../../../src/takeoff/outline/netPour.ts';
import { pourPolygons } from '../../../src/takeoff/pourPolygons.ts';
import { distanceTo, obstacles } from '../../../src/takeoff/stakes/blocked.ts';
import { clearStretches, groundOf } from '../../../src/takeoff/stakes/clearOf.ts';
import { formSite } from '../../../src/takeoff/stakes/formSite.ts';
import { HALF_STAKE } from '../../../src/takeoff/stakes/rules.ts';
import { stakes as stakesOf } from '../../../src/takeoff/stakes/stakes.ts';
import { INCH } from '../../../src/units/grid.ts';
import { type Chance, chance } from '../../random/chance.ts';
import { jobOf, type Places, shape, utilityLine } from '../outline/site.ts';

const OFF = 2.25 * INCH;

/** What stakes are placed by; nothing where the pad crosses itself. */
function siteOf(job: Job) {
  const { pour } = netPour(job);
  if (!pour) return {};
  return { polygons: pourPolygons(pour, 508), forms: formRuns(pour, 508).figured };
}

/** A pad with corners about a round, so that its sides slant every way, with zones and buried lines strewn over its edge. */
function randomSite(luck: Chance) {
  const round = (x: number, y: number, radius: number, corners: number): Places =>
    Array.from({ length: corners }, (_, i) => {
      const angle = ((i + luck.between(0, 0.8)) / corners) * 2 * Math.PI;
      const r = radius * luck.between(0.4, 1);
      return [x + r * Math.cos(angle), y + r * Math.sin(angle)] as const;
    });
  const curved = luck.likely(0.4);
  const pad = shape(
    'pad',
    'pad',
    round(0, 0, 10, luck.whole(4, 8)).map(([x, y]) =>
      curved && luck.likely(0.6) ? ([x, y, luck.between(-0.6, 1.5)] as const) : ([x, y] as const),
    ),
  );
  const zones = Array.from({ length: luck.whole(0, 4) }, (_, i): Feature => {
    const angle = luck.between(0, 2 * Math.PI);
    const reach = luck.between(4, 10);
    const size = luck.oneOf([0.2, 1, 4]);
    const corners = luck.whole(3, 6);
    const places = round(reach * Math.cos(angle), reach * Math.sin(angle), size, corners);
    return luck.likely(0.3)
      ? utilityLine(`line-${i}`, places.slice(0, 3))
      : shape('no-stake-zone', `zone-${i}`, places);
  });
  const job = jobOf([pad, ...zones]);
  const utilityTolerance = luck.oneOf([0, 3 * INCH, 24 * INCH]);
  return { ...job, practices: { ...job.practices, utilityTolerance } };
}

describe('ground clear for stakes', () => {
  test('is where no part of a stake stands in anything, tried place by place on 300 random sites', () => {
    const luck = chance(77);
    let tried = 0;
    let blocked = 0;
    for (let n = 0; n < 300; n++) {
      const job = randomSite(luck);
      const { forms, polygons } = siteOf(job);
      if (!forms || !polygons) continue;
      const ground = groundOf(obstacles(job), polygons);
      const rings = polygons.flatMap(({ outer, holes }) => [outer, ...holes]);
      for (const run of forms.runs) {
        const clear = clearStretches(run, OFF, ground);
        for (let i = 0; i < 40; i++) {
          const along = luck.whole(0, run.length);
          const { x, y, outward } = placeAlong(run.edges, along);
          const place = { x: x + OFF * Math.cos(outward), y: y + OFF * Math.sin(outward) };
          const inside = rings.some((ring) => locate(place, ring) === 'inside');
          const room = Math.min(
            ...rings.map((ring) => distanceToRing(place, ring) - HALF_STAKE),
            ...ground.obstacles.map((one) => distanceTo(place, one) - one.reach),
          );
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
      const { forms, polygons } = siteOf(job);
      if (!forms || !polygons) continue;
      const { figured: stakes } = stakesOf(job, forms, formSite(job, forms, polygons), 508);
      if (!stakes) throw new Error('no stakes');
      const zones = obstacles(job);
      for (const { at, run } of stakes.stakes) {
        for (const zone of zones) {
          const told = `site ${n}, ${run}, ${zone.feature}`;
          expect(distanceTo(at, zone), told).toBeGreaterThan(zone.reach - 2);
        }
      }
      for (const { run, gap, spacing, count, evenly } of stakes.byRun) {
        expect(gap, `site ${n}, ${run}`).toBeLessThanOrEqual(spacing + INCH / 16 + 1);
        if (count !== evenly) moved++;
      }
    }
    expect(moved).toBeGreaterThan(5);
  });
});
