/** Installs the packages of the lock file when they are missing or differ from it. Nothing but node: here. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of package.json. */
export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

const OLDEST_NODE = [20, 19];

/** True when node_modules holds exactly what the lock file asks for, version by version. */
export function installed(root = ROOT) {
  const have = packagesOf(join(root, 'node_modules', '.package-lock.json'));
  const want = packagesOf(join(root, 'package-lock.json'));
  if (!have || !want) return false;
  return Object.entries(want).every(([path, { version, optional }]) => {
    if (path === '') return true;
    // An optional package that isn't there is one made for another kind of machine.
    if (!have[path]) return optional === true;
    return have[path].version === version && existsSync(join(root, path));
  });
}

/** Brings node_modules in line with the lock file, or ends the program with a plain message. */
export function ensureInstalled() {
  checkNode();
  if (installed()) return;
  console.error('Installing the packages of the lock file (npm ci)…');
  // None of the packages needs to run code of its own while it is installed.
  const { status } = runNpm(['ci', '--ignore-scripts']);
  if (status !== 0) {
    stop('npm ci failed. It needs the internet once: check the connection and run this again.');
  }
}

/** Runs npm in the project folder, its output shown. */
function runNpm(args) {
  // npm tells its scripts where it lives; called without npm, it is looked for on the path.
  const npm = process.env.npm_execpath;
  // What npm says goes to stderr: stdout belongs to the command that needed the install (it may be JSON).
  const options = { cwd: ROOT, stdio: ['inherit', process.stderr, 'inherit'] };
  if (npm?.endsWith('.js')) return spawnSync(process.execPath, [npm, ...args], options);
  return spawnSync('npm', args, { ...options, shell: process.platform === 'win32' });
}

/** The command-line program of an installed package, to be run by this same Node. */
export function program(name, bin = name) {
  const folder = join(ROOT, 'node_modules', ...name.split('/'));
  const { bin: bins } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return join(folder, typeof bins === 'string' ? bins : bins[bin]);
}

export function stop(message) {
  console.error(`\n${message}`);
  process.exit(1);
}

function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [needMajor, needMinor] = OLDEST_NODE;
  if (major > needMajor || (major === needMajor && minor >= needMinor)) return;
  stop(`Node ${OLDEST_NODE.join('.')} or newer is needed; this is Node ${process.versions.node}.`);
}

function packagesOf(lockFile) {
  try {
    return JSON.parse(readFileSync(lockFile, 'utf8')).packages;
  } catch {
    return undefined;
  }
}
