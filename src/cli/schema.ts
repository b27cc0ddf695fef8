/** `npm run schema [-- <file>]`: the JSON Schema of the job file, to standard output or into a file. */
import { writeFileSync } from 'node:fs';
import { jobSchema } from '../job/schema.ts';
import { en } from '../sheet/words/en.ts';
import { filled } from '../sheet/words/filled.ts';
import { EXIT, type Exit } from './exits.ts';
import { whyNot } from './whyNot.ts';

process.exitCode = run(process.argv.slice(2));

function run(given: readonly string[]): Exit {
  const [file, ...more] = given;
  if (file === '--help') {
    process.stdout.write(`${en.cli.schemaUsage}\n`);
    return EXIT.done;
  }
  if (more.length > 0 || file?.startsWith('-')) {
    process.stderr.write(`${en.cli.schemaUsage}\n`);
    return EXIT.usage;
  }
  const text = `${JSON.stringify(jobSchema(), null, 2)}\n`;
  if (file === undefined) {
    process.stdout.write(text);
    return EXIT.done;
  }
  try {
    writeFileSync(file, text);
    return EXIT.done;
  } catch (error) {
    process.stderr.write(`${filled(en.cli.cantWrite, { file, why: whyNot(en, error) })}\n`);
    return EXIT.refused;
  }
}
