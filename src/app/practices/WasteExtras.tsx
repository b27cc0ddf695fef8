import type { WasteExtra } from '../../job/job.ts';
import { CUBIC_FOOT } from '../../units/grid.ts';
import { fail, ok } from '../../units/result.ts';
import { useWords } from '../SessionContext.ts';
import type { MixFieldsProps } from './mixFieldsProps.ts';
import { extraReading } from './mixReadings.ts';
import { TypedField } from './TypedField.tsx';
import { TypedReading } from './TypedReading.tsx';

/** What is added to the allowance by hand, each by a name of its own. */
export function WasteExtras({ practices, units, onPractices }: MixFieldsProps) {
  const words = useWords().app.practices.mix;
  const { waste } = practices;
  if (waste.by === 'share') return null;

  function put(extras: readonly WasteExtra[]) {
    onPractices({ ...practices, waste: { ...waste, extras } });
  }

  function change(id: string, part: Partial<WasteExtra>) {
    put(waste.extras.map((one) => (one.id === id ? { ...one, ...part } : one)));
  }

  return (
    <>
      <h3>{words.extras}</h3>
      {waste.extras.map(({ id, name, volume }) => (
        <fieldset key={id} className="mix-card">
          <legend className="visually-hidden">{name}</legend>
          <TypedField
            label={words.extraName}
            text={name}
            parse={(text) =>
              text.trim() === '' ? fail({ code: 'no-name', where: text }) : ok(text.trim())
            }
            say={() => words.extraNameNeeded}
            onValue={(next) => change(id, { name: next })}
          />
          <TypedReading
            label={words.extraVolume}
            reading={extraReading(volume, units)}
            onValue={(next) => change(id, { volume: next })}
          />
          <button
            type="button"
            className="plain danger"
            onClick={() => put(waste.extras.filter((one) => one.id !== id))}
          >
            {words.removeExtra(name)}
          </button>
        </fieldset>
      ))}
      <button
        type="button"
        className="plain"
        onClick={() =>
          put([
            ...waste.extras,
            {
              id: freeId(waste.extras.map(({ id }) => id)),
              name: words.newExtra,
              volume: CUBIC_FOOT,
            },
          ])
        }
      >
        {words.addExtra}
      </button>
    </>
  );
}

function freeId(taken: readonly string[]): string {
  let number = taken.length + 1;
  while (taken.includes(`x${number}`)) number += 1;
  return `x${number}`;
}
