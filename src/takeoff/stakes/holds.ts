import { boxesMeet, boxOfEdge } from '../../geometry/box.ts';
import { edgesNear } from '../../geometry/edgeIndex.ts';
import type { Point } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { Grid } from '../../units/grid.ts';
import type { FacePlace } from '../forms/along.ts';
import type { FormRun, HeldPlace } from '../result.ts';
import { inPour, obstacleAt } from './blocked.ts';
import { clearSpans, type Ground } from './clearOf.ts';
import type { Standing } from './formSite.ts';
import { HALF_STAKE, KICKER_LEAST, KICKER_REACH, SPREADER_REACH } from './rules.ts';
import { straightTrack } from './tracks.ts';

type Held = Pick<HeldPlace, 'how' | 'why' | 'feature' | 'to'>;

/**
 * What holds a form at a place where no stake can be driven behind it, in the order that rules.ts gives and why.
 * @param face On the form's face; `at` the middle of the stake that would have stood behind it.
 * @param board How thick it is: a strut to what stands nearer than that has no room.
 */
export function holdAt(
  run: FormRun,
  face: FacePlace,
  at: Point,
  board: Grid,
  ground: Ground,
  firm: readonly Standing[],
): Held {
  const why = reasonAt(run, at, ground);
  const ray: Ray = { ...face, dx: Math.cos(face.outward), dy: Math.sin(face.outward) };
  const hits = firm.map((one) => ({
    kind: one.kind,
    apart: firstHit(ray, one.points, one.closed),
  }));
  const across = pourAcross(ray, ground);
  if (run.kind === 'wall-formed') {
    const wall = hits.filter(({ kind }) => kind === 'building-line');
    const apart = Math.min(...wall.map((hit) => hit.apart), SPREADER_REACH);
    return { ...why, how: 'spreader', to: placeOn(ray, apart < SPREADER_REACH ? apart : 0) };
  }
  const nearest = Math.min(...hits.map(({ apart }) => apart), across);
  const least = nearest === across ? 2 * board : board;
  if (nearest >= least && nearest <= SPREADER_REACH) {
    return { ...why, how: 'spreader', to: placeOn(ray, nearest) };
  }
  const wall = Math.min(
    ...hits.filter(({ kind }) => kind !== 'existing-slab').map(({ apart }) => apart),
    across,
  );
  const track = straightTrack(face, ray.dx, ray.dy, KICKER_REACH);
  const beyond = clearSpans(track, ground).find(([, to]) => to >= KICKER_LEAST);
  const foot = beyond && Math.max(beyond[0], KICKER_LEAST);
  if (foot !== undefined && foot < wall) {
    // On the clear side of a limit that falls between two grid units.
    return { ...why, how: 'kicker', to: placeOn(ray, Math.min(Math.ceil(foot), beyond![1])) };
  }
  const inside = placeOn(ray, -HALF_STAKE);
  if (inPour(inside, ground.polygons) && !obstacleAt(inside, ground.obstacles)) {
    return { ...why, how: 'inside-stake', to: inside };
  }
  return { ...why, how: 'weight' };
}

/** What is in the way of a stake. */
function reasonAt(run: FormRun, at: Point, { obstacles }: Ground): Pick<Held, 'why' | 'feature'> {
  if (run.kind === 'wall-formed') return { why: 'no-room' };
  const obstacle = obstacleAt(at, obstacles);
  return obstacle ? { why: obstacle.kind, feature: obstacle.feature } : { why: 'pour' };
}

/** From a place on a form's face outward along a unit. */
interface Ray extends Point {
  readonly dx: number;
  readonly dy: number;
}

function placeOn({ x, y, dx, dy }: Ray, apart: number): Point {
  return { x: toGrid(x + apart * dx), y: toGrid(y + apart * dy) };
}

/** How far out a ray first meets a shape; Infinity where it doesn't. */
function firstHit(ray: Ray, points: readonly Point[], closed: boolean): number {
  let first = Number.POSITIVE_INFINITY;
  for (let i = closed ? 0 : 1; i < points.length; i++) {
    const hit = crossing(ray, points[i === 0 ? points.length - 1 : i - 1]!, points[i]!);
    if (hit > -1 && hit < first) first = hit;
  }
  return first;
}

/** How far out a ray meets the pour again. Its own face, at 0, is none. */
function pourAcross(ray: Ray, { rings }: Ground): number {
  const box = boxOfEdge(ray, placeOn(ray, KICKER_REACH));
  let first = Number.POSITIVE_INFINITY;
  const look = (a: Point, b: Point) => {
    const hit = crossing(ray, a, b);
    if (hit > HALF_STAKE && hit < first) first = hit;
  };
  for (const { ring, box: around, index } of rings) {
    if (!boxesMeet(box, around, 1)) continue;
    const visit = (i: number) => look(ring[i]!, ring[i + 1 === ring.length ? 0 : i + 1]!);
    if (index) edgesNear(index, box, 1, visit);
    else for (let i = 0; i < ring.length; i++) visit(i);
  }
  return first;
}

/** How far along a ray it crosses the edge a–b; Infinity where it doesn't. */
function crossing({ x, y, dx, dy }: Ray, a: Point, b: Point): number {
  // To the left of the ray.
  const left = (a.y - y) * dx - (a.x - x) * dy;
  const right = (b.y - y) * dx - (b.x - x) * dy;
  if (left === right || left * right > 0) return Number.POSITIVE_INFINITY;
  const ahead = (a.x - x) * dx + (a.y - y) * dy;
  const end = (b.x - x) * dx + (b.y - y) * dy;
  return ahead + ((end - ahead) * left) / (left - right);
}
