import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { AUTHORITY_PATH } from '../app.ts';
import { startServer } from '../main.ts';
import type { RunningServer, Security, ServerSettings } from '../main.ts';
import { isLoopback } from '../network-names.ts';
import type { Command } from './command.ts';
import { parseOptions, unusable } from './options.ts';
import type { ExitStatus, Terminal } from './terminal.ts';
import { wrongCall } from './wrong-call.ts';

const USAGE = `gloveside serve [options]
  Runs the server with the page until it is stopped (Ctrl+C).

  --port NUMBER     8080 unless given; 0 takes any free one
  --host ADDRESS    where to listen: 127.0.0.1 unless given; with https every address of this
                    machine, so that a phone reaches it
  --data FOLDER     where the visits are kept: ./data unless given
  --https           with a certificate that this machine makes for itself, kept in the data folder
  --cert FILE --key FILE
                    https with a certificate of your own, both PEM
  --page FOLDER     the built page: this installation's build/client unless given`;

const OPTIONS = {
  port: { type: 'string', default: '8080' },
  host: { type: 'string' },
  data: { type: 'string', default: 'data' },
  page: { type: 'string' },
  https: { type: 'boolean', default: false },
  cert: { type: 'string' },
  key: { type: 'string' },
} as const;

export const serveCommand: Command = {
  usage: USAGE,
  run: async (args, terminal) => {
    const read = readSettings(args);
    if (read.kind === 'unusable') return wrongCall(terminal, 'serve', read.why);
    return serve(read.settings, terminal);
  },
};

type ReadSettings =
  | { readonly kind: 'settings'; readonly settings: ServerSettings }
  | { readonly kind: 'unusable'; readonly why: string };

function readSettings(args: readonly string[]): ReadSettings {
  const parsed = parseOptions(args, OPTIONS);
  if (parsed.kind === 'unusable') return parsed;
  const { values, words } = parsed;
  if (words.length > 0) return unusable(`it takes options only, not "${words.join(' ')}"`);
  const port = /^\d{1,5}$/.test(values.port) ? Number(values.port) : NaN;
  if (!(port <= 65535)) return unusable(`--port takes a number up to 65535, not "${values.port}"`);
  const security = readSecurity(values);
  if (security.kind === 'unusable') return security;
  const host = values.host ?? (security.kind === 'plain' ? '127.0.0.1' : '0.0.0.0');
  const data = resolve(values.data);
  return {
    kind: 'settings',
    settings: { port, host, data, page: values.page ?? builtPage(), security },
  };
}

const builtPage = (): string => fileURLToPath(new URL('../../build/client', import.meta.url));

interface SecurityOptions {
  readonly https: boolean;
  readonly cert?: string | undefined;
  readonly key?: string | undefined;
}

function readSecurity({
  https,
  cert,
  key,
}: SecurityOptions): Security | { readonly kind: 'unusable'; readonly why: string } {
  if (cert !== undefined && key !== undefined) {
    return { kind: 'givenCertificate', certFile: cert, keyFile: key };
  }
  if (cert !== undefined || key !== undefined)
    return unusable('--cert and --key belong together: give both');
  return { kind: https ? 'ownCertificate' : 'plain' };
}

async function serve(settings: ServerSettings, terminal: Terminal): Promise<ExitStatus> {
  const start = await startServer(settings, (fault) =>
    terminal.complain(fault instanceof Error ? (fault.stack ?? fault.message) : String(fault)),
  );
  if (start.kind === 'failed') {
    terminal.complain(`gloveside serve: ${start.why}`);
    return 1;
  }
  const stopped = terminal.stopAsked();
  for (const line of greeting(settings, start.server)) await terminal.print(line);
  await stopped;
  await start.server.stop();
  return 0;
}

function greeting(settings: ServerSettings, { addresses }: RunningServer): readonly string[] {
  const open = ['Open the page:', ...addresses.map((address) => `  ${address}/`)];
  const kept = `The visits are kept in ${settings.data}`;
  return [...open, kept, ...SECURITY_NOTES[settings.security.kind](settings, addresses)];
}

type SecurityNote = (settings: ServerSettings, addresses: readonly string[]) => readonly string[];

const SECURITY_NOTES: Readonly<Record<Security['kind'], SecurityNote>> = {
  plain: ({ host }) =>
    isLoopback(host)
      ? []
      : [
          'A browser gives its microphone, and offline use, to secure pages only: on a phone this plain',
          'address shows the page but cannot listen. Stop, and start again with --https.',
        ],
  ownCertificate: ({ data }, addresses) => trustNote(data, addresses.at(-1) ?? ''),
  givenCertificate: () => [],
};

/** The ways through the phones' settings are from memory (Apple: support.apple.com/102390), not tried on a phone. */
const trustNote = (data: string, address: string): readonly string[] => [
  'This machine signed its own certificate. So that a phone trusts it, once a phone:',
  `  1. open ${address}${AUTHORITY_PATH} there and pass the warning, to fetch the certificate;`,
  '  2. iPhone: Settings > General > VPN & Device Management: install it; then General > About >',
  '     Certificate Trust Settings: switch it on. Android: Settings, search for "CA certificate",',
  '     install it from the downloads. Then open the page.',
  `Keep ${data} to yourself: with authority.key in it, anyone could pose as any site to that phone.`,
  'Remove the certificate from the phone when it is no longer used.',
];
