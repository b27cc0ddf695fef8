/** A cell: a text, or a number that stays one. */
export type Cell = string | number;

/** What tells a spreadsheet that the file is UTF-8. */
const BYTE_ORDER_MARK = '\uFEFF';
/** What a spreadsheet takes for the begin of a formula, in front of blanks too, and the full-width signs that some turn into it. */
const FORMULA = /^[\s\p{Cf}]*[=+\-@＝＋－＠]|^[\t\r\n]/u;

/**
 * Rows as the text of a CSV file, the first the heads: UTF-8 with its mark, CRLF, quotes where they are needed. A text
 * that a spreadsheet would run as a formula gets an apostrophe in front; numbers stay numbers, negative ones too.
 * @source csv-format
 * @source csv-formulas
 */
export function csvText(rows: readonly (readonly Cell[])[]): string {
  const lines = rows.map((row) => row.map(written).join(','));
  return `${BYTE_ORDER_MARK}${lines.map((line) => `${line}\r\n`).join('')}`;
}

function written(cell: Cell): string {
  if (typeof cell === 'number') return plainNumber(cell);
  const text = FORMULA.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Places of a number at most: finer than any reading, and no noise of binary fractions. */
const PLACES = 6;

/** A point for decimals, no thousands mark, no exponent, in every language. */
function plainNumber(number: number): string {
  const text = number.toFixed(PLACES).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
