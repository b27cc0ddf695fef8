import { type Box, boxAround, boxOf } from '../geometry/box.ts';
import type { Point } from '../geometry/point.ts';
import type { Feature, Job } from '../job/job.ts';
import type { Station } from '../takeoff/figure.ts';
import type { Layout } from '../takeoff/layout/layout.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { addLine, FEATURE, OPENING, OUTLINE } from './clearance.ts';
import {
  type Board,
  type KeyedSize,
  type Lettering,
  makeBoard,
  type PlanSize,
  type PrintedChain,
  toMm,
} from './dimension/board.ts';
import type { Loop } from './dimension/loops.ts';
import { diagonalLines, drawDimensions, loopsToMeasure } from './dimensions.ts';
import { drawFaults } from './faults.ts';
import { type DrawnLayer, formsLayer, NOTHING_WRITTEN } from './formsLayer.ts';
import { BAND_MM, featureArea, featureOutline, wallBand } from './ground.ts';
import { drawProposed, drawStrip, keepJointsClear, letterJoints, markPanels } from './joints.ts';
import { drawLabels, namesOf } from './labels.ts';
import { drawLayout, letterCorners } from './layout.ts';
import type { DrawingScale, Mark } from './marks.ts';
import { drawMatchLines, type MatchLine } from './matchLines.ts';
import { edgePath, pathPoints, shapePath } from './paths.ts';
import { letterEdges, pourArea, pourEdges } from './pour.ts';
import { drawSteel, letterSteel } from './steel.ts';
import { steelLayer } from './steelLayer.ts';
import { drawTreads } from './steps.ts';
import { drawStrips, markStrips } from './strips.ts';
import { keepServicesClear, toleranceBand, utilityLines, writeServices } from './utilityLines.ts';
import type { DrawingWords } from './words/en.ts';

export interface PlanOptions {
  /**
   * Whose layer lies on top. On paper, with a list of what found no room: 'sheet' is the layout to build from, with its
   * checks; 'forms-sheet' the plan of forms and stakes, which are measured from the corner where each run starts;
   * 'steel-sheet' that of the steel.
   */
  readonly station: Station | SheetPlan;
  readonly scale: DrawingScale;
  readonly words: DrawingWords;
  readonly dimensions: boolean;
  /** A feature whose own edges are measured, whatever it meets. */
  readonly selected?: string;
  /** Measure at most so many edges, the longest first. On a screen 60 when not said; on the sheet all. */
  readonly dimensionLimit?: number;
  /** What is set out and from where: its line and marks are drawn. */
  readonly layouts?: readonly Layout[];
  /** Where the plan goes on on another sheet. */
  readonly matchLines?: readonly MatchLine[];
  /** Nothing is written outside of this box, grid units. */
  readonly window?: Box;
}

/** The plans that are printed. */
export type SheetPlan = 'sheet' | 'forms-sheet' | 'steel-sheet';

function isPrinted(station: PlanOptions['station']): station is SheetPlan {
  return station === 'sheet' || station === 'forms-sheet' || station === 'steel-sheet';
}

export interface Plan {
  readonly marks: readonly Mark[];
  /** What found no room at its place, for a list beside the plan. Empty on a screen, where one looks closer instead. */
  readonly keyed: readonly KeyedSize[];
  /** Every size of the plan, those in the list too. */
  readonly sizes: readonly PlanSize[];
  /** Chains of sizes along the sides of the pour, each with the overall that it adds up to. */
  readonly chains: readonly PrintedChain[];
  /** Form runs and dowel seams that found no room for their distances: those stand in the lists alone. */
  readonly unmeasured: readonly string[];
}

/** Letters on a screen (2.5 mm of output are 13 px text), and on paper, to be read at arm's length. */
const ON_SCREEN: Lettering = { height: 2.5, label: 2.7, first: 6.5, step: 6 };
const ON_PAPER: Lettering = { height: 2.8, label: 3, first: 9, step: 7 };
const SCREEN_LIMIT = 60;

/** The plan as marks, lowest first: see planOf. */
export function drawPlan(job: Job, takeoff: Takeoff, options: PlanOptions): readonly Mark[] {
  return planOf(job, takeoff, options).marks;
}

/**
 * The plan of a job: the ground, the pour with its edges by what they meet, the station's layer, dimensions and names.
 * A job that gives no pour is drawn by its outlines, with the faults marked. Texts, lines and symbols don't overlap at
 * the scale it is drawn for.
 */
export function planOf(job: Job, takeoff: Takeoff, options: PlanOptions): Plan {
  const { station, dimensions, selected } = options;
  const printed = isPrinted(station);
  const loops = loopsToMeasure(job, takeoff, selected);
  const board = boardFor(job, options);
  keepClear(board, job.features, loops);
  keepServicesClear(board, utilityLines(job));
  const jointsShown = SHOWS_JOINTS.includes(station) ? takeoff.joints : undefined;
  keepJointsClear(board, job, jointsShown);
  const under = groundOf(job, takeoff, options);
  const layer = layerOf(board, job, takeoff, options);
  const treads = job.features.flatMap((feature) =>
    feature.kind === 'steps' ? drawTreads(board, feature, job) : [],
  );
  drawFaults(board, takeoff);
  // What can't be poured isn't set out: its diagonals and angles would say nothing.
  const checks = station === 'sheet' && dimensions && takeoff.pour !== undefined;
  const diagonals = checks ? diagonalLines(board, loops) : [];
  drawMatchLines(board, options.matchLines ?? []);
  const unmeasured = dimensions ? writeLayer(board, job, layer, options) : [];
  if (dimensions && station !== 'forms-sheet' && station !== 'steel-sheet') {
    const limit = options.dimensionLimit ?? (printed ? Number.POSITIVE_INFINITY : SCREEN_LIMIT);
    drawDimensions(board, loops, {
      limit,
      names: namesOf(board, job),
      checks,
      diagonals,
      ...(selected === undefined ? {} : { selected }),
    });
  }
  if (station === 'steel' && takeoff.steel) letterSteel(board, takeoff.steel);
  letterJoints(board, job, jointsShown ?? {});
  if (station === 'joints' && jointsShown) markPanels(board, jointsShown);
  if (station === 'mix' && takeoff.placing) markStrips(board, takeoff.placing);
  drawLabels(board, job);
  if (takeoff.pour && (station === 'sheet' || station === 'forms')) {
    letterCorners(board, job, printed ? undefined : selected);
    for (const layout of options.layouts ?? []) drawLayout(board, layout);
  }
  writeServices(board, utilityLines(job));
  if (station === 'sheet' && takeoff.pour) letterEdges(board, takeoff.pour);
  return {
    marks: [
      ...under,
      ...treads,
      ...layer.marks,
      ...(jointsShown ? drawProposed(jointsShown) : []),
      ...board.marks,
    ],
    keyed: board.keyed,
    sizes: board.sizes,
    chains: board.chains,
    unmeasured,
  };
}

/** Joints drawn by hand are on every plan, as features; those that are proposed on these. */
const SHOWS_JOINTS: readonly PlanOptions['station'][] = ['joints', 'sheet', 'steel-sheet'];

/** What is written beside a station's layer before all else. Gives back the runs and seams that stand in a list alone. */
function writeLayer(
  board: Board,
  job: Job,
  layer: DrawnLayer,
  { station }: PlanOptions,
): readonly string[] {
  layer.write();
  const unmeasured = layer.measure();
  // Inside, as stakes are measured outside.
  if (station === 'forms-sheet') letterCorners(board, job, undefined, 'inside');
  if (station === 'steel-sheet') letterCorners(board, job, undefined);
  layer.name();
  return unmeasured;
}

function boardFor(job: Job, { scale, words, station, window }: PlanOptions): Board {
  const { gridPerMm } = scale;
  const boxes = job.features.flatMap(({ shape }) => {
    const path = shapePath(shape);
    return path ? [boxOf(pathPoints(path))] : [];
  });
  const around = boxes.length > 0 ? boxAround(boxes) : { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  const origin = {
    x: (around.minX + around.maxX) / 2,
    y: (around.minY + around.maxY) / 2,
  };
  return makeBoard({
    gridPerMm,
    origin,
    units: job.units,
    words,
    lettering: isPrinted(station) ? ON_PAPER : ON_SCREEN,
    keeps: isPrinted(station),
    extentMm: Math.max(around.maxX - around.minX, around.maxY - around.minY) / gridPerMm,
    window: window && inMm(window, origin, gridPerMm),
    hatched: hatchedBoxes(job, origin, gridPerMm),
  });
}

const HATCHED: readonly Feature['kind'][] = [
  'existing-slab',
  'building-line',
  'patch',
  'no-stake-zone',
  // Its words stand in the line.
  'utility-line',
];

/** Boxes in mm round all that is painted with a hatch, the band behind a wall's line with it. */
function hatchedBoxes({ features }: Job, origin: Point, gridPerMm: number): readonly Box[] {
  return features.flatMap(({ kind, shape }) => {
    const path = HATCHED.includes(kind) ? shapePath(shape) : undefined;
    if (!path) return [];
    const band = shape.form === 'outline' && !shape.closed ? BAND_MM : 0;
    return [inMm(boxOf(pathPoints(path)), origin, gridPerMm, band)];
  });
}

/** A box of grid units in mm of output, widened by so many. */
function inMm(box: Box, origin: Point, gridPerMm: number, wider = 0): Box {
  return {
    minX: (box.minX - origin.x) / gridPerMm - wider,
    maxX: (box.maxX - origin.x) / gridPerMm + wider,
    minY: (box.minY - origin.y) / gridPerMm - wider,
    maxY: (box.maxY - origin.y) / gridPerMm + wider,
  };
}

/** The lines that nothing is written over. */
function keepClear(board: Board, features: readonly Feature[], loops: readonly Loop[]): void {
  const lines = (points: readonly Point[], what: number): void => {
    const places = points.map((point) => toMm(board, point));
    for (let i = 1; i < places.length; i++) {
      addLine(board.clearance, what, places[i - 1]!, places[i]!);
    }
  };
  for (const { sides, hole } of loops) {
    for (const side of sides) lines(pathPoints(edgePath(side), 4), hole ? OPENING : OUTLINE);
  }
  for (const { kind, shape } of features) {
    const path = kind === 'pad' || kind === 'utility-line' ? undefined : shapePath(shape);
    if (!path) continue;
    const points = pathPoints(path, 4);
    lines(path.closed ? [...points, points[0]!] : points, kind === 'block-out' ? OPENING : FEATURE);
  }
}

/** Materials and edges. A patch lies on the fresh concrete it is part of; a block-out stays open. */
function groundOf(job: Job, { pour }: Takeoff, { scale }: PlanOptions): readonly Mark[] {
  const { features } = job;
  const areas = (...kinds: readonly Feature['kind'][]) =>
    features.filter(({ kind }) => kinds.includes(kind)).flatMap(featureArea);
  const bands = features.flatMap((feature) =>
    feature.kind === 'building-line' ? wallBand(feature, job, scale.gridPerMm) : [],
  );
  const outlines = (drawn: (feature: Feature) => boolean) =>
    features.filter(drawn).flatMap(featureOutline);
  const { utilityTolerance } = job.practices;
  return [
    ...utilityLines(job).flatMap((line) => toleranceBand(line, utilityTolerance)),
    ...areas('existing-slab', 'building-line', 'steps'),
    ...bands,
    ...(pour ? pourArea(pour) : []),
    ...areas('patch', 'block-out'),
    ...areas('no-stake-zone'),
    ...outlines(({ kind }) => (pour ? kind !== 'pad' : true)),
    ...(pour ? pourEdges(pour) : []),
  ];
}

function layerOf(
  board: Board,
  job: Job,
  takeoff: Takeoff,
  { station, scale }: PlanOptions,
): DrawnLayer {
  const { steel, joints, placing } = takeoff;
  switch (station) {
    case 'forms':
    case 'forms-sheet':
      return formsLayer(board, job, takeoff);
    case 'steel':
      return bare(steel ? drawSteel(board, steel) : []);
    case 'steel-sheet':
      return steelLayer(board, takeoff);
    case 'joints':
    case 'sheet':
      return bare(joints ? drawStrip(joints, scale.gridPerMm) : []);
    case 'mix':
      return bare(placing ? drawStrips(board, placing) : []);
    case 'ground':
    case 'order':
      return bare([]);
    default:
      return station satisfies never;
  }
}

function bare(marks: readonly Mark[]): DrawnLayer {
  return { marks, ...NOTHING_WRITTEN };
}
