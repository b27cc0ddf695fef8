import type { Practices } from '../../job/job.ts';
import { useWords } from '../SessionContext.ts';
import type { MixFieldsProps } from './mixFieldsProps.ts';
import { partsReading } from './mixReadings.ts';
import { TypedReading } from './TypedReading.tsx';

/** Parts, by bag count, of one mix to parts of another; or one mix alone. */
export function BlendFields({ practices, onPractices }: MixFieldsProps) {
  const words = useWords().app.practices;
  const { mix } = practices;
  const { blend, mixes } = mix;

  function put(next: Practices['mix']['blend']) {
    onPractices({ ...practices, mix: { ...mix, blend: next } });
  }

  function chooseMain(main: string) {
    const { other, ...alone } = blend;
    if (other === undefined || other === main) put({ ...alone, main, otherParts: 0 });
    else put({ ...blend, main });
  }

  function chooseOther(other: string) {
    const { other: _, ...alone } = blend;
    if (other === '') put({ ...alone, otherParts: 0 });
    else put({ ...alone, other, otherParts: blend.otherParts || 1 });
  }

  return (
    <div className="mix-card">
      <label className="field">
        {words.fields.mainMix.label}
        <select value={blend.main} onChange={(event) => chooseMain(event.currentTarget.value)}>
          {mixes.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        {words.fields.otherMix.label}
        <select
          value={blend.other ?? ''}
          onChange={(event) => chooseOther(event.currentTarget.value)}
        >
          <option value="">{words.noOther}</option>
          {mixes
            .filter(({ id }) => id !== blend.main)
            .map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
        </select>
      </label>
      {blend.other === undefined ? null : (
        <>
          <TypedReading
            label={words.fields.mainParts.label}
            reading={partsReading(blend.mainParts)}
            onValue={(mainParts) => put({ ...blend, mainParts })}
          />
          <TypedReading
            label={words.fields.otherParts.label}
            reading={partsReading(blend.otherParts)}
            onValue={(otherParts) => put({ ...blend, otherParts })}
          />
        </>
      )}
    </div>
  );
}
