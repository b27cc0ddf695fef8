import type { Mark } from '../../drawing/marks.ts';
import { areChairsDrawn, CHAIR_MM, LAPPED_MM } from '../../drawing/steelLayer.ts';
import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { formatLength } from '../../units/length.ts';
import { line, symbol } from '../furniture.ts';
import type { PageWords } from '../sheetOptions.ts';
import { jointRows } from './jointLegend.ts';
import { groundRows, heading, runningSample, SAMPLE_MM, signRow } from './legend.ts';
import type { LegendRow } from './legendRow.ts';
import { utilityRows } from './utilityLegend.ts';

/** From the left of a row to its words, mm: there are no letters between. */
const WORDS_MM = SAMPLE_MM + 3;
const MIDDLE = SAMPLE_MM / 2;

/**
 * A row for each sign of the steel that is on its plan.
 * @param gridPerMm Chairs too near to each other at this scale aren't drawn.
 */
export function steelLegendRows(
  job: Job,
  takeoff: Takeoff,
  pageWords: PageWords,
  gridPerMm: number,
): readonly LegendRow[] {
  const { layout } = pageWords.sheet;
  const words = layout.steel;
  const row = signRow(WORDS_MM);
  const { mesh, bars, chairs, dowels } = takeoff.steel ?? {};
  const length = (grid: number) => formatLength(grid, job.units);
  const { supports } = job.practices.steel;
  const chairsDrawn = areChairsDrawn(chairs, gridPerMm);
  return [
    heading(words.legend),
    ...(mesh ? row(pieceSample, words.piece) : []),
    ...(mesh && mesh.plan.pieces.length > 1
      ? row(lapSample, words.lap(length(Math.min(mesh.plan.lapAlong, mesh.plan.lapAcross))))
      : []),
    ...(bars ? row(stroke('bar'), words.bar(bars.size)) : []),
    ...(bars && bars.cuts.laps > 0 ? row(lappedSample, words.barLap(length(bars.lap))) : []),
    ...(bars && bars.corners > 0 ? row(stroke('bar-corner'), words.corner) : []),
    ...(chairs && chairs.length > 0
      ? chairsDrawn
        ? row(chairSample, words.chair(length(supports.spacing)))
        : row(() => [], words.chairsNotDrawn(length(supports.spacing)))
      : []),
    ...(dowels && dowels.seams.length > 0
      ? [...row(dowelSample, words.dowel), ...row(runningSample, words.running)]
      : []),
    ...jointRows(job, takeoff, pageWords, WORDS_MM),
    ...groundRows(job, layout, WORDS_MM),
    ...utilityRows(job, pageWords, WORDS_MM),
  ];
}

function stroke(style: 'bar' | 'bar-corner') {
  return (x: number, y: number) => [line(x, y, x + SAMPLE_MM, y, style)];
}

function pieceSample(x: number, y: number): readonly Mark[] {
  const [left, right, top, low] = [x + 1, x + SAMPLE_MM - 1, y - 1.5, y + 1.5];
  return [
    line(left, top, right, top, 'mesh'),
    line(left, low, right, low, 'mesh'),
    line(left, top, left, low, 'mesh'),
    line(right, top, right, low, 'mesh'),
    line(left, low, right, top, 'lap'),
  ];
}

function lapSample(x: number, y: number): readonly Mark[] {
  return [
    line(x, y - 0.8, x + SAMPLE_MM, y - 0.8, 'mesh'),
    line(x, y + 0.8, x + SAMPLE_MM, y + 0.8, 'mesh-under'),
  ];
}

function lappedSample(x: number, y: number): readonly Mark[] {
  return [
    line(x, y, x + SAMPLE_MM - 4, y, 'bar'),
    line(x + 4, y - LAPPED_MM, x + SAMPLE_MM, y - LAPPED_MM, 'bar'),
  ];
}

function chairSample(x: number, y: number): readonly Mark[] {
  return [symbol('dot', x + MIDDLE, y, CHAIR_MM, 0)];
}

function dowelSample(x: number, y: number): readonly Mark[] {
  return [line(x + 3, y, x + SAMPLE_MM - 3, y, 'dowel')];
}
