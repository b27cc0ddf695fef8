import { type FormEvent, useState } from 'react';
import { demoJob } from '../../job/demo.ts';
import type { Job, UnitStyle } from '../../job/job.ts';
import { blankJob, lShapeJob, rectangleJob } from '../../job/start.ts';
import { cutText, TEXT_MOST } from '../../job/textLimits.ts';
import { sayProblem } from '../../sheet/words/say.ts';
import { FOOT, type Grid, METRE } from '../../units/grid.ts';
import { formatLength, parseLength } from '../../units/length.ts';
import type { Problem } from '../../units/result.ts';
import { ChooseField } from '../ChooseField.tsx';
import { useWords } from '../SessionContext.ts';
import { SizeField } from './SizeField.tsx';
import { hasMadeUpBoards, startedFrom, startsFrom } from './startsFrom.ts';

type Kind = 'rectangle' | 'ell' | 'blank' | 'sample';
type Size = 'length' | 'width' | 'notchLength' | 'notchWidth';

const KINDS: readonly Kind[] = ['rectangle', 'ell', 'blank', 'sample'];
const SIZES: Readonly<Record<Kind, readonly Size[]>> = {
  rectangle: ['length', 'width'],
  ell: ['length', 'width', 'notchLength', 'notchWidth'],
  blank: [],
  sample: [],
};

/** Round numbers in either system to start from; every one can be typed over. */
function firstSizes(units: UnitStyle): Record<Size, string> {
  const metric = units === 'metric';
  const size = (feet: number, metres: number) =>
    formatLength(metric ? metres * METRE : feet * FOOT, units);
  return {
    length: size(12, 4),
    width: size(10, 3),
    notchLength: size(4, 1.5),
    notchWidth: size(3, 1),
  };
}

interface StartFormProps {
  /** The job on the table: its units go along, and what it has on hand if wanted. */
  readonly open: Job;
  readonly onStart: (job: Job) => void;
}

export function StartForm({ open, onStart }: StartFormProps) {
  const { units } = open;
  const words = useWords();
  const jobs = words.app.jobs;
  const [kind, setKind] = useState<Kind>('rectangle');
  const [name, setName] = useState('');
  const [from, setFrom] = useState(() => startsFrom(open));
  const [sizes, setSizes] = useState(() => firstSizes(units));
  const [problems, setProblems] = useState<Partial<Record<Size | 'all', readonly Problem[]>>>({});

  function start(event: FormEvent) {
    event.preventDefault();
    if (kind === 'sample') return onStart(demoJob());
    const read = SIZES[kind].map((size) => ({ size, result: parseLength(sizes[size], units) }));
    const wrong = read.flatMap(({ size, result }) => (result.ok ? [] : [[size, result.problems]]));
    setProblems(Object.fromEntries(wrong));
    if (wrong.length > 0) return;
    const lengths = read.flatMap(({ result }) => (result.ok ? [result.value] : []));
    const made = make(kind, lengths);
    if (!made.ok) return setProblems(bySize(made.problems));
    const named = cutText(name.trim(), TEXT_MOST.name) || jobs.newName;
    onStart({ ...startedFrom(made.value, open, from), name: named, units });
  }

  return (
    <form className="start" onSubmit={start} noValidate>
      <fieldset className="choices">
        <legend>{jobs.start}</legend>
        {KINDS.map((one) => (
          <label key={one} className="choice">
            <input
              type="radio"
              name="start-kind"
              checked={one === kind}
              onChange={() => setKind(one)}
            />
            {jobs[one]}
          </label>
        ))}
      </fieldset>
      {kind === 'sample' ? null : (
        <label className="field">
          {jobs.name}
          <input
            value={name}
            maxLength={TEXT_MOST.name}
            onChange={(event) => setName(event.currentTarget.value)}
          />
        </label>
      )}
      <div className="start-sizes">
        {SIZES[kind].map((size) => (
          <SizeField
            key={size}
            units={units}
            label={jobs[size]}
            text={sizes[size]}
            problems={problems[size] ?? []}
            onText={(text) => setSizes({ ...sizes, [size]: text })}
          />
        ))}
      </div>
      {kind === 'sample' ? null : (
        <>
          <ChooseField
            label={jobs.startWith}
            options={[
              ['open-job', jobs.withOpen(open.name || words.app.head.unnamed)],
              ['defaults', jobs.withDefaults],
            ]}
            value={from}
            onChoose={(key) => setFrom(key === 'open-job' ? 'open-job' : 'defaults')}
          />
          {hasMadeUpBoards(open) ? <p className="field-note">{jobs.madeUp}</p> : null}
        </>
      )}
      {problems.all?.map((problem) => (
        <p key={problem.code} className="field-error" role="alert">
          {sayProblem(words.sheet, problem)}
        </p>
      ))}
      <button type="submit" className="main-button">
        {jobs.make}
      </button>
    </form>
  );

  function make(
    of: Kind,
    [length = 0, width = 0, notchLength = 0, notchWidth = 0]: readonly Grid[],
  ) {
    if (of === 'rectangle') return rectangleJob(length, width);
    if (of === 'ell') return lShapeJob(length, width, notchLength, notchWidth);
    return { ok: true as const, value: blankJob() };
  }
}

/** A size's problem beside its field; any other under the form. */
function bySize(problems: readonly Problem[]): Partial<Record<Size | 'all', readonly Problem[]>> {
  const sorted: Partial<Record<Size | 'all', Problem[]>> = {};
  for (const problem of problems) {
    const size = SIZES.ell.find((one) => one === problem.where) ?? 'all';
    sorted[size] = [...(sorted[size] ?? []), problem];
  }
  return sorted;
}
