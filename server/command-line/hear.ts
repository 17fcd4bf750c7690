import type { Context } from '../../core/language/context.ts';
import { meaningOf } from '../../core/language/meaning.ts';
import { understand } from '../../core/language/understand.ts';
import { takeIn, type TakenIn } from '../../core/turn/take-in.ts';
import type { Command } from './command.ts';
import { readVoiceFile, type VoiceFileOutcome } from '../hearing/kept-voice.ts';
import {
  type HearingOptions,
  LANGUAGE_OPTIONS_USAGE,
  parseHearingOptions,
} from './language-options.ts';
import {
  alternativesToActOn,
  createPlayer,
  DEFAULT_ENGINE,
  PLAYER_ENGINES,
  type PlayerEngine,
  type Recording,
} from './player.ts';
import type { ExitStatus, Terminal } from './terminal.ts';
import { wrongCall } from './wrong-call.ts';

const USAGE = `gloveside hear [options] FILE.wav …
  What was said in each recording (WAV, 16-bit PCM, any rate and channel count) and what it meant:
  one JSON object a file, in order. "words" are those of the alternative that was taken, and "because"
  says why: likeliest, plausible, or readWhole. "confidence" is the chance of that meaning, and "does" what the page
  does with it: takes, asks (before a value of "checked" is kept), or saysAgain (all too unsure: "understood" is not
  acted on). "snrDb" is how far the voice stands above the noise, as the page measures it; null where it does not.
  "rejected" stands where nothing heard may be. A file that cannot be read gives {"file", "error"}, and the
  status is 1 in the end.

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
    let status: ExitStatus = 0;
    for (const file of call.words) {
      const recording = await player.play(file, expectation(call.context));
      if (recording.kind === 'unreadable') status = 1;
      await terminal.print(JSON.stringify(toRow(file, recording, call.context)));
    }
    player.close();
    return status;
  },
};

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

const expectation = ({ asked }: Context) => (asked === null ? 'anything' : 'number');

/** What is printed of one recording. */
export function toRow(file: string, recording: Recording, context: Context): object {
  if (recording.kind === 'unreadable') return { file, error: recording.why };
  const { alternatives, rejected, noise } = recording;
  const takenIn = takeIn(alternativesToActOn(recording), context, []);
  const { choice, checked } = takenIn;
  const taken = choice?.chosen ?? alternatives[0];
  return {
    file,
    words: taken?.words ?? '',
    alternatives,
    confidence: taken?.confidence ?? 0,
    ...(choice?.chosen ? { because: choice.because } : {}),
    ...(rejected === null ? {} : { rejected }),
    snrDb: noise.snrDb === null ? null : Math.round(noise.snrDb * 10) / 10,
    does: whatItDoes(takenIn, context),
    checked: checked.map(({ reading: { quantity, value }, certainty, readBack, rival }) => ({
      ...{ quantity, value, certainty, readBack, rival },
    })),
    understood: choice?.chosen?.utterance ?? understand('', context),
  };
}

function whatItDoes({ choice, utterance }: TakenIn, context: Context) {
  const nothing = meaningOf(understand('', context));
  const heard = choice?.chosen?.utterance;
  if (heard === undefined) return 'saysAgain';
  if (utterance.doubts.length + utterance.unclaimed.length > 0) return 'asks';
  return meaningOf(utterance) === nothing && meaningOf(heard) !== nothing ? 'saysAgain' : 'takes';
}
