/** Finds a Chromium-like browser for the browser tests, or says what is missing. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { delimiter, join } from 'node:path';
import { program, ROOT } from './ensure.mjs';

/** Switches that every browser gets: quiet, no calls home; a sandbox can't be had as root. */
export const BROWSER_ARGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
];

/**
 * The first browser that starts, in this order: CHROME_BIN, the one inside a package (Linux on x64), those of the
 * system, the test runner's own, one installed now. `missing` says in words what was tried when there is none.
 */
export async function findBrowser() {
  const tried = [];
  for (const [from, look] of SOURCES) {
    const found = await look().catch((error) => ({ why: error.message }));
    if (found.path) {
      const fault = faultOf(found.path, found.env);
      if (!fault) return { from, path: found.path, env: found.env ?? {} };
      tried.push(`${from}: ${found.path} does not start (${fault})`);
      // A browser that was asked for by name is never quietly swapped for another.
      if (from === 'CHROME_BIN') break;
    } else {
      tried.push(`${from}: ${found.why}`);
    }
  }
  return {
    missing: [
      'No browser for the browser tests. Tried:',
      ...tried.map((line) => `  - ${line}`),
      'Install Chromium or Chrome, or set CHROME_BIN to the program file of one.',
    ].join('\n'),
  };
}

const SOURCES = [
  [
    'CHROME_BIN',
    async () => {
      const path = process.env.CHROME_BIN;
      return path ? { path } : { why: 'not set' };
    },
  ],
  ['the package @sparticuz/chromium', packagedBrowser],
  ['a browser of this system', async () => systemBrowser() ?? { why: 'none found' }],
  ["the test runner's own browser", ownBrowser],
  ['npx playwright install chromium', installedBrowser],
  ['apt-get install chromium', aptBrowser],
];

async function packagedBrowser() {
  if (process.platform !== 'linux' || process.arch !== 'x64')
    return { why: 'for Linux on x64 only' };
  const about = join(ROOT, 'node_modules', '@sparticuz', 'chromium', 'package.json');
  const { version } = JSON.parse(await readFile(about, 'utf8'));
  // The folder's name holds the version: an older browser left there must not be taken for this one.
  const folder = join(ROOT, 'node_modules', '.cache', `chromium-${version}`);
  await mkdir(folder, { recursive: true });
  const before = { ...process.env };
  // Makes the package unpack the system libraries as well, which may be missing here.
  process.env.AWS_EXECUTION_ENV = 'AWS_Lambda_nodejs20.x';
  process.env.TMPDIR = folder;
  try {
    const { default: chromium } = await import('@sparticuz/chromium');
    const path = await chromium.executablePath();
    const { LD_LIBRARY_PATH } = process.env;
    return { path, env: { LD_LIBRARY_PATH, FONTCONFIG_PATH: await fontsIn(folder) } };
  } finally {
    for (const name of ['AWS_EXECUTION_ENV', 'TMPDIR', 'LD_LIBRARY_PATH', 'FONTCONFIG_PATH']) {
      if (before[name] === undefined) delete process.env[name];
      else process.env[name] = before[name];
    }
  }
}

/**
 * A font configuration that knows where the package's fonts were unpacked; the package's own names folders of the
 * place it was made for, and with no font at all a page shows no text, its own web fonts included.
 */
async function fontsIn(folder) {
  const place = join(folder, 'fontconfig');
  await mkdir(place, { recursive: true });
  const dirs = [join(folder, 'fonts'), '/usr/share/fonts'];
  const lines = dirs.map((dir) => `  <dir>${dir}</dir>`).join('\n');
  await writeFile(
    join(place, 'fonts.conf'),
    `<?xml version="1.0"?>\n<!DOCTYPE fontconfig SYSTEM "fonts.dtd">\n<fontconfig>\n${lines}\n  <cachedir>${join(place, 'cache')}</cachedir>\n</fontconfig>\n`,
  );
  return place;
}

function systemBrowser() {
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'msedge'];
  const onPath = (process.env.PATH ?? '')
    .split(delimiter)
    .flatMap((folder) => names.map((name) => join(folder, name)));
  const apps = ['Chromium', 'Google Chrome', 'Microsoft Edge'].map(
    (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
  );
  const programs = [
    process.env.PROGRAMFILES,
    process.env['PROGRAMFILES(X86)'],
    process.env.LOCALAPPDATA,
  ]
    .filter(Boolean)
    .flatMap((folder) => [
      join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
      join(folder, 'Chromium', 'Application', 'chrome.exe'),
      join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
    ]);
  const path = [...onPath, ...apps, ...programs].find((file) => existsSync(file) && !faultOf(file));
  return path ? { path } : undefined;
}

async function ownBrowser() {
  const { chromium } = await import('@playwright/test');
  const path = chromium.executablePath();
  return existsSync(path) ? { path } : { why: 'not installed' };
}

async function installedBrowser() {
  console.log('Installing a browser for the browser tests…');
  if (
    !succeeds(process.execPath, [program('@playwright/test', 'playwright'), 'install', 'chromium'])
  ) {
    return { why: 'the download failed' };
  }
  const found = await ownBrowser();
  if (found.path && faultOf(found.path) && isDebianRoot()) {
    succeeds(process.execPath, [
      program('@playwright/test', 'playwright'),
      'install-deps',
      'chromium',
    ]);
  }
  return found;
}

async function aptBrowser() {
  if (!isDebianRoot()) return { why: 'needs root on a Debian-like system' };
  const done =
    succeeds('apt-get', ['update', '-q']) &&
    succeeds('apt-get', ['install', '-qy', '--no-install-recommends', 'chromium']);
  return done
    ? (systemBrowser() ?? { why: 'installed, but not found' })
    : { why: 'apt-get failed' };
}

function isDebianRoot() {
  return process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
}

function succeeds(command, args) {
  return spawnSync(command, args, { cwd: ROOT, stdio: 'inherit' }).status === 0;
}

/** Why a browser does not start, or undefined when it does. */
function faultOf(path, env = {}) {
  if (!existsSync(path)) return 'no such file';
  // On Windows asking for the version opens a window: being there has to do.
  if (process.platform === 'win32') return undefined;
  const { status, error, stderr } = spawnSync(path, ['--version'], {
    env: { ...process.env, ...env },
    encoding: 'utf8',
    timeout: 30_000,
  });
  if (status === 0) return undefined;
  return error?.message ?? (stderr.trim().split('\n')[0] || `exit code ${status}`);
}
