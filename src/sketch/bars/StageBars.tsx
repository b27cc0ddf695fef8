import type { Command } from '../../job/commands.ts';
import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import type { Problem } from '../../units/result.ts';
import type { StakesInHand } from '../stakesInHand.ts';
import type { Showing } from '../tools/machine.ts';
import type { Selection, Typed } from '../tools/tool.ts';
import type { SketchWords } from '../words/en.ts';
import { DiameterBar } from './DiameterBar.tsx';
import { DrawBar } from './DrawBar.tsx';
import { LengthBar } from './LengthBar.tsx';
import { SelectionBar } from './SelectionBar.tsx';
import { StakeBar } from './StakeBar.tsx';
import { TwoSizesBar } from './TwoSizesBar.tsx';

interface StageBarsProps {
  readonly words: SketchWords;
  readonly sayProblem: (problem: Problem) => string;
  readonly job: Job;
  readonly takeoff: Takeoff;
  readonly stakes: StakesInHand;
  readonly showing: Showing;
  readonly selection: Selection | null;
  /** True when the selected edge's length is being typed. */
  readonly asking: boolean;
  readonly onAsk: (asking: boolean) => void;
  readonly onTyped: (typed: Typed) => void;
  readonly onCancel: () => void;
  readonly onCommit: (command: Command) => void;
  readonly onSelect: (selection: Selection | null) => void;
}

/** The bar that fits what is in hand, or what is selected; none otherwise. */
export function StageBars(props: StageBarsProps) {
  const { words, sayProblem, job, showing, onTyped, onCancel } = props;
  const common = { words, sayProblem, units: job.units, onTyped, onCancel };
  const { asks } = showing;
  switch (asks.for) {
    case 'start':
      return <TwoSizesBar key="start" what="start" {...common} />;
    case 'sizes':
      return <TwoSizesBar key="sizes" what="sizes" {...common} />;
    case 'diameter':
      return <DiameterBar {...common} />;
    case 'corner':
      return <DrawBar asks={asks} aimed={showing.snap !== null} {...common} />;
    case 'nothing':
      return <SelectedBars {...props} />;
    default:
      return asks satisfies never;
  }
}

function SelectedBars(props: StageBarsProps) {
  const { words, sayProblem, job, takeoff, stakes, selection, asking } = props;
  const { onAsk, onCommit, onSelect } = props;
  if (stakes.picked) {
    const { picked: stake } = stakes;
    const common = { words, units: job.units, sayProblem, job, takeoff, onCommit, onSelect };
    return <StakeBar key={stake.hand ?? stake.along} {...common} stake={stake} asking={asking} />;
  }
  const feature = job.features.find(({ id }) => id === selection?.feature);
  if (!feature || !selection?.feature) return null;
  const common = { words, units: job.units, job, feature, onCommit };
  if (asking && selection.corner) {
    return (
      <LengthBar
        key={selection.corner}
        {...common}
        sayProblem={sayProblem}
        corner={selection.corner}
        onDone={() => onAsk(false)}
      />
    );
  }
  return <SelectionBar {...common} selection={selection} onAskLength={() => onAsk(true)} />;
}
