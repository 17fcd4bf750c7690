import { createEndpointer, type Endpointer } from '../../core/hearing/endpointer.ts';
import { createFramer } from '../../core/hearing/framer.ts';
import { levelFromDb } from '../../core/hearing/level.ts';
import type { CaptureOutcome } from './capture.ts';
import type { Finished } from './engine.ts';
import type { RecogniserEnvironment } from './environment.ts';
import { SpeechRecognitionErrorEvent, type SpeechRecognitionErrorCode } from './events.ts';
import { prepareEngine, warmEngine } from './prepare-engine.ts';
import { createTranscript, type Transcript } from './transcript.ts';
import type { Snapshot } from './snapshot.ts';
import { createUtteranceFeed, type UtteranceFeed } from './utterance-feed.ts';

/** Where a session stands; the interval events fire in pairs, so those begun are remembered apart. */
type Phase = 'starting' | 'running' | 'finishing' | 'over';

/** An AudioContext that the browser keeps suspended never delivers: better an error than a deaf page. */
const NO_AUDIO_MS = 5_000;

export interface SessionHost {
  /** Queues the dispatch: events leave in the order given, each in a task of its own. */
  readonly fire: (event: Event) => void;
  /** From now on no result is dispatched, not even one that is already queued. */
  readonly silence: () => void;
  /** Called in the task of the event that ends the session, before it is dispatched. */
  readonly fireLast: (event: Event) => void;
}

/** One start() of a recogniser, from the checks to `end`. */
export class Session {
  #phase: Phase = 'starting';
  #audioStarted = false;
  #speechStarted = false;
  #speaking = false;
  #stopAsked = false;
  #asked: Promise<void> | null = null;
  #capture: CaptureOutcome | null = null;
  #stopWaiting: () => void = () => undefined;
  #stopWatching: () => void = () => undefined;
  readonly #endpointer: Endpointer;
  readonly #cut = createFramer();
  readonly #feed: UtteranceFeed;
  readonly #transcript: Transcript;
  readonly #environment: RecogniserEnvironment;
  readonly #host: SessionHost;
  readonly #wanted: Snapshot;

  constructor(environment: RecogniserEnvironment, host: SessionHost, wanted: Snapshot) {
    this.#environment = environment;
    this.#host = host;
    this.#wanted = wanted;
    this.#endpointer = createEndpointer(environment.endpointing, environment.room.floorDb);
    this.#feed = createUtteranceFeed(environment.engine);
    this.#transcript = createTranscript(wanted.maxAlternatives);
  }

  async run(track: MediaStreamTrack | null): Promise<void> {
    this.#stopWatching = this.#environment.onHidden(() => this.abort());
    const ready = await prepareEngine(this.#environment, this.#wanted);
    if (this.#isOver()) return;
    if (ready.kind === 'failed') {
      this.#fail(ready.error, ready.message);
      return;
    }
    const capture = await this.#environment.capture.open(track, {
      onSamples: (samples) => this.#hear(samples),
      onLost: () => this.#lose(),
    });
    this.#opened(capture);
  }

  /** No more sound from now on; what was heard so far is still answered. */
  stop(): void {
    if (this.#phase === 'running') this.#finish();
    else this.#stopAsked = true;
  }

  /** Nothing is answered any more. */
  abort(): void {
    this.#host.silence();
    if (this.#isOver()) return;
    this.#environment.engine.reset();
    this.#fail('aborted', '');
  }

  #opened(capture: CaptureOutcome): void {
    if (this.#isOver()) {
      if (capture.kind === 'open') capture.close();
      return;
    }
    this.#capture = capture;
    if (capture.kind === 'refused') {
      if (capture.error === 'audio-capture') this.#host.fire(new Event('start'));
      this.#fail(capture.error, capture.message);
      return;
    }
    this.#phase = 'running';
    this.#host.fire(new Event('start'));
    if (this.#wanted.interimResults) {
      this.#environment.engine.listen((words) => this.#guess(words));
    }
    if (this.#stopAsked) {
      this.#finish();
      return;
    }
    this.#stopWaiting = this.#environment.after(NO_AUDIO_MS, () =>
      this.#fail(
        'audio-capture',
        `The microphone gave no sound for ${NO_AUDIO_MS / 1000} seconds.`,
      ),
    );
  }

  #hear(samples: Float32Array): void {
    if (this.#phase !== 'running') return;
    if (!this.#audioStarted) this.#startAudio();
    for (const frame of this.#cut(samples)) this.#hearFrame(frame);
  }

  #hearFrame(frame: Float32Array): void {
    if (this.#phase !== 'running') return;
    const event = this.#endpointer.accept(frame);
    this.#environment.onLevel(levelFromDb(this.#endpointer.levelDb()));
    this.#feed.take(frame, this.#speaking);
    if (event === 'noSpeech' && !this.#speechStarted) {
      this.#fail('no-speech', '');
      return;
    }
    if (event === 'speechStarted') this.#startSpeech();
    if (event === 'speechEnded') this.#endUtterance();
  }

  #startAudio(): void {
    this.#audioStarted = true;
    this.#stopWaiting();
    this.#host.fire(new Event('audiostart'));
    warmEngine(this.#environment);
  }

  /** One pair of sound and speech events a session, as Chromium has them. */
  #startSpeech(): void {
    this.#speaking = true;
    if (this.#speechStarted) return;
    this.#speechStarted = true;
    this.#host.fire(new Event('soundstart'));
    this.#host.fire(new Event('speechstart'));
  }

  #endUtterance(): void {
    if (!this.#wanted.continuous) {
      this.#finish();
      return;
    }
    this.#speaking = false;
    this.#feed.flush();
    this.#ask();
  }

  /** Utterances are answered in order: `end` waits for the last one. */
  #ask(): void {
    this.#asked = this.#environment.engine.finish().then((finished) => {
      if (!this.#isOver()) this.#deliver(finished);
    });
  }

  #guess(words: string): void {
    if (this.#phase !== 'running' || !this.#speechStarted) return;
    const event = this.#transcript.guess(words);
    if (event !== null) this.#host.fire(event);
  }

  /** Closes the ear, then answers what was heard. */
  #finish(): void {
    this.#phase = 'finishing';
    if (this.#speaking) this.#feed.flush();
    this.#closeEar();
    if (this.#speaking) this.#ask();
    if (this.#asked === null) this.#end();
    else void this.#asked.then(() => this.#end());
  }

  #deliver(finished: Finished): void {
    if (finished.kind === 'failed') {
      this.#fail('service-not-allowed', finished.message);
      return;
    }
    const event = this.#transcript.settle(finished.hearing);
    if (event !== null) this.#host.fire(event);
  }

  /** A microphone taken away in the middle of a word still leaves the words before. */
  #lose(): void {
    if (this.#phase !== 'running') return;
    if (this.#speaking) this.#finish();
    else this.#fail('audio-capture', 'The microphone was taken away.');
  }

  #fail(error: SpeechRecognitionErrorCode, message: string): void {
    if (this.#isOver()) return;
    this.#closeEar();
    this.#phase = 'over';
    this.#host.fireLast(new SpeechRecognitionErrorEvent('error', { error, message }));
    this.#host.fireLast(new Event('end'));
  }

  #end(): void {
    if (this.#isOver()) return;
    this.#phase = 'over';
    this.#host.fireLast(new Event('end'));
  }

  /** Speech, sound and audio end in this order, each only if it began. */
  #closeEar(): void {
    this.#stopWaiting();
    this.#stopWatching();
    this.#environment.engine.listen(null);
    if (this.#capture?.kind === 'open') this.#capture.close();
    this.#capture = null;
    if (this.#audioStarted) this.#environment.room.floorDb = this.#endpointer.floorDb();
    this.#environment.onLevel(0);
    if (this.#speechStarted) {
      this.#host.fire(new Event('speechend'));
      this.#host.fire(new Event('soundend'));
    }
    if (this.#audioStarted) this.#host.fire(new Event('audioend'));
    this.#speechStarted = false;
    this.#audioStarted = false;
  }

  #isOver(): boolean {
    return this.#phase === 'over';
  }
}
