/** `npm start`: install when needed, build, serve, print the address. Nothing but node: at the top. */
import { spawnSync } from 'node:child_process';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { ensureInstalled, program, ROOT, stop } from './ensure.mjs';
import { serve, serveOnFreePort } from './serve.mjs';

ensureInstalled();

const build = spawnSync(process.execPath, [program('vite'), 'build', '--logLevel', 'warn'], {
  cwd: ROOT,
  stdio: 'inherit',
});
if (build.status !== 0) stop('The build failed; the lines above say where.');

const asked = process.env.PORT;
const folder = join(ROOT, 'dist');
const server = await (asked ? serve(folder, Number(asked)) : serveOnFreePort(folder, 4173)).catch(
  (error) => stop(`Cannot serve${asked ? ` on port ${asked}` : ''}: ${error.message}`),
);
const { port } = server.address();

console.log(`\nNotchpad is ready:      http://localhost:${port}/`);
for (const address of localAddresses()) {
  console.log(`On the same network:    http://${address}:${port}/`);
}
console.log(
  '\nA phone on the network address can sketch and print, but keeps no offline copy: browsers',
);
console.log('allow that on localhost and over HTTPS only (see README). Press Ctrl+C to stop.');

function localAddresses() {
  return Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);
}
