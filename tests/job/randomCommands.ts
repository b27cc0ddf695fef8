import fc from 'fast-check';
import { apply, type Command } from '../../src/job/commands.ts';
import { defaultLumber, defaultPractices } from '../../src/job/defaults.ts';
import type { Corner, Feature, FeatureKind, Job, Shape } from '../../src/job/job.ts';
import { INCH, METRE } from '../../src/units/grid.ts';

/** A stream of numbers from 0 up to 1, drawn one after another to make up a command for the job as it stands. */
type Draw = () => number;

const KINDS: readonly FeatureKind[] = [
  'pad',
  'existing-slab',
  'building-line',
  'steps',
  'block-out',
  'patch',
  'no-stake-zone',
  'utility-line',
];

function pick<T>(draw: Draw, list: readonly T[]): T | undefined {
  return list[Math.floor(draw() * list.length)];
}
/** Mostly sensible, now and then absurd, none or nothing. */
function length(draw: Draw): number {
  const kind = draw();
  if (kind < 0.03) return pick(draw, [Number.NaN, Infinity, 0.5, 1e300, 1e12, 0]) ?? 0;
  if (kind < 0.06) return Math.round((draw() - 0.5) * 500 * METRE) + 0;
  return Math.round((draw() - 0.3) * 400) * (INCH / 16) * (kind < 0.5 ? 16 : 1) + 0;
}
function point(draw: Draw) {
  return { x: length(draw), y: length(draw) };
}

function newFeature(job: Job, draw: Draw): Feature {
  const kind = pick(draw, KINDS) ?? 'pad';
  let next = job.nextId;
  const id = (draw() < 0.05 && pick(draw, job.features)?.id) || `f${next}`;
  const count = Math.floor(draw() * 6) + (draw() < 0.1 ? 0 : 3);
  const start = point(draw);
  const corners = Array.from({ length: count }, (_, n): Corner => {
    next += 1;
    const angle = (2 * Math.PI * (n + draw() * 0.5)) / count;
    const reach = 40 * INCH + draw() * 100 * INCH;
    return {
      id: `c${next}`,
      x: start.x + Math.round(Math.cos(angle) * reach),
      y: start.y + Math.round(Math.sin(angle) * reach),
      rise: draw() < 0.2 ? length(draw) : 0,
    };
  });
  const outline = { form: 'outline', closed: true, corners } as const;
  const shape: Shape =
    draw() < 0.4 ? { form: 'round', center: point(draw), diameter: length(draw) } : outline;
  const base = { id, name: draw() < 0.5 ? '' : `<${kind}> "Ø" \u2028` };
  switch (kind) {
    case 'building-line':
      return {
        ...base,
        kind,
        pourAgainst: draw() < 0.5,
        shape: { ...outline, closed: draw() < 0.5 },
      };
    case 'steps':
      return { ...base, kind, treads: Math.floor(draw() * 5), shape: outline };
    case 'utility-line':
      return { ...base, kind, service: 'gas', shape: { ...outline, closed: draw() < 0.03 } };
    case 'joint':
      return { ...base, kind, joint: 'control', shape: { ...outline, closed: draw() < 0.03 } };
    case 'block-out':
    case 'no-stake-zone':
      return { ...base, kind, shape };
    default:
      return { ...base, kind, shape: { ...outline, closed: draw() < 0.97 } };
  }
}

/** Some command for the job as it stands; it may well be one that must be refused. */
export function randomCommand(job: Job, draw: Draw): Command {
  const one = pick(draw, job.features);
  if (!one || draw() < 0.12) return { do: 'add-feature', feature: newFeature(job, draw) };
  const feature = draw() < 0.02 ? 'f0' : one.id;
  const corners = one.shape.form === 'outline' ? one.shape.corners : [];
  const corner = pick(draw, corners)?.id ?? 'c0';
  const other = pick(draw, job.features);
  const edge = other?.shape.form === 'outline' ? pick(draw, other.shape.corners) : undefined;
  const on =
    other && edge && draw() < 0.5
      ? { on: { feature: other.id, corner: edge.id, t: Math.round(draw() * 64) / 64 } }
      : {};
  const moves = draw() < 0.5 ? 'start' : 'end';
  const neighbour = pick(draw, corners);
  const to = neighbour && draw() < 0.2 ? { x: neighbour.x, y: neighbour.y } : point(draw);
  const hand = pick(draw, job.handStakes)?.id;
  const practices = defaultPractices();
  const twisted = draw() < 0.3;
  const degrees = draw() < 0.5 ? 90 * Math.floor(draw() * 9 - 4) : draw() * 720 - 360;
  const commands: readonly Command[] = [
    ...(draw() < 0.3 ? [{ do: 'remove-feature', feature } as const] : []),
    {
      do: 'set-feature',
      feature,
      ...(draw() < 0.5 ? { name: 'Walk' } : {}),
      ...(draw() < 0.3 ? { closed: draw() < 0.5 } : {}),
      ...(draw() < 0.3 ? { pourAgainst: draw() < 0.5 } : {}),
      ...(draw() < 0.1 ? { service: 'sewer' as const } : {}),
      ...(draw() < 0.2 ? { treads: Math.floor(draw() * 60) } : {}),
    },
    { do: 'order-feature', feature, to: Math.floor(draw() * 9) - 2 },
    { do: 'move-corner', feature, corner, to, ...on },
    { do: 'move-feature', feature, by: point(draw) },
    { do: 'insert-corner', feature, after: corner, at: point(draw), ...on },
    { do: 'remove-corner', feature, corner },
    { do: 'set-rise', feature, corner, rise: length(draw) },
    { do: 'set-round', feature, center: point(draw), diameter: length(draw) },
    { do: 'turn-feature', feature, degrees },
    {
      do: 'mirror-feature',
      feature,
      across: moves === 'end' ? 'vertical' : 'horizontal',
      ...(draw() < 0.3 ? { about: point(draw) } : {}),
    },
    {
      do: 'set-edge-length',
      feature,
      corner,
      length: length(draw),
      moves,
      carry: draw() < 0.7 ? 'side' : 'corner',
    },
    { do: 'set-edge-direction', feature, corner, degrees, moves },
    {
      do: 'set-practices',
      practices: {
        ...practices,
        thickness: length(draw),
        steel: {
          ...practices.steel,
          mesh: { ...practices.steel.mesh, lapEnds: length(draw) },
        },
      },
    },
    {
      do: 'set-lumber',
      lumber: {
        ...defaultLumber(),
        truck: [
          { id: 't1', size: '2x4', length: length(draw), count: Math.floor(draw() * 9), twisted },
          { id: draw() < 0.9 ? 't2' : 't1', size: '1x6', length: 96 * INCH, count: 1, twisted },
        ],
      },
    },
    { do: 'pin-stake', at: to, ...(hand && draw() < 0.5 ? { id: hand } : {}) },
    {
      do: 'remove-stake',
      at: hand ? to : point(draw),
      ...(hand && draw() < 0.5 ? { id: hand } : {}),
    },
    { do: 'free-stake', id: hand ?? 's0' },
    ...(draw() < 0.1 ? [{ do: 'free-stakes' } as const] : []),
    { do: 'set-units', units: draw() < 0.5 ? 'metric' : 'decimal-feet' },
    {
      do: 'set-title',
      title: { drawnBy: 'A.', revision: 'B', replaces: 'A', north: Math.floor(draw() * 400) },
    },
    { do: 'set-text', name: `Job ${draw()}`, notes: 'x'.repeat(Math.floor(draw() * 21_000)) },
  ];
  return pick(draw, commands) ?? { do: 'set-text' };
}

/** Seeds for walks; each is a walk of its own. */
export const walkSeed = fc.integer({ min: 1, max: 2 ** 31 - 1 });

/** Numbers from a seed, the same everywhere (a 32-bit multiplicative mixer). */
export function numbersFrom(seed: number): Draw {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** A walk of random commands from a job: every state that was reached, and how many were refused. */
export function walk(start: Job, seed: number, steps: number) {
  const draw = numbersFrom(seed);
  const states: Job[] = [start];
  const refusals: string[] = [];
  let job = start;
  for (let step = 0; step < steps; step++) {
    const outcome = apply(job, randomCommand(job, draw));
    if (outcome.ok) {
      job = outcome.value;
      states.push(job);
    } else {
      refusals.push(outcome.problems.code);
    }
  }
  return { states, refusals };
}
