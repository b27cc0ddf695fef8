import { useId, useRef, useState } from 'react';
import type { Job, MeshStock } from '../../job/job.ts';
import { withMeshRow } from '../../job/meshStockLists.ts';
import { useWords } from '../SessionContext.ts';
import { MeshRow } from './MeshRow.tsx';

interface MeshListProps {
  readonly list: 'truck' | 'yard';
  readonly job: Job;
  readonly onStock: (stock: MeshStock) => void;
}

/** One of the two lists: its rows, and a button for one more. */
export function MeshList({ list, job, onStock }: MeshListProps) {
  const words = useWords().app.mesh;
  const says = words[list];
  const { meshStock } = job;
  const title = useRef<HTMLHeadingElement>(null);
  const [said, setSaid] = useState('');
  const id = useId();

  return (
    <section className="slip-part" aria-labelledby={id}>
      <h3 id={id} ref={title} tabIndex={-1}>
        {says.title}
      </h3>
      <p className="field-note">{says.hint}</p>
      {meshStock[list].length === 0 ? <p className="boards-none">{says.none}</p> : null}
      <ul>
        {meshStock[list].map((row) => (
          <li key={row.id}>
            <MeshRow
              row={row}
              list={list}
              job={job}
              onRow={(next) => {
                const rows = meshStock[list].map((one) => (one.id === row.id ? next : one));
                onStock({ ...meshStock, [list]: rows });
              }}
              onTakeOff={() => {
                const rows = meshStock[list].filter((one) => one.id !== row.id);
                onStock({ ...meshStock, [list]: rows });
                // The button that had the focus is gone with its row.
                title.current?.focus();
              }}
            />
          </li>
        ))}
      </ul>
      <button
        type="button"
        className="plain"
        onClick={() => {
          onStock(withMeshRow(meshStock, list));
          setSaid(says.added);
        }}
      >
        {says.add}
      </button>
      <p className="field-note" role="status">
        {said}
      </p>
    </section>
  );
}
