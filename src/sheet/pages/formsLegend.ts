import type { Mark } from '../../drawing/marks.ts';
import { END_BAR_MM, FOOT_MM, LOOK_HERE_MM, STAKE_MM, WEIGHT_MM } from '../../drawing/stakes.ts';
import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { filled, frame, line, symbol } from '../furniture.ts';
import type { PageWords } from '../sheetOptions.ts';
import { groundRows, heading, runningSample, SAMPLE_MM, signRow } from './legend.ts';
import type { LegendRow } from './legendRow.ts';
import { utilityRows } from './utilityLegend.ts';

/** From the left of a row to its words, mm: there are no letters between. */
const WORDS_MM = SAMPLE_MM + 3;

/** A row for each sign of forms and stakes that is on their plan. */
export function formsLegendRows(
  job: Job,
  { forms, boards, stakes }: Takeoff,
  pageWords: PageWords,
): readonly LegendRow[] {
  const { layout } = pageWords.sheet;
  const words = layout.forms;
  const how = new Set(stakes?.held.map((place) => place.how));
  const hands = stakes?.stakes.some(({ hand }) => hand !== undefined);
  const kickers = stakes?.stakes.some(({ kicker }) => kicker);
  const spliced = boards?.plan.cost.splices ?? 0;
  const row = signRow(WORDS_MM);
  return [
    heading(words.legend),
    ...(forms ? row(boardSample, boards ? words.board : words.bareBoard) : []),
    ...(spliced > 0 ? row(spliceSample, words.splice) : []),
    ...(stakes ? row(alone('stake', STAKE_MM), words.stake) : []),
    ...(hands ? row(alone('stake-hand', STAKE_MM), words.hand) : []),
    ...(kickers ? row(kickedSample, words.kicked) : []),
    ...(how.has('inside-stake') ? row(alone('stake-inside', STAKE_MM), words.inside) : []),
    ...(how.has('kicker') ? row(kickerSample, words.kicker) : []),
    ...(how.has('spreader') ? row(spreaderSample, words.spreader) : []),
    ...(how.has('weight') ? row(alone('weight', WEIGHT_MM), words.weight) : []),
    ...(stakes && stakes.broken.length > 0
      ? row(alone('look-here', LOOK_HERE_MM), words.lookHere)
      : []),
    ...(stakes ? row(runningSample, words.running) : []),
    ...groundRows(job, layout, WORDS_MM),
    ...utilityRows(job, pageWords, WORDS_MM),
  ];
}

const MIDDLE = SAMPLE_MM / 2;

function alone(name: Parameters<typeof symbol>[0], size: number) {
  return (x: number, y: number) => [symbol(name, x + MIDDLE, y, size, 0)];
}

function wood(x: number, y: number, width: number): readonly Mark[] {
  const box = { x, y, width, height: 1 };
  return [filled(box, 'lumber'), frame(box, 'board')];
}

function boardSample(x: number, y: number): readonly Mark[] {
  return wood(x, y - 0.5, SAMPLE_MM);
}

function spliceSample(x: number, y: number): readonly Mark[] {
  return [
    ...wood(x, y - 1, SAMPLE_MM),
    ...wood(x + 3, y, SAMPLE_MM - 6),
    line(x + MIDDLE, y - 1, x + MIDDLE, y + 1, 'splice'),
  ];
}

function kickedSample(x: number, y: number): readonly Mark[] {
  return [
    symbol('stake', x + 3, y, STAKE_MM, 0),
    line(x + 3, y, x + SAMPLE_MM - 3, y, 'brace'),
    symbol('dot', x + SAMPLE_MM - 3, y, FOOT_MM, 0),
  ];
}

function kickerSample(x: number, y: number): readonly Mark[] {
  return [
    line(x + 3, y, x + SAMPLE_MM - 3, y, 'brace'),
    symbol('dot', x + SAMPLE_MM - 3, y, FOOT_MM, 0),
  ];
}

function spreaderSample(x: number, y: number): readonly Mark[] {
  return [
    line(x + 3, y, x + SAMPLE_MM - 3, y, 'brace'),
    symbol('end-bar', x + 3, y, END_BAR_MM, 0),
    symbol('end-bar', x + SAMPLE_MM - 3, y, END_BAR_MM, 0),
  ];
}
