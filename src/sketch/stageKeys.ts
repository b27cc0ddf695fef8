import type { Key, ToolInput } from './tools/tool.ts';
import { type Size, type View, zoomAt } from './view.ts';

/** What a key on the stage means: an input for the tool, another look, or nothing (then the page has it). */
export type KeyMeaning =
  | { readonly do: 'send'; readonly input: ToolInput }
  | { readonly do: 'look'; readonly view: View }
  | null;

const TOOL_KEYS: readonly Key[] = [
  'Enter',
  'Delete',
  'Backspace',
  'ArrowLeft',
  'ArrowRight',
  'ArrowUp',
  'ArrowDown',
];
const KEY_FACTOR = 1.25;

export function meaningOf(key: string, far: boolean, view: View, size: Size): KeyMeaning {
  const middle = { x: size.width / 2, y: size.height / 2 };
  if (key === 'Escape') return { do: 'send', input: { kind: 'cancel' } };
  if (key === '+' || key === '=') {
    return { do: 'look', view: zoomAt(view, size, middle, KEY_FACTOR) };
  }
  if (key === '-' || key === '_') {
    return { do: 'look', view: zoomAt(view, size, middle, 1 / KEY_FACTOR) };
  }
  const forTool = TOOL_KEYS.find((one) => one === key);
  return forTool ? { do: 'send', input: { kind: 'key', key: forTool, far } } : null;
}
