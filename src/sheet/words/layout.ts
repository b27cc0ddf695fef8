import { formsSheetEn } from './formsSheetEn.ts';
import { orderSheetEn, proposalEn } from './orderSheetEn.ts';
import { pourSheetEn } from './pourSheetEn.ts';
import { sectionsSheetEn } from './sectionsSheetEn.ts';
import { steelSheetEn } from './steelSheetEn.ts';

/** Words of the printed sheet. */
export const layoutEn = {
  sheet: 'Crew sheet',
  layout: 'Layout',
  lists: 'Lists',
  page: (page: number, of: number) => `Page ${page} of ${of}`,
  noName: 'Job without a name',
  scale: 'Scale',
  revision: 'Revision',
  date: 'Date',
  drawnBy: 'Drawn by',
  replaces: (revision: string) => `replaces ${revision}`,
  north: 'N',
  heightsNotSet: 'Heights not set: no fall is drawn.',
  heightsNotSetWhy:
    'Heights are not set in this job: no falls, grades or depths by corner stand on this sheet. The top is taken as one plane; set its fall on site.',
  asBuilt: 'As built',
  asBuiltIntro:
    'Every size on the plan, with room for what was measured. A letter in front stands for it on the plan.',
  asBuiltHeads: { what: 'Size', between: 'Between', drawn: 'On the plan' },
  onePage: 'One page',
  keyFigures: 'Figures, what to buy',
  moreTaken: (count: number) =>
    `What was taken as so (${count}) stands on the whole sheet: read it before you build.`,
  units: {
    'feet-inches': 'Feet and inches, to 1/16 in',
    'decimal-feet': 'Decimal feet',
    metric: 'Millimetres and metres as marked',
  },
  sizes: 'Sizes are to the inside face of the form.',
  figuresRule: 'Figures rule: do not scale.',
  sketchOnly: 'Sketch: a size without room is left out. Build from the crew sheet.',
  edges: 'Edges of the pour',
  edgeKinds: {
    free: 'Free edge: form',
    'existing-slab': 'Against existing slab',
    wall: 'Against a wall',
    'wall-formed': 'Along a wall, formed',
    steps: 'Against steps',
    'block-out': 'Block-out',
  },
  strip: 'Isolation strip',
  ground: 'Ground',
  materials: {
    'fresh-concrete': 'New concrete',
    'old-concrete': 'Existing slab',
    building: 'Building',
    steps: 'Steps',
    patch: 'Patch, poured too',
    'no-stake': 'No stakes here',
  },
  buried: 'Buried lines',
  withinTolerance: (length: string) => `No stakes within ${length}`,
  key: 'Sizes by letter',
  keyMore: (more: number) => `${more} more on the next pages`,
  keyWhat: {
    edge: 'Edge',
    overall: 'Overall',
    bay: 'Across',
    arc: 'Arc',
    diagonal: 'Diagonal',
    angle: 'Angle',
    'block-out': 'Block-out',
    name: '',
    corner: 'Corner',
    board: 'Board',
    run: 'Run',
    'mesh-piece': 'Piece',
    bars: 'Bars',
    seam: 'Dowels',
  },
  keyPlace: (x: string, y: string) => `at ${x} across, ${y} up`,
  keyDatum: 'Places are from the first corner of the pad: across to the right, then up the page.',
  checkBar: '2 in (50.8 mm) on a true print',
  withheld: 'No figures: this sketch can’t be poured as it stands.',
  withheldWhy: 'What to mend is on the next page, under “In the way”.',
  noScale: (scale: string) => `${scale} takes too many pages of this paper; drawn smaller.`,
  /** A plan over several pages. */
  part: (part: number, of: number) => `part ${part} of ${of}`,
  matchLine: (letters: string, part: number) => `Match line ${letters}: part ${part}`,
  matchShort: (letters: string, part: number) => `${letters}: part ${part}`,
  keyPlan: 'Parts of this plan',
  overlap: (paper: string, ground: string) =>
    `Parts overlap by ${paper} on paper, ${ground} on the ground. Lay match lines of the same letters on each other.`,
  notToScale: 'Larger than any scale on this paper: the plan is cut off at its frame.',
  nothing: 'Nothing is drawn yet.',
  materialList: 'Material list',
  howItGoes: 'How it will go',
  practices: 'Figured with',
  roles: {
    net: 'net',
    allowance: 'added',
    rounding: 'rounding',
    order: '',
  },
  setOut: 'Squaring and layout',
  setOutLetters:
    'Corners are lettered in boxes on the plan. Tape corner to corner, on the inside face of the form.',
  setOutFrom: (feature: string, zero: string, end: string) =>
    `Baseline: ${feature}. Zero is its corner ${zero}; along toward its corner ${end}, then square out.`,
  setOutMark: (mark: string, feature: string, letter: string) =>
    `${mark}: ${feature}, its corner ${letter}.`,
  measured: 'Measured',
  notes: 'Notes for the crew',
  code: {
    title: 'Open this job on a phone',
    says: 'Point the camera here. A copy of the job opens as it was when this was printed; nothing of it is kept on a server.',
    correction: {
      M: 'QR code, error correction M: about 15 % of it may be lost.',
      L: 'QR code, error correction L: about 7 % of it may be lost. Keep it flat and clean.',
    },
    none: {
      'too-large': 'This job is too large for a code. Hand it over as a job file.',
      failed: 'The code could not be made this time. Hand the job over as a job file.',
      'no-address':
        'No code: the page was open at an address that no other device can reach. Hand the job over as a job file.',
    },
  },
  forms: formsSheetEn,
  pour: pourSheetEn,
  steel: steelSheetEn,
  sections: sectionsSheetEn,
  order: orderSheetEn,
  proposal: proposalEn,
  lettersMissing: 'A letter that this sheet’s typeface lacks is printed as “?”.',
};

export type LayoutWords = typeof layoutEn;
