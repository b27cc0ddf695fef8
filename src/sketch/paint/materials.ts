import type { Material } from '../../drawing/marks.ts';
import type { Colour, Palette } from './palette.ts';

interface Fill {
  readonly ground: Colour | null;
  /** A hatch over it, so that materials are told apart without their colour. */
  readonly hatch: {
    readonly colour: Colour;
    readonly pattern: 'falling' | 'cross' | 'specks';
  } | null;
}

const FILLS: Readonly<Record<Material, Fill>> = {
  'fresh-concrete': { ground: 'fresh', hatch: null },
  'old-concrete': { ground: 'old', hatch: { colour: 'ink-soft', pattern: 'specks' } },
  building: { ground: 'paper', hatch: { colour: 'soil', pattern: 'falling' } },
  steps: { ground: 'old', hatch: null },
  'block-out': { ground: 'paper', hatch: null },
  patch: { ground: 'fresh', hatch: { colour: 'chalk', pattern: 'specks' } },
  soil: { ground: null, hatch: { colour: 'soil', pattern: 'specks' } },
  'no-stake': { ground: null, hatch: { colour: 'stop', pattern: 'cross' } },
  tolerance: { ground: 'tolerance', hatch: null },
  lumber: { ground: 'lumber', hatch: null },
  // Of sections, which stand on paper alone.
  'cut-concrete': { ground: 'fresh', hatch: null },
  'cut-lumber': { ground: 'lumber', hatch: null },
  earth: { ground: null, hatch: { colour: 'soil', pattern: 'specks' } },
  stone: { ground: 'paper', hatch: { colour: 'ink-soft', pattern: 'specks' } },
  steel: { ground: 'ink-soft', hatch: null },
  filler: { ground: 'paper', hatch: { colour: 'ink-soft', pattern: 'cross' } },
  sealant: { ground: 'ink-soft', hatch: null },
  paper: { ground: 'paper', hatch: null },
  ink: { ground: 'ink', hatch: null },
};

/** Fills the current path with a material. */
export function fillWith(
  context: CanvasRenderingContext2D,
  material: Material,
  palette: Palette,
): void {
  const { ground, hatch } = FILLS[material];
  if (ground) {
    context.fillStyle = palette[ground];
    context.fill('evenodd');
  }
  if (!hatch) return;
  const pattern = hatchOf(context, hatch.pattern, palette[hatch.colour]);
  if (!pattern) return;
  context.fillStyle = pattern;
  context.fill('evenodd');
}

const TILE = 12;
/** One tile for a pattern and colour: they are few, and the same from frame to frame. */
const tiles = new Map<string, CanvasPattern | null>();

function hatchOf(
  context: CanvasRenderingContext2D,
  pattern: 'falling' | 'cross' | 'specks',
  colour: string,
): CanvasPattern | null {
  const key = `${pattern} ${colour}`;
  const known = tiles.get(key);
  if (known !== undefined) return known;
  const made = makeTile(context, pattern, colour);
  tiles.set(key, made);
  return made;
}

function makeTile(
  context: CanvasRenderingContext2D,
  pattern: 'falling' | 'cross' | 'specks',
  colour: string,
): CanvasPattern | null {
  const tile = document.createElement('canvas');
  tile.width = TILE;
  tile.height = TILE;
  const pen = tile.getContext('2d');
  if (!pen) return null;
  pen.strokeStyle = colour;
  pen.fillStyle = colour;
  pen.globalAlpha = 0.55;
  pen.lineWidth = 1;
  pen.beginPath();
  switch (pattern) {
    case 'cross':
      pen.moveTo(0, 0);
      pen.lineTo(TILE, TILE);
      pen.moveTo(0, TILE);
      pen.lineTo(TILE, 0);
      pen.stroke();
      break;
    case 'falling':
      pen.moveTo(0, TILE);
      pen.lineTo(TILE, 0);
      pen.moveTo(-1, 1);
      pen.lineTo(1, -1);
      pen.moveTo(TILE - 1, TILE + 1);
      pen.lineTo(TILE + 1, TILE - 1);
      pen.stroke();
      break;
    case 'specks':
      pen.fillRect(2, 3, 1.4, 1.4);
      pen.fillRect(8, 1, 1, 1);
      pen.fillRect(6, 8, 1.4, 1.4);
      pen.fillRect(10, 10, 1, 1);
      break;
  }
  return context.createPattern(tile, 'repeat');
}
