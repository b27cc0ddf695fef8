import Konva from 'konva/lib/Core';
import { memo, useCallback } from 'react';
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore';
import type { Mark } from '../drawing/marks.ts';
import { type InHand, paintHand } from './paint/paintHand.ts';
import { type Look, paintMarks } from './paint/paintMarks.ts';

/** More than two device pixels to a CSS pixel cost time and can't be seen at arm's length. */
const MOST_PIXELS = 2;
Konva.pixelRatio = Math.min(window.devicePixelRatio || 1, MOST_PIXELS);

export interface SketchCanvasProps {
  readonly marks: readonly Mark[];
  readonly dimensionMarks: readonly Mark[];
  readonly hand: InHand;
  readonly look: Look;
}

/**
 * The drawing, its dimensions and what is in hand, each on its own layer: a guide that moves repaints no drawing, nor do
 * dimensions that make way.
 */
export function SketchCanvas({ marks, dimensionMarks, hand, look }: SketchCanvasProps) {
  return (
    <Stage width={look.size.width} height={look.size.height} listening={false}>
      <DrawingLayer marks={marks} look={look} />
      <DrawingLayer marks={dimensionMarks} look={look} />
      <HandLayer hand={hand} look={look} />
    </Stage>
  );
}

const DrawingLayer = memo(function DrawingLayer({
  marks,
  look,
}: Pick<SketchCanvasProps, 'marks' | 'look'>) {
  const paint = useCallback(
    (context: Konva.Context) => paintMarks(context._context, marks, look),
    [marks, look],
  );
  return (
    <Layer listening={false}>
      <Shape sceneFunc={paint} listening={false} perfectDrawEnabled={false} />
    </Layer>
  );
});

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
