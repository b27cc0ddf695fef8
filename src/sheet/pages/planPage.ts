import type { KeyedSize } from '../../drawing/dimension/board.ts';
import type { Mark } from '../../drawing/marks.ts';
import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { formatLength } from '../../units/length.ts';
import { furniture, line, text } from '../furniture.ts';
import { printable, shortened, wrapped } from '../lettering.ts';
import type { Rect, SheetPart } from '../page.ts';
import { gridPerMmAt, type Scale, scalesFor } from '../scales.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { BARS_HEIGHT, bars, northArrow } from './bars.ts';
import type { ScaledPlan } from './fitPlan.ts';
import { isKeyedOn, isShownOn, keyPlan } from './keyPlan.ts';
import { keyedLine } from './keyTable.ts';
import { TEXT_MM } from './legend.ts';
import { type LegendRow, legendColumns, ROW_MM } from './legendRow.ts';
import { NOTICE_LINES, NOTICE_MM, type PlanFrame, roomFor } from './planFrame.ts';
import { OVERLAP_MM, type Tile } from './tiles.ts';

/** What is said of runs and seams without room for their distances: which they are, or that there are many. */
export interface UnmeasuredWords {
  readonly unmeasured: (marks: string) => string;
  readonly manyUnmeasured: string;
}

/** The parts of pages with a plan but for their title blocks, and the keyed sizes that found no room in their lists. */
export interface PlanPages {
  readonly pages: readonly (readonly SheetPart[])[];
  readonly left: readonly KeyedSize[];
}

export function planPages(
  job: Job,
  takeoff: Takeoff,
  scaled: ScaledPlan,
  legend: readonly LegendRow[],
  options: SheetOptions,
  says: UnmeasuredWords = options.words.sheet.layout.forms,
): PlanPages {
  const marks = scaled.plan.marks.map((mark): Mark => {
    if (mark.kind !== 'text') return mark;
    const { text: said } = printable(mark.text);
    return said === mark.text ? mark : { ...mark, text: said };
  });
  const lacks = scaled.plan.marks.some(
    (mark) => mark.kind === 'text' && printable(mark.text).lacks,
  );
  const tiles: readonly (Tile | undefined)[] = scaled.tiles.length > 0 ? scaled.tiles : [undefined];
  const pages = tiles.map((tile) =>
    planPage(
      job,
      takeoff,
      { ...scaled, plan: { ...scaled.plan, marks } },
      tile,
      legend,
      lacks,
      says,
      options,
    ),
  );
  const left = new Set(pages.flatMap((page) => page.left));
  return {
    pages: pages.map(({ parts }) => parts),
    left: scaled.plan.keyed.filter((one) => left.has(one)),
  };
}

function planPage(
  job: Job,
  takeoff: Takeoff,
  scaled: ScaledPlan,
  tile: Tile | undefined,
  legend: readonly LegendRow[],
  lacks: boolean,
  says: UnmeasuredWords,
  options: SheetOptions,
): { readonly parts: readonly SheetPart[]; readonly left: readonly KeyedSize[] } {
  const { frame, scale, plan, centre, fits } = scaled;
  const { layout } = options.words.sheet;
  const north = job.title?.north;
  const room = roomFor(frame, takeoff);
  const part: SheetPart = {
    marks: tile ? plan.marks.filter((mark) => isShownOn(mark, tile)) : plan.marks,
    gridPerMm: gridPerMmAt(scale),
    from: tile?.centre ?? centre,
    at: { x: room.x + room.width / 2, y: room.y + room.height / 2 },
    clip: room,
  };
  const side = sideOf(frame, legend);
  const keyed = tile ? plan.keyed.filter((one) => isKeyedOn(one, plan.marks, tile)) : plan.keyed;
  const { lines, left } = keyLines(job, keyed, side.key, options);
  const withheld = takeoff.pour ? [] : withheldWords(job, frame, options);
  const notices = [
    ...(fits ? [] : [layout.notToScale]),
    ...(tile ? [overlapWords(job, scale, options)] : []),
    ...(isOtherScale(job, scale, options) ? [layout.noScale(options.scale ?? '')] : []),
    ...(scaled.station === 'sheet' && takeoff.pour ? [layout.heightsNotSet] : []),
    ...(lacks || lettersLack(job) ? [layout.lettersMissing] : []),
    ...(plan.unmeasured.length > 0 ? [unmeasuredWords(plan.unmeasured, says)] : []),
  ].flatMap((said) => wrapped(said, TEXT_MM, side.bars.width));
  return {
    left,
    parts: [
      part,
      furniture([
        ...frameLines(frame),
        ...side.legend.flatMap(({ x, y, width, rows }) =>
          rows.flatMap((row, i) => row(x, y + i * ROW_MM + 3.2, width)),
        ),
        ...bars(side.bars.x, side.bars.y, scale, job.units, layout),
        ...(north === undefined ? [] : northArrow(side.bars.x, side.bars.y, north, layout.north)),
        ...lines,
        ...withheld,
        ...notices.slice(0, NOTICE_LINES).map((said, i) =>
          text(said, side.bars.x, side.bars.y + BARS_HEIGHT + 1 + i * NOTICE_MM, {
            height: TEXT_MM,
            style: 'label',
          }),
        ),
      ]),
      ...(tile ? keyPlan(scaled, tile, options) : []),
    ],
  };
}

/** On the page there is room for some; all stand over the stake list. */
const UNMEASURED_MOST = 8;

function unmeasuredWords(marks: readonly string[], says: UnmeasuredWords): string {
  return marks.length > UNMEASURED_MOST ? says.manyUnmeasured : says.unmeasured(marks.join(', '));
}

function overlapWords({ units }: Job, scale: Scale, { words }: SheetOptions): string {
  const ground = formatLength(OVERLAP_MM * gridPerMmAt(scale), units);
  return words.sheet.layout.overlap(`${OVERLAP_MM} mm`, ground);
}

/** Whether a scale that was asked for had to give way. */
function isOtherScale(job: Job, scale: Scale, options: SheetOptions): boolean {
  const isKnown = scalesFor(job.units).some(({ name }) => name === options.scale);
  return isKnown && options.scale !== scale.name;
}

/** Whether a letter of the job's own texts or names can't be printed. */
export function lettersLack({ name, site, features }: Job): boolean {
  return [name, site, ...features.map((feature) => feature.name)].some(
    (said) => printable(said).lacks,
  );
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
  /** Column by column. */
  readonly legend: readonly (Omit<Rect, 'height'> & { readonly rows: readonly LegendRow[] })[];
  readonly bars: Rect;
  readonly key: Rect;
}

const LEGEND_WIDTH = 64;
/** Where it stands in two columns. */
const NARROW_LEGEND = 60;
const BARS_WIDTH = 60;

function sideOf({ lists, side }: PlanFrame, legend: readonly LegendRow[]): SideColumns {
  const inner = { x: side.x + 3, y: side.y + 2.5, width: side.width - 6, height: side.height - 4 };
  const underBars = BARS_HEIGHT + NOTICE_LINES * NOTICE_MM + 2;
  const below = (rect: Rect, from: number): Rect => {
    return { ...rect, y: rect.y + from, height: rect.height - from };
  };
  if (lists === 'beside') {
    const bars = below(inner, legend.length * ROW_MM + 3);
    return {
      legend: [{ ...inner, rows: legend }],
      bars,
      key: below(bars, underBars),
    };
  }
  const columns = legendColumns(legend);
  const each = columns.length > 1 ? NARROW_LEGEND : LEGEND_WIDTH;
  const wide = columns.length * (each + 2);
  const bars = { ...inner, x: inner.x + wide, width: Math.min(BARS_WIDTH, inner.width - wide) };
  const left = inner.width - wide - BARS_WIDTH - 4;
  return {
    legend: columns.map((rows, i) => ({
      ...inner,
      x: inner.x + i * (each + 2),
      width: each,
      rows,
    })),
    bars,
    // No column is left for it beside the bars: then it stands under them.
    key:
      left >= LEAST_KEY
        ? { ...inner, x: inner.x + wide + BARS_WIDTH + 4, width: left }
        : below(bars, underBars),
  };
}
/** Sizes by letter need a column of this width, mm. */
const LEAST_KEY = 44;

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
  const fitting = Math.floor(height / ROW_MM);
  const head = wrapped(layout.key, TEXT_MM, width);
  const word = (count: number) => wrapped(layout.keyMore(count), TEXT_MM, width);
  const row = (one: string, at: number, style: 'label' | 'small' = 'small') =>
    text(shortened(one, TEXT_MM, width), x, y + 3.2 + at * ROW_MM, { height: TEXT_MM, style });
  // A long legend may leave no room but for the word that they are on the next pages, or not even that.
  const rows = fitting - head.length;
  const said = keyed.map((one) => wrapped(keyedLine(job, one, layout), TEXT_MM, width));
  const total = said.reduce((sum, lines) => sum + lines.length, 0);
  if (rows < Math.min(total, word(keyed.length).length)) {
    const lines = word(keyed.length);
    return { lines: lines.length > fitting ? [] : lines.map((one, i) => row(one, i)), left: keyed };
  }
  // Rows are kept for the word that there is more.
  let room = total <= rows ? rows : rows - word(keyed.length).length;
  let count = 0;
  while (count < said.length && said[count]!.length <= room) {
    room -= said[count]!.length;
    count++;
  }
  const left = keyed.slice(count);
  const shown = [...said.slice(0, count).flat(), ...(left.length > 0 ? word(left.length) : [])];
  return {
    left,
    lines: [
      ...head.map((one, i) => row(one, i, 'label')),
      ...shown.slice(0, rows).map((one, i) => row(one, head.length + i)),
    ],
  };
}
