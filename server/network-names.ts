import type { NetworkInterfaceInfo } from 'node:os';

type Interfaces = Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>;

const EVERY_ADDRESS: ReadonlySet<string> = new Set(['0.0.0.0', '::']);
/** Whether only this machine itself can reach a server that listens there. */
export const isLoopback = (host: string): boolean =>
  host === 'localhost' || host === '::1' || host.startsWith('127.');

/** IPv4 only: a machine's IPv6 addresses change by the day, and each change would need a new certificate. */
function lanAddresses(interfaces: Interfaces): readonly string[] {
  return Object.values(interfaces)
    .flatMap((addresses) => addresses ?? [])
    .filter((address) => address.family === 'IPv4' && !address.internal)
    .map((address) => address.address);
}

/** Every name a browser may open the page at: what the machine's own certificate must be valid for. */
export function reachableNames(
  host: string,
  { machine, interfaces }: { readonly machine: string; readonly interfaces: Interfaces },
): readonly [string, ...string[]] {
  const given = EVERY_ADDRESS.has(host) ? [] : [host];
  const others = ['127.0.0.1', '::1', machine, `${machine}.local`, ...lanAddresses(interfaces)];
  return ['localhost', ...new Set([...others, ...given].filter((name) => name !== 'localhost'))];
}

/** The addresses to print for people, without scheme and port. */
export function openedAt(host: string, interfaces: Interfaces): readonly string[] {
  if (isLoopback(host)) return ['localhost'];
  if (EVERY_ADDRESS.has(host)) return ['localhost', ...lanAddresses(interfaces)];
  return [host.includes(':') ? `[${host}]` : host];
}
