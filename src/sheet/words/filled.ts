/** A sentence with its places (`{name}`) filled. */
export function filled(sentence: string, facts: Readonly<Record<string, string>>): string {
  return sentence.replace(/\{(\w+)\}/g, (place, name: string) => facts[name] ?? place);
}
