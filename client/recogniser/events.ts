import { isResultList, type SpeechRecognitionResultList } from './results.ts';
import {
  requiredMember,
  toDictionary,
  toDomString,
  toEnum,
  toUnsignedLong,
} from './web-idl/conversions.ts';
import { exposeInterface } from './web-idl/expose-interface.ts';

export const ERROR_CODES = [
  'no-speech',
  'aborted',
  'audio-capture',
  'network',
  'not-allowed',
  'service-not-allowed',
  'language-not-supported',
  'phrases-not-supported',
] as const;

export type SpeechRecognitionErrorCode = (typeof ERROR_CODES)[number];

export interface SpeechRecognitionEventInit extends EventInit {
  readonly resultIndex?: number;
  readonly results: SpeechRecognitionResultList;
}

export class SpeechRecognitionEvent extends Event {
  readonly #resultIndex: number;
  readonly #results: SpeechRecognitionResultList;

  constructor(type: string, eventInitDict: SpeechRecognitionEventInit) {
    super(type, eventInitDict);
    const read = toDictionary(eventInitDict);
    this.#resultIndex = toUnsignedLong(read('resultIndex') ?? 0);
    const results = requiredMember(read, 'results');
    if (!isResultList(results))
      throw new TypeError('results must be a SpeechRecognitionResultList.');
    this.#results = results;
  }

  get resultIndex(): number {
    return this.#resultIndex;
  }

  get results(): SpeechRecognitionResultList {
    return this.#results;
  }
}

export interface SpeechRecognitionErrorEventInit extends EventInit {
  readonly error: SpeechRecognitionErrorCode;
  readonly message?: string;
}

export class SpeechRecognitionErrorEvent extends Event {
  readonly #error: SpeechRecognitionErrorCode;
  readonly #message: string;

  constructor(type: string, eventInitDict: SpeechRecognitionErrorEventInit) {
    super(type, eventInitDict);
    const read = toDictionary(eventInitDict);
    this.#error = toEnum(requiredMember(read, 'error'), ERROR_CODES);
    const message = read('message');
    this.#message = message === undefined ? '' : toDomString(message);
  }

  get error(): SpeechRecognitionErrorCode {
    return this.#error;
  }

  get message(): string {
    return this.#message;
  }
}

exposeInterface(SpeechRecognitionEvent, 'SpeechRecognitionEvent');
exposeInterface(SpeechRecognitionErrorEvent, 'SpeechRecognitionErrorEvent');

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
