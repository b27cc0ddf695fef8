import { EVERYTHING, type Place } from '../clearance.ts';
import { textWidth } from '../textSize.ts';
import {
  along,
  type Board,
  dot,
  isRoomFor,
  type Lettered,
  lengthText,
  readingAngle,
  toMm,
  wayFrom,
  write,
  writeWithLeader,
} from './board.ts';
import { keep, keepInLane } from './keyed.ts';
import { drawInLane } from './linear.ts';
import type { MeasuredSide } from './loops.ts';

/** How far off its edge a dimension may lie, mm: outside, and inside, where it is sooner in the way. */
const OFFSETS = [6.5, 9.5, 13, 17, 22];
const INSIDE_OFFSETS = [6.5, 9.5, 13];

/** The dimension of one edge, along it and near it: outside, else inside, else by its text alone, else by a letter. */
export function drawBeside(board: Board, side: MeasuredSide): void {
  const { length, measures } = side;
  const [from, to] = [toMm(board, side.from), toMm(board, side.to)];
  const way = wayFrom(from, to);
  // What is measured lies to the left.
  const out = { x: way.y, y: -way.x };
  const into = { x: -out.x, y: -out.y };
  const text = side.text ?? lengthText(board, length);
  board.sizes.push({ what: 'edge', text, from: side.from, to: side.to });
  const linear = { from, to, text, feature: measures?.feature, measures };
  const lanes = [
    ...OFFSETS.map((offset) => ({ off: out, level: dot(from, out) + offset })),
    ...INSIDE_OFFSETS.map((offset) => ({ off: into, level: dot(from, into) + offset })),
  ];
  if (drawInLane(board, linear, lanes) !== undefined) return;
  for (const off of [out, into]) if (writeAlong(board, from, to, off, text, measures)) return;
  const target = along(from, way, Math.hypot(to.x - from.x, to.y - from.y) / 2);
  const toKey = { what: 'edge', text, from: side.from, to: side.to, target, toward: out } as const;
  keepInLane(board, linear, lanes, toKey);
}

/** The text alone, close along the edge it gives the length of. */
function writeAlong(
  board: Board,
  from: Place,
  to: Place,
  off: Place,
  text: string,
  measures: MeasuredSide['measures'],
): boolean {
  const { height } = board.lettering;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < textWidth(text, height) + 2) return false;
  const way = wayFrom(from, to);
  const angle = readingAngle(way);
  const up = { x: -Math.sin(angle), y: Math.cos(angle) };
  // The letters stand on a line that is nearer to the edge when they stand above it.
  const distance = dot(up, off) > 0 ? 1 : height + 1.4;
  for (const share of [0.5, 0.4, 0.6, 0.3, 0.7]) {
    const lettered: Lettered = {
      text,
      at: along(along(from, way, length * share), off, distance),
      angle,
      anchor: 'middle',
      height,
      style: 'dimension',
      feature: measures?.feature,
      measures,
    };
    if (!isRoomFor(board, lettered, EVERYTHING)) continue;
    write(board, lettered);
    return true;
  }
  return false;
}

/** An arc by its radius, and the chord between its ends. */
export function drawArc(board: Board, side: MeasuredSide): void {
  const { arc, measures } = side;
  if (!arc) return;
  const { words } = board;
  const [from, to] = [toMm(board, side.from), toMm(board, side.to)];
  const chord = Math.hypot(side.to.x - side.from.x, side.to.y - side.from.y);
  const centre = toMm(board, { x: arc.cx, y: arc.cy });
  const radius = arc.radius / board.gridPerMm;
  const begin = Math.atan2(from.y - centre.y, from.x - centre.x);
  const half = begin + arc.sweep / 2;
  const ray = { x: Math.cos(half), y: Math.sin(half) };
  const middle = along(centre, ray, radius);
  const radiusText = words.radius(lengthText(board, arc.radius));
  const inward = { x: -ray.x, y: -ray.y };
  const out = arc.sweep > 0 ? ray : inward;
  board.sizes.push({ what: 'arc', text: radiusText, from: side.from, to: side.to });

  if (!writeWithLeader(board, { target: middle, toward: inward, text: radiusText, arrow: true })) {
    keep(board, {
      what: 'arc',
      text: radiusText,
      from: side.from,
      to: side.to,
      target: middle,
      toward: out,
    });
  }
  if (chord === 0) return;
  const text = words.chord(lengthText(board, chord));
  board.sizes.push({ what: 'arc', text, from: side.from, to: side.to });
  const way = wayFrom(from, to);
  const right = { x: way.y, y: -way.x };
  const linear = { from, to, text, feature: measures?.feature, measures };
  // Beyond the arc on its own side, and just inside the chord on the other.
  const rise = Math.max(0, dot(middle, right) - dot(from, right));
  const fall = Math.max(0, -(dot(middle, right) - dot(from, right)));
  const lanes = (
    [
      [right, rise, OFFSETS],
      [{ x: -right.x, y: -right.y }, fall, INSIDE_OFFSETS],
    ] as const
  ).flatMap(([off, base, offsets]) =>
    offsets.map((offset) => ({ off, level: dot(from, off) + base + offset })),
  );
  if (drawInLane(board, linear, lanes) !== undefined) return;
  const toKey = {
    what: 'arc',
    text,
    from: side.from,
    to: side.to,
    target: middle,
    toward: out,
  } as const;
  keepInLane(board, linear, lanes, toKey);
}
