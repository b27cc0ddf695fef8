import type { BagMix } from '../../job/job.ts';
import { fail, ok } from '../../units/result.ts';
import { useWords } from '../SessionContext.ts';
import type { MixFieldsProps } from './mixFieldsProps.ts';
import { minutesReading, waterReading } from './mixReadings.ts';
import { volumeReading, weightReading } from './reading.ts';
import { sayReading } from './sayReading.ts';
import { TypedField } from './TypedField.tsx';
import { TypedReading } from './TypedReading.tsx';

/** A week: the schema has the same bound. */
const MOST_MINUTES = 7 * 24 * 60;

interface MixCardProps extends MixFieldsProps {
  readonly bag: BagMix;
}

export function MixCard({ bag, practices, units, onPractices }: MixCardProps) {
  const all = useWords();
  const words = all.app.practices;
  const { mix } = practices;
  const inUse = bag.id === mix.blend.main || bag.id === mix.blend.other;

  function put(part: Partial<BagMix>) {
    const mixes = mix.mixes.map((one) => (one.id === bag.id ? { ...one, ...part } : one));
    onPractices({ ...practices, mix: { ...mix, mixes } });
  }

  /** The least is no more than the most; where one is known alone, both are it. */
  function boundsOf(of: 'least' | 'most') {
    return of === 'least' ? { most: bag.water?.most } : { least: bag.water?.least };
  }

  function putWater(of: 'least' | 'most', value: number | null) {
    const { water, ...dry } = bag;
    const next: BagMix =
      value === null
        ? dry
        : { ...dry, water: { least: value, most: value, ...water, [of]: value } };
    const mixes = mix.mixes.map((one) => (one.id === bag.id ? next : one));
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
      {(['least', 'most'] as const).map((of) => (
        <TypedField<number | null>
          key={of}
          label={words.mix.water[of]}
          {...waterReading(bag.water?.[of], boundsOf(of), units)}
          say={(problem) => sayReading(all, problem)}
          onValue={(value) => putWater(of, value)}
          note={bag.water || of === 'least' ? undefined : words.mix.waterUnknown}
        />
      ))}
      {(['initial', 'final'] as const).map((of) => (
        <TypedReading
          key={of}
          label={words.mix.set[of]}
          reading={minutesReading(
            bag.set[of],
            of === 'initial' ? 1 : bag.set.initial,
            of === 'initial' ? bag.set.final : MOST_MINUTES,
          )}
          onValue={(minutes) => put({ set: { ...bag.set, [of]: minutes, from: 'bag' } })}
        />
      ))}
      {bag.set.from === 'bag' ? null : (
        <>
          <p className="field-note">{words.mix.setCommon}</p>
          <button
            type="button"
            className="plain"
            onClick={() => put({ set: { ...bag.set, from: 'bag' } })}
          >
            {words.mix.setIsBag}
          </button>
        </>
      )}
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
