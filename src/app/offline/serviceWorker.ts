/**
 * Keeps the whole app on the device, so that it opens on a site without signal. Built as its own file beside
 * index.html; vite.config.ts puts the bundle's files and their hash in place of the two names below.
 */
declare const FILES_OF_THIS_VERSION: readonly string[];
declare const NAME_OF_THIS_VERSION: string;

const PREFIX = 'notchpad-';
const worker = self as unknown as ServiceWorkerGlobalScope;
const cacheName = PREFIX + NAME_OF_THIS_VERSION;

// All or nothing: a version that didn't come down whole is not installed, and the old one goes on.
worker.addEventListener('install', (event) => {
  event.waitUntil(Promise.all(FILES_OF_THIS_VERSION.map(keep)));
});

worker.addEventListener('activate', (event) => {
  event.waitUntil(forgetOldVersions().then(() => worker.clients.claim()));
});

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const ours = request.method === 'GET' && request.url.startsWith(worker.registration.scope);
  if (ours) event.respondWith(answer(request));
});

// The page asks first: a new version must not change the figures under somebody's hands.
worker.addEventListener('message', (event) => {
  if (event.data === 'take-over') worker.skipWaiting();
});

async function keep(file: string): Promise<void> {
  const cache = await caches.open(cacheName);
  // The names of these tell their contents: what an earlier version has here (the solver is large) needn't come again.
  const known = file.startsWith('./assets/') ? await caches.match(file) : undefined;
  if (known) await cache.put(file, known);
  else await cache.add(new Request(file, { cache: 'reload' }));
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(cacheName);
  const wanted = request.mode === 'navigate' ? './index.html' : request;
  return (await cache.match(wanted, { ignoreSearch: true })) ?? fetch(request);
}

async function forgetOldVersions(): Promise<void> {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== cacheName);
  await Promise.all(old.map((name) => caches.delete(name)));
}
