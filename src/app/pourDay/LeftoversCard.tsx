import { LeftoversButton } from '../boards/LeftoversButton.tsx';
import { useWords } from '../SessionContext.ts';
import type { Pour } from './usePour.ts';

/** What the next job can begin with: rests worth keeping go back onto the truck's lists. */
export function LeftoversCard({ pour }: { readonly pour: Pour }) {
  const words = useWords().app.pourDay.after;
  const { boards } = pour.takeoff;
  if (!boards) return null;
  return (
    <section className="pour-card">
      <h2>{words.boards}</h2>
      <p className="pour-soft">{words.boardsSays}</p>
      <LeftoversButton boards={boards} onPut={() => undefined} />
    </section>
  );
}
