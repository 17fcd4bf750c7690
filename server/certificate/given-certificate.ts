import { readFile } from 'node:fs/promises';
import { createSecureContext } from 'node:tls';
import type { KeyedCertificate } from './issue-certificate.ts';

export type GivenCertificate =
  | ({ readonly kind: 'given' } & KeyedCertificate)
  | { readonly kind: 'failed'; readonly why: string };

/** The user's own certificate and key, tried on each other before a port is opened. */
export async function readGivenCertificate(
  certFile: string,
  keyFile: string,
): Promise<GivenCertificate> {
  try {
    const [certificate, key] = await Promise.all([
      readFile(certFile, 'utf8'),
      readFile(keyFile, 'utf8'),
    ]);
    createSecureContext({ cert: certificate, key });
    return { kind: 'given', certificate, key };
  } catch (fault) {
    const why = fault instanceof Error ? fault.message : String(fault);
    return {
      kind: 'failed',
      why: `cannot use ${certFile} with ${keyFile} (${why}): give --cert a PEM certificate and --key its PEM private key`,
    };
  }
}
