import { unzlibSync } from 'fflate';

/**
 * What was deflated with a zlib head and sum (RFC 1950).
 * @param length Bytes that it comes to.
 */
export function inflated(packed: Uint8Array, length: number): Uint8Array {
  return unzlibSync(packed, { out: new Uint8Array(length) });
}
