import { type CloseOut, TASKS, TROUBLES } from '../../job/pourLog.ts';
import { TEXT_MOST } from '../../job/textLimits.ts';
import { isOdd, ratioOf, usedVolume } from '../../takeoff/pourDay/history.ts';
import { formatNumber, formatShare } from '../../units/format.ts';
import { METRE } from '../../units/grid.ts';
import { formatLength } from '../../units/length.ts';
import { parseNumber } from '../../units/measure.ts';
import { ok } from '../../units/result.ts';
import { countReading, lengthReading, type Reading, within } from '../practices/reading.ts';
import { sayReading } from '../practices/sayReading.ts';
import { TypedField } from '../practices/TypedField.tsx';
import { TypedReading } from '../practices/TypedReading.tsx';
import { useSession, useWords } from '../SessionContext.ts';
import { localeOf } from '../speech.ts';
import { NoteField } from './NoteField.tsx';
import type { Pour } from './usePour.ts';

interface CloseOutFormProps {
  readonly pour: Pour;
  readonly closeOut: CloseOut;
}

const MOST_BAGS = 100_000;
const MOST_HOURS = 10_000;

/** What it took, each field saved as it is left. */
export function CloseOutForm({ pour, closeOut }: CloseOutFormProps) {
  const words = useWords();
  const says = words.app.pourDay.after;
  const session = useSession();
  const { job } = pour;
  const { units } = job;
  const when = new Intl.DateTimeFormat(localeOf(words.language), {
    dateStyle: 'medium',
    timeStyle: 'short',
  }).format(closeOut.at);
  const hours = closeOut.hours.reduce((sum, one) => sum + one.hours, 0);

  function put(part: Partial<CloseOut>) {
    session.commit({ do: 'set-close-out', closeOut: { ...closeOut, ...part } });
  }

  function putBags(mix: string, part: Partial<CloseOut['bags'][number]>) {
    put({ bags: closeOut.bags.map((one) => (one.mix === mix ? { ...one, ...part } : one)) });
  }

  function putDepth(depth: number | null) {
    if (depth !== null) return put({ depth });
    const { depth: _, ...rest } = closeOut;
    session.commit({ do: 'set-close-out', closeOut: rest });
  }

  return (
    <section className="pour-card">
      <h2>{says.title}</h2>
      <p className="pour-soft">{says.closed(when)}</p>
      <Ratio pour={pour} closeOut={closeOut} />
      {closeOut.bags.map(({ mix, name, used, left, returned }) => (
        <div key={mix} className="pour-fields">
          <TypedReading
            label={says.used(name)}
            reading={numberReading(used, MOST_BAGS)}
            onValue={(value) => putBags(mix, { used: value })}
          />
          <TypedReading
            label={says.left(name)}
            reading={countReading(left, 0, MOST_BAGS)}
            onValue={(value) => putBags(mix, { left: value })}
          />
          <TypedReading
            label={says.returned(name)}
            reading={countReading(returned, 0, MOST_BAGS)}
            onValue={(value) => putBags(mix, { returned: value })}
          />
          {returned > left ? (
            <p className="field-error" role="alert">
              {says.tooManyReturned(name)}
            </p>
          ) : null}
        </div>
      ))}
      <TypedField<number | null>
        label={says.depth}
        text={closeOut.depth === undefined ? '' : formatLength(closeOut.depth, units)}
        note={closeOut.depth === undefined ? says.noDepth : undefined}
        parse={(text) =>
          text.trim() === '' ? ok(null) : lengthReading(0, 1, METRE, units).parse(text)
        }
        say={(problem) => sayReading(words, problem)}
        onValue={putDepth}
      />
      <h3>{says.hours}</h3>
      <div className="pour-fields">
        {TASKS.map((task) => (
          <TypedReading
            key={task}
            label={says.tasks[task]}
            reading={numberReading(
              closeOut.hours.find((one) => one.task === task)?.hours ?? 0,
              MOST_HOURS,
            )}
            onValue={(value) =>
              put({
                hours: [
                  ...closeOut.hours.filter((one) => one.task !== task),
                  ...(value > 0 ? [{ task, hours: value }] : []),
                ],
              })
            }
          />
        ))}
      </div>
      {hours > 0 ? <p>{says.allHours(formatNumber(hours))}</p> : null}
      <fieldset className="pour-tags">
        <legend>{says.wrong}</legend>
        {TROUBLES.map((one) => (
          <label key={one} className="pour-check">
            <input
              type="checkbox"
              checked={closeOut.wrong.includes(one)}
              onChange={(event) =>
                put({
                  wrong: event.currentTarget.checked
                    ? [...closeOut.wrong, one]
                    : closeOut.wrong.filter((each) => each !== one),
                })
              }
            />
            <span>{says.troubles[one]}</span>
          </label>
        ))}
      </fieldset>
      <NoteField
        label={says.note}
        text={closeOut.says}
        most={TEXT_MOST.notes}
        onText={(text) => put({ says: text })}
      />
      <button
        type="button"
        className="pour-button"
        onClick={() => session.commit({ do: 'set-close-out', closeOut: null })}
      >
        {says.open}
      </button>
    </section>
  );
}

/** Used over net, in words, and the depth that it means. */
function Ratio({ pour, closeOut }: CloseOutFormProps) {
  const says = useWords().app.pourDay.after;
  const { units, practices } = pour.job;
  const ratio = ratioOf(closeOut);
  const share = formatShare(Math.abs(ratio - 1));
  const depth = Math.round(usedVolume(closeOut) / closeOut.area);
  return (
    <>
      <p className="pour-count" role="status">
        {says.ratio(formatNumber(ratio, 2), ratio >= 1 ? says.over(share) : says.under(share))}
      </p>
      {isOdd(ratio) ? (
        <p className="field-error" role="alert">
          {says.odd}
        </p>
      ) : (
        <p>{says.meant(formatLength(depth, units), formatLength(practices.thickness, units))}</p>
      )}
    </>
  );
}

function numberReading(value: number, most: number): Reading {
  return within({ text: formatNumber(value), parse: parseNumber }, 0, most, formatNumber);
}
