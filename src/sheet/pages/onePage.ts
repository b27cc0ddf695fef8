import type { Mark } from '../../drawing/marks.ts';
import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { tickets } from '../../takeoff/tickets.ts';
import { SQUARE_FOOT } from '../../units/grid.ts';
import { furniture, line } from '../furniture.ts';
import { printable } from '../lettering.ts';
import type { Rect, SheetPart } from '../page.ts';
import { TURNS } from '../papers.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { sayQuantity } from '../words/say.ts';
import { type Block, figureRow, flow, heading, highest, paragraph } from './blocks.ts';
import { fitPlan } from './fitPlan.ts';
import { columnsOf, keyedBlocks, LIST_MARGINS, notesBlocks, type Plain } from './jobBlocks.ts';
import type { PadLayout } from './layoutPages.ts';
import { legendRows } from './legend.ts';
import { type PlanFrame, planFrames } from './planFrame.ts';
import { lettersLack, planPages } from './planPage.ts';

/** A pour no larger than this, in one piece, is proposed on one page. Common practice, no source. */
const SMALL = 120 * SQUARE_FOOT;

/** Whether a pad is small enough that one page is proposed for it. */
export function isSmallPad({ pour }: Takeoff): boolean {
  return pour !== undefined && pour.pieces.length === 1 && pour.area <= SMALL;
}

/** The one page, and what ran over from it: never dropped. */
export interface OnePage {
  readonly frame: PlanFrame;
  readonly scaleName: string;
  readonly plan: readonly (readonly SheetPart[])[];
  readonly more: readonly (readonly Mark[])[];
}

/** A column of its lists is at least this wide, mm. */
const COLUMN = 56;
/** Steps in which the room for lists is made larger, mm. */
const STEP = 6;
/** The least that is left for the plan, mm: more where its sizes don't fit, and then more of the lists runs over. */
const LEAST_PLANS = [60, 100, 140];

/** What a small pad needs: the plan, under it the key figures with what to buy, and what to look out for. */
export function onePage(
  job: Job,
  takeoff: Takeoff,
  pads: readonly PadLayout[],
  options: SheetOptions,
): OnePage {
  const legend = legendRows(job, takeoff, options.words);
  const turns = options.turn ? [options.turn] : TURNS;
  const bases = turns.flatMap((turn) =>
    planFrames(options.paper, turn, legend, lettersLack(job)).filter(
      ({ lists }) => lists === 'under',
    ),
  );
  const layouts = pads.filter(({ meant }) => meant).map(({ layout }) => layout);
  const fitted = LEAST_PLANS.map((least) => () => {
    const bands = bases.map((base) => banded(job, takeoff, base, least, options));
    // A turn of the paper on which all lists fit goes before one with a larger plan.
    const fitting = bands.filter(({ lists }) => lists.length === 1);
    const frames = (fitting.length > 0 ? fitting : bands).map(({ frame }) => frame);
    const wishes = { ...options, station: 'sheet', layouts } as const;
    return { bands, scaled: fitPlan(job, takeoff, frames, wishes) };
  });
  const { bands, scaled } = firstThat(fitted, (one) => one.scaled.fits);
  const { pages, left } = planPages(job, takeoff, scaled, legend, options);
  const band = bands.find(({ frame }) => frame.turn === scaled.frame.turn) ?? bands[0]!;
  const { x, y, width } = band.list;
  const [first, ...rest] = band.lists;
  const keyed = keyedBlocks(job, left, columnsOf(band.list, COLUMN)[0]!.width, options);
  return {
    frame: scaled.frame,
    scaleName: scaled.scale.name,
    plan: pages.map((parts, i) =>
      i === 0
        ? [...parts, furniture([line(x, y, x + width, y, 'hairline'), ...(first ?? [])])]
        : parts,
    ),
    more: [
      ...(keyed.length > 0
        ? flow(
            keyed,
            columnsOf(
              { ...band.frame.area, height: band.frame.title.y - band.frame.area.y },
              COLUMN,
            ),
          )
        : []),
      ...rest,
    ],
  };
}

/** The first of several tries that is good; the last one where none is. */
function firstThat<T>(tries: readonly (() => T)[], isGood: (made: T) => boolean): T {
  const [first, ...rest] = tries;
  const made = first!();
  return rest.length === 0 || isGood(made) ? made : firstThat(rest, isGood);
}

/** A frame with as much room for the lists at its foot as they need. */
function banded(
  job: Job,
  takeoff: Takeoff,
  base: PlanFrame,
  leastPlan: number,
  options: SheetOptions,
) {
  const most = base.plan.height - leastPlan;
  const whole: Rect = { ...base.area, height: base.title.y - base.area.y };
  const { width } = columnsOf(base.side, COLUMN)[0]!;
  const blocks = blocksOf(job, takeoff, width, options);
  const least = STEP * Math.ceil((highest(blocks) + LIST_MARGINS) / STEP);
  const others = columnsOf(whole, COLUMN);
  // Where the plan and its legend leave no room, all of the lists run over.
  if (least > most)
    return {
      frame: base,
      list: { ...base.title, height: 0 },
      lists: [[], ...flow(blocks, others)],
    };
  for (let height = least; ; height += STEP) {
    const list: Rect = { ...base.side, y: base.title.y - height, height };
    const columns = columnsOf(list, COLUMN);
    const lists = flow(blocks, columns, others);
    if (lists.length > 1 && height + STEP <= most) continue;
    const frame: PlanFrame = {
      ...base,
      plan: { ...base.plan, height: base.plan.height - height },
      side: { ...base.side, y: base.side.y - height },
    };
    return { frame, list, lists };
  }
}

function blocksOf(
  job: Job,
  takeoff: Takeoff,
  width: number,
  options: SheetOptions,
): readonly Block[] {
  const { sheet } = options.words;
  const { layout } = sheet;
  let lacks = false;
  const plain: Plain = (said) => {
    const done = printable(said);
    if (done.lacks) lacks = true;
    return done.text;
  };
  const figures = tickets(job, takeoff)
    .flatMap((ticket) => ticket.figures)
    .filter(({ key, role }) => role === 'order' || key === 'net-area' || key === 'net-volume')
    // What there is none of isn't bought.
    .filter(({ value }) => value.of !== 'count' || value.count > 0);
  const taken = takeoff.notes.filter(({ weight }) => weight === 'assumption').length;
  const blocks = [
    ...notesBlocks(job, takeoff.notes, 'stop', width, plain, options),
    ...(figures.length > 0 ? [heading(layout.keyFigures, width)] : []),
    ...figures.map(({ key, value }) =>
      figureRow(sheet.figures[key], plain(sayQuantity(sheet, value, job.units)), '', width, true),
    ),
    ...notesBlocks(job, takeoff.notes, 'caution', width, plain, options),
    ...(taken > 0 ? paragraph(layout.moreTaken(taken), width, '•') : []),
  ];
  return lacks ? [...blocks, ...paragraph(layout.lettersMissing, width)] : blocks;
}
