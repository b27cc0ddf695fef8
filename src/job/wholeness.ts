import type { Problem } from '../units/result.ts';
import { bidDoubles } from './bidProblems.ts';
import { raisedNextId, usedIds } from './ids.ts';
import type { Job } from './job.ts';
import { stockIdProblems } from './lumberProblems.ts';
import { practiceProblems } from './practiceProblems.ts';
import { attachmentRefusal } from './settle.ts';
import { placeUnsound, unsoundness } from './soundness.ts';

/** What is wrong with a job whose fields are right one by one: each problem with its place in the file. */
export function wholenessProblems(job: Job): readonly Problem[] {
  const ids = [
    ...idProblems(job),
    ...stockIdProblems(job.lumber, 'job.lumber.'),
    ...stockIdProblems(job.meshStock, 'job.meshStock.'),
  ];
  // With an id in use twice, what names it may mean either.
  const shapes = ids.length > 0 ? [] : shapeProblems(job);
  return [
    ...ids,
    ...shapes,
    ...handStakeProblems(job),
    ...readingProblems(job),
    ...practiceProblems(job.practices, 'job.practices'),
    ...(job.bid ? bidDoubles(job.bid, 'job.bid.') : []),
  ];
}

function idProblems(job: Job): readonly Problem[] {
  const seen = new Set<string>();
  const problems: Problem[] = [];
  const note = (id: string, where: string) => {
    if (seen.has(id)) problems.push({ code: 'field-id-twice', where, facts: { id } });
    seen.add(id);
  };
  job.features.forEach(({ id, shape }, index) => {
    note(id, `job.features[${index}].id`);
    if (shape.form !== 'outline') return;
    shape.corners.forEach((corner, at) => {
      note(corner.id, `job.features[${index}].shape.corners[${at}].id`);
    });
  });
  job.handStakes.forEach(({ id }, at) => {
    note(id, `job.handStakes[${at}].id`);
  });
  job.ground.readings.forEach(({ id }, at) => {
    note(id, `job.ground.readings[${at}].id`);
  });
  const least = raisedNextId(job.nextId, usedIds(job));
  if (least > job.nextId) {
    const facts = { seen: job.nextId, least };
    problems.push({ code: 'field-next-id', where: 'job.nextId', facts });
  }
  return problems;
}

function handStakeProblems({ handStakes }: Job): readonly Problem[] {
  return handStakes.flatMap(({ at }, index): readonly Problem[] => {
    const code = placeUnsound(at);
    return code ? [{ code, where: `job.handStakes[${index}].at` }] : [];
  });
}

function readingProblems({ ground }: Job): readonly Problem[] {
  return ground.readings.flatMap(({ at }, index): readonly Problem[] => {
    const code = at && placeUnsound(at);
    return code ? [{ code, where: `job.ground.readings[${index}].at` }] : [];
  });
}

function shapeProblems(job: Job): readonly Problem[] {
  const place = (feature: string) =>
    `job.features[${job.features.findIndex(({ id }) => id === feature)}].shape`;
  const shapes = unsoundness(job).map(({ code, feature, corner, facts }): Problem => {
    const where = place(feature) + (corner === undefined ? '' : `.corners[${corner}]`);
    return { code, where, ...(facts ? { facts } : {}) };
  });
  const held = attachmentRefusal(job);
  if (!held) return shapes;
  const { code, where = '', facts } = held;
  return [...shapes, { code, where: place(where), ...(facts ? { facts } : {}) }];
}
