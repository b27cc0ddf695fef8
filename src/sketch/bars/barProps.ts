import type { UnitStyle } from '../../job/job.ts';
import type { Problem } from '../../units/result.ts';
import type { SketchWords } from '../words/en.ts';

/** What every bar under the sketch needs. */
export interface BarProps {
  readonly words: SketchWords;
  readonly units: UnitStyle;
  readonly sayProblem: (problem: Problem) => string;
}
