import type { PlacingResult } from '../takeoff/placing/placingResult.ts';
import { stripMark } from '../takeoff/placing/stripMark.ts';
import type { Pass } from '../takeoff/placing/timeline.ts';
import { MILLIMETRE } from '../units/grid.ts';
import type { LineStyle, Mark, Material, TextStyle } from './marks.ts';
import { polyline } from './paths.ts';
import { textWidth } from './textSize.ts';
import type { DrawingWords } from './words/en.ts';

/** The day on a strip of paper, drawn at full size: one mm of it is one mm of output, y down from its upper left corner. */
export interface TimelineDrawing {
  readonly marks: readonly Mark[];
  /** mm. */
  readonly height: number;
}

interface Setting {
  /** Its upper left corner, mm. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly words: DrawingWords['timeline'];
}

const TEXT = 2.5;
const ROW = 6;
const BAR = 4;
/** Left of the bars, for the marks of the strips. */
const MARKS = 11;
/** Over the bars: two lines of words on the day, and the hours. */
const HEAD = 13;
/** More strips than this aren't drawn: the table has them all. */
const MOST_ROWS = 24;
/** Hours are written no nearer than this, mm. */
const APART = 11;
const STEPS = [5, 10, 15, 30, 60, 120, 240, 480, 1_440];

const PASS_MATERIAL: Readonly<Record<Pass, Material>> = {
  float: 'old-concrete',
  edge: 'paper',
  trowel: 'steps',
  broom: 'paper',
};

/**
 * Batches, and for every strip when it is placed, when the bleed water is gone, and every pass over it; with the time at which
 * the first concrete sets and the last is placed.
 */
export function drawTimeline(
  { timeline, clock, trouble }: PlacingResult,
  { x, y, width, words }: Setting,
): TimelineDrawing {
  const marks: Mark[] = [];
  const strips = timeline.strips.slice(0, MOST_ROWS);
  const left = x + MARKS;
  const room = width - MARKS - 2;
  const whole = Math.max(timeline.done, timeline.placed, 1);
  const at = (minutes: number) => left + (room * Math.min(minutes, whole)) / whole;
  const top = y + HEAD;
  const bottom = top + ROW * (strips.length + 1);
  const put = (mark: Mark) => marks.push(mark);

  const step = STEPS.find((one) => (room * one) / whole >= APART) ?? STEPS.at(-1)!;
  for (let minutes = 0; minutes <= whole; minutes += step) {
    put(line(at(minutes), top, at(minutes), bottom, 'hairline'));
    put(text(clockTime(minutes), at(minutes), top - 1, 'middle', 'small'));
  }
  put(text(words.batches, x, top + ROW - 1.8, 'start', 'small'));
  for (const { to } of thinned(timeline.batches, room)) {
    put(line(at(to), top + 1.2, at(to), top + ROW - 1.2, 'outline-block-out'));
  }
  strips.forEach((strip, i) => {
    const low = top + ROW * (i + 1);
    const bar = (from: number, to: number, material: Material, letter: string) => {
      const [a, b] = [at(from), at(to)];
      const rect = { x: a, y: low + (ROW - BAR) / 2, width: Math.max(b - a, 0.4), height: BAR };
      put(box(rect, material));
      put(outline(rect));
      if (textWidth(letter, TEXT) + 0.6 < rect.width) {
        put(text(letter, a + rect.width / 2, low + ROW / 2 + TEXT / 2, 'middle', 'label'));
      }
    };
    put(text(stripMark(i), x, low + ROW / 2 + TEXT / 2, 'start', 'label'));
    put(line(at(strip.to), low + ROW / 2, at(strip.bleedGone), low + ROW / 2, 'hidden'));
    bar(strip.from, strip.to, 'fresh-concrete', words.letters.placed);
    for (const { pass, from, to } of strip.passes) {
      bar(from, to, PASS_MATERIAL[pass], words.letters[pass]);
    }
  });
  put(line(at(timeline.placed), top, at(timeline.placed), bottom, 'outline-free'));
  sayAt(words.lastPlaced(clockTime(timeline.placed)), timeline.placed, y + 6.8);
  if (clock.initial <= whole) {
    const style: LineStyle = trouble.setsFirst ? 'fault' : 'frame';
    put(line(at(clock.initial), top, at(clock.initial), bottom, style));
    sayAt(words.firstSets(clockTime(clock.initial)), clock.initial, y + 2.6);
  }

  /** On the day's own side of its line, where it stays on the paper. */
  function sayAt(said: string, minutes: number, baseline: number): void {
    const wide = textWidth(said, TEXT);
    const start = Math.min(Math.max(at(minutes) - wide / 2, x), x + width - wide);
    put(text(said, start, baseline, 'start', 'label'));
  }

  const legend = [
    `${words.letters.placed} ${words.placed}`,
    `${words.letters.float} ${words.float}`,
    `${words.letters.edge} ${words.edge}`,
    ...(timeline.strips.some(({ passes }) => passes.some(({ pass }) => pass === 'trowel'))
      ? [`${words.letters.trowel} ${words.trowel}`]
      : []),
    `${words.letters.broom} ${words.broom}`,
    `- - ${words.bleeding}`,
    ...(timeline.strips.length > MOST_ROWS ? [words.more(timeline.strips.length - MOST_ROWS)] : []),
  ];
  const rows = wrapped(legend, width);
  rows.forEach((row, i) => {
    put(text(row, x, bottom + 4 + i * 3.8, 'start', 'small'));
  });
  return { marks, height: bottom - y + 4 + rows.length * 3.8 };
}

/** `1:05`, hours and minutes from the first water on. */
function clockTime(minutes: number): string {
  const whole = Math.round(minutes);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

/** Batches so far apart that their strokes don't run together. */
function thinned<T>(batches: readonly T[], room: number): readonly T[] {
  const every = Math.ceil((batches.length * 1.2) / room);
  return batches.filter((_, i) => (i + 1) % every === 0);
}

/** Words of a legend over as many lines as they take. */
function wrapped(words: readonly string[], width: number): readonly string[] {
  const rows: string[] = [];
  for (const word of words) {
    const last = rows.at(-1);
    const longer = last === undefined ? word : `${last} · ${word}`;
    if (last !== undefined && textWidth(longer, TEXT) <= width) rows[rows.length - 1] = longer;
    else rows.push(word);
  }
  return rows;
}

function point(x: number, y: number) {
  return { x: x * MILLIMETRE, y: -y * MILLIMETRE };
}

function line(ax: number, ay: number, bx: number, by: number, style: LineStyle): Mark {
  return { kind: 'line', layer: 'labels', style, path: polyline([point(ax, ay), point(bx, by)]) };
}

interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function rectPath({ x, y, width, height }: Rect) {
  const places = [
    point(x, y),
    point(x + width, y),
    point(x + width, y + height),
    point(x, y + height),
  ];
  return { start: places[0]!, segments: places.slice(1).map((to) => ({ to })), closed: true };
}

function box(rect: Rect, material: Material): Mark {
  return { kind: 'area', layer: 'labels', material, paths: [rectPath(rect)] };
}

function outline(rect: Rect): Mark {
  return { kind: 'line', layer: 'labels', style: 'outline-block-out', path: rectPath(rect) };
}

function text(
  said: string,
  x: number,
  y: number,
  anchor: 'start' | 'middle',
  style: TextStyle,
): Mark {
  return {
    kind: 'text',
    layer: 'labels',
    style,
    text: said,
    at: point(x, y),
    height: TEXT,
    angle: 0,
    anchor,
    halo: true,
  };
}
