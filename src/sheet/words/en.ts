import type { Note, Station, Working, WorkingInput } from '../../takeoff/figure.ts';
import type { CountUnit, TermKey } from '../../takeoff/keys.ts';
import type { EdgeKind } from '../../takeoff/outline/pour.ts';
import { boardCounts, boardTerms } from './boardsEn.ts';
import { cli } from './cliEn.ts';
import { csvEn } from './csvEn.ts';
import { columns, figures, formulas, inputs, tables } from './figuresEn.ts';
import { jointCounts, jointTerms } from './jointsEn.ts';
import { layoutEn } from './layout.ts';
import { layoutTerms } from './layoutTradeEn.ts';
import { measuresEn } from './measuresEn.ts';
import { mixCounts } from './mixEn.ts';
import { notes } from './notesEn.ts';
import { orderCounts, orderTerms } from './orderEn.ts';
import { placingCounts, placingTerms } from './placingEn.ts';
import { bounds, expected, problems } from './problemsEn.ts';
import { sources } from './sourcesEn.ts';
import { stakeTerms } from './stakesEn.ts';
import { steelCounts, steelTerms } from './steelEn.ts';

/** One and many of what is counted. */
const counts: Readonly<Record<CountUnit, { readonly one: string; readonly many: string }>> = {
  bag: { one: 'bag', many: 'bags' },
  batch: { one: 'batch', many: 'batches' },
  ...boardCounts,
  ...jointCounts,
  ...mixCounts,
  ...placingCounts,
  ...steelCounts,
  ...orderCounts,
  box: { one: 'box', many: 'boxes' },
  corner: { one: 'corner', many: 'corners' },
  kicker: { one: 'kicker', many: 'kickers' },
  nail: { one: 'nail', many: 'nails' },
  part: { one: 'part', many: 'parts' },
  piece: { one: 'piece', many: 'pieces' },
  row: { one: 'row', many: 'rows' },
  screw: { one: 'screw', many: 'screws' },
  sheet: { one: 'sheet', many: 'sheets' },
  sliver: { one: 'sliver', many: 'slivers' },
  spreader: { one: 'spreader', many: 'spreaders' },
  stake: { one: 'stake', many: 'stakes' },
  weight: { one: 'weight', many: 'weights' },
};

const terms: Readonly<Record<EdgeKind | TermKey, string>> = {
  free: 'Free edge',
  'existing-slab': 'Existing slab',
  wall: 'Wall, poured against',
  'wall-formed': 'Wall, formed',
  steps: 'Steps',
  'block-out': 'Block-out',
  straight: 'straight',
  curved: 'curved',
  ...boardTerms,
  ...jointTerms,
  ...layoutTerms,
  ...steelTerms,
  ...orderTerms,
  ...stakeTerms,
  ...placingTerms,
};

const stations: Readonly<Record<Station, string>> = {
  ground: 'Ground',
  forms: 'Forms',
  steel: 'Steel',
  joints: 'Joints',
  mix: 'Mix',
  order: 'Order',
};

const weights: Readonly<Record<Note['weight'], string>> = {
  stop: 'In the way',
  caution: 'Look before you build',
  assumption: 'Taken as so',
};

const rounding: Readonly<Record<Working['rounding'], string>> = {
  none: 'Only for show; lines are added up before it, so a last digit can differ by one',
  up: 'Rounded up to a whole one',
  'up-each': 'Each one rounded up, then added',
  nearest: 'To the nearest cubic millimetre',
  cent: 'Each line to the nearest cent, half a cent up; sums are exact',
};

const from: Readonly<Record<WorkingInput['from'], string>> = {
  sketch: 'from the sketch',
  practice: 'your practices',
  figure: 'figured above',
  published: 'published',
  'worked-out': 'worked out on the way',
  typed: 'typed for this job',
};

/**
 * What is said of a takeoff, on screen, on the sheet and on the command line. English defines the keys; another language
 * is one more object of this type.
 */
export const en = {
  figures,
  formulas,
  inputs,
  tables,
  columns,
  /** Whether a count takes the word for one; other languages draw the line elsewhere. */
  isOne: (count: number) => count === 1,
  counts,
  terms,
  stations,
  weights,
  rounding,
  from,
  sources,
  notes,
  problems,
  bounds,
  expected,
  /** A problem with its place in a file. */
  inPlace: '{where}: {says}',
  unknownProblem: 'This wasn’t taken ({code}). Nothing was changed.',
  areaByLength: { metric: '{number} mm²/m', other: '{number} in²/ft' },
  loads: {
    density: { metric: '{number} kg/m³', other: '{number} lb/ft³' },
    pressure: { metric: '{number} kPa', other: '{number} lb/ft²' },
    stress: { metric: '{number} MPa', other: '{number} psi' },
    steel: { metric: '{number} MPa', other: '{number} ksi' },
    lineLoad: { metric: '{number} N/m', other: '{number} lb/ft' },
  },
  measures: measuresEn,
  tube: { metric: '{number} mL', other: '{number} fl oz' },
  weightByArea: { metric: '{number} kg/m²', other: '{number} lb per 100 ft²' },
  working: {
    formula: 'Formula',
    rounding: 'Rounding',
    source: 'Source',
  },
  cli,
  csv: csvEn,
  /** The printed pages. */
  layout: layoutEn,
};
