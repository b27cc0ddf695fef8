import type { LinkLetters } from './mark.ts';

/** The 64 signs that no program changes in an address (RFC 4648, section 5), in the order of their worth. */
const SIGNS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const WORTH: ReadonlyMap<string, number> = new Map([...SIGNS].map((sign, worth) => [sign, worth]));

/** Bytes as four letters to three bytes, for an address that is copied and sent. */
function toLetters(bytes: Uint8Array): string {
  let written = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const [a, b = 0, c = 0] = bytes.subarray(i, i + 3);
    const group = (a! << 16) | (b << 8) | c;
    const signs = [18, 12, 6, 0].map((shift) => SIGNS[(group >> shift) & 63]);
    written += signs.slice(0, 1 + Math.min(3, bytes.length - i)).join('');
  }
  return written;
}

function fromLetters(written: string): Uint8Array {
  const bytes = new Uint8Array(Math.floor((written.length * 3) / 4));
  let [held, bits, at] = [0, 0, 0];
  for (const sign of written) {
    held = ((held << 6) | WORTH.get(sign)!) & 0xffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[at++] = (held >> bits) & 0xff;
  }
  return bytes;
}

/** Bytes as five digits to two bytes: a printed code holds digits more densely than letters. A last odd byte takes three. */
function toDigits(bytes: Uint8Array): string {
  let written = '';
  for (let i = 0; i < bytes.length; i += 2) {
    const [a, b] = bytes.subarray(i, i + 2);
    written += b === undefined ? String(a).padStart(3, '0') : String(a! * 256 + b).padStart(5, '0');
  }
  return written;
}

/** Groups worth more than their bytes can hold come out wrong, which the check of the whole finds. */
function fromDigits(written: string): Uint8Array {
  const bytes: number[] = [];
  for (let i = 0; i < written.length; i += 5) {
    const group = written.slice(i, i + 5);
    const worth = Number(group);
    if (group.length === 5) bytes.push((worth >> 8) & 0xff, worth & 0xff);
    else if (group.length === 3) bytes.push(worth & 0xff);
  }
  return Uint8Array.from(bytes);
}

export function written(bytes: Uint8Array, letters: LinkLetters): string {
  return letters === 'digits' ? toDigits(bytes) : toLetters(bytes);
}

const LEADING: Readonly<Record<LinkLetters, RegExp>> = {
  letters: /^[A-Za-z0-9_-]*/,
  digits: /^\d*/,
};

/** The bytes of what was written, as far as it goes: a full stop or a bracket behind a link is the message's own. */
export function readBytes(packed: string, letters: LinkLetters): Uint8Array {
  const signs = LEADING[letters].exec(packed)?.[0] ?? '';
  return letters === 'digits' ? fromDigits(signs) : fromLetters(signs);
}
