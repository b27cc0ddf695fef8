import type { JointsResult } from '../takeoff/result.ts';
import type { Mark } from './marks.ts';
import { edgePath, movedRight } from './paths.ts';

/** The strip is drawn this far inside the edge, mm of output, so that the line of the edge stays to be seen. */
const INSIDE_MM = 0.9;

/** Isolation strip along the edges that get one. */
export function drawStrip({ isolation }: JointsResult, gridPerMm: number): readonly Mark[] {
  return isolation.flatMap(({ edges }) =>
    edges.map(
      (edge): Mark => ({
        kind: 'line',
        layer: 'joints',
        style: 'strip',
        path: edgePath(movedRight(edge, -INSIDE_MM * gridPerMm)),
      }),
    ),
  );
}
