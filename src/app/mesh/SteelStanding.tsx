import { sayProof } from '../boards/sayProof.ts';
import { useAppState, useLiveTakeoff, useSession, useWords } from '../SessionContext.ts';
import { SearchLine } from '../standing/SearchLine.tsx';
import { shownJob } from '../state.ts';
import { sayMeshProof } from './sayMeshProof.ts';

/** How sure the mesh layout or the cut plan of the bars is, and how the search for a better one stands. */
export function SteelStanding() {
  const words = useWords();
  const { searches } = useSession();
  const { steel } = useLiveTakeoff().takeoff;
  const { practices, units } = useAppState(shownJob);
  const says = words.app.mesh.standing;
  const { mesh, bars } = steel ?? {};
  if (mesh) {
    const { key, plan } = mesh;
    return (
      <section className="plan-standing" aria-label={says.layout}>
        <SearchLine
          search={searches.mesh}
          shown={{ key, isFirst: plan.proof.is === 'first' }}
          proof={sayMeshProof(says, words.sheet, mesh, units)}
        />
      </section>
    );
  }
  if (!bars) return null;
  const { key, plan } = bars.cuts;
  return (
    <section className="plan-standing" aria-label={says.bars}>
      <SearchLine
        search={searches.bars}
        shown={{ key, isFirst: plan.proof.is === 'first' }}
        proof={sayProof(says.cutting, words.sheet, bars.cuts, {
          currency: practices.currency,
          units,
        })}
      />
    </section>
  );
}
