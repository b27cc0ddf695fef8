import type { JointUse } from '../job/job.ts';
import type { SketchWords } from './words/en.ts';

interface JointChoiceProps {
  readonly words: SketchWords;
  readonly label: string;
  readonly joint: JointUse;
  readonly onJoint: (joint: JointUse) => void;
}

const USES: readonly JointUse[] = ['control', 'construction', 'existing'];

/** What a joint is for. */
export function JointChoice({ words, label, joint, onJoint }: JointChoiceProps) {
  return (
    <label className="typed">
      <span>{label}</span>
      <select
        value={joint}
        onChange={(event) => onJoint(USES.find((one) => one === event.target.value) ?? joint)}
      >
        {USES.map((one) => (
          <option key={one} value={one}>
            {words.drawing.joints[one].name}
          </option>
        ))}
      </select>
    </label>
  );
}
