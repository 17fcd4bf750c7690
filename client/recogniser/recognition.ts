import type { RecogniserEnvironment } from './environment.ts';
import { EVENT_NAMES, type RecognitionEvents } from './events.ts';
import { SpeechGrammarList } from './grammars.ts';
import { defineHandlers, type Handler } from './handlers.ts';
import type { SpeechRecognitionPhrase } from './phrase.ts';
import { Session } from './session.ts';
import type { Snapshot } from './snapshot.ts';

/**
 * The standard's SpeechRecognition over an engine of ours (Web Speech API, WebAudio/web-speech-api).
 * Where browsers differ, the order of events is Chromium's.
 */
export class Recognition extends EventTarget {
  declare onaudiostart: Handler<'audiostart'>;
  declare onsoundstart: Handler<'soundstart'>;
  declare onspeechstart: Handler<'speechstart'>;
  declare onspeechend: Handler<'speechend'>;
  declare onsoundend: Handler<'soundend'>;
  declare onaudioend: Handler<'audioend'>;
  declare onresult: Handler<'result'>;
  declare onnomatch: Handler<'nomatch'>;
  declare onerror: Handler<'error'>;
  declare onstart: Handler<'start'>;
  declare onend: Handler<'end'>;

  grammars = new SpeechGrammarList();
  lang = '';
  continuous = false;
  interimResults = false;
  unspokenPunctuation = false;
  maxAlternatives = 1;
  /** Always so, whatever it is set to: no sound leaves the device. */
  processLocally = false;
  phrases: SpeechRecognitionPhrase[] = [];

  readonly #environment: RecogniserEnvironment;
  #session: Session | null = null;

  constructor(environment: RecogniserEnvironment) {
    super();
    this.#environment = environment;
  }

  /** Throws InvalidStateError while a session runs or when the track is not live sound. */
  start(audioTrack?: MediaStreamTrack): void {
    if (this.#session !== null) {
      throw new DOMException('recognition has already started', 'InvalidStateError');
    }
    if (audioTrack !== undefined && !isLiveSound(audioTrack)) {
      throw new DOMException('the track must be live audio', 'InvalidStateError');
    }
    const session = this.#createSession();
    this.#session = session;
    void session.run(audioTrack ?? null);
  }

  stop(): void {
    this.#session?.stop();
  }

  abort(): void {
    this.#session?.abort();
  }

  override addEventListener<Name extends keyof RecognitionEvents>(
    type: Name,
    listener: (this: Recognition, event: RecognitionEvents[Name]) => void,
    options?: boolean | AddEventListenerOptions,
  ): void;
  override addEventListener(
    type: string,
    listener: EventListenerOrEventListenerObject | null,
    options?: boolean | AddEventListenerOptions,
  ): void;
  override addEventListener(
    type: string,
    listener: EventListenerOrEventListenerObject | null,
    options?: boolean | AddEventListenerOptions,
  ): void {
    super.addEventListener(type, listener, options);
  }

  #createSession(): Session {
    let aborted = false;
    const fire = (event: Event): void => {
      this.#environment.queueTask(() => {
        // What was on its way when abort() returned must not arrive any more.
        const late = aborted && (event.type === 'result' || event.type === 'nomatch');
        if (!late) this.dispatchEvent(event);
      });
    };
    const session: Session = new Session(
      this.#environment,
      {
        fire,
        silence: () => {
          aborted = true;
        },
        fireLast: (event) => {
          this.#environment.queueTask(() => {
            if (this.#session === session) this.#session = null;
            this.dispatchEvent(event);
          });
        },
      },
      this.#snapshot(),
    );
    return session;
  }

  #snapshot(): Snapshot {
    return {
      lang: this.lang,
      continuous: this.continuous,
      interimResults: this.interimResults,
      maxAlternatives: this.maxAlternatives,
      grammars: [...this.grammars],
    };
  }
}

defineHandlers(Recognition.prototype, EVENT_NAMES);

const isLiveSound = (track: MediaStreamTrack): boolean =>
  track.kind === 'audio' && track.readyState === 'live';
