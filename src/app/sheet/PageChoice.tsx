import { PAGE_KINDS } from '../../sheet/pageKinds.ts';
import { useWords } from '../SessionContext.ts';
import { type SheetChoice, withPage } from './choice.ts';

interface PageChoiceProps {
  readonly choice: SheetChoice;
  /** Whether one page is proposed for this pad. */
  readonly small: boolean;
  readonly onChoice: (choice: SheetChoice) => void;
}

/** Which pages are printed. */
export function PageChoice({ choice, small, onChoice }: PageChoiceProps) {
  const words = useWords().app.sheet;
  const { pages } = choice;
  const onOne = choice.onePage ?? small;
  return (
    <fieldset className="page-choice">
      <legend>{words.pages}</legend>
      <label className="choice">
        <input
          type="checkbox"
          checked={onOne}
          onChange={(event) => onChoice({ ...choice, onePage: event.currentTarget.checked })}
        />
        {words.onePage}
      </label>
      {onOne ? <p className="field-note">{words.onePageHint}</p> : null}
      {PAGE_KINDS.map((page) => (
        <label key={page} className="choice">
          <input
            type="checkbox"
            checked={pages.includes(page)}
            disabled={onOne || (pages.length === 1 && pages[0] === page)}
            onChange={(event) => onChoice(withPage(choice, page, event.currentTarget.checked))}
          />
          {words.pageKinds[page]}
        </label>
      ))}
    </fieldset>
  );
}
