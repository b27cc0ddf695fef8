import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serve, serveOnFreePort } from './serve.mjs';

const folder = mkdtempSync(join(tmpdir(), 'serve-'));
let server: Server;

beforeAll(async () => {
  mkdirSync(join(folder, 'dist', 'assets'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'not for the network');
  writeFileSync(join(folder, 'dist', 'index.html'), '<p>hello</p>');
  writeFileSync(join(folder, 'dist', 'manifest.webmanifest'), '{}');
  writeFileSync(join(folder, 'dist', 'assets', 'a b.js'), 'export {};');
  server = await serve(join(folder, 'dist'), 0, '127.0.0.1');
});

afterAll(() => {
  server.close();
  rmSync(folder, { recursive: true });
});

/** Asks with the path exactly as written: fetch would tidy the dots away. */
function ask(
  path: string,
  method = 'GET',
): Promise<{ status?: number; type?: string; body: string }> {
  const { port } = server.address() as AddressInfo;
  return new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port, path, method }, (response) => {
      let body = '';
      response.on('data', (chunk) => {
        body += chunk;
      });
      response.on('end', () => {
        const { statusCode, headers } = response;
        resolve({ status: statusCode ?? 0, type: headers['content-type'] ?? '', body });
      });
    });
    asked.on('error', reject);
    asked.end();
  });
}

test.each([
  ['/', 'text/html', '<p>hello</p>'],
  ['/?from=home', 'text/html', '<p>hello</p>'],
  ['/manifest.webmanifest', 'application/manifest+json', '{}'],
  ['/assets/a%20b.js', 'text/javascript', 'export {};'],
])('%s is served as %s', async (path, type, body) => {
  const answer = await ask(path);
  expect(answer).toMatchObject({ status: 200, body });
  expect(answer.type).toContain(type);
});

test.each([
  '/nothing.js',
  '/assets',
  '/../secret.txt',
  '/..%2fsecret.txt',
  '/assets/%2e%2e/%2e%2e/secret.txt',
  '/%00',
  '/%E0%A4%A',
])('%s is not found', async (path) => {
  expect(await ask(path)).toMatchObject({ status: 404, body: 'Not found\n' });
});

test('only reading is answered', async () => {
  expect(await ask('/', 'POST')).toMatchObject({ status: 405 });
  expect(await ask('/', 'HEAD')).toMatchObject({ status: 200, body: '' });
});

test('a taken port is passed over', async () => {
  const { port } = server.address() as AddressInfo;
  await expect(serve(folder, port, '127.0.0.1')).rejects.toThrow('EADDRINUSE');
  const other = await serveOnFreePort(folder, 20_000 + (process.pid % 20_000));
  const taken = (other.address() as AddressInfo).port;
  const next = await serveOnFreePort(folder, taken);
  expect((next.address() as AddressInfo).port).toBeGreaterThan(taken);
  other.close();
  next.close();
});
