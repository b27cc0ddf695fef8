import { useWords } from '../SessionContext.ts';
import type { Outcome } from './outcome.ts';

/** Says what became of the last tap, to a screen reader too. */
export function OutcomeNote({ outcome }: { readonly outcome: Outcome | null }) {
  const words = useWords().app.handOver;
  return (
    <p className={outcome?.is === 'failed' ? 'field-error' : 'outcome'} role="status">
      {outcome ? said(outcome, words) : null}
    </p>
  );
}

function said(
  outcome: Outcome,
  { outcome: words, link, files }: ReturnType<typeof useWords>['app']['handOver'],
): string {
  switch (outcome.is) {
    case 'sent':
      return words.sent;
    case 'put-away':
      return words.putAway;
    case 'copied':
      return link.copied;
    case 'not-copied':
      return link.copyByHand;
    case 'saved':
      return words.saved;
    case 'tap-again':
      return files.tapAgain;
    case 'failed':
      return words.failed(outcome.why);
    default:
      return outcome satisfies never;
  }
}
