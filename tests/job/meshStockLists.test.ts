import { expect, test } from 'vitest';
import { apply } from '../../src/job/commands.ts';
import { defaultMeshStock } from '../../src/job/defaults.ts';
import { meshStockProblems, withMeshRow } from '../../src/job/meshStockLists.ts';
import { blankJob } from '../../src/job/start.ts';
import { INCH } from '../../src/units/grid.ts';

test('a row that is added has an id of its own, and sizes to start from', () => {
  const stock = withMeshRow(withMeshRow(defaultMeshStock(), 'truck'), 'yard');
  expect(stock.truck.map(({ id }) => id)).toEqual(['m1']);
  expect(stock.yard.at(-1)).toMatchObject({ id: 'm2', form: 'sheet' });
  expect(meshStockProblems(stock)).toEqual([]);
});

test('lists are set at once; a row that can’t be is refused with its place', () => {
  const job = blankJob();
  const meshStock = withMeshRow(job.meshStock, 'truck');
  expect(apply(job, { do: 'set-mesh-stock', meshStock })).toMatchObject({
    ok: true,
    value: { meshStock },
  });
  const narrow = { ...meshStock, truck: meshStock.truck.map((one) => ({ ...one, width: INCH })) };
  expect(apply(job, { do: 'set-mesh-stock', meshStock: narrow })).toMatchObject({
    problems: { code: 'field-range', where: 'truck[0].width' },
  });
  const twice = { ...meshStock, yard: [...meshStock.yard, ...meshStock.yard] };
  expect(apply(job, { do: 'set-mesh-stock', meshStock: twice })).toMatchObject({
    problems: { code: 'field-id-twice', where: 'yard[2].id' },
  });
});
