import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { csvText } from '../../../src/sheet/csv/csvText.ts';
import { chance } from '../../random/chance.ts';
import { reference } from '../../references/references.ts';

/** What an independent reader of RFC 4180 makes of it. */
function read(text: string): readonly (readonly string[])[] {
  return parse(text, { bom: true, record_delimiter: '\r\n' });
}

describe('the format', () => {
  test('a byte order mark, CRLF behind every record, quotes doubled', () => {
    expect(reference('csv-format').says).toContain('CRLF');
    expect(
      csvText([
        ['a', 'b'],
        ['1/2"', 'x,y'],
        ['two\nlines', -3.5],
      ]),
    ).toBe('\uFEFFa,b\r\n"1/2""","x,y"\r\n"two\nlines",-3.5\r\n');
  });

  test('an independent reader gets back any texts', () => {
    const { whole, oneOf } = chance(8);
    const signs = ['a', 'é', '"', ',', '\r', '\n', ' ', ';', '🧱', '漢', '’', '\t', '0'];
    for (let round = 0; round < 200; round++) {
      const width = whole(1, 5);
      const rows = Array.from({ length: whole(1, 6) }, () =>
        // A letter in front, so that none is taken for a formula or an empty line.
        Array.from(
          { length: width },
          () => `x${Array.from({ length: whole(0, 8) }, () => oneOf(signs)).join('')}`,
        ),
      );
      expect(read(csvText(rows))).toEqual(rows);
    }
  });

  test('numbers have a point, no exponent, no thousands mark and no noise', () => {
    expect(read(csvText([[0.1 + 0.2, 1e-9, -0, 12345678.5, -1e-9, 1e20, 100]]))).toEqual([
      ['0.3', '0', '0', '12345678.5', '0', '100000000000000000000', '100'],
    ]);
  });
});

describe('formulas', () => {
  test.each([
    '=1+1',
    '+1',
    '-1',
    '-2"',
    '@SUM(A1)',
    '=HYPERLINK("http://x","y")',
    ' =1',
    '\t=1',
    '\r=1',
    '\tx',
    '\u200b=1',
    '＝1',
    '－1',
  ])('%j stays a text', (text) => {
    expect(reference('csv-formulas').says).toContain('apostrophe');
    expect(read(csvText([['head'], [text]]))[1]).toEqual([`'${text}`]);
  });

  test.each(['1-2', 'a=b', 'x', '', '–', "'", '4\'-2 1/4"', '−1'])('%j is left alone', (text) => {
    expect(
      read(
        csvText([
          ['head', 'more'],
          [text, 'x'],
        ]),
      )[1],
    ).toEqual([text, 'x']);
  });

  test('a negative number stays a number', () => {
    expect(csvText([[-12.5]])).toBe('\uFEFF-12.5\r\n');
  });
});
