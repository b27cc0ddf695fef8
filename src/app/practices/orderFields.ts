import type { Practices } from '../../job/job.ts';
import type { OrderPractices } from '../../job/order.ts';
import { orderOf } from '../../job/orderDefaults.ts';
import {
  CUBIC_METRE,
  CUBIC_YARD,
  FOOT,
  INCH,
  METRE,
  POUND_KG,
  SQUARE_FOOT,
  SQUARE_METRE,
} from '../../units/grid.ts';
import type { AskedField, Field, FieldGroup, FieldKey, MeasuredIn } from './field.ts';

type Part = 'bags' | 'base' | 'retarder' | 'cure' | 'readyMix' | 'haul' | 'bid';
/** Keys of a part whose values are of a kind. */
type KeysOf<P extends Part, T> = {
  [K in keyof OrderPractices[P]]-?: OrderPractices[P][K] extends T ? K : never;
}[keyof OrderPractices[P]] &
  string;
type AskedKeys<P extends Part> = {
  [K in keyof OrderPractices[P]]-?: undefined extends OrderPractices[P][K] ? K : never;
}[keyof OrderPractices[P]] &
  string;

export function putOrder(practices: Practices, change: Partial<OrderPractices>): Practices {
  return { ...practices, order: { ...orderOf(practices), ...change } };
}

function putPart<P extends Part>(
  practices: Practices,
  part: P,
  change: Partial<OrderPractices[P]>,
): Practices {
  return putOrder(practices, { [part]: { ...orderOf(practices)[part], ...change } });
}

const MINUTE = 1 / 60;
const GALLON = 231 * INCH ** 3;
const LITRE = CUBIC_METRE / 1_000;
const MINUTES: MeasuredIn = { metric: ['minutes', MINUTE], other: ['minutes', MINUTE] };
const WEIGHTS: MeasuredIn = { metric: ['kilograms', 1], other: ['pounds', POUND_KG] };
const LOADS: MeasuredIn = {
  metric: ['cubicMetres', CUBIC_METRE],
  other: ['cubicYards', CUBIC_YARD],
};
const DENSITY: MeasuredIn = {
  metric: ['kgPerCubicMetre', 1],
  other: ['poundsPerCubicFoot', POUND_KG / 0.3048 ** 3],
};
const PLAIN: MeasuredIn = { metric: ['plain', 1], other: ['plain', 1] };

function measured<P extends Part>(
  key: FieldKey,
  part: P,
  name: KeysOf<P, number>,
  unit: MeasuredIn,
  least: number,
  most: number,
  more: Pick<Field, 'note' | 'shown'> = {},
): Field {
  return {
    kind: 'measured',
    key,
    unit,
    least,
    most,
    ...more,
    get: (practices) => orderOf(practices)[part][name] as number,
    put: (practices, value) =>
      putPart(practices, part, { [name]: value } as Partial<OrderPractices[P]>),
  };
}

function share<P extends Part>(
  key: FieldKey,
  part: P,
  name: KeysOf<P, number>,
  most: number,
  more: Pick<Field, 'note' | 'shown'> = {},
): Field {
  return {
    kind: 'share',
    key,
    least: 0,
    most,
    ...more,
    get: (practices) => orderOf(practices)[part][name] as number,
    put: (practices, value) =>
      putPart(practices, part, { [name]: value } as Partial<OrderPractices[P]>),
  };
}

function counted<P extends Part>(
  key: FieldKey,
  part: P,
  name: KeysOf<P, number>,
  least: number,
  most: number,
): Field {
  return {
    kind: 'count',
    key,
    least,
    most,
    get: (practices) => orderOf(practices)[part][name] as number,
    put: (practices, value) =>
      putPart(practices, part, { [name]: value } as Partial<OrderPractices[P]>),
  };
}

function asked<P extends Part>(
  key: FieldKey,
  part: P,
  name: AskedKeys<P>,
  unit: MeasuredIn,
  most: number,
  {
    round,
    ...more
  }: Partial<Pick<AskedField, 'note' | 'whole' | 'least'>> & {
    /** Kept in whole grid units. */
    readonly round?: boolean;
  } = {},
): Field {
  return {
    kind: 'asked',
    key,
    unit,
    least: 0,
    most,
    ...more,
    get: (practices) => (orderOf(practices)[part][name] as number | undefined) ?? null,
    put: (practices, value) => {
      const { [name]: _, ...others } = orderOf(practices)[part];
      const kept = value !== null && round ? Math.round(value) : value;
      const next = kept === null ? others : { ...others, [name]: kept };
      return putOrder(practices, { [part]: next });
    },
  };
}

const usesBase = ({ base }: Practices) => base.depth > 0;
const usesRetarder = ({ base }: Practices) => base.retarder;
const usesCure = (practices: Practices) => orderOf(practices).cure.use;

function rollSize(key: FieldKey, name: 'width' | 'length' | 'lap', least: number): Field {
  return {
    kind: 'length',
    key,
    least,
    most: name === 'lap' ? 10 * METRE : 100 * METRE,
    shown: usesRetarder,
    get: (practices) => orderOf(practices).retarder[name],
    put: (practices, value) => putPart(practices, 'retarder', { [name]: value }),
  };
}

const CONCRETE: FieldGroup = {
  key: 'concrete',
  fields: [
    {
      kind: 'choice',
      key: 'concreteBy',
      choices: ['bags', 'ready-mix'],
      get: (practices) => orderOf(practices).concrete,
      put: (practices, value) =>
        putOrder(practices, { concrete: value === 'ready-mix' ? 'ready-mix' : 'bags' }),
    },
    {
      kind: 'yes-no',
      key: 'bagsReturned',
      get: (practices) => orderOf(practices).bags.returns,
      put: (practices, returns) => putPart(practices, 'bags', { returns }),
    },
    asked('perPallet', 'bags', 'perPallet', PLAIN, 1_000, {
      whole: true,
      least: 1,
      note: 'perPallet',
    }),
    share('bagsOver', 'bags', 'over', 1, { note: 'bagsOver' }),
    share('bagsSpread', 'bags', 'spread', 1),
    counted('spreadJobs', 'bags', 'jobs', 0, 10_000),
    measured('bagMinutes', 'bags', 'hours', MINUTES, 0, 100, { note: 'bagMinutes' }),
  ],
};

const UNDER: FieldGroup = {
  key: 'under',
  fields: [
    share('baseShrink', 'base', 'shrink', 0.95, { note: 'baseShrink', shown: usesBase }),
    {
      kind: 'choice',
      key: 'baseMeans',
      choices: ['swell', 'shrink'],
      shown: usesBase,
      get: (practices) => orderOf(practices).base.means,
      put: (practices, value) =>
        putPart(practices, 'base', { means: value === 'shrink' ? 'shrink' : 'swell' }),
    },
    measured('baseWeight', 'base', 'weight', DENSITY, 1, 10_000, {
      note: 'baseWeight',
      shown: usesBase,
    }),
    rollSize('retarderWidth', 'width', INCH),
    rollSize('retarderLength', 'length', INCH),
    rollSize('retarderLap', 'lap', 0),
    {
      kind: 'yes-no',
      key: 'cureUse',
      get: (practices) => orderOf(practices).cure.use,
      put: (practices, use) => putPart(practices, 'cure', { use }),
    },
    measured(
      'cureCoverage',
      'cure',
      'coverage',
      {
        metric: ['squareMetresPerLitre', SQUARE_METRE / LITRE],
        other: ['squareFeetPerGallon', SQUARE_FOOT / GALLON],
      },
      SQUARE_METRE / (100 * LITRE),
      (1_000 * SQUARE_METRE) / LITRE,
      { note: 'cureCoverage', shown: usesCure },
    ),
    measured(
      'cureCan',
      'cure',
      'can',
      { metric: ['litres', LITRE], other: ['gallons', GALLON] },
      LITRE / 100,
      CUBIC_METRE,
      { shown: usesCure },
    ),
  ],
};

const TRUCK: FieldGroup = {
  key: 'readyMix',
  fields: [
    {
      kind: 'choice',
      key: 'soldBy',
      choices: ['cubic-yard', 'cubic-metre'],
      get: (practices) => orderOf(practices).readyMix.soldBy,
      put: (practices, value) =>
        putPart(practices, 'readyMix', {
          soldBy: value === 'cubic-metre' ? 'cubic-metre' : 'cubic-yard',
        }),
    },
    asked('readyLeast', 'readyMix', 'least', LOADS, 100 * CUBIC_METRE, { note: 'readyLeast' }),
    asked('shortBelow', 'readyMix', 'short', LOADS, 100 * CUBIC_METRE),
    asked('freeTime', 'readyMix', 'free', MINUTES, 100),
    measured(
      'unloadTime',
      'readyMix',
      'unload',
      {
        metric: ['minutesPerCubicMetre', MINUTE / CUBIC_METRE],
        other: ['minutesPerCubicYard', MINUTE / CUBIC_YARD],
      },
      0,
      (10 * 1) / CUBIC_METRE,
      { note: 'unloadTime' },
    ),
    asked(
      'chuteToPad',
      'readyMix',
      'walk',
      { metric: ['metres', METRE], other: ['feet', FOOT] },
      1_000 * METRE,
      { note: 'chuteToPad', round: true },
    ),
    {
      kind: 'volume',
      key: 'barrowHolds',
      note: 'barrow',
      get: (practices) => orderOf(practices).readyMix.barrow,
      put: (practices, barrow) => putPart(practices, 'readyMix', { barrow }),
    },
    measured(
      'walkPace',
      'readyMix',
      'pace',
      { metric: ['metresPerMinute', 60 * METRE], other: ['feetPerMinute', 60 * FOOT] },
      60 * METRE,
      60_000 * METRE,
    ),
    measured('tripLost', 'readyMix', 'lost', MINUTES, 0, 1),
    counted('wheelersCount', 'readyMix', 'barrows', 1, 100),
  ],
};

const HAUL: FieldGroup = {
  key: 'haul',
  fields: [
    asked('truckPayload', 'haul', 'truck', WEIGHTS, 100_000, { note: 'payload' }),
    asked('trailerPayload', 'haul', 'trailer', WEIGHTS, 100_000),
    asked('ridingWeight', 'haul', 'riding', WEIGHTS, 100_000),
    measured('lumberWeight', 'haul', 'lumber', DENSITY, 10, 2_000),
  ],
};

const BID: FieldGroup = {
  key: 'bid',
  fields: [
    share('overhead', 'bid', 'overhead', 10),
    {
      kind: 'choice',
      key: 'profitBy',
      note: 'profitBy',
      choices: ['markup', 'margin'],
      get: (practices) => orderOf(practices).bid.profitBy,
      put: (practices, value) =>
        putPart(practices, 'bid', { profitBy: value === 'margin' ? 'margin' : 'markup' }),
    },
    share('profit', 'bid', 'profit', 0.95),
    {
      kind: 'choice',
      key: 'taxOn',
      note: 'tax',
      choices: ['tax-none', 'tax-materials', 'tax-all'],
      get: (practices) => `tax-${orderOf(practices).bid.taxOn}`,
      put: (practices, value) =>
        putPart(practices, 'bid', {
          taxOn: value === 'tax-materials' ? 'materials' : value === 'tax-all' ? 'all' : 'none',
        }),
    },
    share('taxShare', 'bid', 'tax', 1, {
      shown: (practices) => orderOf(practices).bid.taxOn !== 'none',
    }),
    {
      kind: 'price',
      key: 'priceStep',
      get: (practices) => orderOf(practices).bid.step,
      // Nothing to round to is to the cent.
      put: (practices, step) => putPart(practices, 'bid', { step: step || 1 }),
    },
  ],
};

/** What bears on the order, in the order that it is asked for. */
export const ORDER_GROUPS: readonly FieldGroup[] = [CONCRETE, UNDER, TRUCK, HAUL, BID];
