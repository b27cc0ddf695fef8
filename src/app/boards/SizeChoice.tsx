import { useId } from 'react';
import { BOARD_SIZES } from '../../job/boardLists.ts';
import type { BoardSize } from '../../job/job.ts';
import { useWords } from '../SessionContext.ts';

interface SizeChoiceProps {
  readonly size: BoardSize;
  readonly onSize: (size: BoardSize) => void;
}

export function SizeChoice({ size, onSize }: SizeChoiceProps) {
  const words = useWords().app.boards;
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{words.fields.size}</label>
      <select
        id={id}
        value={size}
        onChange={(event) => onSize(event.currentTarget.value as BoardSize)}
      >
        {BOARD_SIZES.map((one) => (
          <option key={one} value={one}>
            {words.size(one)}
          </option>
        ))}
      </select>
    </div>
  );
}
