import { apply, type Command } from '../../job/commands.ts';
import type { Job } from '../../job/job.ts';
import { formatLength, parseLength } from '../../units/length.ts';
import type { Problem } from '../../units/result.ts';
import { type SiteStake, stretchFor } from '../formLine.ts';
import { pinAt } from '../stakeCommands.ts';
import { lengthKeyboard } from '../typed/lengthKeyboard.ts';
import type { SketchWords } from '../words/en.ts';
import { EditCell } from './EditCell.tsx';

interface StakeCellProps {
  readonly job: Job;
  readonly words: SketchWords;
  readonly sayProblem: (problem: Problem) => string;
  readonly stake: SiteStake;
  /** The end of the run that it is measured from. */
  readonly from: 'start' | 'end';
  readonly label: string;
  readonly heading?: string;
  readonly onPin: (command: Command) => void;
}

/** How far a stake is from an end of its run; another distance typed over it pins the stake there. */
export function StakeCell(props: StakeCellProps) {
  const { job, words, sayProblem, stake, from, label, heading, onPin } = props;
  const { run, along, hand } = stake;
  const turned = (length: number) => (from === 'start' ? length : run.length - length);
  function onValue(typed: number): string | null {
    const command = pinAt(run, turned(typed), hand);
    if (!command) return tooNearEnd(stake, job, words);
    const outcome = apply(job, command);
    if (!outcome.ok) return sayProblem(outcome.problems);
    onPin(command);
    return null;
  }
  return (
    <EditCell
      label={label}
      {...(heading ? { heading } : {})}
      shown={formatLength(turned(along), job.units)}
      parse={(text) => parseLength(text, job.units)}
      sayProblem={sayProblem}
      keyboard={lengthKeyboard(job.units)}
      onValue={onValue}
    />
  );
}

export function tooNearEnd({ run }: Pick<SiteStake, 'run'>, { units }: Job, words: SketchWords) {
  const { least, most } = stretchFor(run);
  return words.stakes.tooNearEnd(formatLength(least, units), formatLength(most, units));
}
