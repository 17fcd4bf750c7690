// `npm run bench`: every figure in one run on one machine. Nothing here is asserted: a loaded machine is no fault.
import { cpus, loadavg } from 'node:os';
import { benchBundle } from './bundle.ts';
import { benchCauses } from './causes.ts';
import { benchHearing } from './hearing.ts';
import { benchLearntMemory } from './learnt-memory.ts';
import { benchOpening } from './opening/opening.ts';
import { benchPageHearing } from './page-hearing.ts';
import { benchPhrasingInChromium, benchPhrasingInNode } from './phrasing.ts';
import { benchReply } from './reply.ts';
import { benchSaturation } from './saturation.ts';
import { benchUnderstanding } from './understanding.ts';

type Row = readonly [what: string, figure: string];

const figure = (value: number, unit: string): string =>
  `${value >= 100 ? value.toFixed(0) : value.toPrecision(2)} ${unit}`;

function saturationRows(): readonly Row[] {
  const { pressureNs, temperatureNs, tableNs } = benchSaturation();
  return [
    ['saturation pressure, a call', figure(pressureNs, 'ns')],
    ['saturation temperature, a call', figure(temperatureNs, 'ns')],
    ['the same pressure from an interpolated table', figure(tableNs, 'ns')],
    ['pressure by that table', figure(pressureNs / tableNs, 'times')],
  ];
}

async function bundleRows(): Promise<readonly Row[]> {
  const { saturationBytes, wholeBytes, wholeGzipBytes } = await benchBundle();
  return [
    ['the fluids in the page, minified: saturation', figure(saturationBytes / 1000, 'kB')],
    ['  with densities and latent heat', figure(wholeBytes / 1000, 'kB')],
    ['  the same, compressed', figure(wholeGzipBytes / 1000, 'kB')],
  ];
}

function learntRows(): readonly Row[] {
  return benchLearntMemory().map(({ sentences, megabytes }): Row => [
    `held once ${sentences} sentences were understood`,
    figure(megabytes, 'MB'),
  ]);
}

/** A technician says a sentence once: what matters is how long a fresh one takes. */
async function openingRows(): Promise<readonly Row[]> {
  const unprepared = await benchOpening('unprepared');
  const rehearsed = await benchOpening('rehearsed');
  return [
    ['words to reply, of a page just opened: the first', figure(unprepared.firstMs, 'ms')],
    ['  the next ten, each', figure(unprepared.nextTenMs, 'ms')],
    ['  thirty more, each', figure(unprepared.laterMs, 'ms')],
    ['behind the rehearsal: the first', figure(rehearsed.firstMs, 'ms')],
    ['  the next ten, each', figure(rehearsed.nextTenMs, 'ms')],
    ['  thirty more, each', figure(rehearsed.laterMs, 'ms')],
    ['  the rehearsal, a sentence at a time', figure(rehearsed.rehearsalMs, 'ms')],
  ];
}

async function understandingRows(): Promise<readonly Row[]> {
  const figures = await benchUnderstanding();
  return figures.flatMap(({ title, sentences, wordsEach, withNumbers, readers }) => {
    const fastest = Math.min(...readers.slice(1).map(({ microseconds }) => microseconds));
    return [
      [`a sentence of ${title}, by`, `${sentences} of them, ${figure(wordsEach, 'words each')}`],
      ...readers.map(({ name, microseconds, found }): Row => {
        const recall = `every number in ${found} of ${withNumbers}`;
        const ratio = `${(microseconds / fastest).toFixed(1)} of the fastest`;
        return [`  ${name}`, `${figure(microseconds, 'µs')}, ${ratio}, ${recall}`];
      }),
    ];
  });
}

function adviceRows(): readonly Row[] {
  const { causesMs, nextCheckMs, circuitsReadyMs, nextPlaceMs } = benchCauses();
  return [
    ['causes of what was read', figure(causesMs, 'ms')],
    ['the next check', figure(nextCheckMs, 'ms')],
    ['every circuit made ready, once', figure(circuitsReadyMs, 'ms')],
    ['the next place for the leads', figure(nextPlaceMs, 'ms')],
  ];
}

async function phrasingRows(): Promise<readonly Row[]> {
  const node = await benchPhrasingInNode();
  const chromium = await benchPhrasingInChromium();
  return [
    ['an answer worded in Node, half of them within (at most 30 ms)', figure(node.medianMs, 'ms')],
    ['  19 of 20 within', figure(node.slowMs, 'ms')],
    ['  library and model loaded', figure(node.loadMs, 'ms')],
    ["in the page's worker, half of them within (at most 60 ms)", figure(chromium.medianMs, 'ms')],
    ['  19 of 20 within', figure(chromium.slowMs, 'ms')],
    ['  loaded (at most 1 s, in the background)', figure(chromium.loadMs, 'ms')],
    ['  the page by Node', figure(chromium.medianMs / node.medianMs, 'times')],
  ];
}

async function hearingRows(): Promise<readonly Row[]> {
  const { realTimeFactor, startUpMs, grammarLoadMs } = await benchHearing();
  const { endOfSpeechToReplyMs, reply } = await benchReply();
  return [
    ['recogniser, processor time by sound time', figure(realTimeFactor, '')],
    ['recogniser start-up', figure(startUpMs, 'ms')],
    ['grammar compiled: the whole (at most 400 ms)', figure(grammarLoadMs.anything, 'ms')],
    ['  where a number is expected', figure(grammarLoadMs.number, 'ms')],
    ['  where yes or no is expected', figure(grammarLoadMs.yesOrNo, 'ms')],
    ['end of speech to reply text', figure(endOfSpeechToReplyMs, 'ms')],
    ['  to that reply', reply],
  ];
}

async function pageHearingRows(): Promise<readonly Row[]> {
  const { realTimeFactor, startUpMs, switchMs, endToWordsMs, heapBytes } = await benchPageHearing();
  return [
    ['the page’s own engine in WebAssembly, by sound time', figure(realTimeFactor, '')],
    ['  start-up', figure(startUpMs, 'ms')],
    ['  to another grammar, built before (at most 50 ms)', figure(switchMs, 'ms')],
    ['  end of speech to words (at most 150 ms)', figure(endToWordsMs, 'ms')],
    ['  its memory (at most 150 MB)', figure(heapBytes / 2 ** 20, 'MB')],
  ];
}

async function main(): Promise<void> {
  const [cpu] = cpus();
  console.log(`${cpu?.model ?? 'unknown processor'}, load ${(loadavg()[0] ?? 0).toFixed(1)}\n`);
  // Engines first, as a page starts: what the corpus leaves in memory slows whatever is compiled after it.
  const heard = [...(await hearingRows()), ...(await pageHearingRows())];
  const rows = [
    ...saturationRows(),
    ...(await bundleRows()),
    ...(await openingRows()),
    ...learntRows(),
    ...(await understandingRows()),
    ...adviceRows(),
    ...(await phrasingRows()),
    ...heard,
  ];
  for (const [what, shown] of rows) console.log(`${what.padEnd(52)} ${shown}`);
}

await main();
