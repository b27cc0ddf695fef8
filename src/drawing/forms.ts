import type { Practices } from '../job/job.ts';
import { DRESSED } from '../takeoff/forms/rules.ts';
import type { FormsResult } from '../takeoff/result.ts';
import type { Mark } from './marks.ts';
import { bandPath, edgePath, movedRight } from './paths.ts';

/** Thinner than this on the output (mm), a board is drawn as a line beside the edge instead of to scale. */
const THIN_MM = 0.7;

/** Form boards at their thickness, outside the edges that they hold. */
export function drawForms(
  { runs }: FormsResult,
  { formBoard }: Practices,
  gridPerMm: number,
): readonly Mark[] {
  const { thickness } = DRESSED[formBoard];
  const thin = thickness < THIN_MM * gridPerMm;
  return runs.flatMap(({ edges }) =>
    edges.flatMap((edge): readonly Mark[] => {
      if (thin) {
        const path = edgePath(movedRight(edge, gridPerMm));
        return [{ kind: 'line', layer: 'forms', style: 'form', path }];
      }
      const path = bandPath(edge, thickness);
      return [
        { kind: 'area', layer: 'forms', material: 'lumber', paths: [path] },
        { kind: 'line', layer: 'forms', style: 'hairline', path },
      ];
    }),
  );
}
