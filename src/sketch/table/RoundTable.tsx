import type { Feature, Round } from '../../job/job.ts';
import { formatLength, parseLength } from '../../units/length.ts';
import { lengthKeyboard } from '../typed/lengthKeyboard.ts';
import { EditCell } from './EditCell.tsx';
import { type TablePart, tryCommand } from './tableProps.ts';

interface RoundTableProps extends TablePart {
  readonly feature: Feature;
  readonly shape: Round;
  readonly caption: string;
}

/** One round feature: its middle and its diameter. */
export function RoundTable(props: RoundTableProps) {
  const { job, words, sayProblem, datum, feature, shape, caption } = props;
  const says = words.table;
  const { center, diameter } = shape;
  const common = {
    parse: (text: string) => parseLength(text, job.units),
    sayProblem,
    keyboard: lengthKeyboard(job.units),
  };
  const set = (part: { center?: Round['center']; diameter?: number }) =>
    tryCommand(props, { do: 'set-round', feature: feature.id, ...part });
  return (
    <div className="corner-scroll">
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{says.centerAcross}</th>
            <th scope="col">{says.centerUp}</th>
            <th scope="col">{says.diameter}</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <td>
              <EditCell
                {...common}
                label={says.centerAcross}
                shown={formatLength(center.x - datum.x, job.units)}
                onValue={(across) => set({ center: { x: datum.x + across, y: center.y } })}
              />
            </td>
            <td>
              <EditCell
                {...common}
                label={says.centerUp}
                shown={formatLength(center.y - datum.y, job.units)}
                onValue={(up) => set({ center: { x: center.x, y: datum.y + up } })}
              />
            </td>
            <td>
              <EditCell
                {...common}
                label={says.diameter}
                shown={formatLength(diameter, job.units)}
                onValue={(size) => set({ diameter: size })}
              />
            </td>
          </tr>
        </tbody>
      </table>
    </div>
  );
}
