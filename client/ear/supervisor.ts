import type { Alternative } from '../../core/language/choose-understanding.ts';
import type { Expectation } from '../../core/language/context.ts';
import type { KnownNames } from '../../core/language/names/known-names.ts';
import type { WeightedGrammar } from '../../core/hearing/jsgf.ts';
import type { Clock } from '../state/clock.ts';
import type { Deafness } from './deafness.ts';
import type { Heard } from './ear.ts';
import type { RecogniserReport, SentenceRecogniser } from './sentence-recogniser.ts';

export interface SupervisorPorts {
  readonly recogniser: SentenceRecogniser;
  readonly clock: Clock;
  readonly grammarsFor: (expectation: Expectation, names: KnownNames) => readonly WeightedGrammar[];
  readonly report: (heard: Heard) => void;
  /** Each start costs something: after silence it waits to be asked again, and says so. */
  readonly restsAfterSilence?: boolean;
}

export interface Wanted {
  /** Null where the recogniser has a microphone of its own. */
  readonly track: MediaStreamTrack | null;
  readonly expectation: Expectation;
  readonly names: KnownNames;
}

type State =
  | { readonly kind: 'idle' }
  | { readonly kind: 'running'; readonly wanted: Wanted; readonly since: number }
  /** Told to stop, or done: nothing may start before it has ended. */
  | { readonly kind: 'ending'; readonly next: Wanted | null; readonly callOff: () => void }
  | { readonly kind: 'waiting'; readonly wanted: Wanted; readonly callOff: () => void };

/** A session that ends sooner was not silence but trouble: starting again at once would spin. */
const SHORTEST_SESSION_MS = 1_000;
const FIRST_WAIT_MS = 250;
const FAILURES_BEFORE_DEAF = 5;
/** An `ended` that is this late is not coming. */
const END_OVERDUE_MS = 3_000;

/** Errors that pass by themselves: silence, and our own stopping. */
const TRANSIENT: ReadonlySet<string> = new Set(['no-speech', 'aborted']);

/** Keeps a one-sentence recogniser going for as long as somebody wants to hear. */
export class Supervisor {
  readonly #ports: SupervisorPorts;
  #state: State = { kind: 'idle' };
  /** Reports of an earlier session are not for this one. */
  #session = 0;
  #failures = 0;
  #errored = false;
  /** Out of sight nothing is heard: what is wanted waits for the page to come back. */
  #hidden = false;
  #wantedThen: Wanted | null = null;

  constructor(ports: SupervisorPorts) {
    this.#ports = ports;
  }

  listen(wanted: Wanted): void {
    if (this.#hidden) this.#wantedThen = wanted;
    else this.#turnTo(wanted);
  }

  gate(): void {
    this.#wantedThen = null;
    this.#turnTo(null);
  }

  /** Half a sentence is not worth finishing, and a microphone that gives nothing is no failure then. */
  hide(): void {
    if (this.#hidden) return;
    this.#hidden = true;
    this.#wantedThen = this.#wanted();
    this.#turnTo(null);
  }

  /** Hears on where it left off; tells whether it had to. */
  show(): boolean {
    const wanted = this.#wantedThen;
    this.#hidden = false;
    this.#wantedThen = null;
    if (wanted) this.#turnTo(wanted);
    return wanted !== null;
  }

  /** Whether somebody waits to be heard just now. */
  hears(): boolean {
    return !this.#hidden && this.#wanted() !== null;
  }

  #wanted(): Wanted | null {
    const state = this.#state;
    if (state.kind === 'running' || state.kind === 'waiting') return state.wanted;
    return state.kind === 'ending' ? state.next : null;
  }

  #turnTo(next: Wanted | null): void {
    const state = this.#state;
    if (state.kind === 'ending') {
      this.#state = { ...state, next };
    } else if (state.kind === 'running') {
      this.#state = this.#ending(next);
      this.#ports.recogniser.abort();
    } else {
      if (state.kind === 'waiting') state.callOff();
      this.#state = { kind: 'idle' };
      if (next) this.#start(next);
    }
  }

  #start(wanted: Wanted): void {
    const mine = (this.#session += 1);
    this.#errored = false;
    this.#state = { kind: 'running', wanted, since: this.#ports.clock.now() };
    try {
      this.#ports.recogniser.start({
        track: wanted.track,
        grammars: this.#ports.grammarsFor(wanted.expectation, wanted.names),
        report: (report) => {
          if (mine === this.#session) this.#handle(report);
        },
      });
    } catch (error) {
      console.error(error);
      this.#failed(wanted);
    }
  }

  #handle(report: RecogniserReport): void {
    if (report.kind === 'ended') this.#ended();
    else if (this.#state.kind !== 'running') return;
    else if (report.kind === 'hearing' || report.kind === 'guess') this.#ports.report(report);
    else if (report.kind === 'error') this.#error(report.error, this.#state.wanted);
    else this.#heard(report.kind === 'words' ? report.alternatives : []);
  }

  #heard(offered: readonly Alternative[]): void {
    const alternatives = offered
      .map(({ words, confidence }) => ({ words: words.trim(), confidence }))
      .filter(({ words }) => words !== '');
    this.#failures = 0;
    this.#state = this.#ending(null);
    this.#ports.report(
      alternatives.length === 0 ? { kind: 'unclear' } : { kind: 'words', alternatives },
    );
  }

  #error(code: string, { track }: Wanted): void {
    if (TRANSIENT.has(code)) return;
    this.#errored = true;
    if (code === 'not-allowed') this.#deafen('refused');
    if (code === 'audio-capture' && track?.readyState === 'ended') this.#deafen('takenAway');
  }

  #ended(): void {
    const state = this.#state;
    if (state.kind === 'ending') {
      state.callOff();
      this.#state = { kind: 'idle' };
      if (state.next) this.#start(state.next);
    } else if (state.kind === 'running') {
      this.#endedUnheard(state);
    }
  }

  #endedUnheard({ wanted, since }: Extract<State, { kind: 'running' }>): void {
    if (this.#errored || this.#ports.clock.now() - since < SHORTEST_SESSION_MS) {
      this.#failed(wanted);
    } else {
      this.#failures = 0;
      this.#goOn(wanted);
    }
  }

  #goOn(wanted: Wanted): void {
    if (this.#ports.restsAfterSilence !== true) {
      this.#start(wanted);
      return;
    }
    this.#state = { kind: 'idle' };
    this.#ports.report({ kind: 'news', news: 'rests' });
  }

  #failed(wanted: Wanted): void {
    this.#failures += 1;
    if (this.#failures >= FAILURES_BEFORE_DEAF) {
      this.#deafen('recogniserFailed');
      return;
    }
    const waitMs = FIRST_WAIT_MS * 2 ** (this.#failures - 1);
    const callOff = this.#ports.clock.after(waitMs, () => this.#start(wanted));
    this.#state = { kind: 'waiting', wanted, callOff };
  }

  #deafen(why: Deafness): void {
    this.#session += 1;
    this.#failures = 0;
    this.#state = { kind: 'idle' };
    this.#ports.recogniser.abort();
    this.#ports.report({ kind: 'deaf', why });
  }

  #ending(next: Wanted | null): State {
    const callOff = this.#ports.clock.after(END_OVERDUE_MS, () => this.#ended());
    return { kind: 'ending', next, callOff };
  }
}
