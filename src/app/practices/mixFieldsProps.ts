import type { Practices, UnitStyle } from '../../job/job.ts';

export interface MixFieldsProps {
  readonly practices: Practices;
  readonly units: UnitStyle;
  readonly onPractices: (practices: Practices) => void;
}
