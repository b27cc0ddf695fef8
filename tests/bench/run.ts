import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { measureBoards } from './boards.bench.ts';
import { measureFrame } from './frame.bench.ts';
import { measureJoints } from './joints.bench.ts';
import { measureMesh } from './mesh.bench.ts';
import { measureSheet } from './sheet.bench.ts';
import { measureStakes } from './stakes.bench.ts';
import { measure } from './takeoff.bench.ts';

/** Prints how the live takeoff compares with one bare clipping call on the same polygons: trust the ratios alone. */
const takeoffFile = join(import.meta.dirname, '../../src/takeoff/takeoff.ts');
await measure(existsSync(takeoffFile) ? takeoffFile : undefined);
measureFrame();
measureStakes();
await measureBoards();
measureMesh();
measureJoints();
await measureSheet();
