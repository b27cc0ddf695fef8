import type { Job } from '../../job/job.ts';
import type { Note } from '../figure.ts';
import { tradeNote } from '../notes.ts';
import { count, length, text } from '../quantity.ts';
import type { BoardsResult } from '../result.ts';
import type { Demands } from './demands.ts';
import { ripped } from './rip.ts';
import { LEAST_LAP } from './rules.ts';

/** What must be said of the boards: where they end, what was left out, what was taken as so. */
export function boardNotes(
  job: Job,
  { problem, plan, curved }: BoardsResult,
  demands: Demands,
): readonly Note[] {
  const { boards } = job.practices;
  const { tight, stops, laps, tooShort } = demands;
  const board = text(problem.size);
  const notes: Note[] = [];
  if (tight.length > 0) {
    notes.push(
      tradeNote('forms', 'caution', 'boards-corner-tight', {
        facts: { corners: count(tight.length, 'corner') },
        at: tight,
      }),
    );
  }
  if (stops.length > 0) {
    notes.push(
      tradeNote('forms', 'caution', 'boards-stop', {
        facts: { ends: count(stops.length, 'board-end'), least: length(LEAST_LAP) },
        at: stops,
      }),
    );
  }
  if (tooShort.length > 0) {
    notes.push(
      tradeNote('forms', 'caution', 'boards-run-short', {
        facts: { runs: text(tooShort.map(({ mark }) => mark).join(', ')) },
        at: tooShort.map(({ edges }) => edges[0]!.from),
      }),
    );
  }
  notes.push(...twistedNotes(job, plan));
  if (problem.demands.length > 0) {
    notes.push(
      tradeNote('forms', 'assumption', 'boards-pass', {
        facts: { runLong: length(boards.runLong), kerf: length(boards.kerf) },
      }),
    );
  }
  if (laps.length > 0) {
    notes.push(
      tradeNote('forms', 'assumption', 'boards-lapped', {
        facts: { ends: count(laps.length, 'board-end'), lapOn: length(boards.lapOn) },
        at: laps,
      }),
    );
  }
  if (plan.cost.splices > 0) {
    notes.push(
      tradeNote('forms', 'assumption', 'boards-spliced', {
        facts: { cleat: length(boards.cleatLength) },
      }),
    );
  }
  const rip = ripped(job, plan);
  if (rip > 0) {
    notes.push(
      tradeNote('forms', 'assumption', 'boards-rip', {
        facts: { boards: count(rip, 'board'), board },
      }),
    );
  }
  if (problem.pricedBy === 'length') {
    const lengths = job.lumber.yard
      .filter(({ size, price }) => size === problem.size && price === undefined)
      .map((row) => row.length);
    notes.push(
      tradeNote('forms', 'assumption', 'boards-price-missing', {
        facts: {
          board,
          rows: count(lengths.length, 'board-length'),
          first: length(Math.min(...lengths)),
        },
      }),
    );
  }
  if (curved.length > 0) {
    const all = curved.reduce((sum, one) => sum + one.length, 0);
    notes.push(
      tradeNote('forms', 'assumption', 'boards-curved', {
        facts: { length: length(all), runs: text(curved.map(({ run }) => run).join(', ')) },
      }),
    );
  }
  return notes;
}

/** The top edge is what the screed rides on, so a twisted board makes a wavy slab. */
function twistedNotes(job: Job, { boards }: BoardsResult['plan']): readonly Note[] {
  const { formBoard, boards: practice } = job.practices;
  const twisted = job.lumber.truck.filter((row) => row.size === formBoard && row.twisted);
  if (twisted.length === 0) return [];
  const ids = new Set(twisted.map(({ id }) => id));
  const used = boards.filter(({ from, stock }) => from === 'truck' && ids.has(stock));
  if (used.length > 0) {
    const marks = text(used.map(({ mark }) => mark).join(', '));
    return [tradeNote('forms', 'caution', 'boards-twisted-used', { facts: { marks } })];
  }
  if (practice.useTwisted) return [];
  const left = twisted.reduce((sum, row) => sum + row.count, 0);
  return [
    tradeNote('forms', 'assumption', 'boards-twisted-left', {
      facts: { boards: count(left, 'board') },
    }),
  ];
}
