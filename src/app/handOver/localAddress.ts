const DEVICE = [/^(.*\.)?localhost$/, /^127\./, /^\[::1\]$/];

/** Networks of a house or a shop (RFC 1918, RFC 3927, RFC 4193), and names that only they know. */
const NETWORK = [
  /\.(local|lan|home|internal)$/,
  /^10\./,
  /^192\.168\./,
  /^172\.(1[6-9]|2\d|3[01])\./,
  /^169\.254\./,
  /^\[f[cde].*\]$/,
];

/** From where an address can be reached: this device alone, its own network, or anywhere. */
export function reachOf(address: string): 'device' | 'network' | 'anywhere' {
  const { protocol, hostname } = new URL(address);
  if (protocol === 'file:' || DEVICE.some((one) => one.test(hostname))) return 'device';
  return NETWORK.some((one) => one.test(hostname)) ? 'network' : 'anywhere';
}
