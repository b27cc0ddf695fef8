import type { Typed } from '../tools/tool.ts';
import { lengthKeyboard } from '../typed/lengthKeyboard.ts';
import { TypedBox } from '../typed/TypedBox.tsx';
import { useTypedLength } from '../typed/useTypedLength.ts';
import type { BarProps } from './barProps.ts';

interface DiameterBarProps extends BarProps {
  readonly onTyped: (typed: Typed) => void;
  readonly onCancel: () => void;
}

/** A round block-out whose middle stands: its diameter. */
export function DiameterBar({ words, units, sayProblem, onTyped, onCancel }: DiameterBarProps) {
  const says = words.bar;
  const diameter = useTypedLength(units, words, sayProblem);
  return (
    <form
      className="sketch-bar"
      onSubmit={(event) => {
        event.preventDefault();
        const size = diameter.read();
        if (size === null) return;
        if (size <= 0) diameter.refuse(says.tooShort);
        else onTyped({ what: 'diameter', diameter: size });
      }}
    >
      <TypedBox
        label={says.diameter}
        hint={says.diameterHint}
        keyboard={lengthKeyboard(units)}
        {...diameter}
      />
      <div className="sketch-bar-buttons">
        <button type="submit" className="main">
          {says.addBlockOut}
        </button>
        <button type="button" onClick={onCancel}>
          {says.cancel}
        </button>
      </div>
    </form>
  );
}
