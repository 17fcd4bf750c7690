import type { Clock } from '../../state/clock.ts';
import type { RecogniserReport, SentenceRecogniser } from '../sentence-recogniser.ts';
import { finalWords } from './final-words.ts';
import type {
  NativeClass,
  NativePhrase,
  NativeRecognition,
  NativeResult,
} from './native-recognition.ts';

export interface NativePorts {
  readonly native: NativeClass;
  readonly lang: string;
  /** Insist on this device: nothing is heard rather than sent away. */
  readonly onDevice: boolean;
  readonly clock: Clock;
  /** What the next sentence is likely to hold. */
  readonly phrases: () => readonly NativePhrase[];
  /** Whether the microphone is granted, refused, or still to be asked for. */
  readonly permission: () => Promise<PermissionState>;
  /** It is of no use here: network, languages, a device without the service. */
  readonly onUseless: () => void;
}

const MOST_ALTERNATIVES = 5;
/** A final is followed by the end within tenths of a second; one that is not is a session that hangs. */
const END_OVERDUE_MS = 1_500;
/** Where the microphone is granted, sound flows within a second; an installed page on iOS never gets any. */
const SOUND_OVERDUE_MS = 2_000;
/** A person may think over the browser's question. */
const ANSWER_OVERDUE_MS = 60_000;
/** Chrome waits eight seconds for speech and stops at silence: a session this long hears nothing any more. */
const SESSION_OVERDUE_MS = 60_000;
/** What fails once may be a dead spot; twice in a row is a browser that has no service here. */
const STRIKES = 2;

/** Never to be had, however often it is tried. */
/** By the standard, where phrases are given to a recogniser that takes none: what it hears by now it hears without. */
const NO_PHRASES = 'phrases-not-supported';

const USELESS: ReadonlySet<string> = new Set(['service-not-allowed', 'language-not-supported']);

export interface NativeSentences extends SentenceRecogniser {
  /** Resolves once the browser has let the microphone go. */
  readonly ended: () => Promise<void>;
}

/** Sentences through the browser's own recogniser: one a session, as many faults as it has kept away from the ear. */
export function createNativeSentences(ports: NativePorts): NativeSentences {
  let strikes = 0;
  let takesPhrases = true;
  let session: Session | null = null;

  const strike = (): void => {
    strikes += 1;
    if (strikes >= STRIKES) ports.onUseless();
  };

  return {
    load: () => Promise.resolve(),
    start({ report }) {
      // A new object each time: one that hung once may go on telling of its old session.
      session = new Session(ports, {
        report,
        strike,
        answered: () => {
          strikes = 0;
        },
        phrases: takesPhrases ? ports.phrases() : [],
        tookNone: () => {
          takesPhrases = false;
        },
      });
      session.start();
    },
    abort: () => session?.abort(),
    ended: () => session?.ended ?? Promise.resolve(),
  };
}

interface SessionHost {
  readonly report: (report: RecogniserReport) => void;
  readonly strike: () => void;
  /** The service behind it works: sound alone comes without a network too. */
  readonly answered: () => void;
  readonly phrases: readonly NativePhrase[];
  readonly tookNone: () => void;
}

/** From start() to `end`, or to when it is given up for lost. */
class Session {
  readonly #ports: NativePorts;
  readonly #host: SessionHost;
  readonly #recognition: NativeRecognition;
  /** Whatever happens: an end that does not come is given up for lost. */
  readonly ended: Promise<void>;
  #settle: () => void = () => undefined;
  #over = false;
  #sounded = false;
  #aborted = false;
  /** What is still on its way to be told. */
  #told: Promise<void> = Promise.resolve();
  #results: readonly NativeResult[] = [];
  #callOff: () => void = () => undefined;

  constructor(ports: NativePorts, host: SessionHost) {
    this.#ports = ports;
    this.#host = host;
    this.ended = new Promise((resolve) => {
      this.#settle = resolve;
    });
    this.#recognition = new ports.native();
    this.#recognition.lang = ports.lang;
    this.#recognition.continuous = false;
    this.#recognition.interimResults = false;
    this.#recognition.maxAlternatives = MOST_ALTERNATIVES;
    if (ports.onDevice) this.#recognition.processLocally = true;
    if (host.phrases.length > 0) this.#recognition.phrases = host.phrases;
    this.#listen();
  }

  start(): void {
    this.#watch(ANSWER_OVERDUE_MS, () => this.#giveUp());
    void this.#ports.permission().then((state) => {
      if (state === 'granted' && !this.#sounded) {
        this.#watch(SOUND_OVERDUE_MS, () => this.#giveUp());
      }
    });
    this.#recognition.start();
  }

  abort(): void {
    this.#aborted = true;
    if (this.#over) return;
    this.#watch(END_OVERDUE_MS, () => this.#end());
    this.#recognition.abort();
  }

  #listen(): void {
    this.#recognition.addEventListener('audiostart', () => this.#sound());
    this.#recognition.addEventListener('result', ({ results }) => this.#result(results));
    this.#recognition.addEventListener('nomatch', () => this.#tell({ kind: 'noMatch' }));
    this.#recognition.addEventListener('error', ({ error }) => this.#error(error));
    this.#recognition.addEventListener('end', () => this.#end());
  }

  #sound(): void {
    if (this.#over || this.#sounded) return;
    this.#sounded = true;
    this.#watch(SESSION_OVERDUE_MS, () => this.#cut());
    this.#tell({ kind: 'hearing' });
  }

  /** Kept until the session ends: what comes last has the most in it. */
  #result(results: ArrayLike<NativeResult>): void {
    if (this.#over) return;
    this.#results = Array.from(results);
    if (this.#results.some(({ isFinal }) => isFinal)) {
      this.#host.answered();
      this.#watch(END_OVERDUE_MS, () => this.#cut());
    }
  }

  #error(code: string): void {
    if (this.#over) return;
    if (code === 'no-speech') this.#host.answered();
    if (code === 'network') this.#host.strike();
    if (USELESS.has(code)) this.#ports.onUseless();
    if (code === NO_PHRASES) this.#host.tookNone();
    if (code === 'not-allowed') this.#refused();
    else this.#tell({ kind: 'error', error: code });
  }

  /** Android says the same of a microphone that another program holds: only the permission tells them apart. */
  #refused(): void {
    this.#told = this.#ports.permission().then((state) => {
      this.#host.report({ kind: 'error', error: state === 'granted' ? 'busy' : 'not-allowed' });
    });
  }

  #end(): void {
    if (this.#over) return;
    this.#over = true;
    this.#callOff();
    this.#settle();
    const alternatives = this.#aborted ? [] : finalWords(this.#results, MOST_ALTERNATIVES);
    if (alternatives.length > 0) this.#host.report({ kind: 'words', alternatives });
    void this.#told.then(() => this.#host.report({ kind: 'ended' }));
  }

  /** Nothing comes any more: what was said by now counts. */
  #cut(): void {
    this.#recognition.abort();
    this.#end();
  }

  #giveUp(): void {
    this.#host.strike();
    this.#tell({ kind: 'error', error: 'audio-capture' });
    this.#cut();
  }

  #tell(report: RecogniserReport): void {
    if (!this.#over) this.#host.report(report);
  }

  #watch(ms: number, onOverdue: () => void): void {
    this.#callOff();
    if (this.#over) return;
    this.#callOff = this.#ports.clock.after(ms, onOverdue);
  }
}
