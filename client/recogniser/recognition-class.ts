import type { RecogniserEnvironment } from './environment.ts';
import { isLanguageTag, isSupportedLanguage } from './languages.ts';
import { Recognition } from './recognition.ts';

export type AvailabilityStatus = 'unavailable' | 'downloadable' | 'downloading' | 'available';

export interface SpeechRecognitionOptions {
  readonly langs: readonly string[];
  readonly processLocally?: boolean;
  readonly quality?: 'command' | 'dictation' | 'conversation';
}

export interface SpeechRecognitionClass {
  new (): Recognition;
  readonly prototype: Recognition;
  /** Rejects with a SyntaxError for a tag that is not BCP 47. */
  available(options: SpeechRecognitionOptions): Promise<AvailabilityStatus>;
  /** Loads the model; false when it does not come or a language is not English. */
  install(options: SpeechRecognitionOptions): Promise<boolean>;
}

const OF_ENGINE = {
  absent: 'downloadable',
  loading: 'downloading',
  ready: 'available',
} as const;

/** The class over one environment: all its objects share the engine. */
export function createRecognitionClass(environment: RecogniserEnvironment): SpeechRecognitionClass {
  const queued = <Value>(value: Value): Promise<Value> =>
    new Promise((resolve) => environment.queueTask(() => resolve(value)));

  return class SpeechRecognition extends Recognition {
    constructor() {
      super(environment);
    }

    static async available({ langs }: SpeechRecognitionOptions): Promise<AvailabilityStatus> {
      checkTags(langs);
      const possible = langs.length > 0 && langs.every(isSupportedLanguage);
      return queued(possible ? OF_ENGINE[environment.engine.state()] : 'unavailable');
    }

    static async install({ langs }: SpeechRecognitionOptions): Promise<boolean> {
      checkTags(langs);
      if (langs.length === 0 || !langs.every(isSupportedLanguage)) return queued(false);
      const outcome = await environment.engine.load(environment.onProgress);
      return queued(outcome.kind === 'ready');
    }
  };
}

function checkTags(langs: readonly string[]): void {
  const wrong = langs.find((lang) => !isLanguageTag(lang));
  if (wrong !== undefined) throw new DOMException(`${wrong} is no language tag`, 'SyntaxError');
}
