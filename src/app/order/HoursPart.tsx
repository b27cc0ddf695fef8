import type { Job } from '../../job/job.ts';
import { TASKS, type Task } from '../../job/order.ts';
import { bidOf, orderOf } from '../../job/orderDefaults.ts';
import {
  CUBIC_METRE,
  CUBIC_YARD,
  FOOT,
  METRE,
  SQUARE_FOOT,
  SQUARE_METRE,
} from '../../units/grid.ts';
import { askedReading } from '../practices/askedReading.ts';
import type { MeasuredIn } from '../practices/field.ts';
import { sayReading } from '../practices/sayReading.ts';
import { TypedField } from '../practices/TypedField.tsx';
import { useSession, useWords } from '../SessionContext.ts';

const HOURS: MeasuredIn = { metric: ['hours', 1], other: ['hours', 1] };
const BY_LENGTH: MeasuredIn = {
  metric: ['hoursPer10Metres', 1 / 10],
  other: ['hoursPer10Feet', METRE / (10 * FOOT)],
};
const BY_AREA: MeasuredIn = {
  metric: ['hoursPer10SquareMetres', 1 / 10],
  other: ['hoursPer100SquareFeet', SQUARE_METRE / (100 * SQUARE_FOOT)],
};
const RATES: Readonly<Record<Exclude<Task, 'other'>, MeasuredIn>> = {
  base: BY_AREA,
  forms: BY_LENGTH,
  steel: BY_AREA,
  place: {
    metric: ['hoursPerCubicMetre', 1],
    other: ['hoursPerCubicYard', CUBIC_METRE / CUBIC_YARD],
  },
  finish: BY_AREA,
  strip: BY_LENGTH,
  haul: { metric: ['hoursPerTrip', 1], other: ['hoursPerTrip', 1] },
};
const MOST = 100_000;

/** Hours of one person, task by task: typed for this job, and the rates that others go by. */
export function HoursPart({ job }: { readonly job: Job }) {
  const words = useWords();
  const says = words.app.order.hours;
  const session = useSession();
  const bid = bidOf(job);
  const order = orderOf(job.practices);

  function field(
    label: string,
    unit: MeasuredIn,
    value: number | undefined,
    onValue: (hours: number | null) => void,
  ) {
    const asked = { unit, least: 0, most: MOST };
    const { unit: called, ...reading } = askedReading(asked, value ?? null, job.units);
    return (
      <TypedField<number | null>
        label={label}
        {...reading}
        unit={words.app.practices.units[called]}
        say={(problem) => sayReading(words, problem)}
        onValue={onValue}
        inputMode="decimal"
      />
    );
  }

  return (
    <section className="slip-part" aria-label={words.app.order.parts.hours}>
      <p className="field-note">{says.hint}</p>
      {TASKS.map((task) => {
        const name = words.sheet.terms[`task-${task}`];
        return (
          <div key={task} className="hours-row">
            {field(
              says.typed(name),
              HOURS,
              bid.hours.find((one) => one.task === task)?.hours,
              (hours) =>
                session.commit({
                  do: 'set-bid',
                  bid: { ...bid, hours: withHours(bid.hours, task, hours) },
                }),
            )}
            {task === 'other'
              ? null
              : field(
                  says.rate(name),
                  RATES[task],
                  order.bid.rates.find((one) => one.task === task)?.hours,
                  (hours) => {
                    const rates = withHours(order.bid.rates, task, hours);
                    session.commit({
                      do: 'set-practices',
                      practices: {
                        ...job.practices,
                        order: { ...order, bid: { ...order.bid, rates } },
                      },
                    });
                  },
                )}
          </div>
        );
      })}
    </section>
  );
}

type Rows = readonly { readonly task: Task; readonly hours: number }[];

function withHours(rows: Rows, task: Task, hours: number | null): Rows {
  const others = rows.filter((one) => one.task !== task);
  return hours === null ? others : [...others, { task, hours }];
}
