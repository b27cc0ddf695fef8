import { defaultPractices, ORDINARY_SET } from './defaults.ts';

/** Fields of a file that aren't checked yet. */
type Fields = Readonly<Record<string, unknown>>;

/**
 * Version 2 knew no set times. The mixes that a job starts with get theirs, all others those of an ordinary mix: both are
 * marked as common practice, so that the ticket asks for what the bag says.
 */
export function mixWithSet({ mixes, ...mix }: Fields): unknown {
  if (!Array.isArray(mixes)) return { ...mix, mixes };
  const known = defaultPractices().mix.mixes;
  return {
    ...mix,
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
