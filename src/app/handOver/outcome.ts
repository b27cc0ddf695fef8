/** What became of something that was handed on, in the words that are shown beside its button. */
export type Outcome =
  | { readonly is: 'sent' | 'put-away' | 'copied' | 'not-copied' | 'saved' | 'tap-again' }
  | { readonly is: 'failed'; readonly why: string };

/** Whether the device has a place to send to, which phones have. */
export function canSend(data: ShareData): boolean {
  return typeof navigator.share === 'function' && (navigator.canShare?.(data) ?? !data.files);
}

/** Opens the device's own list of where to send to. Only within a tap: later, the browser asks for another one. */
export async function send(data: ShareData): Promise<Outcome> {
  try {
    await navigator.share(data);
    return { is: 'sent' };
  } catch (error) {
    if (isNamed(error, 'AbortError')) return { is: 'put-away' };
    if (isNamed(error, 'NotAllowedError')) return { is: 'tap-again' };
    return failed(error);
  }
}

/**
 * Copies the text that a field shows. Where the browser has no clipboard for pages (an address that isn't https or
 * localhost) the old way is tried; when that fails too the text stays marked, to be copied by hand.
 */
export async function copyFrom(field: HTMLTextAreaElement): Promise<Outcome> {
  try {
    await navigator.clipboard.writeText(field.value);
    return { is: 'copied' };
  } catch {
    field.focus();
    field.select();
    return { is: document.execCommand('copy') ? 'copied' : 'not-copied' };
  }
}

export function failed(error: unknown): Outcome {
  return { is: 'failed', why: error instanceof Error ? error.message : String(error) };
}

function isNamed(error: unknown, name: string): boolean {
  return error instanceof Error && error.name === name;
}
