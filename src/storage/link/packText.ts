import { deflateSync, type FlateError, inflateSync } from 'fflate';
import { fail, ok, type Result } from '../../units/result.ts';
import { wordsOfPacking1 } from './wordsOfPacking1.ts';

/** In front of the packed text: how many bytes it has, and their check sum (CRC-32). Whole numbers, high byte first. */
const HEAD = { length: 3, check: 4 } as const;
const HEAD_BYTES = HEAD.length + HEAD.check;

/** fflate's number for “more was to come”. */
const ENDED_EARLY = 0;

/** A text deflated (RFC 1951) with the first packing's words known beforehand. Under 16 MB. */
export function packText(said: string): Uint8Array {
  const text = new TextEncoder().encode(said);
  const packed = deflateSync(text, { level: 9, dictionary: wordsOfPacking1() });
  const whole = new Uint8Array(HEAD_BYTES + packed.length);
  const head = new DataView(whole.buffer);
  head.setUint8(0, text.length >> 16);
  head.setUint16(1, text.length & 0xffff);
  head.setUint32(HEAD.length, checkSum(text));
  whole.set(packed, HEAD_BYTES);
  return whole;
}

/** The text that was packed, or that it is cut short or was changed on the way. Never throws. */
export function unpackText(whole: Uint8Array): Result<string> {
  if (whole.length <= HEAD_BYTES) return fail({ code: 'link-cut-short' });
  const head = new DataView(whole.buffer, whole.byteOffset, HEAD_BYTES);
  const length = (head.getUint8(0) << 16) | head.getUint16(1);
  try {
    const packed = whole.subarray(HEAD_BYTES);
    const out = new Uint8Array(length);
    const text = inflateSync(packed, { out, dictionary: wordsOfPacking1() });
    if (text.length !== length || checkSum(text) !== head.getUint32(HEAD.length)) {
      return fail({ code: 'link-broken' });
    }
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(text));
  } catch (error) {
    const cut = error instanceof Error && (error as FlateError).code === ENDED_EARLY;
    return fail({ code: cut ? 'link-cut-short' : 'link-broken' });
  }
}

/** CRC-32 (ISO 3309, as in gzip: RFC 1952, section 8). */
function checkSum(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}
