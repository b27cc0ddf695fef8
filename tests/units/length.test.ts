import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EXTENT_LIMIT, FOOT, INCH, METRE, MILLIMETRE, SIXTEENTH } from '../../src/units/grid.ts';
import {
  bareLength,
  formatLength,
  formatLengthDetail,
  parseLength,
  readLength,
} from '../../src/units/length.ts';
import type { LengthStyle } from '../../src/units/writtenLength.ts';

const STYLES: readonly LengthStyle[] = ['feet-inches', 'decimal-feet', 'metric'];
const SEED = { seed: 20, numRuns: 2000 };

function read(typed: string, style: LengthStyle = 'feet-inches') {
  const result = parseLength(typed, style);
  return result.ok ? result.value : result.problems.map(({ code }) => code).join();
}

describe('every way of writing twelve feet four and a half inches', () => {
  test.each([
    `12'-4 1/2"`,
    `12' 4 1/2"`,
    `12'4 1/2"`,
    `12'4-1/2"`,
    `12' 4 1/2`,
    `12'-4.5"`,
    `12' - 4 1/2"`,
    '12’-4½”',
    '12′ 4 ½″',
    "12'4 1/2''",
    '12 ft 4 1/2 in',
    '12ft. 4.5in.',
    '12 feet 4 1/2 inches',
    '12-4.5',
    '12-4 1/2',
    '12-4-1/2',
    '12 4 1/2',
    '12 4.5"',
    `  12'-4  1/2" `,
    '12–4.5',
    '148.5in',
    '148.5"',
    '148 1/2"',
    '148-1/2"',
    '148 1/2 in',
    "12.375'",
    '12.375 ft',
    "12 3/8'",
    '4.125 yd',
    '3.7719 m',
    '377.19cm',
    '3771.9 mm',
    '3 771.9 mm',
    '3,7719 m',
  ])('%s', (typed) => {
    // "3 771.9 mm" parts thousands and has a decimal point as well: not known, and said so.
    const expected = typed === '3 771.9 mm' ? 'length-unreadable' : 12 * FOOT + 4.5 * INCH;
    expect(read(typed)).toBe(expected);
    expect(read(`-${typed}`)).toBe(typeof expected === 'number' ? -expected : expected);
  });
});

describe('numbers without a unit', () => {
  test.each([
    ['12', 'feet-inches', 12 * INCH, 'inches'],
    ['12', 'decimal-feet', 12 * FOOT, 'feet'],
    ['12', 'metric', 12 * MILLIMETRE, 'millimetres'],
    ['3.76', 'metric', 3760 * MILLIMETRE, 'metres'],
    ['3,76', 'metric', 3760 * MILLIMETRE, 'metres'],
    ['3,760', 'metric', 3760 * MILLIMETRE, 'metres'],
    ['3 760', 'metric', 3760 * MILLIMETRE, 'millimetres'],
    ['.5', 'feet-inches', INCH / 2, 'inches'],
    ['4 1/2', 'feet-inches', 4.5 * INCH, 'inches'],
    ['½', 'feet-inches', INCH / 2, 'inches'],
    ['12 4', 'feet-inches', 12 * FOOT + 4 * INCH, 'feet-inches'],
    ['12 4', 'decimal-feet', 12 * FOOT + 4 * INCH, 'feet-inches'],
    ['12-0', 'feet-inches', 12 * FOOT, 'feet-inches'],
  ] as const)('%s in %s', (typed, style, grid, assumed) => {
    expect(readLength(typed, style)).toEqual({ ok: true, value: { grid, exact: true, assumed } });
  });

  test('a typed unit leaves nothing to assume, in any style', () => {
    for (const style of STYLES) {
      expect(readLength('3760 mm', style)).toEqual({
        ok: true,
        value: { grid: 3760 * MILLIMETRE, exact: true },
      });
      expect(read(`1'-0"`, style)).toBe(FOOT);
    }
  });
});

test('a bare number says what it is taken for; a typed unit, or nothing readable, says nothing', () => {
  expect(bareLength('12', 'feet-inches')).toBe('1\'-0"');
  expect(bareLength('12-4.5', 'feet-inches')).toBe('12\'-4 1/2"');
  expect(bareLength('1/64', 'feet-inches')).toBe('1/64"');
  expect(bareLength('12', 'decimal-feet')).toBe('12.00 ft');
  expect(bareLength('3.5', 'metric')).toBe('3500 mm');
  expect(bareLength("12'", 'feet-inches')).toBeNull();
  expect(bareLength('abc', 'feet-inches')).toBeNull();
});

describe('refused', () => {
  test.each([
    ['', 'length-empty'],
    ['   ', 'length-empty'],
    ['-', 'length-unreadable'],
    ['--5', 'length-unreadable'],
    ['twelve', 'length-unreadable'],
    ['NaN', 'length-unreadable'],
    ['Infinity', 'length-unreadable'],
    ['1e3', 'length-unreadable'],
    ['0x10', 'length-unreadable'],
    ['1.2.3', 'length-unreadable'],
    [`4" 12'`, 'length-unreadable'],
    [`12.5' 3"`, 'length-unreadable'],
    ['12 4 1', 'length-unreadable'],
    ['9'.repeat(100), 'length-unreadable'],
    ['1/3"', 'length-fraction'],
    ['5/4"', 'length-fraction'],
    ['1/0"', 'length-fraction'],
    ['4 2/2', 'length-fraction'],
    [`12'-12"`, 'length-inches'],
    ['12-14', 'length-inches'],
    [`0' 12"`, 'length-inches'],
    ['12-1/2', 'length-ambiguous'],
    ['1,234 ft', 'length-comma'],
    ['12,5', 'length-comma'],
    ['2001 m', 'length-absurd'],
    ['7000 ft', 'length-absurd'],
    [`${'9'.repeat(40)} ft`, 'length-absurd'],
  ])('%s', (typed, code) => {
    expect(read(typed)).toBe(code);
  });

  test.each([
    ['3,760 mm', 'metric', 'length-comma'],
    ['3.760,5', 'metric', 'length-comma'],
    ['4 1/2', 'metric', 'length-unit-needed'],
    ['12 4', 'metric', 'length-unit-needed'],
    ['4 1/2', 'decimal-feet', 'length-unit-needed'],
  ] as const)('%s in %s', (typed, style, code) => {
    expect(read(typed, style)).toBe(code);
  });

  test('an unclear one offers both readings, each of which can be typed', () => {
    const result = parseLength('-12-1/2', 'feet-inches');
    expect(result).toEqual({
      ok: false,
      problems: [
        {
          code: 'length-ambiguous',
          where: '-12-1/2',
          facts: { one: '-12 1/2"', other: `-12'-0 1/2"` },
        },
      ],
    });
    expect(read('-12 1/2"')).toBe(-12.5 * INCH);
    expect(read(`-12'-0 1/2"`)).toBe(-12 * FOOT - INCH / 2);
  });
});

describe('rounded to the grid only when it lies between', () => {
  test.each([
    ['12.33 ft', Math.round((1233 * FOOT) / 100), false],
    ['0.001 mm', 0, false],
    ['-0.001 mm', 0, false],
    ['0.0015625 mm', 1, false],
    ['2000 m', 10 * EXTENT_LIMIT, true],
    ['1/64"', 127, true],
  ])('%s', (typed, grid, exact) => {
    const result = readLength(typed, 'metric');
    expect(result).toEqual({ ok: true, value: { grid, exact } });
    expect(result.ok && Object.is(result.value.grid, -0)).toBe(false);
  });
});

describe('written', () => {
  test.each([
    [12 * FOOT + 4.5 * INCH, `12'-4 1/2"`, '12.375 ft', '3772 mm'],
    [12 * FOOT, `12'-0"`, '12.00 ft', '3658 mm'],
    [12 * FOOT + INCH / 2, `12'-0 1/2"`, '12.042 ft', '3670 mm'],
    [INCH / 2, `1/2"`, '0.042 ft', '13 mm'],
    [11.5 * INCH, `11 1/2"`, '0.958 ft', '292 mm'],
    [FOOT, `1'-0"`, '1.00 ft', '305 mm'],
    [0, `0"`, '0.00 ft', '0 mm'],
    [-0, `0"`, '0.00 ft', '0 mm'],
    [-1, `0"`, '0.00 ft', '0 mm'],
    [-12 * FOOT - INCH, `-12'-1"`, '-12.083 ft', '-3683 mm'],
    // 15'-11 31/32" carries to 16'-0" in sixteenths (practice: carry 12 inches to a foot).
    [15 * FOOT + 11 * INCH + 31 * 254, `16'-0"`, '15.997 ft', '4876 mm'],
    [12_345 * MILLIMETRE, `40'-6"`, '40.502 ft', '12.345 m'],
    [200 * METRE, `656'-2"`, '656.168 ft', '200.000 m'],
    // 9999.5 mm and up are ten metres.
    [Math.round(9999.6 * MILLIMETRE), `32'-9 11/16"`, '32.807 ft', '10.000 m'],
  ])('%d', (grid, feetInches, feet, metric) => {
    expect(formatLength(grid, 'feet-inches')).toBe(feetInches);
    expect(formatLength(grid, 'decimal-feet')).toBe(feet);
    expect(formatLength(grid, 'metric')).toBe(metric);
  });

  test('to other fractions, and says when it was rounded', () => {
    const grid = 5 * FOOT + 3 * INCH + 5 * SIXTEENTH;
    expect(formatLengthDetail(grid, 'feet-inches')).toEqual({ text: `5'-3 5/16"`, exact: true });
    expect(formatLengthDetail(grid, 'feet-inches', { fraction: 8 })).toEqual({
      text: `5'-3 3/8"`,
      exact: false,
    });
    expect(formatLength(grid, 'feet-inches', { fraction: 2 })).toBe(`5'-3 1/2"`);
    expect(formatLength(127, 'feet-inches', { fraction: 64 })).toBe(`1/64"`);
    expect(formatLengthDetail(grid, 'metric').exact).toBe(false);
    expect(formatLengthDetail(1.5 * FOOT, 'decimal-feet')).toEqual({
      text: '1.50 ft',
      exact: true,
    });
  });
});

describe('written and read again, it is the same length', { timeout: 60_000 }, () => {
  const toLimit = (unit: number) =>
    fc
      .integer({ min: -EXTENT_LIMIT, max: EXTENT_LIMIT })
      .map((n) => Math.round(n / unit) * unit + 0);

  test('every sixteenth, in feet and inches, read in any style', () => {
    fc.assert(
      fc.property(toLimit(SIXTEENTH), fc.constantFrom(...STYLES), (grid, style) => {
        expect(read(formatLength(grid, 'feet-inches'), style)).toBe(grid);
      }),
      SEED,
    );
  });

  test('the first forty feet, sixteenth by sixteenth', () => {
    for (let grid = 0; grid <= 40 * FOOT; grid += SIXTEENTH) {
      if (read(formatLength(grid, 'feet-inches')) !== grid)
        expect.fail(`${grid} came back changed`);
    }
  });

  test('every sixty-fourth', () => {
    fc.assert(
      fc.property(toLimit(127), (grid) => {
        const { text, exact } = formatLengthDetail(grid, 'feet-inches', { fraction: 64 });
        expect([read(text), exact]).toEqual([grid, true]);
      }),
      SEED,
    );
  });

  test('every millimetre, read in any style', () => {
    fc.assert(
      fc.property(toLimit(MILLIMETRE), fc.constantFrom(...STYLES), (grid, style) => {
        expect(read(formatLength(grid, 'metric'), style)).toBe(grid);
      }),
      SEED,
    );
  });

  test('any length at all, wherever it is said to be exact; else within half of what is shown', () => {
    const halfShown = { 'feet-inches': SIXTEENTH / 2, 'decimal-feet': FOOT / 2000, metric: 160 };
    fc.assert(
      fc.property(toLimit(1), fc.constantFrom(...STYLES), (grid, style) => {
        const { text, exact } = formatLengthDetail(grid, style);
        const back = read(text, style) as number;
        if (exact) expect(back).toBe(grid);
        else expect(Math.abs(back - grid)).toBeLessThanOrEqual(halfShown[style] + 0.5);
        // Thousandths of a foot fall between grid units, so they can come back the same without being exact.
        if (style !== 'decimal-feet') expect(exact).toBe(back === grid);
      }),
      SEED,
    );
  });

  test('nothing typed makes it throw, and what is read is whole and finite', () => {
    const characters = fc.constantFrom(...'0123456789\'".,-/ ftinmc½e+−');
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(characters).map((all) => all.join('')),
        ),
        fc.constantFrom(...STYLES),
        (typed, style) => {
          const result = parseLength(typed, style);
          if (result.ok) expect(Number.isSafeInteger(result.value)).toBe(true);
          else expect(result.problems).toHaveLength(1);
        },
      ),
      { ...SEED, numRuns: 5000 },
    );
  });
});
