/**
 * `npm test`: everything there is to check, on a fresh clone too. `npm test -- forms` runs only the test files with
 * 'forms' in their path, and leaves out the rest. Ends with one line: 'N passed, N failed'.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureInstalled, program, ROOT } from './ensure.mjs';

ensureInstalled();

const filters = process.argv.slice(2);
const reports = mkdtempSync(join(tmpdir(), 'notchpad-test-'));
const counts = { passed: 0, failed: 0, skipped: 0 };
const skipped = [];
const NOT_RUN = ['skipped', 'pending', 'todo'];

if (filters.length > 0) {
  unitTests(filters);
  console.log(
    `\nOnly test files named like '${filters.join("', '")}' were run: no type check, no lint,`,
  );
  console.log('no build and no browser tests. `npm test` runs everything.');
} else {
  step('Types', 'typescript', 'tsc', ['--noEmit']);
  step('Lint and format', '@biomejs/biome', 'biome', ['check', '--error-on-warnings', '.']);
  step('Unused files, exports and packages', 'knip', 'knip', []);
  unitTests([]);
  if (step('Build', 'vite', 'vite', ['build', '--logLevel', 'warn'])) await browserTests();
  else count('failed', 'The browser tests could not run without a build.');
}

rmSync(reports, { recursive: true, force: true });
if (counts.skipped > 0) console.log(`\n${counts.skipped} skipped:`);
for (const name of skipped) console.log(`  ${name}`);
console.log(`\n${counts.passed} passed, ${counts.failed} failed`);
process.exitCode = counts.failed === 0 ? 0 : 1;

/** One program, which counts as one check. */
function step(title, packageName, bin, args) {
  heading(title);
  const passed = run(packageName, bin, args) === 0;
  count(passed ? 'passed' : 'failed', `${title}: ${passed ? 'fine' : 'failed'}`);
  return passed;
}

function unitTests(names) {
  heading('Unit, random and published tests');
  const report = join(reports, 'vitest.json');
  const status = run('vitest', 'vitest', [
    'run',
    ...names,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ]);
  const seen = read(report);
  // A test that is skipped says why in its name.
  const tests = seen?.testResults.flatMap(({ assertionResults }) => assertionResults) ?? [];
  skipped.push(
    ...tests.filter(({ status }) => NOT_RUN.includes(status)).map(({ fullName }) => fullName),
  );
  countAll(
    status,
    seen && {
      passed: seen.numPassedTests,
      failed: seen.numFailedTests,
      skipped: seen.numPendingTests + seen.numTodoTests,
    },
  );
}

async function browserTests() {
  heading('Browser tests');
  const { findBrowser } = await import('./browser.mjs');
  const browser = await findBrowser();
  if (browser.missing) return count('failed', browser.missing);
  console.log(`Browser: ${browser.from} (${browser.path})`);
  const report = join(reports, 'playwright.json');
  const status = run(
    '@playwright/test',
    'playwright',
    ['test', '--config', 'tests/journeys/playwright.config.ts', '--reporter=list,json'],
    { ...browser.env, CHROME_BIN: browser.path, PLAYWRIGHT_JSON_OUTPUT_FILE: report },
  );
  const seen = read(report)?.stats;
  countAll(
    status,
    seen && {
      passed: seen.expected + seen.flaky,
      failed: seen.unexpected,
      skipped: seen.skipped,
    },
  );
}

/** Adds a runner's own counts. A runner that ended badly without naming a failed test is a failure too. */
function countAll(status, seen) {
  for (const outcome of ['passed', 'failed', 'skipped']) counts[outcome] += seen?.[outcome] ?? 0;
  if (status !== 0 && !(seen?.failed > 0))
    count('failed', 'The test runner stopped with an error; see above.');
}

function count(outcome, line) {
  counts[outcome] += 1;
  console.log(line);
}

function run(packageName, bin, args, env = {}) {
  const { status } = spawnSync(process.execPath, [program(packageName, bin), ...args], {
    cwd: ROOT,
    stdio: 'inherit',
    env: { ...process.env, ...env },
  });
  return status;
}

function read(report) {
  try {
    return JSON.parse(readFileSync(report, 'utf8'));
  } catch {
    return undefined;
  }
}

function heading(title) {
  console.log(`\n— ${title}`);
}
