import type { FormRun } from '../../takeoff/result.ts';
import { pinAt } from '../stakeCommands.ts';
import { lengthKeyboard } from '../typed/lengthKeyboard.ts';
import { TypedBox } from '../typed/TypedBox.tsx';
import { useTypedLength } from '../typed/useTypedLength.ts';
import { tooNearEnd } from './StakeCell.tsx';
import { type CornerTableProps, tryCommand } from './tableProps.ts';

interface AddStakeProps extends CornerTableProps {
  readonly run: FormRun;
  readonly start: string;
}

/** One more stake on a run, pinned at a typed distance. */
export function AddStake(props: AddStakeProps) {
  const { job, words, sayProblem, run, start } = props;
  const says = words.stakes.table;
  const along = useTypedLength(job.units, words, sayProblem);

  function add() {
    const typed = along.read();
    if (typed === null) return;
    const command = pinAt(run, typed, null);
    const refused = command ? tryCommand(props, command) : tooNearEnd({ run }, job, words);
    if (refused) along.refuse(refused);
    else along.clear();
  }

  return (
    <form
      className="change-row"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <TypedBox label={says.addAt(start)} keyboard={lengthKeyboard(job.units)} {...along} />
      <button type="submit">{says.add}</button>
    </form>
  );
}
