/** S1, S2… in the order in which strips are placed. */
export function stripMark(at: number): string {
  return `S${at + 1}`;
}
