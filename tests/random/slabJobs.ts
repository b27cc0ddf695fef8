import { defaultLumber, defaultMeshStock, defaultPractices } from '../../src/job/defaults.ts';
import type { Corner, Feature, Job, Outline } from '../../src/job/job.ts';
import { FOOT, MILLIMETRE, SIXTEENTH } from '../../src/units/grid.ts';
import { type Chance, chance } from './chance.ts';

/** Feet in the job's own frame, before it is turned. */
type Spot = readonly [x: number, y: number];

/** A job as chance makes it, and what has to be known to check it. */
export interface SlabJob {
  readonly job: Job;
  readonly hasArcs: boolean;
}

const INCH_FEET = 1 / 12;

/** How the job's frame lies on the grid: turned, moved, and read off a tape to some step. */
interface Frame {
  readonly cos: number;
  readonly sin: number;
  readonly x: number;
  readonly y: number;
  readonly step: number;
}

/**
 * A job like those that get built: an odd pad, old slabs along it, across it and not quite along it, a house, stoops,
 * posts, broken corners. Shared edges lie at any angle; corners fall on other shapes' edges; readings of one line
 * differ by a tape's rounding; the whole is turned and put on the grid once.
 */
export function slabJob(seed: number): SlabJob {
  const draw = chance(seed);
  const degrees = draw.oneOf([
    0,
    0,
    90,
    17.3,
    draw.between(0, 360),
    draw.between(0, 360),
    draw.between(-0.05, 0.05),
    45,
  ]);
  const frame: Frame = {
    cos: Math.cos((degrees * Math.PI) / 180),
    sin: Math.sin((degrees * Math.PI) / 180),
    x: draw.whole(-60, 60) * FOOT,
    y: draw.whole(-60, 60) * FOOT,
    step: draw.oneOf([1, 1, 1, SIXTEENTH, MILLIMETRE]),
  };
  const pad = padSpots(draw);
  const features: Feature[] = [{ kind: 'pad', ...named('pad'), shape: outline('pad', pad, frame) }];
  let hasArcs = false;
  const count = draw.whole(1, 5);
  for (let i = 0; i < count; i++) {
    const added = addition(`f${i}`, pad, frame, draw);
    hasArcs ||= added.some(({ shape }) => shape.form === 'round');
    features.push(...added);
  }
  if (draw.likely(0.08)) features.push(secondPad('pad2', pad, frame, draw));
  const job: Job = {
    name: `seed ${seed}`,
    site: '',
    notes: '',
    units: 'feet-inches',
    features,
    practices: defaultPractices(),
    lumber: defaultLumber(),
    meshStock: defaultMeshStock(),
    handStakes: [],
    ground: { readings: [], depthBy: 'thickness' },
    nextId: 1,
  };
  return { job, hasArcs };
}

function named(id: string): { id: string; name: string } {
  return { id, name: id };
}

function outline(id: string, spots: readonly Spot[], frame: Frame, closed = true): Outline {
  const onGrid = (value: number, offset: number) =>
    Math.round((value * FOOT + offset) / frame.step) * frame.step;
  const corners = spots.map(
    ([x, y], i): Corner => ({
      id: `${id}-${i}`,
      x: onGrid(x * frame.cos - y * frame.sin, frame.x),
      y: onGrid(x * frame.sin + y * frame.cos, frame.y),
      rise: 0,
    }),
  );
  return { form: 'outline', closed, corners };
}

/** Rectangle, L, U, lumpy or skewed, some feet across; counter-clockwise. */
function padSpots(draw: Chance): Spot[] {
  const inches = (least: number, most: number) => draw.whole(least * 16, most * 16) / 192;
  const w = inches(60, 300);
  const d = inches(60, 240);
  const nw = w * draw.oneOf([0.25, 0.5, draw.between(0.2, 0.7)]);
  const nd = d * draw.oneOf([0.25, 0.5, draw.between(0.2, 0.7)]);
  switch (draw.whole(0, 5)) {
    case 0:
    case 1:
      return [
        [0, 0],
        [w, 0],
        [w, d],
        [0, d],
      ];
    case 2:
      return [
        [0, 0],
        [w, 0],
        [w, nd],
        [nw, nd],
        [nw, d],
        [0, d],
      ];
    case 3:
      return [
        [0, 0],
        [w, 0],
        [w, d],
        [w - nw / 2, d],
        [w - nw / 2, nd],
        [nw / 2, nd],
        [nw / 2, d],
        [0, d],
      ];
    case 4:
      return [
        [0, 0],
        [w, draw.between(-0.5, 0.5)],
        [w + draw.between(-1, 1), d],
        [w / 2, d + draw.between(-0.3, 1)],
        [0, d],
      ];
    default: {
      const corners = draw.whole(5, 14);
      return Array.from({ length: corners }, (_, i): Spot => {
        const angle = (2 * Math.PI * (i + draw.between(0, 0.6))) / corners;
        const reach = draw.between(0.6, 1) * (w / 2);
        return [w / 2 + reach * Math.cos(angle), d / 2 + reach * Math.sin(angle)];
      });
    }
  }
}

/** A pad's edge, with places along it and square to it. */
function edgeOf(
  pad: readonly Spot[],
  i: number,
): { length: number; at: (along: number, out: number) => Spot } {
  const [ax, ay] = pad[i % pad.length]!;
  const [bx, by] = pad[(i + 1) % pad.length]!;
  const length = Math.hypot(bx - ax, by - ay);
  const ux = (bx - ax) / length;
  const uy = (by - ay) / length;
  return { length, at: (along, out) => [ax + ux * along + uy * out, ay + uy * along - ux * out] };
}

/** How far two readings of one line are apart: most often not at all, else within or just past 'close enough'. */
function misread(draw: Chance): number {
  if (draw.likely(0.55)) return 0;
  return (
    draw.oneOf([-1, 1]) * draw.oneOf([1 / 128, 1 / 64, 1 / 32, 1 / 20, 3 / 32, 1 / 8]) * INCH_FEET
  );
}

/** One or more features of a random kind somewhere along or in the pad. */
function addition(id: string, pad: readonly Spot[], frame: Frame, draw: Chance): Feature[] {
  const edge = edgeOf(pad, draw.whole(0, pad.length - 1));
  const { length } = edge;
  const start = draw.oneOf([0, length * 0.25, length / 3, draw.between(-0.3, 0.8) * length]);
  const end = draw.oneOf([length, length * 0.75, start + draw.between(0.3, 6), length * 1.3]);
  const [s, e] = start < end ? [start, end] : [end, start + 0.5];
  const depth = draw.between(0.5, 6);
  const abutting = [
    edge.at(s, misread(draw)),
    edge.at(e, misread(draw)),
    edge.at(e + draw.oneOf([0, draw.between(-0.2, 0.2)]), depth),
    edge.at(s, depth),
  ];
  switch (draw.whole(0, 12)) {
    case 0:
    case 1:
      return [{ kind: 'existing-slab', ...named(id), shape: outline(id, abutting, frame) }];
    case 2: {
      const inward = [
        edge.at(s, -depth / 3),
        edge.at(e, -depth / 3),
        edge.at(e, depth),
        edge.at(s, depth),
      ];
      return [{ kind: 'existing-slab', ...named(id), shape: outline(id, inward, frame) }];
    }
    case 3: {
      const inward = [
        edge.at(s, misread(draw)),
        edge.at(s, -depth / 2),
        edge.at(e, -depth / 2),
        edge.at(e, misread(draw)),
      ];
      return [{ kind: 'steps', ...named(id), treads: 2, shape: outline(id, inward, frame) }];
    }
    case 4: {
      const closed = draw.likely(0.6);
      const spots = closed ? abutting : abutting.slice(0, 2);
      return [
        {
          kind: 'building-line',
          ...named(id),
          pourAgainst: draw.likely(0.5),
          shape: outline(id, spots, frame, closed),
        },
      ];
    }
    case 5:
    case 6:
      return brokenSlab(id, abutting, edge, s, e, depth, frame, draw);
    case 7: {
      const along = draw.between(0, length);
      const size = draw.between(0.2, 1.5);
      const [cx, cy] = edge.at(along, -draw.oneOf([0, size / 2, size, draw.between(0, 4)]));
      const center = {
        x: Math.round((cx * frame.cos - cy * frame.sin) * FOOT + frame.x),
        y: Math.round((cx * frame.sin + cy * frame.cos) * FOOT + frame.y),
      };
      const diameter = Math.round((size * FOOT) / 2) * 2;
      return [{ kind: 'block-out', ...named(id), shape: { form: 'round', center, diameter } }];
    }
    case 8:
    case 9:
      return blockOuts(id, edge, frame, draw);
    case 10: {
      // Not quite along the edge: from just outside to just inside.
      const off = draw.oneOf([0.5, 1, 2, 4]) * INCH_FEET * draw.oneOf([-1, 1]);
      const skewed = [edge.at(s, off), edge.at(e, -off), edge.at(e, depth), edge.at(s, depth)];
      return [{ kind: 'existing-slab', ...named(id), shape: outline(id, skewed, frame) }];
    }
    case 11: {
      // Corner on corner: a slab that touches the pad at one place only.
      const [x, y] = edge.at(0, 0);
      const spots: Spot[] = [edge.at(0, misread(draw)), edge.at(-2, 1), [x, y + 5], edge.at(-1, 4)];
      return isSimple(spots)
        ? [{ kind: 'existing-slab', ...named(id), shape: outline(id, spots, frame) }]
        : [];
    }
    default: {
      const middle = (s + e) / 2;
      const spots = [edge.at(s, depth / 2), edge.at(middle, -depth / 3), edge.at(e, depth / 2)];
      return [{ kind: 'existing-slab', ...named(id), shape: outline(id, spots, frame) }];
    }
  }
}

/** An old slab along the pad with a piece missing: at its corner, in its edge, or in its middle. */
function brokenSlab(
  id: string,
  slab: readonly Spot[],
  edge: ReturnType<typeof edgeOf>,
  s: number,
  e: number,
  depth: number,
  frame: Frame,
  draw: Chance,
): Feature[] {
  const run = e - s;
  const pieces: readonly Spot[][] = [
    [slab[0]!, edge.at(s + run * 0.4, 0), edge.at(s, depth * 0.5)],
    [edge.at(s + run * 0.3, 0), edge.at(s + run * 0.6, 0), edge.at(s + run * 0.5, depth * 0.4)],
    [
      edge.at(s + run * 0.3, depth * 0.3),
      edge.at(s + run * 0.6, depth * 0.3),
      edge.at(s + run * 0.6, depth * 0.6),
      edge.at(s + run * 0.3, depth * 0.6),
    ],
    [
      edge.at(s + run * 0.3, -0.4),
      edge.at(s + run * 0.7, -0.4),
      edge.at(s + run * 0.7, depth * 1.2),
      edge.at(s + run * 0.3, depth * 1.2),
    ],
  ];
  return [
    { kind: 'existing-slab', ...named(id), shape: outline(id, slab, frame) },
    { kind: 'patch', ...named(`${id}p`), shape: outline(`${id}p`, draw.oneOf(pieces), frame) },
  ];
}

/** Square block-outs: alone, on the edge, in the corner, side by side, corner on corner. */
function blockOuts(
  id: string,
  edge: ReturnType<typeof edgeOf>,
  frame: Frame,
  draw: Chance,
): Feature[] {
  const size = draw.between(0.3, 2);
  const along = draw.oneOf([0, draw.between(0, edge.length), edge.length - size]);
  const deep = -draw.oneOf([0, misread(draw), size / 2, draw.between(0.5, 4)]);
  const box = (at: number, out: number): Spot[] => [
    edge.at(at, out),
    edge.at(at, out - size),
    edge.at(at + size, out - size),
    edge.at(at + size, out),
  ];
  const first: Feature = {
    kind: 'block-out',
    ...named(id),
    shape: outline(id, box(along, deep), frame),
  };
  const second = (spots: readonly Spot[]): Feature => ({
    kind: 'block-out',
    ...named(`${id}b`),
    shape: outline(`${id}b`, spots, frame),
  });
  switch (draw.whole(0, 3)) {
    case 0:
      return [first, second(box(along + size + misread(draw), deep))];
    case 1:
      return [first, second(box(along + size, deep - size))];
    case 2:
      return [first, second(box(along + size / 2, deep - size / 3))];
    default:
      return [first];
  }
}

function secondPad(id: string, pad: readonly Spot[], frame: Frame, draw: Chance): Feature {
  const edge = edgeOf(pad, draw.whole(0, pad.length - 1));
  const out = draw.oneOf([misread(draw), misread(draw), -1, 3]);
  const spots = [
    edge.at(0.5, out),
    edge.at(edge.length - 0.2, out),
    edge.at(edge.length - 0.2, out + 4),
    edge.at(0.5, out + 4),
  ].reverse();
  return { kind: 'pad', ...named(id), shape: outline(id, spots, frame) };
}

/** Whether a four-sided outline doesn't cross itself. */
function isSimple(spots: readonly Spot[]): boolean {
  const side = (a: Spot, b: Spot, c: Spot) =>
    (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  const [a, b, c, d] = spots as readonly [Spot, Spot, Spot, Spot];
  const cross = (p: Spot, q: Spot, r: Spot, t: Spot) =>
    side(p, q, r) * side(p, q, t) <= 0 && side(r, t, p) * side(r, t, q) <= 0;
  return !cross(a, b, c, d) && !cross(b, c, d, a);
}
