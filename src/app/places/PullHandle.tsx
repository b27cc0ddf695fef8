import { type PointerEvent, type RefObject, useRef } from 'react';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import type { Pull } from '../state.ts';

const PULLS: readonly Pull[] = ['low', 'half', 'full'];
/** Less than this is a tap, not a pull, px. */
const SLOP = 8;

/** Pulls the ticket up and lets it down on a phone: a tap goes one step (and round), a drag as far as it goes. */
export function PullHandle({ side }: { readonly side: RefObject<HTMLElement | null> }) {
  const words = useWords().app.pull;
  const { pull } = useSession();
  const pulled = useAppState((state) => state.pull);
  const grip = useRef<{ readonly y: number; readonly height: number; moved: boolean } | null>(null);

  function start(event: PointerEvent<HTMLButtonElement>) {
    const height = side.current?.offsetHeight ?? 0;
    grip.current = { y: event.clientY, height, moved: false };
    event.currentTarget.setPointerCapture(event.pointerId);
  }

  function move(event: PointerEvent) {
    const held = grip.current;
    if (!held || !side.current) return;
    const up = held.y - event.clientY;
    if (Math.abs(up) > SLOP) held.moved = true;
    if (held.moved) side.current.style.blockSize = `${heightWithin(held.height + up)}px`;
  }

  function end() {
    const held = grip.current;
    if (!held?.moved || !side.current) return;
    const height = side.current.offsetHeight;
    side.current.style.blockSize = '';
    pull(nearestPull(height, window.innerHeight));
  }

  function step() {
    const wasDrag = grip.current?.moved ?? false;
    grip.current = null;
    if (!wasDrag) pull(PULLS[(PULLS.indexOf(pulled) + 1) % PULLS.length] ?? 'low');
  }

  return (
    <button
      type="button"
      className="pull-button"
      aria-label={`${words.label}: ${pulled === 'full' ? words.less : words.more}`}
      aria-expanded={pulled !== 'low'}
      aria-controls="side-body"
      onPointerDown={start}
      onPointerMove={move}
      onPointerUp={end}
      onPointerCancel={end}
      onClick={step}
    >
      <svg className="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
        <path d={pulled === 'full' ? 'M4 9l8 7 8-7' : 'M4 15l8-7 8 7'} />
      </svg>
    </button>
  );
}

function heightWithin(height: number): number {
  return Math.min(Math.max(height, 48), window.innerHeight - 170);
}

/** The resting height that a pull ended closest to. */
export function nearestPull(height: number, screen: number): Pull {
  const share = height / screen;
  if (share < 0.28) return 'low';
  return share < 0.6 ? 'half' : 'full';
}
