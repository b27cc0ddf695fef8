import { defaultLumber, defaultMeshStock, defaultPractices } from '../../src/job/defaults.ts';
import type { Corner, Feature, Job, Outline } from '../../src/job/job.ts';
import { FOOT, INCH } from '../../src/units/grid.ts';
import { chance } from '../random/chance.ts';

type Place = readonly [x: number, y: number];

/** Feet, turned by so many degrees about the origin and rounded to the grid once. */
function outline(id: string, places: readonly Place[], degrees = 0, closed = true): Outline {
  const cos = Math.cos((degrees * Math.PI) / 180);
  const sin = Math.sin((degrees * Math.PI) / 180);
  const corners = places.map(
    ([x, y], i): Corner => ({
      id: `${id}-${i}`,
      x: Math.round((x * cos - y * sin) * FOOT),
      y: Math.round((x * sin + y * cos) * FOOT),
      rise: 0,
    }),
  );
  return { form: 'outline', closed, corners };
}

function named(id: string): { id: string; name: string } {
  return { id, name: id };
}

function rectangle(x: number, y: number, width: number, depth: number): Place[] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ];
}

function round(id: string, x: number, y: number, inches: number): Feature {
  const center = { x: Math.round(x * FOOT), y: Math.round(y * FOOT) };
  return {
    kind: 'block-out',
    ...named(id),
    shape: { form: 'round', center, diameter: inches * INCH },
  };
}

function job(name: string, features: readonly Feature[]): Job {
  return {
    name,
    site: '',
    notes: '',
    units: 'feet-inches',
    features,
    practices: defaultPractices(),
    lumber: defaultLumber(),
    meshStock: defaultMeshStock(),
    handStakes: [],
    ground: { readings: [], depthBy: 'thickness' },
    nextId: 10_000,
  };
}

/** 14 corners, 6 features: round a stoop, into an old patio with a broken corner, past a post and a clean-out. */
export function typicalJob(): Job {
  const pad: Place[] = [
    [0, 0],
    [4, 0],
    [4, 3],
    [9, 3],
    [9, 0],
    [16, 0],
    [16, 5.5],
    [20, 5.5],
    [20, 13.25],
    [15, 15.75],
    [9.5, 15.75],
    [9.5, 14],
    [2, 14],
    [0, 12.5],
  ];
  return job('typical', [
    { kind: 'pad', ...named('pad'), shape: outline('pad', pad) },
    {
      kind: 'building-line',
      ...named('house'),
      pourAgainst: true,
      shape: outline('house', rectangle(-4, -6, 28, 6)),
    },
    { kind: 'steps', ...named('stoop'), treads: 2, shape: outline('stoop', rectangle(4, 0, 5, 3)) },
    {
      kind: 'existing-slab',
      ...named('patio'),
      shape: outline('patio', [
        [15.25, 5.4],
        [30, 5.6],
        [30, 18],
        [16.5, 18.1],
      ]),
    },
    {
      kind: 'patch',
      ...named('broken'),
      shape: outline('broken', [
        [15.25, 5.4],
        [17.5, 5.43],
        [15.6, 8],
      ]),
    },
    round('post', 6, 9, 8),
    round('clean-out', 12, 11, 5),
  ]);
}

/** A lumpy pad of so many corners round the origin, turned out of square. */
function lumpyPad(corners: number, feet: number, seed: number): Place[] {
  const draw = chance(seed);
  return Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    const reach =
      feet * (1 + 0.12 * Math.sin(5 * angle) + draw.between(-0.3, 0.3) / Math.sqrt(corners));
    return [reach * Math.cos(angle), reach * Math.sin(angle)] as const;
  });
}

/** A pad of many corners with features of every kind inside it, across its edge and along its edge. */
export function lumpyJob(
  name: string,
  corners: number,
  count: number,
  feet: number,
  seed: number,
): Job {
  const draw = chance(seed + 1);
  const places = lumpyPad(corners, feet, seed);
  const features: Feature[] = [
    { kind: 'pad', ...named('pad'), shape: outline('pad', places, 17.3) },
  ];
  for (let i = 0; i < count; i++) {
    const id = `f${i}`;
    const angle = (2 * Math.PI * i) / count;
    const at = (share: number): Place => [
      feet * share * Math.cos(angle),
      feet * share * Math.sin(angle),
    ];
    const [x, y] = at(draw.between(0.3, 0.7));
    const [ex, ey] = at(1.05);
    const size = Math.min(4, (feet * 2) / count);
    const start = Math.floor((i / count) * corners);
    switch (i % 6) {
      case 0:
        features.push(round(id, x, y, 8));
        break;
      case 1: {
        const shape = outline(id, rectangle(x, y, size, size), draw.between(-1, 1));
        features.push({ kind: 'block-out', ...named(id), shape });
        break;
      }
      case 2: {
        // Along the pad's own edge: shares three of its corners.
        const run = [0, 1, 2].map((k) => places[(start + k) % corners]!);
        const outer = run.map(([px, py]): Place => [px * 1.2, py * 1.2]).reverse();
        const shape = outline(id, [...run, ...outer], 17.3);
        features.push({ kind: 'existing-slab', ...named(id), shape });
        break;
      }
      case 3: {
        const shape = outline(id, rectangle(ex - size / 2, ey - size / 2, size, size), 0);
        features.push({ kind: 'existing-slab', ...named(id), shape });
        break;
      }
      case 4: {
        const shape = outline(id, rectangle(ex - size / 3, ey - size / 3, size, size / 2), 3);
        features.push({ kind: 'steps', ...named(id), treads: 2, shape });
        break;
      }
      default:
        features.push(round(id, x * 0.9, y * 0.9, 6));
    }
  }
  return job(name, features);
}

/** 200 corners, 30 features. */
export function largeJob(): Job {
  return lumpyJob('large', 200, 30, 40, 7);
}

/** 2,000 corners, 60 features. */
export function hugeJob(): Job {
  return lumpyJob('huge', 2000, 60, 120, 9);
}

/** The same job with one corner of its pad moved: the next frame of a drag. Everything else is the same object. */
export function dragged(job: Job, frame: number): Job {
  const features = job.features.map((feature): Feature => {
    if (feature.id !== 'pad' || feature.kind !== 'pad') return feature;
    const corners = feature.shape.corners.map((corner, i) =>
      i === 1
        ? { ...corner, x: corner.x + 127 * (frame % 40), y: corner.y + 127 * (frame % 25) }
        : corner,
    );
    return { ...feature, shape: { ...feature.shape, corners } };
  });
  return { ...job, features };
}
