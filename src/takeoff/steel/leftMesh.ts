import type { MeshStock } from '../../job/job.ts';
import type { MeshPlan } from './plan.ts';

type Truck = MeshStock['truck'];

/** More rows than this is no list; the schema has the same bound. */
const MOST_ROWS = 200;

/**
 * Mesh on the truck after the job: what the plan takes is off it, the rests large enough to be used again are on it. The end
 * of a roll as wide as the roll is a roll, any other rest a sheet; those alike stand in one row.
 */
export function leftMesh({ truck, yard }: MeshStock, { used, rests }: MeshPlan): Truck {
  const taken = new Map<string, number>();
  for (const { from, id } of used) {
    if (from === 'truck') taken.set(id, (taken.get(id) ?? 0) + 1);
  }
  const rows = truck
    .map((row) => ({ ...row, count: row.count - (taken.get(row.id) ?? 0) }))
    .filter(({ count }) => count > 0);
  const ids = new Set([...truck, ...yard].map(({ id }) => id));
  for (const rest of rests) {
    const whole = used[rest.used];
    const form = whole?.form === 'roll' && rest.width === whole.width ? 'roll' : 'sheet';
    const { length, width } = rest;
    const at = rows.findIndex(
      (row) => row.form === form && row.length === length && row.width === width,
    );
    const alike = rows[at];
    if (alike) rows[at] = { ...alike, count: alike.count + 1 };
    else if (rows.length < MOST_ROWS) rows.push({ id: freeId(ids), form, length, width, count: 1 });
  }
  return rows;
}

function freeId(taken: Set<string>): string {
  let number = 1;
  while (taken.has(`m${number}`)) number += 1;
  taken.add(`m${number}`);
  return `m${number}`;
}
