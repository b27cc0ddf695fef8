import { describe, expect, test } from 'vitest';
import { USUAL_TERMS } from '../../../src/drawing/words/terms.ts';
import { termsEs } from '../../../src/drawing/words/termsEs.ts';
import { demoJob } from '../../../src/job/demo.ts';
import { withPrices } from '../../../src/job/prices.ts';
import { pricesCsv, readPrices } from '../../../src/sheet/csv/pricesCsv.ts';
import { readCsv } from '../../../src/sheet/csv/readCsv.ts';
import { en } from '../../../src/sheet/words/en.ts';
import { es } from '../../../src/sheet/words/es.ts';
import { priceItems } from '../../../src/takeoff/price/items.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { reference } from '../../references/references.ts';

const SPOKEN = [en, es(termsEs(USUAL_TERMS))];
const records = (text: string) => {
  const read = readCsv(text);
  return read.ok ? read.records.map(({ fields }) => fields) : read.line;
};

describe(`records (${reference('csv-format').title})`, () => {
  test.each([
    [
      'plain',
      'a,b\r\nc,d\r\n',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'no line end at the end',
      'a,b\r\nc,d',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    ['quotes with commas and lines', '"a,1","b\r\n2"\r\n', [['a,1', 'b\r\n2']]],
    ['a quote in quotes', '"say ""it""",b\r\n', [['say "it"', 'b']]],
    [
      'lines that end like a Unix or an old Mac',
      'a,b\nc,d\re,f',
      [
        ['a', 'b'],
        ['c', 'd'],
        ['e', 'f'],
      ],
    ],
    [
      'a byte order mark, blank lines',
      '\uFEFFa,b\r\n\r\n\r\nc,d',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'semicolons',
      'a;"b;1"\r\nc;1,50\r\n',
      [
        ['a', 'b;1'],
        ['c', '1,50'],
      ],
    ],
    ['tabs', 'a\tb,1\n', [['a', 'b,1']]],
    ['empty fields', 'a,,\n', [['a', '', '']]],
    ['nothing', '', []],
    ['a quote inside a field', 'a 2" nail,b', [['a 2" nail', 'b']]],
  ])('%s', (_, text, expected) => {
    expect(records(text)).toEqual(expected);
  });

  test('a quote that is never closed names its line', () => {
    expect(readCsv('a,b\nc,"d\ne,f')).toEqual({ ok: false, line: 2 });
  });

  test('each record knows the line that it begins on', () => {
    const read = readCsv('a,b\r\n"c\r\nd",e\r\nf,g');
    expect(read.ok && read.records.map(({ line }) => line)).toEqual([1, 2, 4]);
  });
});

describe('prices', () => {
  const job = withPrices(demoJob(), [
    { item: 'bag-regular', price: 649 },
    { item: 'labour-hour', price: 4_500 },
  ]);
  const items = priceItems(job, takeoff(job).order!);
  const read = (text: string) => readPrices(text, items, '$', SPOKEN);

  test('come back as they went out, in either language', () => {
    for (const words of SPOKEN) {
      const back = read(pricesCsv(words, items, job.units));
      const known = items.flatMap(({ item, price }) =>
        price === undefined ? [] : [{ item, price }],
      );
      expect(known.length).toBeGreaterThan(1);
      expect(back).toEqual({ ok: true, prices: known });
    }
  });

  test('columns stand in any order, and others are left alone', () => {
    expect(read('shop,Price,ITEM\nyard,$7.25,bag-regular\n,"6,95",stake')).toEqual({
      ok: true,
      prices: [
        { item: 'bag-regular', price: 725 },
        { item: 'stake', price: 695 },
      ],
    });
  });

  test('an empty price leaves what there is', () => {
    expect(read('Item,Price\nbag-regular,\n')).toEqual({ ok: true, prices: [] });
  });

  test('each wrong line is told, and nothing is taken', () => {
    const text =
      'Item,Price\nbag-regular,7.25\nbag-gold,3\nstake,-4\ntie,0.015\nstake,2\nchair,dear';
    expect(read(text)).toEqual({
      ok: false,
      problems: [
        { is: 'unknown-item', line: 3, item: 'bag-gold' },
        { is: 'price', line: 4, problem: expect.objectContaining({ code: 'money-range' }) },
        { is: 'price', line: 5, problem: expect.objectContaining({ code: 'money-places' }) },
        { is: 'twice', line: 6, item: 'stake' },
        { is: 'price', line: 7, problem: expect.objectContaining({ code: 'money-unreadable' }) },
      ],
    });
  });

  test('a file that names no columns, or is none', () => {
    expect(read('bag-regular,7.25')).toEqual({ ok: false, problems: [{ is: 'heads', line: 1 }] });
    expect(read('')).toEqual({ ok: false, problems: [{ is: 'heads', line: 1 }] });
    expect(read('Item,"Price')).toEqual({ ok: false, problems: [{ is: 'quote', line: 1 }] });
  });
});
