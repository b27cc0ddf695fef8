import { LANGUAGE_NAMES, LANGUAGES } from '../drawing/words/language.ts';
import { BAG_WORDS, FORM_WORDS } from '../drawing/words/terms.ts';
import { ChooseField } from './ChooseField.tsx';
import { useAppState, useSession, useWords } from './SessionContext.ts';
import { SHEET_LANGUAGES } from './speech.ts';

/** The language of the screen and, where its crews choose between words of the trade, which are theirs. */
export function SpeechChoice() {
  const words = useWords().app.speech;
  const session = useSession();
  const speech = useAppState((state) => state.speech);
  const { terms } = speech;
  const speaksSpanish = speech.screen === 'es' || speech.sheet === 'es' || speech.sheet === 'both';
  return (
    <>
      <fieldset>
        <legend>{words.screen}</legend>
        {LANGUAGES.map((one) => (
          <label key={one} className="choice" lang={one}>
            <input
              type="radio"
              name="language"
              checked={one === speech.screen}
              onChange={() => session.speak({ screen: one })}
            />
            {LANGUAGE_NAMES[one]}
          </label>
        ))}
      </fieldset>
      {speaksSpanish ? (
        <fieldset>
          <legend>{words.words}</legend>
          <ChooseField
            label={words.form}
            options={FORM_WORDS.map((word) => [word, word] as const)}
            value={terms.form}
            onChoose={(key) => {
              const form = FORM_WORDS.find((word) => word === key) ?? terms.form;
              session.speak({ terms: { ...terms, form } });
            }}
          />
          <ChooseField
            label={words.bag}
            options={BAG_WORDS.map((word) => [word, word] as const)}
            value={terms.bag}
            onChoose={(key) => {
              const bag = BAG_WORDS.find((word) => word === key) ?? terms.bag;
              session.speak({ terms: { ...terms, bag } });
            }}
          />
        </fieldset>
      ) : null}
    </>
  );
}

/** What the sheet is written in: who looks at the screen and who builds from the sheet may speak otherwise. */
export function SheetLanguageChoice() {
  const words = useWords().app.speech;
  const session = useSession();
  const { sheet, terms } = useAppState((state) => state.speech);
  const says = { ...LANGUAGE_NAMES, both: words.both(terms.form.toUpperCase()) };
  return (
    <ChooseField
      label={words.sheet}
      options={[
        ['', words.asScreen] as const,
        ...SHEET_LANGUAGES.map((one) => [one, says[one]] as const),
      ]}
      value={sheet ?? ''}
      onChoose={(key) =>
        session.speak({ sheet: SHEET_LANGUAGES.find((one) => one === key) ?? null })
      }
    />
  );
}
