import type { Rect } from '../page.ts';
import type { Step } from './pen.ts';
import { lineSteps, polygonSteps } from './steps.ts';

/** Hatches of what is cut across, after the drafting convention for each material; steps within a box, mm. */
export type CutPattern = 'concrete' | 'earth' | 'stone' | 'ends' | 'fine-cross';

const CONCRETE_APART = 2.6;
const EARTH_APART = 3.4;
const STONE_APART = 2;
const FINE_APART = 0.8;

export function cutHatch(box: Rect, pattern: CutPattern): readonly Step[] {
  switch (pattern) {
    case 'concrete':
      return cells(box, CONCRETE_APART, concreteIn);
    case 'earth':
      return cells(box, EARTH_APART, earthIn);
    case 'stone':
      return cells(box, STONE_APART, stoneIn);
    case 'ends':
      return ends(box);
    case 'fine-cross':
      return fineCross(box);
    default:
      return pattern satisfies never;
  }
}

/** One cell after the other on one lattice for the whole page, in a loose order that is always the same. */
function cells(
  { x, y, width, height }: Rect,
  apart: number,
  draw: (x: number, y: number, odd: number) => readonly Step[],
): readonly Step[] {
  const steps: Step[] = [];
  for (let row = Math.floor(y / apart); row * apart < y + height; row++) {
    for (let column = Math.floor(x / apart); column * apart < x + width; column++) {
      const odd = (((column * 7 + row * 13 + column * row * 3) % 11) + 11) % 11;
      steps.push(...draw(column * apart, row * apart, odd));
    }
  }
  return steps;
}

/** Concrete: sand as dots, stone as small triangles. */
function concreteIn(x: number, y: number, odd: number): readonly Step[] {
  const a = { x: x + 0.3 + (odd % 4) * 0.4, y: y + 0.4 + ((odd * 5) % 7) * 0.25 };
  const dot = lineSteps(a, { x: a.x + 0.16, y: a.y });
  if (odd % 3 !== 0) return dot;
  const b = { x: x + 1.3 + (odd % 2) * 0.3, y: y + 1.2 };
  const size = 0.55 + (odd % 5) * 0.06;
  const flip = odd % 2 === 0 ? 1 : -1;
  return [
    ...dot,
    ...polygonSteps([
      b,
      { x: b.x + size, y: b.y + 0.1 * flip },
      { x: b.x + size * 0.4, y: b.y - size * 0.8 * flip },
    ]),
  ];
}

/** Earth: three short strokes one way, then three the other. */
function earthIn(x: number, y: number, _: number): readonly Step[] {
  const column = Math.round(x / EARTH_APART);
  const row = Math.round(y / EARTH_APART);
  const way = (column + row) % 2 === 0 ? 1 : -1;
  return [0, 1, 2].flatMap((i) => {
    const at = i * 0.75;
    const [left, right] = [x + 0.3 + at * 0.5, x + 1.6 + at * 0.5];
    const [low, high] = [y + 1.9 + at * 0.5 * way, y + 0.6 + at * 0.5 * way];
    return way > 0
      ? lineSteps({ x: left, y: low }, { x: right, y: high })
      : lineSteps({ x: left, y: high }, { x: right, y: low });
  });
}

/** Broken stone: small six-sided rounds. */
function stoneIn(x: number, y: number, odd: number): readonly Step[] {
  const radius = 0.5 + (odd % 4) * 0.09;
  const [cx, cy] = [x + 0.8 + (odd % 3) * 0.15, y + 0.8 + (odd % 2) * 0.25];
  return polygonSteps(
    Array.from({ length: 6 }, (_, i) => ({
      x: cx + radius * Math.cos((i * Math.PI) / 3 + odd),
      y: cy + radius * 0.75 * Math.sin((i * Math.PI) / 3 + odd),
    })),
  );
}

/** Lumber on edge, cut across: a line from corner to corner each way. */
function ends({ x, y, width, height }: Rect): readonly Step[] {
  return [
    ...lineSteps({ x, y }, { x: x + width, y: y + height }),
    ...lineSteps({ x, y: y + height }, { x: x + width, y }),
  ];
}

function fineCross({ x, y, width, height }: Rect): readonly Step[] {
  const steps: Step[] = [];
  for (let c = -height; c < width; c += FINE_APART) {
    steps.push(...lineSteps({ x: x + c, y }, { x: x + c + height, y: y + height }));
    steps.push(...lineSteps({ x: x + c, y: y + height }, { x: x + c + height, y }));
  }
  return steps;
}
