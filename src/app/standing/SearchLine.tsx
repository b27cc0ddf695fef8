import type { ReactNode } from 'react';
import { useStore, useWords } from '../SessionContext.ts';
import type { Search, Standing } from '../worker/search.ts';
import { phaseOf } from './phase.ts';

interface SearchLineProps<Answer> {
  readonly search: Pick<Search<never, Answer>, 'standing' | 'stop' | 'again'>;
  /** The key of the problem that the figures answer, and whether with the first answer. */
  readonly shown: { readonly key: string; readonly isFirst: boolean };
  /** How sure the plan is, once the search is over. */
  readonly proof: string;
  /** What can be done once it is over. */
  readonly settled?: ReactNode;
}

/** How a search for a better plan stands, with a button to leave it at this or to look again. */
export function SearchLine<Answer>({ search, shown, proof, settled }: SearchLineProps<Answer>) {
  const says = useWords().app.plan;
  const standing = useStore(search.standing, (held) => held);
  const phase = phaseOf(standing, shown);
  const isOver = phase === 'done' || phase === 'ended';
  return (
    <>
      <div role="status" data-is={phase}>
        {phase === 'ended' ? <p>{whyEnded(standing, says)}</p> : null}
        <p>{isOver ? proof : says[phase]}</p>
      </div>
      {phase === 'searching' || phase === 'better' ? (
        <button type="button" className="plain" onClick={search.stop}>
          {says.stop}
        </button>
      ) : null}
      {phase === 'ended' ? (
        <button type="button" className="plain" onClick={search.again}>
          {says.again}
        </button>
      ) : null}
      {isOver ? settled : null}
    </>
  );
}

function whyEnded(
  search: Standing<unknown>,
  says: ReturnType<typeof useWords>['app']['plan'],
): string {
  if (search.is === 'failed') return says.failed(search.why);
  return search.is === 'stuck' ? says.stuck : says.stopped;
}
