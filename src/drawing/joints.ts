import { boxOf } from '../geometry/box.ts';
import { locate } from '../geometry/locate.ts';
import type { Job, Joint } from '../job/job.ts';
import type { Panel } from '../takeoff/joints/layout.ts';
import { jointMark, panelMark } from '../takeoff/joints/marks.ts';
import { panelsAt } from '../takeoff/joints/panelsAt.ts';
import type { JointsResult } from '../takeoff/result.ts';
import { addBox, addLine, JOINT, type Place, SYMBOL } from './clearance.ts';
import {
  along,
  type Board,
  isRoomFor,
  type Lettered,
  toGridPoint,
  toMm,
  wayFrom,
  write,
  writeWithLeader,
} from './dimension/board.ts';
import { keep } from './dimension/keyed.ts';
import { type Stretch, writeInLine } from './inLine.ts';
import type { Mark } from './marks.ts';
import { edgePath, movedRight, pathPoints, polyline, shapePath } from './paths.ts';
import { textWidth } from './textSize.ts';

/** The strip is drawn this far inside the edge, mm of output, so that the line of the edge stays to be seen. */
const INSIDE_MM = 0.9;

/** Isolation strip along the edges that get one. */
export function drawStrip({ isolation }: JointsResult, gridPerMm: number): readonly Mark[] {
  return isolation.flatMap(({ edges }) =>
    edges.map(
      (edge): Mark => ({
        kind: 'line',
        layer: 'joints',
        style: 'strip',
        path: edgePath(movedRight(edge, -INSIDE_MM * gridPerMm)),
      }),
    ),
  );
}

/** Joints that were proposed; those drawn by hand are drawn as what they are, features. */
export function drawProposed({ layout }: JointsResult): readonly Mark[] {
  return (layout?.joints ?? [])
    .filter(({ by }) => by === 'search')
    .map(
      ({ kind, from, to }): Mark => ({
        kind: 'line',
        layer: 'joints',
        style: `joint-${kind}`,
        path: polyline([from, to]),
      }),
    );
}

/** The joints that are on the plan: nothing is written over them. */
export function keepJointsClear(
  board: Board,
  { features }: Job,
  joints: JointsResult | undefined,
): void {
  for (const [from, to] of features.filter(isJoint).flatMap((joint) => stretchesOf(board, joint)))
    addLine(board.clearance, JOINT, from, to);
  for (const { by, from, to } of joints?.layout?.joints ?? []) {
    if (by === 'search') addLine(board.clearance, JOINT, toMm(board, from), toMm(board, to));
  }
}

/**
 * The mark of every joint in its line: C for control, B where the pour stops, X in the older slab. One that finds no room
 * in it stands beside it or in the list.
 */
export function letterJoints(
  board: Board,
  { features }: Job,
  { layout }: Pick<JointsResult, 'layout'>,
): void {
  const laid = (layout?.joints ?? []).map(
    ({ from, to }): Stretch => [toMm(board, from), toMm(board, to)],
  );
  const drawn = features
    .filter(isJoint)
    .map((joint) => ({ joint, lines: stretchesOf(board, joint) }));
  const all = [...laid, ...drawn.flatMap(({ lines }) => lines)];
  laid.forEach((line, i) => {
    letterJoint(board, jointMark(layout!.joints, i), line, all);
  });
  for (const { joint, lines } of drawn) {
    const marked = layout && joint.joint !== 'existing';
    if (marked) continue;
    for (const line of lines)
      letterJoint(board, board.words.joints[joint.joint].letter, line, all, joint.id);
  }
}

function letterJoint(
  board: Board,
  text: string,
  line: Stretch,
  all: readonly Stretch[],
  feature?: string,
): void {
  const [from, to] = line;
  // A joint that was drawn lies in the layout as well.
  const clearOf = all.filter((other) => other !== line && !isAlong(other, line));
  const said = { text, from, to, own: JOINT, clearOf, layer: 'joints' } as const;
  if (writeInLine(board, { ...said, ...(feature === undefined ? {} : { feature }) })) return;
  if (!board.keeps) return;
  const target = along(from, wayFrom(from, to), Math.hypot(to.x - from.x, to.y - from.y) / 2);
  const way = wayFrom(from, to);
  const toward = { x: -way.y, y: way.x };
  if (writeWithLeader(board, { target, toward, text, arrow: false, style: 'label' })) return;
  const ends = { from: toGridPoint(board, from), to: toGridPoint(board, to) };
  keep(board, { what: 'name', text, ...ends, target, toward });
}

/** Whether two lines lie along one another. */
function isAlong([a, b]: Stretch, [c, d]: Stretch): boolean {
  const way = wayFrom(a, b);
  const off = ({ x, y }: Place) => Math.abs(way.x * (y - a.y) - way.y * (x - a.x));
  return off(c) < SAME_LINE_MM && off(d) < SAME_LINE_MM;
}
const SAME_LINE_MM = 0.1;

/** The straight parts of a joint that was drawn. */
function stretchesOf(board: Board, { shape }: Joint): readonly Stretch[] {
  const path = shapePath(shape);
  const points = path ? pathPoints(path).map((point) => toMm(board, point)) : [];
  return points.slice(1).map((to, i): Stretch => [points[i]!, to]);
}

function isJoint(feature: Job['features'][number]): feature is Joint {
  return feature.kind === 'joint';
}

/** Of the sign at a panel that breaks a rule, mm of output. */
const SIGN_MM = 3.4;
/** Where in a panel its mark is tried: shares of the box round it, the middle first. */
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8];

/** The mark of every panel in it, and a sign at those that break a rule. */
export function markPanels(board: Board, { layout }: JointsResult): void {
  if (!layout || layout.panels.length < 2) return;
  const wrong = new Set(layout.broken.flatMap((broken) => panelsAt(layout, broken)));
  layout.panels.forEach((panel, i) => {
    markPanel(board, panel, panelMark(i), wrong.has(i));
  });
}

function markPanel(board: Board, panel: Panel, mark: string, wrong: boolean): void {
  const height = board.lettering.label;
  const { minX, minY, maxX, maxY } = boxOf(panel.polygon.outer);
  for (const down of SHARES) {
    for (const across of SHARES) {
      const middle = { x: minX + across * (maxX - minX), y: minY + down * (maxY - minY) };
      if (!isInside(panel, middle)) continue;
      const at = toMm(board, middle);
      const lettered: Lettered = {
        text: mark,
        at: { x: at.x, y: at.y - height / 2 },
        angle: 0,
        anchor: 'middle',
        height,
        style: 'figure',
        layer: 'joints',
      };
      if (!isRoomFor(board, lettered)) continue;
      write(board, lettered);
      if (wrong) lookHere(board, at, textWidth(mark, height));
      return;
    }
  }
}

/** The sign that says to look at it, at the end of a panel's mark. */
function lookHere(board: Board, at: Place, width: number): void {
  const spot = { x: at.x + width / 2 + SIGN_MM * 0.8, y: at.y };
  const half = SIGN_MM / 2;
  addBox(board.clearance, SYMBOL, { ...spot, halfWidth: half, halfHeight: half, cos: 1, sin: 0 });
  board.marks.push({
    kind: 'symbol',
    layer: 'joints',
    symbol: 'look-here',
    at: toGridPoint(board, spot),
    size: SIGN_MM,
    angle: 0,
  });
}

function isInside({ polygon: { outer, holes } }: Panel, place: { x: number; y: number }): boolean {
  return (
    locate(place, outer) === 'inside' && holes.every((hole) => locate(place, hole) === 'outside')
  );
}
