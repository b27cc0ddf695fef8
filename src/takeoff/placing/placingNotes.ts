import type { Practices } from '../../job/job.ts';
import type { PlacingPractices } from '../../job/placing.ts';
import { placingOf } from '../../job/placingDefaults.ts';
import type { Note } from '../figure.ts';
import { tradeNote } from '../notes.ts';
import type { NetPour } from '../outline/pour.ts';
import { count, length, list, text, time } from '../quantity.ts';
import type { PlacingResult } from './placingResult.ts';
import { isInTrouble } from './plan.ts';
import { stripMark } from './stripMark.ts';

/** What must be known of how the pour goes: by the clock, at the screed, and at the edges. */
export function placingNotes(
  practices: Practices,
  pour: NetPour,
  placing: PlacingResult,
): readonly Note[] {
  const rules = placingOf(practices);
  return [
    ...clockNotes(rules, placing),
    ...screedNotes(placing),
    ...reachNotes(rules, placing),
    tradeNote('mix', 'assumption', 'placing-rates', {
      facts: { hands: count(rules.crew, 'hand') },
    }),
    tradeNote('mix', 'assumption', 'placing-even'),
    ...(placing.set.fastest ? [blendNote(practices.mix, placing)] : []),
    tradeNote('mix', 'assumption', 'placing-from'),
    tradeNote('mix', 'assumption', 'placing-forms-off', {
      facts: { after: time(placing.clock.strip) },
    }),
    ...(pour.pieces.length > 0 ? [tradeNote('mix', 'assumption', 'broom-across-fall')] : []),
  ];
}

function clockNotes(
  rules: PlacingPractices,
  { strips, timeline, clock, oldest, window, trouble, offers }: PlacingResult,
): readonly Note[] {
  const notes: Note[] = [];
  if (trouble.coldJoint) {
    const at = strips[oldest.strip]?.openEdge.map(([from]) => from) ?? [];
    const facts = {
      age: time(oldest.age),
      window: time(window),
      strip: text(stripMark(oldest.strip)),
    };
    notes.push(tradeNote('mix', 'caution', 'placing-cold-joint', { facts, at }));
  }
  if (trouble.setsFirst) {
    const facts = { placed: time(timeline.placed), sets: time(clock.initial) };
    notes.push(tradeNote('mix', 'caution', 'placing-sets-first', { facts }));
  }
  if (trouble.late.length > 0) {
    const facts = {
      strips: list(trouble.late.map((strip) => text(stripMark(strip)))),
      final: time(clock.final),
    };
    notes.push(tradeNote('mix', 'caution', 'placing-finish-late', { facts }));
  }
  if (isInTrouble({ trouble }) && !offers.some(({ works }) => works)) {
    notes.push(tradeNote('mix', 'caution', 'placing-nothing-works'));
  }
  const interrupted = timeline.strips.some(({ passes }) =>
    passes.some(({ from }) => from < timeline.placed),
  );
  if (rules.crew === 1 && interrupted) notes.push(tradeNote('mix', 'caution', 'placing-alone'));
  return notes;
}

function screedNotes({ strips, span }: PlacingResult): readonly Note[] {
  const notes: Note[] = [];
  const railed = strips.filter(({ rides }) => rides.some((side) => side.includes('rail')));
  if (railed.length > 0) {
    const facts = { span: length(span), strips: count(strips.length, 'strip') };
    notes.push(tradeNote('mix', 'caution', 'screed-rails', { facts }));
  }
  const wet = strips.flatMap(({ rides }, i) =>
    rides.some((side) => side.includes('wet-screed')) ? [text(stripMark(i))] : [],
  );
  if (wet.length > 0) {
    notes.push(tradeNote('mix', 'caution', 'screed-wet', { facts: { strips: list(wet) } }));
  }
  const shut = strips.flatMap(({ wayOut }, i) => (wayOut ? [] : [i]));
  if (shut.length > 0) {
    const facts = { strips: list(shut.map((i) => text(stripMark(i)))) };
    const at = shut.map((i) => strips[i]!.pull[1]);
    notes.push(tradeNote('mix', 'caution', 'placing-no-way-out', { facts, at }));
  }
  return notes;
}

function reachNotes(rules: PlacingPractices, { reach }: PlacingResult): readonly Note[] {
  const notes: Note[] = [];
  const { farthest, wallsFirst } = reach;
  if (farthest && farthest.away > rules.poleReach) {
    const facts = { away: length(farthest.away), reach: length(rules.poleReach) };
    notes.push(tradeNote('mix', 'caution', 'placing-out-of-reach', { facts, at: [farthest.at] }));
  }
  if (wallsFirst.length > 0) {
    const facts = {
      length: length(wallsFirst.reduce((sum, edge) => sum + edge.length, 0)),
      reach: length(rules.handReach),
    };
    const at = wallsFirst.map(({ from }) => from);
    notes.push(tradeNote('mix', 'caution', 'placing-edge-wall-first', { facts, at }));
  }
  return notes;
}

function blendNote({ mixes }: Practices['mix'], { set }: PlacingResult): Note {
  const fastest = mixes.find((one) => one.set.initial === set.initial);
  return tradeNote('mix', 'assumption', 'placing-blend-fastest', {
    facts: { mix: text(fastest?.name ?? ''), sets: time(set.initial) },
  });
}
