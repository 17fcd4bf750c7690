/**
 * `npm run bench:hearing`: what each engine makes of sentences by made-up voices beside a fan, of the fan alone, and
 * of talk that is not for it. Nothing here is asserted: tests are elsewhere.
 */
import { parseArgs } from 'node:util';

import { recogniserGrammar } from '../../../core/language/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../../core/language/vocabulary/pronunciations.ts';
import {
  ENGINE_CHOICES,
  type EngineChoice,
  type Hearer,
  openHearer,
} from '../../../server/hearing/open-hearer.ts';
import { RATE_HZ } from '../signals.ts';
import { type Condition, CONDITIONS, fanAlone, nameOf, staged } from './conditions.ts';
import { sampleHeard, STRAY_TALK } from './sentences.ts';
import { isTaken, type Verdict, verdictOn } from './verdict.ts';
import { type BenchVoice, benchVoices } from './voices.ts';
import { wilson } from './wilson.ts';

const USAGE = `npm run bench:hearing -- [options]
  --sentences N    a condition (6 unless given: a first look in minutes, wide intervals)
  --full           1,000 a condition, and half an hour of noise and talk
  --engine NAME    only this one: ${ENGINE_CHOICES.join(', ')}
  --condition TEXT only those whose name holds it: "10 dB", "8 kHz", "clean, 16"
  --held-out       only voices that the neural engine's training never heard
  --model FOLDER   another model for the neural engine
  --seed N         other sentences (2 unless given; thresholds were fitted on those of 1)`;

const SMALL = { sentences: 6, minutes: 0.3 };
const FULL = { sentences: 1000, minutes: 30 };
const FAN_SECONDS = 4;

const { values } = parseArgs({
  options: {
    sentences: { type: 'string' },
    full: { type: 'boolean', default: false },
    engine: { type: 'string' },
    condition: { type: 'string', default: '' },
    'held-out': { type: 'boolean', default: false },
    model: { type: 'string' },
    seed: { type: 'string', default: '2' },
    help: { type: 'boolean', default: false },
  },
});
if (values.help) console.log(USAGE);
else await bench();

async function bench(): Promise<void> {
  const size = values.full ? FULL : SMALL;
  const count = Number(values.sentences ?? size.sentences);
  const engines = await openEngines();
  const conditions = CONDITIONS.filter((each) => nameOf(each).includes(values.condition));
  console.log(`${count} sentences a condition; shares in %, with 95 % intervals by Wilson\n`);
  console.log(
    row(['engine', 'voices', 'condition', 'exact', 'wrong', 'asked', 'rejected', 'time']),
  );
  for (const condition of conditions) await benchCondition(engines, condition, count);
  await benchNoise(engines, size.minutes);
}

interface Engine {
  readonly name: EngineChoice;
  readonly hearer: Hearer;
}

async function openEngines(): Promise<readonly Engine[]> {
  const wanted = ENGINE_CHOICES.filter((name) => (values.engine ?? name) === name);
  const grammar = recogniserGrammar('anything');
  const options = { grammar, pronunciations: PRONUNCIATIONS, modelFolder: values.model };
  const engines: Engine[] = [];
  for (const name of wanted) {
    const outcome = await openHearer(name, options);
    if (outcome.kind === 'opened') engines.push({ name, hearer: outcome.hearer });
    else console.log(`${name}: ${outcome.message}`);
  }
  return engines;
}

interface Tally {
  readonly counts: Record<Verdict, number>;
  cpuSeconds: number;
  seconds: number;
}

async function benchCondition(
  engines: readonly Engine[],
  condition: Condition,
  count: number,
): Promise<void> {
  const voices = benchVoices().filter(({ heldOut }) => heldOut || !values['held-out']);
  const tallies = new Map<string, Tally>();
  for (const [index, sentence] of sampleHeard(count, Number(values.seed)).entries()) {
    const voice = voices[index % voices.length];
    if (voice === undefined) return;
    const sound = staged(voice.say(sentence), condition, index + 1);
    for (const engine of engines) {
      await hearOne({ tally: tallyOf(tallies, engine, voice), engine, sentence, sound });
    }
  }
  for (const [name, tally] of tallies) {
    console.log(row([...name.split(': '), nameOf(condition), ...shown(tally)]));
  }
}

function tallyOf(tallies: Map<string, Tally>, engine: Engine, { heldOut }: BenchVoice): Tally {
  const key = `${engine.name}: ${heldOut ? 'held out' : 'known'}`;
  const tally = tallies.get(key) ?? {
    counts: { exact: 0, wrong: 0, asked: 0, rejected: 0 },
    cpuSeconds: 0,
    seconds: 0,
  };
  tallies.set(key, tally);
  return tally;
}

interface Hearing {
  readonly tally: Tally;
  readonly engine: Engine;
  readonly sentence: string;
  readonly sound: Float32Array;
}

async function hearOne({ tally, engine, sentence, sound }: Hearing): Promise<void> {
  const before = process.cpuUsage();
  const hearing = await engine.hearer.hear(sound);
  const { user, system } = process.cpuUsage(before);
  tally.cpuSeconds += (user + system) / 1e6;
  tally.seconds += sound.length / RATE_HZ;
  tally.counts[verdictOn(sentence, hearing)] += 1;
}

function shown({ counts, cpuSeconds, seconds }: Tally): readonly string[] {
  const all = Object.values(counts).reduce((sum, each) => sum + each, 0);
  const share = (verdict: Verdict): string => percent(counts[verdict], all);
  return [
    share('exact'),
    share('wrong'),
    share('asked'),
    share('rejected'),
    (cpuSeconds / seconds).toFixed(2),
  ];
}

function percent(hits: number, of: number): string {
  const [low, high] = wilson(hits, of).map((each) => (100 * each).toFixed(1));
  return `${((100 * hits) / of).toFixed(1)} (${low}–${high})`;
}

/** Readings made of a fan, and of talk that is not for it: there should be none. */
async function benchNoise(engines: readonly Engine[], minutes: number): Promise<void> {
  const voices = benchVoices();
  const rounds = Math.ceil((minutes * 60) / (2 * FAN_SECONDS));
  console.log('\nreadings invented');
  for (const { name, hearer } of engines) {
    let [fromFan, fromTalk] = [0, 0];
    for (let round = 0; round < rounds; round += 1) {
      if (isTaken(await hearer.hear(fanAlone(FAN_SECONDS, 500 + round)))) fromFan += 1;
      const talk = STRAY_TALK[round % STRAY_TALK.length] ?? '';
      const speech = voices[round % voices.length]?.say(talk) ?? new Float32Array(0);
      const condition = CONDITIONS[round % CONDITIONS.length];
      if (condition && isTaken(await hearer.hear(staged(speech, condition, round)))) fromTalk += 1;
    }
    console.log(row([name, `fan ${fromFan}/${rounds}`, `talk ${fromTalk}/${rounds}`]));
  }
}

function row(cells: readonly string[]): string {
  return cells.map((cell, at) => cell.padEnd(at < 3 ? 14 : 19)).join(' ');
}
