import { ORDINARY_SET } from '../../job/defaults.ts';
import { CUBIC_FOOT, POUND_KG } from '../../units/grid.ts';
import { useWords } from '../SessionContext.ts';
import { BlendFields } from './BlendFields.tsx';
import { MixCard } from './MixCard.tsx';
import type { MixFieldsProps } from './mixFieldsProps.ts';

/** The mixes on hand, as printed on their bags, and how two of them are blended. */
export function MixFields({ practices, units, onPractices }: MixFieldsProps) {
  const words = useWords().app.practices;
  const { mix } = practices;

  function add() {
    const id = freeId(mix.mixes.map((one) => one.id));
    const bag = {
      id,
      name: freeName(
        words.newMix,
        mix.mixes.map((one) => one.name),
      ),
      weight: 60 * POUND_KG,
      yield: 0.45 * CUBIC_FOOT,
      set: ORDINARY_SET,
    };
    onPractices({ ...practices, mix: { ...mix, mixes: [...mix.mixes, bag] } });
  }

  return (
    <>
      <h3>{words.blend}</h3>
      <BlendFields practices={practices} units={units} onPractices={onPractices} />
      <h3>{words.mixes}</h3>
      {mix.mixes.map((bag) => (
        <MixCard
          key={bag.id}
          bag={bag}
          practices={practices}
          units={units}
          onPractices={onPractices}
        />
      ))}
      <button type="button" className="plain" onClick={add}>
        {words.addMix}
      </button>
    </>
  );
}

function freeId(taken: readonly string[]): string {
  let number = taken.length + 1;
  while (taken.includes(`mix${number}`)) number += 1;
  return `mix${number}`;
}

/** Two mixes of one name couldn't be told apart where the blend is chosen. */
function freeName(name: string, taken: readonly string[]): string {
  let number = 2;
  if (!taken.includes(name)) return name;
  while (taken.includes(`${name} ${number}`)) number += 1;
  return `${name} ${number}`;
}
