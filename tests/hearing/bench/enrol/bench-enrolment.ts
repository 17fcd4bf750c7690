/**
 * What twenty read prompts do for a voice: each reads them in a quiet room, then says other sentences, which are heard
 * without what was learnt and with it.
 */
import { createNeuralDecoder, SEARCH_SETTINGS } from '../../../../core/hearing/neural-decoder.ts';
import { createGrammarGraphs } from '../../../../core/hearing/grammar-graphs.ts';
import { combineGrammars } from '../../../../core/hearing/jsgf.ts';
import type { Hearing } from '../../../../core/hearing/hearing.ts';
import { type AcousticModel, createListener } from '../../../../core/hearing/listener.ts';
import { neuralHearing } from '../../../../core/hearing/neural-hearing.ts';
import type { SoundGraph } from '../../../../core/hearing/sound-graph.ts';
import { createPhoneSearch } from '../../../../core/hearing/phone-search.ts';
import { correctFrame, toCorrection } from '../../../../core/hearing/voice/correct-frame.ts';
import type { VoiceProfile } from '../../../../core/hearing/voice/voice-profile.ts';
import type { Conclusion } from '../../../../core/hearing/voice/voice-teacher.ts';
import { heardGrammars } from '../../../../core/language/heard/recogniser-grammar.ts';
import { VOICE_PROMPTS } from '../../../../core/language/heard/voice-prompts.ts';
import { openNeuralModel } from '../../../../server/hearing/neural-model.ts';
import type { Ears } from '../ears.ts';
import { type Condition, CONDITIONS, nameOf, staged } from '../conditions.ts';
import { sampleHeard } from '../sentences.ts';
import { STRAY_TALK } from '../stray-talk.ts';
import { isTaken, type Verdict, verdictOn } from '../verdict.ts';
import { type EnrolledVoice, enrolledVoices } from './enrolled-voices.ts';

export interface EnrolSettings {
  readonly sentences: number;
  readonly seed: number;
  /** Parts of names, divided by "|"; '' for all. */
  readonly condition: string;
  readonly voice: string;
}

/** One sentence of one voice, heard both ways. */
export interface Pair {
  readonly condition: string;
  readonly said: string;
  readonly before: Verdict;
  readonly after: Verdict;
}

export interface EnrolledVoiceHeard {
  readonly voice: string;
  readonly acquaintance: EnrolledVoice['acquaintance'];
  readonly learnt: number;
  readonly conclusion: Conclusion;
  readonly secondsToLearn: number;
  readonly pairs: readonly Pair[];
  /** Of talk that was for nobody, in how much a reading was found. */
  readonly talk: { readonly of: number; readonly before: number; readonly after: number };
}

/** In a quiet room, as one would choose for it. */
const ROOM: Condition = { snrDb: null, bandKhz: 16 };
const QUIET_AND_LOUD = 'clean, 16|10 dB, 16';

interface Ear {
  readonly model: AcousticModel;
  readonly graph: SoundGraph;
  readonly pronunciations: Ears['pronunciations'];
}

/** One voice after the other, as they are done. */
export async function* benchEnrolment(
  { pronunciations }: Ears,
  settings: EnrolSettings,
): AsyncGenerator<EnrolledVoiceHeard> {
  const opened = await openNeuralModel();
  if (opened.kind === 'unavailable') throw new Error(opened.message);
  const grammar = combineGrammars(heardGrammars('anything')) ?? '';
  const phones = opened.model.description.phones;
  const outcome = createGrammarGraphs({ pronunciations, phones })(grammar);
  if (outcome.kind !== 'graph') throw new Error('The grammar cannot be heard.');
  const ear = { model: opened.model, graph: outcome.graph, pronunciations };
  for (const voice of enrolledVoices(pronunciations)) {
    if (includesOne(voice.name, settings.voice)) yield await benchVoice(ear, voice, settings);
  }
}

const includesOne = (name: string, parts: string): boolean =>
  parts.split('|').some((part) => ` ${name}`.includes(part === '' ? part : ` ${part}`));

async function benchVoice(
  ear: Ear,
  voice: EnrolledVoice,
  settings: EnrolSettings,
): Promise<EnrolledVoiceHeard> {
  const teacher = createNeuralDecoder(ear).teacher();
  const begin = process.cpuUsage();
  for (const [at, sound] of voice.sayAll(VOICE_PROMPTS).entries()) {
    await teacher.learn(VOICE_PROMPTS[at] ?? '', staged(sound, ROOM, at + 1));
  }
  const conclusion = teacher.conclude();
  const { user, system } = process.cpuUsage(begin);
  const hearBoth = hearer(ear, conclusion.kind === 'better' ? conclusion.profile : null);
  return {
    voice: voice.name,
    acquaintance: voice.acquaintance,
    learnt: teacher.learnt(),
    conclusion,
    secondsToLearn: (user + system) / 1e6,
    pairs: await pairsOf(voice, settings, hearBoth),
    talk: await talkOf(voice, hearBoth),
  };
}

type HearBoth = (sound: Float32Array) => Promise<readonly [before: Hearing, after: Hearing]>;

async function pairsOf(
  voice: EnrolledVoice,
  { sentences, seed, condition }: EnrolSettings,
  hearBoth: HearBoth,
): Promise<readonly Pair[]> {
  const prompts: readonly string[] = VOICE_PROMPTS;
  const others = sampleHeard(sentences, seed).filter((sentence) => !prompts.includes(sentence));
  const wanted = condition === '' ? QUIET_AND_LOUD : condition;
  const conditions = CONDITIONS.filter((each) => includesOne(nameOf(each), wanted));
  const pairs: Pair[] = [];
  for (const [at, sound] of voice.sayAll(others).entries()) {
    const said = others[at] ?? '';
    for (const each of conditions) {
      const [before, after] = await hearBoth(staged(sound, each, at + 1));
      const verdicts = { before: verdictOn(said, before), after: verdictOn(said, after) };
      pairs.push({ condition: nameOf(each), said, ...verdicts });
    }
  }
  return pairs;
}

const TALK = 20;

async function talkOf(
  voice: EnrolledVoice,
  hearBoth: HearBoth,
): Promise<EnrolledVoiceHeard['talk']> {
  // A voice of diphones has no sounds for words that our dictionary leaves out.
  if (voice.name.includes('sounds') || voice.name.includes('diphones')) {
    return { of: 0, before: 0, after: 0 };
  }
  const talk = { of: 0, before: 0, after: 0 };
  for (const [at, sound] of voice.sayAll(STRAY_TALK.slice(0, TALK)).entries()) {
    const [before, after] = await hearBoth(staged(sound, ROOM, at + 1));
    talk.of += 1;
    talk.before += isTaken(before) ? 1 : 0;
    talk.after += isTaken(after) ? 1 : 0;
  }
  return talk;
}

/** The network runs once for both: what was learnt changes what it says only at the end. */
function hearer(ear: Ear, profile: VoiceProfile | null): HearBoth {
  const listener = createListener(ear.model);
  const correction = profile === null ? null : toCorrection(profile.correction);
  return async (sound) => {
    const inners: Float32Array[] = [];
    listener.through(null);
    listener.forget();
    await listener.accept(sound);
    listener.reset();
    listener.through((frame, inner) => {
      inners.push(inner);
      return frame;
    });
    const frames = [...(await listener.accept(sound)), ...(await listener.flush())];
    const held = inners.slice(inners.length - frames.length);
    const before = judge(ear, frames);
    if (correction === null) return [before, before];
    const corrected = frames.map((frame, at) =>
      correctFrame(correction, frame, held[at] ?? new Float32Array(0)),
    );
    return [before, judge(ear, corrected)];
  };
}

function judge({ graph, pronunciations }: Ear, frames: readonly Float32Array[]): Hearing {
  const search = createPhoneSearch(graph, SEARCH_SETTINGS);
  for (const frame of frames) search.accept(frame);
  const hypotheses = search.finish().filter(({ words }) => words.length > 0);
  const ranking = { hypotheses, opinion: null, asked: false, peak: 1, voiced: true };
  return neuralHearing(ranking, pronunciations);
}
