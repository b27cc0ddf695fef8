import { boxOf } from '../geometry/box.ts';
import { locate } from '../geometry/locate.ts';
import type { Job, Joint } from '../job/job.ts';
import type { JointLine, Panel } from '../takeoff/joints/layout.ts';
import { jointMark, panelMark } from '../takeoff/joints/marks.ts';
import { panelsAt } from '../takeoff/joints/panelsAt.ts';
import type { JointsResult } from '../takeoff/result.ts';
import { addBox, addLine, JOINT, type Place, SYMBOL } from './clearance.ts';
import {
  type Board,
  isRoomFor,
  type Lettered,
  toGridPoint,
  toMm,
  write,
} from './dimension/board.ts';
import { writeInLine } from './inLine.ts';
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
  for (const { shape } of features.filter(isJoint)) {
    const path = shapePath(shape);
    const points = path ? pathPoints(path).map((point) => toMm(board, point)) : [];
    points.slice(1).forEach((to, i) => {
      addLine(board.clearance, JOINT, points[i]!, to);
    });
  }
  for (const { by, from, to } of joints?.layout?.joints ?? []) {
    if (by === 'search') addLine(board.clearance, JOINT, toMm(board, from), toMm(board, to));
  }
}

/** The mark of every joint in its line: C for control, B where the pour stops, X in the older slab. */
export function letterJoints(
  board: Board,
  { features }: Job,
  { layout }: Pick<JointsResult, 'layout'>,
): void {
  layout?.joints.forEach((joint, i) => {
    letterJoint(board, joint, jointMark(layout.joints, i));
  });
  for (const { id, joint, shape } of features.filter(isJoint)) {
    const marked = layout && joint !== 'existing';
    if (marked) continue;
    const path = shapePath(shape);
    const points = path ? pathPoints(path).map((point) => toMm(board, point)) : [];
    points.slice(1).forEach((to, i) => {
      const text = board.words.joints[joint].letter;
      writeInLine(board, { text, from: points[i]!, to, own: JOINT, layer: 'joints', feature: id });
    });
  }
}

function letterJoint(board: Board, { from, to }: JointLine, text: string): void {
  const [a, b] = [toMm(board, from), toMm(board, to)];
  writeInLine(board, { text, from: a, to: b, own: JOINT, layer: 'joints' });
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
