import type { Practices } from '../../job/job.ts';
import { FOOT, type Grid, INCH, METRE, MILLIMETRE } from '../../units/grid.ts';
import type { Place } from '../places/places.ts';
import type { Field, FieldKey, NoteKey } from './field.ts';

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

function mesh(
  key: FieldKey,
  part: 'lapEnds' | 'lapSides' | 'cover' | 'leastPiece',
  least: Grid,
  most: Grid,
  note?: NoteKey,
): Field {
  return {
    kind: 'length',
    key,
    least,
    most,
    ...(note ? { note } : {}),
    get: ({ steel }) => steel.mesh[part],
    put: (practices, value) => putMesh(practices, { [part]: value }),
  };
}

function putMesh(practices: Practices, change: Partial<Practices['steel']['mesh']>): Practices {
  const { steel } = practices;
  return { ...practices, steel: { ...steel, mesh: { ...steel.mesh, ...change } } };
}

function strip(key: 'existing' | 'wall' | 'steps' | 'blockOut', note?: NoteKey): Field {
  return {
    kind: 'yes-no',
    key,
    ...(note ? { note } : {}),
    get: (practices) => practices.isolation[key],
    put: (practices, value) => ({
      ...practices,
      isolation: { ...practices.isolation, [key]: value },
    }),
  };
}

const THICKNESS = flat('thickness', 10 * MILLIMETRE, METRE, 'thickness');

const PIECE: Field = {
  kind: 'length',
  key: 'pieceLength',
  least: FOOT,
  most: 100 * METRE,
  get: (practices) => practices.isolation.pieceLength,
  put: (practices, pieceLength) => ({
    ...practices,
    isolation: { ...practices.isolation, pieceLength },
  }),
};

const MESH_WEIGHT: Field = {
  kind: 'area-weight',
  key: 'meshWeight',
  get: ({ steel }) => steel.mesh.own.weight,
  put: (practices, weight) =>
    putMesh(practices, { own: { ...practices.steel.mesh.own, weight }, style: 'own' }),
};

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

/** The practices that bear on each place's ticket. Forms have theirs in groups; mixes and the blend have their own form. */
export const FIELDS: Readonly<Record<Exclude<Place, 'forms'>, readonly Field[]>> = {
  ground: [THICKNESS, flat('closeEnough', 0, 4 * INCH, 'closeEnough')],
  steel: [
    mesh('lapSides', 'lapSides', 0, METRE, 'lap'),
    mesh('lapEnds', 'lapEnds', 0, METRE),
    mesh('leastPiece', 'leastPiece', INCH, 5 * METRE),
    mesh('cover', 'cover', 0, METRE, 'cover'),
    MESH_WEIGHT,
  ],
  joints: [strip('existing', 'isolation'), strip('steps'), strip('wall'), strip('blockOut'), PIECE],
  mix: [THICKNESS, SHARE, MINIMUM_BAGS, BATCH],
  sheet: [],
};
