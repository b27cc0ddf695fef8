/** Grey pictures as PNG files (ISO/IEC 15948), no more than is needed to keep some and read them again. */
import { crc32, deflateSync, inflateSync } from 'node:zlib';
import type { Painted } from './pdfReader.ts';

const SIGNATURE = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);

export function writeGreyPng({ width, height, grey }: Painted): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  // Eight bits, grey, no filter by row, not interlaced.
  head.set([8, 0, 0, 0, 0], 8);
  const rows = Buffer.alloc(height * (width + 1));
  for (let y = 0; y < height; y++) {
    rows.set(grey.subarray(y * width, (y + 1) * width), y * (width + 1) + 1);
  }
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(name: string, body: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), body]);
  const whole = Buffer.alloc(named.length + 8);
  whole.writeUInt32BE(body.length, 0);
  whole.set(named, 4);
  whole.writeUInt32BE(crc32(named), named.length + 4);
  return whole;
}

/** Reads what `writeGreyPng` wrote. */
export function readGreyPng(png: Buffer): Painted {
  const width = png.readUInt32BE(16);
  const height = png.readUInt32BE(20);
  const start = png.indexOf('IDAT', 0, 'latin1');
  const rows = inflateSync(png.subarray(start + 4, start + 4 + png.readUInt32BE(start - 4)));
  const grey = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    const at = y * (width + 1);
    if (rows[at] !== 0) throw new Error('This picture was written by something else.');
    grey.set(rows.subarray(at + 1, at + 1 + width), y * width);
  }
  return { width, height, grey };
}
