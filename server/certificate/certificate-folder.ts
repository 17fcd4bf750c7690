import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import {
  isAuthorityUsable,
  isServerCertificateUsable,
  issueAuthority,
  issueServerCertificate,
} from './issue-certificate.ts';
import type { KeyedCertificate } from './issue-certificate.ts';

export interface CertificateNeed {
  /** The machine's name, for a person to tell one authority from another. */
  readonly machine: string;
  /** Every name and address the page is to be opened at. */
  readonly names: readonly [string, ...string[]];
  readonly now: number;
}

export interface OwnCertificate {
  readonly authority: string;
  readonly server: KeyedCertificate;
}

/**
 * The machine's own certificates, kept in the data folder. The authority stays the same, so that a phone
 * trusts it once; the server's own is made anew when it is about to end or the machine has a new address.
 */
export async function keepCertificate(
  folder: string,
  need: CertificateNeed,
): Promise<OwnCertificate> {
  const authority = await keepAuthority(folder, need);
  const kept = await readPair(folder, 'server');
  const usable =
    kept !== null && isServerCertificateUsable(kept.certificate, authority.certificate, need);
  const server = usable
    ? kept
    : await written(
        folder,
        'server',
        await issueServerCertificate(authority, need.names, need.now),
      );
  return { authority: authority.certificate, server };
}

async function keepAuthority(folder: string, need: CertificateNeed): Promise<KeyedCertificate> {
  const kept = await readPair(folder, 'authority');
  if (kept !== null && isAuthorityUsable(kept.certificate, need.now)) return kept;
  return written(folder, 'authority', await issueAuthority(need.machine, need.now));
}

async function readPair(folder: string, name: string): Promise<KeyedCertificate | null> {
  try {
    const [certificate, key] = await Promise.all([
      readFile(join(folder, `${name}.crt`), 'utf8'),
      readFile(join(folder, `${name}.key`), 'utf8'),
    ]);
    return { certificate, key };
  } catch (fault) {
    if (isMissing(fault)) return null;
    throw fault;
  }
}

const isMissing = (fault: unknown): boolean =>
  fault instanceof Error && 'code' in fault && fault.code === 'ENOENT';

/** The keys are for this user alone: whoever holds the authority's could pose as any site to the phones that trust it. */
async function written(
  folder: string,
  name: string,
  pair: KeyedCertificate,
): Promise<KeyedCertificate> {
  await writeFile(join(folder, `${name}.key`), pair.key, { mode: 0o600 });
  await writeFile(join(folder, `${name}.crt`), pair.certificate);
  return pair;
}
