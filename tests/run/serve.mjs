/** A plain static file server: for `npm start` and for the browser tests. */
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ROOT } from './ensure.mjs';

const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

/** Serves a folder on a port; the promise fails when the port is taken. */
export function serve(folder, port, host = '0.0.0.0') {
  const server = createServer((request, response) => answer(folder, request, response));
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => resolve(server));
  });
}

/** Serves a folder on the first free port from `from` on. */
export async function serveOnFreePort(folder, from) {
  for (let port = from; port < from + 100; port += 1) {
    try {
      return await serve(folder, port);
    } catch (error) {
      if (error.code !== 'EADDRINUSE') throw error;
    }
  }
  throw new Error(`No free port between ${from} and ${from + 99}.`);
}

function answer(folder, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { Allow: 'GET, HEAD' }).end();
    return;
  }
  const file = fileFor(folder, request.url ?? '/');
  if (!file) {
    response.writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' }).end('Not found\n');
    return;
  }
  const type = TYPES[extname(file).toLowerCase()] ?? 'application/octet-stream';
  // The offline copy is kept by the service worker; the web's own cache only has to ask again.
  response.writeHead(200, { 'Content-Type': type, 'Cache-Control': 'no-cache' });
  if (request.method === 'HEAD') response.end();
  else createReadStream(file).pipe(response);
}

/** The file that an address means, or undefined when there is none inside the folder. */
function fileFor(folder, url) {
  let path;
  try {
    path = decodeURIComponent(new URL(url, 'http://localhost').pathname);
  } catch {
    return undefined;
  }
  const base = normalize(folder);
  const file = normalize(join(base, path.endsWith('/') ? `${path}index.html` : path));
  if (path.includes('\0') || !file.startsWith(base + sep)) return undefined;
  const found = statSync(file, { throwIfNoEntry: false });
  return found?.isFile() ? file : undefined;
}

// Called by itself, `node tests/run/serve.mjs`: the built app on PORT, for the browser tests.
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await serve(join(ROOT, 'dist'), Number(process.env.PORT ?? 4173), '127.0.0.1');
}
