import { describe, expect, test } from 'vitest';
import { apply } from '../../../src/job/commands.ts';
import type { MeshStock } from '../../../src/job/job.ts';
import { leftMesh } from '../../../src/takeoff/steel/leftMesh.ts';
import type { MeshPlan, MeshRest, UsedMesh } from '../../../src/takeoff/steel/plan.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT } from '../../../src/units/grid.ts';
import { slab, steeled } from './steelJobs.ts';

const SHEETS = { id: 'm1', form: 'sheet', length: 10 * FOOT, width: 5 * FOOT, count: 3 } as const;
const ROLL = { id: 'm2', form: 'roll', length: 50 * FOOT, width: 5 * FOOT, count: 1 } as const;
const STOCK: MeshStock = { truck: [SHEETS, ROLL], yard: [] };

/** What is read of a plan. */
function plan(used: readonly Partial<UsedMesh>[], rests: readonly MeshRest[]): MeshPlan {
  return { used, rests } as unknown as MeshPlan;
}

describe('mesh on the truck after the job', () => {
  test('is without what was used, and with the end of the roll as a roll', () => {
    const used = [
      { ...SHEETS, from: 'truck' as const },
      { ...SHEETS, from: 'truck' as const },
      { ...ROLL, from: 'truck' as const },
    ];
    const rests = [
      { used: 2, length: 20 * FOOT, width: 5 * FOOT },
      { used: 0, length: 4 * FOOT, width: 5 * FOOT },
      { used: 1, length: 4 * FOOT, width: 5 * FOOT },
    ];
    expect(leftMesh(STOCK, plan(used, rests))).toEqual([
      { ...SHEETS, count: 1 },
      { id: 'm3', form: 'roll', length: 20 * FOOT, width: 5 * FOOT, count: 1 },
      { id: 'm4', form: 'sheet', length: 4 * FOOT, width: 5 * FOOT, count: 2 },
    ]);
  });
  test('stays as it is when all was bought and used up', () => {
    const used = [{ ...SHEETS, id: 'm9', from: 'yard' as const }];
    expect(leftMesh(STOCK, plan(used, []))).toEqual(STOCK.truck);
  });
  test('of a figured slab is a list that the job takes', () => {
    const job = steeled(slab(13, 11), { kind: 'mesh', stock: { truck: [ROLL] } });
    const mesh = takeoff(job).steel?.mesh;
    const truck = leftMesh(job.meshStock, mesh!.plan);
    expect(truck).not.toEqual([ROLL]);
    const done = apply(job, { do: 'set-mesh-stock', meshStock: { ...job.meshStock, truck } });
    expect(done.ok).toBe(true);
  });
});
