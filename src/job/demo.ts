import { CUBIC_FOOT, FOOT, INCH } from '../units/grid.ts';
import type { Money } from '../units/money.ts';
import type {
  Attachment,
  Corner,
  Feature,
  Job,
  Lumber,
  Outline,
  Round,
  TruckBoards,
} from './job.ts';
import { settle } from './settle.ts';
import { blankJob } from './start.ts';

/**
 * The sample job: a made-up place, with the trouble that side yards have. Tape readings in sixteenths; the origin is
 * where the front edge would meet the stringline off the porch, x along the house to the right, y towards it.
 *
 *            house, skirting                 | house, foundation
 *    ====================================================================  y 121 1/4 in
 *    13+---------E--+12     9+---------------------8+-------------------+
 *      |         :  | stoop  |                      |                   |
 *      |         :11+--------+10                    |    older patio    |
 *      |          :                clean-out        |   (out of square) |
 *    14|          :                   (o)           |\                  |
 *       \      post:                  : :           | \ broken corner   |
 *        \      (o):                  : : drain    7+--\------+6--------+
 *         '-.       :                 : : pipe                |
 *            1+-----:----------+2     : :                     |
 *                   :          |      : :                     +5
 *      electric feed E        3+------------------------------+4
 */
export function demoJob(): Job {
  const features = [
    existingSlab,
    skirting,
    foundation,
    stoop,
    pad,
    patch,
    post,
    cleanOut,
    drainPipe,
    feed,
  ];
  const { practices, ...blank } = blankJob();
  return settle({
    ...blank,
    name: 'Side yard landing',
    site: '14 Quill Lane, Marrow Bay',
    notes: 'Sample job. Gate stays usable; mixer and hose at the carport.',
    features,
    practices: {
      ...practices,
      mix: {
        ...practices.mix,
        blend: { main: 'regular', mainParts: 3, other: 'fast', otherParts: 1 },
        // Three regular and one fast-setting bag make 2.175 ft³: what this crew's drum takes at once.
        batchVolume: 2.175 * CUBIC_FOOT,
      },
    },
    lumber: lumberOf(blank.lumber),
    nextId: 100,
  });
}

/** Leftovers of other jobs on the truck, and what the yard asks: made up for the sample, and for it alone. */
function lumberOf({ yard }: Lumber): Lumber {
  const board = (id: string, feet: number, count: number, twisted = false): TruckBoards => ({
    id,
    size: '2x4',
    length: feet * FOOT,
    count,
    twisted,
  });
  const prices: Readonly<Record<string, Money>> = {
    'y2x4-8': 415,
    'y2x4-10': 560,
    'y2x4-12': 675,
    'y2x4-16': 945,
  };
  return {
    truck: [
      board('t1', 12, 2),
      board('t2', 10, 1),
      board('t3', 8, 2),
      // Left in the sun.
      board('t4', 14, 1, true),
    ],
    yard: yard.map((row) => {
      const price = prices[row.id];
      return price === undefined ? row : { ...row, price };
    }),
  };
}

function corner(id: string, x: number, y: number, more: Partial<Corner> = {}): Corner {
  return { id, x: x * INCH, y: y * INCH, rise: 0, ...more };
}

/** A corner that stays on an edge: it gets its place when the job is settled. */
function held(id: string, on: Attachment): Corner {
  return { id, x: 0, y: 0, rise: 0, on };
}

function closed(...corners: readonly Corner[]): Outline {
  return { form: 'outline', closed: true, corners };
}

function open(...corners: readonly Corner[]): Outline {
  return { form: 'outline', closed: false, corners };
}

function round(x: number, y: number, diameter: number): Round {
  return {
    form: 'round',
    center: { x: x * INCH, y: y * INCH },
    diameter: diameter * INCH,
  };
}

/** Poured long ago by eye: no corner of it is square. */
const existingSlab: Feature = {
  id: 'f1',
  name: 'Older patio',
  kind: 'existing-slab',
  shape: closed(
    corner('c2', 190.25, 38.875),
    corner('c3', 277.5, 42.3125),
    corner('c4', 275.125, 121.25),
    corner('c5', 186.5625, 121.25),
  ),
};

/** Skirting can't hold wet concrete: the edge along it is formed. */
const skirting: Feature = {
  id: 'f6',
  name: 'House, skirting',
  kind: 'building-line',
  pourAgainst: false,
  shape: open(corner('c7', -48, 121.25), corner('c8', 118, 121.25)),
};

const foundation: Feature = {
  id: 'f9',
  name: 'House, foundation',
  kind: 'building-line',
  pourAgainst: true,
  shape: open(corner('c10', 118, 121.25), corner('c11', 300, 121.25)),
};

const stoop: Feature = {
  id: 'f12',
  name: 'Stoop',
  kind: 'steps',
  treads: 3,
  shape: closed(
    corner('c13', 60.125, 84.6875),
    corner('c14', 108.1875, 84.6875),
    corner('c15', 108.1875, 121.25),
    corner('c16', 60.125, 121.25),
  ),
};

const pad: Feature = {
  id: 'f20',
  name: 'New pad',
  kind: 'pad',
  shape: closed(
    corner('c21', 24, 0),
    corner('c22', 120.5, 0),
    corner('c23', 120.5, -17.25),
    corner('c24', 204.25, -17.25),
    corner('c25', 222.25, 0.75),
    held('c26', { feature: 'f1', corner: 'c2', t: 0.3625 }),
    held('c27', { feature: 'f1', corner: 'c2', t: 0 }),
    held('c28', { feature: 'f1', corner: 'c5', t: 0 }),
    held('c29', { feature: 'f12', corner: 'c15', t: 0 }),
    held('c30', { feature: 'f12', corner: 'c14', t: 0 }),
    held('c31', { feature: 'f12', corner: 'c13', t: 0 }),
    held('c32', { feature: 'f12', corner: 'c16', t: 0 }),
    // 35 5/8 in from the end of the skirting.
    held('c33', { feature: 'f6', corner: 'c7', t: 35.625 / 166 }),
    // From here an arc takes the corner off the front, where the path comes by.
    corner('c34', -12.375, 62.5, { rise: 13.5 * INCH }),
  ),
};

/** A wheel broke the patio's corner off; the new concrete fills it. */
const patch: Feature = {
  id: 'f40',
  name: 'Broken corner',
  kind: 'patch',
  shape: closed(
    held('c41', { feature: 'f1', corner: 'c2', t: 0 }),
    held('c42', { feature: 'f1', corner: 'c2', t: 0.2 }),
    corner('c43', 201.5, 50.75),
    held('c44', { feature: 'f1', corner: 'c5', t: 0.75 }),
  ),
};

const post: Feature = {
  id: 'f50',
  name: 'Porch post',
  kind: 'block-out',
  shape: round(36.25, 40.5, 6),
};

const cleanOut: Feature = {
  id: 'f51',
  name: 'Clean-out',
  kind: 'block-out',
  shape: round(150.5, 66.75, 5),
};

/** From the clean-out to the street, 10 in down: nothing is driven here. */
const drainPipe: Feature = {
  id: 'f52',
  name: 'Drain pipe, 10 in down',
  kind: 'no-stake-zone',
  shape: closed(
    corner('c53', 146, -48),
    corner('c54', 162, -48),
    corner('c55', 158.5, 74.75),
    corner('c56', 142.5, 74.75),
  ),
};

/** Marked across the front by whoever was called before digging: no stake goes near it there. */
const feed: Feature = {
  id: 'f60',
  name: 'Feed to the house',
  kind: 'utility-line',
  service: 'electric',
  shape: open(corner('c61', 76, -48), corner('c62', 52, 121.25)),
};
