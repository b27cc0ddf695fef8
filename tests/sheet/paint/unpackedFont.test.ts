import { describe, expect, test } from 'vitest';
import { unpackedFont } from '../../../src/sheet/paint/unpackedFont.ts';
import { fonts } from '../made.ts';

interface Table {
  readonly tag: string;
  readonly checksum: number;
  readonly content: DataView;
}

function tablesOf(font: Uint8Array): readonly Table[] {
  const view = new DataView(font.buffer, font.byteOffset, font.byteLength);
  return Array.from({ length: view.getUint16(4) }, (_, i) => {
    const at = 12 + 16 * i;
    return {
      tag: String.fromCharCode(...font.subarray(at, at + 4)),
      checksum: view.getUint32(at + 4),
      // Whole words: a table is padded with zeros.
      content: new DataView(
        font.buffer,
        view.getUint32(at + 8),
        Math.ceil(view.getUint32(at + 12) / 4) * 4,
      ),
    };
  });
}

/** The sum of a table's words. Of the head, without the word that the sum of the whole file is kept in (OpenType 1.9). */
function sumOf({ tag, content }: Table): number {
  let sum = 0;
  for (let at = 0; at < content.byteLength; at += 4) {
    if (tag !== 'head' || at !== 8) sum = (sum + content.getUint32(at)) >>> 0;
  }
  return sum;
}

describe.each(['regular', 'bold'] as const)('the %s cut of the typeface', (cut) => {
  const plain = unpackedFont(fonts[cut]);

  test('has every table whole: each adds up to the sum that its maker wrote beside it', () => {
    const tables = tablesOf(plain);
    expect(tables.map(({ tag }) => tag)).toEqual(expect.arrayContaining(['cmap', 'glyf', 'GPOS']));
    for (const table of tables) expect(sumOf(table), table.tag).toBe(table.checksum);
  });

  test('is as long as the packed one says that it was', () => {
    const packed = new DataView(fonts[cut].buffer, fonts[cut].byteOffset);
    expect(plain.length).toBe(packed.getUint32(16));
  });

  test('is left as it is when it isn’t packed', () => {
    expect(unpackedFont(plain)).toBe(plain);
  });
});
