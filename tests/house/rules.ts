/** The house's table: what each room may import. The linter's settings and DEVELOPERS.md are held against it. */
export const ROOMS = {
  units: [],
  geometry: ['units'],
  job: ['units', 'geometry'],
  takeoff: ['units', 'geometry', 'job'],
  drawing: ['units', 'geometry', 'job', 'takeoff'],
  storage: ['units', 'job'],
  sketch: ['units', 'geometry', 'job', 'takeoff', 'drawing', 'storage'],
  sheet: ['units', 'geometry', 'job', 'takeoff', 'drawing', 'storage'],
  app: ['units', 'geometry', 'job', 'takeoff', 'drawing', 'storage', 'sketch', 'sheet'],
  cli: ['units', 'geometry', 'job', 'takeoff', 'drawing', 'storage', 'sheet'],
} as const satisfies Record<string, readonly string[]>;

export type Room = keyof typeof ROOMS;

/** Rooms that give the same answer for the same job, anywhere and at any time. */
export const PURE_ROOMS: readonly Room[] = ['units', 'geometry', 'job', 'takeoff', 'drawing'];

/** Which places under src may import a package: a room, or one file. */
export const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  'polygon-clipping': ['geometry/clip.ts'],
  'clipper2-ts': ['geometry'],
  valibot: ['job'],
  '@valibot/to-json-schema': ['job'],
  highs: ['takeoff/solver/highs.ts', 'app/worker/searchEntry.ts'],
  idb: ['storage'],
  fflate: ['storage'],
  'qrcode-generator': ['sheet/code/jobCode.ts'],
  konva: ['sketch'],
  'react-konva': ['sketch'],
  pdfkit: ['sheet/paintPdf.ts'],
  react: ['sketch', 'app'],
  'react-dom': ['sketch', 'app'],
  '@fontsource/inter': ['sheet', 'app'],
  'node:': ['cli'],
};

/** Names that reach for a clock, chance, a locale, the page or the world. */
export const IMPURE_NAMES: ReadonlySet<string> = new Set([
  'Date',
  'Intl',
  'console',
  'crypto',
  'document',
  'fetch',
  'globalThis',
  'indexedDB',
  'localStorage',
  'location',
  'navigator',
  'performance',
  'process',
  'queueMicrotask',
  'requestAnimationFrame',
  'self',
  'sessionStorage',
  'setInterval',
  'setTimeout',
  'window',
]);
