import type { BagMix } from '../../job/job.ts';
import { fail, ok } from '../../units/result.ts';
import { useWords } from '../SessionContext.ts';
import type { MixFieldsProps } from './mixFieldsProps.ts';
import { volumeReading, weightReading } from './reading.ts';
import { TypedField } from './TypedField.tsx';
import { TypedReading } from './TypedReading.tsx';

interface MixCardProps extends MixFieldsProps {
  readonly bag: BagMix;
}

export function MixCard({ bag, practices, units, onPractices }: MixCardProps) {
  const words = useWords().app.practices;
  const { mix } = practices;
  const inUse = bag.id === mix.blend.main || bag.id === mix.blend.other;

  function put(part: Partial<BagMix>) {
    const mixes = mix.mixes.map((one) => (one.id === bag.id ? { ...one, ...part } : one));
    onPractices({ ...practices, mix: { ...mix, mixes } });
  }

  function takeOut() {
    const mixes = mix.mixes.filter((one) => one.id !== bag.id);
    onPractices({ ...practices, mix: { ...mix, mixes } });
  }

  return (
    <fieldset className="mix-card">
      <legend className="visually-hidden">{bag.name}</legend>
      <TypedField
        label={words.fields.mixName.label}
        text={bag.name}
        parse={(text) =>
          text.trim() === '' ? fail({ code: 'no-name', where: text }) : ok(text.trim())
        }
        say={() => words.nameNeeded}
        onValue={(name) => put({ name })}
      />
      <TypedReading
        label={words.fields.bagWeight.label}
        reading={weightReading(bag.weight, units)}
        onValue={(weight) => put({ weight })}
      />
      <TypedReading
        label={words.fields.bagYield.label}
        reading={volumeReading(bag.yield, units)}
        onValue={(made) => put({ yield: made })}
      />
      {inUse ? (
        <p className="field-note">{words.mixInUse}</p>
      ) : (
        <button type="button" className="plain danger" onClick={takeOut}>
          {words.removeMix(bag.name)}
        </button>
      )}
    </fieldset>
  );
}
