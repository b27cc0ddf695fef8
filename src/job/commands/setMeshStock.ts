import type { Job, MeshStock } from '../job.ts';
import { meshStockProblems } from '../meshStockLists.ts';
import type { Outcome } from '../refusal.ts';

export interface SetMeshStock {
  readonly do: 'set-mesh-stock';
  readonly meshStock: MeshStock;
}

/** Both lists at once. A refusal's `where` is the row's field (`truck[0].length`). */
export function setMeshStock(job: Job, { meshStock }: SetMeshStock): Outcome {
  const [problem] = meshStockProblems(meshStock);
  return problem ? { ok: false, problems: problem } : { ok: true, value: { ...job, meshStock } };
}
