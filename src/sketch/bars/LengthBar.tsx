import { useEffect, useRef, useState } from 'react';

import { apply, type Command } from '../../job/commands.ts';
import type { Feature, Job } from '../../job/job.ts';
import { formatLength } from '../../units/length.ts';
import { lengthOf } from '../edgeMeasures.ts';
import { edgeLetters } from '../featureName.ts';
import { lengthKeyboard } from '../typed/lengthKeyboard.ts';
import { TypedBox } from '../typed/TypedBox.tsx';
import { useTypedLength } from '../typed/useTypedLength.ts';
import type { BarProps } from './barProps.ts';

interface LengthBarProps extends BarProps {
  readonly job: Job;
  readonly feature: Feature;
  /** The corner at which the edge starts. */
  readonly corner: string;
  readonly onCommit: (command: Command) => void;
  readonly onDone: () => void;
}

/** A dimension that was tapped: its new length, and which of its ends moves. */
export function LengthBar({
  words,
  units,
  sayProblem,
  job,
  feature,
  corner,
  onCommit,
  onDone,
}: LengthBarProps) {
  const says = words.length;
  const now = lengthOf(feature, corner);
  const letters = edgeLetters(feature, corner);
  const length = useTypedLength(units, words, sayProblem);
  const [moves, setMoves] = useState<'start' | 'end'>('end');
  const [slides, setSlides] = useState(true);
  const box = useRef<HTMLInputElement>(null);
  useEffect(() => box.current?.focus(), []);
  if (now === null || !letters) return null;
  const edge = `${letters.from}–${letters.to}`;

  function set() {
    const long = length.read();
    if (long === null) return;
    const command: Command = {
      do: 'set-edge-length',
      feature: feature.id,
      corner,
      length: long,
      moves,
      carry: slides ? 'side' : 'corner',
    };
    const outcome = apply(job, command);
    if (!outcome.ok) {
      length.refuse(sayProblem(outcome.problems));
      return;
    }
    onCommit(command);
    onDone();
  }

  return (
    <form
      className="sketch-bar"
      onSubmit={(event) => {
        event.preventDefault();
        set();
      }}
    >
      <p className="sketch-bar-says">{says.title(edge, formatLength(now, units))}</p>
      <TypedBox label={says.newLength} keyboard={lengthKeyboard(units)} boxRef={box} {...length} />
      <fieldset>
        <legend>{says.whichMoves}</legend>
        {(['start', 'end'] as const).map((end) => (
          <label key={end} className="tick-choice">
            <input
              type="radio"
              name="moves"
              checked={moves === end}
              onChange={() => setMoves(end)}
            />
            <span>{says.end(end === 'start' ? letters.from : letters.to)}</span>
          </label>
        ))}
      </fieldset>
      <label className="tick-choice">
        <input
          type="checkbox"
          checked={slides}
          onChange={(event) => setSlides(event.target.checked)}
        />
        <span>{says.carrySide}</span>
      </label>
      <div className="sketch-bar-buttons">
        <button type="submit" className="main">
          {says.apply}
        </button>
        <button type="button" onClick={onDone}>
          {says.cancel}
        </button>
      </div>
    </form>
  );
}
