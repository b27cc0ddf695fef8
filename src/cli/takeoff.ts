/** `npm run takeoff -- <job.json>`: the takeoff of a job file, its tables or a link to it, without a browser. */
import { sayNote } from '../sheet/words/say.ts';
import type { Words } from '../sheet/words/words.ts';
import { EXIT, type Exit } from './exits.ts';
import { jobLinkLine, tablesWritten } from './handOver.ts';
import { readJobFile } from './readJobFile.ts';
import { searchedTakeoff } from './searchedTakeoff.ts';
import { readTakeoffGiven } from './takeoffGiven.ts';
import { takeoffJson } from './takeoffJson.ts';
import { ticketText } from './ticketText.ts';

// Whoever reads may have seen enough (`| head`).
process.stdout.on('error', (error) => {
  if (Reflect.get(error, 'code') !== 'EPIPE') throw error;
});
process.exitCode = await run(process.argv.slice(2));

async function run(given: readonly string[]): Promise<Exit> {
  const { words, asks: asked } = readTakeoffGiven(given);
  if (asked.is === 'help') {
    process.stdout.write(`${words.cli.takeoffUsage}\n`);
    return EXIT.done;
  }
  if (asked.is === 'wrong') return wrongUse(words, asked.why);
  const job = readJobFile(asked.file, words, say);
  if (!job) return EXIT.refused;
  const result = await searchedTakeoff(words, job, asked.seconds, say);
  const { csv, link } = asked;
  if (csv !== undefined || link !== undefined) {
    const outs = [
      ...(link === undefined ? [] : [jobLinkLine(words, job, link)]),
      ...(csv === undefined ? [] : [tablesWritten(words, job, result, csv)]),
    ];
    process.stdout.write(outs.map(({ out }) => out).join(''));
    const whys = outs.flatMap(({ why }) => (why === undefined ? [] : [why]));
    if (whys.length > 0) {
      say(whys);
      return EXIT.refused;
    }
  } else {
    process.stdout.write(
      asked.text
        ? ticketText(words, job, result, asked.workings)
        : `${JSON.stringify(takeoffJson(words, job, result), null, 2)}\n`,
    );
  }
  const stops = result.notes.filter(({ weight }) => weight === 'stop');
  if (stops.length === 0) return EXIT.done;
  say([words.cli.withheld, ...stops.map((note) => `  ${sayNote(words, note, job.units)}`)]);
  return EXIT.withheld;
}

function wrongUse({ cli }: Words, why: string): Exit {
  say([why, cli.takeoffUsage]);
  return EXIT.usage;
}

function say(lines: readonly string[]): void {
  process.stderr.write(`${lines.join('\n')}\n`);
}
