import type { Practices } from '../../job/job.ts';
import type { Figure } from '../figure.ts';
import { DRESSED } from '../forms/rules.ts';
import { density, length, lineLoad, number, pressure, tapeLength, term } from '../quantity.ts';
import { pushOf, type SpacingLimits } from './bending.ts';

/** The widest gap on straight runs, and which of practice and the board's strength sets it. */
export function spacingFigure(practices: Practices, limits: SpacingLimits): Figure {
  const { formBoard, bending } = practices;
  const { thickness, depth } = DRESSED[formBoard];
  const { pressure: atBottom, thrust } = pushOf(formBoard, bending.freshWeight);
  return {
    key: 'stake-spacing-used',
    value: length(limits.spacing),
    working: () => ({
      of: 'stake-spacing-used',
      formula:
        's = min(s₀, √(10 · F · S ÷ q), ⁴√(145 · δ · E · I ÷ q), ³√(145 · r · E · I ÷ q)); q = w · d² ÷ 2, I = d · t³ ÷ 12, S = d · t² ÷ 6',
      inputs: [
        { key: 'board-depth', value: length(depth), from: 'published' },
        { key: 'board-thickness', value: length(thickness), from: 'published' },
        { key: 'fresh-weight', value: density(bending.freshWeight), from: 'practice' },
        { key: 'form-pressure', value: pressure(atBottom), from: 'worked-out' },
        { key: 'form-thrust', value: lineLoad(thrust), from: 'worked-out' },
        { key: 'elasticity', value: pressure(bending.elasticity, 'wood'), from: 'practice' },
        { key: 'bending-stress', value: pressure(bending.stress, 'wood'), from: 'practice' },
        { key: 'deflection-most', value: tapeLength(bending.deflection, 64), from: 'practice' },
        { key: 'deflection-share', value: number(1 / bending.deflectionShare), from: 'practice' },
        { key: 'stake-spacing', value: length(limits.practice), from: 'practice' },
        { key: 'spacing-by-bending', value: length(limits.bending), from: 'worked-out' },
        { key: 'spacing-by-deflection', value: length(limits.deflection), from: 'worked-out' },
        { key: 'spacing-by-share', value: length(limits.share), from: 'worked-out' },
        {
          key: 'spacing-governed-by',
          value: term(`by-${limits.governs}`),
          from: 'worked-out',
        },
      ],
      rounding: 'none',
      source: [
        'stake-spacing-article',
        'ps-20-lumber-sizes',
        'form-board-statics',
        'common-practice',
        'user',
      ],
    }),
  };
}
