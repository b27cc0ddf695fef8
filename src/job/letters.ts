/** A corner's letter in its outline: A to Z, then AA, AB… The table and the sketch name corners alike. */
export function cornerLetter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : cornerLetter(Math.floor(index / 26) - 1) + last;
}
