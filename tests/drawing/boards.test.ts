import { describe, expect, test } from 'vitest';
import { drawPieces } from '../../src/drawing/boards.ts';
import { makeBoard } from '../../src/drawing/dimension/board.ts';
import { drawForms } from '../../src/drawing/forms.ts';
import { bandOf, faceOf, laidPieces } from '../../src/drawing/laidBoards.ts';
import type { Mark } from '../../src/drawing/marks.ts';
import { en } from '../../src/drawing/words/en.ts';
import { rectangleJob } from '../../src/job/start.ts';
import type { BoardDemand, BoardPiece } from '../../src/takeoff/boards/plan.ts';
import type { BoardsResult, FormRun } from '../../src/takeoff/result.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT, INCH } from '../../src/units/grid.ts';
import { measuredArea } from './measure.ts';

const THICK = 1.5 * INCH;

function slab(length: number, width: number) {
  const made = rectangleJob(length, width);
  if (!made.ok) throw new Error('no job');
  const { forms } = takeoff(made.value);
  if (!forms) throw new Error('no forms');
  return { job: made.value, forms };
}

/** Round a slab each board passes at its end by the other's thickness and butts at its start. */
function demand({ mark, length }: FormRun): BoardDemand {
  return {
    run: mark,
    start: { kind: 'butts', past: 0, room: 0 },
    end: { kind: 'passes', past: THICK, room: THICK },
    need: length + THICK,
    most: length + THICK,
    spliceOn: [],
  };
}

function planned(demands: readonly BoardDemand[], pieces: readonly BoardPiece[]): BoardsResult {
  return {
    problem: {
      size: '2x4',
      demands,
      stock: [],
      pricedBy: 'length',
      kerf: 0,
      shortest: FOOT,
      splices: true,
    },
    key: '',
    plan: {
      boards: [
        {
          mark: 'A',
          stock: 's',
          from: 'truck',
          length: 99 * FOOT,
          pieces,
          cuts: pieces.length,
          left: 0,
        },
      ],
      cost: { price: 0, cuts: 0, splices: 0, waste: 0 },
      proof: { is: 'first' },
    },
    curved: [],
  };
}

function emptyBoard(gridPerMm: number) {
  return makeBoard({
    gridPerMm,
    origin: { x: 0, y: 0 },
    units: 'feet-inches',
    words: en,
    lettering: { height: 2.8, label: 3, first: 9, step: 7 },
    keeps: true,
    hatched: [],
    extentMm: 200,
  });
}

function corners(mark: Mark): readonly (readonly [number, number])[] {
  if (mark.kind !== 'area') throw new Error('an area');
  const { start, segments } = mark.paths[0]!;
  return [start, ...segments.map(({ to }) => to)].map(({ x, y }) => [x / INCH, y / INCH] as const);
}

const isWood = (mark: Mark) => mark.kind === 'area' && mark.material === 'lumber';

/** Square inches; pieces may be drawn either way round. */
function woodArea(marks: readonly Mark[]): number {
  return marks
    .filter(isWood)
    .reduce((sum, mark) => sum + Math.abs(measuredArea([mark], () => true)) / INCH / INCH, 0);
}

function reach(marks: readonly Mark[]) {
  const all = marks.filter(isWood).flatMap(corners);
  const xs = all.map(([x]) => x);
  const ys = all.map(([, y]) => y);
  return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
}

describe('boards as they lie', () => {
  test('a board that passes is longer by the other’s thickness, and starts where it butts', () => {
    const { forms } = slab(10 * FOOT, 8 * FOOT);
    const [run] = forms.runs;
    const need = 10 * FOOT + THICK;
    const laid = laidPieces(
      planned([demand(run!)], [{ mark: 'A1', run: 'R1', from: 0, length: need }]),
    );
    expect(laid).toEqual([
      { mark: 'A1', run: 'R1', from: 0, to: 121.5 * INCH, start: 'butts', end: 'passes' },
    ]);
  });

  test('a board that runs long before its start lies that much farther back', () => {
    const { forms } = slab(10 * FOOT, 8 * FOOT);
    const passing: BoardDemand = {
      ...demand(forms.runs[0]!),
      start: { kind: 'passes', past: THICK, room: FOOT },
      end: { kind: 'stops', past: 0, room: 0 },
    };
    const pieces = [{ mark: 'A1', run: 'R1', from: -3 * INCH, length: 124.5 * INCH }];
    const [piece] = laidPieces(planned([passing], pieces));
    expect(piece).toMatchObject({ from: -4.5 * INCH, to: 120 * INCH });
  });

  test('pieces of one run are spliced in their order along it, whichever board they are cut from', () => {
    const { forms } = slab(10 * FOOT, 8 * FOOT);
    const laid = laidPieces(
      planned(
        [demand(forms.runs[0]!)],
        [
          { mark: 'A1', run: 'R1', from: 6 * FOOT, length: 4 * FOOT + THICK },
          { mark: 'A2', run: 'R1', from: 0, length: 6 * FOOT },
        ],
      ),
    );
    expect(laid.map(({ mark, start, end }) => [mark, start, end])).toEqual([
      ['A2', 'butts', 'spliced'],
      ['A1', 'spliced', 'passes'],
    ]);
  });

  test('the four boards of a slab close round it: no two lie on each other, none leaves a gap', () => {
    const { job, forms } = slab(10 * FOOT, 8 * FOOT);
    const pieces = forms.runs.map(({ mark, length }, i) => ({
      mark: `A${i + 1}`,
      run: mark,
      from: 0,
      length: length + THICK,
    }));
    const { marks } = drawForms(
      emptyBoard(2000),
      forms,
      planned(forms.runs.map(demand), pieces),
      job.practices,
    );
    // The ring round 120 × 96 in: 123 × 99 less the slab itself, and each board as long as side and thickness.
    expect(woodArea(marks)).toBeCloseTo(123 * 99 - 120 * 96, 6);
    expect(reach(marks)).toEqual([-1.5, 121.5, -1.5, 97.5]);
  });

  test('half of a board lies over the one it passes and half under the one it butts against', () => {
    const { job, forms } = slab(10 * FOOT, 8 * FOOT);
    const pieces = forms.runs.map(({ mark, length }, i) => ({
      mark: `A${i + 1}`,
      run: mark,
      from: 0,
      length: length + THICK,
    }));
    const { marks } = drawForms(
      emptyBoard(2000),
      forms,
      planned(forms.runs.map(demand), pieces),
      job.practices,
    );
    const wood = marks.filter(isWood).map(corners);
    expect(wood).toHaveLength(8);
    // The first four touch the corners where they start, the last four reach past those where they end.
    const outermost = (those: typeof wood) => Math.max(...those.flat().map(([x]) => x));
    expect(outermost(wood.slice(0, 4))).toBe(121.5 /* the side of R2, not the end of R1 */);
    const r1 = wood.filter((one) => one.every(([, y]) => y <= 0));
    expect(wood.indexOf(r1[0]!)).toBeLessThan(4);
    expect(Math.max(...r1[1]!.map(([x]) => x))).toBe(121.5);
    expect(wood.indexOf(r1[1]!)).toBeGreaterThanOrEqual(4);
  });

  test('a splice: a line across, and a cleat of its length over it outside', () => {
    const { job, forms } = slab(10 * FOOT, 8 * FOOT);
    const faces = new Map([['R1', faceOf(forms.runs[0]!)]]);
    const laid = laidPieces(
      planned(
        [demand(forms.runs[0]!)],
        [
          { mark: 'A1', run: 'R1', from: 0, length: 6 * FOOT },
          { mark: 'A2', run: 'R1', from: 6 * FOOT, length: 4 * FOOT + THICK },
        ],
      ),
    );
    const band = bandOf(job.practices, 2000);
    const marks = drawPieces(emptyBoard(2000), laid, faces, band, 2 * FOOT);
    const cleat = corners(marks.filter(isWood).at(-1)!);
    expect(cleat).toEqual([
      [60, -1.5],
      [84, -1.5],
      [84, -3],
      [60, -3],
    ]);
    const across = marks.filter((mark) => mark.kind === 'line' && mark.style === 'splice');
    expect(across).toHaveLength(1);
    expect(across[0]).toMatchObject({ path: { start: { x: 72 * INCH, y: 0 } } });
  });

  test('too thin for its scale, a board that passes still reaches past the other', () => {
    const { job, forms } = slab(10 * FOOT, 8 * FOOT);
    const pieces = forms.runs.map(({ mark, length }, i) => ({
      mark: `A${i + 1}`,
      run: mark,
      from: 0,
      length: length + THICK,
    }));
    const gridPerMm = 60_000;
    const { marks, band } = drawForms(
      emptyBoard(gridPerMm),
      forms,
      planned(forms.runs.map(demand), pieces),
      job.practices,
    );
    expect(band.thin).toBe(true);
    const right = reach(marks)[1]! * INCH - 10 * FOOT;
    expect(right).toBeCloseTo(band.outer, 0);
    expect(right).toBeGreaterThan(THICK);
  });

  test('a bent board is a band along its arc, as without a plan', () => {
    const arc = { cx: 0, cy: 0, radius: 5 * FOOT, sweep: Math.PI / 2 };
    const run: FormRun = {
      mark: 'R1',
      kind: 'free',
      edges: [
        {
          from: { x: 5 * FOOT, y: 0 },
          to: { x: 0, y: 5 * FOOT },
          arc,
          kind: 'free',
          patch: false,
          feature: 'p',
          length: Math.round((Math.PI / 2) * 5 * FOOT),
        },
      ],
      length: Math.round((Math.PI / 2) * 5 * FOOT),
      curved: true,
      piece: 0,
      ring: 0,
    };
    const { job } = slab(FOOT, FOOT);
    const forms = { runs: [run], total: run.length, corners: 0 };
    const { marks } = drawForms(emptyBoard(2000), forms, planned([], []), job.practices);
    // A quarter of the ring between 60 and 61 1/2 in.
    const area = (Math.PI / 4) * (61.5 ** 2 - 60 ** 2);
    expect(woodArea(marks)).toBeCloseTo(area, 4);
  });
});
