import { inflated } from '../../storage/inflated.ts';

const WOFF = 0x774f4646;
const HEAD = 44;
const ENTRY = 20;
/** Of the file that a WOFF was packed from. */
const PLAIN_HEAD = 12;
const PLAIN_ENTRY = 16;

/**
 * A typeface as it was before it was packed for the web: the PDF writer unpacks a whole table of a packed one for every
 * letter it looks up. What isn't packed is given back as it is.
 * Source: WOFF File Format 1.0 (W3C Recommendation), sections 3 to 5.
 */
export function unpackedFont(bytes: Uint8Array): Uint8Array {
  const packed = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (packed.byteLength < HEAD || packed.getUint32(0) !== WOFF) return bytes;
  const count = packed.getUint16(12);
  const tables = Array.from({ length: count }, (_, i) => {
    const at = HEAD + i * ENTRY;
    const from = packed.getUint32(at + 4);
    const short = packed.getUint32(at + 8);
    const length = packed.getUint32(at + 12);
    const held = bytes.subarray(from, from + short);
    return {
      tag: packed.getUint32(at),
      checksum: packed.getUint32(at + 16),
      content: short < length ? inflated(held, length) : held,
    };
  });
  const padded = tables.map(({ content }) => Math.ceil(content.length / 4) * 4);
  const start = PLAIN_HEAD + count * PLAIN_ENTRY;
  const plain = new Uint8Array(padded.reduce((sum, one) => sum + one, start));
  const view = new DataView(plain.buffer);
  const halvings = Math.floor(Math.log2(count));
  view.setUint32(0, packed.getUint32(4));
  view.setUint16(4, count);
  view.setUint16(6, 16 * 2 ** halvings);
  view.setUint16(8, halvings);
  view.setUint16(10, 16 * count - 16 * 2 ** halvings);
  let at = start;
  tables.forEach(({ tag, checksum, content }, i) => {
    const entry = PLAIN_HEAD + i * PLAIN_ENTRY;
    view.setUint32(entry, tag);
    view.setUint32(entry + 4, checksum);
    view.setUint32(entry + 8, at);
    view.setUint32(entry + 12, content.length);
    plain.set(content, at);
    at += padded[i]!;
  });
  return plain;
}
