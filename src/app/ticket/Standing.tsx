import { useLiveTakeoff, useSession, useWords } from '../SessionContext.ts';

/** Says plainly when the figures are not of the sketch on screen. */
export function Standing() {
  const words = useWords().app.ticket;
  const { figureAgain } = useSession();
  const { standing, of } = useLiveTakeoff();
  if (standing === 'current') return null;
  const behind = of ? words.behind : words.waiting;
  return (
    <div className="standing" data-is={standing} role="status">
      <p>{{ behind, stuck: words.stuck, failed: words.failed }[standing]}</p>
      {standing === 'behind' ? null : (
        <button type="button" className="plain" onClick={figureAgain}>
          {words.again}
        </button>
      )}
    </div>
  );
}
