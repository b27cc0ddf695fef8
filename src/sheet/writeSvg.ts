import type { SheetPage } from './page.ts';
import { paintPage } from './paint/paintPage.ts';
import type { Letters, Pen, Step } from './paint/pen.ts';

/** Places to this many decimals of a mm: 1/1000 mm is finer than any printer. */
function number(value: number): string {
  return String(Math.round(value * 1000) / 1000 + 0);
}

function data(steps: readonly Step[]): string {
  return steps
    .map((step) => {
      switch (step.go) {
        case 'move':
          return `M${number(step.to.x)} ${number(step.to.y)}`;
        case 'line':
          return `L${number(step.to.x)} ${number(step.to.y)}`;
        case 'curve':
          return `C${[step.one, step.two, step.to].map(({ x, y }) => `${number(x)} ${number(y)}`).join(' ')}`;
        case 'close':
          return 'Z';
        default:
          return step satisfies never;
      }
    })
    .join('');
}

function escaped(text: string): string {
  return text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}

const FONT = 'Inter, Helvetica, Arial, sans-serif';

function svgPen(lines: string[], prefix: string): Pen {
  let clips = 0;
  return {
    fill: (path, colour) => {
      lines.push(`<path d="${data(path)}" fill="${colour}" fill-rule="evenodd"/>`);
    },
    stroke: (path, { width, dash, colour }) => {
      const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.map(number).join(' ')}"` : '';
      lines.push(
        `<path d="${data(path)}" fill="none" stroke="${colour}" stroke-width="${number(width)}"${dashes}/>`,
      );
    },
    letters: (letters) => lines.push(textElement(letters)),
    within: (path, draw) => {
      clips++;
      const id = `${prefix}-${clips}`;
      lines.push(
        `<clipPath id="${id}"><path d="${data(path)}" clip-rule="evenodd"/></clipPath><g clip-path="url(#${id})">`,
      );
      draw();
      lines.push('</g>');
    },
  };
}

const ANCHORS: Readonly<Record<Letters['anchor'], string>> = {
  start: '',
  middle: ' text-anchor="middle"',
  end: ' text-anchor="end"',
};

function textElement({ text, at, size, angle, anchor, bold, colour }: Letters): string {
  const turn =
    angle === 0
      ? ''
      : ` transform="rotate(${number((-angle * 180) / Math.PI)} ${number(at.x)} ${number(at.y)})"`;
  return `<text x="${number(at.x)}" y="${number(at.y)}" font-size="${number(size)}"${bold ? ' font-weight="600"' : ''}${ANCHORS[anchor]} fill="${colour}"${turn}>${escaped(text)}</text>`;
}

/**
 * A page as an SVG of its exact size on paper, one user unit to the mm. `id` keeps the names inside apart when several
 * stand in one document.
 */
export function writeSvg(page: SheetPage, id: string): string {
  const { width, height, title } = page;
  const lines: string[] = [];
  paintPage(svgPen(lines, id), page);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${number(width)}mm" height="${number(height)}mm" viewBox="0 0 ${number(width)} ${number(height)}" font-family="${FONT}" stroke-linejoin="round" xml:space="preserve" role="img" aria-label="${escaped(title)}">`,
    ...lines,
    '</svg>\n',
  ].join('\n');
}

/** The style that a document of such pages needs to print each on its own sheet at its true size. */
export function printStyle({ width, height }: SheetPage): string {
  return `@page { size: ${number(width)}mm ${number(height)}mm; margin: 0 }`;
}
