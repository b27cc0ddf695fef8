import { useEffect, useRef } from 'react';
import type { Command } from '../../job/commands.ts';
import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { saidBroken } from '../brokenRules.ts';
import type { SiteStake } from '../formLine.ts';
import { runEnds } from '../runEnds.ts';
import { nextHand, pin, takeAway } from '../stakeCommands.ts';
import { StakeCell } from '../table/StakeCell.tsx';
import type { Selection } from '../tools/tool.ts';
import type { BarProps } from './barProps.ts';

interface StakeBarProps extends BarProps {
  readonly job: Job;
  readonly takeoff: Takeoff;
  readonly stake: SiteStake;
  /** True when its place is to be typed: the box then takes the keyboard. */
  readonly asking: boolean;
  readonly onCommit: (command: Command) => void;
  readonly onSelect: (selection: Selection | null) => void;
}

/** The stake that is picked or dragged: where it is on its run, what it breaks, and what can be done with it. */
export function StakeBar(props: StakeBarProps) {
  const { words, sayProblem, job, takeoff, stake, asking, onCommit, onSelect } = props;
  const says = words.stakes;
  const { run, is, hand } = stake;
  const ends = runEnds(job, run, words);
  const boxes = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (asking) boxes.current?.querySelector('input')?.focus();
  }, [asking]);

  /** Does it, and goes on with the same stake, which is now set by hand. */
  function set(command: Command) {
    onCommit(command);
    onSelect({ stake: { hand: hand ?? nextHand(job) } });
  }

  const common = { job, words, sayProblem, stake, onPin: set };
  return (
    <div className="sketch-bar stake-bar">
      <p className="sketch-bar-says">{says.named[is](run.mark)}</p>
      {saidBroken(takeoff, hand, job, words).map((said) => (
        <p key={said} className="stake-broken">
          {said}
        </p>
      ))}
      <div ref={boxes} className="stake-places">
        <StakeCell
          {...common}
          from="start"
          label={says.from(ends.start)}
          heading={says.from(ends.start)}
        />
        <StakeCell
          {...common}
          from="end"
          label={says.from(ends.end)}
          heading={says.from(ends.end)}
        />
      </div>
      <div className="sketch-bar-buttons">
        {is === 'pinned' ? null : (
          <button type="button" className="main" onClick={() => set(pin(stake.face, hand))}>
            {says.pin}
          </button>
        )}
        {is === 'removed' ? null : (
          <button type="button" onClick={() => set(takeAway(stake))}>
            {says.remove}
          </button>
        )}
        {hand === null ? null : (
          <button
            type="button"
            title={says.freeWhy}
            onClick={() => onCommit({ do: 'free-stake', id: hand })}
          >
            {says.free}
          </button>
        )}
      </div>
    </div>
  );
}
