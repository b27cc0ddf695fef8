/** Networks of a house or a shop (RFC 1918, RFC 3927), and names that only a device or its network knows. */
const LOCAL = [
  /^localhost$/,
  /\.(localhost|local|lan|home|internal)$/,
  /^127\./,
  /^10\./,
  /^192\.168\./,
  /^172\.(1[6-9]|2\d|3[01])\./,
  /^169\.254\./,
  /^\[(::1|f[cde].*)\]$/,
];

/** Whether an address can be reached only from this device or its own network. */
export function isLocal(address: string): boolean {
  const { protocol, hostname } = new URL(address);
  return protocol === 'file:' || LOCAL.some((one) => one.test(hostname));
}
