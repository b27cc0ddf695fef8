import { useId, useState } from 'react';
import type { Command } from '../../job/commands.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { formatLength } from '../../units/length.ts';
import { saidBroken } from '../brokenRules.ts';
import { type FormLine, formLineOf, isPicked, pickOf, type SiteStake } from '../formLine.ts';
import { runEnds } from '../runEnds.ts';
import { nextHand, pin, takeAway } from '../stakeCommands.ts';
import { AddStake } from './AddStake.tsx';
import { StakeCell } from './StakeCell.tsx';
import { type CornerTableProps, pressCommand } from './tableProps.ts';

export interface StakeTableProps extends CornerTableProps {
  readonly takeoff: Takeoff;
}

/** So many rows at a time. */
const PAGE = 50;

/** The stakes of one form run as a table: each can be moved by a typed distance, pinned, taken away and freed. */
export function StakeTable(props: StakeTableProps) {
  const { job, takeoff, words } = props;
  const says = words.stakes.table;
  const line = formLineOf(job, takeoff);
  return (
    <section className="corner-table stake-table" aria-label={says.title}>
      <details className="change-feature" open>
        <summary>{says.title}</summary>
        {line && line.runs.length > 0 ? <RunStakes {...props} line={line} /> : <p>{says.none}</p>}
        {(line?.off ?? []).map(({ id, is }) => (
          <div key={id} className="change-row">
            <span>{words.stakes.off[is]}</span>
            <button type="button" onClick={() => pressCommand(props, { do: 'free-stake', id })}>
              {words.stakes.free}
            </button>
          </div>
        ))}
        {job.handStakes.length > 0 ? (
          <button type="button" onClick={() => pressCommand(props, { do: 'free-stakes' })}>
            {says.freeAll(job.handStakes.length)}
          </button>
        ) : null}
      </details>
    </section>
  );
}

type WithLine = StakeTableProps & { readonly line: FormLine };

interface Part {
  readonly run: FormLine['runs'][number];
  /** Numbered from 0 along the run. */
  readonly first: number;
  readonly stakes: readonly SiteStake[];
  readonly name: string;
}

/** Every run, and long ones in parts. */
function partsOf({ runs, stakes }: FormLine, words: StakeTableProps['words']): readonly Part[] {
  const byRun = new Map<string, SiteStake[]>();
  for (const stake of stakes) {
    const those = byRun.get(stake.run.mark);
    if (those) those.push(stake);
    else byRun.set(stake.run.mark, [stake]);
  }
  return runs.flatMap((run) => {
    const those = byRun.get(run.mark) ?? [];
    if (those.length <= PAGE) return [{ run, first: 0, stakes: those, name: run.mark }];
    return Array.from({ length: Math.ceil(those.length / PAGE) }, (_, at): Part => {
      const first = at * PAGE;
      const part = those.slice(first, first + PAGE);
      const name = words.stakes.table.part(run.mark, first + 1, first + part.length);
      return { run, first, stakes: part, name };
    });
  });
}

function RunStakes(props: WithLine) {
  const { job, words, line, selection } = props;
  const says = words.stakes.table;
  const id = useId();
  const parts = partsOf(line, words);
  const picked = selection?.stake;
  const key = picked ? JSON.stringify(picked) : '';
  const [turned, setTurned] = useState({ part: 0, key: '' });
  // The part that was turned to, until another stake is picked: then the one with that stake.
  const withPicked = parts.findIndex((part) => part.stakes.some((one) => isPicked(one, picked)));
  const at = turned.key === key || withPicked < 0 ? turned.part : withPicked;
  const part = parts[Math.min(at, parts.length - 1)];
  if (!part) return null;
  const ends = runEnds(job, part.run, words);
  return (
    <>
      <p>{says.hint}</p>
      <div className="typed">
        <label htmlFor={id}>{says.run}</label>
        <select
          id={id}
          value={parts.indexOf(part)}
          onChange={(event) => setTurned({ part: Number(event.target.value), key })}
        >
          {parts.map(({ name }, index) => (
            <option key={name} value={index}>
              {name}
            </option>
          ))}
        </select>
      </div>
      <div className="corner-scroll">
        <table>
          <caption>{`${part.name}, ${formatLength(part.run.length, job.units)}`}</caption>
          <thead>
            <tr>
              <th scope="col">{says.stake}</th>
              <th scope="col">{words.stakes.from(ends.start)}</th>
              <th scope="col">{says.state}</th>
              <th scope="col">{says.more}</th>
            </tr>
          </thead>
          <tbody>
            {part.stakes.map((stake, index) => (
              <StakeRow
                key={stake.hand ?? index}
                {...props}
                stake={stake}
                number={part.first + index + 1}
                start={ends.start}
              />
            ))}
          </tbody>
        </table>
      </div>
      <AddStake key={part.run.mark} {...props} run={part.run} start={ends.start} />
    </>
  );
}

type StakeRowProps = WithLine & {
  readonly stake: SiteStake;
  /** From 1 along the run. */
  readonly number: number;
  readonly start: string;
};

function StakeRow(props: StakeRowProps) {
  const { job, takeoff, words, sayProblem, selection, stake, number, start } = props;
  const { onSelect, onCommit } = props;
  const says = words.stakes;
  const { is, hand } = stake;
  const chosen = isPicked(stake, selection?.stake);

  /** Does it, and goes on with the same stake where that is the one picked. */
  function set(command: Command) {
    onCommit(command);
    if (chosen) onSelect({ stake: { hand: hand ?? nextHand(job) } });
  }

  return (
    <tr aria-current={chosen ? 'true' : undefined}>
      <th scope="row">
        <button
          type="button"
          aria-label={says.table.select(number)}
          aria-pressed={chosen}
          onClick={() => onSelect(chosen ? null : { stake: pickOf(stake) })}
        >
          {number}
        </button>
      </th>
      <td>
        <StakeCell
          {...{ job, words, sayProblem, stake }}
          from="start"
          label={says.table.cell(number, start)}
          onPin={set}
        />
      </td>
      <td className="stake-state">
        {says.is[is]}
        {saidBroken(takeoff, hand, job, words).map((said) => (
          <p key={said} className="stake-broken">
            {said}
          </p>
        ))}
      </td>
      <td>
        <div className="sketch-bar-buttons">
          {is === 'pinned' ? null : (
            <button
              type="button"
              aria-label={says.table.pin(number)}
              onClick={() => set(pin(stake.face, hand))}
            >
              {says.pin}
            </button>
          )}
          {is === 'removed' ? null : (
            <button
              type="button"
              aria-label={says.table.remove(number)}
              onClick={() => set(takeAway(stake))}
            >
              {says.remove}
            </button>
          )}
          {hand === null ? null : (
            <button
              type="button"
              aria-label={says.table.free(number)}
              onClick={() => onCommit({ do: 'free-stake', id: hand })}
            >
              {says.free}
            </button>
          )}
        </div>
      </td>
    </tr>
  );
}
