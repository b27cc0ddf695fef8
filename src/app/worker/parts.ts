import type { Takeoff } from '../../takeoff/result.ts';
import type { Answer, Sent } from './messages.ts';

/** The messages that an answer goes out in: a trade each, and a last one that says that this was all. */
export function inParts(answer: Answer): readonly Sent[] {
  if ('failed' in answer) return [answer];
  const { id, took, takeoff } = answer;
  return [
    ...Object.entries(takeoff).map(([trade, figured]) => ({ id, part: { [trade]: figured } })),
    { id, took },
  ];
}

/** Takes messages in the order they were sent, and passes on each answer once it is whole. */
export function gatherParts(onAnswer: (answer: Answer) => void): (sent: Sent) => void {
  let gathered: Takeoff = { notes: [] };
  return (sent) => {
    if ('part' in sent) {
      gathered = { ...gathered, ...sent.part };
      return;
    }
    const takeoff = gathered;
    gathered = { notes: [] };
    onAnswer('failed' in sent ? sent : { ...sent, takeoff });
  };
}
