/** An id for a kept job. (`randomUUID` is missing on addresses that aren't https or localhost.) */
export function newJobId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
