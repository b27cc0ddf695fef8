import { PAGE_KINDS } from '../../sheet/pageKinds.ts';
import { useWords } from '../SessionContext.ts';
import { type SheetChoice, withPage } from './choice.ts';

interface PageChoiceProps {
  readonly choice: SheetChoice;
  readonly onChoice: (choice: SheetChoice) => void;
}

/** Which pages are printed. */
export function PageChoice({ choice, onChoice }: PageChoiceProps) {
  const words = useWords().app.sheet;
  const { pages } = choice;
  return (
    <fieldset className="page-choice">
      <legend>{words.pages}</legend>
      {PAGE_KINDS.map((page) => (
        <label key={page} className="choice">
          <input
            type="checkbox"
            checked={pages.includes(page)}
            disabled={pages.length === 1 && pages[0] === page}
            onChange={(event) => onChoice(withPage(choice, page, event.currentTarget.checked))}
          />
          {words.pageKinds[page]}
        </label>
      ))}
    </fieldset>
  );
}
