/** A record of a CSV file: its fields, and the line that it begins on, from 1. */
export interface CsvRecord {
  readonly line: number;
  readonly fields: readonly string[];
}

export type CsvRead =
  | { readonly ok: true; readonly records: readonly CsvRecord[] }
  /** A quote that is never closed: the line it opens on. */
  | { readonly ok: false; readonly line: number };

/**
 * The records of a CSV file, whichever way its lines end; blank ones left out. Spreadsheets of some countries write
 * semicolons: what stands first on the first line outside of quotes is the separator.
 * @source csv-format
 */
export function readCsv(text: string): CsvRead {
  const whole = text.replace(/^\uFEFF/, '');
  const separator = separatorOf(whole);
  const records: CsvRecord[] = [];
  let [line, begin, quoted] = [1, 1, 0];
  let fields: string[] = [];
  let field = '';
  const end = () => {
    fields.push(field);
    if (fields.length > 1 || fields[0]!.trim() !== '') records.push({ line: begin, fields });
    fields = [];
    field = '';
  };
  for (let at = 0; at < whole.length; at++) {
    const letter = whole[at]!;
    if (letter === '\n') line++;
    if (quoted > 0) {
      if (letter !== '"') field += letter;
      else if (whole[at + 1] === '"') {
        field += '"';
        at++;
      } else quoted = 0;
    } else if (letter === '"' && field === '') quoted = line;
    else if (letter === separator) {
      fields.push(field);
      field = '';
    } else if (letter === '\n' || letter === '\r') {
      if (letter === '\r' && whole[at + 1] === '\n') {
        at++;
        line++;
      } else if (letter === '\r') line++;
      end();
      begin = line;
    } else field += letter;
  }
  if (quoted > 0) return { ok: false, line: quoted };
  end();
  return { ok: true, records };
}

function separatorOf(text: string): string {
  const outside = text.replace(/"(?:[^"]|"")*"/g, '');
  return /^[^\n\r,;\t]*([,;\t])/.exec(outside)?.[1] ?? ',';
}
