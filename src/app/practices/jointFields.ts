import type { Practices } from '../../job/job.ts';
import { FLUID_OUNCE, FOOT, type Grid, INCH, METRE, MILLILITRE } from '../../units/grid.ts';
import type { Field, FieldKey, NoteKey } from './field.ts';

type Joints = Practices['joints'];
type Isolation = Practices['isolation'];

function put(practices: Practices, change: Partial<Joints>): Practices {
  return { ...practices, joints: { ...practices.joints, ...change } };
}

function putStrip(practices: Practices, change: Partial<Isolation>): Practices {
  return { ...practices, isolation: { ...practices.isolation, ...change } };
}

function putSealant(practices: Practices, change: Partial<Joints['sealant']>): Practices {
  return put(practices, { sealant: { ...practices.joints.sealant, ...change } });
}

const PLAIN = { metric: ['plain', 1], other: ['plain', 1] } as const;
const TUBE = { metric: ['millilitres', MILLILITRE], other: ['fluidOunces', FLUID_OUNCE] } as const;
const DEGREES = { metric: ['degrees', 1], other: ['degrees', 1] } as const;

function size(
  key: FieldKey,
  part: 'cap' | 'least' | 'leastDepth',
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
    get: ({ joints }) => joints[part],
    put: (practices, value) => put(practices, { [part]: value }),
  };
}

function strip(
  key: 'existing' | 'wall' | 'steps' | 'blockOut' | 'bondAtPatch',
  note?: NoteKey,
): Field {
  return {
    kind: 'yes-no',
    key,
    ...(note ? { note } : {}),
    get: ({ isolation }) => isolation[key],
    put: (practices, value) => putStrip(practices, { [key]: value }),
  };
}

function stripSize(
  key: FieldKey,
  part: 'pieceLength' | 'thickness' | 'recess',
  least: Grid,
  most: Grid,
): Field {
  return {
    kind: 'length',
    key,
    least,
    most,
    get: ({ isolation }) => isolation[part],
    put: (practices, value) => putStrip(practices, { [part]: value }),
  };
}

function seal(key: FieldKey, part: 'joints' | 'strip' | 'backer', note?: NoteKey): Field {
  return {
    kind: 'yes-no',
    key,
    ...(note ? { note } : {}),
    ...(part === 'backer' ? { shown: ({ joints }: Practices) => joints.sealant.joints } : {}),
    get: ({ joints }) => joints.sealant[part],
    put: (practices, value) => putSealant(practices, { [part]: value }),
  };
}

function sealSize(key: FieldKey, part: 'width' | 'depth', most: Grid): Field {
  return {
    kind: 'length',
    key,
    least: INCH / 16,
    most,
    shown: ({ joints }) => joints.sealant.joints,
    get: ({ joints }) => joints.sealant[part],
    put: (practices, value) => putSealant(practices, { [part]: value }),
  };
}

/** How joints are laid out, how deep they go, where strip goes, and what is sealed. */
export const JOINT_FIELDS: readonly Field[] = [
  {
    kind: 'choice',
    key: 'jointLayout',
    note: 'jointLayout',
    choices: ['proposed', 'by-hand'],
    get: ({ joints }) => joints.layout,
    put: (practices, value) =>
      put(practices, { layout: value === 'by-hand' ? 'by-hand' : 'proposed' }),
  },
  {
    kind: 'measured',
    key: 'jointFactor',
    note: 'jointSpacing',
    unit: PLAIN,
    least: 1,
    most: 200,
    get: ({ joints }) => joints.factor,
    put: (practices, factor) => put(practices, { factor }),
  },
  size('jointCap', 'cap', FOOT, 100 * METRE),
  {
    kind: 'measured',
    key: 'jointRatio',
    note: 'jointRatio',
    unit: PLAIN,
    least: 1,
    most: 100,
    get: ({ joints }) => joints.ratio,
    put: (practices, ratio) => put(practices, { ratio }),
  },
  size('jointLeast', 'least', 0, 10 * METRE),
  {
    kind: 'measured',
    key: 'jointAngle',
    unit: DEGREES,
    least: 0,
    most: 90,
    get: ({ joints }) => joints.angle,
    put: (practices, angle) => put(practices, { angle }),
  },
  {
    kind: 'choice',
    key: 'jointMade',
    choices: ['tooled', 'sawn'],
    get: ({ joints }) => joints.made,
    put: (practices, value) => put(practices, { made: value === 'sawn' ? 'sawn' : 'tooled' }),
  },
  {
    kind: 'share',
    key: 'jointShare',
    least: 0.01,
    most: 0.9,
    note: 'jointDepth',
    get: ({ joints }) => joints.depthShare,
    put: (practices, depthShare) => put(practices, { depthShare }),
  },
  size('jointLeastDepth', 'leastDepth', 0, METRE),
  strip('existing', 'isolation'),
  strip('steps'),
  strip('wall'),
  strip('blockOut'),
  strip('bondAtPatch', 'bondAtPatch'),
  stripSize('stripThickness', 'thickness', INCH / 16, 4 * INCH),
  stripSize('stripRecess', 'recess', 0, METRE),
  stripSize('pieceLength', 'pieceLength', FOOT, 100 * METRE),
  seal('sealJoints', 'joints', 'sealant'),
  sealSize('sealWidth', 'width', 4 * INCH),
  sealSize('sealDepth', 'depth', 10 * INCH),
  seal('backer', 'backer'),
  seal('sealStrip', 'strip'),
  {
    kind: 'measured',
    key: 'cartridge',
    unit: TUBE,
    least: MILLILITRE,
    most: 100_000 * MILLILITRE,
    shown: ({ joints }) => joints.sealant.joints || joints.sealant.strip,
    get: ({ joints }) => joints.sealant.cartridge,
    put: (practices, cartridge) => putSealant(practices, { cartridge }),
  },
];
