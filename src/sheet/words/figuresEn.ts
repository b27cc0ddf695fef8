import type { ColumnKey, FigureKey, InputKey, TableKey } from '../../takeoff/keys.ts';
import { boardColumns, boardFigures, boardFormulas, boardInputs, boardTables } from './boardsEn.ts';
import { jointColumns, jointFigures, jointFormulas, jointInputs, jointTables } from './jointsEn.ts';
import {
  layoutColumns,
  layoutFigures,
  layoutFormulas,
  layoutInputs,
  layoutTables,
} from './layoutTradeEn.ts';
import { mixColumns, mixFigureNames, mixFormulas, mixInputs, mixTables } from './mixEn.ts';
import { orderColumns, orderTables } from './orderEn.ts';
import { orderFigures, orderFormulas, orderInputs } from './orderFiguresEn.ts';
import {
  placingColumns,
  placingFigures,
  placingFormulas,
  placingInputs,
  placingTables,
} from './placingEn.ts';
import { stakeColumns, stakeFigures, stakeFormulas, stakeInputs, stakeTables } from './stakesEn.ts';
import { steelColumns, steelFigures, steelFormulas, steelInputs, steelTables } from './steelEn.ts';
import { thickenedFigures, thickenedFormulas, thickenedInputs } from './thickenedEn.ts';
import { weatherFigures, weatherFormulas, weatherInputs } from './weatherEn.ts';

/** Names of figures as they stand on a ticket. */
export const figures: Readonly<Record<FigureKey, string>> = {
  'net-area': 'Net area',
  'gross-area': 'Area before cut-outs',
  'cut-out-area': 'Cut out',
  perimeter: 'Perimeter, holes included',
  'edge-free': 'Free edge',
  'edge-existing-slab': 'Edge against existing slab',
  'edge-wall': 'Edge poured against a wall',
  'edge-wall-formed': 'Edge formed along a wall',
  'edge-steps': 'Edge against steps',
  'edge-block-out': 'Edge round block-outs',
  'edge-patch': 'Of these, edges of patches',
  'form-depth': 'Depth the form gives',
  'form-length': 'Form, inside face',
  thickness: 'Thickness used',
  'net-volume': 'Net volume',
  'form-depth-volume': 'If the form sets the depth',
  allowance: 'Allowance in all',
  needed: 'Net and allowance',
  'bag-rounding': 'Rounding to bags in the blend’s parts',
  made: 'Concrete these bags make',
  bags: 'Bags',
  'bag-weight': 'Bags, weight',
  batches: 'Batches',
  'last-batch': 'In the last batch',
  ...boardFigures,
  ...jointFigures,
  ...layoutFigures,
  ...mixFigureNames,
  ...steelFigures,
  ...orderFigures,
  ...stakeFigures,
  ...thickenedFigures,
  ...weatherFigures,
  ...placingFigures,
};

/** How each figure is reached, in words. */
export const formulas: Readonly<Record<FigureKey, string>> = {
  'net-area':
    'Area by coordinates of what is left of the pads and patches once existing slabs, buildings, steps and block-outs are cut out; curved edges counted as curves.',
  'gross-area': 'Area by coordinates of pads and patches together, overlaps once, before cut-outs.',
  'cut-out-area': 'Area before cut-outs, less the net area.',
  perimeter: 'All edges of the pour added up, those of holes too.',
  'edge-free': 'Edges that meet nothing, added up. They need a form.',
  'edge-existing-slab': 'Edges that lie against an existing slab, added up. No form.',
  'edge-wall': 'Edges that lie against a wall that can be poured against, added up. No form.',
  'edge-wall-formed':
    'Edges along a wall that can’t be poured against, added up. They need a form that stakes can’t hold from outside.',
  'edge-steps': 'Edges against steps that stay, added up. No form.',
  'edge-block-out': 'Edges round posts, pipes and openings, added up.',
  'edge-patch': 'Edges where the new concrete fills a patch. They are counted above already.',
  'form-depth': 'Dressed depth of the board, plus the gap left under it.',
  'form-length': 'Form runs added up, measured on the face that the concrete touches.',
  thickness: 'As set in the practices, or the mean of the ground readings where the job says so.',
  'net-volume': 'Net area times thickness, and the thickened edge if there is one. Nothing added.',
  'form-depth-volume':
    'Net area times the depth that the form gives; a thickened edge goes as deep from the finish down as before.',
  allowance: 'The parts added up, or a count of bags where that is more.',
  needed: 'Net volume and allowance together.',
  'bag-rounding':
    'What the fewest whole (or half) bags in the blend’s parts make, less what is needed.',
  made: 'Bags of each mix times what one makes.',
  bags: 'The bags that are opened: the fewest that make what is needed, split as near to the parts as bags allow, a last batch filled up, half bags opened whole.',
  'bag-weight': 'Bags of each mix times the weight of one.',
  batches:
    'Bags divided by the bags that one batch holds, rounded up. Each batch holds the parts in proportion.',
  'last-batch': 'Bags that are left after the full batches.',
  ...boardFormulas,
  ...jointFormulas,
  ...layoutFormulas,
  ...mixFormulas,
  ...steelFormulas,
  ...orderFormulas,
  ...stakeFormulas,
  ...thickenedFormulas,
  ...weatherFormulas,
  ...placingFormulas,
};

/** Inputs of workings that are no figures themselves. */
export const inputs: Readonly<Record<InputKey, string>> = {
  'board-depth': 'Dressed depth of the board',
  'gap-under-form': 'Gap under the form',
  'form-corners': 'Places where two runs meet',
  'waste-share': 'Share of the net',
  'waste-bags': 'Bags at least',
  'bag-yield': 'One bag makes',
  'batch-size': 'The mixer holds',
  'close-enough': 'Close enough',
  ...boardInputs,
  ...jointInputs,
  ...layoutInputs,
  ...mixInputs,
  ...steelInputs,
  ...orderInputs,
  ...stakeInputs,
  ...thickenedInputs,
  ...weatherInputs,
  ...placingInputs,
};

export const tables: Readonly<Record<TableKey, string>> = {
  runs: 'Form runs',
  'bags-by-mix': 'Bags by mix',
  ...boardTables,
  ...jointTables,
  ...layoutTables,
  ...mixTables,
  ...steelTables,
  ...orderTables,
  ...stakeTables,
  ...placingTables,
};

export const columns: Readonly<Record<ColumnKey, string>> = {
  mark: 'Mark',
  meets: 'Along',
  length: 'Length',
  width: 'Width',
  shape: 'Shape',
  stakes: 'Stakes',
  held: 'Held otherwise',
  gap: 'Apart',
  row: 'Row',
  mix: 'Mix',
  parts: 'Parts',
  bags: 'Bags',
  weight: 'Weight',
  ...boardColumns,
  ...jointColumns,
  ...layoutColumns,
  ...mixColumns,
  ...steelColumns,
  ...orderColumns,
  ...stakeColumns,
  ...placingColumns,
};
