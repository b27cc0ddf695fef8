import type { BrokenJointRule, JointLine, JointReport, Panel } from './layout.ts';

/**
 * The reports of every piece of the pour as one: panels in reading order, row by row from the top left, so that P1, P2…
 * are found at a glance.
 */
export function wholeReport(reports: readonly JointReport[]): {
  readonly joints: readonly JointLine[];
  readonly panels: readonly Panel[];
  readonly broken: readonly BrokenJointRule[];
} {
  const panels: Panel[] = [];
  const broken: BrokenJointRule[] = [];
  for (const report of reports) {
    const offset = panels.length;
    panels.push(...report.panels);
    broken.push(
      ...report.broken.map((one) =>
        one.panel === undefined ? one : { ...one, panel: one.panel + offset },
      ),
    );
  }
  const order = readingOrder(panels);
  const place = new Map(order.map((from, to) => [from, to]));
  return {
    joints: reports.flatMap(({ joints }) => joints),
    panels: order.map((i) => panels[i]!),
    broken: broken.map((one) =>
      one.panel === undefined ? one : { ...one, panel: place.get(one.panel)! },
    ),
  };
}

/** Numbers of the panels row by row, from the left: those whose middles are within half of the first one's height stand in one row. */
function readingOrder(panels: readonly Panel[]): readonly number[] {
  const middle = (i: number) => (panels[i]!.box.minY + panels[i]!.box.maxY) / 2;
  const down = panels.map((_, i) => i).toSorted((a, b) => middle(b) - middle(a));
  const rows: number[][] = [];
  for (const i of down) {
    const first = rows.at(-1)?.[0];
    const { minY, maxY } = panels[first ?? i]!.box;
    if (first !== undefined && middle(first) - middle(i) < (maxY - minY) / 2) rows.at(-1)!.push(i);
    else rows.push([i]);
  }
  return rows.flatMap((row) => row.toSorted((a, b) => panels[a]!.box.minX - panels[b]!.box.minX));
}
