import { arcOf } from '../../geometry/arc.ts';
import { distanceToEdge } from '../../geometry/locate.ts';
import type { Point } from '../../geometry/point.ts';
import type { Corner, Job, Outline } from '../../job/job.ts';
import { cornerLetter } from '../../job/letters.ts';
import type { Quantity, TicketTable } from '../figure.ts';
import { area, length, list, number, term, text } from '../quantity.ts';
import type { JointLayout, JointsResult } from '../result.ts';
import { jointMark, panelMark } from './marks.ts';
import { isNear, lengthOf } from './meeting.ts';
import { panelsAt } from './panelsAt.ts';

export function jointTables(job: Job, joints: JointsResult): readonly TicketTable[] {
  const { layout } = joints;
  return [
    ...(layout ? [panelsTable(layout)] : []),
    ...(layout && layout.joints.length > 0 ? [jointsTable(job, layout)] : []),
    ...(joints.isolation.length > 0 ? [stripsTable(joints)] : []),
  ];
}

/** Every panel with its size, and whether it obeys the rules, or which it breaks. */
function panelsTable(layout: JointLayout): TicketTable {
  const says: Set<string>[] = layout.panels.map(() => new Set());
  const reasons: Quantity[][] = layout.panels.map(() => []);
  for (const broken of layout.broken) {
    for (const panel of panelsAt(layout, broken)) {
      if (says[panel]!.has(broken.rule)) continue;
      says[panel]!.add(broken.rule);
      reasons[panel]!.push(term(`broken-${broken.rule}`));
    }
  }
  return {
    key: 'panels',
    columns: ['mark', 'panel-says', 'panel-long', 'panel-wide', 'panel-ratio', 'panel-area'],
    rows: layout.panels.map((panel, i) => [
      text(panelMark(i)),
      reasons[i]!.length === 0 ? term('panel-passes') : list(reasons[i]!),
      length(panel.length),
      length(panel.width),
      number(Math.round((100 * panel.length) / panel.width) / 100),
      area(panel.area),
    ]),
  };
}

/** Every joint: how long, and where its ends are from the corners of the pads. */
function jointsTable(job: Job, layout: JointLayout): TicketTable {
  const closeness = layout.problems[0]?.closeness ?? 0;
  return {
    key: 'joints',
    columns: ['mark', 'length', 'joint-from', 'joint-to', 'joint-by'],
    rows: layout.joints.map((joint, i) => [
      text(jointMark(layout.joints, i)),
      length(Math.round(lengthOf(joint))),
      placeOf(job, layout, joint.from, i, closeness),
      placeOf(job, layout, joint.to, i, closeness),
      term(joint.by === 'hand' ? 'joint-hand' : 'joint-proposed'),
    ]),
  };
}

/** Where an end is: at a corner of a pad, so far straight from the first corner of an edge, on another joint, or at something. */
function placeOf(
  { features }: Job,
  { joints }: JointLayout,
  end: Point,
  own: number,
  closeness: number,
): Quantity {
  const pads = features.filter((feature) => feature.kind === 'pad');
  for (const { shape, name } of pads) {
    const found = alongOutline(shape, end, closeness);
    if (!found) continue;
    return pads.length > 1 && name !== '' ? list([text(name), ...found]) : list(found);
  }
  const on = joints.findIndex(
    ({ from, to }, i) => i !== own && distanceToEdge(end, from, to) <= closeness,
  );
  if (on >= 0) return list([text(jointMark(joints, on))]);
  const other = features.find(
    ({ kind, shape }) =>
      kind !== 'joint' &&
      (shape.form === 'round'
        ? Math.abs(
            Math.hypot(end.x - shape.center.x, end.y - shape.center.y) - shape.diameter / 2,
          ) <=
          2 * closeness
        : alongOutline(shape, end, closeness) !== undefined),
  );
  if (!other) return list([]);
  return list([other.name === '' ? term(termOf(other.kind)) : text(other.name)]);
}

function termOf(kind: Job['features'][number]['kind']) {
  return kind === 'existing-slab' || kind === 'steps' || kind === 'block-out' ? kind : 'free';
}

function alongOutline(
  { corners, closed }: Outline,
  end: Point,
  closeness: number,
): readonly Quantity[] | undefined {
  const corner = corners.findIndex((one) => isNear(one, end, closeness));
  if (corner >= 0) return [text(cornerLetter(corner))];
  const count = closed ? corners.length : corners.length - 1;
  for (let i = 0; i < count; i++) {
    const from = corners[i]!;
    const next = (i + 1) % corners.length;
    const to = corners[next]!;
    if (!isOnEdge(end, from, to, closeness)) continue;
    const along = Math.hypot(end.x - from.x, end.y - from.y);
    return [text(`${cornerLetter(i)}–${cornerLetter(next)}`), length(Math.round(along))];
  }
  return undefined;
}

function isOnEdge(end: Point, from: Corner, to: Corner, closeness: number): boolean {
  if (from.rise === 0) return distanceToEdge(end, from, to) <= closeness;
  const { cx, cy, radius, sweep } = arcOf(from, to, from.rise);
  // Chords that stand for an arc leave it by no more than what is close enough.
  if (Math.abs(Math.hypot(end.x - cx, end.y - cy) - radius) > 2 * closeness) return false;
  const start = Math.atan2(from.y - cy, from.x - cx);
  const turned = Math.atan2(end.y - cy, end.x - cx) - start;
  const along = sweep > 0 ? turned : -turned;
  return (along + 4 * Math.PI) % (2 * Math.PI) <= Math.abs(sweep);
}

function stripsTable(joints: JointsResult): TicketTable {
  return {
    key: 'strips',
    columns: ['mark', 'meets', 'length'],
    rows: joints.isolation.map((run, i) => [text(`${i + 1}`), term(run.kind), length(run.length)]),
  };
}
