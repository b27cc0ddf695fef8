import { line } from '../furniture.ts';
import { type Block, LIST_MM } from './blocks.ts';
import { tableBlocks } from './tableBlocks.ts';

/** Of a box that is ticked with a pencil, mm. */
const BOX = LIST_MM + 0.7;
const INDENT = BOX + 2;

/** A table each of whose rows has a box to tick in front. */
export function tickRows(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  width: number,
): readonly Block[] {
  const [head, ...body] = tableBlocks(heads, rows, width - INDENT);
  const indented = { ...head!, draw: (x: number, y: number) => head!.draw(x + INDENT, y) };
  return [
    indented,
    ...body.map(
      (block): Block => ({
        ...block,
        under: indented,
        draw: (x, y) => [...box(x, y + 0.6), ...block.draw(x + INDENT, y)],
      }),
    ),
  ];
}

function box(x: number, y: number) {
  const [right, bottom] = [x + BOX, y + BOX];
  return [
    line(x, y, right, y, 'hairline'),
    line(right, y, right, bottom, 'hairline'),
    line(right, bottom, x, bottom, 'hairline'),
    line(x, bottom, x, y, 'hairline'),
  ];
}
