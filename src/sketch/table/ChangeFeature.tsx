import type { Command } from '../../job/commands.ts';
import type { Feature } from '../../job/job.ts';
import { parseAngle } from '../../units/angle.ts';
import { parseLength } from '../../units/length.ts';
import { parseNumber } from '../../units/measure.ts';
import { ok } from '../../units/result.ts';
import { featureName } from '../featureName.ts';
import { JointChoice } from '../JointChoice.tsx';
import { ServiceChoice } from '../ServiceChoice.tsx';
import { lengthKeyboard } from '../typed/lengthKeyboard.ts';
import { TypedBox } from '../typed/TypedBox.tsx';
import { useTyped } from '../typed/useTyped.ts';
import { EditCell } from './EditCell.tsx';
import { pressCommand, type TablePart, tryCommand } from './tableProps.ts';

interface ChangeFeatureProps extends TablePart {
  readonly feature: Feature;
}

/** Everything that is done to a shape as a whole. */
export function ChangeFeature(props: ChangeFeatureProps) {
  const { job, words, feature } = props;
  const says = words.table;
  const name = featureName(job, feature, words);
  const press = (command: Command) => pressCommand(props, command);
  return (
    <details className="change-feature">
      <summary>{says.edit(name)}</summary>
      <EditCell
        label={says.name}
        heading={says.name}
        shown={feature.name}
        parse={(text) => ok(text.trim())}
        sayProblem={props.sayProblem}
        onValue={(typed) =>
          tryCommand(props, { do: 'set-feature', feature: feature.id, name: typed })
        }
      />
      <OwnSettings {...props} />
      <MoveBy {...props} />
      <TurnBy {...props} />
      <div className="sketch-bar-buttons">
        <button
          type="button"
          onClick={() => press({ do: 'mirror-feature', feature: feature.id, across: 'vertical' })}
        >
          {says.mirrorSides}
        </button>
        <button
          type="button"
          onClick={() => press({ do: 'mirror-feature', feature: feature.id, across: 'horizontal' })}
        >
          {says.mirrorEnds}
        </button>
        <button
          type="button"
          onClick={() =>
            press({ do: 'order-feature', feature: feature.id, to: job.features.length - 1 })
          }
        >
          {says.toFront}
        </button>
        <button
          type="button"
          onClick={() => press({ do: 'order-feature', feature: feature.id, to: 0 })}
        >
          {says.toBack}
        </button>
        <button type="button" onClick={() => press({ do: 'remove-feature', feature: feature.id })}>
          {says.removeFeature(name)}
        </button>
      </div>
    </details>
  );
}

/** What only some kinds have: treads, what it carries, pour against, closed or open. */
function OwnSettings(props: ChangeFeatureProps) {
  const { words, feature } = props;
  const says = words.table;
  if (feature.kind === 'steps') {
    return (
      <EditCell
        label={says.treads}
        heading={says.treads}
        shown={String(feature.treads)}
        keyboard="decimal"
        parse={parseNumber}
        sayProblem={props.sayProblem}
        onValue={(treads) =>
          Number.isInteger(treads) && treads >= 0 && treads <= MOST_TREADS
            ? tryCommand(props, { do: 'set-feature', feature: feature.id, treads })
            : says.wholeNumber
        }
      />
    );
  }
  if (feature.kind === 'utility-line') {
    return (
      <ServiceChoice
        words={words}
        label={says.service}
        service={feature.service}
        onService={(service) =>
          pressCommand(props, { do: 'set-feature', feature: feature.id, service })
        }
      />
    );
  }
  if (feature.kind === 'joint') {
    return (
      <JointChoice
        words={words}
        label={says.joint}
        joint={feature.joint}
        onJoint={(joint) => pressCommand(props, { do: 'set-feature', feature: feature.id, joint })}
      />
    );
  }
  if (feature.kind !== 'building-line') return null;
  const set = (part: { pourAgainst?: boolean; closed?: boolean }) =>
    pressCommand(props, { do: 'set-feature', feature: feature.id, ...part });
  return (
    <>
      <label className="tick-choice">
        <input
          type="checkbox"
          checked={feature.pourAgainst}
          onChange={(event) => set({ pourAgainst: event.target.checked })}
        />
        <span>{says.pourAgainst}</span>
      </label>
      <label className="tick-choice">
        <input
          type="checkbox"
          checked={feature.shape.closed}
          onChange={(event) => set({ closed: event.target.checked })}
        />
        <span>{says.closed}</span>
      </label>
    </>
  );
}

const MOST_TREADS = 40;

function MoveBy(props: ChangeFeatureProps) {
  const { job, words, sayProblem, feature } = props;
  const says = words.table;
  const across = useTyped((text) => readOffset(text), sayProblem);
  const up = useTyped((text) => readOffset(text), sayProblem);

  /** An empty box is no move that way. */
  function readOffset(text: string) {
    return text.trim() === '' ? ok(0) : parseLength(text, job.units);
  }

  function move() {
    const [x, y] = [across.read(), up.read()];
    if (x === null || y === null) return;
    const refused = tryCommand(props, { do: 'move-feature', feature: feature.id, by: { x, y } });
    if (refused) {
      across.refuse(refused);
      return;
    }
    across.clear();
    up.clear();
  }

  return (
    <form
      className="change-row"
      aria-label={says.moveBy}
      onSubmit={(event) => {
        event.preventDefault();
        move();
      }}
    >
      <TypedBox label={says.moveAcross} keyboard={lengthKeyboard(job.units)} {...across} />
      <TypedBox label={says.moveUp} keyboard={lengthKeyboard(job.units)} {...up} />
      <button type="submit">{says.move}</button>
    </form>
  );
}

function TurnBy(props: ChangeFeatureProps) {
  const { words, sayProblem, feature } = props;
  const says = words.table;
  const angle = useTyped(parseAngle, sayProblem);

  function turn() {
    const degrees = angle.read();
    if (degrees === null) return;
    const refused = tryCommand(props, { do: 'turn-feature', feature: feature.id, degrees });
    if (refused) angle.refuse(refused);
    else angle.clear();
  }

  return (
    <form
      className="change-row"
      aria-label={says.turnBy}
      onSubmit={(event) => {
        event.preventDefault();
        turn();
      }}
    >
      <TypedBox label={says.turnBy} hint={says.turnHint} {...angle} />
      <button type="submit">{says.turn}</button>
    </form>
  );
}
