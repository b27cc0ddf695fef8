/** The most letters (UTF-16 units) that each text of a job may have; more is refused. */
export const TEXT_MOST = { name: 200, site: 500, notes: 20_000, terms: 5_000, title: 60 } as const;

/** A text cut to so many UTF-16 units, never in the middle of a letter. */
export function cutText(text: string, most: number): string {
  if (text.length <= most) return text;
  let cut = '';
  for (const letter of text) {
    if (cut.length + letter.length > most) break;
    cut += letter;
  }
  return cut;
}
