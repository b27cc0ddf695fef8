import type { UnitStyle } from '../../job/job.ts';
import { SIXTY_FOURTH } from '../../units/grid.ts';
import type { Figure, Quantity, TicketTable } from '../figure.ts';
import { angle, length, tapeLength, term, text } from '../quantity.ts';
import type { Offsets } from './baseline.ts';
import type { LaidCorner } from './corners.ts';
import { longestTie, type Tie } from './diagonals.ts';
import type { Layout } from './layout.ts';
import { passBand, READING_ERROR } from './rules.ts';
import { type TapeFit, tieName } from './tapeFit.ts';
import type { Move, TapeSaid } from './tapeSaid.ts';
import type { TapeTie, TapeTies } from './tapeTies.ts';
import type { Square } from './threeFourFive.ts';

/** How far diagonals may be off. */
export function bandFigure(ties: readonly Tie[]): Figure {
  const longest = longestTie(ties);
  return {
    key: 'layout-band',
    value: length(passBand(longest)),
    working: () => ({
      of: 'layout-band',
      formula: `b = 1/4" × max(1, d ÷ 20')`,
      inputs: [{ key: 'longest-diagonal', value: length(longest), from: 'sketch' }],
      rounding: 'none',
      source: ['common-practice'],
    }),
  };
}

/** Every length to tape on the form, to a sixteenth; those across it as the plan has them. */
export function tiesTable(ties: readonly Tie[]): TicketTable {
  return {
    key: 'layout-ties',
    columns: ['tie', 'length', 'tie-kind', 'tie-use'],
    rows: ties.map(({ from, to, printed, kind, sets, blocked }) => [
      text(`${from.letter}–${to.letter}`),
      length(printed),
      term(kind),
      term(`${sets ? 'sets' : 'checks'}${blocked ? '-blocked' : ''}`),
    ]),
  };
}

export function squaresTable(squares: readonly Square[]): TicketTable {
  return {
    key: 'layout-squares',
    columns: ['corner', 'leg-one', 'leg-two', 'across-legs'],
    rows: squares.map(({ corner, next, before, across }) => [
      text(corner.letter),
      length(next),
      length(before),
      length(across),
    ]),
  };
}

/** Stations and offsets to an eighth; in inches also to a sixty-fourth, so that nobody has to guess what was rounded. */
export function offsetsTable({ rows }: Offsets, units: UnitStyle): TicketTable {
  const exact = units === 'feet-inches';
  return {
    key: 'layout-offsets',
    columns: exact
      ? ['corner', 'station', 'offset', 'station-exact', 'offset-exact']
      : ['corner', 'station', 'offset'],
    rows: rows.map(({ corner, station, offset }) => [
      text(corner.letter),
      tapeLength(station, 8),
      tapeLength(offset, 8),
      ...(exact ? [tapeLength(station, 64), tapeLength(offset, 64)] : []),
    ]),
  };
}

export function tapeTiesTable({ rows }: TapeTies): TicketTable {
  return {
    key: 'layout-tape-ties',
    columns: ['corner', 'from-first', 'from-second', 'side-of-line', 'crossing', 'tie-error'],
    rows: rows.map((row) => [
      text(row.corner.letter),
      length(row.first),
      length(row.second),
      row.atMark ? text('–') : term(row.side),
      row.atMark ? text('–') : angle(Math.round(row.angle)),
      errorOf(row),
    ]),
  };
}

function errorOf({ atMark, error }: TapeTie): Quantity {
  if (atMark) return term('at-the-mark');
  return error === undefined ? term('no-fix') : tapeLength(error, 16);
}

/** How far off a corner may come by tapes read an eighth wrong: that of the worst corner, if all have a bound. */
export function tieErrorFigure({ rows }: TapeTies): Figure | undefined {
  const tied = rows.filter(({ atMark }) => !atMark);
  const errors = tied.flatMap(({ error }) => (error === undefined ? [] : [error]));
  if (tied.length === 0 || errors.length < tied.length) return undefined;
  return {
    key: 'layout-tie-error',
    value: tapeLength(Math.max(...errors), 16),
    working: () => ({
      of: 'layout-tie-error',
      formula: 'E = max |P(a ± e, b ± e) − P(a, b)|  ≈  e ÷ min(sin γ/2, cos γ/2)',
      inputs: [{ key: 'tape-reading', value: length(READING_ERROR), from: 'published' }],
      rounding: 'none',
      source: ['geometry', 'common-practice'],
      steps: tied.map(({ corner, angle: crossing, error = 0 }) => ({
        label: corner.letter,
        template: 'γ = {0}',
        values: [angle(Math.round(crossing))],
        value: tapeLength(error, 32),
      })),
    }),
  };
}

/** What the tape said, and the farthest that a corner has to move. */
export function tapeFigures(said: TapeSaid): readonly Figure[] {
  const {
    corners: [a, b, c, d],
    drawn,
    measured,
    difference,
    misclosure,
    moves,
  } = said;
  const names = [`${a.letter}–${c.letter}`, `${b.letter}–${d.letter}`];
  const farthest = Math.max(...moves.map(({ inAll }) => inAll));
  const steps = names.flatMap((name, i) => [
    {
      label: name,
      value: length(measured[i]!),
      template: '{0} + {1}',
      values: [length(drawn[i]!), tapeLength(measured[i]! - drawn[i]!, 32)],
    },
  ]);
  return [
    {
      key: 'layout-difference',
      value: tapeLength(Math.abs(difference), 32),
      working: () => ({
        of: 'layout-difference',
        formula: 'D = |(q − p) − (q₀ − p₀)|',
        inputs: [],
        rounding: 'none',
        source: ['geometry'],
        steps,
      }),
    },
    {
      key: 'layout-misclosure',
      value: tapeLength(misclosure, 32),
      working: () => ({
        of: 'layout-misclosure',
        formula: 'm = ((p + q) − (p(θ) + q(θ))) ÷ 2',
        inputs: [],
        rounding: 'none',
        source: ['geometry'],
        steps,
      }),
    },
    {
      key: 'layout-move',
      value: tapeLength(farthest, 32),
      working: () => ({
        of: 'layout-move',
        formula: 'q(θ) − p(θ) = q − p',
        inputs: [
          { key: 'layout-difference', value: tapeLength(Math.abs(difference), 32), from: 'figure' },
        ],
        rounding: 'none',
        source: ['geometry', 'en0069-squaring'],
        steps: moves.map(({ corner, inAll }) => ({
          label: corner.letter,
          value: tapeLength(inAll, 32),
        })),
      }),
    },
  ];
}

/** What the tapes of a form of any shape come to: how far they disagree, and the farthest that a corner has to move. */
export function fitFigures({ tapes, worst, moves, holds }: TapeFit): readonly Figure[] {
  return [
    {
      key: 'layout-fit-misclosure',
      value: tapeLength(Math.abs(worst.taken - worst.fitted), 32),
      working: () => ({
        of: 'layout-fit-misclosure',
        formula: 'm = max |l − l̂|,  Σ (l − l̂)² = min',
        inputs: [],
        rounding: 'none',
        source: ['geometry'],
        steps: tapes.map(({ tie, taken, fitted }) => ({
          label: tieName(tie),
          value: tapeLength(taken - fitted, 32),
          template: '{0} − {1}',
          values: [tapeLength(taken, 32), tapeLength(fitted, 32)],
        })),
      }),
    },
    {
      key: 'layout-fit-move',
      value: tapeLength(Math.max(...moves.map(({ inAll }) => inAll)), 32),
      working: () => ({
        of: 'layout-fit-move',
        formula: 'Σ (l − l̂)² = min',
        inputs: [
          { key: 'side-held', value: text(tieName(holds)), from: 'sketch' },
          {
            key: 'layout-fit-misclosure',
            value: tapeLength(Math.abs(worst.taken - worst.fitted), 32),
            from: 'figure',
          },
        ],
        rounding: 'none',
        source: ['geometry'],
        steps: moves.map(({ corner, inAll }) => ({
          label: corner.letter,
          value: tapeLength(inAll, 32),
        })),
      }),
    },
  ];
}

/** Less than what is shown as nothing: half of 1/32 in. */
const LEAST_MOVE = SIXTY_FOURTH;

/** The moves of a form with four sides, and of any other. */
export function movesTable({ moves, holds, corners }: TapeSaid): TicketTable {
  return movesAlong(moves, corners[holds]!, corners[(holds + 1) % 4]!);
}
export function fitMovesTable({ moves, holds }: TapeFit): TicketTable {
  return movesAlong(moves, holds.from, holds.to);
}

/** One row a corner: how far along the side that stays and toward which of its ends, and how far square to it. */
function movesAlong(moves: readonly Move[], start: LaidCorner, end: LaidCorner): TicketTable {
  const row = ({ corner, along, out, inAll }: Move): readonly Quantity[] => [
    text(corner.letter),
    tapeLength(Math.abs(along), 32),
    Math.abs(along) < LEAST_MOVE ? term('stays') : text(along > 0 ? end.letter : start.letter),
    tapeLength(Math.abs(out), 32),
    Math.abs(out) < LEAST_MOVE ? term('stays') : term(out > 0 ? 'away' : 'nearer'),
    tapeLength(inAll, 32),
  ];
  return {
    key: 'layout-moves',
    columns: ['corner', 'move-along', 'move-toward', 'move-square', 'move-way', 'move-in-all'],
    rows: moves.map(row),
  };
}

/** All tables of a layout but the moves, for the sheet: what there is to tape before the form stands. */
export function layoutTables(layout: Layout, units: UnitStyle): readonly TicketTable[] {
  return [
    ...(layout.ties.length > 0 ? [tiesTable(layout.ties)] : []),
    ...(layout.squares.length > 0 ? [squaresTable(layout.squares)] : []),
    ...(layout.offsets ? [offsetsTable(layout.offsets, units)] : []),
    ...(layout.tapeTies ? [tapeTiesTable(layout.tapeTies)] : []),
  ];
}
