import type { Point } from '../../src/geometry/point.ts';
import type { JointProblem } from '../../src/takeoff/joints/layout.ts';
import { FOOT, SIXTEENTH } from '../../src/units/grid.ts';
import { chance } from './chance.ts';

/** A small slab of straight edges, with an inside corner or two and now and then a block-out. */
export function smallJoints(seed: number): JointProblem {
  const draw = chance(seed);
  const at = (x: number, y: number): Point => ({
    x: Math.round((x * FOOT) / 2),
    y: Math.round((y * FOOT) / 2),
  });
  const [w, h] = [draw.whole(10, 28), draw.whole(10, 20)];
  const [x, y] = [draw.whole(4, w - 4), draw.whole(4, h - 4)];
  const ell = [at(0, 0), at(w, 0), at(w, y), at(x, y), at(x, h), at(0, h)];
  const skewed = [at(0, 0), at(w, draw.between(-2, 2)), at(w, h), at(0, h + draw.between(-2, 2))];
  const outer = draw.likely(0.7) ? ell : skewed;
  const [px, py] = [x / 2, y / 2];
  const post = [at(px, py), at(px, py + 1), at(px + 1, py + 1), at(px + 1, py)];
  const spot = { feature: 'p', middle: at(px + 0.5, py + 0.5), corners: post, ring: post };
  const posted = draw.likely(0.3);
  return {
    polygon: { outer, holes: posted ? [post] : [] },
    insideCorners: outer === ell ? [at(x, y)] : [],
    blockOuts: posted ? [spot] : [],
    oldJoints: draw.likely(0.2) ? [at(w / 2, 0)].filter(() => outer === ell) : [],
    fixed: [],
    rules: {
      most: draw.oneOf([8, 10, 12]) * FOOT,
      ratio: draw.oneOf([1.5, 1.5, 1.1]),
      least: 2 * FOOT,
      angle: 60,
    },
    closeness: SIXTEENTH,
  };
}
