import { describe, expect, test } from 'vitest';
import type { Field } from '../../../src/app/practices/field.ts';
import { FIELDS } from '../../../src/app/practices/fields.ts';
import { FORM_GROUPS } from '../../../src/app/practices/formFields.ts';
import { ORDER_GROUPS } from '../../../src/app/practices/orderFields.ts';
import { PLACING_GROUPS } from '../../../src/app/practices/placingFields.ts';
import { type Reading, readingOf, readSign } from '../../../src/app/practices/reading.ts';
import { practicesEn } from '../../../src/app/words/practicesEn.ts';
import { apply } from '../../../src/job/commands.ts';
import { defaultPractices as plainPractices } from '../../../src/job/defaults.ts';
import type { Practices, UnitStyle } from '../../../src/job/job.ts';
import { orderOf } from '../../../src/job/orderDefaults.ts';
import { placingOf, weatherRulesOf } from '../../../src/job/placingDefaults.ts';
import { USUAL_POUR_DAY } from '../../../src/job/pourDay.ts';
import { blankJob } from '../../../src/job/start.ts';
import { INCH, PSI } from '../../../src/units/grid.ts';

/** With those written out that a job leaves out until one of them is changed. */
function defaultPractices(): Practices {
  const plain = plainPractices();
  return {
    ...plain,
    order: orderOf(plain),
    weather: weatherRulesOf(plain),
    placing: placingOf(plain),
  };
}

const UNITS: readonly UnitStyle[] = ['feet-inches', 'decimal-feet', 'metric'];
const FORMS = FORM_GROUPS.flatMap(({ fields }) => fields);
const ORDER = ORDER_GROUPS.flatMap(({ fields }) => fields);
const PLACING = PLACING_GROUPS.flatMap(({ fields }) => fields);
const ALL: readonly (readonly [string, Field])[] = [
  ...FORMS,
  ...ORDER,
  ...PLACING,
  ...Object.values(FIELDS).flat(),
].map((field) => [field.key, field]);

type Typed = Exclude<
  Extract<Field, { readonly get: (practices: Practices) => number }>,
  { readonly kind: 'asked' }
>;
function isTyped(field: Field): field is Typed {
  return !['yes-no', 'board', 'choice', 'sign', 'price', 'asked'].includes(field.kind);
}
const TYPED = ALL.flatMap(([key, field]) => (isTyped(field) ? [[key, field] as const] : []));

function byKey(key: string): Typed {
  const found = TYPED.find(([name]) => name === key);
  if (!found) throw new Error(`There is no field “${key}”.`);
  return found[1];
}

const typed = (
  key: string,
  practices: Practices = defaultPractices(),
  units: UnitStyle = 'feet-inches',
) => readingOf(byKey(key), practices, units);

/** What is read from a text, or why it isn't. */
function read({ parse }: Reading, text: string) {
  const result = parse(text);
  return result.ok ? result.value : result.problems.map(({ code }) => code).join();
}

/** Every number, choice and sign of some practices, by its path. */
function leaves(value: unknown, path = ''): ReadonlyMap<string, unknown> {
  if (typeof value !== 'object' || value === null) return new Map([[path, value]]);
  return new Map(
    Object.entries(value).flatMap(([key, part]) => [
      ...leaves(part, path ? `${path}.${key}` : key),
    ]),
  );
}

describe('every field', () => {
  test.each(TYPED)('%s reads back what it wrote, in every unit', (_, field) => {
    for (const units of UNITS) {
      const practices = defaultPractices();
      const reading = readingOf(field, practices, units);
      const value = field.get(practices);
      const again = read(reading, reading.text);
      // Written in metric or decimal feet, a length of sixteenths is off by a hundredth of an inch at most.
      const slack = field.kind === 'length' ? INCH / 50 : Math.abs(value) * 0.01;
      expect(typeof again).toBe('number');
      expect(Math.abs(Number(again) - value)).toBeLessThanOrEqual(slack);
    }
  });

  test.each(TYPED)('%s changes one practice alone', (_, field) => {
    // Those of the pour's day are kept together, once one of them is set.
    const before = { ...defaultPractices(), pourDay: USUAL_POUR_DAY };
    const after = field.put(before, field.get(before) * 2 + 1);
    const [was, is] = [leaves(before), leaves(after)];
    const changed = [...is].filter(([path, value]) => was.get(path) !== value);
    expect(changed.length).toBe(1);
  });

  test.each(TYPED)('%s takes nothing that the job refuses', (_, field) => {
    if (!('least' in field)) return;
    const of = (bound: number) => (field.kind === 'one-part-of' ? 1 / bound : bound);
    for (const bound of [field.least, field.most]) {
      const practices = field.put(defaultPractices(), of(bound));
      expect(apply(blankJob(), { do: 'set-practices', practices })).toMatchObject({ ok: true });
    }
  });

  test('has a name of its own, so that it can be found', () => {
    for (const fields of [FORMS, ...Object.values(FIELDS)]) {
      const labels = fields.map(({ key }) => practicesEn.fields[key].label);
      expect(new Set(labels).size).toBe(labels.length);
    }
  });
});

test('no practice of the forms is out of reach', () => {
  const before = defaultPractices();
  const { formBoard, gapUnderForm, stakeFromEnd, kickersAbove, utilityTolerance, currency } =
    before;
  const { curve, bending, boards, fastening, stakeSpacings } = before;
  const { thickenedEdge, base, edgeRadius } = before;
  const wanted = leaves({
    ...{ formBoard, gapUnderForm, stakeFromEnd, kickersAbove, utilityTolerance, currency },
    ...{ curve, bending, boards, fastening },
    ...{ thickenedEdge, base, edgeRadius },
    // One spacing is typed for each board, when it is the board in use.
    stakeSpacings: { '2x4': stakeSpacings['2x4'] },
  });
  const reached = FORMS.flatMap((field) => {
    const after = leaves(changedBy(field, before));
    return [...leaves(before)].flatMap(([path, value]) =>
      after.get(path) === value ? [] : [path],
    );
  });
  expect([...reached].sort()).toEqual([...wanted.keys()].sort());
});

function changedBy(field: Field, practices: Practices): Practices {
  switch (field.kind) {
    case 'yes-no':
      return field.put(practices, !field.get(practices));
    case 'board':
      return field.put(practices, '2x12');
    case 'choice':
      return field.put(practices, field.choices.find((one) => one !== field.get(practices)) ?? '');
    case 'sign':
      return field.put(practices, '€');
    case 'price':
    case 'asked':
      return field.put(practices, (field.get(practices) ?? 0) + 100);
    default:
      return field.put(practices, field.get(practices) * 2 + 1);
  }
}

describe('what a board bears', () => {
  test('is written in the units that lumber is sold by', () => {
    expect([typed('elasticity').text, typed('elasticity').unit]).toEqual(['1.2', 'millionPsi']);
    expect([typed('stress').text, typed('stress').unit]).toEqual(['900', 'psi']);
    expect([typed('freshWeight').text, typed('freshWeight').unit]).toEqual([
      '150',
      'poundsPerCubicFoot',
    ]);
  });

  test('and in metric: 1.2 million psi is 8.27 GPa, 900 psi is 6.21 MPa, 150 lb/ft³ is 2402.77 kg/m³', () => {
    const metric = (key: string) => typed(key, defaultPractices(), 'metric');
    expect([metric('elasticity').text, metric('elasticity').unit]).toEqual(['8.27', 'gigapascals']);
    expect([metric('stress').text, metric('stress').unit]).toEqual(['6.21', 'megapascals']);
    expect(metric('freshWeight').text).toBe('2402.77');
  });

  test.each([
    ['1/240', 1 / 240],
    ['L/240', 1 / 240],
    ['240', 1 / 240],
    [' 1 / 240 ', 1 / 240],
    ['50', 'out-of-range'],
    ['0', 'out-of-range'],
    ['-240', 'out-of-range'],
    ['L/', 'number-empty'],
    ['1/a bit', 'number-unreadable'],
  ])('a share of the spacing: “%s”', (text, share) => {
    expect(typed('deflectionShare').text).toBe('1/360');
    expect(read(typed('deflectionShare'), text)).toBe(share);
  });

  test('a stress in the wrong unit is out of bounds', () => {
    expect(read(typed('stress'), '1500')).toBe(1500 * PSI);
    expect(read(typed('stress'), '6205283')).toBe('out-of-range');
  });
});

test('a kerf finer than a sixteenth is written as what it is', () => {
  const { boards, ...rest } = defaultPractices();
  const kerf = (grid: number) => typed('kerf', { ...rest, boards: { ...boards, kerf: grid } }).text;
  expect(kerf((INCH * 3) / 32)).toBe('3/32"');
  expect(kerf((INCH * 5) / 64)).toBe('5/64"');
  expect(kerf(INCH / 8)).toBe('1/8"');
});

test.each([
  ['$', '$'],
  [' kr ', 'kr'],
  ['', ''],
  ['CA$', 'CA$'],
  ['euros', null],
  ['$1', null],
  ['-', null],
  ['a,b', null],
])('a currency’s sign: “%s”', (text, sign) => {
  const result = readSign(text);
  expect(result.ok ? result.value : null).toBe(sign);
});
