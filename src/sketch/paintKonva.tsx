import Konva from 'konva/lib/Core';
import { memo, useCallback, useLayoutEffect, useRef } from 'react';
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore';
import type { Mark } from '../drawing/marks.ts';
import { carriedTo } from './paint/carried.ts';
import type { Look } from './paint/look.ts';
import { type InHand, paintHand } from './paint/paintHand.ts';
import { paintMarks } from './paint/paintMarks.ts';
import { useRests } from './useRests.ts';

/** More than two device pixels to a CSS pixel cost time and can't be seen at arm's length. */
const MOST_PIXELS = 2;
Konva.pixelRatio = Math.min(window.devicePixelRatio || 1, MOST_PIXELS);

export interface SketchCanvasProps {
  readonly marks: readonly Mark[];
  readonly dimensionMarks: readonly Mark[];
  readonly hand: InHand;
  readonly look: Look;
}

/** A drawing of more marks than this is carried along as a picture while somebody looks elsewhere. */
const MANY_MARKS = 1000;

/**
 * The drawing, its dimensions and what is in hand, each on its own layer: a guide that moves repaints no drawing, nor do
 * dimensions that make way.
 */
export function SketchCanvas({ marks, dimensionMarks, hand, look }: SketchCanvasProps) {
  const carry = marks.length > MANY_MARKS;
  return (
    <Stage width={look.size.width} height={look.size.height} listening={false}>
      <DrawingLayer marks={marks} carry={carry} look={look} />
      <DrawingLayer marks={dimensionMarks} carry={carry} look={look} />
      <HandLayer hand={hand} look={look} />
    </Stage>
  );
}

type Painted = Pick<SketchCanvasProps, 'marks' | 'look'>;

interface DrawingLayerProps extends Painted {
  readonly carry: boolean;
}

const DrawingLayer = memo(function DrawingLayer({ marks, carry, look }: DrawingLayerProps) {
  const painted = usePainted(marks, look, carry);
  const layer = useRef<Konva.Layer>(null);
  const paint = useCallback(
    (context: Konva.Context) => paintMarks(context._context, painted.marks, painted.look),
    [painted],
  );
  useLayoutEffect(() => {
    const canvas = layer.current?.getNativeCanvasElement();
    if (!canvas) return;
    const same = painted.look === look;
    canvas.style.transformOrigin = '0 0';
    canvas.style.transform = same ? '' : carriedTo(painted.look.view, look.view, look.size);
  }, [painted, look]);
  return (
    <Layer ref={layer} listening={false}>
      <Shape sceneFunc={paint} listening={false} perfectDrawEnabled={false} />
    </Layer>
  );
});

/** What is on the canvas: the drawing as one looks at it now or, of a large one, as one did before looking elsewhere. */
function usePainted(marks: readonly Mark[], look: Look, carry: boolean): Painted {
  const rests = useRests(look);
  const last = useRef<Painted | null>(null);
  const before = last.current;
  const isPicture =
    !rests &&
    carry &&
    before?.marks === marks &&
    before.look.palette === look.palette &&
    before.look.size === look.size;
  if (!before || (!isPicture && (before.marks !== marks || before.look !== look))) {
    last.current = { marks, look };
  }
  return last.current ?? { marks, look };
}

const HandLayer = memo(function HandLayer({
  hand,
  look,
}: Pick<SketchCanvasProps, 'hand' | 'look'>) {
  const paint = useCallback(
    (context: Konva.Context) => paintHand(context._context, hand, look),
    [hand, look],
  );
  return (
    <Layer listening={false}>
      <Shape sceneFunc={paint} listening={false} perfectDrawEnabled={false} />
    </Layer>
  );
});
