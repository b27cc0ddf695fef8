import type { Command } from '../../job/commands.ts';
import type { Feature, Job } from '../../job/job.ts';
import { cornerLetter } from '../../job/letters.ts';
import { formatLength } from '../../units/length.ts';
import { lengthOf } from '../edgeMeasures.ts';
import { edgeLetters, featureName } from '../featureName.ts';
import { JointChoice } from '../JointChoice.tsx';
import { ServiceChoice } from '../ServiceChoice.tsx';
import { edgesOf } from '../site.ts';
import type { FeatureSelection } from '../tools/tool.ts';
import type { BarProps } from './barProps.ts';

interface SelectionBarProps extends Omit<BarProps, 'sayProblem'> {
  readonly job: Job;
  readonly feature: Feature;
  readonly selection: FeatureSelection;
  readonly onCommit: (command: Command) => void;
  readonly onAskLength: () => void;
}

/** What can be done with the selected corner or shape without a keyboard. */
export function SelectionBar(props: SelectionBarProps) {
  const { words, job, feature, selection, onCommit } = props;
  const says = words.selected;
  const name = featureName(job, feature, words);
  const { shape } = feature;
  const index =
    shape.form === 'outline' ? shape.corners.findIndex(({ id }) => id === selection.corner) : -1;
  const corner = shape.form === 'outline' ? shape.corners[index] : undefined;
  return (
    <div className="sketch-bar one-line">
      <p className="sketch-bar-says">{corner ? says.corner(name, cornerLetter(index)) : name}</p>
      <div className="sketch-bar-buttons">
        {corner ? (
          <CornerButtons {...props} corner={corner.id} letter={cornerLetter(index)} />
        ) : null}
        {feature.kind === 'building-line' ? (
          <label className="tick-choice">
            <input
              type="checkbox"
              checked={feature.pourAgainst}
              onChange={(event) =>
                onCommit({
                  do: 'set-feature',
                  feature: feature.id,
                  pourAgainst: event.target.checked,
                })
              }
            />
            <span>{says.pourAgainst}</span>
          </label>
        ) : null}
        {feature.kind === 'utility-line' ? (
          <ServiceChoice
            words={words}
            label={says.service}
            service={feature.service}
            onService={(service) => onCommit({ do: 'set-feature', feature: feature.id, service })}
          />
        ) : null}
        {feature.kind === 'joint' ? (
          <JointChoice
            words={words}
            label={says.joint}
            joint={feature.joint}
            onJoint={(joint) => onCommit({ do: 'set-feature', feature: feature.id, joint })}
          />
        ) : null}
        <button
          type="button"
          onClick={() => onCommit({ do: 'remove-feature', feature: feature.id })}
        >
          {says.removeFeature}
        </button>
      </div>
    </div>
  );
}

function CornerButtons({
  words,
  units,
  feature,
  corner,
  letter,
  onCommit,
  onAskLength,
}: SelectionBarProps & { readonly corner: string; readonly letter: string }) {
  const says = words.selected;
  const letters = edgeLetters(feature, corner);
  const edge = edgesOf(feature).find(({ from }) => from.id === corner);
  const length = lengthOf(feature, corner);
  const between = letters ? `${letters.from}–${letters.to}` : '';
  return (
    <>
      {edge && length !== null ? (
        <>
          <button type="button" className="main" onClick={onAskLength}>
            {says.edgeLength(between, formatLength(length, units))}
          </button>
          <button
            type="button"
            onClick={() =>
              onCommit({ do: 'insert-corner', feature: feature.id, after: corner, at: edge.middle })
            }
          >
            {says.insertCorner(between)}
          </button>
        </>
      ) : null}
      <button
        type="button"
        onClick={() => onCommit({ do: 'remove-corner', feature: feature.id, corner })}
      >
        {says.removeCorner(letter)}
      </button>
    </>
  );
}
