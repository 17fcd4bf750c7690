import type { Command } from './command.ts';
import { readVoiceFile, type VoiceFileOutcome } from '../hearing/kept-voice.ts';
import { toLine, toRow } from './hear-row.ts';
import {
  expectation,
  type HearingOptions,
  LANGUAGE_OPTIONS_USAGE,
  type LanguageCall,
  parseHearingOptions,
} from './language-options.ts';
import {
  createPlayer,
  DEFAULT_ENGINE,
  type Player,
  PLAYER_ENGINES,
  type PlayerEngine,
  type Recording,
} from './player.ts';
import type { ExitStatus, Terminal } from './terminal.ts';
import { wrongCall } from './wrong-call.ts';

const USAGE = `gloveside hear [options] FILE.wav …
  What was said in each recording (WAV, 16-bit PCM, any rate and channel count) and what it meant:
  one JSON object a sentence, in order. Sentences are found as the page finds them, by a voice detector and by
  what may still follow; "startS" and "endS" say where in the file each was, in seconds. A recording of up to 15
  seconds in which none is found is heard whole. Each is understood by itself: gloveside replay plays a recording
  as a visit.
  "words" are those of the alternative that was taken, and "because" says why: likeliest, plausible, or
  readWhole. "confidence" is the chance of that meaning, and "does" what the page does with it: takes, asks
  (before a value of "checked" is kept), or saysAgain (all too unsure: "understood" is not acted on). "snrDb" is
  how far the voice stands above the noise, as the page measures it; null where it does not. "rejected" stands
  where nothing heard may be. A file that cannot be read gives {"file", "error"}, and the status is 1 in the end.

  --lines              for reading, a line a sentence instead: when, what the page does, the words, the readings
  --whole              takes each recording for one sentence, however long it is
  --engine NAME        what hears: neural, embedded, or both (the neural one, with what the embedded one
                       heard as a second opinion): ${DEFAULT_ENGINE} unless given; or transformers, any
                       model of the transformers library for speech, which writes whatever is said
  --model FOLDER       another model for the neural engine: a folder with model.onnx and model.json; for
                       transformers a model's folder, or its name on the hub (org/name), which is fetched
                       once and kept
  --voice FILE.json    hears by what gloveside enrol learnt of a voice; of no effect without the neural engine
${LANGUAGE_OPTIONS_USAGE}`;

export const hearCommand: Command = {
  usage: USAGE,
  run: async (args, terminal) => {
    const call = parseHearingOptions(args);
    if (call.kind === 'unusable') return wrongCall(terminal, 'hear', call.why);
    if (call.words.length === 0) return wrongCall(terminal, 'hear', 'name the WAV files to hear');
    const { engine = DEFAULT_ENGINE, model } = call;
    if (!isEngine(engine)) {
      const why = `--engine takes ${PLAYER_ENGINES.join(', ')}, not "${engine}"`;
      return wrongCall(terminal, 'hear', why);
    }
    const kept = await voiceFor(engine, call, terminal);
    if (kept.kind === 'unusable') return wrongCall(terminal, 'hear', kept.why);
    const onProgress = (line: string): void => terminal.complain(line);
    const player = createPlayer({ engine, model, voice: kept.voice, onProgress });
    const status = await hearAll(player, call, terminal);
    player.close();
    return status;
  },
};

type Call = Extract<LanguageCall, { kind: 'call' }> & HearingOptions;

async function hearAll(player: Player, call: Call, terminal: Terminal): Promise<ExitStatus> {
  const { words: files, context, whole, lines } = call;
  const expects = expectation(context);
  const play = (file: string): AsyncIterable<Recording> =>
    whole ? alone(player.play(file, expects)) : player.playSentences(file, () => expects);
  let status: ExitStatus = 0;
  for (const file of files) {
    if (lines && files.length > 1) await terminal.print(file);
    for await (const recording of play(file)) {
      if (recording.kind === 'unreadable') status = 1;
      const row = toRow(file, recording, context);
      await terminal.print(lines ? toLine(row, context.units) : JSON.stringify(row));
    }
  }
  return status;
}

async function* alone<Item>(item: Promise<Item>): AsyncIterable<Item> {
  yield await item;
}

async function voiceFor(
  engine: PlayerEngine,
  { voice }: HearingOptions,
  terminal: Terminal,
): Promise<VoiceFileOutcome | typeof NO_VOICE> {
  if (voice === undefined) return NO_VOICE;
  if (engine === 'neural' || engine === 'both') return readVoiceFile(voice);
  terminal.complain(`gloveside hear: --voice has no effect with --engine ${engine}`);
  return NO_VOICE;
}

const NO_VOICE = { kind: 'voice', voice: null } as const;

const isEngine = (name: string): name is PlayerEngine =>
  PLAYER_ENGINES.some((choice) => choice === name);
