import './sketch.css';
import { useId, useState } from 'react';
import type { Feature, Job } from '../job/job.ts';
import { cornerLetter } from '../job/letters.ts';
import { datumOf } from './datum.ts';
import { featureName } from './featureName.ts';
import { AddShape } from './table/AddShape.tsx';
import { ChangeFeature } from './table/ChangeFeature.tsx';
import { OutlineTable } from './table/OutlineTable.tsx';
import { RoundTable } from './table/RoundTable.tsx';
import type { CornerTableProps, TablePart } from './table/tableProps.ts';
import type { SketchWords } from './words/en.ts';

/** The sketch as tables: every corner and edge, to be read, typed over, added and taken away by keyboard. */
export function CornerTable(props: CornerTableProps) {
  const { job, words } = props;
  const says = words.table;
  const [datumCorner, setDatumCorner] = useState<string | null>(null);
  const places = cornersOf(job, words);
  const chosen = places.find(({ id }) => id === datumCorner) ?? null;
  const datum = chosen ? chosen.at : datumOf(job);
  const part: TablePart = { ...props, datum };
  const pickId = useId();
  return (
    <div className="corner-table">
      {job.features.length === 0 ? (
        <p>{says.none}</p>
      ) : (
        <div className="typed">
          <label htmlFor={pickId}>{says.datum}</label>
          <select
            id={pickId}
            value={chosen?.id ?? ''}
            onChange={(event) => setDatumCorner(event.target.value || null)}
          >
            <option value="">{says.usualDatum}</option>
            {places.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </div>
      )}
      {job.features.map((feature) => (
        <FeatureTable key={feature.id} {...part} feature={feature} />
      ))}
      <AddShape {...part} />
    </div>
  );
}

function FeatureTable(props: TablePart & { readonly feature: Feature }) {
  const { job, words, feature, selection } = props;
  const name = featureName(job, feature, words);
  const caption = words.table.caption(name, words.kinds[feature.kind]);
  const { shape } = feature;
  return (
    <section aria-label={name} data-chosen={selection?.feature === feature.id}>
      {shape.form === 'outline' ? (
        <OutlineTable {...props} shape={shape} caption={caption} />
      ) : (
        <RoundTable {...props} shape={shape} caption={caption} />
      )}
      <ChangeFeature {...props} />
    </section>
  );
}

function cornersOf(job: Job, words: SketchWords) {
  return job.features.flatMap((feature) => {
    const { shape } = feature;
    if (shape.form === 'round') return [];
    const name = featureName(job, feature, words);
    return shape.corners.map((corner, index) => ({
      id: corner.id,
      at: { x: corner.x, y: corner.y },
      name: words.table.datumCorner(name, cornerLetter(index)),
    }));
  });
}
