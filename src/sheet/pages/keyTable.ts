import type { KeyedSize } from '../../drawing/dimension/board.ts';
import type { Job } from '../../job/job.ts';
import { formatLength } from '../../units/length.ts';
import { printable } from '../lettering.ts';
import type { LayoutWords } from '../words/layout.ts';

/** One size that found no room on the plan, as a line of the list. */
export function keyedLine(
  job: Job,
  { key, what, text, marked, from, to }: KeyedSize,
  layout: LayoutWords,
): string {
  const said = `${key}  ${[layout.keyWhat[what], printable(text).text].filter((one) => one).join(' ')}`;
  if (marked) return said;
  const datum = datumOf(job);
  const at = {
    x: formatLength((from.x + to.x) / 2 - datum.x, job.units),
    y: formatLength((from.y + to.y) / 2 - datum.y, job.units),
  };
  return `${said}, ${layout.keyPlace(at.x, at.y)}`;
}

/** The first corner of the first pad. */
function datumOf({ features }: Job) {
  for (const { kind, shape } of features) {
    const first = kind === 'pad' && shape.form === 'outline' ? shape.corners[0] : undefined;
    if (first) return { x: first.x, y: first.y };
  }
  return { x: 0, y: 0 };
}
