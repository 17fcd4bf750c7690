import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { soundWords } from '../../core/hearing/dictionary.ts';
import { createNeuralDecoder } from '../../core/hearing/neural-decoder.ts';
import type {
  Conclusion,
  LessonHeard,
  VoiceTeacher,
} from '../../core/hearing/voice/voice-teacher.ts';
import { VOICE_PROMPTS } from '../../core/language/heard/voice-prompts.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { openNeuralModel } from '../hearing/neural-model.ts';
import { readDictionary } from '../hearing/node-model.ts';
import { readWav } from '../hearing/read-wav.ts';
import type { Command } from './command.ts';
import { parseOptions } from './options.ts';
import type { ExitStatus, Terminal } from './terminal.ts';
import { wrongCall } from './wrong-call.ts';

const USAGE = `gloveside enrol [--out FILE.json] [--model FOLDER] [FOLDER]
  Without a folder, prints the sentences to read aloud, each with the name of the WAV file to record it in.
  With a folder of those recordings (WAV, 16-bit PCM), learns the voice from them and writes what it learnt to FILE.json
  (voice.json unless given), for hear --voice FILE.json. No sound is kept in it. A recording that is missing, or is not
  like its sentence, is told and left out. Where the voice would be heard no better, nothing is written and the status
  is 1.

  --model FOLDER       another model for the neural engine: what is learnt is for that model alone`;

const DEFAULT_OUT = 'voice.json';

export const enrolCommand: Command = {
  usage: USAGE,
  run: async (args, terminal) => {
    const options = { out: { type: 'string' }, model: { type: 'string' } } as const;
    const parsed = parseOptions(args, options);
    if (parsed.kind === 'unusable') return wrongCall(terminal, 'enrol', parsed.why);
    const [folder, ...more] = parsed.words;
    if (more.length > 0) return wrongCall(terminal, 'enrol', 'name one folder');
    if (folder === undefined) return printPrompts(terminal);
    return learn(terminal, { folder, out: DEFAULT_OUT, ...parsed.values });
  },
};

const fileOf = (at: number): string => `${String(at + 1).padStart(2, '0')}.wav`;

async function printPrompts(terminal: Terminal): Promise<ExitStatus> {
  const lines = VOICE_PROMPTS.map((prompt, at) => `${fileOf(at)}  ${prompt}`);
  await terminal.print(lines.join('\n'));
  return 0;
}

interface Call {
  readonly folder: string;
  readonly out?: string | undefined;
  readonly model?: string | undefined;
}

async function learn(terminal: Terminal, { folder, out, model }: Call): Promise<ExitStatus> {
  const teacher = await openTeacher(model);
  if (typeof teacher === 'string') {
    terminal.complain(`gloveside enrol: ${teacher}`);
    return 1;
  }
  for (const [at, prompt] of VOICE_PROMPTS.entries()) {
    const file = join(folder, fileOf(at));
    await terminal.print(`${fileOf(at)}  ${await lessonOf(teacher, { file, prompt })}`);
  }
  const conclusion = teacher.conclude();
  await terminal.print(CONCLUSIONS[conclusion.kind]);
  if (conclusion.kind !== 'better') return 1;
  const target = out ?? DEFAULT_OUT;
  await writeFile(target, `${JSON.stringify(conclusion.profile)}\n`);
  await terminal.print(`Kept in ${target}: hear --voice ${target} hears by it.`);
  return 0;
}

const CONCLUSIONS: Readonly<Record<Conclusion['kind'], string>> = {
  better: 'Learnt: sentences held back are heard better by it.',
  noBetter: 'Sentences held back are heard no better by it: nothing is kept, and nothing is lost.',
  tooFew: 'Too few of the sentences were there to learn from: at least 10 must be.',
};

const LESSONS: Readonly<Record<LessonHeard, string>> = {
  learnt: 'learnt',
  unlike: 'not like its sentence: record it again',
  unteachable: 'cannot be learnt by this model',
};

async function lessonOf(
  teacher: VoiceTeacher,
  { file, prompt }: { readonly file: string; readonly prompt: string },
): Promise<string> {
  const bytes = await readFile(file).catch(() => null);
  if (bytes === null) return 'missing';
  const wav = readWav(bytes);
  if (wav.kind === 'unreadable') return wav.message;
  return LESSONS[await teacher.learn(prompt, wav.samples)];
}

/** Or why there is none. */
async function openTeacher(folder: string | undefined): Promise<VoiceTeacher | string> {
  const outcome = await openNeuralModel(folder);
  if (outcome.kind === 'unavailable') return outcome.message;
  const words = [...new Set(VOICE_PROMPTS.flatMap((prompt) => prompt.split(' ')))];
  const { pronunciations } = soundWords(words, await readDictionary(), PRONUNCIATIONS);
  return createNeuralDecoder({ model: outcome.model, pronunciations }).teacher();
}
