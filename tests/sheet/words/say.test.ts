import { describe, expect, test } from 'vitest';
import { en } from '../../../src/sheet/words/en.ts';
import { filled } from '../../../src/sheet/words/filled.ts';
import { sayNote, sayProblem, sayQuantity, workingLines } from '../../../src/sheet/words/say.ts';
import { CUBIC_FOOT, FOOT, INCH, POUND_KG, SQUARE_FOOT } from '../../../src/units/grid.ts';

describe('quantities', () => {
  test.each([
    [{ of: 'length', grid: 12 * FOOT + 4.5 * INCH }, '12\'-4 1/2"', '3772 mm'],
    [{ of: 'area', grid2: 120 * SQUARE_FOOT }, '120.0 ft²', '11.15 m²'],
    [{ of: 'volume', grid3: 35 * CUBIC_FOOT }, '1.30 yd³', '0.991 m³'],
    [{ of: 'volume', grid3: 35 * CUBIC_FOOT, as: 'bags' }, '35.00 ft³', '0.991 m³'],
    [{ of: 'volume', grid3: 0.375 * CUBIC_FOOT, as: 'one-bag' }, '0.375 ft³', '10.62 L'],
    [{ of: 'weight', kg: 80 * POUND_KG }, '80 lb', '36.29 kg'],
    [{ of: 'weight-by-area', kgPerSquareMetre: 1.02532 }, '21 lb per 100 ft²', '1.03 kg/m²'],
    [{ of: 'count', count: 1, unit: 'bag' }, '1 bag', '1 bag'],
    [{ of: 'count', count: 59, unit: 'bag' }, '59 bags', '59 bags'],
    [{ of: 'count', count: 1.5, unit: 'bag' }, '1.5 bags', '1.5 bags'],
    [{ of: 'count', count: 0, unit: 'batch' }, '0 batches', '0 batches'],
    [{ of: 'time', minutes: 44.6 }, '45 min', '45 min'],
    [{ of: 'time', minutes: 120 }, '2 h', '2 h'],
    [{ of: 'time', minutes: 1445.2 }, '24 h 5 min', '24 h 5 min'],
    [{ of: 'temperature', celsius: 10 }, '50 °F', '10 °C'],
    [{ of: 'wind', kmPerHour: 16.09344 }, '10 mph', '16 km/h'],
    [
      { of: 'evaporation', low: 0.9765, high: 1.2 },
      '0.20 to 0.25 lb/ft²/h',
      '0.98 to 1.20 kg/m²/h',
    ],
    [{ of: 'area-rate', grid2PerHour: 48 * SQUARE_FOOT }, '48 ft²/h', '4.5 m²/h'],
    [{ of: 'volume-rate', grid3PerHour: 14 * CUBIC_FOOT }, '14 ft³/h', '0.4 m³/h'],
    [{ of: 'share', share: 0.1 }, '10%', '10%'],
    [{ of: 'number', number: 90 }, '90', '90'],
    [{ of: 'words', word: 'wall-formed' }, 'Wall, formed', 'Wall, formed'],
    [{ of: 'text', text: 'R1' }, 'R1', 'R1'],
  ] as const)('%o', (quantity, feet, metric) => {
    expect(sayQuantity(en, quantity, 'feet-inches')).toBe(feet);
    expect(sayQuantity(en, quantity, 'metric').replace(/\s/g, ' ')).toBe(metric);
  });

  test('a word that isn’t in the dictionary is our mistake, and says so', () => {
    expect(() => sayQuantity(en, { of: 'count', count: 2, unit: 'yak' }, 'metric')).toThrow('yak');
  });
});

test('a note puts its facts in', () => {
  const note = {
    code: 'heavy-bags',
    weight: 'caution',
    station: 'mix',
    facts: {
      weight: { of: 'weight', kg: 80 * POUND_KG },
      limit: { of: 'weight', kg: 51 * POUND_KG },
    },
  } as const;
  expect(sayNote(en, note, 'feet-inches')).toMatch(/^One bag weighs 80 lb. More than 51 lb /);
});

describe('problems', () => {
  test('of what was typed quote it', () => {
    expect(sayProblem(en, { code: 'length-unreadable', where: '12 yaks' })).toMatch(
      /^“12 yaks” isn’t/,
    );
  });
  test('of a file say where', () => {
    const problem = {
      code: 'field-range',
      where: 'job.practices.thickness',
      facts: { seen: '0', least: 1 },
    };
    expect(sayProblem(en, problem)).toBe(
      'job.practices.thickness: 0 is out of bounds. At least 1.',
    );
    expect(sayProblem(en, { ...problem, facts: { seen: '9', most: 5 } })).toContain('At most 5.');
    const type = { code: 'field-type', where: 'job.name', facts: { seen: '3', expected: 'text' } };
    expect(sayProblem(en, type)).toBe('job.name: This should be text, but the file has 3.');
    const shape = { code: 'too-few-corners', where: 'job.features[0].shape', facts: { least: 3 } };
    expect(sayProblem(en, shape)).toMatch(/^job.features\[0\].shape: A closed shape/);
  });
  test('of a command don’t show ids', () => {
    expect(sayProblem(en, { code: 'edge-turns-over', where: 'f7' })).not.toContain('f7');
  });
  test('that nobody knows say their code', () => {
    expect(sayProblem(en, { code: 'odd' })).toContain('odd');
  });
});

test('a working is written line by line', () => {
  const lines = workingLines(
    en,
    {
      of: 'stakes',
      formula: 'n = ⌈l ÷ s⌉',
      inputs: [{ key: 'stake-spacing', value: { of: 'length', grid: 3 * FOOT }, from: 'practice' }],
      rounding: 'up-each',
      source: ['geometry', 'user'],
      steps: [
        {
          label: 'R1',
          value: { of: 'count', count: 4, unit: 'stake' },
          template: '⌈{0} ÷ {1}⌉',
          values: [
            { of: 'length', grid: 10 * FOOT },
            { of: 'length', grid: 3 * FOOT },
          ],
        },
      ],
    },
    'feet-inches',
  );
  expect(lines.slice(1)).toEqual([
    'Stake spacing by practice, at most: 3\'-0" (your practices)',
    'R1: ⌈10\'-0" ÷ 3\'-0"⌉ = 4 stakes',
    'Rounding: Each one rounded up, then added',
    'Source: Geometry; Your own setting',
  ]);
});

test('a place without a fact stays to be seen', () => {
  expect(filled('{a} and {b}', { a: 'one' })).toBe('one and {b}');
});

test('a place inside a file is named when it is a file; on the screen the field says it itself', () => {
  const problem = { code: 'field-no-such-mix', facts: { mix: 'slow' } } as const;
  expect(sayProblem(en, { ...problem, where: 'job.practices.mix.blend.main' })).toMatch(
    /^job\.practices\.mix\.blend\.main: The blend names/,
  );
  expect(sayProblem(en, { ...problem, where: 'mix.blend.main' })).toMatch(/^The blend names/);
});
