import type { KeyedSize } from '../../drawing/dimension/board.ts';
import type { Mark } from '../../drawing/marks.ts';
import { pathPoints } from '../../drawing/paths.ts';
import { boxAround, boxOf } from '../../geometry/box.ts';
import { filled, frame, furniture, line, text } from '../furniture.ts';
import type { Rect, SheetPart } from '../page.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import type { ScaledPlan } from './fitPlan.ts';
import { TEXT_MM } from './legend.ts';
import { isOn, type Tile } from './tiles.ts';

/**
 * Whether a mark is shown on a part's page: lines and areas wherever they are seen, words and what stands round them on the
 * part that they belong to alone, so that none is cut and none is there twice.
 */
export function isShownOn(mark: Mark, tile: Tile): boolean {
  switch (mark.kind) {
    case 'text': {
      // Nothing is written across a match line, so that all of a text is where its anchor is, or beside the line.
      const { x, y } = mark.at;
      return isOn(tile, x, y);
    }
    case 'area':
      return (
        mark.material !== 'paper' ||
        isMiddleIn(
          mark.paths.flatMap((path) => pathPoints(path)),
          tile,
        )
      );
    case 'line':
      return (
        !mark.path.closed || !FRAMES.has(mark.style) || isMiddleIn(pathPoints(mark.path), tile)
      );
    case 'symbol':
      return true;
    default:
      return mark satisfies never;
  }
}

/** Lines round letters are drawn in these. */
const FRAMES: ReadonlySet<string> = new Set(['dimension', 'hairline']);

function isMiddleIn(points: readonly { readonly x: number; readonly y: number }[], tile: Tile) {
  const { minX, maxX, minY, maxY } = boxOf(points);
  return isOn(tile, (minX + maxX) / 2, (minY + maxY) / 2);
}

/** Whether a keyed size stands in a part's list: where its letter is, or else the middle of what it measures. */
export function isKeyedOn(
  { key, marked, from, to }: KeyedSize,
  marks: readonly Mark[],
  tile: Tile,
): boolean {
  const letter = marked && marks.find((mark) => mark.kind === 'text' && mark.text === key);
  const at =
    letter && letter.kind === 'text'
      ? letter.at
      : { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  return isOn(tile, at.x, at.y);
}

const DRAWN_MM = { width: 60, height: 27 };
const HEAD_MM = 5;

/** All parts small, this one marked. */
export function keyPlan(
  { frame: { keyPlan: box }, plan, tiles }: ScaledPlan,
  shown: Tile,
  { words }: SheetOptions,
): readonly SheetPart[] {
  if (!box) return [];
  const { layout } = words.sheet;
  const inner = { x: box.x + 3, y: box.y + 2, width: box.width - 6 };
  const whole = boxAround(tiles.map(({ own }) => own));
  const perMm = Math.max(
    (whole.maxX - whole.minX) / Math.min(DRAWN_MM.width, inner.width),
    (whole.maxY - whole.minY) / DRAWN_MM.height,
  );
  const top = inner.y + HEAD_MM;
  const place = ({ minX, minY, maxX, maxY }: Tile['own']): Rect => ({
    x: inner.x + (minX - whole.minX) / perMm,
    y: top + (whole.maxY - maxY) / perMm,
    width: (maxX - minX) / perMm,
    height: (maxY - minY) / perMm,
  });
  const outlines = plan.marks.flatMap((mark): Mark[] =>
    mark.kind === 'line' && mark.style.startsWith('outline')
      ? [{ ...mark, style: 'hairline' }]
      : [],
  );
  const here = place(shown.own);
  return [
    furniture([
      line(box.x, box.y, box.x + box.width, box.y, 'hairline'),
      text(layout.keyPlan, inner.x, inner.y + 3, { height: TEXT_MM, style: 'label' }),
      filled(here, 'old-concrete'),
    ]),
    {
      marks: outlines,
      gridPerMm: perMm,
      from: { x: whole.minX, y: whole.maxY },
      at: { x: inner.x, y: top },
      clip: {
        x: inner.x,
        y: top,
        width: (whole.maxX - whole.minX) / perMm,
        height: (whole.maxY - whole.minY) / perMm,
      },
    },
    furniture([
      ...tiles.map(({ own }) => frame(place(own))),
      frame(here, 'frame'),
      ...tiles.flatMap(({ number, own }) => {
        const { x, y, width, height } = place(own);
        const middle = { x: x + width / 2, y: y + height / 2 + TEXT_MM / 2 };
        return [
          filled(
            { x: middle.x - 2, y: middle.y - TEXT_MM - 0.6, width: 4, height: TEXT_MM + 1.2 },
            'paper',
          ),
          text(`${number}`, middle.x, middle.y, {
            height: TEXT_MM,
            style: 'label',
            anchor: 'middle',
          }),
        ];
      }),
    ]),
  ];
}
