/**
 * `npm run bench:endpoints`: how well the beginnings and ends of sentences are found by loudness alone, with the voice
 * detector, and with the grammar's word on how long to wait. Nothing here is asserted: tests are elsewhere.
 */
import { parseArgs } from 'node:util';

import {
  ENDPOINTER_SETTINGS,
  type EndpointerSettings,
} from '../../../../core/hearing/endpointing-policy.ts';
import { type Endpointing, sentencesIn } from '../../../../server/hearing/sentences-in.ts';
import { collect } from '../../../support/collect.ts';
import { RATE_HZ } from '../../signals.ts';
import { toPeak } from '../conditions.ts';
import { sampleHeard } from '../sentences.ts';
import { paused } from './paused.ts';
import { benchVoices } from '../voices.ts';
import { type Bed, bedsOf } from './beds.ts';
import { type Scene, sceneOf } from './scene.ts';
import { count, newTally, quantile, type Tally } from './tally.ts';
import { openWays, type Way, WAYS } from './ways.ts';

const PAGE_MS = ENDPOINTER_SETTINGS.waitMs.incomplete;

const USAGE = `npm run bench:endpoints -- [options]
  --sentences N   in each bed at each level (10 unless given)
  --minutes N     of each bed without a sentence (1 unless given)
  --way NAME      only this one, several times for several: ${WAYS.join(', ')} (the last is slow)
  --bed NAME      only this one, several times for several, as "compressor and hum"
  --level DB      only at this one, several times for several: clean, 20, 10, 5, 0
  --pause MS      readings alone, with a rest of so long before the value: "head is …", and the eyes go to the gauge
  --incomplete MS another wait where the sentence is not whole than the page's (${PAGE_MS})
  --seed N        other sentences and noise (2 unless given)`;

const { values } = parseArgs({
  options: {
    sentences: { type: 'string', default: '10' },
    minutes: { type: 'string', default: '1' },
    way: { type: 'string', multiple: true },
    bed: { type: 'string', multiple: true },
    level: { type: 'string', multiple: true },
    pause: { type: 'string' },
    incomplete: { type: 'string', default: String(PAGE_MS) },
    seed: { type: 'string', default: '2' },
    help: { type: 'boolean', default: false },
  },
});

const LEVELS_DB = [null, 20, 10, 5, 0] as const;
const COLUMNS = ['bed', 'level', 'by', 'of', 'missed', 'begun by else', 'start cut', 'end cut'];
const MORE = ['in two', 'endless', 'end ms: median', '95 %', 'CPU s/s'];
const WIDTHS = [24, 7, 9, 4, 7, 14, 10, 8, 7, 8, 15, 6, 7];

const ALONE_S = 20;
const seedOf = (at: number): number => 1000 * Number(values.seed) + at;

type Ways = Awaited<ReturnType<typeof openWays>>;

if (values.help) console.log(USAGE);
else await bench();

async function bench(): Promise<void> {
  const voices = benchVoices();
  const ways = await openWays();
  const settings = settingsOf(Number(values.incomplete));
  const wanted = WAYS.filter((way) => values.way?.includes(way) ?? true);
  const beds = Object.entries(bedsOf(voices)).filter(
    ([name]) => values.bed?.includes(name) ?? true,
  );
  const sentences = sampleHeard(Number(values.sentences), Number(values.seed));
  const speeches = sentences.flatMap((said, at) => {
    const voice = voices[at % voices.length];
    if (voice === undefined) return [];
    return values.pause === undefined ? voice.say(said) : paused(said, voice, Number(values.pause));
  });
  print([...COLUMNS, ...MORE]);
  for (const [name, bed] of beds) {
    // Without a bed to speak of, all beds are one.
    for (const snrDb of LEVELS_DB.filter((level) => level !== null || name === 'fan')) {
      const scenes = speeches.map((speech, at) =>
        sceneOf(speech, { bed, snrDb, seed: seedOf(at) }),
      );
      const level = snrDb === null ? 'clean' : `${snrDb} dB`;
      if (!(values.level?.includes(snrDb === null ? 'clean' : String(snrDb)) ?? true)) continue;
      for (const way of wanted)
        print([name, level, way, ...(await cellsFor(scenes, { ...ways[way], settings }))]);
    }
  }
  console.log('\nbegun a minute where nobody speaks to the product');
  for (const [name, bed] of beds)
    console.log(name.padEnd(24), ...(await begunIn(bed, ways, wanted)));
}

function settingsOf(incomplete: number): EndpointerSettings {
  const { waitMs } = ENDPOINTER_SETTINGS;
  return { ...ENDPOINTER_SETTINGS, waitMs: { ...waitMs, incomplete } };
}

async function cellsFor(scenes: readonly Scene[], way: Endpointing): Promise<readonly string[]> {
  const tally = newTally();
  const before = process.cpuUsage();
  for (const scene of scenes) {
    count(tally, await collect(sentencesIn(scene.sound, way)), scene);
  }
  const { user, system } = process.cpuUsage(before);
  const seconds = scenes.reduce((sum, { sound }) => sum + sound.length / RATE_HZ, 0);
  return [...cellsOf(tally), ((user + system) / 1e6 / seconds).toFixed(3)];
}

/** Beginnings a minute; the grammar has no say in them. */
async function begunIn(bed: Bed, ways: Ways, wanted: readonly Way[]): Promise<readonly string[]> {
  const rounds = Math.max(1, Math.round((Number(values.minutes) * 60) / ALONE_S));
  const sounds = Array.from({ length: rounds }, (_, round) => toPeak(bed(ALONE_S, seedOf(round))));
  const cells: string[] = [];
  for (const way of wanted.filter((each) => each !== 'grammar')) {
    let begun = 0;
    for (const sound of sounds) {
      begun += (await collect(sentencesIn(sound, ways[way]))).length;
    }
    cells.push(`${way} ${((begun * 60) / (rounds * ALONE_S)).toFixed(1)} `);
  }
  return cells;
}

function cellsOf(tally: Tally): readonly string[] {
  const { of, missed, falseStarts, cutAtStart, cutAtEnd, inTwo, endless, endsMs } = tally;
  const counts = [of, missed, falseStarts, cutAtStart, cutAtEnd, inTwo, endless];
  return [...counts.map(String), ...[0.5, 0.95].map((share) => quantile(endsMs, share).toFixed(0))];
}

function print(cells: readonly string[]): void {
  console.log(
    cells
      .map((cell, at) => cell.padEnd(WIDTHS[at] ?? 8))
      .join(' ')
      .trimEnd(),
  );
}
