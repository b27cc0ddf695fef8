import { describe, expect, test } from 'vitest';
import { flow, tableBlocks } from '../../../src/sheet/pages/blocks.ts';

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

  test('takes smaller letters only where it has to', () => {
    const heights = (width: number) => new Set(lettering(width).map(({ height }) => height));
    expect([...heights(140)]).toEqual([2.5]);
    const [crowded] = heights(84);
    expect(crowded).toBeLessThan(2.5);
    expect(crowded).toBeGreaterThanOrEqual(1.8);
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
