import type { Material } from '../../drawing/marks.ts';
import type { Rect } from '../page.ts';
import { type CutPattern, cutHatch } from './cutHatches.ts';
import type { Pen, Step, Stroke } from './pen.ts';
import { boxOfSteps, lineSteps } from './steps.ts';
import { INK, PAPER } from './strokes.ts';

type LinePattern = 'falling' | 'rising' | 'cross' | 'wide-falling';
type Pattern = LinePattern | 'specks' | CutPattern;

/** Pale grounds of the materials' own colours; what they mean is said by line and hatch too. */
const FILLS: Readonly<
  Record<Material, { readonly ground: string | null; readonly hatch: Pattern | null }>
> = {
  'fresh-concrete': { ground: '#eef3f1', hatch: null },
  'old-concrete': { ground: '#f1efe9', hatch: 'specks' },
  building: { ground: '#f4eee6', hatch: 'falling' },
  steps: { ground: '#f3f1ec', hatch: null },
  'block-out': { ground: PAPER, hatch: null },
  patch: { ground: '#e6efec', hatch: 'wide-falling' },
  soil: { ground: null, hatch: 'specks' },
  'no-stake': { ground: null, hatch: 'cross' },
  tolerance: { ground: '#ececec', hatch: null },
  lumber: { ground: '#f0dfb8', hatch: null },
  'cut-concrete': { ground: '#eef3f1', hatch: 'concrete' },
  'cut-lumber': { ground: '#f0dfb8', hatch: 'ends' },
  earth: { ground: PAPER, hatch: 'earth' },
  stone: { ground: PAPER, hatch: 'stone' },
  steel: { ground: INK, hatch: null },
  filler: { ground: PAPER, hatch: 'fine-cross' },
  sealant: { ground: '#3a3d3f', hatch: null },
  paper: { ground: PAPER, hatch: null },
  ink: { ground: INK, hatch: null },
};

const HATCH: Stroke = { width: 0.14, dash: [], colour: INK };
/** Distance between hatch lines, mm. */
const APART: Readonly<Record<LinePattern, number>> = {
  falling: 2,
  rising: 2,
  cross: 4,
  'wide-falling': 3.2,
};
const SPECKS_APART = 4.6;

/** Fills a path with a material; the hatch only where it can be seen. */
export function fillWith(pen: Pen, steps: readonly Step[], material: Material, seen: Rect): void {
  const { ground, hatch } = FILLS[material];
  if (ground) pen.fill(steps, ground);
  if (!hatch) return;
  const box = overlap(boxOfSteps(steps), seen);
  if (!box) return;
  const lines = linesOf(box, hatch);
  if (lines.length > 0) pen.within(steps, () => pen.stroke(lines, HATCH));
}

function linesOf(box: Rect, hatch: Pattern): readonly Step[] {
  switch (hatch) {
    case 'specks':
      return specks(box);
    case 'falling':
    case 'rising':
    case 'cross':
    case 'wide-falling':
      return hatchLines(box, hatch);
    default:
      return cutHatch(box, hatch);
  }
}

function overlap(a: Rect, b: Rect): Rect | undefined {
  const x = Math.max(a.x, b.x);
  const y = Math.max(a.y, b.y);
  const width = Math.min(a.x + a.width, b.x + b.width) - x;
  const height = Math.min(a.y + a.height, b.y + b.height) - y;
  return width > 0 && height > 0 ? { x, y, width, height } : undefined;
}

/** Lines at 45° over a box, on one lattice for the whole page, so that neighbours of one material join up. */
function hatchLines(box: Rect, pattern: LinePattern): readonly Step[] {
  const apart = APART[pattern] * Math.SQRT2;
  const { x, y, width, height } = box;
  const steps: Step[] = [];
  if (pattern !== 'falling' && pattern !== 'wide-falling') {
    // x + y = c, rising to the right.
    for (let c = Math.ceil((x + y) / apart) * apart; c < x + y + width + height; c += apart) {
      const left = Math.max(x, c - y - height);
      const right = Math.min(x + width, c - y);
      steps.push(...lineSteps({ x: left, y: c - left }, { x: right, y: c - right }));
    }
  }
  if (pattern !== 'rising') {
    for (let c = Math.ceil((y - x - width) / apart) * apart; c < y + height - x; c += apart) {
      const left = Math.max(x, y - c);
      const right = Math.min(x + width, y + height - c);
      steps.push(...lineSteps({ x: left, y: c + left }, { x: right, y: c + right }));
    }
  }
  return steps;
}

/** Short strokes in a loose order, the same on every page. */
function specks({ x, y, width, height }: Rect): readonly Step[] {
  const steps: Step[] = [];
  const apart = SPECKS_APART;
  for (let row = Math.floor(y / apart); row * apart < y + height; row++) {
    for (let column = Math.floor(x / apart); column * apart < x + width; column++) {
      const odd = (column * 7 + row * 13) % 5;
      const at = {
        x: (column + 0.2 + odd * 0.15) * apart,
        y: (row + 0.15 + ((odd * 2) % 5) * 0.16) * apart,
      };
      steps.push(...lineSteps(at, { x: at.x + 0.45, y: at.y + (odd % 2 === 0 ? 0.3 : -0.3) }));
    }
  }
  return steps;
}
