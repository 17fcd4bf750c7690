import type { VoiceProfile } from '../../core/hearing/voice/voice-profile.ts';
import { readVoice } from '../../core/wire/voice-schema.ts';
import type { GiveLesson } from '../recogniser/worker/lesson.ts';
import type { KeptVoice } from '../offline/kept-voice.ts';
import type {
  Conclusion,
  LastReading,
  Lessons,
  TeachingState,
  VoiceKnown,
} from './teaching-state.ts';

/** What came of waiting for one prompt to be read. */
export type Read = 'spoken' | 'silence' | 'stopped' | 'failed';

export interface TeachingPorts {
  readonly prompts: readonly string[];
  readonly giveLesson: GiveLesson;
  /** Has the engine ready; false where it does not come. */
  readonly load: () => Promise<boolean>;
  readonly openMicrophone: () => Promise<boolean>;
  readonly closeMicrophone: () => void;
  /** Hears one prompt, once; `onHearing` when sound flows. */
  readonly read: (prompt: string, onHearing: () => void) => Promise<Read>;
  /** Ends the reading under way: it gives `stopped`. */
  readonly stopReading: () => void;
  readonly kept: KeptVoice;
}

/** Teaches the page one voice, prompt by prompt, and keeps what was learnt. */
export interface VoiceTeaching {
  readonly state: () => TeachingState;
  readonly subscribe: (listener: () => void) => () => void;
  /** Reads what is kept and hears by it. */
  readonly start: () => Promise<void>;
  /** Looks again whether the engine that is loaded by now can use what is kept. */
  readonly refresh: () => Promise<void>;
  /** Begins, or goes on where it was stopped. */
  readonly teach: () => Promise<void>;
  readonly stop: () => void;
  readonly close: () => void;
  readonly forget: () => Promise<void>;
}

/** What was not heard well is read again at most twice, then left out. */
const MOST_TRIES = 3;
/** Silence this often in a row: nobody is there. */
const MOST_SILENCES = 3;

export function createVoiceTeaching(ports: TeachingPorts): VoiceTeaching {
  return new Teaching(ports);
}

class Teaching implements VoiceTeaching {
  readonly #ports: TeachingPorts;
  readonly #listeners = new Set<() => void>();
  #state: TeachingState = { known: { kind: 'none' }, lessons: { kind: 'closed' }, resumesAt: 0 };
  #voice: VoiceProfile | null = null;
  /** Which run of lessons: what an earlier one still awaits must not go on. */
  #run = 0;

  constructor(ports: TeachingPorts) {
    this.#ports = ports;
  }

  readonly state = (): TeachingState => this.#state;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => void this.#listeners.delete(listener);
  };

  readonly start = async (): Promise<void> => {
    const text = await this.#ports.kept.read();
    if (text === null) return;
    const outcome = readVoice(text);
    if (outcome.kind === 'damaged') this.#know({ kind: 'damaged' });
    else await this.#hearBy(outcome.voice);
  };

  readonly refresh = async (): Promise<void> => {
    if (this.#voice !== null) await this.#hearBy(this.#voice);
  };

  readonly teach = async (): Promise<void> => {
    this.#run += 1;
    const run = this.#run;
    this.#show({ kind: 'opening' });
    if (!(await this.#ports.openMicrophone())) {
      this.#show({ kind: 'trouble', trouble: 'noMicrophone' });
      return;
    }
    const isReady = (await this.#ports.load()) && (await this.#begin());
    if (run !== this.#run) return;
    if (isReady) await this.#readFrom(this.#state.resumesAt, run);
    else this.#trouble('learnsNothing');
  };

  readonly stop = (): void => {
    const { lessons } = this.#state;
    this.#run += 1;
    this.#ports.stopReading();
    this.#ports.closeMicrophone();
    if (lessons.kind === 'reading') this.#set({ resumesAt: lessons.at });
    this.#show({ kind: 'closed' });
  };

  readonly close = (): void => this.#show({ kind: 'closed' });

  readonly forget = async (): Promise<void> => {
    await this.#ports.kept.write(null);
    this.#voice = null;
    this.#set({ resumesAt: 0 });
    await this.#ports.giveLesson({ kind: 'end' });
    await this.#ports.giveLesson({ kind: 'suit', voice: null });
    this.#know({ kind: 'none' });
  };

  async #begin(): Promise<boolean> {
    if (this.#state.resumesAt > 0) return true;
    const { kind } = await this.#ports.giveLesson({ kind: 'begin' });
    return kind === 'begun';
  }

  async #readFrom(first: number, run: number): Promise<void> {
    const { prompts } = this.#ports;
    let last: LastReading = 'none';
    for (let at = first; at < prompts.length; at += 1) {
      const read = await this.#readOne(at, last, run);
      if (read === null) return;
      last = read;
    }
    await this.#conclude(run);
  }

  /** Null where the lessons ended with it. */
  async #readOne(at: number, before: LastReading, run: number): Promise<LastReading | null> {
    const prompt = this.#ports.prompts[at] ?? '';
    let last = before;
    for (let tries = 0, silences = 0; tries < MOST_TRIES && silences < MOST_SILENCES;) {
      this.#show({ kind: 'reading', at, hearing: false, last });
      const read = await this.#ports.read(prompt, () => {
        if (run === this.#run) this.#show({ kind: 'reading', at, hearing: true, last });
      });
      if (run !== this.#run) return null;
      if (read === 'failed') return this.#trouble('broke');
      if (read !== 'spoken') {
        silences += 1;
        last = 'silence';
        continue;
      }
      const answer = await this.#ports.giveLesson({ kind: 'learn', words: prompt });
      if (run !== this.#run) return null;
      if (answer.kind !== 'heard') return this.#trouble('broke');
      if (answer.heard === 'learnt') return 'learnt';
      tries += 1;
      last = 'again';
      if (tries === MOST_TRIES) return 'skipped';
    }
    this.stop();
    return null;
  }

  async #conclude(run: number): Promise<void> {
    this.#ports.closeMicrophone();
    this.#set({ resumesAt: 0 });
    this.#show({ kind: 'working' });
    const answer = await this.#ports.giveLesson({ kind: 'conclude' });
    await this.#ports.giveLesson({ kind: 'end' });
    if (run !== this.#run) return;
    if (answer.kind !== 'concluded') {
      this.#trouble('broke');
      return;
    }
    const { conclusion } = answer;
    const kept = conclusion.kind === 'better' ? await this.#keep(conclusion.profile) : null;
    this.#show({ kind: 'concluded', conclusion: kept ?? conclusion.kind });
  }

  /** Heard by from now on, whether or not the device lets it be kept. */
  async #keep(voice: VoiceProfile): Promise<Conclusion> {
    await this.#hearBy(voice);
    return (await this.#ports.kept.write(JSON.stringify(voice))) ? 'better' : 'notKept';
  }

  async #hearBy(voice: VoiceProfile): Promise<void> {
    this.#voice = voice;
    const answer = await this.#ports.giveLesson({ kind: 'suit', voice });
    const isOther = answer.kind === 'suited' && !answer.fits;
    this.#know({ kind: isOther ? 'otherModel' : 'learnt' });
  }

  #trouble(trouble: 'learnsNothing' | 'broke'): null {
    this.#ports.closeMicrophone();
    this.#set({ resumesAt: 0 });
    this.#show({ kind: 'trouble', trouble });
    return null;
  }

  #know(known: VoiceKnown): void {
    this.#set({ known });
  }

  #show(lessons: Lessons): void {
    this.#set({ lessons });
  }

  #set(change: Partial<TeachingState>): void {
    this.#state = { ...this.#state, ...change };
    for (const listener of this.#listeners) listener();
  }
}
