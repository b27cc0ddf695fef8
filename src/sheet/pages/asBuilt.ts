import type { PlanSize } from '../../drawing/dimension/board.ts';
import type { Plan } from '../../drawing/plan.ts';
import type { Point } from '../../geometry/point.ts';
import type { Job } from '../../job/job.ts';
import { cornerLetter } from '../../job/letters.ts';
import { printable } from '../lettering.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { BLANK, type Block, heading, paragraph } from './blocks.ts';
import { tableBlocks } from './tableBlocks.ts';

const NO_BREAK = '\u00a0';

/** Every size of the plan in a table, with a blank beside it for what was measured. */
export function asBuiltBlocks(
  job: Job,
  { sizes, keyed }: Pick<Plan, 'sizes' | 'keyed'>,
  width: number,
  { words }: SheetOptions,
): readonly Block[] {
  if (sizes.length === 0) return [];
  const { layout } = words.sheet;
  const letters = cornerLetters(job);
  const { what, between, drawn } = layout.asBuiltHeads;
  const row = (size: PlanSize) => {
    const key = keyed.find(
      ({ what: kind, from, to, text }) =>
        kind === size.what && from === size.from && to === size.to && text.endsWith(size.text),
    )?.key;
    const called = [key, layout.keyWhat[size.what], size.name].filter((one) => one).join(' ');
    const text = printable(size.text).text.replaceAll(' ', NO_BREAK);
    return [printable(called).text, betweenOf(size, letters), text, BLANK];
  };
  return [
    heading(layout.asBuilt, width),
    ...paragraph(layout.asBuiltIntro, width),
    ...tableBlocks([what, between, drawn, layout.asBuilt], sizes.map(row), width),
  ];
}

/** The letters of the corners that a size lies between, as far as it ends at corners. */
function betweenOf({ from, to }: PlanSize, letters: ReadonlyMap<string, string>): string {
  const [one, other] = [letters.get(placeOf(from)), letters.get(placeOf(to))];
  return [...new Set([one, other])].filter((letter) => letter !== undefined).join('–') || '–';
}

function cornerLetters({ features }: Job): ReadonlyMap<string, string> {
  return new Map(
    features.flatMap(({ kind, shape }) =>
      kind === 'pad' && shape.form === 'outline'
        ? shape.corners.map((corner, i) => [placeOf(corner), cornerLetter(i)] as const)
        : [],
    ),
  );
}

function placeOf({ x, y }: Point): string {
  return `${x} ${y}`;
}
