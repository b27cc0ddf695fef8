import { defaultPractices, ORDINARY_SET } from './defaults.ts';

/** Fields of a file that aren't checked yet. */
type Fields = Readonly<Record<string, unknown>>;

/**
 * Version 2 knew no set times and no half bags. The mixes that a job starts with get theirs, all others those of an ordinary mix: both are
 * marked as common practice, so that the ticket asks for what the bag says.
 */
export function mixWithSet({ mixes, ...mix }: Fields): unknown {
  const { mixes: known, halfBags } = defaultPractices().mix;
  if (!Array.isArray(mixes)) return { ...mix, mixes, halfBags };
  return {
    ...mix,
    halfBags,
    mixes: mixes.map((bag: unknown) =>
      typeof bag === 'object' && bag !== null
        ? {
            ...bag,
            set: known.find(({ id }) => 'id' in bag && bag.id === id)?.set ?? ORDINARY_SET,
          }
        : bag,
    ),
  };
}

/** Version 2 knew one allowance, a share of the net or a count of bags: that is what is still figured. */
export function wasteByShare(waste: Fields): unknown {
  return { ...defaultPractices().waste, by: 'share', ...waste };
}
