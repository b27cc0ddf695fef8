import {
  CUBIC_FOOT,
  FOOT,
  INCH,
  POUND_KG,
  SIXTEENTH,
  SQUARE_FOOT,
  SQUARE_METRE,
} from '../units/grid.ts';
import type { Practices } from './job.ts';

/** One pound per hundred square feet in kg per square metre. */
const POUND_PER_100_SQUARE_FEET = (POUND_KG / 100) * (SQUARE_METRE / SQUARE_FOOT);

/**
 * What a new job starts with. Each is a setting of the user's own; what practitioners do differently, and the published
 * sources, stand in the takeoff's rules.
 */
export function defaultPractices(): Practices {
  return {
    // Four inches for walks, patios and landings: common practice.
    thickness: 4 * INCH,
    // A 2x4 on edge is 3 1/2 in deep; lifted 1/2 in off the ground it forms 4 in: common practice.
    formBoard: '2x4',
    gapUnderForm: INCH / 2,
    // Two readings of one line, each rounded to 1/16 in, differ by about that much: our own default.
    closeEnough: SIXTEENTH,

    // At most 3 ft for 2x4 and 2x6 forms (a published trade article); others say 2 ft, 32 in, 3 to 4 ft.
    stakeSpacing: 3 * FOOT,
    // A stake within 6 to 12 in of each end: common practice.
    stakeFromEnd: 12 * INCH,
    // Two duplex nails through each stake into the form, two where boards meet at a corner: common practice.
    nailsPerStake: 2,
    nailsPerCorner: 2,
    // 8d common nails run 100 to the pound in published tables; duplex are heavier. Count your own box.
    nailsPerPound: 90,

    mesh: {
      // Flat sheets 5 x 10 ft: common practice.
      sheetLength: 10 * FOOT,
      sheetWidth: 5 * FOOT,
      // One square and 2 in: the rule of the American concrete code for plain wire, from memory.
      lap: 8 * INCH,
      // Common practice, no source.
      cover: 2 * INCH,
      // 6x6-W1.4xW1.4: 6 in squares, 21 lb per 100 ft² in published tables.
      square: 6 * INCH,
      weight: 21 * POUND_PER_100_SQUARE_FEET,
    },

    isolation: {
      // New concrete is kept from whatever stays, so that it can move: common practice.
      existing: true,
      wall: true,
      steps: true,
      blockOut: true,
      // Strip sold in 10 ft pieces: common practice, no source.
      pieceLength: 10 * FOOT,
    },

    mix: {
      mixes: [
        // Published bag tables: 80 lb makes 0.60 ft³.
        { id: 'regular', name: 'Regular, 80 lb', weight: 80 * POUND_KG, yield: 0.6 * CUBIC_FOOT },
        // 50 lb makes 0.375 ft³, at the same 133.3 lb to the cubic foot: from memory.
        {
          id: 'fast',
          name: 'Fast-setting, 50 lb',
          weight: 50 * POUND_KG,
          yield: 0.375 * CUBIC_FOOT,
        },
      ],
      blend: { main: 'regular', mainParts: 1, otherParts: 0 },
      // Two 80 lb bags to a batch in a small drum mixer: common practice.
      batchVolume: 1.2 * CUBIC_FOOT,
    },

    waste: {
      // Ten percent (a military estimating manual), and two bags where that is more: common practice on small jobs.
      share: 0.1,
      minimumBags: 2,
    },
  };
}
