import { createServer, type Server } from 'node:http';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { z } from 'zod';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { type OpenBrowser, openBrowser } from './chromium.ts';

const SCRIPT = fileURLToPath(new URL('scripts/install-scripted.ts', import.meta.url));

/** The same in one file for a window that has nothing else: minified, as names must outlive that. */
async function bundle(folder: string): Promise<string> {
  await build({
    configFile: false,
    logLevel: 'warn',
    build: {
      outDir: folder,
      emptyOutDir: false,
      minify: true,
      lib: { entry: SCRIPT, formats: ['iife'], name: 'installed', fileName: () => 'installed.js' },
    },
  });
  return `${folder}/installed.js`;
}

/** Run by the page itself: a script that the debugger runs counts as a press. A page that holds it in a frame may ask. */
const ASK_UNTOUCHED = `window.untouched = window.SpeechRecognition
  ?.install({ langs: ['en-US'] }).catch(({ name, message }) => ({ name, message }));
  window.onmessage = async ({ source }) => {
    const asked = window.SpeechRecognition.available({ langs: ['en-US'], processLocally: true });
    const isOurs = !/native code/.test(window.SpeechRecognition.toString());
    source.postMessage({ isOurs, available: await asked, ...(await window.untouched) }, '*');
  }`;

/** A name that Chromium takes for no secure place, as it takes 127.0.0.1. */
const PLAIN_NAME = 'plain.test';

/** Empty pages, at an address that Chromium takes for a secure one. */
async function serveEmptyPages(): Promise<{ server: Server; address: string }> {
  const server = createServer((_, response) => {
    response.setHeader('content-type', 'text/html');
    response.end(
      '<!doctype html><html lang="en"><title>empty</title>' +
        `<body><script>${ASK_UNTOUCHED}</script></body></html>`,
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const place = server.address();
  const port = typeof place === 'object' && place !== null ? place.port : 0;
  return { server, address: `http://127.0.0.1:${port}` };
}

/** What a script of the page finds, as text; written as a page's own script, which knows no types of ours. */
const run = async (page: Page, script: string): Promise<unknown> =>
  page.evaluate(`(async () => { ${script} })()`);

const FORBIDDEN = 'The permissions policy of this … forbids on-device-speech-recognition.';

const names = z.array(z.string());

describe('the recogniser as the global one in Chromium', () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  let served: Awaited<ReturnType<typeof serveEmptyPages>>;
  let browser: OpenBrowser;

  beforeAll(async () => {
    folder = await createScratchFolder();
    served = await serveEmptyPages();
    browser = await openBrowser({
      profile: `${folder.path}/profile`,
      args: [`--host-resolver-rules=MAP ${PLAIN_NAME} 127.0.0.1`],
    });
    await browser.context.addInitScript({ path: await bundle(folder.path) });
  });

  afterAll(async () => {
    await browser.close();
    served.server.close();
    await folder.discard();
  });

  beforeEach(async () => {
    await browser.page.goto(served.address);
  });

  it('takes the place of the browser’s own, whole, and of the names with a prefix', async () => {
    const seen = names.parse(
      await run(
        browser.page,
        `return Object.getOwnPropertyNames(window)
           .filter((name) => /^(webkit)?Speech(Rec|Gram)/.test(name))
           .map((name) => name + ' ' + window[name].name + ' ' + window[name].prototype)`,
      ),
    );
    const own = seen.map((line) => line.split(' ')[0] ?? '');
    expect(seen.toSorted()).toEqual(
      own.map((name) => `${name} ${name} [object ${name}]`).toSorted(),
    );
    expect(own.filter((name) => name.startsWith('webkit'))).toEqual([]);
    expect(own).toHaveLength(9);
    expect(await run(browser.page, 'return /native code/.test(SpeechRecognition.toString())')).toBe(
      false,
    );
  });

  it('has its events from the page’s own tasks, with the page’s classes', async () => {
    const told = await run(
      browser.page,
      `const recognition = new SpeechRecognition();
       const told = [];
       recognition.onstart = () => recognition.abort();
       recognition.onerror = (event) => told.push(event.constructor === SpeechRecognitionErrorEvent, event.error);
       const ended = new Promise((resolve) => { recognition.onend = () => resolve(told); });
       recognition.start();
       return ended;`,
    );
    expect(told).toEqual([true, 'aborted']);
  });

  it('in a frame that is gone throws and rejects by that frame’s own exceptions', async () => {
    const told = await run(
      browser.page,
      `const frame = document.createElement('iframe');
       frame.src = '/';
       document.body.append(frame);
       await new Promise((resolve) => frame.addEventListener('load', resolve));
       const inner = frame.contentWindow;
       const { SpeechRecognition: Inner, DOMException: Exception } = inner;
       const recognition = new Inner();
       frame.remove();
       const told = [Inner !== SpeechRecognition, 'SpeechRecognition' in inner];
       try { recognition.start(); } catch (error) { told.push(error instanceof Exception, error.name); }
       for (const ask of ['available', 'install']) {
         await Inner[ask]({ langs: ['en-US'] }).catch((error) => told.push(error instanceof Exception, error.name));
       }
       return told;`,
    );
    expect(told).toEqual([
      ...[true, false],
      ...[true, 'InvalidStateError'],
      ...[true, 'InvalidStateError'],
      ...[true, 'InvalidStateError'],
    ]);
  });

  it('keeps to the permissions policy of a frame', async () => {
    const told = await run(
      browser.page,
      `const answers = [];
       for (const allow of ['', "on-device-speech-recognition 'none'"]) {
         const frame = document.createElement('iframe');
         frame.src = '/';
         frame.allow = allow;
         document.body.append(frame);
         await new Promise((resolve) => frame.addEventListener('load', resolve));
         const Inner = frame.contentWindow.SpeechRecognition;
         answers.push(await Inner.available({ langs: ['en-US'], processLocally: true }));
         const { name, message } = await frame.contentWindow.untouched;
         answers.push(name, message);
       }
       return answers;`,
    );
    expect(told).toEqual([
      ...['downloadable', 'NotAllowedError', 'A download begins with a press.'],
      ...['unavailable', 'NotAllowedError', FORBIDDEN.replace('…', 'page')],
    ]);
  });

  it('keeps out of a frame of another origin that the page has not allowed it', async () => {
    const told = await run(
      browser.page,
      `const frame = document.createElement('iframe');
       frame.src = location.href.replace('127.0.0.1', 'localhost');
       document.body.append(frame);
       await new Promise((resolve) => frame.addEventListener('load', resolve));
       const answer = new Promise((resolve) => window.addEventListener('message', ({ data }) => resolve(data)));
       frame.contentWindow.postMessage('', '*');
       return answer;`,
    );
    expect(told).toEqual({
      isOurs: true,
      available: 'unavailable',
      name: 'NotAllowedError',
      message: FORBIDDEN.replace('…', 'cross-origin iframe'),
    });
  });

  it('leaves a page on a plain address the grammars alone', async () => {
    await browser.page.goto(served.address.replace('127.0.0.1', PLAIN_NAME));
    const seen = await run(
      browser.page,
      `return Object.getOwnPropertyNames(window).filter((name) => /^(webkit)?Speech(Rec|Gram)/.test(name))`,
    );
    expect(names.parse(seen).toSorted()).toEqual(['SpeechGrammar', 'SpeechGrammarList']);
  });

  it('installs after a press and not before', async () => {
    expect(await run(browser.page, 'return window.untouched')).toMatchObject({
      name: 'NotAllowedError',
    });
    await browser.page.mouse.click(5, 5);
    const pressed = `return SpeechRecognition.install({ langs: ['en-US'] })`;
    expect(await run(browser.page, pressed)).toBe(true);
  });
});
