import type { DecodedWord, DecoderPort } from './decoder-port.ts';
import { variants, type Pronunciations } from './dictionary.ts';
import { ENGINE_PARAMETERS, FEATURE_PARAMETERS, type ModelFile } from './engine-parameters.ts';
import { GARBAGE_PRONUNCIATIONS } from './garbage.ts';
import { withoutRare, withoutUnsounded, wordsOfGrammar } from './jsgf.ts';

/** As much of npm soundswallower's module as is used: the hosts load it, core never does. */
export interface EmbeddedModule {
  readonly Decoder: new (config: Record<string, string | number | boolean>) => EmbeddedDecoder;
}

interface EmbeddedDecoder {
  set_config(key: string, value: string | number): boolean;
  initialize(): Promise<unknown>;
  add_words(...words: [string, string][]): void;
  set_grammar(jsgf: string): void;
  start(): void;
  stop(): void;
  process_audio(samples: Float32Array, noSearch?: boolean, whole?: boolean): number;
  get_text(): string;
  get_alignment(): Segment;
  delete(): void;
}

interface Segment {
  /** Text, begin and duration in seconds, probability, words. */
  readonly t: string;
  readonly b: number;
  readonly d: number;
  readonly p: number;
  readonly w?: Segment[];
}

export interface EmbeddedSettings {
  /** Where each model file is: a path in Node, a URL in the browser. */
  readonly files: Readonly<Record<ModelFile, string>>;
  readonly pronunciations: Pronunciations;
}

/**
 * Fetching it fails at once, in the browser without a request and in Node without a file: the engine
 * takes a missing transform and dictionary for granted, but a server's fallback page for a transform.
 */
const NO_FILE = 'blob:none';

/** Makes a decoder that knows the given words. Rejects when a model file is missing or damaged. */
export async function createEmbeddedDecoder(
  module: EmbeddedModule,
  settings: EmbeddedSettings,
): Promise<DecoderPort> {
  const decoder = new module.Decoder({
    ...ENGINE_PARAMETERS,
    ...settings.files,
    hmm: NO_FILE,
    lda: NO_FILE,
    dict: NO_FILE,
  });
  giveFeatureParameters(decoder);
  await decoder.initialize();
  const known = { ...settings.pronunciations, ...GARBAGE_PRONUNCIATIONS };
  decoder.add_words(...wordPairs(known));
  return toPort(decoder, new Set(Object.keys(known)));
}

/** Set in place of the engine's own step, which reads them from a file and overrides the settings given. */
function giveFeatureParameters(decoder: EmbeddedDecoder): void {
  const value = (): Promise<void> => {
    for (const [key, setting] of Object.entries(FEATURE_PARAMETERS)) {
      decoder.set_config(key, setting);
    }
    return Promise.resolve();
  };
  Object.defineProperty(decoder, 'init_featparams', { value });
}

function wordPairs(pronunciations: Pronunciations): [string, string][] {
  return Object.entries(pronunciations).flatMap(([word, sounds]) =>
    variants(word, sounds).map(([name, phones]): [string, string] => [name, phones]),
  );
}

function toPort(decoder: EmbeddedDecoder, known: ReadonlySet<string>): DecoderPort {
  return {
    setGrammar: (given) => {
      const jsgf = withoutUnsounded(withoutRare(given), known);
      const unknown = wordsOfGrammar(jsgf).filter((word) => !known.has(word));
      if (unknown.length === 0) decoder.set_grammar(jsgf);
      return unknown;
    },
    start: () => decoder.start(),
    accept: (samples) => void decoder.process_audio(samples, false, false),
    acceptWhole: (samples) => void decoder.process_audio(samples, false, true),
    stop: () => decoder.stop(),
    text: () => decoder.get_text(),
    words: () => (decoder.get_alignment().w ?? []).map(toWord),
    dispose: () => decoder.delete(),
  };
}

function toWord({ t, b, d, p }: Segment): DecodedWord {
  return { word: t, startSeconds: b, durationSeconds: d, probability: p };
}
