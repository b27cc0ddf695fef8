import type { Practices } from '../../job/job.ts';
import { INCH } from '../../units/grid.ts';
import type { Field } from './field.ts';

type Waste = Practices['waste'];

const withWaste = (practices: Practices, part: Partial<Waste>): Practices => ({
  ...practices,
  waste: { ...practices.waste, ...part },
});
const byParts = ({ waste }: Practices) => waste.by === 'parts';
const byShare = ({ waste }: Practices) => waste.by === 'share';

/** How the allowance is made up, and each of its parts. */
export const WASTE_FIELDS: readonly Field[] = [
  {
    kind: 'choice',
    key: 'wasteBy',
    note: 'wasteBy',
    choices: ['parts', 'share'],
    get: ({ waste }) => waste.by,
    put: (practices, by) => withWaste(practices, { by: by === 'share' ? 'share' : 'parts' }),
  },
  {
    kind: 'share',
    key: 'wasteShare',
    least: 0,
    most: 1,
    note: 'waste',
    shown: byShare,
    get: ({ waste }) => waste.share,
    put: (practices, share) => withWaste(practices, { share }),
  },
  {
    kind: 'length',
    key: 'depthSpread',
    least: 0,
    most: 4 * INCH,
    note: 'depthSpread',
    shown: byParts,
    get: ({ waste }) => waste.depthSpread,
    put: (practices, depthSpread) => withWaste(practices, { depthSpread }),
  },
  {
    kind: 'measured',
    key: 'spreadTimes',
    unit: { metric: ['plain', 1], other: ['plain', 1] },
    least: 0,
    most: 5,
    note: 'spreadTimes',
    shown: byParts,
    get: ({ waste }) => waste.spreadTimes,
    put: (practices, spreadTimes) => withWaste(practices, { spreadTimes }),
  },
  {
    kind: 'share',
    key: 'spillage',
    least: 0,
    most: 1,
    note: 'spillage',
    shown: byParts,
    get: ({ waste }) => waste.spillage,
    put: (practices, spillage) => withWaste(practices, { spillage }),
  },
  {
    kind: 'count',
    key: 'minimumBags',
    least: 0,
    most: 1000,
    note: 'minimumBags',
    get: ({ waste }) => waste.minimumBags,
    put: (practices, minimumBags) => withWaste(practices, { minimumBags }),
  },
];
