import type { RecogniserEnvironment } from './environment.ts';
import { SpeechGrammarList } from './grammars.ts';
import { SpeechRecognitionPhrase } from './phrase.ts';
import { Session } from './session.ts';
import type { Snapshot } from './snapshot.ts';
import { observableArray } from './web-idl/observable-array.ts';

/** The engine hears one session at a time, whichever object it belongs to. */
export interface Floor {
  holder: Session | null;
}

/** What stands behind one SpeechRecognition object: its attributes and its session. */
export class RecognitionState {
  grammars = new SpeechGrammarList();
  lang = '';
  continuous = false;
  interimResults = false;
  /** Kept for pages that set it: a grammar's words have no punctuation. */
  unspokenPunctuation = false;
  maxAlternatives = 1;
  processLocally = false;
  readonly phrases = observableArray(toPhrase);

  readonly #environment: RecogniserEnvironment;
  readonly #floor: Floor;
  readonly #target: EventTarget;
  #session: Session | null = null;

  constructor(environment: RecogniserEnvironment, floor: Floor, target: EventTarget) {
    this.#environment = environment;
    this.#floor = floor;
    this.#target = target;
  }

  start(track: MediaStreamTrack | null): void {
    if (track !== null && !isLiveSound(track)) throw invalidState('The track must be live audio.');
    if (!this.#environment.page.isActive()) throw invalidState('The page is gone.');
    if (this.#session !== null) throw invalidState('Recognition has already started.');
    // As Chromium does it: whoever starts last is heard, and the one before is told.
    this.#floor.holder?.giveWay();
    const session = this.#createSession();
    this.#session = session;
    this.#floor.holder = session;
    void session.run(track);
  }

  stop(): void {
    this.#session?.stop();
  }

  abort(): void {
    this.#session?.abort();
  }

  #createSession(): Session {
    const { queueTask } = this.#environment;
    let aborted = false;
    const session: Session = new Session(
      this.#environment,
      {
        fire: (event) =>
          queueTask(() => {
            // What was on its way when abort() returned must not arrive any more.
            const late = aborted && (event.type === 'result' || event.type === 'nomatch');
            if (!late) this.#target.dispatchEvent(event);
          }),
        silence: () => {
          aborted = true;
        },
        fireLast: (event) =>
          queueTask(() => {
            this.#leave(session);
            this.#target.dispatchEvent(event);
          }),
      },
      this.#snapshot(),
    );
    return session;
  }

  #leave(session: Session): void {
    if (this.#session === session) this.#session = null;
    if (this.#floor.holder === session) this.#floor.holder = null;
  }

  #snapshot(): Snapshot {
    return {
      lang: this.lang === '' ? this.#environment.page.language() : this.lang,
      continuous: this.continuous,
      interimResults: this.interimResults,
      maxAlternatives: this.maxAlternatives,
      processLocally: this.processLocally,
      grammars: [...this.grammars],
      phrases: () => this.phrases.array,
    };
  }
}

function toPhrase(value: unknown): SpeechRecognitionPhrase {
  if (value instanceof SpeechRecognitionPhrase) return value;
  throw new TypeError('phrases take SpeechRecognitionPhrase objects only.');
}

const isLiveSound = (track: MediaStreamTrack): boolean =>
  track.kind === 'audio' && track.readyState === 'live';

const invalidState = (message: string): DOMException =>
  new DOMException(message, 'InvalidStateError');
