import loadHighs, {
  type Highs,
  type HighsCallbackMap,
  type InitOptions,
  type ModelData,
} from 'highs';
import type { Found, Look, Mip, Priced, Solver, Term } from './mip.ts';

/**
 * The solver, loaded: the only file that knows which it is.
 * @param options Where its WebAssembly lies, when that isn't beside the package.
 */
export async function loadSolver(options?: Pick<InitOptions, 'locateFile'>): Promise<Solver> {
  const highs = await loadHighs(options);
  return {
    least: (model, cost, look) => least(highs, model, cost, look),
    relaxed: (model, cost, seconds) => relaxed(highs, model, cost, seconds),
  };
}

function least(highs: Highs, model: Mip, cost: readonly Term[], look: Look): Found {
  const { optimal, infeasible, unboundedOrInfeasible } = highs.constants.modelStatus;
  return highs.withModel(dataOf(highs, model, cost, true), (solved): Found => {
    solved.options.set({
      output_flag: false,
      time_limit: Math.max(0.01, look.seconds),
      mip_rel_gap: 0,
      // Tight, so that what is rounded onto the grid afterwards still holds.
      mip_feasibility_tolerance: 1e-8,
      primal_feasibility_tolerance: 1e-8,
    });
    if (look.start) {
      const indices = Int32Array.from(look.start, ([column]) => column);
      const values = Float64Array.from(look.start, ([, value]) => value);
      solved.setSolution({ indices, values });
    }
    const { onBetter } = look;
    const { mipImprovingSolution } = highs.constants.callbackType;
    const calls: HighsCallbackMap = onBetter
      ? {
          [mipImprovingSolution]: (event: { data: { mip_solution?: Float64Array } }): undefined => {
            if (event.data.mip_solution) onBetter([...event.data.mip_solution]);
          },
        }
      : {};
    solved.run(calls);
    const status = solved.getModelStatus();
    if (status === infeasible || status === unboundedOrInfeasible) return { is: 'none' };
    const bound = Number(solved.info.get('mip_dual_bound'));
    // 2: there are values that satisfy the model.
    if (Number(solved.info.get('primal_solution_status')) !== 2) return { is: 'unknown', bound };
    const values = [...solved.getSolution().colValue];
    const found = { values, cost: solved.getObjectiveValue() };
    return status === optimal ? { is: 'least', ...found } : { is: 'some', ...found, bound };
  });
}

function relaxed(
  highs: Highs,
  model: Mip,
  cost: readonly Term[],
  seconds: number,
): Priced | undefined {
  return highs.withModel(dataOf(highs, model, cost, false), (solved) => {
    solved.options.set({ output_flag: false, time_limit: Math.max(0.01, seconds) });
    solved.run();
    if (solved.getModelStatus() !== highs.constants.modelStatus.optimal) return undefined;
    const { colValue, rowDual } = solved.getSolution();
    return { values: [...colValue], cost: solved.getObjectiveValue(), worth: [...rowDual] };
  });
}

function dataOf(
  { infinity, constants }: Highs,
  { columns, rows }: Mip,
  cost: readonly Term[],
  whole: boolean,
): ModelData {
  const bound = (value: number) => (Number.isFinite(value) ? value : Math.sign(value) * infinity);
  const colCost = new Float64Array(columns.length);
  for (const [column, factor] of cost) colCost[column] = colCost[column]! + factor;
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { terms } of rows) {
    for (const [column, factor] of terms) {
      indices.push(column);
      values.push(factor);
    }
    starts.push(indices.length);
  }
  const { continuous, integer } = constants.variableType;
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost,
    colLower: Float64Array.from(columns, ({ least }) => bound(least)),
    colUpper: Float64Array.from(columns, ({ most }) => bound(most)),
    rowLower: Float64Array.from(rows, ({ least }) => bound(least)),
    rowUpper: Float64Array.from(rows, ({ most }) => bound(most)),
    matrix: {
      format: 'csr',
      numRows: rows.length,
      numCols: columns.length,
      starts: Int32Array.from(starts),
      indices: Int32Array.from(indices),
      values: Float64Array.from(values),
    },
    ...(whole ? { integrality: columns.map((one) => (one.whole ? integer : continuous)) } : {}),
  };
}
