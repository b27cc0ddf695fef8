import type { Path, Segment } from '../../drawing/marks.ts';
import type { Rect, SheetPart } from '../page.ts';
import type { Spot, Step } from './pen.ts';

export type ToPage = (point: { readonly x: number; readonly y: number }) => Spot;

export function toPage({ from, at, gridPerMm }: SheetPart): ToPage {
  return ({ x, y }) => ({
    x: at.x + (x - from.x) / gridPerMm,
    y: at.y - (y - from.y) / gridPerMm,
  });
}

export function pathSteps({ start, segments, closed }: Path, page: ToPage): readonly Step[] {
  const steps: Step[] = [{ go: 'move', to: page(start) }];
  let from = start;
  for (const { to, arc } of segments) {
    if (arc) steps.push(...arcSteps(from, arc, page));
    else steps.push({ go: 'line', to: page(to) });
    from = to;
  }
  if (closed) steps.push({ go: 'close' });
  return steps;
}

/** An arc as cubic curves of at most an eighth of a turn each: off by less than 1 part in 200,000 of the radius. */
function arcSteps(
  from: { readonly x: number; readonly y: number },
  { cx, cy, radius, sweep }: NonNullable<Segment['arc']>,
  page: ToPage,
): readonly Step[] {
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / (Math.PI / 4) - 1e-9));
  const part = sweep / count;
  const reach = (4 / 3) * Math.tan(part / 4) * radius;
  const begin = Math.atan2(from.y - cy, from.x - cx);
  const on = (angle: number, ahead: number) =>
    page({
      x: cx + radius * Math.cos(angle) - ahead * Math.sin(angle),
      y: cy + radius * Math.sin(angle) + ahead * Math.cos(angle),
    });
  return Array.from({ length: count }, (_, i) => {
    const [a, b] = [begin + i * part, begin + (i + 1) * part];
    return { go: 'curve', one: on(a, reach), two: on(b, -reach), to: on(b, 0) };
  });
}

export function lineSteps(a: Spot, b: Spot): readonly Step[] {
  return [
    { go: 'move', to: a },
    { go: 'line', to: b },
  ];
}

export function polygonSteps([first, ...rest]: readonly Spot[]): readonly Step[] {
  return [
    { go: 'move', to: first! },
    ...rest.map((to): Step => ({ go: 'line', to })),
    { go: 'close' },
  ];
}

export function rectSteps({ x, y, width, height }: Rect): readonly Step[] {
  return polygonSteps([
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ]);
}

/** The upright rectangle round steps (round the handles of curves too: a little more than the curve). */
export function boxOfSteps(steps: readonly Step[]): Rect {
  const spots = steps.flatMap((step) => {
    switch (step.go) {
      case 'move':
      case 'line':
        return [step.to];
      case 'curve':
        return [step.one, step.two, step.to];
      case 'close':
        return [];
      default:
        return step satisfies never;
    }
  });
  const xs = spots.map(({ x }) => x);
  const ys = spots.map(({ y }) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
