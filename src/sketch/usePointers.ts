import { type RefObject, useEffect, useRef } from 'react';
import { type FingerEvent, type Fingers, NO_FINGERS, stepFingers } from './fingers.ts';
import type { ToolInput } from './tools/tool.ts';
import { type Size, type Spot, toJob, type View, zoomAt } from './view.ts';

/** A finger held still this long means it. */
const HOLD_MS = 500;
/** One notch of a wheel looks about this much closer. */
const WHEEL_FACTOR = 1.0016;
const WHEEL_LINE_PX = 16;

interface PointerOrders {
  readonly look: () => { readonly view: View; readonly size: Size } | null;
  readonly send: (input: ToolInput) => void;
  readonly onView: (view: View) => void;
}

/** Turns the pointers on an element into inputs and views: moves once a frame, everything else at once and in order. */
export function usePointers(element: RefObject<HTMLElement | null>, orders: PointerOrders): void {
  const latest = useRef(orders);
  latest.current = orders;

  useEffect(() => {
    const stage = element.current;
    if (!stage) return;
    let fingers: Fingers = NO_FINGERS;
    let waiting: FingerEvent | null = null;
    let frame = 0;
    let holdTimer = 0;

    function spotOf(event: MouseEvent): Spot {
      const box = stage?.getBoundingClientRect();
      return { x: event.clientX - (box?.left ?? 0), y: event.clientY - (box?.top ?? 0) };
    }

    function fingerOf(kind: FingerEvent['kind'], event: PointerEvent): FingerEvent {
      const touch = event.pointerType === 'touch';
      return { kind, id: event.pointerId, spot: spotOf(event), touch };
    }

    function take(event: FingerEvent) {
      const now = latest.current.look();
      if (!now) return;
      const next = stepFingers(fingers, event, now.view, now.size);
      fingers = next.fingers;
      if (next.input) latest.current.send(next.input);
      if (next.view) latest.current.onView(next.view);
    }

    function flush() {
      cancelAnimationFrame(frame);
      frame = 0;
      const event = waiting;
      waiting = null;
      if (event) take(event);
    }

    function onDown(event: PointerEvent) {
      if (event.pointerType === 'mouse' && event.button !== 0) return;
      flush();
      stage?.setPointerCapture(event.pointerId);
      const finger = fingerOf('down', event);
      take(finger);
      clearTimeout(holdTimer);
      if (finger.touch) holdTimer = window.setTimeout(() => held(finger), HOLD_MS);
    }

    function held({ spot, touch }: FingerEvent) {
      const now = latest.current.look();
      if (!now || fingers.at !== 'one') return;
      flush();
      latest.current.send({ kind: 'hold', spot, at: toJob(now.view, now.size, spot), touch });
    }

    function onMove(event: PointerEvent) {
      const finger = fingerOf('move', event);
      // Two fingers move by turns: each must be counted.
      if (waiting && waiting.id !== finger.id) flush();
      waiting = finger;
      if (frame === 0) frame = requestAnimationFrame(flush);
    }

    function onEnd(kind: 'up' | 'lost', event: PointerEvent) {
      clearTimeout(holdTimer);
      flush();
      take(fingerOf(kind, event));
    }

    function onLeave(event: PointerEvent) {
      if (event.pointerType !== 'mouse' || fingers.at !== 'none') return;
      flush();
      latest.current.send({ kind: 'interrupt' });
    }

    function onTwice(event: MouseEvent) {
      const now = latest.current.look();
      if (!now) return;
      const spot = spotOf(event);
      latest.current.send({
        kind: 'hold',
        spot,
        at: toJob(now.view, now.size, spot),
        touch: false,
      });
    }

    function onWheel(event: WheelEvent) {
      event.preventDefault();
      const now = latest.current.look();
      if (!now) return;
      const px = event.deltaMode === 0 ? event.deltaY : event.deltaY * WHEEL_LINE_PX;
      latest.current.onView(zoomAt(now.view, now.size, spotOf(event), WHEEL_FACTOR ** -px));
    }

    const onUp = (event: PointerEvent) => onEnd('up', event);
    const onCancel = (event: PointerEvent) => onEnd('lost', event);
    stage.addEventListener('pointerdown', onDown);
    stage.addEventListener('pointermove', onMove);
    stage.addEventListener('pointerup', onUp);
    stage.addEventListener('pointercancel', onCancel);
    stage.addEventListener('pointerleave', onLeave);
    stage.addEventListener('dblclick', onTwice);
    stage.addEventListener('wheel', onWheel, { passive: false });
    return () => {
      clearTimeout(holdTimer);
      cancelAnimationFrame(frame);
      stage.removeEventListener('pointerdown', onDown);
      stage.removeEventListener('pointermove', onMove);
      stage.removeEventListener('pointerup', onUp);
      stage.removeEventListener('pointercancel', onCancel);
      stage.removeEventListener('pointerleave', onLeave);
      stage.removeEventListener('dblclick', onTwice);
      stage.removeEventListener('wheel', onWheel);
    };
  }, [element]);
}
