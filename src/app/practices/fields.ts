import type { BoardSize, Practices } from '../../job/job.ts';
import { FOOT, type Grid, INCH, METRE, MILLIMETRE } from '../../units/grid.ts';
import type { Place } from '../places/places.ts';
import type { practicesEn } from '../words/practicesEn.ts';

type Words = typeof practicesEn;
interface Named {
  readonly key: keyof Words['fields'];
  /** What practitioners do differently, said under the field. */
  readonly note?: keyof Words['notes'];
}

/** One practice that is typed: how to read it out of the practices and how to put it back. */
export type Field =
  | (Named & Kept<Grid> & { readonly kind: 'length'; readonly least: Grid; readonly most: Grid })
  | (Named &
      Kept<number> & { readonly kind: 'count'; readonly least: number; readonly most: number })
  | (Named &
      Kept<number> & { readonly kind: 'share'; readonly least: number; readonly most: number })
  /** Cubic grid units. */
  | (Named & Kept<number> & { readonly kind: 'volume' })
  /** kg per square metre. */
  | (Named & Kept<number> & { readonly kind: 'area-weight' })
  | (Named & Kept<boolean> & { readonly kind: 'yes-no' })
  | (Named & Kept<BoardSize> & { readonly kind: 'board' });

interface Kept<T> {
  readonly get: (practices: Practices) => T;
  readonly put: (practices: Practices, value: T) => Practices;
}

type Flat = 'thickness' | 'gapUnderForm' | 'closeEnough' | 'stakeFromEnd';
type Counted = 'perStake' | 'perCorner' | 'nailsPerPound';

function flat(key: Flat, least: Grid, most: Grid, note?: keyof Words['notes']): Field {
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

function counted(key: Counted, least: number, most: number, note?: keyof Words['notes']): Field {
  return {
    kind: 'count',
    key,
    least,
    most,
    ...(note ? { note } : {}),
    get: ({ fastening }) => fastening[key],
    put: (practices, value) => ({
      ...practices,
      fastening: { ...practices.fastening, [key]: value },
    }),
  };
}

function mesh(
  key: keyof Words['fields'],
  part: 'lapEnds' | 'lapSides' | 'cover' | 'leastPiece',
  least: Grid,
  most: Grid,
  note?: keyof Words['notes'],
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

function strip(
  key: 'existing' | 'wall' | 'steps' | 'blockOut',
  note?: keyof Words['notes'],
): Field {
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

const BOARD: Field = {
  kind: 'board',
  key: 'formBoard',
  get: (practices) => practices.formBoard,
  put: (practices, formBoard) => ({ ...practices, formBoard }),
};

/** That of the form board in use. */
const STAKE_SPACING: Field = {
  kind: 'length',
  key: 'stakeSpacing',
  least: 6 * INCH,
  most: 10 * FOOT,
  note: 'stakeSpacing',
  get: ({ stakeSpacings, formBoard }) => stakeSpacings[formBoard],
  put: (practices, spacing) => ({
    ...practices,
    stakeSpacings: { ...practices.stakeSpacings, [practices.formBoard]: spacing },
  }),
};

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

/** The practices that bear on each place's ticket. Mixes and the blend have their own form. */
export const FIELDS: Readonly<Record<Place, readonly Field[]>> = {
  ground: [THICKNESS, flat('closeEnough', 0, 4 * INCH, 'closeEnough')],
  forms: [
    BOARD,
    flat('gapUnderForm', 0, FOOT, 'gapUnderForm'),
    STAKE_SPACING,
    flat('stakeFromEnd', 0, 10 * FOOT),
    counted('perStake', 0, 20),
    counted('perCorner', 0, 20),
    counted('nailsPerPound', 1, 1000, 'nails'),
  ],
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
