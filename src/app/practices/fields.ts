import { type Grid, INCH, METRE, MILLIMETRE } from '../../units/grid.ts';
import type { Place } from '../places/places.ts';
import { SECTION_FIELDS, THICKENED_FIELDS } from './edgeFields.ts';
import type { Field, NoteKey } from './field.ts';
import { JOINT_FIELDS } from './jointFields.ts';
import { POUR_DAY_FIELDS } from './pourDayFields.ts';
import { STEEL_FIELDS } from './steelFields.ts';
import { WASTE_FIELDS } from './wasteFields.ts';

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

const HALF_BAGS: Field = {
  kind: 'yes-no',
  key: 'halfBags',
  note: 'halfBags',
  get: (practices) => practices.mix.halfBags,
  put: (practices, halfBags) => ({ ...practices, mix: { ...practices.mix, halfBags } }),
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
  mix: [THICKNESS, ...THICKENED_FIELDS, ...WASTE_FIELDS, BATCH, HALF_BAGS],
  joints: JOINT_FIELDS,
  sheet: [],
  'pour-day': POUR_DAY_FIELDS,
};
