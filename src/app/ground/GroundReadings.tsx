import { useRef, useState } from 'react';
import { withReading } from '../../job/commands/setGround.ts';
import type { GroundReading } from '../../job/job.ts';
import { datumOf } from '../../sketch/datum.ts';
import { ChooseField } from '../ChooseField.tsx';
import { UnderSlip } from '../places/UnderSlip.tsx';
import { sayReading } from '../practices/sayReading.ts';
import { TypedField } from '../practices/TypedField.tsx';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { depthReading } from './depthReading.ts';
import { ReadingRow } from './ReadingRow.tsx';

/** Depths taped down to the ground, under the mix's ticket, and whether the volume is figured with them. */
export function GroundReadings() {
  const all = useWords();
  const words = all.app.ground;
  const session = useSession();
  const [open, setOpen] = useState(false);
  const job = useAppState((state) => state.history.now.job);
  const title = useRef<HTMLParagraphElement>(null);
  const { ground, units } = job;

  function put(readings: readonly GroundReading[]) {
    session.commit({ do: 'set-ground', ground: { ...ground, readings } });
  }

  return (
    <UnderSlip title={words.title} open={open} onOpen={setOpen}>
      {() => (
        <section className="slip-part">
          <p className="field-note" ref={title} tabIndex={-1}>
            {words.hint}
          </p>
          <ChooseField
            label={words.depthBy}
            options={[
              ['thickness', words.by.thickness],
              ['readings', words.by.readings],
            ]}
            value={ground.depthBy}
            onChoose={(by) =>
              session.commit({
                do: 'set-ground',
                ground: { ...ground, depthBy: by === 'readings' ? 'readings' : 'thickness' },
              })
            }
          />
          {ground.readings.length === 0 ? <p className="boards-none">{words.none}</p> : null}
          <ul>
            {ground.readings.map((reading, i) => (
              <li key={reading.id}>
                <ReadingRow
                  number={i + 1}
                  reading={reading}
                  datum={datumOf(job)}
                  units={units}
                  onReading={(next) =>
                    put(ground.readings.map((one) => (one.id === reading.id ? next : one)))
                  }
                  onTakeOff={() => {
                    put(ground.readings.filter((one) => one.id !== reading.id));
                    // The button that had the focus is gone with its row.
                    title.current?.focus();
                  }}
                />
              </li>
            ))}
          </ul>
          {/* A reading is one when its depth is typed: none stands there with a depth that nobody taped. */}
          <TypedField
            label={words.add}
            text=""
            parse={depthReading(units).parse}
            say={(problem) => sayReading(all, problem)}
            onValue={(depth) =>
              session.commit({ do: 'set-ground', ground: withReading(job, depth) })
            }
            note={words.addHint}
          />
          <p className="field-note">{words.places}</p>
        </section>
      )}
    </UnderSlip>
  );
}
