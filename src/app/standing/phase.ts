import type { Standing } from '../worker/search.ts';

/** How the search for what the figures show stands. done: they show what it found. ended: it was broken off. */
export type Phase = 'waiting' | 'searching' | 'better' | 'ended' | 'done';

/**
 * The figures may be a moment behind the search: what is said of the plan is what is known of the one that they show, and
 * a find that isn't in them yet is still to come.
 * @param shown The key of the problem that the figures answer, and whether with the first answer.
 */
export function phaseOf(
  search: Standing<unknown>,
  shown: { readonly key: string; readonly isFirst: boolean },
): Phase {
  if (!shown.isFirst) return 'done';
  if (search.is === 'nothing' || search.key !== shown.key) return 'waiting';
  if (search.is === 'waiting') return 'waiting';
  if (search.is === 'searching') return search.best ? 'better' : 'searching';
  return search.is === 'done' ? 'better' : 'ended';
}
