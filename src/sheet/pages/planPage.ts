import { boundsOf } from '../../drawing/bounds.ts';
import type { KeyedSize } from '../../drawing/dimension/board.ts';
import type { Mark } from '../../drawing/marks.ts';
import { type Plan, planOf } from '../../drawing/plan.ts';
import type { Box } from '../../geometry/box.ts';
import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { furniture, line, text } from '../furniture.ts';
import { printable, shortened } from '../lettering.ts';
import type { Rect, SheetPart } from '../page.ts';
import { type PaperName, paperSize, printArea, type Turn } from '../papers.ts';
import { gridPerMmAt, type Scale, scalesFor } from '../scales.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { BARS_HEIGHT, bars } from './bars.ts';
import { keyedLine } from './keyTable.ts';
import { legendRows, ROW_MM, TEXT_MM } from './legend.ts';
import { TITLE_HEIGHT } from './titleBlock.ts';

/** Where things stand on the layout page. */
export interface PlanFrame {
  readonly turn: Turn;
  /** Whether legend, bars and list stand in three columns under the plan, or in one beside it. */
  readonly lists: 'under' | 'beside';
  readonly area: Rect;
  readonly title: Rect;
  readonly plan: Rect;
  readonly side: Rect;
}

const SIDE_WIDTH = 66;
const LEAST_SIDE_HEIGHT = 36;

/** The ways the page may be divided: upright with the lists under the plan; sideways with them beside or under it. */
export function planFrames(
  paper: PaperName,
  turn: Turn,
  legendHeight: number,
): readonly PlanFrame[] {
  return turn === 'upright'
    ? [planFrame(paper, turn, 'under', legendHeight)]
    : [
        planFrame(paper, turn, 'beside', legendHeight),
        planFrame(paper, turn, 'under', legendHeight),
      ];
}

function planFrame(
  paper: PaperName,
  turn: Turn,
  lists: PlanFrame['lists'],
  legendHeight: number,
): PlanFrame {
  const area = printArea(paperSize(paper, turn));
  const title = { ...area, y: area.y + area.height - TITLE_HEIGHT, height: TITLE_HEIGHT };
  const above = { ...area, height: area.height - TITLE_HEIGHT };
  if (lists === 'beside') {
    const width = above.width - SIDE_WIDTH;
    return {
      turn,
      lists,
      area,
      title,
      plan: { ...above, width },
      side: { ...above, x: above.x + width, width: SIDE_WIDTH },
    };
  }
  const sideHeight = Math.max(LEAST_SIDE_HEIGHT, legendHeight + 4);
  const height = above.height - sideHeight;
  return {
    turn,
    lists,
    area,
    title,
    plan: { ...above, height },
    side: { ...above, y: above.y + height, height: sideHeight },
  };
}

/** A plan at a scale, and where on the ground the middle of its frame lies. */
export interface ScaledPlan {
  readonly frame: PlanFrame;
  readonly scale: Scale;
  readonly plan: Plan;
  readonly centre: { readonly x: number; readonly y: number };
  /** False when not even the smallest scale shows it all. */
  readonly fits: boolean;
}

/** Clear paper between the frame and what is drawn. */
const CLEAR_MM = 4;
/** Room above the plan for the word that no figures are given. */
const WITHHELD_MM = 13;

/**
 * The plan at the largest scale at which all of it that must be read fits into one of the frames, the earlier frame where
 * several do.
 */
export function fitPlan(
  job: Job,
  takeoff: Takeoff,
  frames: readonly PlanFrame[],
  options: SheetOptions,
): ScaledPlan {
  const scales = scalesFor(job.units);
  const wanted = scales.findIndex(({ name }) => name === options.scale);
  for (const scale of wanted < 0 ? scales : scales.slice(wanted)) {
    const fitted = planAt(job, takeoff, frames, scale, options);
    if (fitted) return fitted;
  }
  const scale = scales.at(-1)!;
  const plan = planOf(job, takeoff, planOptions(scale, options));
  const centre = middleOf(neededBox(plan, scale));
  return { frame: frames[0]!, scale, plan, centre, fits: false };
}

function roomFor({ plan }: PlanFrame, { pour }: Takeoff): Rect {
  const top = pour ? 0 : WITHHELD_MM;
  return { ...plan, y: plan.y + top, height: plan.height - top };
}

function planOptions(scale: Scale, { words }: SheetOptions) {
  return {
    station: 'sheet',
    scale: { gridPerMm: gridPerMmAt(scale) },
    words: words.drawing,
    dimensions: true,
  } as const;
}

function planAt(
  job: Job,
  takeoff: Takeoff,
  frames: readonly PlanFrame[],
  scale: Scale,
  options: SheetOptions,
): ScaledPlan | undefined {
  const perMm = gridPerMmAt(scale);
  const thatHold = ({ minX, minY, maxX, maxY }: Box, those: readonly PlanFrame[]) =>
    those.filter((frame) => {
      const room = roomFor(frame, takeoff);
      return (
        (maxX - minX) / perMm <= room.width - 2 * CLEAR_MM &&
        (maxY - minY) / perMm <= room.height - 2 * CLEAR_MM
      );
    });
  // The bare pour first: dimensions cost far more than finding that it is too large without them.
  const bare = planOf(job, takeoff, { ...planOptions(scale, options), dimensions: false });
  const possible = thatHold(neededBox(bare, scale), frames);
  if (possible.length === 0) return undefined;
  const needed = neededBox(planOf(job, takeoff, planOptions(scale, options)), scale);
  const centre = middleOf(needed);
  for (const frame of thatHold(needed, possible)) {
    const room = roomFor(frame, takeoff);
    const [halfWidth, halfHeight] = [(room.width / 2) * perMm, (room.height / 2) * perMm];
    const window = {
      minX: centre.x - halfWidth,
      maxX: centre.x + halfWidth,
      minY: centre.y - halfHeight,
      maxY: centre.y + halfHeight,
    };
    // Again, with the names of what is cut off by the frame put where they are seen.
    const plan = planOf(job, takeoff, { ...planOptions(scale, options), window });
    if (isWithin(neededBox(plan, scale), window)) return { frame, scale, plan, centre, fits: true };
  }
  return undefined;
}

function isWithin(box: Box, window: Box): boolean {
  return (
    box.minX >= window.minX &&
    box.maxX <= window.maxX &&
    box.minY >= window.minY &&
    box.maxY <= window.maxY
  );
}

/** Round all that must be read: the pour, its sizes, faults. What stands round about may be cut off by the frame. */
function neededBox({ marks }: Plan, scale: Scale): Box {
  const grid = { gridPerMm: gridPerMmAt(scale) };
  const needed = marks.filter(
    ({ layer, kind }) =>
      layer === 'pour' || layer === 'dimensions' || (layer === 'notes' && kind !== 'area'),
  );
  const poured = marks.some(({ layer }) => layer === 'pour');
  const nothing = { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  return boundsOf(poured ? needed : marks, grid) ?? nothing;
}

function middleOf({ minX, minY, maxX, maxY }: Box) {
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
}

/** The parts of the layout page but for its title block, and the keyed sizes that found no room in its list. */
export function planParts(
  job: Job,
  takeoff: Takeoff,
  { frame, scale, plan, centre, fits }: ScaledPlan,
  options: SheetOptions,
): {
  readonly parts: readonly SheetPart[];
  readonly left: readonly KeyedSize[];
  readonly lacks: boolean;
} {
  const { layout } = options.words.sheet;
  const room = roomFor(frame, takeoff);
  let lacks = false;
  const marks = plan.marks.map((mark): Mark => {
    if (mark.kind !== 'text') return mark;
    const said = printable(mark.text);
    if (said.lacks) lacks = true;
    return said.text === mark.text ? mark : { ...mark, text: said.text };
  });
  const part: SheetPart = {
    marks,
    gridPerMm: gridPerMmAt(scale),
    from: centre,
    at: { x: room.x + room.width / 2, y: room.y + room.height / 2 },
    clip: room,
  };
  const legend = legendRows(job, takeoff, options.words);
  const side = sideOf(frame, legend.length);
  const { lines, left } = keyLines(job, plan.keyed, side.key, options);
  const withheld = takeoff.pour ? [] : withheldWords(job, frame, options);
  const above = [
    ...(fits ? [] : [layout.notToScale]),
    ...(options.scale &&
    options.scale !== scale.name &&
    scalesFor(job.units).some(({ name }) => name === options.scale)
      ? [layout.noScale(options.scale)]
      : []),
  ];
  return {
    lacks,
    left,
    parts: [
      part,
      furniture([
        ...frameLines(frame),
        ...legend.flatMap((row, i) =>
          row(side.legend.x, side.legend.y + i * ROW_MM + 3.2, side.legend.width),
        ),
        ...bars(side.bars.x, side.bars.y, scale, job.units, layout),
        ...lines,
        ...withheld,
        ...above.map((said, i) =>
          text(
            shortened(said, TEXT_MM, frame.plan.width - 6),
            frame.plan.x + 3,
            frame.plan.y + 5 + i * 4.4,
            {
              height: TEXT_MM,
              style: 'label',
            },
          ),
        ),
      ]),
    ],
  };
}

function withheldWords(job: Job, { plan }: PlanFrame, { words }: SheetOptions): readonly Mark[] {
  const { layout } = words.sheet;
  const empty = job.features.length === 0;
  const width = plan.width - 6;
  const said = (one: string, y: number, height: number) =>
    text(shortened(one, height, width), plan.x + 3, plan.y + y, { height, style: 'label' });
  return [
    said(empty ? layout.nothing : layout.withheld, 6, 3.4),
    said(layout.withheldWhy, 11, TEXT_MM),
  ];
}

interface SideColumns {
  readonly legend: Rect;
  readonly bars: Rect;
  readonly key: Rect;
}

function sideOf({ lists, side }: PlanFrame, legendRowCount: number): SideColumns {
  const inner = { x: side.x + 3, y: side.y + 2.5, width: side.width - 6, height: side.height - 4 };
  const legendHeight = legendRowCount * ROW_MM;
  if (lists === 'beside') {
    const barsTop = inner.y + legendHeight + 3;
    const keyTop = barsTop + BARS_HEIGHT + 2;
    return {
      legend: { ...inner, height: legendHeight },
      bars: { ...inner, y: barsTop, height: BARS_HEIGHT },
      key: { ...inner, y: keyTop, height: inner.y + inner.height - keyTop },
    };
  }
  const legendWidth = 64;
  const barsWidth = 60;
  return {
    legend: { ...inner, width: legendWidth },
    bars: { ...inner, x: inner.x + legendWidth + 2, width: barsWidth },
    key: {
      ...inner,
      x: inner.x + legendWidth + barsWidth + 6,
      width: inner.width - legendWidth - barsWidth - 6,
    },
  };
}

function frameLines({ lists, area, plan, side, title }: PlanFrame): readonly Mark[] {
  const right = area.x + area.width;
  const bottom = title.y;
  return [
    line(area.x, area.y, right, area.y, 'frame'),
    line(area.x, area.y, area.x, bottom, 'frame'),
    line(right, area.y, right, bottom, 'frame'),
    lists === 'beside'
      ? line(side.x, area.y, side.x, bottom, 'hairline')
      : line(area.x, plan.y + plan.height, right, plan.y + plan.height, 'hairline'),
  ];
}

/** As many keyed sizes as the box holds; the rest go on to the lists. */
function keyLines(
  job: Job,
  keyed: readonly KeyedSize[],
  { x, y, width, height }: Rect,
  { words }: SheetOptions,
): { readonly lines: readonly Mark[]; readonly left: readonly KeyedSize[] } {
  if (keyed.length === 0) return { lines: [], left: [] };
  const { layout } = words.sheet;
  const rows = Math.max(0, Math.floor(height / ROW_MM) - 1);
  const shown = keyed.length <= rows ? keyed : keyed.slice(0, Math.max(0, rows - 1));
  const left = keyed.slice(shown.length);
  const said = (one: string, row: number, style: 'label' | 'small' = 'small') =>
    text(shortened(one, TEXT_MM, width), x, y + 3.2 + row * ROW_MM, { height: TEXT_MM, style });
  return {
    left,
    lines: [
      said(layout.key, 0, 'label'),
      ...shown.map((one, i) => said(keyedLine(job, one, layout), i + 1)),
      ...(left.length > 0 ? [said(layout.keyMore(left.length), shown.length + 1)] : []),
    ],
  };
}
