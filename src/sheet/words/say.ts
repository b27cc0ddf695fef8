import type { Note, Quantity, Working } from '../../takeoff/figure.ts';
import {
  formatAngle,
  formatArea,
  formatNumber,
  formatShare,
  formatVolume,
  formatWater,
  formatWeight,
} from '../../units/format.ts';
import {
  CUBIC_FOOT,
  FLUID_OUNCE,
  MILLILITRE,
  POUND_KG,
  SQUARE_FOOT,
  SQUARE_METRE,
} from '../../units/grid.ts';
import { formatLength } from '../../units/length.ts';
import { formatMoney } from '../../units/money.ts';
import type { Problem } from '../../units/result.ts';
import type { LengthStyle } from '../../units/writtenLength.ts';
import { filled } from './filled.ts';
import { sayMeasure, sayTime } from './sayMeasure.ts';
import type { Words } from './words.ts';

type Facts = Readonly<Record<string, string>>;

/** A quantity as it is read, with its unit. */
export function sayQuantity(words: Words, quantity: Quantity, style: LengthStyle): string {
  switch (quantity.of) {
    case 'length':
      return formatLength(
        Math.round(quantity.grid),
        style,
        quantity.to ? { fraction: quantity.to } : {},
      );
    case 'angle':
      return formatAngle(quantity.degrees);
    case 'area':
      return formatArea(quantity.grid2, style);
    case 'volume':
      return sayVolume(words, quantity, style);
    case 'weight':
      return formatWeight(quantity.kg, style);
    case 'weight-by-area': {
      const metric = style === 'metric';
      const perHundredFeet =
        ((quantity.kgPerSquareMetre / POUND_KG) * 100 * SQUARE_FOOT) / SQUARE_METRE;
      const number = formatNumber(metric ? quantity.kgPerSquareMetre : perHundredFeet);
      return filled(words.weightByArea[metric ? 'metric' : 'other'], { number });
    }
    case 'area-by-length': {
      const metric = style === 'metric';
      const { mm2PerMetre } = quantity;
      const number = metric
        ? formatNumber(mm2PerMetre, 1)
        : formatNumber(mm2PerMetre / SQUARE_INCH_PER_FOOT, 3);
      return filled(words.areaByLength[metric ? 'metric' : 'other'], { number });
    }
    case 'density':
      return sayLoad(words, 'density', quantity.kgPerCubicMetre, POUND_PER_CUBIC_FOOT, style);
    case 'pressure':
      return sayPressure(words, quantity, style);
    case 'line-load':
      return sayLoad(words, 'lineLoad', quantity.newtonsPerMetre, POUND_FORCE / 0.3048, style);
    case 'time':
      return sayTime(words, quantity.minutes);
    case 'temperature':
    case 'wind':
    case 'evaporation':
    case 'area-rate':
    case 'volume-rate':
      return sayMeasure(words, quantity, style);
    case 'count': {
      const unit = lookUp(words.counts, quantity.unit);
      const number = formatNumber(quantity.count);
      return `${number} ${words.isOne(quantity.count) ? unit.one : unit.many}`;
    }
    case 'half-bags': {
      const whole = Math.floor(quantity.bags);
      if (whole === quantity.bags) return formatNumber(whole);
      return whole === 0 ? '1/2' : `${formatNumber(whole)} 1/2`;
    }
    case 'money':
      return formatMoney(quantity.cents, quantity.currency);
    case 'share':
      return formatShare(quantity.share);
    case 'number':
      return formatNumber(quantity.number);
    case 'words':
      return lookUp(words.terms, quantity.word);
    case 'text':
      return quantity.text;
    case 'list':
      return quantity.items.map((item) => sayQuantity(words, item, style)).join(', ');
  }
}

/** One square inch of steel in a foot's width, in mm² to the metre. */
const SQUARE_INCH_PER_FOOT = 25.4 ** 2 / 0.3048;
/** Newtons. */
const POUND_FORCE = POUND_KG * 9.80665;
const PSI = POUND_FORCE / 0.0254 ** 2;
const POUND_PER_CUBIC_FOOT = POUND_KG / 0.3048 ** 3;

function sayPressure(
  words: Words,
  { pascals, as }: Extract<Quantity, { of: 'pressure' }>,
  style: LengthStyle,
): string {
  switch (as) {
    case 'wood':
      return sayLoad(words, 'stress', pascals, PSI, style, 1e6);
    case 'steel':
      return sayLoad(words, 'steel', pascals, 1_000 * PSI, style, 1e6);
    default:
      return sayLoad(words, 'pressure', pascals, POUND_FORCE / 0.3048 ** 2, style, 1e3);
  }
}

/** @param unit What one of the unit by feet and pounds is in SI; `metric` likewise. */
function sayLoad(
  words: Words,
  of: keyof Words['loads'],
  amount: number,
  unit: number,
  style: LengthStyle,
  metric = 1,
): string {
  const isMetric = style === 'metric';
  const number = formatNumber(isMetric ? amount / metric : amount / unit, 1);
  return filled(words.loads[of][isMetric ? 'metric' : 'other'], { number });
}

function sayVolume(
  words: Words,
  { grid3, as }: Extract<Quantity, { readonly of: 'volume' }>,
  style: LengthStyle,
): string {
  if (as === undefined) return formatVolume(grid3, style);
  if (as === 'water') return formatWater(grid3, style);
  if (as === 'tube') {
    const metric = style === 'metric';
    const number = formatNumber(grid3 / (metric ? MILLILITRE : FLUID_OUNCE), 1);
    return filled(words.tube[metric ? 'metric' : 'other'], { number });
  }
  if (style === 'metric') {
    return formatVolume(grid3, style, as === 'one-bag' ? 'litre' : 'cubic-metre');
  }
  // Yields are printed to a thousandth of a cubic foot: 0.375.
  const yieldText = `${formatNumber(grid3 / CUBIC_FOOT, 4)} ft³`;
  return as === 'one-bag' ? yieldText : formatVolume(grid3, style, 'cubic-foot');
}

/** What a note says, with its facts put in. */
export function sayNote(words: Words, note: Note, style: LengthStyle): string {
  const facts = Object.entries(note.facts ?? {}).map(([key, value]) => [
    key,
    sayQuantity(words, value, style),
  ]);
  return filled(lookUp(words.notes, note.code), Object.fromEntries(facts));
}

/** What a problem says: with its place in front when it is about a field of a file. */
export function sayProblem(words: Words, problem: Problem): string {
  const { code, where } = problem;
  const sentence: string | undefined = Reflect.get(words.problems, code);
  if (sentence === undefined) return filled(words.unknownProblem, { code });
  const says = filled(sentence, factsOf(words, problem));
  const inFile = where !== undefined && /^job\b/.test(where);
  return inFile ? filled(words.inPlace, { where, says }) : says;
}

function factsOf(words: Words, { where = '', facts = {} }: Problem): Facts {
  const said: Record<string, string> = { where };
  for (const [key, fact] of Object.entries(facts)) {
    said[key] = typeof fact === 'number' ? formatNumber(fact, 4) : fact;
  }
  const expected = said['expected'];
  if (expected !== undefined) said['expected'] = words.expected[expected] ?? expected;
  said['bound'] = filled('least' in facts ? words.bounds.least : words.bounds.most, said);
  return said;
}

/** A working in words, part by part. */
export interface SaidWorking {
  /** In symbols, the same in every language. */
  readonly symbols: string;
  readonly formula: string;
  readonly inputs: readonly {
    readonly name: string;
    readonly value: string;
    readonly from: string;
  }[];
  /** `how` is empty where a step is a plain value. */
  readonly steps: readonly {
    readonly label: string;
    readonly how: string;
    readonly value: string;
  }[];
  readonly rounding: string;
  readonly sources: readonly string[];
}

export function sayWorking(words: Words, working: Working, style: LengthStyle): SaidWorking {
  const say = (quantity: Quantity) => sayQuantity(words, quantity, style);
  return {
    symbols: working.formula,
    formula: words.formulas[working.of],
    inputs: working.inputs.map(({ key, value, from }) => ({
      name: key in words.inputs ? lookUp(words.inputs, key) : lookUp(words.figures, key),
      value: say(value),
      from: words.from[from],
    })),
    steps: (working.steps ?? []).map(({ label, value, template = '', values = [] }) => ({
      label,
      how: filled(template, Object.fromEntries(values.map((each, i) => [`${i}`, say(each)]))),
      value: say(value),
    })),
    rounding: words.rounding[working.rounding],
    sources: working.source.map((id) => lookUp(words.sources, id)),
  };
}

/** A working as lines of plain text. */
export function workingLines(
  words: Words,
  working: Working,
  style: LengthStyle,
): readonly string[] {
  const said = sayWorking(words, working, style);
  return [
    `${said.symbols}   ${said.formula}`,
    ...said.inputs.map(({ name, value, from }) => `${name}: ${value} (${from})`),
    ...said.steps.map(({ label, how, value }) =>
      how === '' ? `${label}: ${value}` : `${label}: ${how} = ${value}`,
    ),
    `${words.working.rounding}: ${said.rounding}`,
    `${words.working.source}: ${said.sources.join('; ')}`,
  ];
}

/** The entry of a dictionary. Every key that the takeoff can give has one (a test says so), so a lack is our mistake. */
function lookUp<T>(dictionary: Readonly<Record<string, T>>, key: string): T {
  const entry = dictionary[key];
  if (entry === undefined) throw new Error(`The dictionary has no entry “${key}”.`);
  return entry;
}
