import { inked } from '../furniture.ts';
import { type Block, heading, paragraph } from '../pages/blocks.ts';
import type { LayoutWords } from '../words/layout.ts';
import type { JobCode, PrintedCode } from './jobCode.ts';
import { outlinesOf } from './outlines.ts';

/**
 * A module's width on paper, mm: what codes that are read close by are printed at.
 * @source qr-module-size
 */
export const MODULE = { least: 0.396, most: 0.99 } as const;
/** Clear paper round the code, in modules (ISO/IEC 18004). */
export const QUIET = 4;

/** The code that opens a copy of the job, as large as the column lets it be; or a word that there is none. */
export function codeBlocks(
  code: PrintedCode,
  width: number,
  { code: words }: Pick<LayoutWords, 'code'>,
): readonly Block[] {
  const title = heading(words.title, width);
  if (code.is !== 'code') {
    return [title, ...paragraph(words.none[code.is], width)];
  }
  const across = code.modules.length + 2 * QUIET;
  const module = Math.min(MODULE.most, width / across);
  if (module < MODULE.least) return [title, ...paragraph(words.none['too-large'], width)];
  return [
    title,
    picture(code, module),
    ...paragraph(words.says, width),
    ...paragraph(words.correction[code.correction], width),
  ];
}

function picture({ modules }: JobCode, module: number): Block {
  const outlines = outlinesOf(modules);
  return {
    height: (modules.length + 2 * QUIET) * module,
    leads: true,
    draw: (x, y) => [
      inked(
        outlines.map((outline) =>
          outline.map((corner) => ({
            x: x + (corner.x + QUIET) * module,
            y: y + (corner.y + QUIET) * module,
          })),
        ),
      ),
    ],
  };
}
