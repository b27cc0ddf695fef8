import type { Practices } from '../../job/job.ts';
import { FOOT, type Grid, INCH, METRE } from '../../units/grid.ts';
import type { Field, FieldKey, NoteKey } from './field.ts';

type Thickened = Exclude<keyof Practices['thickenedEdge'], 'use'>;

function thickened(key: FieldKey, part: Thickened, least: Grid, note: NoteKey): Field {
  return {
    kind: 'length',
    key,
    least,
    most: 4 * FOOT,
    note,
    shown: ({ thickenedEdge }) => thickenedEdge.use,
    get: ({ thickenedEdge }) => thickenedEdge[part],
    put: (practices, value) => ({
      ...practices,
      thickenedEdge: { ...practices.thickenedEdge, [part]: value },
    }),
  };
}

/** Whether the free edges are thickened, and by how much. */
export const THICKENED_FIELDS: readonly Field[] = [
  {
    kind: 'yes-no',
    key: 'thickenedUse',
    note: 'thickenedUse',
    get: ({ thickenedEdge }) => thickenedEdge.use,
    put: (practices, use) => ({
      ...practices,
      thickenedEdge: { ...practices.thickenedEdge, use },
    }),
  },
  thickened('thickenedDepth', 'depth', INCH, 'thickenedDepth'),
  thickened('thickenedWidth', 'width', INCH, 'thickenedWidth'),
  thickened('thickenedTaper', 'taper', 0, 'thickenedTaper'),
];

/** What lies under the slab, and its top edge. */
export const SECTION_FIELDS: readonly Field[] = [
  {
    kind: 'length',
    key: 'baseDepth',
    least: 0,
    most: METRE,
    note: 'baseDepth',
    get: ({ base }) => base.depth,
    put: (practices, depth) => ({ ...practices, base: { ...practices.base, depth } }),
  },
  {
    kind: 'yes-no',
    key: 'retarder',
    note: 'retarder',
    get: ({ base }) => base.retarder,
    put: (practices, retarder) => ({ ...practices, base: { ...practices.base, retarder } }),
  },
  {
    kind: 'length',
    key: 'edgeRadius',
    least: 0,
    most: 2 * INCH,
    note: 'edgeRadius',
    get: ({ edgeRadius }) => edgeRadius,
    put: (practices, edgeRadius) => ({ ...practices, edgeRadius }),
  },
];
