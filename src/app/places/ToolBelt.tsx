import { Fragment } from 'react';
import { canRedo, canUndo } from '../../job/history.ts';
import type { ToolName } from '../../sketch/tools/tool.ts';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { ToolIcon } from './ToolIcon.tsx';

const HANDS: readonly ToolName[] = ['pick', 'pan'];
const DRAWS: readonly ToolName[] = [
  'draw-pad',
  'draw-existing-slab',
  'draw-building-line',
  'draw-steps',
  'draw-patch',
  'block-out-round',
  'block-out-square',
  'draw-no-stake-zone',
  'draw-utility-line',
  'draw-joint',
];
const MENU = 'draw-menu';

/** What hangs on the belt: always under the sketch, where the thumb is, never on the drawing. */
export function ToolBelt() {
  const { belt: words, done } = useWords().app;
  const session = useSession();
  const tool = useAppState((state) => state.tool);
  const history = useAppState((state) => state.history);
  const drawing = DRAWS.includes(tool);
  const undone = canUndo(history) ? done[history.now.label] : undefined;
  const redone = done[history.future[0]?.label ?? ''];
  return (
    <section className="belt" aria-label={words.label}>
      {HANDS.map((one) => (
        <ToolButton key={one} tool={one} />
      ))}
      <button
        type="button"
        className="belt-tool belt-add"
        aria-pressed={drawing}
        aria-label={words.addLabel}
        popoverTarget={MENU}
      >
        <ToolIcon tool={drawing ? tool : 'draw'} />
        <Label text={drawing ? words.tools[tool] : words.add} />
      </button>
      <div className="belt-draws">
        {DRAWS.map((one) => (
          <ToolButton key={one} tool={one} />
        ))}
      </div>
      <span className="belt-gap" />
      <button type="button" className="belt-tool" onClick={() => session.look(null)}>
        <ToolIcon tool="fit" />
        <Label text={words.fit} />
      </button>
      <button
        type="button"
        className="belt-tool"
        disabled={!canUndo(history)}
        title={undone ? words.undoWhat(undone) : undefined}
        onClick={session.undo}
      >
        <ToolIcon tool="undo" />
        <Label text={words.undo} />
      </button>
      <button
        type="button"
        className="belt-tool"
        disabled={!canRedo(history)}
        title={redone ? words.redoWhat(redone) : undefined}
        onClick={session.redo}
      >
        <ToolIcon tool="redo" />
        <Label text={words.redo} />
      </button>
      <div id={MENU} popover="auto" className="menu draw-menu">
        {DRAWS.map((one) => (
          <ToolButton key={one} tool={one} />
        ))}
      </div>
    </section>
  );
}

function ToolButton({ tool }: { readonly tool: ToolName }) {
  const words = useWords().app.belt;
  const session = useSession();
  const current = useAppState((state) => state.tool);
  return (
    <button
      type="button"
      className="belt-tool"
      aria-pressed={current === tool}
      onClick={() => {
        session.use(tool);
        document.getElementById(MENU)?.hidePopover();
      }}
    >
      <ToolIcon tool={tool} />
      <Label text={words.tools[tool]} />
    </button>
  );
}

/** Breaks between words only: a name broken at its hyphen can't be read at a glance. */
function Label({ text }: { readonly text: string }) {
  return (
    <span>
      {text.split(' ').map((word, index) => (
        <Fragment key={word}>
          {index > 0 ? ' ' : null}
          <span className="belt-word">{word}</span>
        </Fragment>
      ))}
    </span>
  );
}
