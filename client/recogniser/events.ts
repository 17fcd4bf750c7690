import type { SpeechRecognitionResultList } from './results.ts';

export type SpeechRecognitionErrorCode =
  | 'no-speech'
  | 'aborted'
  | 'audio-capture'
  | 'network'
  | 'not-allowed'
  | 'service-not-allowed'
  | 'language-not-supported'
  | 'phrases-not-supported';

export interface SpeechRecognitionEventInit extends EventInit {
  readonly resultIndex?: number;
  readonly results: SpeechRecognitionResultList;
}

export class SpeechRecognitionEvent extends Event {
  readonly resultIndex: number;
  readonly results: SpeechRecognitionResultList;

  constructor(type: string, init: SpeechRecognitionEventInit) {
    super(type, init);
    this.resultIndex = init.resultIndex ?? 0;
    this.results = init.results;
  }
}

export interface SpeechRecognitionErrorEventInit extends EventInit {
  readonly error: SpeechRecognitionErrorCode;
  readonly message?: string;
}

export class SpeechRecognitionErrorEvent extends Event {
  readonly error: SpeechRecognitionErrorCode;
  readonly message: string;

  constructor(type: string, init: SpeechRecognitionErrorEventInit) {
    super(type, init);
    this.error = init.error;
    this.message = init.message ?? '';
  }
}

export interface RecognitionEvents {
  readonly audiostart: Event;
  readonly soundstart: Event;
  readonly speechstart: Event;
  readonly speechend: Event;
  readonly soundend: Event;
  readonly audioend: Event;
  readonly result: SpeechRecognitionEvent;
  readonly nomatch: SpeechRecognitionEvent;
  readonly error: SpeechRecognitionErrorEvent;
  readonly start: Event;
  readonly end: Event;
}

export const EVENT_NAMES = [
  'audiostart',
  'soundstart',
  'speechstart',
  'speechend',
  'soundend',
  'audioend',
  'result',
  'nomatch',
  'error',
  'start',
  'end',
] as const satisfies readonly (keyof RecognitionEvents)[];
