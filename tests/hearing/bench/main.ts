/**
 * `npm run bench:hearing`: what each engine makes of sentences by made-up voices beside a fan, of noise that nobody
 * speaks in, and of talk that is not for it. Nothing here is asserted: tests are elsewhere.
 */
import { parseArgs } from 'node:util';

import { ENGINE_CHOICES, type EngineChoice } from '../../../server/hearing/open-hearer.ts';
import { calibrate, isFitted, reliability } from './calibrate.ts';
import { type Ears, openEars } from './ears.ts';
import { benchEnrolment } from './enrol/bench-enrolment.ts';
import { drawPrompts } from './enrol/draw-prompts.ts';
import { ENROLMENT_HEAD, reportVoice } from './enrol/report-enrolment.ts';
import { openWays } from './endpoints/ways.ts';
import { jobs } from './jobs.ts';
import { appendOverheard, overhear, type Overheard, readOverheard } from './listen/overheard.ts';
import { reportOverheard } from './listen/report-overheard.ts';
import { stretches } from './listen/stretches.ts';
import { isEngine, report } from './report.ts';
import { readRows, type Row, appendRows } from './rows.ts';
import { benchVoices } from './voices.ts';

const USAGE = `npm run bench:hearing -- [options] [ROWS …]
  Given files of rows, reports what they hold instead of hearing anything.

  --sentences N    a condition (6 unless given: a first look in minutes, wide intervals)
  --minutes N      of noise, and as many of talk (0.3 unless given)
  --full           1,000 sentences a condition, and half an hour of noise and of talk
  --engine NAME    only this one: ${ENGINE_CHOICES.join(', ')} ("both" takes a third of the time of all three)
  --condition TEXT only those whose name holds it: "10 dB", "8 kHz", "clean, 16|5 dB, 16"; "0 dB|-5 dB" are heard
                   only so
  --rare           hand-written sentences that only the rare grammar hears, in place of likely ones
  --held-out       only voices that the neural engine's training never heard
  --model FOLDER   another model for the neural engine
  --seed N         other sentences (2 unless given)
  --shard I/N      only every N-th sentence from the I-th on (0/1 unless given): one process each of many cores
  --rows FILE      adds what was heard (gzipped JSON lines) to this file, to be reported or judged anew
  --listen         instead of sentences: the noise and the talk in stretches of half a minute, in which sentences are
                   found as the page finds them, and heard; ROWS and FILE are then of these
  --calibrate      the figures of core/hearing/judgement.ts from one half of the sentences in ROWS, and how they do on
                   the other
  --enrol          instead of all that: what reading twenty prompts does for a voice, heard by the neural engine alone
  --voice TEXT     with --enrol, only voices whose name holds it: "kal16|Czech"
  --draw-prompts   the prompts, drawn anew from the grammar: what core/language/heard/voice-prompts.ts holds
  --half           report only that other half: thresholds were chosen on the first`;

const PROMPTS = 20;
const ENROL_SENTENCES = 120;
/** Rows, before they are written. */
const KEPT_AT_ONCE = 10;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    sentences: { type: 'string' },
    minutes: { type: 'string' },
    full: { type: 'boolean', default: false },
    engine: { type: 'string' },
    condition: { type: 'string', default: '' },
    rare: { type: 'boolean', default: false },
    'held-out': { type: 'boolean', default: false },
    model: { type: 'string' },
    seed: { type: 'string', default: '2' },
    shard: { type: 'string', default: '0/1' },
    rows: { type: 'string' },
    listen: { type: 'boolean', default: false },
    calibrate: { type: 'boolean', default: false },
    half: { type: 'boolean', default: false },
    enrol: { type: 'boolean', default: false },
    voice: { type: 'string', default: '' },
    'draw-prompts': { type: 'boolean', default: false },
    help: { type: 'boolean', default: false },
  },
});
async function bench(): Promise<void> {
  const engines = values.engine === undefined ? ENGINE_CHOICES : [values.engine].filter(isEngine);
  const ears = await openEars({ modelFolder: values.model, engines });
  if (values['draw-prompts']) {
    console.log(drawPrompts(PROMPTS, ears.pronunciations).join('\n'));
    return;
  }
  if (values.enrol) {
    await enrolAll(ears);
    return;
  }
  if (values.listen) {
    const overheard = positionals.length > 0 ? readOverheard(positionals) : await listen(ears);
    console.log(reportOverheard(overheard, ears, withoutEmbedded(engines)).join('\n'));
    return;
  }
  const rows = positionals.length > 0 ? readRows(positionals) : await hearAll(ears);
  if (positionals.length > 0) keep(rows);
  if (values.calibrate) {
    showCalibration(rows, ears);
    return;
  }
  const told = engines.filter((engine) => engine !== 'embedded' || rows.every(hasEmbedded));
  console.log(report(rows, ears, { engines: told, half: values.half }).join('\n'));
}

const hasEmbedded = ({ embedded }: Row): boolean => embedded !== null;

function showCalibration(rows: readonly Row[], { pronunciations }: Ears): void {
  const { judgement, loss } = calibrate(rows.filter(isFitted), pronunciations);
  console.log(judgement, loss);
  const others = rows.filter((row) => !isFitted(row));
  console.table(reliability(others, pronunciations, judgement));
}

async function enrolAll(ears: Ears): Promise<void> {
  console.log(ENROLMENT_HEAD.join('\n'));
  const sentences = Number(values.sentences ?? ENROL_SENTENCES);
  const { condition, voice } = values;
  const chosen = { sentences, seed: Number(values.seed), condition, voice };
  for await (const heard of benchEnrolment(ears, chosen)) {
    console.log(reportVoice(heard).join('\n'));
  }
}

const withoutEmbedded = (engines: readonly EngineChoice[]): readonly EngineChoice[] =>
  engines.filter((engine) => engine !== 'embedded');

async function listen(ears: Ears): Promise<readonly Overheard[]> {
  const { grammar } = await openWays(values.model);
  const overheard: Overheard[] = [];
  for (const stretch of stretches(settings())) {
    const heard = await overhear(stretch, ears, grammar);
    overheard.push(heard);
    if (values.rows !== undefined) appendOverheard(values.rows, [heard]);
  }
  return overheard;
}

async function hearAll(ears: Ears): Promise<readonly Row[]> {
  const rows: Row[] = [];
  let kept = 0;
  for (const job of jobs(settings())) {
    rows.push(await ears.hear(job));
    if (rows.length - kept < KEPT_AT_ONCE) continue;
    keep(rows.slice(kept));
    kept = rows.length;
  }
  keep(rows.slice(kept));
  return rows;
}

function keep(rows: readonly Row[]): void {
  if (values.rows !== undefined) appendRows(values.rows, rows);
}

function settings() {
  const [at = 0, of = 1] = values.shard.split('/').map(Number);
  return {
    sentences: Number(values.sentences ?? (values.full ? 1000 : 6)),
    minutes: Number(values.minutes ?? (values.full ? 30 : 0.3)),
    seed: Number(values.seed),
    condition: values.condition,
    rare: values.rare,
    voices: benchVoices().filter(({ heldOut }) => heldOut || !values['held-out']),
    shard: { at, of },
  };
}

if (values.help) console.log(USAGE);
else await bench();
