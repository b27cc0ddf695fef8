import type { MeshResult } from '../../takeoff/result.ts';
import { leftMesh } from '../../takeoff/steel/leftMesh.ts';
import { LeftoversButton } from '../boards/LeftoversButton.tsx';
import { useAppState, useLiveTakeoff, useSession, useWords } from '../SessionContext.ts';
import type { Pour } from './usePour.ts';

/** What the next job can begin with: rests worth keeping go back onto the truck's lists. */
export function LeftoversCard({ pour }: { readonly pour: Pour }) {
  const words = useWords().app.pourDay.after;
  const { boards, steel } = pour.takeoff;
  const mesh = steel?.mesh;
  if (!boards && !mesh) return null;
  return (
    <section className="pour-card">
      <h2>{words.boards}</h2>
      <p className="pour-soft">{words.boardsSays}</p>
      {boards ? <LeftoversButton boards={boards} onPut={() => undefined} /> : null}
      {mesh ? <MeshButton mesh={mesh} /> : null}
    </section>
  );
}

/** As with the boards: only the plan of the very job on screen tells what is left after it. */
function MeshButton({ mesh }: { readonly mesh: MeshResult }) {
  const words = useWords().app.pourDay.after;
  const session = useSession();
  const job = useAppState((state) => state.history.now.job);
  const mine = useAppState((state) => state.hold === 'mine');
  const { of, standing } = useLiveTakeoff();
  if (!mine || standing !== 'current' || of !== job) return null;
  const truck = leftMesh(job.meshStock, mesh.plan);
  if (JSON.stringify(truck) === JSON.stringify(job.meshStock.truck)) return null;
  return (
    <button
      type="button"
      className="pour-button"
      onClick={() =>
        session.commit({ do: 'set-mesh-stock', meshStock: { ...job.meshStock, truck } })
      }
    >
      {words.mesh}
    </button>
  );
}
