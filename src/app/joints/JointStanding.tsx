import type { JointLayout } from '../../takeoff/result.ts';
import { useAppState, useLiveTakeoff, useSession, useWords } from '../SessionContext.ts';
import { SearchLine } from '../standing/SearchLine.tsx';

/** How sure the joint layout is, how the search for a better one stands, and joints taken over to be moved by hand. */
export function JointStanding() {
  const says = useWords().app.joints;
  const layout = useLiveTakeoff().takeoff.joints?.layout;
  const { searches } = useSession();
  if (!layout) return null;
  return (
    <section className="plan-standing" aria-label={says.title}>
      {layout.by === 'by-hand' ? (
        <ByHand />
      ) : (
        <SearchLine
          search={searches.joints}
          shown={{ key: layout.key, isFirst: layout.proof === 'first' }}
          proof={says[layout.proof]}
          settled={<TakeOver layout={layout} />}
        />
      )}
    </section>
  );
}

function ByHand() {
  const says = useWords().app.joints;
  const session = useSession();
  const practices = useAppState((state) => state.history.now.job.practices);
  const mine = useAppState((state) => state.hold === 'mine');
  return (
    <>
      <p>{says.byHand}</p>
      {mine ? (
        <button
          type="button"
          className="plain"
          onClick={() =>
            session.commit({
              do: 'set-practices',
              practices: { ...practices, joints: { ...practices.joints, layout: 'proposed' } },
            })
          }
        >
          {says.propose}
        </button>
      ) : null}
    </>
  );
}

function TakeOver({ layout }: { readonly layout: JointLayout }) {
  const says = useWords().app.joints;
  const session = useSession();
  const job = useAppState((state) => state.history.now.job);
  const mine = useAppState((state) => state.hold === 'mine');
  const { of, standing } = useLiveTakeoff();
  const proposed = layout.joints.filter(({ by }) => by === 'search');
  // Only the joints of the very job on screen are taken over.
  if (!mine || standing !== 'current' || of !== job || proposed.length === 0) return null;
  return (
    <>
      <button
        type="button"
        className="plain"
        onClick={() =>
          session.commit({
            do: 'draw-joints',
            joints: proposed.map(({ from, to, kind }) => ({ from, to, joint: kind })),
          })
        }
      >
        {says.takeOver}
      </button>
      <p className="field-note">{says.takeOverHint}</p>
    </>
  );
}
