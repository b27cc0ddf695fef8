import { inflateSync } from 'node:zlib';

/** A PDF with its streams unpacked, so that it can be searched as text. */
export function unpacked(bytes: Buffer): string {
  const packed = bytes.toString('latin1');
  return packed.replace(
    /(<<(?:(?!>>\s*stream)[\s\S])*?\/Filter \/FlateDecode[\s\S]*?>>\s*stream\r?\n)([\s\S]*?)(\r?\nendstream)/g,
    (_, head: string, content: string, end: string) =>
      head + inflateSync(Buffer.from(content, 'latin1')).toString('latin1') + end,
  );
}

/** All that is written in a PDF, as a reader would copy it: the typefaces' own tables say which letter a sign is. */
export function writtenIn(pdf: string): string {
  const objects = new Map(
    [...pdf.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)].map(([, id, body]) => [
      id!,
      body!,
    ]),
  );
  const letters = new Map<string, readonly string[]>();
  for (const [, name, id] of pdf.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
    const table = /\/ToUnicode (\d+) 0 R/.exec(objects.get(id!) ?? '')?.[1];
    if (table !== undefined) letters.set(name!, lettersOf(objects.get(table) ?? ''));
  }
  let font: readonly string[] = [];
  const texts: string[] = [];
  for (const [, name, shown] of pdf.matchAll(/\/(F\d+) [\d.]+ Tf|\[([^\]]*)\] TJ/g)) {
    if (name !== undefined) font = letters.get(name) ?? [];
    else {
      const signs = [...shown!.matchAll(/<([0-9a-f]*)>/g)].map(([, hex]) => hex!).join('');
      texts.push((signs.match(/.{4}/g) ?? []).map((sign) => font[parseInt(sign, 16)]).join(''));
    }
  }
  return texts.join('\n');
}

function lettersOf(table: string): readonly string[] {
  return [...table.matchAll(/beginbfrange\s([\s\S]*?)endbfrange/g)].flatMap(([, ranges]) =>
    [...ranges!.matchAll(/\[([^\]]*)\]/g)].flatMap(([, row]) =>
      [...row!.matchAll(/<([0-9a-f ]+)>/g)].map(([, codes]) =>
        String.fromCharCode(...codes!.match(/[0-9a-f]{4}/g)!.map((code) => parseInt(code, 16))),
      ),
    ),
  );
}
