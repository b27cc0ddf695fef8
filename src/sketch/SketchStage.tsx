import './sketch.css';
import { type KeyboardEvent, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { Point } from '../geometry/point.ts';
import type { Command, Refusal } from '../job/commands.ts';
import type { Job } from '../job/job.ts';
import type { Station } from '../takeoff/figure.ts';
import type { Layout } from '../takeoff/layout/layout.ts';
import type { Takeoff } from '../takeoff/result.ts';
import type { Problem } from '../units/result.ts';
import { StageBars } from './bars/StageBars.tsx';
import { datumOf } from './datum.ts';
import { lengthsBesideMoving, lengthsOf } from './lengthsInHand.ts';
import { SketchCanvas } from './paintKonva.tsx';
import { extentOf, siteOf } from './site.ts';
import { spokenSelection, spokenSnap, spokenStake } from './spoken.ts';
import { meaningOf } from './stageKeys.ts';
import type { Showing } from './tools/machine.ts';
import type { Scene, Selection, ToolName } from './tools/tool.ts';
import { useDrawing } from './useDrawing.ts';
import { useFormLine } from './useFormLine.ts';
import { useHand, useStandingJob } from './useHand.ts';
import { usePalette } from './usePalette.ts';
import { usePointers } from './usePointers.ts';
import { useSize } from './useSize.ts';
import { useStakesInHand } from './useStakesInHand.ts';
import {
  areInSight,
  fitView,
  MARGIN,
  type Size,
  toScreen,
  type View,
  withInSight,
} from './view.ts';
import type { SketchWords } from './words/en.ts';

export interface SketchStageProps {
  /** The job on screen: with the preview of a gesture under way, when there is one. */
  readonly job: Job;
  readonly takeoff: Takeoff;
  /** The takeoff is of an earlier job; that of this one is being figured. */
  readonly figuring: boolean;
  readonly station: Station;
  /** What is set out and from where, while somebody looks at it. */
  readonly layout: Layout | null;
  readonly tool: ToolName;
  readonly selection: Selection | null;
  /** null: fit the whole site; the view that came of it is reported at once. */
  readonly view: View | null;
  readonly theme: 'light' | 'dark';
  readonly words: SketchWords;
  readonly sayProblem: (problem: Problem) => string;
  readonly onView: (view: View) => void;
  readonly onSelect: (selection: Selection | null) => void;
  readonly onTool: (tool: ToolName) => void;
  readonly onPreview: (command: Command | null) => void;
  readonly onCommit: (command: Command) => void;
  readonly onRefusal: (refusal: Refusal) => void;
}

/** The sketch: the drawing, what is in hand above it, and the bar to type in under it. */
export function SketchStage(props: SketchStageProps) {
  const { job, takeoff, station, tool, selection, words } = props;
  const helpId = useId();
  const frame = useRef<HTMLDivElement>(null);
  const size = useSize(frame);
  const palette = usePalette(frame, props.theme);
  const { standing, setPreviewing } = useStandingJob(job);
  const [asking, setAsking] = useState(false);
  const site = useMemo(() => siteOf(standing), [standing]);
  const view = useView(props, standing, size);
  const drawing = useDrawing(props, view, standing !== job);
  const formLine = useFormLine(standing, takeoff, station, standing !== job);

  function sceneNow(): Scene | null {
    if (!view || !size) return null;
    const dimensions = drawing.dimensions();
    const scene = { job: standing, site, dimensions, formLine: formLine(), selection };
    return { ...scene, view, size, datum: datumOf(standing) };
  }

  function commit(command: Command) {
    setPreviewing(false);
    props.onCommit(command);
  }

  function select(next: Selection | null) {
    setAsking(false);
    props.onSelect(next);
  }

  const { showing, send } = useHand(tool, sceneNow, {
    onView: props.onView,
    onSelect: select,
    onTool: props.onTool,
    onCommit: commit,
    onAskLength: () => setAsking(true),
    onPreview(command) {
      setPreviewing(command !== null);
      props.onPreview(command);
    },
  });

  useTypedInSight(showing, view, size, props.onView);
  useAddedInSight(standing, view, size, props.onView);
  usePointers(frame, {
    look: () => (view && size ? { view, size } : null),
    send,
    onView: props.onView,
  });

  /** Stops what is under way; when nothing is, lays the tool down, then the selection. */
  function cancel() {
    const { asks } = showing;
    const nothingBegun = asks.for === 'nothing' || asks.for === 'start';
    send({ kind: 'cancel' });
    if (asking) setAsking(false);
    else if (nothingBegun && tool !== 'pick') props.onTool('pick');
    else if (nothingBegun && selection && !showing.snap && !showing.sliding) select(null);
  }

  function onKeyDown(event: KeyboardEvent) {
    if (!view || !size || event.ctrlKey || event.metaKey || event.altKey) return;
    const inBar = event.target !== frame.current;
    if (inBar && event.key !== 'Escape') return;
    const meaning = meaningOf(event.key, event.shiftKey, view, size);
    if (!meaning) return;
    event.preventDefault();
    if (meaning.do === 'look') props.onView(meaning.view);
    else if (meaning.input.kind === 'cancel') cancel();
    else send(meaning.input);
    if (inBar) frame.current?.focus();
  }

  const inPick = tool === 'pick' ? selection : null;
  const stakes = useStakesInHand(job, takeoff, station, inPick, showing);
  const selected = job.features.find(({ id }) => id === selection?.feature) ?? null;
  const barPlace =
    view && size ? placeOfBar(standing, selection, stakes.picked?.face, view, size) : 'below';
  const snapped = showing.snap ? spokenSnap(showing.snap, words) : '';
  const { hasDimensions } = drawing;
  const hand = useMemo(
    () => ({
      showing,
      selected,
      selection,
      word: snapped,
      lengths: lengthsOf(showing, job.units),
      beside: hasDimensions ? [] : lengthsBesideMoving(job, showing),
      stakes,
    }),
    [showing, selected, selection, snapped, job, hasDimensions, stakes],
  );
  const look = useMemo(
    () => (view && size && palette ? { view, size, palette } : null),
    [view, size, palette],
  );

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: keys reach it from the stage and the bar inside.
    <div className="sketch-room" data-bar={barPlace} onKeyDown={onKeyDown}>
      <div
        ref={frame}
        className="sketch-stage"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: keys look closer, nudge and take away.
        tabIndex={0}
        aria-label={words.stage.label}
        aria-describedby={helpId}
      >
        {look ? (
          <SketchCanvas
            marks={drawing.marks}
            dimensionMarks={drawing.dimensionMarks}
            hand={hand}
            look={look}
          />
        ) : null}
      </div>
      <p id={helpId} className="unseen">
        {words.stage.help}
      </p>
      <p className="unseen" aria-live="polite">
        {snapped ||
          (stakes.picked && !showing.sliding
            ? spokenStake(job, stakes.picked, words)
            : spokenSelection(standing, selection, words))}
      </p>
      <StageBars
        words={words}
        sayProblem={props.sayProblem}
        job={job}
        takeoff={takeoff}
        stakes={stakes}
        showing={showing}
        selection={inPick}
        asking={asking}
        onAsk={setAsking}
        onTyped={(typed) => send({ kind: 'typed', typed })}
        onCancel={cancel}
        onCommit={commit}
        onSelect={select}
      />
    </div>
  );
}

/** A bar with its buttons, and a fingertip above it. */
const BAR_PX = 160;

/** The bar makes way for the selected corner or stake, so that it can be dragged. */
function placeOfBar(
  job: Job,
  selection: Selection | null,
  stake: Point | undefined,
  view: View,
  size: Size,
): 'above' | 'below' {
  const shape = job.features.find(({ id }) => id === selection?.feature)?.shape;
  const corners = shape?.form === 'outline' ? shape.corners : [];
  const corner = stake ?? corners.find(({ id }) => id === selection?.corner);
  return corner && toScreen(view, size, corner).y > size.height - BAR_PX ? 'above' : 'below';
}

/** The view to show. A fitted one follows the stage's size until somebody looks elsewhere. */
function useView(
  { view, onView }: Pick<SketchStageProps, 'view' | 'onView'>,
  job: Job,
  size: Size | null,
): View | null {
  const fitted = useRef<View | null>(null);
  const fittedSize = useRef(size);
  const isFitted = view === null || view === fitted.current;
  const stale = view === null || fittedSize.current !== size;
  useEffect(() => {
    if (!size || !isFitted || !stale) return;
    fitted.current = fitView(job, size);
    fittedSize.current = size;
    onView(fitted.current);
  }, [size, isFitted, stale, job, onView]);
  return useMemo(() => view ?? (size ? fitView(job, size) : null), [view, size, job]);
}

/** A shape that was added by its sizes may lie off the screen: then the whole site is shown. */
function useAddedInSight(
  job: Job,
  view: View | null,
  size: Size | null,
  onView: (view: View) => void,
): void {
  const known = useRef(job);
  useEffect(() => {
    const before = known.current;
    known.current = job;
    if (before === job || !view || !size) return;
    const added = job.features.filter((one) => !before.features.includes(one));
    // When more has changed than one shape more, it is another job, which has a view of its own.
    const isOneMore = added.length === 1 && job.features.length === before.features.length + 1;
    const extent = isOneMore ? extentOf({ ...job, features: added }) : null;
    if (!extent) return;
    const { minX, minY, maxX, maxY } = extent;
    const ends = [
      { x: minX, y: minY },
      { x: maxX, y: maxY },
    ];
    // Around the first shape there is to be room for its dimensions too.
    const room = before.features.length === 0 ? MARGIN : undefined;
    if (!areInSight(view, size, ends, room)) onView(fitView(job, size));
  }, [job, view, size, onView]);
}

/** A corner that was typed may lie off the screen: the view takes it in with the rest, once. */
function useTypedInSight(
  { path, snap }: Showing,
  view: View | null,
  size: Size | null,
  onView: (view: View) => void,
): void {
  const seen = useRef(path);
  useEffect(() => {
    if (seen.current === path) return;
    seen.current = path;
    if (snap || !view || !size) return;
    const next = withInSight(view, size, path, BAR_PX);
    if (next !== view) onView(next);
  }, [path, snap, view, size, onView]);
}
