import { useId, useState } from 'react';
import type { Command } from '../../job/commands.ts';
import type { Corner, Feature, Outline } from '../../job/job.ts';
import { cornerLetter } from '../../job/letters.ts';
import { parseAngle } from '../../units/angle.ts';
import { formatAngle } from '../../units/format.ts';
import { formatLength, parseLength } from '../../units/length.ts';
import { bearingOf, cornerAfter } from '../edgeMeasures.ts';
import { featureName } from '../featureName.ts';
import { edgesOf, type SiteEdge } from '../site.ts';
import { lengthKeyboard } from '../typed/lengthKeyboard.ts';
import { EditCell } from './EditCell.tsx';
import { pressCommand, type TablePart, tryCommand } from './tableProps.ts';

interface OutlineTableProps extends TablePart {
  readonly feature: Feature;
  readonly shape: Outline;
  readonly caption: string;
}

/** An outline with more corners than this is shown so many at a time. */
const PAGE = 50;

/** One outline: a row for every corner and the edge that leaves it. */
export function OutlineTable(props: OutlineTableProps) {
  const { words, feature, shape, caption } = props;
  const says = words.table;
  const { page, turnTo } = usePage(props);
  const edges = edgesOf(feature);
  const start = page * PAGE;
  return (
    <div className="corner-scroll">
      {shape.corners.length > PAGE ? <PagePick {...props} page={page} onPage={turnTo} /> : null}
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{says.corner}</th>
            <th scope="col">{says.across}</th>
            <th scope="col">{says.up}</th>
            <th scope="col">{says.edge}</th>
            <th scope="col">{says.direction}</th>
            <th scope="col">{says.rise}</th>
            <th scope="col">{says.more}</th>
          </tr>
        </thead>
        <tbody>
          {shape.corners.slice(start, start + PAGE).map((corner, index) => (
            <CornerRow
              key={corner.id}
              {...props}
              corner={corner}
              index={start + index}
              edge={edges.find(({ from }) => from.id === corner.id) ?? null}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** The page that was turned to, until another corner is selected: then the one with that corner. */
function usePage({ feature, shape, selection }: OutlineTableProps): {
  readonly page: number;
  readonly turnTo: (page: number) => void;
} {
  const [turned, setTurned] = useState<{ page: number; corner: string | undefined } | null>(null);
  const corner = selection?.feature === feature.id ? selection.corner : undefined;
  const selected = shape.corners.findIndex(({ id }) => id === corner);
  const wanted =
    turned && turned.corner === corner ? turned.page : Math.floor(Math.max(0, selected) / PAGE);
  const last = Math.floor((shape.corners.length - 1) / PAGE);
  return {
    page: Math.min(wanted, Math.max(0, last)),
    turnTo: (page) => setTurned({ page, corner }),
  };
}

interface PagePickProps extends OutlineTableProps {
  readonly page: number;
  readonly onPage: (page: number) => void;
}

function PagePick({ words, shape, page, onPage }: PagePickProps) {
  const id = useId();
  const count = shape.corners.length;
  return (
    <div className="typed">
      <label htmlFor={id}>{words.table.page(count)}</label>
      <select id={id} value={page} onChange={(event) => onPage(Number(event.target.value))}>
        {Array.from({ length: Math.ceil(count / PAGE) }, (_, at) => {
          const [first, last] = [at * PAGE, Math.min(count, (at + 1) * PAGE) - 1];
          return (
            <option key={cornerLetter(first)} value={at}>
              {words.table.pageOf(cornerLetter(first), cornerLetter(last))}
            </option>
          );
        })}
      </select>
    </div>
  );
}

type CornerRowProps = OutlineTableProps & {
  readonly corner: Corner;
  readonly index: number;
  /** The edge that leaves the corner; null at the end of a line. */
  readonly edge: SiteEdge | null;
};

function CornerRow(props: CornerRowProps) {
  const { words, feature, corner, index, selection, onSelect } = props;
  const says = words.table;
  const letter = cornerLetter(index);
  const chosen = selection?.feature === feature.id && selection.corner === corner.id;
  return (
    <tr aria-current={chosen ? 'true' : undefined}>
      <th scope="row">
        <button
          type="button"
          aria-label={says.select(letter)}
          aria-pressed={chosen}
          onClick={() => onSelect(chosen ? null : { feature: feature.id, corner: corner.id })}
        >
          {letter}
        </button>
      </th>
      <PlaceCells {...props} letter={letter} />
      <EdgeCells {...props} letter={letter} />
      <RowButtons {...props} letter={letter} />
    </tr>
  );
}

type CellsProps = CornerRowProps & { readonly letter: string };

function PlaceCells(props: CellsProps) {
  const { job, words, sayProblem, datum, feature, corner, letter } = props;
  const says = words.table;
  const host = job.features.find(({ id }) => id === corner.on?.feature);
  const attached = host ? says.attached(featureName(job, host, words)) : undefined;
  const common = {
    parse: (text: string) => parseLength(text, job.units),
    sayProblem,
    keyboard: lengthKeyboard(job.units),
  };
  function moveTo(x: number, y: number): string | null {
    const command: Command = {
      do: 'move-corner',
      feature: feature.id,
      corner: corner.id,
      to: { x, y },
    };
    return tryCommand(props, command);
  }
  return (
    <>
      <td>
        <EditCell
          {...common}
          label={says.cell.across(letter)}
          shown={formatLength(corner.x - datum.x, job.units)}
          hint={attached}
          onValue={(across) => moveTo(datum.x + across, corner.y)}
        />
      </td>
      <td>
        <EditCell
          {...common}
          label={says.cell.up(letter)}
          shown={formatLength(corner.y - datum.y, job.units)}
          onValue={(up) => moveTo(corner.x, datum.y + up)}
        />
      </td>
    </>
  );
}

function EdgeCells(props: CellsProps) {
  const { job, words, sayProblem, feature, shape, corner, letter } = props;
  const says = words.table;
  const next = cornerAfter(shape, corner.id);
  if (!next) return <td colSpan={3}>{says.noEdge}</td>;
  const nextLetter = cornerLetter(shape.corners.indexOf(next));
  const edge = { feature: feature.id, corner: corner.id } as const;
  const lengths = {
    parse: (text: string) => parseLength(text, job.units),
    sayProblem,
    keyboard: lengthKeyboard(job.units),
  };
  const length = Math.hypot(next.x - corner.x, next.y - corner.y);
  return (
    <>
      <td>
        <EditCell
          {...lengths}
          label={`${says.cell.edge(letter, nextLetter)}, ${says.moves(nextLetter)}`}
          shown={formatLength(length, job.units)}
          onValue={(typed) =>
            tryCommand(props, { do: 'set-edge-length', ...edge, length: typed, moves: 'end' })
          }
        />
      </td>
      <td>
        <EditCell
          label={`${says.cell.direction(letter, nextLetter)}, ${says.moves(nextLetter)}`}
          shown={formatAngle(bearingOf(corner, next))}
          parse={parseAngle}
          sayProblem={sayProblem}
          keyboard="text"
          onValue={(degrees) =>
            tryCommand(props, { do: 'set-edge-direction', ...edge, degrees, moves: 'end' })
          }
        />
      </td>
      <td>
        <EditCell
          {...lengths}
          keyboard="text"
          label={says.cell.rise(letter, nextLetter)}
          shown={formatLength(corner.rise, job.units)}
          onValue={(rise) => tryCommand(props, { do: 'set-rise', ...edge, rise })}
        />
      </td>
    </>
  );
}

function RowButtons(props: CellsProps) {
  const { words, feature, corner, letter, edge } = props;
  const says = words.table;
  return (
    <td className="corner-buttons">
      {edge ? (
        <button
          type="button"
          aria-label={says.insertAfter(letter)}
          title={says.insertAfter(letter)}
          onClick={() =>
            pressCommand(props, {
              do: 'insert-corner',
              feature: feature.id,
              after: corner.id,
              at: edge.middle,
            })
          }
        >
          {ADD}
        </button>
      ) : null}
      <button
        type="button"
        aria-label={says.remove(letter)}
        title={says.remove(letter)}
        onClick={() =>
          pressCommand(props, { do: 'remove-corner', feature: feature.id, corner: corner.id })
        }
      >
        {TAKE_AWAY}
      </button>
    </td>
  );
}

const ADD = '+';
const TAKE_AWAY = '−';
