import { type FormEvent, useState } from 'react';
import { pourDayOf } from '../../job/pourDay.ts';
import { type PourDayPractices, withChecked } from '../../job/pourLog.ts';
import { TEXT_MOST } from '../../job/textLimits.ts';
import { FieldRow } from '../practices/FieldRow.tsx';
import { FIELDS } from '../practices/fields.ts';
import { useSession, useWords } from '../SessionContext.ts';
import { CHECKS } from './checks.ts';
import type { Pour } from './usePour.ts';

interface BeforePartProps {
  readonly pour: Pour;
  readonly onPour: () => void;
}

/** What to look at before water touches powder: ours, and the user's own, which go from job to job. */
export function BeforePart({ pour, onPour }: BeforePartProps) {
  const words = useWords().app.pourDay;
  const says = words.before;
  const session = useSession();
  const { job, log, put } = pour;
  const { checks } = pourDayOf(job.practices);
  const [typed, setTyped] = useState('');
  const items = [
    ...CHECKS.map((key) => ({ key: String(key), text: says.checks[key], own: false })),
    ...checks.map(({ id, text }) => ({ key: id, text, own: true })),
  ];
  const done = items.filter(({ key }) => log.checked.includes(key)).length;

  function putChecks(next: PourDayPractices['checks']) {
    const pourDay = { ...pourDayOf(job.practices), checks: next };
    session.commit({ do: 'set-practices', practices: { ...job.practices, pourDay } });
  }

  function add(event: FormEvent) {
    event.preventDefault();
    const text = typed.trim();
    if (text === '') return;
    putChecks([...checks, { id: freeId(checks), text }]);
    setTyped('');
  }

  return (
    <div className="pour-columns">
      <section className="pour-card">
        <h2>{says.title}</h2>
        <p role="status" className="pour-soft">
          {done === items.length ? says.all : says.done(String(done), String(items.length))}
        </p>
        <ul className="pour-checks">
          {items.map(({ key, text, own }) => (
            <li key={key}>
              <label className="pour-check">
                <input
                  type="checkbox"
                  checked={log.checked.includes(key)}
                  onChange={(event) => put(withChecked(log, key, event.currentTarget.checked))}
                />
                <span>{text}</span>
              </label>
              {own ? (
                <button
                  type="button"
                  className="pour-button"
                  aria-label={says.remove(text)}
                  onClick={() => putChecks(checks.filter(({ id }) => id !== key))}
                >
                  ×
                </button>
              ) : null}
            </li>
          ))}
        </ul>
        <form className="pour-row" onSubmit={add}>
          <label className="field pour-grow">
            {says.own}
            <input
              value={typed}
              maxLength={TEXT_MOST.name}
              placeholder={says.addOwn}
              onChange={(event) => setTyped(event.currentTarget.value)}
            />
          </label>
          <button type="submit" className="pour-button">
            {says.add}
          </button>
        </form>
        <button type="button" className="pour-button pour-main" onClick={onPour}>
          {says.start}
        </button>
      </section>
      <details className="pour-card">
        <summary>{says.settings}</summary>
        {FIELDS['pour-day'].map((field) => (
          <FieldRow
            key={field.key}
            field={field}
            practices={job.practices}
            units={job.units}
            onPractices={(practices) => session.commit({ do: 'set-practices', practices })}
          />
        ))}
      </details>
    </div>
  );
}

function freeId(checks: PourDayPractices['checks']): string {
  let number = 1;
  while (checks.some(({ id }) => id === `own-${number}`)) number += 1;
  return `own-${number}`;
}
