import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

const OFFLINE = 'src/app/offline';

/**
 * The offline copy: writes the manifest and the icons beside index.html, and tells the service worker which files make
 * up this version and a name made of their contents, so that any change is a new version.
 */
function offline(): Plugin {
  return {
    name: 'notchpad-offline',
    apply: 'build',
    transformIndexHtml: () => [
      { tag: 'link', attrs: { rel: 'manifest', href: './manifest.webmanifest' }, injectTo: 'head' },
      {
        tag: 'link',
        attrs: { rel: 'apple-touch-icon', href: './icon.png' },
        injectTo: 'head',
      },
      {
        tag: 'link',
        attrs: { rel: 'icon', type: 'image/svg+xml', href: './icon.svg' },
        injectTo: 'head',
      },
    ],
    buildStart() {
      for (const fileName of ['manifest.webmanifest', 'icon.svg', 'icon.png']) {
        const source = readFileSync(`${OFFLINE}/${fileName}`);
        this.emitFile({ type: 'asset', fileName, source });
      }
    },
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const worker = bundle['service-worker.js'];
        if (worker?.type !== 'chunk') this.error('The service worker is missing from the bundle.');
        const files = Object.values(bundle).filter((file) => file !== worker);
        const hash = createHash('sha256');
        for (const file of files.toSorted((a, b) => (a.fileName < b.fileName ? -1 : 1))) {
          hash.update(file.fileName).update(file.type === 'chunk' ? file.code : file.source);
        }
        const names = files.map(({ fileName }) => `./${fileName}`);
        worker.code = worker.code
          .replaceAll('FILES_OF_THIS_VERSION', JSON.stringify(names.toSorted()))
          .replaceAll('NAME_OF_THIS_VERSION', JSON.stringify(hash.digest('hex').slice(0, 16)));
      },
    },
  };
}

export default defineConfig({
  // Any web host can serve the build from any path.
  base: './',
  plugins: [react(), offline()],
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    // One chunk for the app on purpose: it is kept on the device whole. The PDF writer comes when a PDF is made.
    chunkSizeWarningLimit: 1000,
    rolldownOptions: {
      input: { index: 'index.html', 'service-worker': `${OFFLINE}/serviceWorker.ts` },
      output: {
        entryFileNames: ({ name }) =>
          name === 'service-worker' ? '[name].js' : 'assets/[name]-[hash].js',
      },
    },
  },
  test: {
    environment: 'node',
    // No test is timed; on a loaded machine the large ones take long all the same.
    testTimeout: 60_000,
    // All cores: on two of them the runner would keep one to itself.
    maxWorkers: '100%',
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/journeys/**', 'node_modules/**'],
  },
});
