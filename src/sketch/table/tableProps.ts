import type { Point } from '../../geometry/point.ts';

import { apply, type Command, type Refusal } from '../../job/commands.ts';
import type { Job } from '../../job/job.ts';
import type { Problem } from '../../units/result.ts';
import type { Selection } from '../tools/tool.ts';
import type { SketchWords } from '../words/en.ts';

export interface CornerTableProps {
  readonly job: Job;
  readonly selection: Selection | null;
  readonly words: SketchWords;
  readonly sayProblem: (problem: Problem) => string;
  readonly onSelect: (selection: Selection | null) => void;
  readonly onCommit: (command: Command) => void;
  readonly onRefusal: (refusal: Refusal) => void;
}

/** What the parts of the table share. */
export interface TablePart extends CornerTableProps {
  /** Where offsets are measured from. */
  readonly datum: Point;
}

/** Does a command, or says beside the cell why it can't be done: the typed text then stays where it is. */
export function tryCommand(
  { job, sayProblem, onCommit }: Pick<CornerTableProps, 'job' | 'sayProblem' | 'onCommit'>,
  command: Command,
): string | null {
  const outcome = apply(job, command);
  if (!outcome.ok) return sayProblem(outcome.problems);
  onCommit(command);
  return null;
}

/** Does what a button stands for; a refusal is shown by the app, since a button has no text to mend. */
export function pressCommand(
  { job, onCommit, onRefusal }: Pick<CornerTableProps, 'job' | 'onCommit' | 'onRefusal'>,
  command: Command,
): void {
  const outcome = apply(job, command);
  if (outcome.ok) onCommit(command);
  else onRefusal(outcome.problems);
}
