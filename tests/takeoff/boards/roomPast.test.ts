import { expect, test } from 'vitest';
import { boxOf } from '../../../src/geometry/box.ts';
import { distanceToRing, locate } from '../../../src/geometry/locate.ts';
import { type Point, samePoint } from '../../../src/geometry/point.ts';
import type { Feature } from '../../../src/job/job.ts';
import { type Which, wayAt } from '../../../src/takeoff/boards/corners.ts';
import { boardDemands } from '../../../src/takeoff/boards/demands.ts';
import {
  type Bar,
  boxIn,
  clearPast,
  placeIn,
  type Strip,
} from '../../../src/takeoff/boards/roomPast.ts';
import { formRuns } from '../../../src/takeoff/forms/formRuns.ts';
import { netPour } from '../../../src/takeoff/outline/netPour.ts';
import { pourPolygons } from '../../../src/takeoff/pourPolygons.ts';
import { groundOf } from '../../../src/takeoff/stakes/clearOf.ts';
import { formSite } from '../../../src/takeoff/stakes/formSite.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { type Chance, chance } from '../../random/chance.ts';
import { jobOf, type Places, shape } from '../outline/site.ts';

const WIDTH = 1.5 * INCH;
const SLACK = INCH / 16;
const REACH = 2 * FOOT;
/** So many along every edge. */
const PLACES = 200;

function round(luck: Chance, x: number, y: number, radius: number, corners: number): Places {
  return Array.from({ length: corners }, (_, i) => {
    const angle = ((i + luck.between(0, 0.8)) / corners) * 2 * Math.PI;
    const r = radius * luck.between(0.4, 1);
    return [x + r * Math.cos(angle), y + r * Math.sin(angle)] as const;
  });
}

function randomBar(luck: Chance): Bar {
  const size = luck.oneOf([1, 4, 30]) * INCH;
  const places = round(luck, luck.between(-6, 30) * INCH, luck.between(-4, 4) * INCH, size, 5);
  const points = places.map(([x, y]) => ({ x: Math.round(x), y: Math.round(y) }));
  return { points, closed: luck.likely(0.7), box: boxOf(points) };
}

/** Places along every edge of a bar, close together. */
function edgePlaces({ points, closed }: Bar): readonly Point[] {
  return points.flatMap((b, i) => {
    if (i === 0 && !closed) return [];
    const a = points.at(i - 1)!;
    return Array.from({ length: PLACES }, (_, k) => {
      const t = k / PLACES;
      return { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
    });
  });
}

test('the ground past a corner is clear as far as places along everything’s edges say, on 1,000 random grounds', () => {
  const luck = chance(311);
  let cut = 0;
  let none = 0;
  for (let n = 0; n < 1_000; n++) {
    const angle = luck.between(0, 2 * Math.PI);
    const along = { x: Math.cos(angle), y: Math.sin(angle) };
    const out = { x: along.y, y: -along.x };
    const strip: Strip = { at: { x: 0, y: 0 }, along, out, width: WIDTH };
    const bars = Array.from({ length: luck.whole(0, 3) }, () => randomBar(luck)).map((bar) => {
      // As they were made, the strip runs along x.
      const points = bar.points.map(({ x, y }) => placeIn(strip, x, y));
      return { ...bar, points, box: boxOf(points) };
    });
    const far = clearPast(strip, REACH, SLACK, { bars, polygons: [], rings: [] });
    const inStrip = bars.flatMap((bar) =>
      edgePlaces(bar)
        .map((p) => ({
          u: p.x * along.x + p.y * along.y,
          v: p.x * out.x + p.y * out.y,
          from: bar.closed ? SLACK : -SLACK,
        }))
        .filter(({ u, v, from }) => v > SLACK && v < WIDTH - SLACK && u > from && u < REACH),
    );
    const first = Math.min(REACH, ...inStrip.map(({ u }) => Math.max(0, u)));
    const starts = placeIn(strip, SLACK + 1, WIDTH / 2);
    const inside = bars.some(({ points, closed }) => closed && locate(starts, points) === 'inside');
    const message = `ground ${n}`;
    // Between two of the places an edge may come in a little earlier than either.
    const step = (70 * INCH) / PLACES;
    if (far > 0) {
      expect(inside, message).toBe(false);
      expect(far, message).toBeLessThanOrEqual(first);
      expect(far, message).toBeGreaterThanOrEqual(first - step);
    } else {
      expect(inside || first <= SLACK + step, message).toBe(true);
    }
    if (far > 0 && far < REACH) cut++;
    if (far === 0) none++;
  }
  expect(cut).toBeGreaterThan(150);
  expect(none).toBeGreaterThan(150);
});

/** A pad with corners about a round, among old slabs and zones. */
function randomSite(luck: Chance) {
  const pad = shape('pad', 'pad', round(luck, 0, 0, 10, luck.whole(3, 7)));
  const others = Array.from({ length: luck.whole(0, 4) }, (_, i): Feature => {
    const angle = luck.between(0, 2 * Math.PI);
    const reach = luck.between(5, 11);
    const [x, y] = [reach * Math.cos(angle), reach * Math.sin(angle)];
    const kind = luck.oneOf(['existing-slab', 'steps', 'no-stake-zone'] as const);
    return shape(kind, `f${i}`, round(luck, x, y, luck.oneOf([0.3, 1, 4]), luck.whole(3, 5)));
  });
  return jobOf([pad, ...others]);
}

test('past its corners no board lies in the pour, in what stands there, or in another board, on 150 random sites', () => {
  const luck = chance(312);
  const seen = new Map<string, number>();
  let tried = 0;
  for (let n = 0; n < 150; n++) {
    const job = randomSite(luck);
    const { pour } = netPour(job);
    const forms = pour && formRuns(pour, 64).figured;
    if (!forms) continue;
    const polygons = pourPolygons(pour, 64);
    const { rings } = groundOf([], polygons);
    const standing = job.features.flatMap(({ kind, shape: made }) =>
      kind !== 'pad' && kind !== 'no-stake-zone' && made.form === 'outline' ? [made.corners] : [],
    );
    const pasts = boardDemands(job, pour, forms, formSite(job, forms, polygons)).demands.flatMap(
      (demand) => {
        const run = forms.runs.find(({ mark }) => mark === demand.run)!;
        return (['start', 'end'] as const).map((which: Which) => {
          const { kind, room } = demand[which];
          seen.set(kind, (seen.get(kind) ?? 0) + 1);
          const way = wayAt(run, which);
          const at = which === 'end' ? run.edges.at(-1)!.to : run.edges[0]!.from;
          const along = which === 'end' ? way : { x: -way.x, y: -way.y };
          const strip: Strip = { at, along, out: { x: way.y, y: -way.x }, width: WIDTH };
          // At an inside corner only the long point of a slanting cut goes past, between the pour and the other board.
          const round = forms.runs.find(({ edges }) =>
            samePoint(which === 'end' ? edges[0]!.from : edges.at(-1)!.to, at),
          );
          const other = round && wayAt(round, which === 'end' ? 'start' : 'end');
          const turn = other ? way.x * other.y - way.y * other.x : 0;
          const inside = (which === 'end' ? turn : -turn) < 0;
          return { mark: demand.run, strip, room: inside ? 0 : room };
        });
      },
    );
    for (const { mark, strip, room } of pasts) {
      if (room <= 0) continue;
      for (let k = 0; k < 25; k++) {
        const u = luck.between(SLACK + 4, room - 4);
        const place = placeIn(strip, u, luck.between(SLACK + 4, WIDTH - SLACK - 4));
        const message = `site ${n}, ${mark}`;
        for (const ring of standing) {
          // A corner pressed into the strip by no more than rounding is let be.
          if (locate(place, ring) !== 'outside')
            expect(distanceToRing(place, ring), message).toBeLessThan(4);
        }
        const inPour =
          rings.filter(({ ring }) => locate(place, ring) === 'inside').length % 2 === 1;
        expect(inPour, message).toBe(false);
        for (const other of pasts) {
          if (other.strip === strip || other.room <= 0) continue;
          const box = boxIn({ ...other.strip, width: WIDTH }, 0, other.room);
          const lies = locate(place, box) !== 'outside' && distanceToRing(place, box) > SLACK + 4;
          expect(lies, `${message} on ${other.mark}`).toBe(false);
        }
        tried++;
      }
    }
  }
  expect(tried).toBeGreaterThan(10_000);
  for (const kind of ['passes', 'butts', 'stops', 'flat']) {
    expect(seen.get(kind) ?? 0, kind).toBeGreaterThan(20);
  }
});
