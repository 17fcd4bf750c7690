import { combineGrammars, type WeightedGrammar } from '../../core/hearing/jsgf.ts';
import type { RecogniserEnvironment } from './environment.ts';
import type { SpeechRecognitionErrorCode } from './events.ts';
import { readGrammars } from './grammars.ts';
import { isSupportedLanguage } from './languages.ts';
import type { Snapshot } from './snapshot.ts';

export type Prepared =
  | { readonly kind: 'ready' }
  | {
      readonly kind: 'failed';
      readonly error: SpeechRecognitionErrorCode;
      readonly message: string;
    };

/**
 * Loads the engine where that is still to do and gives it the session's grammars. Null once the session is over:
 * the grammar is then another session's to set.
 */
export async function prepareEngine(
  environment: RecogniserEnvironment,
  wanted: Snapshot,
  isOver: () => boolean,
): Promise<Prepared | null> {
  const refused = refusal(environment, wanted);
  if (refused !== null) return refused;
  const loaded = await environment.engine.load(environment.onProgress);
  if (loaded.kind === 'failed') return refuse('service-not-allowed', loaded.message);
  const grammar = await readGrammar(environment, wanted);
  if (isOver()) return null;
  if (grammar.kind === 'failed') return refuse('service-not-allowed', grammar.message);
  const set = await environment.engine.setGrammar(grammar.text);
  return set.kind === 'failed' ? refuse('service-not-allowed', set.message) : set;
}

/**
 * What can be told before anything is loaded. A language that cannot be had is language-not-supported; where the
 * page insists on this device, the standard's text says service-not-allowed (Chromium does not).
 */
function refusal({ engine, page }: RecogniserEnvironment, wanted: Snapshot): Prepared | null {
  const { lang, processLocally } = wanted;
  if (engine.hasOneWording === true && wanted.phrases().length > 0) {
    return refuse(
      'phrases-not-supported',
      'This engine offers one wording: phrases weigh nothing.',
    );
  }
  if (!page.allowsOnDevice()) {
    return refuse(
      'service-not-allowed',
      'The permissions policy forbids recognition on the device.',
    );
  }
  if (isSupportedLanguage(lang)) return null;
  const code = processLocally ? 'service-not-allowed' : 'language-not-supported';
  return refuse(code, `Only English is heard, not ${lang}.`);
}

/**
 * Compiles what later sessions will ask for: 0.1–0.3 s each, in which a page that switches to it would be deaf.
 * Sound that comes meanwhile waits in the worker's queue and is heard after it.
 */
export function warmEngine({ engine, expected }: RecogniserEnvironment): void {
  for (const grammars of expected()) {
    const grammar = combined(grammars);
    if (grammar !== null) engine.warm(grammar);
  }
}

/** More than a page switches between. */
const MOST_COMBINED = 8;
const known: { readonly of: readonly WeightedGrammar[]; readonly text: string | null }[] = [];

/** Each session asks anew: of a text of 0.3 MB that takes 20 ms. */
function combined(grammars: readonly WeightedGrammar[]): string | null {
  const found = known.find(({ of }) => areSame(of, grammars));
  if (found !== undefined) return found.text;
  const text = combineGrammars(grammars);
  known.unshift({ of: grammars, text });
  known.splice(MOST_COMBINED);
  return text;
}

const areSame = (some: readonly WeightedGrammar[], others: readonly WeightedGrammar[]): boolean =>
  some.length === others.length &&
  some.every(({ text, weight }, at) => others[at]?.text === text && others[at].weight === weight);

type Read =
  | { readonly kind: 'read'; readonly text: string }
  | { readonly kind: 'failed'; readonly message: string };

/** A page that sets none has said nothing that it waits for: whatever is said to it matches nothing. */
const NO_GRAMMAR = { text: '#JSGF V1.0; grammar none; public <none> = <VOID>;', weight: 1 };

async function readGrammar(
  { fetchText }: RecogniserEnvironment,
  { grammars }: Snapshot,
): Promise<Read> {
  const texts = await readGrammars(grammars, fetchText).catch(() => null);
  if (texts === null) return { kind: 'failed', message: 'A grammar could not be fetched.' };
  const text = combined(texts.length === 0 ? [NO_GRAMMAR] : texts);
  return text === null
    ? { kind: 'failed', message: 'No grammar in `grammars` has a public rule.' }
    : { kind: 'read', text };
}

const refuse = (error: SpeechRecognitionErrorCode, message: string): Prepared => ({
  kind: 'failed',
  error,
  message,
});
