import type { Practices } from '../../job/job.ts';
import type { PlacingPractices, WeatherPractices } from '../../job/placing.ts';
import { placingOf, weatherRulesOf } from '../../job/placingDefaults.ts';
import {
  CUBIC_FOOT,
  CUBIC_METRE,
  FOOT,
  type Grid,
  METRE,
  POUND_KG,
  SQUARE_FOOT,
  SQUARE_METRE,
} from '../../units/grid.ts';
import type { Field, FieldGroup, FieldKey, MeasuredIn, NoteKey } from './field.ts';

/** Practices whose values are of a kind. */
type KeysOf<P, T> = { [K in keyof P]: P[K] extends T ? K : never }[keyof P] & string;
type NumberKey = KeysOf<PlacingPractices, number>;

const MINUTES: MeasuredIn = { metric: ['minutes', 1], other: ['minutes', 1] };
const HOURS: MeasuredIn = { metric: ['hours', 1], other: ['hours', 1] };
const AREA_RATE: MeasuredIn = {
  metric: ['squareMetresAnHour', SQUARE_METRE],
  other: ['squareFeetAnHour', SQUARE_FOOT],
};
const VOLUME_RATE: MeasuredIn = {
  metric: ['cubicMetresAnHour', CUBIC_METRE],
  other: ['cubicFeetAnHour', CUBIC_FOOT],
};
const DRYING: MeasuredIn = {
  metric: ['kgPerSquareMetreHour', 1],
  other: ['poundsPerSquareFootHour', (POUND_KG * SQUARE_METRE) / SQUARE_FOOT],
};

function put(practices: Practices, change: Partial<PlacingPractices>): Practices {
  return { ...practices, placing: { ...placingOf(practices), ...change } };
}

interface Bounds {
  readonly least: number;
  readonly most: number;
  readonly note?: NoteKey;
}

function kept(part: NumberKey) {
  return {
    get: (practices: Practices) => placingOf(practices)[part],
    put: (practices: Practices, value: number) => put(practices, { [part]: value }),
  };
}

function count(key: FieldKey, part: NumberKey, bounds: Bounds): Field {
  return { kind: 'count', key, ...bounds, ...kept(part) };
}

function measured(key: FieldKey, part: NumberKey, unit: MeasuredIn, bounds: Bounds): Field {
  return { kind: 'measured', key, unit, ...bounds, ...kept(part) };
}

function size(key: FieldKey, part: NumberKey, least: Grid, most: Grid, note?: NoteKey): Field {
  return { kind: 'length', key, least, most, ...(note ? { note } : {}), ...kept(part) };
}

function share(key: FieldKey, part: NumberKey, note?: NoteKey): Field {
  return { kind: 'share', key, least: 0, most: 1, ...(note ? { note } : {}), ...kept(part) };
}

function areaRate(key: FieldKey, part: NumberKey): Field {
  return measured(key, part, AREA_RATE, { least: SQUARE_FOOT, most: 9_000 * SQUARE_METRE });
}

type Barrow = PlacingPractices['barrow'];

function barrow(part: keyof Barrow) {
  return {
    get: (practices: Practices) => placingOf(practices).barrow[part],
    put: (practices: Practices, value: number) =>
      put(practices, { barrow: { ...placingOf(practices).barrow, [part]: value } }),
  };
}

function rule(part: keyof WeatherPractices) {
  return {
    get: (practices: Practices) => weatherRulesOf(practices)[part],
    put: (practices: Practices, value: number) => ({
      ...practices,
      weather: { ...weatherRulesOf(practices), [part]: value },
    }),
  };
}

const DAY_MINUTES = { least: 0.5, most: 24 * 60 };

/** The crew, its tools and rates, and what the weather asks for: folded away by what they are about. */
export const PLACING_GROUPS: readonly FieldGroup[] = [
  {
    key: 'crew',
    fields: [
      count('crew', 'crew', { least: 1, most: 50 }),
      count('mixers', 'mixers', { least: 1, most: 20 }),
      measured('cycle', 'cycle', MINUTES, { ...DAY_MINUTES, note: 'cycle' }),
      { kind: 'volume', key: 'barrowLoad', note: 'barrowLoad', ...barrow('load') },
      { kind: 'length', key: 'haul', least: 0, most: 190 * METRE, ...barrow('distance') },
      { kind: 'length', key: 'walking', least: FOOT, most: 190 * METRE, ...barrow('speed') },
      {
        kind: 'measured',
        key: 'barrowTripLost',
        unit: MINUTES,
        least: 0,
        most: 60,
        ...barrow('lost'),
      },
      measured('placeRate', 'placeRate', VOLUME_RATE, {
        least: CUBIC_FOOT,
        most: 99 * CUBIC_METRE,
        note: 'rates',
      }),
      areaRate('strikeRate', 'strikeRate'),
    ],
  },
  {
    key: 'screed',
    fields: [
      size('board', 'board', FOOT, 20 * METRE, 'screedBoard'),
      size('boardBearing', 'boardBearing', 0, 2 * METRE),
      {
        kind: 'choice',
        key: 'pulledBy',
        choices: ['two', 'one'],
        get: (practices) => placingOf(practices).pulledBy,
        put: (practices, value) => put(practices, { pulledBy: value === 'one' ? 'one' : 'two' }),
      },
      {
        ...size('soloMost', 'soloMost', FOOT, 20 * METRE),
        shown: (practices) => placingOf(practices).pulledBy === 'one',
      },
      {
        kind: 'choice',
        key: 'stripsRun',
        choices: ['strips-proposed', 'strips-across', 'strips-along'],
        note: 'stripsRun',
        get: (practices) => `strips-${placingOf(practices).strips}`,
        put: (practices, value) => put(practices, { strips: STRIPS[value] ?? 'proposed' }),
      },
      size('handReach', 'handReach', 0, 20 * METRE),
      size('poleReach', 'poleReach', 0, 50 * METRE),
    ],
  },
  {
    key: 'finishing',
    fields: [
      areaRate('floatRate', 'floatRate'),
      size('edgeRate', 'edgeRate', FOOT, 10_000 * METRE),
      {
        kind: 'yes-no',
        key: 'trowel',
        get: (practices) => placingOf(practices).trowel,
        put: (practices, trowel) => put(practices, { trowel }),
      },
      {
        ...areaRate('trowelRate', 'trowelRate'),
        shown: (practices) => placingOf(practices).trowel,
      },
      areaRate('broomRate', 'broomRate'),
      share('bleedShare', 'bleedShare', 'stages'),
      share('floatShare', 'floatShare'),
      {
        ...share('trowelShare', 'trowelShare'),
        shown: (practices) => placingOf(practices).trowel,
      },
      measured('edgeWindow', 'edgeWindow', MINUTES, { ...DAY_MINUTES, note: 'edgeWindow' }),
      measured('stripHours', 'stripHours', HOURS, { least: 0.5, most: 720, note: 'stripHours' }),
    ],
  },
  {
    key: 'weatherRules',
    fields: [
      {
        kind: 'measured',
        key: 'evaporationMost',
        unit: DRYING,
        least: 0.01,
        most: 10,
        note: 'evaporation',
        ...rule('evaporationMost'),
      },
      {
        kind: 'measured',
        key: 'evaporationLowBleed',
        unit: DRYING,
        least: 0.01,
        most: 10,
        ...rule('evaporationLowBleed'),
      },
      { kind: 'temperature', key: 'coldBelow', least: -40, most: 60, ...rule('coldBelow') },
      { kind: 'temperature', key: 'hotFrom', least: -40, most: 60, ...rule('hotFrom') },
      { kind: 'share', key: 'setShift', least: 0, most: 2, note: 'setShift', ...rule('setShift') },
      { kind: 'temperature', key: 'coolWater', least: 0, most: 60, ...kept('coolWater') },
      share('waterShare', 'waterShare', 'waterShare'),
    ],
  },
];

const STRIPS: Readonly<Record<string, PlacingPractices['strips']>> = {
  'strips-across': 'across',
  'strips-along': 'along',
};
