import type { Practices } from '../../job/job.ts';
import { formatLength } from '../../units/length.ts';
import { useAppState, useLiveTakeoff, useWords } from '../SessionContext.ts';

/** When board and gap give another depth than the thickness: says so, and offers to take the forms' depth. */
export function FormDepthOffer({
  onPractices,
}: {
  readonly onPractices: (practices: Practices) => void;
}) {
  const words = useWords().app.practices;
  const { practices, units } = useAppState((state) => state.history.now.job);
  const volume = useLiveTakeoff().takeoff.volume;
  if (!volume || volume.formDepth === practices.thickness) return null;
  const depth = formatLength(volume.formDepth, units);
  return (
    <div className="note" data-weight="caution">
      <p>{words.depthDiffers(formatLength(practices.thickness, units), depth)}</p>
      <button
        type="button"
        className="plain"
        onClick={() => onPractices({ ...practices, thickness: volume.formDepth })}
      >
        {words.takeFormDepth(depth)}
      </button>
    </div>
  );
}
