/**
 * Reads what was drawn out of an uncompressed PDF: the ends of straight lines, in points from the page's upper left
 * corner, through the transforms in force. Knows just the operators that the tests need.
 */
export interface DrawnLine {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly width: number;
}

type Matrix = readonly [number, number, number, number, number, number];

function times(m: Matrix, n: Matrix): Matrix {
  return [
    m[0] * n[0] + m[1] * n[2],
    m[0] * n[1] + m[1] * n[3],
    m[2] * n[0] + m[3] * n[2],
    m[2] * n[1] + m[3] * n[3],
    m[4] * n[0] + m[5] * n[2] + n[4],
    m[4] * n[1] + m[5] * n[3] + n[5],
  ];
}

/** The content streams of the pages, in order. */
export function contentStreams(pdf: string): readonly string[] {
  return [...pdf.matchAll(/stream\r?\n([\s\S]*?)\r?\nendstream/g)]
    .map(([, content]) => content!)
    .filter((content) => /^1 0 0 -1 0 [\d.]+ cm/.test(content));
}

/** Sizes of the pages, points. */
export function pageSizes(pdf: string): readonly (readonly [number, number])[] {
  return [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map(
    ([, width, height]) => [Number(width), Number(height)] as const,
  );
}

export function drawnLines(content: string): readonly DrawnLine[] {
  const lines: DrawnLine[] = [];
  const stack: { matrix: Matrix; width: number }[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let width = 1;
  let at: readonly [number, number] = [0, 0];
  const place = (x: number, y: number): readonly [number, number] => [
    x * matrix[0] + y * matrix[2] + matrix[4],
    x * matrix[1] + y * matrix[3] + matrix[5],
  ];
  let pending: DrawnLine[] = [];
  for (const row of content.split('\n')) {
    const parts = row.trim().split(/\s+/);
    const operator = parts.at(-1);
    const numbers = parts.slice(0, -1).map(Number);
    switch (operator) {
      case 'q':
        stack.push({ matrix, width });
        break;
      case 'Q': {
        const before = stack.pop()!;
        matrix = before.matrix;
        width = before.width;
        break;
      }
      case 'cm':
        matrix = times(numbers as unknown as Matrix, matrix);
        break;
      case 'w':
        width = numbers[0]!;
        break;
      case 'm':
        at = place(numbers[0]!, numbers[1]!);
        break;
      case 'l': {
        const to = place(numbers[0]!, numbers[1]!);
        pending.push({ from: at, to, width });
        at = to;
        break;
      }
      case 'S':
        lines.push(...pending);
        pending = [];
        break;
      case 'f*':
      case 'f':
      case 'n':
        pending = [];
        break;
    }
  }
  return lines;
}
