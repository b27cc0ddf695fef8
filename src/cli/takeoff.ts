/** `npm run takeoff -- <job.json> [--text [--workings]]`: the takeoff of a job file, without a browser. */
import { readFileSync } from 'node:fs';
import { parseJob } from '../job/parse.ts';
import { en } from '../sheet/words/en.ts';
import { filled, sayNote, sayProblem } from '../sheet/words/say.ts';
import { takeoff } from '../takeoff/takeoff.ts';
import { EXIT, type Exit } from './exits.ts';
import { takeoffJson } from './takeoffJson.ts';
import { ticketText } from './ticketText.ts';
import { whyNot } from './whyNot.ts';

// Whoever reads may have seen enough (`| head`).
process.stdout.on('error', (error) => {
  if (Reflect.get(error, 'code') !== 'EPIPE') throw error;
});
process.exitCode = run(process.argv.slice(2));

function run(given: readonly string[]): Exit {
  const options = given.filter((one) => one.startsWith('-') && one !== '-');
  const files = given.filter((one) => !options.includes(one));
  if (options.includes('--help')) {
    process.stdout.write(`${en.cli.takeoffUsage}\n`);
    return EXIT.done;
  }
  const strange = options.find((option) => !['--text', '--workings'].includes(option));
  if (strange) return wrongUse(filled(en.cli.unknownOption, { option: strange }));
  const [file, ...more] = files;
  if (file === undefined || more.length > 0) return wrongUse(en.cli.oneFile);

  const name = file === '-' ? en.cli.standardInput : file;
  let text: string;
  try {
    text = readFileSync(file === '-' ? 0 : file, 'utf8');
  } catch (error) {
    say([filled(en.cli.cantRead, { file: name, why: whyNot(en, error) })]);
    return EXIT.refused;
  }
  const read = parseJob(text);
  if (!read.ok) {
    const problems = read.problems.map((problem) => `  ${sayProblem(en, problem)}`);
    say([filled(en.cli.refused, { file: name }), ...problems]);
    return EXIT.refused;
  }
  const job = read.value;
  const result = takeoff(job);
  process.stdout.write(
    options.includes('--text')
      ? ticketText(en, job, result, options.includes('--workings'))
      : `${JSON.stringify(takeoffJson(en, job, result), null, 2)}\n`,
  );
  const stops = result.notes.filter(({ weight }) => weight === 'stop');
  if (stops.length === 0) return EXIT.done;
  say([en.cli.withheld, ...stops.map((note) => `  ${sayNote(en, note, job.units)}`)]);
  return EXIT.withheld;
}

function wrongUse(why: string): Exit {
  say([why, en.cli.takeoffUsage]);
  return EXIT.usage;
}

function say(lines: readonly string[]): void {
  process.stderr.write(`${lines.join('\n')}\n`);
}
