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
];
const MENU = 'draw-menu';

/** What hangs on the belt: always under the sketch, where the thumb is, never on the drawing. */
export function ToolBelt() {
  const words = useWords().app.belt;
  const session = useSession();
  const tool = useAppState((state) => state.tool);
  const history = useAppState((state) => state.history);
  const drawing = DRAWS.includes(tool);
  return (
    <div className="belt" role="toolbar" aria-label={words.label}>
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
        <span>{drawing ? words.tools[tool] : words.add}</span>
      </button>
      <div className="belt-draws">
        {DRAWS.map((one) => (
          <ToolButton key={one} tool={one} />
        ))}
      </div>
      <span className="belt-gap" />
      <button type="button" className="belt-tool" onClick={() => session.look(null)}>
        <ToolIcon tool="fit" />
        <span>{words.fit}</span>
      </button>
      <button
        type="button"
        className="belt-tool"
        disabled={!canUndo(history)}
        onClick={session.undo}
      >
        <ToolIcon tool="undo" />
        <span>{words.undo}</span>
      </button>
      <button
        type="button"
        className="belt-tool"
        disabled={!canRedo(history)}
        onClick={session.redo}
      >
        <ToolIcon tool="redo" />
        <span>{words.redo}</span>
      </button>
      <div id={MENU} popover="auto" className="menu draw-menu">
        {DRAWS.map((one) => (
          <ToolButton key={one} tool={one} />
        ))}
      </div>
    </div>
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
      <span>{words.tools[tool]}</span>
    </button>
  );
}
