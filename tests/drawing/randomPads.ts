import type { Corner, Feature, Job } from '../../src/job/job.ts';
import { blankJob } from '../../src/job/start.ts';
import { INCH, SIXTEENTH } from '../../src/units/grid.ts';

/** A small generator with a seed (mulberry32, public domain): the same pads in every run. */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const corner = (id: string, x: number, y: number, rise = 0): Corner => ({
  id,
  x: Math.round(x / SIXTEENTH) * SIXTEENTH,
  y: Math.round(y / SIXTEENTH) * SIXTEENTH,
  rise: Math.round(rise),
});

/**
 * A pad such as one meets: a rectangle with notches out of its sides, corners cut off or rounded, a side out of square,
 * turned or not, with block-outs in it, and an existing slab, a wall or steps against it.
 */
export function randomPadJob(seed: number): Job {
  const random = randomFrom(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  const width = between(60, 300) * INCH;
  const height = between(48, 220) * INCH;
  const places: { x: number; y: number; rise: number }[] = [];
  const ends = [
    [0, 0, 1, 0, width],
    [width, 0, 0, 1, height],
    [width, height, -1, 0, width],
    [0, height, 0, -1, height],
  ] as const;
  for (const [x, y, dx, dy, length] of ends) {
    const what = random();
    const into = { x: -dy, y: dx };
    if (what < 0.3) places.push({ x, y, rise: 0 });
    else if (what < 0.5) {
      // A corner cut off, or rounded.
      const cut = between(5, 9) * INCH;
      const rise = random() < 0.5 ? cut * 0.2071 : 0;
      places.push({ x: x + into.x * cut, y: y + into.y * cut, rise });
      places.push({ x: x + dx * cut, y: y + dy * cut, rise: 0 });
    } else {
      // A notch out of the side that follows.
      const from = between(0.2, 0.4) * length;
      const to = between(0.55, 0.8) * length;
      const deep = between(3, 22) * INCH;
      places.push({ x, y, rise: 0 });
      places.push({ x: x + dx * from, y: y + dy * from, rise: 0 });
      places.push({ x: x + dx * from + into.x * deep, y: y + dy * from + into.y * deep, rise: 0 });
      const slant = between(-2, 3) * INCH;
      places.push({
        x: x + dx * to + into.x * (deep + slant),
        y: y + dy * to + into.y * (deep + slant),
        rise: 0,
      });
      places.push({ x: x + dx * to, y: y + dy * to, rise: 0 });
    }
  }
  const turn = random() < 0.5 ? 0 : between(-Math.PI, Math.PI);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const turned = (x: number, y: number) => ({ x: x * cos - y * sin, y: x * sin + y * cos });
  const corners = places.map(({ x, y, rise }, i) => {
    const at = turned(x, y);
    return corner(`c${i + 1}`, at.x, at.y, rise);
  });
  const features: Feature[] = [
    {
      id: 'p',
      name: random() < 0.5 ? '' : 'New walk',
      kind: 'pad',
      shape: { form: 'outline', closed: true, corners },
    },
  ];
  const box = (id: string, x: number, y: number, w: number, h: number) => ({
    form: 'outline' as const,
    closed: true,
    corners: [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
    ].map(([cx, cy], i) => {
      const at = turned(cx!, cy!);
      return corner(`${id}${i}`, at.x, at.y);
    }),
  });
  const holes = Math.floor(random() * 3);
  for (let i = 0; i < holes; i++) {
    const at = turned(width * between(0.32, 0.68), height * (0.35 + 0.3 * random()));
    const { x, y } = corner('', at.x, at.y);
    features.push({
      id: `b${i}`,
      name: random() < 0.5 ? 'Post' : '',
      kind: 'block-out',
      shape: { form: 'round', center: { x, y }, diameter: Math.round(between(3, 9)) * INCH },
    });
  }
  if (random() < 0.4) {
    features.push({
      id: 's',
      name: 'Older slab',
      kind: 'existing-slab',
      shape: box('s', width, -20 * INCH, 90 * INCH, height),
    });
  }
  if (random() < 0.4) {
    features.push({
      id: 'w',
      name: '',
      kind: 'building-line',
      pourAgainst: random() < 0.5,
      shape: {
        ...box('w', -40 * INCH, height, width + 80 * INCH, 60 * INCH),
        closed: random() < 0.5,
      },
    });
  }
  if (random() < 0.3) {
    features.push({
      id: 't',
      name: '',
      kind: 'steps',
      treads: 3,
      shape: box('t', width * 0.4, height - 30 * INCH, 36 * INCH, 60 * INCH),
    });
  }
  return { ...blankJob(), name: `Pad ${seed}`, features, nextId: 1000 };
}
