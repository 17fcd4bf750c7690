import { combineGrammars } from '../../core/hearing/jsgf.ts';
import type { EngineOutcome } from './engine.ts';
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

/** Loads the engine where that is still to do and gives it the session's grammars. */
export async function prepareEngine(
  environment: RecogniserEnvironment,
  wanted: Snapshot,
): Promise<Prepared> {
  if (!isSupportedLanguage(wanted.lang)) {
    return refuse('language-not-supported', `Only English is heard, not ${wanted.lang}.`);
  }
  const loaded = await environment.engine.load(environment.onProgress);
  if (loaded.kind === 'failed') return refuse('service-not-allowed', loaded.message);
  const set = await setGrammars(environment, wanted);
  return set.kind === 'failed' ? refuse('service-not-allowed', set.message) : set;
}

/**
 * Compiles what later sessions will ask for: 0.1–0.3 s each, in which a page that switches to it would be deaf.
 * Sound that comes meanwhile waits in the worker's queue and is heard after it.
 */
export function warmEngine({ engine, expected }: RecogniserEnvironment): void {
  for (const text of expected()) {
    const grammar = combineGrammars([{ text, weight: 1 }]);
    if (grammar !== null) engine.warm(grammar);
  }
}

async function setGrammars(
  environment: RecogniserEnvironment,
  wanted: Snapshot,
): Promise<EngineOutcome> {
  const texts = await readGrammars(wanted.grammars, environment.fetchText).catch(() => null);
  if (texts === null) return { kind: 'failed', message: 'A grammar could not be fetched.' };
  const grammar = combineGrammars(texts);
  return grammar === null
    ? { kind: 'failed', message: 'Set `grammars` to JSGF text with a public rule before start().' }
    : environment.engine.setGrammar(grammar);
}

const refuse = (error: SpeechRecognitionErrorCode, message: string): Prepared => ({
  kind: 'failed',
  error,
  message,
});
