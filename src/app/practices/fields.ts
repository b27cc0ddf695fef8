import { type Grid, INCH, METRE, MILLIMETRE } from '../../units/grid.ts';
import type { Place } from '../places/places.ts';
import { SECTION_FIELDS, THICKENED_FIELDS } from './edgeFields.ts';
import type { Field, NoteKey } from './field.ts';
import { JOINT_FIELDS } from './jointFields.ts';
import { POUR_DAY_FIELDS } from './pourDayFields.ts';
import { STEEL_FIELDS } from './steelFields.ts';

type Flat = 'thickness' | 'closeEnough';

function flat(key: Flat, least: Grid, most: Grid, note?: NoteKey): Field {
  return {
    kind: 'length',
    key,
    least,
    most,
    ...(note ? { note } : {}),
    get: (practices) => practices[key],
    put: (practices, value) => ({ ...practices, [key]: value }),
  };
}

const THICKNESS = flat('thickness', 10 * MILLIMETRE, METRE, 'thickness');

const BATCH: Field = {
  kind: 'volume',
  key: 'batchVolume',
  note: 'batch',
  get: (practices) => practices.mix.batchVolume,
  put: (practices, batchVolume) => ({ ...practices, mix: { ...practices.mix, batchVolume } }),
};

const SHARE: Field = {
  kind: 'share',
  key: 'wasteShare',
  least: 0,
  most: 1,
  note: 'waste',
  get: (practices) => practices.waste.share,
  put: (practices, share) => ({ ...practices, waste: { ...practices.waste, share } }),
};

const MINIMUM_BAGS: Field = {
  kind: 'count',
  key: 'minimumBags',
  least: 0,
  most: 1000,
  get: (practices) => practices.waste.minimumBags,
  put: (practices, minimumBags) => ({ ...practices, waste: { ...practices.waste, minimumBags } }),
};

/** The practices that bear on each place's ticket. Forms and the order have theirs in groups; mixes and the blend have their own form. */
export const FIELDS: Readonly<Record<Exclude<Place, 'forms' | 'order'>, readonly Field[]>> = {
  ground: [
    THICKNESS,
    ...THICKENED_FIELDS,
    ...SECTION_FIELDS,
    flat('closeEnough', 0, 4 * INCH, 'closeEnough'),
  ],
  steel: STEEL_FIELDS,
  mix: [THICKNESS, ...THICKENED_FIELDS, SHARE, MINIMUM_BAGS, BATCH],
  joints: JOINT_FIELDS,
  sheet: [],
  'pour-day': POUR_DAY_FIELDS,
};
