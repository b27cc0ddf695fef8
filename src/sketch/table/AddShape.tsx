import { useState } from 'react';
import type { FeatureKind } from '../../job/job.ts';
import { ALWAYS_OPEN } from '../../job/soundness.ts';
import { parseLength } from '../../units/length.ts';
import { ok } from '../../units/result.ts';
import { type NewFeature, newOutline, newRound, rectangle } from '../tools/newFeature.ts';
import { lengthKeyboard } from '../typed/lengthKeyboard.ts';
import { TypedBox } from '../typed/TypedBox.tsx';
import { useTyped } from '../typed/useTyped.ts';
import { type TablePart, tryCommand } from './tableProps.ts';

const KINDS: readonly FeatureKind[] = [
  'pad',
  'existing-slab',
  'building-line',
  'steps',
  'block-out',
  'patch',
  'no-stake-zone',
  'utility-line',
  'joint',
];
const ROUND_KINDS: readonly FeatureKind[] = ['block-out', 'no-stake-zone'];

/**
 * A new shape by its sizes: a rectangle at an offset from the datum, a round one about its middle, or a line by how
 * far it runs.
 */
export function AddShape(props: TablePart) {
  const { job, words, sayProblem, datum, onSelect } = props;
  const says = words.table;
  const [kind, setKind] = useState<FeatureKind>('pad');
  const [wantsRound, setWantsRound] = useState(false);
  const mayBeRound = ROUND_KINDS.includes(kind);
  const isRound = wantsRound && mayBeRound;
  const isLine = ALWAYS_OPEN.includes(kind);
  /** An empty offset is none. */
  const readOffset = (text: string) => (text.trim() === '' ? ok(0) : parseLength(text, job.units));
  const readSize = (text: string) => parseLength(text, job.units);
  const across = useTyped(readOffset, sayProblem);
  const up = useTyped(readOffset, sayProblem);
  const width = useTyped(isLine ? readOffset : readSize, sayProblem);
  const depth = useTyped(isLine ? readOffset : readSize, sayProblem);
  const boxes = isRound ? [across, up, width] : [across, up, width, depth];

  function add() {
    const [x, y, wide, deep] = boxes.map((box) => box.read());
    if (x == null || y == null || wide == null || (!isRound && deep == null)) return;
    if (sizeRefused(wide, deep ?? 0)) return;
    const start = { x: datum.x + x, y: datum.y + y };
    const end = { x: start.x + wide, y: start.y + (deep ?? 0) };
    const made = isRound
      ? roundOf(start, wide)
      : newOutline(job, kind, isLine ? [start, end] : rectangle(start, end), !isLine);
    const refused = tryCommand(props, made.command);
    if (refused) {
      width.refuse(refused);
      return;
    }
    onSelect({ feature: made.id });
    for (const box of [across, up, width, depth]) box.clear();
  }

  function sizeRefused(wide: number, deep: number): boolean {
    if (isLine) {
      if (wide !== 0 || deep !== 0) return false;
      width.refuse(says.noRun);
    } else if (wide <= 0) width.refuse(says.positive);
    else if (!isRound && deep <= 0) depth.refuse(says.positive);
    else return false;
    return true;
  }

  function roundOf(center: { x: number; y: number }, diameter: number): NewFeature {
    return newRound(job, center, diameter, kind === 'no-stake-zone' ? kind : 'block-out');
  }

  const keyboard = lengthKeyboard(job.units);
  const firstSize = isRound ? says.diameter : isLine ? says.runsAcross : says.width;
  return (
    <details className="change-feature" open={job.features.length === 0}>
      <summary>{says.add}</summary>
      <form
        aria-label={says.add}
        className="change-row"
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <label className="typed">
          <span>{says.addKind}</span>
          <select
            value={kind}
            onChange={(event) => setKind(KINDS.find((one) => one === event.target.value) ?? 'pad')}
          >
            {KINDS.map((one) => (
              <option key={one} value={one}>
                {words.kinds[one]}
              </option>
            ))}
          </select>
        </label>
        {mayBeRound ? (
          <label className="typed">
            <span>{says.addForm}</span>
            <select
              value={isRound ? 'round' : 'rectangle'}
              onChange={(event) => setWantsRound(event.target.value === 'round')}
            >
              <option value="rectangle">{says.rectangle}</option>
              <option value="round">{says.round}</option>
            </select>
          </label>
        ) : null}
        <TypedBox
          label={isRound ? says.centerAcross : says.fromAcross}
          keyboard={keyboard}
          {...across}
        />
        <TypedBox label={isRound ? says.centerUp : says.fromUp} keyboard={keyboard} {...up} />
        <TypedBox label={firstSize} keyboard={keyboard} {...width} />
        {isRound ? null : (
          <TypedBox label={isLine ? says.runsUp : says.depth} keyboard={keyboard} {...depth} />
        )}
        <button type="submit" className="main">
          {says.addButton}
        </button>
      </form>
    </details>
  );
}
