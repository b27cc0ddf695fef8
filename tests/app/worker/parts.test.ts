import { expect, test } from 'vitest';
import type { Answer } from '../../../src/app/worker/messages.ts';
import { gatherParts, inParts } from '../../../src/app/worker/parts.ts';
import { demoJob } from '../../../src/job/demo.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';

function overTheWire(...answers: readonly Answer[]): readonly Answer[] {
  const got: Answer[] = [];
  const take = gatherParts((answer) => got.push(answer));
  for (const sent of answers.flatMap(inParts)) take(structuredClone(sent));
  return got;
}

test('a takeoff that went out in parts comes back whole', () => {
  const answer = { id: 3, took: 5, takeoff: takeoff(demoJob()) };
  expect(answer.takeoff.stakes).toBeDefined();
  expect(overTheWire(answer)).toEqual([answer]);
});

test('the pour and the long lists each travel alone', () => {
  const parts = inParts({ id: 3, took: 5, takeoff: takeoff(demoJob()) });
  for (const sent of parts) {
    if ('part' in sent) expect(Object.keys(sent.part)).toHaveLength(1);
  }
});

test('nothing of one answer is left over in the next', () => {
  const full = { id: 1, took: 5, takeoff: takeoff(demoJob()) };
  const empty = { id: 2, took: 1, takeoff: { notes: [] } };
  const failed = { id: 3, failed: 'out of paper' };
  expect(overTheWire(full, empty, failed, full)).toEqual([full, empty, failed, full]);
});
