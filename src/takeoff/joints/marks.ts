import type { JointLine } from './layout.ts';

const LETTERS: Readonly<Record<JointLine['kind'], string>> = { control: 'C', construction: 'B' };

/** A joint as it is called on the plan and in the table: C for control, B for the bulkhead where the pour stops; C1, C2, B1. */
export function jointMark(joints: readonly JointLine[], at: number): string {
  const { kind } = joints[at]!;
  const before = joints.slice(0, at).filter((joint) => joint.kind === kind);
  return `${LETTERS[kind]}${before.length + 1}`;
}

/** A panel on the plan and in the table: P1, P2… */
export function panelMark(at: number): string {
  return `P${at + 1}`;
}
