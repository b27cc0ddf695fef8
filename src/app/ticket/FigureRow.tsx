import { useState } from 'react';
import type { UnitStyle } from '../../job/job.ts';
import { sayQuantity } from '../../sheet/words/say.ts';
import type { Figure } from '../../takeoff/figure.ts';
import { useWords } from '../SessionContext.ts';
import { WorkingView } from './WorkingView.tsx';

interface FigureRowProps {
  readonly figure: Figure;
  readonly units: UnitStyle;
}

/** One figure, which opens to its working. The working is made only while it is open. */
export function FigureRow({ figure, units }: FigureRowProps) {
  const words = useWords().sheet;
  const [open, setOpen] = useState(false);
  return (
    <details className="figure" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className="figure-name">{words.figures[figure.key]}</span>
        <span className="figure-leader" aria-hidden="true" />
        <span className="figure-value" data-figure={figure.key}>
          {sayQuantity(words, figure.value, units)}
        </span>
      </summary>
      {open ? <WorkingView working={figure.working()} units={units} /> : null}
    </details>
  );
}
