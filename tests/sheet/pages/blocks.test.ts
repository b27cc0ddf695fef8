import { describe, expect, test } from 'vitest';
import { textWidth } from '../../../src/drawing/textSize.ts';
import { flow } from '../../../src/sheet/pages/blocks.ts';
import { tableBlocks } from '../../../src/sheet/pages/tableBlocks.ts';
import { MILLIMETRE } from '../../../src/units/grid.ts';

const HEADS = ['Mark', 'Along', 'Shape', 'Length', 'Stakes', 'Apart'];
const ROW = ['R7', 'Wall, formed', 'straight', '16\'-11\u00a011/16"', '12', '1\'-11\u00a011/16"'];

function lettering(width: number) {
  return tableBlocks(HEADS, [ROW], width).flatMap((block) =>
    block.draw(0, 0).flatMap((mark) => (mark.kind === 'text' ? [mark] : [])),
  );
}

describe('a table of form runs in a column of the page', () => {
  test('breaks lines between words, never inside one', () => {
    for (const width of [84, 90, 120]) {
      const words = lettering(width).flatMap(({ text }) => text.split(' '));
      const asked = [...HEADS, ...ROW].flatMap((said) => said.split(' '));
      expect([...words].sort()).toEqual([...asked].sort());
    }
  });

  test('keeps its letters; where words don’t fit beside each other, its rows stand on two lines', () => {
    const standing = (width: number) => {
      const [, row] = tableBlocks(HEADS, [ROW], width);
      const marks = row!.draw(0, 0).filter((mark) => mark.kind === 'text');
      expect(new Set(marks.map(({ height }) => height))).toEqual(new Set([2.5]));
      const places = marks.filter(({ text }) => text !== 'formed');
      return new Set(places.map(({ at }) => at.y)).size;
    };
    expect(standing(140)).toBe(1);
    expect(standing(84)).toBe(2);
  });

  test('a name without an end is broken, and stays in its column', () => {
    const long = 'Averylongwordwithoutanyspaceinit'.repeat(4);
    const blocks = tableBlocks(HEADS, [[long, long, ...ROW.slice(2)]], 84);
    const ends = blocks.flatMap((block) =>
      block.draw(0, 0).flatMap((mark) => {
        if (mark.kind !== 'text') return [];
        return [mark.at.x / MILLIMETRE + textWidth(mark.text, mark.height)];
      }),
    );
    expect(Math.max(...ends)).toBeLessThan(84.1);
  });
});

test('a table that goes on in another column has its head again', () => {
  const rows = Array.from({ length: 30 }, (_, i) => [`R${i + 1}`, '8']);
  const columns = [
    { x: 0, y: 0, width: 80, height: 61 },
    { x: 90, y: 0, width: 80, height: 61 },
  ];
  const pages = flow(tableBlocks(['Mark', 'Stakes'], rows, 80), columns);
  const said = pages.flat().flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
  // A row is 5 mm deep, so a column holds a head and eleven rows: 11 + 11 + 8.
  expect(said.filter((one) => one === 'Mark')).toHaveLength(3);
  expect(said.filter((one) => /^R\d+$/.test(one))).toHaveLength(30);
});
