/** `node tests/run/with-packages.mjs <file.ts> …`: runs a TypeScript file, installing first when needed. */
import { spawnSync } from 'node:child_process';
import { ensureInstalled, program } from './ensure.mjs';

ensureInstalled();

const { status } = spawnSync(process.execPath, [program('tsx'), ...process.argv.slice(2)], {
  stdio: 'inherit',
});
process.exit(status ?? 1);
