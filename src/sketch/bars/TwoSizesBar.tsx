import { useState } from 'react';
import type { Typed } from '../tools/tool.ts';
import { lengthKeyboard } from '../typed/lengthKeyboard.ts';
import { TypedBox } from '../typed/TypedBox.tsx';
import { useTypedLength } from '../typed/useTypedLength.ts';
import type { BarProps } from './barProps.ts';

interface TwoSizesBarProps extends BarProps {
  /** The first corner of an outline, or the sizes of a square block-out. */
  readonly what: 'start' | 'sizes';
  readonly onTyped: (typed: Typed) => void;
  readonly onCancel: () => void;
}

/** Two lengths, across and up. */
export function TwoSizesBar({
  words,
  units,
  sayProblem,
  what,
  onTyped,
  onCancel,
}: TwoSizesBarProps) {
  const says = words.bar;
  const across = useTypedLength(units, words, sayProblem);
  const up = useTypedLength(units, words, sayProblem);
  const isSizes = what === 'sizes';
  // On a phone most first corners are tapped, and the boxes would only hide the site.
  const [open, setOpen] = useState(() => isSizes || matchMedia('(min-width: 700px)').matches);

  function add() {
    const [right, high] = [across.read(), up.read()];
    if (right === null || high === null) return;
    if (isSizes && right === 0) across.refuse(says.tooShort);
    else if (isSizes && high === 0) up.refuse(says.tooShort);
    else onTyped({ what, across: right, up: high });
  }

  if (!open) {
    return (
      <div className="sketch-bar one-line">
        <p className="sketch-bar-says">{says.start}</p>
        <div className="sketch-bar-buttons">
          <button type="button" onClick={() => setOpen(true)}>
            {says.typeStart}
          </button>
          <button type="button" onClick={onCancel}>
            {says.cancel}
          </button>
        </div>
      </div>
    );
  }

  return (
    <form
      className="sketch-bar"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <p className="sketch-bar-says">{isSizes ? says.sizesHint : says.startHint}</p>
      <TypedBox label={says.across} keyboard={lengthKeyboard(units)} {...across} />
      <TypedBox label={says.up} keyboard={lengthKeyboard(units)} {...up} />
      <div className="sketch-bar-buttons">
        <button type="submit" className="main">
          {isSizes ? says.addBlockOut : says.placeCorner}
        </button>
        <button type="button" onClick={onCancel}>
          {says.cancel}
        </button>
      </div>
    </form>
  );
}
