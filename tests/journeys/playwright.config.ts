import { defineConfig } from '@playwright/test';
import { BROWSER_ARGS, findBrowser } from '../run/browser.mjs';

const browser = await findBrowser();
if (!browser.path) throw new Error(browser.missing);
// Set once by the runner and inherited by its workers, so that all of them find the same browser and server.
process.env['CHROME_BIN'] = browser.path;
process.env['JOURNEY_PORT'] ??= String(42_000 + (process.pid % 10_000));
const address = `http://localhost:${process.env['JOURNEY_PORT']}/`;

export default defineConfig({
  testDir: '.',
  testMatch: '*.journey.ts',
  outputDir: '../../test-results',
  fullyParallel: true,
  workers: 2,
  timeout: 60_000,
  forbidOnly: true,
  // On a shared machine a browser may stall: one more try, and the list names what needed it as flaky.
  retries: process.env['CI'] ? 1 : 0,
  reporter: 'list',
  use: {
    baseURL: address,
    launchOptions: {
      executablePath: browser.path,
      args: BROWSER_ARGS,
      env: { ...process.env, ...browser.env } as Record<string, string>,
    },
    trace: 'off',
  },
  webServer: {
    command: 'node tests/run/serve.mjs',
    cwd: '../..',
    env: { PORT: process.env['JOURNEY_PORT'] },
    url: address,
    reuseExistingServer: false,
  },
});
