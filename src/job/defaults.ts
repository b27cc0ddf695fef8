import {
  CUBIC_FOOT,
  FLUID_OUNCE,
  FOOT,
  INCH,
  POUND_KG,
  POUND_PER_CUBIC_FOOT,
  PSI,
  SIXTEENTH,
  SQUARE_FOOT,
  SQUARE_METRE,
} from '../units/grid.ts';
import type { Lumber, MeshStock, Practices, SetTimes } from './job.ts';

/** One pound per hundred square feet in kg per square metre. */
const POUND_PER_100_SQUARE_FEET = (POUND_KG / 100) * (SQUARE_METRE / SQUARE_FOOT);

/** An ordinary mix at about 70 °F, until its bag says otherwise: common practice, no source. */
export const ORDINARY_SET: SetTimes = { initial: 4 * 60, final: 6 * 60, from: 'common-practice' };
/** A fast-setting mix: bags promise 20 to 40 min. Common practice, no source. */
const FAST_SET: SetTimes = { initial: 30, final: 60, from: 'common-practice' };

/**
 * At most 3 ft for 2x4 and 2x6 forms (a published trade article), closer for deeper ones; others say 2 ft, 32 in, 3 to
 * 4 ft. Boards 3/4 in thick are staked closer: common practice.
 */
export function defaultSpacings(): Practices['stakeSpacings'] {
  return {
    '1x4': 2 * FOOT,
    '1x6': 2 * FOOT,
    '2x4': 3 * FOOT,
    '2x6': 3 * FOOT,
    '2x8': 2.5 * FOOT,
    '2x10': 2 * FOOT,
    '2x12': 2 * FOOT,
  };
}

/** Lengths that yards commonly sell, without prices: those are the user's to ask for. Common practice. */
export function defaultLumber(): Lumber {
  const sizes = ['1x4', '1x6', '2x4', '2x6', '2x8', '2x10', '2x12'] as const;
  const feet = [8, 10, 12, 16];
  return {
    truck: [],
    yard: sizes.flatMap((size) =>
      feet.map((length) => ({ id: `y${size}-${length}`, size, length: length * FOOT })),
    ),
  };
}

/**
 * Flat sheets 5 × 10 ft, and the roll 5 × 150 ft for what is large enough to use one up, without prices: common practice;
 * the roll's size is a textbook's.
 */
export function defaultMeshStock(): MeshStock {
  return {
    truck: [],
    yard: [
      { id: 'm5x10', form: 'sheet', length: 10 * FOOT, width: 5 * FOOT },
      { id: 'm5x150', form: 'roll', length: 150 * FOOT, width: 5 * FOOT },
    ],
  };
}

/**
 * What a new job starts with. Each is a setting of the user's own; what practitioners do differently, and the published
 * sources, stand in the takeoff's rules.
 */
export function defaultPractices(): Practices {
  return {
    currency: '$',
    // Four inches for walks, patios and landings: common practice.
    thickness: 4 * INCH,
    // A 2x4 on edge is 3 1/2 in deep; lifted 1/2 in off the ground it forms 4 in: common practice.
    formBoard: '2x4',
    gapUnderForm: INCH / 2,
    // Twice a 4 in slab, as wide at the bottom, up to the slab at 45 degrees: common practice, no source.
    thickenedEdge: { use: false, depth: 8 * INCH, width: 8 * INCH, taper: 4 * INCH },
    // Neither until somebody says so: what lies under the slab is the site's business.
    base: { depth: 0, retarder: false },
    // Edgers of 1/4 to 1/2 in radius: common practice, no source.
    edgeRadius: (3 * INCH) / 8,
    // Two readings of one line, each rounded to 1/16 in, differ by about that much: our own default.
    closeEnough: SIXTEENTH,

    stakeSpacings: defaultSpacings(),
    // A stake within 6 to 12 in of each end: common practice.
    stakeFromEnd: 12 * INCH,
    // 18 in on curves where straight runs have 36, and boards no flatter than 1/2 in off the arc: common practice.
    curve: { spacing: 18 * INCH, flat: INCH / 2 },
    bending: {
      // 1/16 in and 1/360 of the spacing: limits of the formwork texts, from memory.
      deflection: SIXTEENTH,
      deflectionShare: 1 / 360,
      // Ordinary softwood laid flat: 1,200,000 psi and 900 psi, common practice, no source.
      elasticity: 1_200_000 * PSI,
      stress: 900 * PSI,
      // 150 lb/ft³, published.
      freshWeight: 150 * POUND_PER_CUBIC_FOOT,
    },
    // Kickers where the form stands more than 6 in above ground (a published trade article).
    kickersAbove: 6 * INCH,
    // Common practice: the call centres' tolerance zone runs 18 to 30 in by state. Ask yours.
    utilityTolerance: 24 * INCH,

    boards: {
      // A circular saw: common practice.
      kerf: INCH / 8,
      // Shorter offcuts aren't worth keeping: from memory.
      shortest: 16 * INCH,
      splices: true,
      // A scab of 2 ft at least: common practice.
      cleatLength: 2 * FOOT,
      runLong: 2 * FOOT,
      lapOn: FOOT,
      useTwisted: false,
    },

    fastening: {
      // Two duplex nails through each stake into the form, two where boards meet at a corner: common practice.
      by: 'duplex-nails',
      perStake: 2,
      perCorner: 2,
      // Four on either side of the splice: common practice.
      perCleat: 8,
      // 8d common nails run 100 to the pound in published tables; duplex are heavier. Count your own box.
      nailsPerPound: 90,
      // Boxes of 1 lb and 5 lb: common practice.
      nailBox: POUND_KG,
      screwsPerBox: 100,
    },

    steel: defaultSteel(),

    isolation: {
      // New concrete is kept from whatever stays, so that it can move: common practice.
      existing: true,
      wall: true,
      steps: true,
      blockOut: true,
      bondAtPatch: false,
      // 1/2 in, flush (state ready-mix association: 1/2 in, full depth); 1/4 in low where it is sealed: common practice.
      thickness: INCH / 2,
      recess: 0,
      // Strip sold in 10 ft pieces: common practice, no source.
      pieceLength: 10 * FOOT,
    },

    joints: defaultJoints(),

    mix: {
      mixes: [
        // Published bag tables: 80 lb makes 0.60 ft³.
        {
          id: 'regular',
          name: 'Regular, 80 lb',
          weight: 80 * POUND_KG,
          yield: 0.6 * CUBIC_FOOT,
          set: ORDINARY_SET,
        },
        // 50 lb makes 0.375 ft³, at the same 133.3 lb to the cubic foot: from memory.
        {
          id: 'fast',
          name: 'Fast-setting, 50 lb',
          weight: 50 * POUND_KG,
          yield: 0.375 * CUBIC_FOOT,
          set: FAST_SET,
        },
      ],
      blend: { main: 'regular', mainParts: 1, otherParts: 0 },
      // Two 80 lb bags to a batch in a small drum mixer: common practice.
      batchVolume: 1.2 * CUBIC_FOOT,
      // A half bag is guessed by eye: whole ones until somebody says so.
      halfBags: false,
    },

    waste: {
      by: 'parts',
      // Ten percent: a military estimating manual.
      share: 0.1,
      // A mean of 1/4 in that nobody sees, allowed for once; 2 percent spilled (1 to 2 seen): common practice.
      depthSpread: INCH / 4,
      spreadTimes: 1,
      spillage: 0.02,
      extras: [],
      // Two bags where that is more: common practice on small jobs.
      minimumBags: 2,
    },
  };
}

/**
 * What a new job starts with of joints. Panels no longer than 30 thicknesses (published: 24, 30 or 36 by aggregate and
 * slump) and than 15 ft; 1 1/2 times as long as wide; 60 degrees where joints meet; a quarter of the depth and 1 in.
 */
function defaultJoints(): Practices['joints'] {
  return {
    layout: 'proposed',
    factor: 30,
    cap: 15 * FOOT,
    ratio: 1.5,
    // Narrower ones break off: common practice, no source.
    least: 2 * FOOT,
    angle: 60,
    made: 'tooled',
    depthShare: 0.25,
    leastDepth: INCH,
    sealant: {
      joints: false,
      strip: false,
      // Grooves 1/8 to 1/4 in wide (a town's code); sealant half as deep as wide is common practice, and never thinner
      // than 1/4 in.
      width: INCH / 4,
      depth: INCH / 4,
      backer: false,
      // 10 US fluid ounces: common practice.
      cartridge: 10 * FLUID_OUNCE,
    },
  };
}

/** What a new job starts with of steel. */
function defaultSteel(): Practices['steel'] {
  return {
    kind: 'mesh',
    mesh: {
      // The lightest that is commonly sold: common practice.
      style: '6x6-W1.4',
      // The same, until a style of one's own is typed: 6 in squares, 21 lb per 100 ft² in published tables.
      own: { square: 6 * INCH, weight: 21 * POUND_PER_100_SQUARE_FEET },
      // One square and 2 in: the rule of the American concrete code for plain wire, from memory.
      lapEnds: 8 * INCH,
      lapSides: 8 * INCH,
      // Common practice, no source.
      cover: 2 * INCH,
      // Two squares: common practice, no source.
      leastPiece: 12 * INCH,
    },
    // Supports seen from 2 to 6 ft; wire bends underfoot when they are far: the closest of them.
    // 2 in below the top, or in the upper third: common practice.
    supports: { by: 'chairs', spacing: 2 * FOOT, below: 2 * INCH },
    // Common practice, no source.
    tieSpacing: 2 * FOOT,
    bars: {
      // #3 at 18 in each way for walks and drives: common practice. Cover to the edge 3 in against ground, the American
      // concrete code, from memory. 40 diameters to a lap: from memory.
      size: '#3',
      spacing: 18 * INCH,
      cover: 3 * INCH,
      lapDiameters: 40,
      stockLength: 20 * FOOT,
      // Common practice, no source.
      cornerLength: 4 * FOOT,
    },
    dowels: {
      use: false,
      by: 'table',
      // 5/8 x 12 at 12 in, as published for 5 in slabs.
      own: { diameter: (5 * INCH) / 8, length: 12 * INCH, spacing: 12 * INCH },
      set: 'epoxy',
      fromCorner: 6 * INCH,
    },
    drag: {
      // 1.5 on a granular base is the value of the published examples; two thirds of 65 ksi for drawn wire, published.
      friction: 1.5,
      // The spacing of control joints is its own setting; this is between the joints that the steel runs to.
      jointLength: 10 * FOOT,
      stress: ((65_000 * 2) / 3) * PSI,
    },
  };
}
