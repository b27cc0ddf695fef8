import type { Note, Quantity } from '../figure.ts';
import type { LayoutNoteCode } from './keys.ts';

/** A note of squaring and setting out: said at the forms. */
export function layoutNote(
  weight: Note['weight'],
  code: LayoutNoteCode,
  facts?: Readonly<Record<string, Quantity>>,
): Note {
  return { code, weight, station: 'forms', ...(facts ? { facts } : {}) };
}
