import type { Practices } from '../../job/job.ts';
import {
  FOOT,
  type Grid,
  INCH,
  METRE,
  POUND_KG,
  POUND_PER_CUBIC_FOOT,
  PSI,
} from '../../units/grid.ts';
import { SECTION_FIELDS, THICKENED_FIELDS } from './edgeFields.ts';
import type { Field, FieldGroup, FieldKey, MeasuredIn, NoteKey } from './field.ts';

type Flat = 'gapUnderForm' | 'stakeFromEnd' | 'kickersAbove' | 'utilityTolerance';
type BoardLength = 'kerf' | 'shortest' | 'cleatLength' | 'runLong' | 'lapOn';
type BoardChoice = 'splices' | 'useTwisted';
type Counted = 'perStake' | 'perCorner' | 'perCleat' | 'nailsPerPound' | 'screwsPerBox';

function flat(key: Flat, least: Grid, most: Grid, note: NoteKey): Field {
  return {
    kind: 'length',
    key,
    least,
    most,
    note,
    get: (practices) => practices[key],
    put: (practices, value) => ({ ...practices, [key]: value }),
  };
}

function curve(
  key: FieldKey,
  part: keyof Practices['curve'],
  least: Grid,
  most: Grid,
  note: NoteKey,
): Field {
  return {
    kind: 'length',
    key,
    least,
    most,
    note,
    get: (practices) => practices.curve[part],
    put: (practices, value) => ({ ...practices, curve: { ...practices.curve, [part]: value } }),
  };
}

function boardLength(key: BoardLength, least: Grid, most: Grid, note: NoteKey): Field {
  return {
    kind: 'length',
    key,
    least,
    most,
    note,
    get: ({ boards }) => boards[key],
    put: (practices, value) => ({ ...practices, boards: { ...practices.boards, [key]: value } }),
  };
}

function boardChoice(key: BoardChoice, note: NoteKey): Field {
  return {
    kind: 'yes-no',
    key,
    note,
    get: ({ boards }) => boards[key],
    put: (practices, value) => ({ ...practices, boards: { ...practices.boards, [key]: value } }),
  };
}

function counted(key: Counted, least: number, most: number, note?: NoteKey): Field {
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

type Borne = keyof Practices['bending'];

function putBending(part: Borne) {
  return (practices: Practices, value: number): Practices => ({
    ...practices,
    bending: { ...practices.bending, [part]: value },
  });
}

function borne(
  key: 'elasticity' | 'stress' | 'freshWeight',
  unit: MeasuredIn,
  least: number,
  most: number,
  note: NoteKey,
): Field {
  return {
    kind: 'measured',
    key,
    unit,
    least,
    most,
    note,
    get: ({ bending }) => bending[key],
    put: putBending(key),
  };
}

const ELASTICITY: MeasuredIn = { metric: ['gigapascals', 1e9], other: ['millionPsi', 1e6 * PSI] };
const STRESS: MeasuredIn = { metric: ['megapascals', 1e6], other: ['psi', PSI] };
const DENSITY: MeasuredIn = {
  metric: ['kgPerCubicMetre', 1],
  other: ['poundsPerCubicFoot', POUND_PER_CUBIC_FOOT],
};

const BOARDS: FieldGroup = {
  key: 'boards',
  fields: [
    {
      kind: 'board',
      key: 'formBoard',
      get: (practices) => practices.formBoard,
      put: (practices, formBoard) => ({ ...practices, formBoard }),
    },
    flat('gapUnderForm', 0, FOOT, 'gapUnderForm'),
    boardChoice('splices', 'splices'),
    boardLength('cleatLength', 6 * INCH, 3 * METRE, 'cleat'),
    boardLength('runLong', 0, 10 * FOOT, 'runLong'),
    boardLength('lapOn', 0, 3 * METRE, 'lapOn'),
    boardChoice('useTwisted', 'twisted'),
    boardLength('kerf', 0, INCH, 'kerf'),
    boardLength('shortest', INCH, 5 * METRE, 'shortest'),
    {
      kind: 'sign',
      key: 'currency',
      get: ({ currency }) => currency,
      put: (practices, currency) => ({ ...practices, currency }),
    },
  ],
};

const STAKES: FieldGroup = {
  key: 'stakes',
  fields: [
    {
      kind: 'length',
      key: 'stakeSpacing',
      least: 6 * INCH,
      most: 10 * FOOT,
      note: 'stakeSpacing',
      // That of the form board in use.
      get: ({ stakeSpacings, formBoard }) => stakeSpacings[formBoard],
      put: (practices, spacing) => ({
        ...practices,
        stakeSpacings: { ...practices.stakeSpacings, [practices.formBoard]: spacing },
      }),
    },
    flat('stakeFromEnd', 0, 10 * FOOT, 'stakeFromEnd'),
    curve('curveSpacing', 'spacing', 6 * INCH, 10 * FOOT, 'curveSpacing'),
    curve('curveFlat', 'flat', INCH / 16, FOOT, 'curveFlat'),
    flat('kickersAbove', 0, METRE, 'kickersAbove'),
    flat('utilityTolerance', 0, 10 * FOOT, 'utilityTolerance'),
  ],
};

const BEARING: FieldGroup = {
  key: 'bearing',
  fields: [
    {
      kind: 'length',
      key: 'deflection',
      least: INCH / 64,
      most: 2 * INCH,
      note: 'deflection',
      get: ({ bending }) => bending.deflection,
      put: putBending('deflection'),
    },
    {
      kind: 'one-part-of',
      key: 'deflectionShare',
      least: 100,
      most: 2_000,
      note: 'deflectionShare',
      get: ({ bending }) => bending.deflectionShare,
      put: putBending('deflectionShare'),
    },
    // 0.5 to 3 million psi: below and above any softwood board.
    borne('elasticity', ELASTICITY, 500_000 * PSI, 3_000_000 * PSI, 'elasticity'),
    borne('stress', STRESS, 100 * PSI, 5_000 * PSI, 'stress'),
    borne(
      'freshWeight',
      DENSITY,
      60 * POUND_PER_CUBIC_FOOT,
      250 * POUND_PER_CUBIC_FOOT,
      'freshWeight',
    ),
  ],
};

const FASTENING: FieldGroup = {
  key: 'fastening',
  fields: [
    {
      kind: 'choice',
      key: 'fasteningBy',
      note: 'fastening',
      choices: ['duplex-nails', 'screws'],
      get: ({ fastening }) => fastening.by,
      put: (practices, by) => ({
        ...practices,
        fastening: { ...practices.fastening, by: by === 'screws' ? 'screws' : 'duplex-nails' },
      }),
    },
    counted('perStake', 0, 20, 'perStake'),
    counted('perCorner', 0, 20),
    counted('perCleat', 0, 100, 'perCleat'),
    counted('nailsPerPound', 1, 1_000, 'nails'),
    {
      kind: 'weight',
      key: 'nailBox',
      least: POUND_KG / 4,
      most: 100 * POUND_KG,
      note: 'nailBox',
      get: ({ fastening }) => fastening.nailBox,
      put: (practices, nailBox) => ({
        ...practices,
        fastening: { ...practices.fastening, nailBox },
      }),
    },
    counted('screwsPerBox', 1, 10_000),
  ],
};

const EDGE: FieldGroup = { key: 'edge', fields: [...THICKENED_FIELDS, ...SECTION_FIELDS] };

/** What bears on forms and stakes, in the order that it is asked for. */
export const FORM_GROUPS: readonly FieldGroup[] = [BOARDS, EDGE, STAKES, BEARING, FASTENING];
