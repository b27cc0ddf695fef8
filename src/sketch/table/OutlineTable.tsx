import type { Command } from '../../job/commands.ts';
import type { Corner, Feature, Outline } from '../../job/job.ts';
import { parseAngle } from '../../units/angle.ts';
import { formatAngle } from '../../units/format.ts';
import { formatLength, parseLength } from '../../units/length.ts';
import { bearingOf, cornerAfter } from '../edgeMeasures.ts';
import { featureName } from '../featureName.ts';
import { cornerLetter } from '../letters.ts';
import { edgesOf } from '../site.ts';
import { lengthKeyboard } from '../typed/lengthKeyboard.ts';
import { EditCell } from './EditCell.tsx';
import { pressCommand, type TablePart, tryCommand } from './tableProps.ts';

interface OutlineTableProps extends TablePart {
  readonly feature: Feature;
  readonly shape: Outline;
  readonly caption: string;
}

/** One outline: a row for every corner and the edge that leaves it. */
export function OutlineTable(props: OutlineTableProps) {
  const { words, shape, caption } = props;
  const says = words.table;
  return (
    <div className="corner-scroll">
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
          {shape.corners.map((corner, index) => (
            <CornerRow key={corner.id} {...props} corner={corner} index={index} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

type CornerRowProps = OutlineTableProps & { readonly corner: Corner; readonly index: number };

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
  const { words, feature, corner, letter } = props;
  const says = words.table;
  const edge = edgesOf(feature).find(({ from }) => from.id === corner.id);
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
