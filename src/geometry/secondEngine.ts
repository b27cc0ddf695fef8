import {
  Clipper,
  ClipType,
  FillRule,
  type Path64,
  type Paths64,
  type PolyPath64,
  PolyTree64,
} from 'clipper2-ts';
import type { LooseRing, LooseShape } from './engine.ts';

/**
 * The same difference by the second library, which works on whole numbers: what is kept inside a clip (its further
 * rings) is taken out of that clip first.
 */
export function bySecondEngine(
  subjects: readonly LooseShape[],
  clips: readonly LooseShape[],
): LooseShape[] {
  const cutters = clips.flatMap(([outer, ...kept]) => {
    const path = pathOf(outer!);
    if (kept.length === 0) return [path];
    return Clipper.difference([path], kept.map(pathOf), FillRule.NonZero);
  });
  const tree = new PolyTree64();
  const paths: Paths64 = subjects.map(([outer]) => pathOf(outer!));
  Clipper.booleanOpWithPolyTree(ClipType.Difference, paths, cutters, tree, FillRule.NonZero);
  const shapes: LooseShape[] = [];
  collect(tree, shapes);
  return shapes;
}

/** Every outer ring of the tree with the holes right inside it. */
function collect(node: PolyPath64, into: LooseShape[]): void {
  for (let i = 0; i < node.count; i++) {
    const outer = node.child(i);
    const shape: LooseRing[] = [ringOf(outer.poly)];
    for (let j = 0; j < outer.count; j++) {
      const hole = outer.child(j);
      shape.push(ringOf(hole.poly));
      collect(hole, into);
    }
    into.push(shape);
  }
}

function pathOf(ring: LooseRing): Path64 {
  const path = ring.map(([x, y]) => ({ x, y }));
  return Clipper.isPositive(path) ? path : path.reverse();
}

function ringOf(path: Path64 | null): LooseRing {
  return (path ?? []).map(({ x, y }) => [x, y]);
}
