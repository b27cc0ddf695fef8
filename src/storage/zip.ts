import { strToU8, type Zippable, zipSync } from 'fflate';

export interface ZipFile {
  readonly name: string;
  readonly text: string;
}

/** Texts as files of one zip. Two of one name would be one file: a name that is taken gets a number. */
export function zipOf(files: readonly ZipFile[], date: Date): Uint8Array<ArrayBuffer> {
  const zipped: Zippable = {};
  for (const { name, text } of files) {
    let free = name;
    for (let n = 2; Object.hasOwn(zipped, free); n++) free = name.replace(/(\.\w+)?$/, `-${n}$1`);
    zipped[free] = [strToU8(text), { mtime: date }];
  }
  return new Uint8Array(zipSync(zipped, { level: 6 }));
}
