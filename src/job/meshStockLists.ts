import { FOOT } from '../units/grid.ts';
import type { Problem } from '../units/result.ts';
import { fieldProblems } from './fields.ts';
import type { MeshStock } from './job.ts';
import { stockIdProblems } from './lumberProblems.ts';
import { meshStockSchema } from './steelSchema.ts';

/** What is wrong with lists of mesh, row by row. `where` is the place in them: `truck[0].length`. */
export function meshStockProblems(stock: MeshStock): readonly Problem[] {
  const fields = fieldProblems(meshStockSchema, stock, '');
  return fields.length > 0 ? fields : stockIdProblems(stock, '');
}

/** Lists with one more row, to be changed to what there is: on the truck what is left of a roll, at the yard a sheet. */
export function withMeshRow(stock: MeshStock, list: 'truck' | 'yard'): MeshStock {
  const taken = new Set([...stock.truck, ...stock.yard].map(({ id }) => id));
  let number = 1;
  while (taken.has(`m${number}`)) number += 1;
  const row = { id: `m${number}`, width: 5 * FOOT };
  return list === 'truck'
    ? {
        ...stock,
        truck: [...stock.truck, { ...row, form: 'roll', length: 20 * FOOT, count: 1 }],
      }
    : { ...stock, yard: [...stock.yard, { ...row, form: 'sheet', length: 10 * FOOT }] };
}
