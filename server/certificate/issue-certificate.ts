import { X509Certificate } from 'node:crypto';
import { isIP } from 'node:net';
import { generate } from 'selfsigned';

/** A certificate with its private key, both in PEM. */
export interface KeyedCertificate {
  readonly certificate: string;
  readonly key: string;
}

const DAY_MS = 86_400_000;

/** Apple's phones refuse a server certificate valid for longer than 825 days (support.apple.com/en-us/103769). */
const SERVER_DAYS = 825;
/** Trusted once by hand on each phone, so it outlives many server certificates. */
const AUTHORITY_DAYS = 3650;
/** Renewed this long before it ends, so that it does not end in the middle of a working day. */
const RENEW_DAYS = 30;
/** A phone's clock may run behind: valid from an hour before it was made. */
const BACKDATE_MS = 3_600_000;

/** The authority a phone is asked to trust. It may sign servers only, no further authorities. */
export function issueAuthority(machine: string, now: number): Promise<KeyedCertificate> {
  return issue(`Gloveside on ${machine}`, {
    ...validity(now, AUTHORITY_DAYS),
    extensions: [
      { name: 'basicConstraints', cA: true, pathLenConstraint: 0, critical: true },
      { name: 'keyUsage', keyCertSign: true, cRLSign: true, critical: true },
    ],
  });
}

/** A server certificate for these names and addresses, signed by the authority. */
export function issueServerCertificate(
  authority: KeyedCertificate,
  names: readonly [string, ...string[]],
  now: number,
): Promise<KeyedCertificate> {
  return issue(names[0], {
    ...validity(now, SERVER_DAYS),
    ca: { key: authority.key, cert: authority.certificate },
    extensions: [
      { name: 'basicConstraints', cA: false, critical: true },
      { name: 'keyUsage', digitalSignature: true, critical: true },
      { name: 'extKeyUsage', serverAuth: true },
      { name: 'subjectAltName', altNames: names.map(alternativeName) },
    ],
  });
}

type IssueOptions = NonNullable<Parameters<typeof generate>[1]>;

async function issue(commonName: string, options: IssueOptions): Promise<KeyedCertificate> {
  const made = await generate([{ name: 'commonName', value: commonName }], {
    keyType: 'ec',
    algorithm: 'sha256',
    ...options,
  });
  return { certificate: made.cert, key: made.private };
}

const validity = (now: number, days: number) => ({
  notBeforeDate: new Date(now - BACKDATE_MS),
  notAfterDate: new Date(now - BACKDATE_MS + days * DAY_MS),
});

const alternativeName = (name: string) =>
  isIP(name) === 0 ? { type: 2 as const, value: name } : { type: 7 as const, ip: name };

/** Still usable: readable, not about to end, signed by this authority, and valid for every name. */
export function isServerCertificateUsable(
  pem: string,
  authorityPem: string,
  { names, now }: { readonly names: readonly string[]; readonly now: number },
): boolean {
  const certificate = read(pem);
  const authority = read(authorityPem);
  return (
    certificate !== null &&
    authority !== null &&
    certificate.verify(authority.publicKey) &&
    hasDaysLeft(certificate, now) &&
    names.every((name) => covers(certificate, name))
  );
}

export function isAuthorityUsable(pem: string, now: number): boolean {
  const authority = read(pem);
  return authority !== null && hasDaysLeft(authority, now);
}

const hasDaysLeft = (certificate: X509Certificate, now: number): boolean =>
  Date.parse(certificate.validTo) - now > RENEW_DAYS * DAY_MS;

const covers = (certificate: X509Certificate, name: string): boolean =>
  (isIP(name) === 0 ? certificate.checkHost(name) : certificate.checkIP(name)) !== undefined;

function read(pem: string): X509Certificate | null {
  try {
    return new X509Certificate(pem);
  } catch {
    return null;
  }
}
