import { EVENT_NAMES } from './events.ts';
import type { RecogniserEnvironment } from './environment.ts';
import { isGrammarList, type SpeechGrammarList } from './grammars.ts';
import { defineHandlers } from './handlers.ts';
import { availability, install, type AvailabilityStatus } from './on-device.ts';
import type { Recognition } from './recognition.ts';
import { RecognitionState, type Floor } from './recognition-state.ts';
import { isObject, toBoolean, toDomString, toUnsignedLong } from './web-idl/conversions.ts';
import { defineAttribute, exposeInterface } from './web-idl/expose-interface.ts';

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

/** The class over one environment: all its objects share the engine. */
export function createRecognitionClass(environment: RecogniserEnvironment): SpeechRecognitionClass {
  const floor: Floor = { holder: null };

  class SpeechRecognition extends EventTarget {
    declare grammars: Recognition['grammars'];
    declare lang: Recognition['lang'];
    declare continuous: Recognition['continuous'];
    declare interimResults: Recognition['interimResults'];
    declare unspokenPunctuation: Recognition['unspokenPunctuation'];
    declare maxAlternatives: Recognition['maxAlternatives'];
    declare processLocally: Recognition['processLocally'];
    declare phrases: Recognition['phrases'];
    declare onaudiostart: Recognition['onaudiostart'];
    declare onsoundstart: Recognition['onsoundstart'];
    declare onspeechstart: Recognition['onspeechstart'];
    declare onspeechend: Recognition['onspeechend'];
    declare onsoundend: Recognition['onsoundend'];
    declare onaudioend: Recognition['onaudioend'];
    declare onresult: Recognition['onresult'];
    declare onnomatch: Recognition['onnomatch'];
    declare onerror: Recognition['onerror'];
    declare onstart: Recognition['onstart'];
    declare onend: Recognition['onend'];

    constructor() {
      super();
      states.set(this, { state: new RecognitionState(environment, floor, this), target: this });
    }

    start(...given: readonly [audioTrack?: MediaStreamTrack]): void {
      stateOf(this).start(given.length === 0 ? null : toTrack(given[0]));
    }

    stop(): void {
      stateOf(this).stop();
    }

    abort(): void {
      stateOf(this).abort();
    }

    static available(options: SpeechRecognitionOptions): Promise<AvailabilityStatus> {
      return availability(environment, options);
    }

    static install(options: SpeechRecognitionOptions): Promise<boolean> {
      return install(environment, options);
    }
  }

  defineMembers(SpeechRecognition.prototype);
  exposeInterface(SpeechRecognition, 'SpeechRecognition');
  return SpeechRecognition;
}

interface Behind {
  readonly state: RecognitionState;
  readonly target: EventTarget;
}

const states = new WeakMap<object, Behind>();

function behind(object: object): Behind {
  const found = states.get(object);
  if (found === undefined) throw new TypeError('Illegal invocation');
  return found;
}

const stateOf = (object: object): RecognitionState => behind(object).state;

type Simple =
  | 'lang'
  | 'continuous'
  | 'interimResults'
  | 'unspokenPunctuation'
  | 'maxAlternatives'
  | 'processLocally'
  | 'grammars';

const SETTERS: Record<Simple, (state: RecognitionState, value: unknown) => void> = {
  grammars: (state, value) => (state.grammars = toGrammarList(value)),
  lang: (state, value) => (state.lang = toDomString(value)),
  continuous: (state, value) => (state.continuous = toBoolean(value)),
  interimResults: (state, value) => (state.interimResults = toBoolean(value)),
  unspokenPunctuation: (state, value) => (state.unspokenPunctuation = toBoolean(value)),
  maxAlternatives: (state, value) => (state.maxAlternatives = toUnsignedLong(value)),
  processLocally: (state, value) => (state.processLocally = toBoolean(value)),
};

function defineMembers(prototype: EventTarget): void {
  for (const name of SIMPLE) {
    const set = SETTERS[name];
    defineAttribute(prototype, name, {
      get() {
        return stateOf(this)[name];
      },
      set(value) {
        set(stateOf(this), value);
      },
    });
  }
  defineAttribute(prototype, 'phrases', {
    get() {
      return stateOf(this).phrases.array;
    },
    set(value) {
      stateOf(this).phrases.replace(value);
    },
  });
  defineHandlers(prototype, EVENT_NAMES, (object) => behind(object).target);
}

const SIMPLE = [
  'grammars',
  'lang',
  'continuous',
  'interimResults',
  'unspokenPunctuation',
  'maxAlternatives',
  'processLocally',
] as const satisfies readonly Simple[];

function toGrammarList(value: unknown): SpeechGrammarList {
  if (isGrammarList(value)) return value;
  throw new TypeError('grammars must be a SpeechGrammarList.');
}

/** By its shape: a track of another window is one too. */
function toTrack(value: MediaStreamTrack | undefined): MediaStreamTrack {
  if (!isObject(value) || !('kind' in value) || !('readyState' in value)) {
    throw new TypeError('start() takes a MediaStreamTrack.');
  }
  return value;
}
