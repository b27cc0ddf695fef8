/** `npm run sheet -- <job.json> --out <file.pdf or .svg>`: the crew sheet of a job file, without a browser. */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { USUAL_TERMS } from '../drawing/words/terms.ts';
import type { Job } from '../job/job.ts';
import { layoutSheet } from '../sheet/layoutSheet.ts';
import type { SheetPage } from '../sheet/page.ts';
import { paintPdf } from '../sheet/paintPdf.ts';
import { usualPaper } from '../sheet/papers.ts';
import { scaleOf, scalesFor } from '../sheet/scales.ts';
import { filled } from '../sheet/words/filled.ts';
import { pageWords } from '../sheet/words/pageWords.ts';
import { sayNote } from '../sheet/words/say.ts';
import type { Words } from '../sheet/words/words.ts';
import { writeSvg } from '../sheet/writeSvg.ts';
import { EXIT, type Exit } from './exits.ts';
import { readJobFile } from './readJobFile.ts';
import { searchedTakeoff } from './searchedTakeoff.ts';
import { readSheetGiven, type SheetAsked } from './sheetGiven.ts';
import { whyNot } from './whyNot.ts';

process.exitCode = await run(process.argv.slice(2));

async function run(given: readonly string[]): Promise<Exit> {
  const { language, words, asks: asked } = readSheetGiven(given);
  if (asked.is === 'help') {
    process.stdout.write(`${words.cli.sheetUsage}\n`);
    return EXIT.done;
  }
  if (asked.is === 'wrong') return wrongUse(words, asked.why);
  const job = readJobFile(asked.file, words, say);
  if (!job) return EXIT.refused;
  const scale = asked.scale === undefined ? undefined : scaleOf(job.units, asked.scale);
  if (asked.scale !== undefined && !scale)
    return wrongUse(words, unknownScale(words, job, asked.scale));
  const figured = await searchedTakeoff(words, job, asked.seconds, say);
  const { paper = usualPaper(job.units), turn, pages, date, onePage, both } = asked;
  const drawn = layoutSheet(job, figured, {
    paper,
    onePage,
    words: pageWords(both ? 'both' : language, USUAL_TERMS),
    ...(turn ? { turn } : {}),
    ...(scale ? { scale: scale.name } : {}),
    ...(pages ? { pages } : {}),
    ...(date === undefined ? {} : { date }),
  });
  try {
    await write(asked, job, drawn);
  } catch (error) {
    say([filled(words.cli.cantWrite, { file: asked.out, why: whyNot(words, error) })]);
    return EXIT.refused;
  }
  const stops = figured.notes.filter(({ weight }) => weight === 'stop');
  if (stops.length === 0) return EXIT.done;
  say([words.cli.withheld, ...stops.map((note) => `  ${sayNote(words, note, job.units)}`)]);
  return EXIT.withheld;
}

/** One PDF, or an SVG a page: sheet-1.svg, sheet-2.svg and so on for sheet.svg. */
async function write({ out }: SheetAsked, job: Job, pages: readonly SheetPage[]): Promise<void> {
  if (/\.pdf$/i.test(out)) {
    const bytes = await paintPdf(pages, { fonts: fonts(), title: job.name, date: new Date() });
    writeFileSync(out, bytes);
    return;
  }
  const stem = out.slice(0, -'.svg'.length);
  for (const [i, page] of pages.entries()) {
    writeFileSync(`${stem}-${i + 1}.svg`, writeSvg(page, `p${i + 1}`));
  }
}

function fonts() {
  const { resolve } = createRequire(import.meta.url);
  const cut = (weight: number) =>
    readFileSync(resolve(`@fontsource/inter/files/inter-latin-${weight}-normal.woff`));
  return { regular: cut(400), bold: cut(600) };
}

function unknownScale({ cli }: Words, { units }: Job, typed: string): string {
  const those = scalesFor(units).map(({ name }) => name);
  return filled(cli.unknownChoice, { option: 'scale', those: those.join(', '), typed });
}

function wrongUse({ cli }: Words, why: string): Exit {
  say([why, cli.sheetUsage]);
  return EXIT.usage;
}

function say(lines: readonly string[]): void {
  process.stderr.write(`${lines.join('\n')}\n`);
}
