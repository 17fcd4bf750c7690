import type { NetworkInterfaceInfo } from 'node:os';
import { describe, expect, it } from 'vitest';
import { isLoopback, openedAt, reachableNames } from '../../server/network-names.ts';

const address = (text: string, internal: boolean): NetworkInterfaceInfo => ({
  address: text,
  family: 'IPv4',
  internal,
  netmask: '255.255.255.0',
  mac: '00:00:00:00:00:00',
  cidr: `${text}/24`,
});
const interfaces = {
  lo: [address('127.0.0.1', true)],
  wifi: [
    address('192.168.7.20', false),
    { ...address('fe80::1', false), family: 'IPv6' as const, scopeid: 2 },
  ],
  gone: undefined,
};

describe('the names of the machine', () => {
  it('are those a browser may open the page at, each once', () => {
    const names = reachableNames('0.0.0.0', { machine: 'van-laptop', interfaces });
    expect(names).toEqual([
      'localhost',
      '127.0.0.1',
      '::1',
      'van-laptop',
      'van-laptop.local',
      '192.168.7.20',
    ]);
    expect(reachableNames('192.168.7.20', { machine: 'localhost', interfaces })).toEqual([
      'localhost',
      '127.0.0.1',
      '::1',
      'localhost.local',
      '192.168.7.20',
    ]);
  });

  it.each([
    ['127.0.0.1', ['localhost']],
    ['0.0.0.0', ['localhost', '192.168.7.20']],
    ['::', ['localhost', '192.168.7.20']],
    ['192.168.7.20', ['192.168.7.20']],
    ['fd00::7', ['[fd00::7]']],
  ])('are printed for %s', (host, names) => {
    expect(openedAt(host, interfaces)).toEqual(names);
  });

  it('say whether only the machine itself is reached', () => {
    expect(['127.0.0.2', '::1', 'localhost'].every(isLoopback)).toBe(true);
    expect(['0.0.0.0', '192.168.7.20', 'van-laptop'].some(isLoopback)).toBe(false);
  });
});
