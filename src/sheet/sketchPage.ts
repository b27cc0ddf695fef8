import { boundsOf } from '../drawing/bounds.ts';
import type { Mark } from '../drawing/marks.ts';
import { planOf } from '../drawing/plan.ts';
import type { Box } from '../geometry/box.ts';
import type { Job } from '../job/job.ts';
import type { Station } from '../takeoff/figure.ts';
import type { Layout } from '../takeoff/layout/layout.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { furniture, text } from './furniture.ts';
import { shortened } from './lettering.ts';
import type { SheetPage } from './page.ts';
import { BARS_HEIGHT, bars } from './pages/bars.ts';
import { PAPERS, type PaperName } from './papers.ts';
import { gridPerMmAt, type Scale, scalesFor } from './scales.ts';
import type { PageWords } from './sheetOptions.ts';

/** Clear paper all round, mm. */
const CLEAR = 6;
const NAME_MM = 4.2;
const SMALL_MM = 2.5;
/** Under the drawing: name, what it is and its scale beside the bars, mm. */
const FOOT_MM = BARS_HEIGHT + 4;
/** Room for bars and words side by side, mm. */
const LEAST_WIDTH = 130;

export interface SketchPage {
  readonly page: SheetPage;
  readonly scale: Scale;
}

export interface SketchWishes {
  readonly station: Station;
  /** What it should still fit on when it is printed. */
  readonly paper: PaperName;
  readonly words: PageWords;
  readonly layouts?: readonly Layout[];
}

/**
 * The sketch with a station's layer as a picture of its own, as large as its scale makes it: the largest of the job's
 * scales at which it fits the paper, whichever way that is turned. Null when not even the smallest does.
 */
export function sketchPage(job: Job, takeoff: Takeoff, wishes: SketchWishes): SketchPage | null {
  const { station, words, layouts = [] } = wishes;
  for (const scale of scalesFor(job.units)) {
    const grid = { gridPerMm: gridPerMmAt(scale) };
    const options = { station, scale: grid, words: words.drawing };
    // The bare drawing first: dimensions cost far more than finding that it is too large without them.
    const bare = planOf(job, takeoff, { ...options, dimensions: false });
    if (!fits(boundsOf(bare.marks, grid), scale, wishes.paper)) continue;
    const { marks } = planOf(job, takeoff, {
      ...options,
      dimensions: true,
      dimensionLimit: Number.POSITIVE_INFINITY,
      layouts,
    });
    const box = boundsOf(marks, grid) ?? EMPTY;
    if (fits(box, scale, wishes.paper))
      return { page: pageOf(job, marks, box, scale, wishes), scale };
  }
  return null;
}

const EMPTY: Box = { minX: 0, minY: 0, maxX: 0, maxY: 0 };

function sizeOf({ minX, minY, maxX, maxY }: Box, scale: Scale) {
  const perMm = gridPerMmAt(scale);
  return {
    width: Math.max((maxX - minX) / perMm, LEAST_WIDTH) + 2 * CLEAR,
    height: (maxY - minY) / perMm + FOOT_MM + 2 * CLEAR,
  };
}

function fits(box: Box | undefined, scale: Scale, paper: PaperName): boolean {
  const { width, height } = sizeOf(box ?? EMPTY, scale);
  const { width: short, height: long } = PAPERS[paper];
  return (width <= short && height <= long) || (width <= long && height <= short);
}

function pageOf(
  job: Job,
  marks: readonly Mark[],
  box: Box,
  scale: Scale,
  { station, words }: SketchWishes,
): SheetPage {
  const { sheet } = words;
  const { layout } = sheet;
  const { width, height } = sizeOf(box, scale);
  const perMm = gridPerMmAt(scale);
  const drawn = { width: (box.maxX - box.minX) / perMm, height: (box.maxY - box.minY) / perMm };
  const name = job.name.trim() || layout.noName;
  const foot = height - CLEAR - FOOT_MM + 4;
  const left = CLEAR + 64;
  const room = width - left - CLEAR;
  const said = (words: string, row: number) =>
    text(shortened(words, SMALL_MM, room), left, foot + 10 + row * 4.6, { height: SMALL_MM });
  return {
    width,
    height,
    title: `${name}: ${sheet.stations[station]}, ${layout.scale} ${scale.name}`,
    parts: [
      {
        marks,
        gridPerMm: perMm,
        from: { x: box.minX, y: box.maxY },
        at: { x: (width - drawn.width) / 2, y: CLEAR },
      },
      furniture([
        ...bars(CLEAR, foot, scale, job.units, layout),
        text(shortened(name, NAME_MM, room), left, foot + 4, { height: NAME_MM, style: 'title' }),
        said(`${sheet.stations[station]}   ${layout.scale} ${scale.name}`, 0),
        said(layout.figuresRule, 1),
        said(layout.sizes, 2),
        said(layout.sketchOnly, 3),
      ]),
    ],
  };
}
