import { X509Certificate } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { keepCertificate } from '../../server/certificate/certificate-folder.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';

const DAY_MS = 86_400_000;
const NOW = Date.UTC(2026, 0, 5);
const NAMES = ['localhost', '127.0.0.1', '::1', 'van-laptop', '192.168.7.20'] as const;

describe('the machine’s own certificates', () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  beforeEach(async () => (folder = await createScratchFolder()));
  afterEach(() => folder.discard());

  const keep = async (daysLater: number, names: readonly [string, ...string[]] = NAMES) => {
    const now = NOW + daysLater * DAY_MS;
    const kept = await keepCertificate(folder.path, { machine: 'van-laptop', names, now });
    return {
      ...kept,
      server: new X509Certificate(kept.server.certificate),
      authorityRead: new X509Certificate(kept.authority),
    };
  };

  it('are valid for every name and address, for 825 days and not a second more', async () => {
    const { server, authorityRead } = await keep(0);
    expect(server.checkHost('localhost')).toBe('localhost');
    expect(server.checkHost('van-laptop')).toBe('van-laptop');
    for (const address of ['127.0.0.1', '::1', '192.168.7.20']) {
      expect(server.checkIP(address)).toBeDefined();
    }
    expect(server.checkIP('192.168.7.21')).toBeUndefined();
    const validMs = Date.parse(server.validTo) - Date.parse(server.validFrom);
    expect(validMs).toBeLessThanOrEqual(825 * DAY_MS);
    expect(server.verify(authorityRead.publicKey)).toBe(true);
  });

  it('are an authority that signs and a server that cannot', async () => {
    const { server, authorityRead } = await keep(0);
    expect([authorityRead.ca, server.ca]).toEqual([true, false]);
    expect(server.keyUsage).toEqual(['1.3.6.1.5.5.7.3.1']); // serverAuth, RFC 5280 section 4.2.1.12
  });

  it('are kept until a month before the server’s ends, then only that one is made anew', async () => {
    const first = await keep(0);
    expect((await keep(790)).server.serialNumber).toBe(first.server.serialNumber);
    const later = await keep(796);
    expect(later.server.serialNumber).not.toBe(first.server.serialNumber);
    expect(later.authority).toBe(first.authority);
  });

  it('are made anew for a name the kept one lacks', async () => {
    const first = await keep(0);
    const moved = await keep(1, ['localhost', '10.0.0.9']);
    expect(moved.server.checkIP('10.0.0.9')).toBeDefined();
    expect(moved.authority).toBe(first.authority);
  });

  it('both change when the authority itself ends', async () => {
    const first = await keep(0);
    const last = await keep(3640);
    expect(last.authority).not.toBe(first.authority);
    expect(last.server.verify(last.authorityRead.publicKey)).toBe(true);
  });
});
