import type { Mark } from '../../drawing/marks.ts';
import { textWidth } from '../../drawing/textSize.ts';
import type { UnitStyle } from '../../job/job.ts';
import { FOOT, METRE } from '../../units/grid.ts';
import { formatLength } from '../../units/length.ts';
import { filled, frame, line, symbol, text } from '../furniture.ts';
import { gridPerMmAt, type Scale } from '../scales.ts';
import { TEXT_MM } from './legend.ts';

/** Two inches, mm: long enough that a print off by one percent shows with a tape. */
const CHECK_MM = 50.8;
export const BARS_HEIGHT = 27;

/** Lengths of one division of the scale bar, in the unit's own steps. */
const FEET = [1 / 12, 0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 200].map((feet) => feet * FOOT);
const METRES = [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50].map((metres) => metres * METRE);
const DIVISIONS = 4;
const LONGEST_MM = 52;
/** The ends of divisions that their length is written at: as many as have room. */
const LETTERED = [
  [0, 1, 2, 4],
  [0, 2, 4],
  [0, 4],
];

/** A bar that shrinks and grows with the drawing when it is copied, and one that tells whether the print is true. */
export function bars(
  x: number,
  y: number,
  scale: Scale,
  units: UnitStyle,
  words: { readonly checkBar: string },
): readonly Mark[] {
  return [...scaleBar(x, y, scale, units), ...checkBar(x, y + 18, words.checkBar)];
}

function scaleBar(x: number, upper: number, scale: Scale, units: UnitStyle): readonly Mark[] {
  const steps = units === 'metric' ? METRES : FEET;
  const perMm = gridPerMmAt(scale);
  const step = steps.findLast((one) => (one * DIVISIONS) / perMm <= LONGEST_MM) ?? steps[0]!;
  const division = step / perMm;
  const top = upper + 5.5;
  const marks: Mark[] = [];
  for (let i = 0; i < DIVISIONS; i++) {
    const box = { x: x + i * division, y: top, width: division, height: 2 };
    marks.push(filled(box, 'paper'), frame(box));
    if (i % 2 === 0) {
      for (const y of [top + 0.65, top + 1.35])
        marks.push(line(box.x, y, box.x + division, y, 'form'));
    }
  }
  const room = (i: number) => textWidth(shortLength(i * step, units), TEXT_MM) + 2;
  const lettered =
    LETTERED.find((those) =>
      those.slice(1).every((i, at) => {
        const before = those[at]!;
        const needed = (room(i) + (before === 0 ? 0 : room(before))) / 2;
        return needed <= (i - before) * division;
      }),
    ) ?? LETTERED.at(-1)!;
  for (const i of lettered) {
    const said = i === 0 ? '0' : shortLength(i * step, units);
    const anchor = i === 0 ? 'start' : 'middle';
    marks.push(text(said, x + i * division, top - 1, { height: TEXT_MM, anchor }));
  }
  return marks;
}

function shortLength(length: number, units: UnitStyle): string {
  if (units === 'metric')
    return length < METRE ? formatLength(length, units) : `${length / METRE} m`;
  return length % FOOT === 0 ? `${length / FOOT}'` : formatLength(length, units);
}

function checkBar(x: number, y: number, words: string): readonly Mark[] {
  return [
    line(x, y, x + CHECK_MM, y, 'frame'),
    line(x, y - 1.8, x, y + 1.8, 'frame'),
    line(x + CHECK_MM, y - 1.8, x + CHECK_MM, y + 1.8, 'frame'),
    text(words, x, y + 5.5, { height: TEXT_MM }),
  ];
}

/** Where north is, as an arrow with its letter beside the bars. */
export function northArrow(x: number, y: number, degrees: number, letter: string): readonly Mark[] {
  const angle = (-degrees * Math.PI) / 180;
  const [middleX, middleY] = [x + 57, y + 14];
  // Page y runs down; the way to north is clockwise from up.
  const tip = { x: middleX + 5.2 * Math.sin(-angle), y: middleY - 5.2 * Math.cos(angle) };
  return [
    symbol('north', middleX, middleY, 6, angle),
    text(letter, tip.x, tip.y + TEXT_MM / 2, { height: TEXT_MM, style: 'label', anchor: 'middle' }),
  ];
}
