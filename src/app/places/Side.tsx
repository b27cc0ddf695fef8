import { type KeyboardEvent, type ReactNode, useRef } from 'react';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import type { Panel } from '../state.ts';
import { PullHandle } from './PullHandle.tsx';

const PANELS: readonly Panel[] = ['ticket', 'practices', 'corners'];
/** The sheet has no practices or corners of its own. */
const SHEET_PANELS: readonly Panel[] = ['ticket'];

interface SideProps {
  readonly content: Readonly<Record<Panel, () => ReactNode>>;
}

/** What lies beside the sketch (or under it, on a phone): ticket, practices, corners. */
export function Side({ content }: SideProps) {
  const words = useWords().app;
  const { show, pull } = useSession();
  const place = useAppState((state) => state.place);
  const kept = useAppState((state) => state.panel);
  const pulled = useAppState((state) => state.pull);
  const side = useRef<HTMLElement>(null);
  const panels = place === 'sheet' ? SHEET_PANELS : PANELS;
  const panel = panels.includes(kept) ? kept : 'ticket';

  function open(next: Panel) {
    show(next);
    if (pulled === 'low') pull('half');
  }

  function onKeyDown(event: KeyboardEvent) {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (!step) return;
    const next = panels[(panels.indexOf(panel) + step + panels.length) % panels.length];
    if (!next) return;
    show(next);
    side.current?.querySelector<HTMLElement>(`#tab-${next}`)?.focus();
  }

  return (
    <aside ref={side} className="side" aria-label={words.panels.label}>
      <div className="side-head">
        <div className="side-tabs" role="tablist" aria-label={words.panels.label}>
          {panels.map((one) => (
            <button
              key={one}
              id={`tab-${one}`}
              type="button"
              role="tab"
              aria-selected={one === panel}
              aria-controls="side-body"
              tabIndex={one === panel ? 0 : -1}
              onClick={() => open(one)}
              onKeyDown={onKeyDown}
            >
              {one === 'ticket' && place === 'sheet' ? words.sheet.title : words.panels[one]}
            </button>
          ))}
        </div>
        <PullHandle side={side} />
      </div>
      {/* Scrolls, so the keyboard must be able to reach it. */}
      <div
        id="side-body"
        className="side-body"
        role="tabpanel"
        aria-labelledby={`tab-${panel}`}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region is reached by keyboard
        tabIndex={0}
      >
        {content[panel]()}
      </div>
    </aside>
  );
}
