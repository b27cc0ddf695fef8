import { useState } from 'react';
import { withEntry } from '../../job/pourLog.ts';
import { checkpoints, frontAt, placedShare, usualWay } from '../../takeoff/pourDay/front.ts';
import type { Outlook } from '../../takeoff/pourDay/outlook.ts';
import { formatNumber } from '../../units/format.ts';
import { useWords } from '../SessionContext.ts';
import { FrontSketch } from './FrontSketch.tsx';
import type { Pour } from './usePour.ts';

interface FrontCardProps {
  readonly pour: Pour;
  readonly outlook: Outlook;
}

/** Where the concrete ends: tapped on the sketch, slid, or taken as a quarter, a half. And what that should have taken. */
export function FrontCard({ pour, outlook }: FrontCardProps) {
  const words = useWords().app.pourDay;
  const says = words.front;
  const { log, put, takeoff, job } = pour;
  const { bed, placed } = outlook;
  // Of the net alone, as on the sheet: what goes beyond it is what a checkpoint is there to show.
  const net = takeoff.mix?.expectedBags ?? 0;
  const toward = log.toward ?? usualWay(bed);
  const last = log.entries.findLast((entry) => entry.is === 'front');
  const [dragged, setDragged] = useState<number | null>(null);
  const along =
    dragged ?? (last?.toward === toward ? last.along : frontAt(bed, toward, placed ?? 0));
  const shown = dragged === null ? placed : placedShare(bed, toward, dragged);
  const points = checkpoints(bed, takeoff.joints?.layout, toward);

  function tap(to: number) {
    setDragged(null);
    const entry = { is: 'front', at: Date.now(), toward, along: to } as const;
    // A tap right after another sets it right: nothing has gone in between.
    const before = log.entries.at(-1);
    put(
      before?.is === 'front'
        ? { ...log, entries: [...log.entries.slice(0, -1), entry] }
        : withEntry(log, entry),
    );
  }

  const tapShare = (share: number) => tap(frontAt(bed, toward, share));
  const percent = Math.round((shown ?? 0) * 100);

  return (
    <section className="pour-card">
      <h2>{says.title}</h2>
      <p className="pour-soft">{says.says}</p>
      <p className="pour-count" role="status">
        {shown === null ? says.notYet : says.placed(`${percent}%`)}
      </p>
      {placed !== null && outlook.since > 0 ? <p>{says.since(String(outlook.since))}</p> : null}
      <FrontSketch
        job={job}
        bed={bed}
        toward={toward}
        along={along}
        layout={takeoff.joints?.layout}
        onDrag={setDragged}
        onTap={tap}
      />
      <div className="pour-quick">
        {(
          [
            [0.25, says.quarter],
            [0.5, says.half],
            [0.75, says.threeQuarters],
            [1, says.all],
          ] as const
        ).map(([share, label]) => (
          <button key={share} type="button" className="pour-button" onClick={() => tapShare(share)}>
            {label}
          </button>
        ))}
      </div>
      <label className="field">
        {says.slide}
        <input
          type="range"
          className="pour-slide"
          min={0}
          max={100}
          step={1}
          value={percent}
          onChange={(event) =>
            setDragged(frontAt(bed, toward, Number(event.currentTarget.value) / 100))
          }
          onPointerUp={slid}
          onKeyUp={slid}
          onBlur={slid}
        />
      </label>
      <div className="pour-row">
        <button type="button" className="pour-button pour-grow" onClick={() => turnBy(45)}>
          {says.turn}
        </button>
        <button type="button" className="pour-button pour-grow" onClick={() => turnBy(180)}>
          {says.turnRound}
        </button>
      </div>
      {points.length > 0 ? (
        <>
          <h3>{says.checkpoints}</h3>
          <ul>
            {points.map(({ mark, share }) => (
              <li key={mark}>
                {placed !== null && placed >= share
                  ? says.passed(mark)
                  : says.checkpoint(mark, formatNumber(share * net, 0), formatNumber(net, 0))}
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </section>
  );

  /** Which way it goes from here on; what was tapped before stands as it was tapped. */
  function turnBy(degrees: number) {
    setDragged(null);
    put({ ...log, toward: (toward + degrees) % 360 });
  }

  function slid() {
    if (dragged !== null) tap(dragged);
  }
}
