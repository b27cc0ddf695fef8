import type { Practices } from '../../job/job.ts';
import { BAR_SIZES } from '../../takeoff/steel/bars.ts';
import { MESH_STYLES } from '../../takeoff/steel/styles.ts';
import { FOOT, type Grid, INCH, METRE, PSI } from '../../units/grid.ts';
import type { Field, FieldKey, MeasuredIn } from './field.ts';

type Steel = Practices['steel'];

function put(practices: Practices, change: Partial<Steel>): Practices {
  return { ...practices, steel: { ...practices.steel, ...change } };
}

function putMesh(practices: Practices, change: Partial<Steel['mesh']>): Practices {
  return put(practices, { mesh: { ...practices.steel.mesh, ...change } });
}

const ofMesh = ({ steel }: Practices) => steel.kind === 'mesh';
const ofOwnMesh = (practices: Practices) =>
  ofMesh(practices) && practices.steel.mesh.style === 'own';
const ofSteel = ({ steel }: Practices) => steel.kind !== 'none';

/** A length of the mesh's rule. */
function mesh(
  key: 'lapEnds' | 'lapSides' | 'cover' | 'leastPiece',
  least: Grid,
  most: Grid,
  note?: 'lap' | 'cover',
): Field {
  return {
    kind: 'length',
    key,
    least,
    most,
    ...(note ? { note } : {}),
    shown: ofMesh,
    get: ({ steel }) => steel.mesh[key],
    put: (practices, value) => putMesh(practices, { [key]: value }),
  };
}

const PLAIN: MeasuredIn = { metric: ['plain', 1], other: ['plain', 1] };
const STRESS: MeasuredIn = { metric: ['megapascals', 1e6], other: ['psi', PSI] };

const ofBars = ({ steel }: Practices) => steel.kind === 'bars';
const ofDowels = ({ steel }: Practices) => steel.dowels.use;
const ofOwnDowels = ({ steel }: Practices) => steel.dowels.use && steel.dowels.by === 'own';

function putBars(practices: Practices, change: Partial<Steel['bars']>): Practices {
  return put(practices, { bars: { ...practices.steel.bars, ...change } });
}

/** A length of the bars' rule. */
function bars(
  key: FieldKey,
  part: 'spacing' | 'cover' | 'stockLength' | 'cornerLength',
  least: Grid,
  most: Grid,
  note?: 'cover',
): Field {
  return {
    kind: 'length',
    key,
    least,
    most,
    ...(note ? { note } : {}),
    shown: ofBars,
    get: ({ steel }) => steel.bars[part],
    put: (practices, value) => putBars(practices, { [part]: value }),
  };
}

function putDowels(practices: Practices, change: Partial<Steel['dowels']>): Practices {
  return put(practices, { dowels: { ...practices.steel.dowels, ...change } });
}

/** A size of one's own dowels. */
function dowel(key: FieldKey, part: keyof Steel['dowels']['own'], least: Grid, most: Grid): Field {
  return {
    kind: 'length',
    key,
    least,
    most,
    shown: ofOwnDowels,
    get: ({ steel }) => steel.dowels.own[part],
    put: (practices, value) =>
      putDowels(practices, { own: { ...practices.steel.dowels.own, [part]: value } }),
  };
}

const DOWELS_BY = ['table', 'own'] as const;
const DOWELS_SET = ['epoxy', 'sleeve'] as const;

const KINDS = ['mesh', 'bars', 'none'] as const satisfies readonly Steel['kind'][];

const STYLES: readonly Steel['mesh']['style'][] = [...MESH_STYLES, 'own'];

/** The one of a list that was chosen on the page. */
function chosen<T extends string>(list: readonly T[], value: string): T {
  const found = list.find((one) => one === value);
  if (found === undefined) throw new Error(`No such choice: ${value}`);
  return found;
}

export const STEEL_FIELDS: readonly Field[] = [
  {
    kind: 'choice',
    key: 'steelKind',
    note: 'steelKind',
    choices: KINDS,
    get: ({ steel }) => steel.kind,
    put: (practices, value) => put(practices, { kind: chosen(KINDS, value) }),
  },
  {
    kind: 'choice',
    key: 'meshStyle',
    note: 'meshStyle',
    choices: STYLES,
    shown: ofMesh,
    get: ({ steel }) => steel.mesh.style,
    put: (practices, value) => putMesh(practices, { style: chosen(STYLES, value) }),
  },
  {
    kind: 'length',
    key: 'square',
    least: INCH,
    most: METRE,
    shown: ofOwnMesh,
    get: ({ steel }) => steel.mesh.own.square,
    put: (practices, square) =>
      putMesh(practices, { own: { ...practices.steel.mesh.own, square } }),
  },
  {
    kind: 'area-weight',
    key: 'meshWeight',
    shown: ofOwnMesh,
    get: ({ steel }) => steel.mesh.own.weight,
    put: (practices, weight) =>
      putMesh(practices, { own: { ...practices.steel.mesh.own, weight } }),
  },
  mesh('lapSides', 0, METRE, 'lap'),
  mesh('lapEnds', 0, METRE),
  mesh('cover', 0, METRE, 'cover'),
  mesh('leastPiece', INCH, 5 * METRE),
  {
    kind: 'choice',
    key: 'barSize',
    choices: BAR_SIZES,
    shown: ofBars,
    get: ({ steel }) => steel.bars.size,
    put: (practices, value) => putBars(practices, { size: chosen(BAR_SIZES, value) }),
  },
  bars('barSpacing', 'spacing', INCH, 10 * METRE),
  bars('barCover', 'cover', 0, METRE, 'cover'),
  {
    kind: 'measured',
    key: 'lapDiameters',
    note: 'barLap',
    unit: PLAIN,
    least: 1,
    most: 200,
    shown: ofBars,
    get: ({ steel }) => steel.bars.lapDiameters,
    put: (practices, lapDiameters) => putBars(practices, { lapDiameters }),
  },
  bars('stockLength', 'stockLength', FOOT, 30 * METRE),
  {
    kind: 'price',
    key: 'barPrice',
    note: 'barPrice',
    shown: ofBars,
    get: ({ steel }) => steel.bars.price ?? null,
    put: (practices, price) => {
      const { price: _, ...unpriced } = practices.steel.bars;
      const bought = price === null ? unpriced : { ...unpriced, price };
      return put(practices, { bars: bought });
    },
  },
  bars('cornerLength', 'cornerLength', 0, 10 * METRE),
  {
    kind: 'yes-no',
    key: 'chairs',
    note: 'chairs',
    shown: ofSteel,
    get: ({ steel }) => steel.supports.by === 'chairs',
    put: (practices, chairs) =>
      put(practices, {
        supports: { ...practices.steel.supports, by: chairs ? 'chairs' : 'lifting' },
      }),
  },
  {
    kind: 'length',
    key: 'steelBelow',
    least: INCH / 2,
    most: METRE,
    note: 'steelBelow',
    shown: ofSteel,
    get: ({ steel }) => steel.supports.below,
    put: (practices, below) => put(practices, { supports: { ...practices.steel.supports, below } }),
  },
  {
    kind: 'length',
    key: 'chairSpacing',
    least: 6 * INCH,
    most: 10 * METRE,
    shown: (practices) => ofSteel(practices) && practices.steel.supports.by === 'chairs',
    get: ({ steel }) => steel.supports.spacing,
    put: (practices, spacing) =>
      put(practices, { supports: { ...practices.steel.supports, spacing } }),
  },
  {
    kind: 'length',
    key: 'tieSpacing',
    least: INCH,
    most: 10 * METRE,
    shown: ofSteel,
    get: ({ steel }) => steel.tieSpacing,
    put: (practices, tieSpacing) => put(practices, { tieSpacing }),
  },
  {
    kind: 'measured',
    key: 'friction',
    note: 'drag',
    unit: PLAIN,
    least: 0.1,
    most: 10,
    shown: ofSteel,
    get: ({ steel }) => steel.drag.friction,
    put: (practices, friction) => put(practices, { drag: { ...practices.steel.drag, friction } }),
  },
  {
    kind: 'length',
    key: 'jointLength',
    least: FOOT,
    most: 100 * METRE,
    shown: ofSteel,
    get: ({ steel }) => steel.drag.jointLength,
    put: (practices, jointLength) =>
      put(practices, { drag: { ...practices.steel.drag, jointLength } }),
  },
  {
    kind: 'measured',
    key: 'steelStress',
    unit: STRESS,
    least: 1e6,
    most: 1e9,
    shown: ofSteel,
    get: ({ steel }) => steel.drag.stress,
    put: (practices, stress) => put(practices, { drag: { ...practices.steel.drag, stress } }),
  },
  {
    kind: 'yes-no',
    key: 'dowels',
    note: 'dowels',
    get: ({ steel }) => steel.dowels.use,
    put: (practices, use) => putDowels(practices, { use }),
  },
  {
    kind: 'choice',
    key: 'dowelsBy',
    note: 'dowelSizes',
    choices: ['dowels-table', 'dowels-own'],
    shown: ofDowels,
    get: ({ steel }) => `dowels-${steel.dowels.by}`,
    put: (practices, value) =>
      putDowels(practices, { by: chosen(DOWELS_BY, value.replace('dowels-', '')) }),
  },
  dowel('dowelDiameter', 'diameter', INCH / 8, 4 * INCH),
  dowel('dowelLength', 'length', INCH, 3 * METRE),
  dowel('dowelSpacing', 'spacing', INCH, 10 * METRE),
  {
    kind: 'choice',
    key: 'dowelsSet',
    choices: DOWELS_SET,
    shown: ofDowels,
    get: ({ steel }) => steel.dowels.set,
    put: (practices, value) => putDowels(practices, { set: chosen(DOWELS_SET, value) }),
  },
  {
    kind: 'length',
    key: 'fromCorner',
    least: 0,
    most: 3 * METRE,
    shown: ofDowels,
    get: ({ steel }) => steel.dowels.fromCorner,
    put: (practices, fromCorner) => putDowels(practices, { fromCorner }),
  },
];
