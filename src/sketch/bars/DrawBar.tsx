import { useRef, useState } from 'react';
import { parseAngle } from '../../units/angle.ts';
import type { Asks } from '../tools/machine.ts';
import type { Heading, Typed } from '../tools/tool.ts';
import { lengthKeyboard } from '../typed/lengthKeyboard.ts';
import { TypedBox } from '../typed/TypedBox.tsx';
import { useTyped } from '../typed/useTyped.ts';
import { useTypedLength } from '../typed/useTypedLength.ts';
import type { BarProps } from './barProps.ts';

const HEADINGS: readonly Heading[] = ['direction', 'left', 'right'];

interface DrawBarProps extends BarProps {
  readonly asks: Extract<Asks, { for: 'corner' }>;
  /** True when the pointer aims somewhere, so that degrees may be left out. */
  readonly aimed: boolean;
  readonly onTyped: (typed: Typed) => void;
  readonly onCancel: () => void;
}

/** While an outline is drawn: the next edge by its length and direction, or by its turn from the last edge. */
export function DrawBar({
  words,
  units,
  sayProblem,
  asks,
  aimed,
  onTyped,
  onCancel,
}: DrawBarProps) {
  const says = words.bar;
  const length = useTypedLength(units, words, sayProblem);
  const angle = useTyped<number>(parseAngle, sayProblem);
  const lengthBox = useRef<HTMLInputElement>(null);
  const [heading, setHeading] = useState<Heading>('direction');

  function add() {
    const long = length.read();
    if (long === null) return;
    const asAimed = angle.text.trim() === '';
    const degrees = asAimed ? null : angle.read();
    if (long <= 0) length.refuse(says.tooShort);
    else if (asAimed && !aimed) angle.refuse(says.needAim);
    else if (asAimed || degrees !== null) {
      onTyped({ what: 'corner', length: long, heading, degrees });
      length.clear();
      angle.clear();
      lengthBox.current?.focus();
    }
  }

  return (
    <form
      className="sketch-bar"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <p className="sketch-bar-says">
        {heading === 'direction'
          ? says.nextByDirection(asks.placed + 1)
          : says.nextCorner(asks.placed + 1)}
      </p>
      <TypedBox
        label={says.length}
        keyboard={lengthKeyboard(units)}
        boxRef={lengthBox}
        {...length}
      />
      <TypedBox label={says.angle} whenEmpty={says.angleWhenEmpty} keyboard="decimal" {...angle} />
      <label className="typed">
        <span>{says.headings}</span>
        <select
          value={heading}
          onChange={(event) =>
            setHeading(HEADINGS.find((one) => one === event.target.value) ?? 'direction')
          }
        >
          {HEADINGS.map((one) => (
            <option key={one} value={one}>
              {says.heading[one]}
            </option>
          ))}
        </select>
      </label>
      <div className="sketch-bar-buttons">
        <button type="submit" className="main">
          {says.addCorner}
        </button>
        <button type="button" onClick={() => onTyped({ what: 'take-back' })}>
          {says.takeBack}
        </button>
        {asks.canClose ? (
          <button type="button" className="main" onClick={() => onTyped({ what: 'close' })}>
            {says.close}
          </button>
        ) : null}
        {asks.canEndOpen ? (
          <button type="button" onClick={() => onTyped({ what: 'end-open' })}>
            {says.endOpen}
          </button>
        ) : null}
        <button type="button" onClick={onCancel}>
          {says.cancel}
        </button>
      </div>
    </form>
  );
}
