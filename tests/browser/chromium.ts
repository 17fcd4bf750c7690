import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFile, readdir } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import { setImmediate } from 'node:timers/promises';
import { type BrowserContext, type Page, chromium } from 'playwright-core';

/**
 * Chromium started by hand and steered over its debugging port: playwright's own launch of a lasting profile
 * does not give the process away, and a test that kills it needs to.
 */
export interface OpenBrowser {
  readonly context: BrowserContext;
  readonly page: Page;
  /** SIGKILL to every process of the browser at once: nothing is flushed, nothing is said goodbye to. */
  kill(): Promise<void>;
  close(): Promise<void>;
}

export interface BrowserOptions {
  /** The user data folder; what the page kept in it outlives the browser. */
  readonly profile: string;
  /** Besides the usual ones, for example Chromium's fake microphone. */
  readonly args?: readonly string[];
}

const ARGS = [
  '--headless=new',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--disable-dev-shm-usage',
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--remote-debugging-port=0',
];

export async function openBrowser({ profile, args = [] }: BrowserOptions): Promise<OpenBrowser> {
  const chrome = spawn(
    process.env['CHROMIUM'] ?? '/usr/bin/chromium',
    [...ARGS, ...args, `--user-data-dir=${profile}`, 'about:blank'],
    // A process group of its own, so that one signal reaches the zygotes and renderers too.
    { detached: true, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const browser = await chromium.connectOverCDP(await debuggingAddress(chrome));
  const context = browser.contexts()[0] ?? (await browser.newContext());
  const page = context.pages()[0] ?? (await context.newPage());
  return {
    context,
    page,
    kill: () => end(chrome, 'SIGKILL'),
    async close() {
      const session = await browser.newBrowserCDPSession();
      const gone = exited(chrome);
      await session.send('Browser.close').catch(() => undefined);
      await gone;
    },
  };
}

async function debuggingAddress(chrome: ChildProcess): Promise<string> {
  if (chrome.stderr === null) throw new Error('Chromium was started without a pipe to read');
  const said: string[] = [];
  const lines = createInterface(chrome.stderr);
  for await (const line of lines) {
    said.push(line);
    const address = /DevTools listening on (ws:\S+)/.exec(line)?.[1];
    if (address !== undefined) {
      // The pipe must go on being read, or Chromium stops once it is full.
      chrome.stderr.resume();
      return address;
    }
  }
  throw new Error(`Chromium did not start:\n${said.join('\n')}`);
}

/** Waits for every process of the group: one that outlives the browser still holds the lock of its database. */
async function end(chrome: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  const gone = exited(chrome);
  if (chrome.pid === undefined) return;
  process.kill(-chrome.pid, signal);
  await gone;
  while (await hasLiving(chrome.pid)) await setImmediate();
}

/** Whether any process of the group still runs; a dead one that nobody waited for holds nothing. */
async function hasLiving(group: number): Promise<boolean> {
  const ids = (await readdir('/proc')).filter((name) => /^\d+$/.test(name));
  const states = await Promise.all(
    ids.map((id) => readFile(`/proc/${id}/stat`, 'utf8').catch(() => '')),
  );
  return states.some((stat) => {
    // The name before it, in brackets, may hold anything.
    const [state, , ofGroup] = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    return Number(ofGroup) === group && state !== 'Z' && state !== 'X';
  });
}

function exited(chrome: ChildProcess): Promise<unknown> {
  return chrome.exitCode === null && chrome.signalCode === null
    ? once(chrome, 'exit')
    : Promise.resolve();
}
