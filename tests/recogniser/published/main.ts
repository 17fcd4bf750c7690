/**
 * `npm run wpt -- FOLDER`: the published tests of the Web Speech API (web-platform-tests, folder `speech-api`) against
 * our recogniser in Chromium. FOLDER is a checkout of them; nothing of it is kept here.
 */
import { writeFile } from 'node:fs/promises';
import { createScratchFolder } from '../../support/scratch-folder.ts';
import { wavOf } from '../../support/wav.ts';
import { openBrowser } from '../../browser/chromium.ts';
import { buildRecogniser } from './build-recogniser.ts';
import { listTests, type Outcome, runTest, SILENT } from './run-tests.ts';
import { serveTests, type TestServer } from './test-server.ts';

/** A name that Chromium does not take for a secure place, as it takes 127.0.0.1. */
const PLAIN_NAME = 'plain.test';
const ARGS = [
  '--use-fake-ui-for-media-stream',
  '--autoplay-policy=no-user-gesture-required',
  `--host-resolver-rules=MAP ${PLAIN_NAME} 127.0.0.1`,
];

const [checkout, only = ''] = process.argv.slice(2);
if (checkout === undefined) {
  console.log('npm run wpt -- FOLDER [PART OF A NAME]   FOLDER: a checkout of web-platform-tests');
} else {
  await run(checkout);
}

async function run(folder: string): Promise<void> {
  const scratch = await createScratchFolder();
  const script = await buildRecogniser(`${scratch.path}/built`);
  const server = await serveTests(folder, `${scratch.path}/built`);
  const names = await listTests(`${folder}/speech-api`);
  const wanted = names.filter((name) => name.includes(only));
  const silence = `${scratch.path}/silence.wav`;
  await writeFile(silence, wavOf(Array<number>(16_000).fill(0), 16_000));
  const withSilence = [
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-audio-capture=${silence}`,
  ];
  const automatic = wanted.filter((name) => !name.includes('-manual'));
  const silent = wanted.filter((name) => SILENT.test(name));
  // Chromium has no microphone here unless it is given one: what the tests of `error` count on.
  const outcomes = [
    ...(await runAll(automatic, { script, server, profile: `${scratch.path}/one`, args: [] })),
    ...(await runAll(silent, {
      ...{ script, server, profile: `${scratch.path}/two` },
      args: withSilence,
    })),
  ];
  report(outcomes);
  const left = wanted.filter((name) => name.includes('-manual') && !SILENT.test(name));
  if (left.length > 0) console.log(`Not run, as a person must speak: ${left.join(', ')}`);
  server.close();
  await scratch.discard();
}

interface Where {
  readonly script: string;
  readonly server: TestServer;
  readonly profile: string;
  readonly args: readonly string[];
}

async function runAll(files: readonly string[], where: Where): Promise<readonly Outcome[]> {
  if (files.length === 0) return [];
  const { script, server, profile, args } = where;
  const browser = await openBrowser({ profile, args: [...ARGS, ...args] });
  await browser.context.addInitScript({ path: script });
  const outcomes: Outcome[] = [];
  for (const file of files) {
    const host = file.includes('.http.') ? PLAIN_NAME : '127.0.0.1';
    const address = `http://${host}:${server.port}/speech-api`;
    outcomes.push(await runTest(browser.context, address, file));
  }
  await browser.close();
  return outcomes;
}

function report(outcomes: readonly Outcome[]): void {
  for (const { file, harness, tests } of outcomes) {
    const failed = tests.filter(({ passed }) => !passed);
    console.log(
      `${file}: ${tests.length - failed.length} of ${tests.length} pass${harness && ` (${harness})`}`,
    );
    for (const { name, message } of failed) console.log(`  FAIL ${name}\n       ${message ?? ''}`);
  }
  const all = outcomes.flatMap(({ tests }) => tests);
  const passed = all.filter((test) => test.passed).length;
  console.log(`${passed} of ${all.length} pass, ${outcomes.length} files`);
}
