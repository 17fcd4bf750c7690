import { createEndpointer, type Endpointer } from '../../core/hearing/endpointer.ts';
import { createFramer } from '../../core/hearing/framer.ts';
import { levelFromDb } from '../../core/hearing/level.ts';
import { isDigitalSilence } from '../../core/hearing/noise-meter.ts';
import type { CaptureOutcome, HeldBack } from './capture.ts';
import { SAMPLE_RATE_HZ } from '../../core/hearing/engine-parameters.ts';
import type { Standing } from '../../core/hearing/standing.ts';
import type { Finished, VoiceWatch } from './engine.ts';
import type { RecogniserEnvironment } from './environment.ts';
import { SpeechRecognitionErrorEvent, type SpeechRecognitionErrorCode } from './events.ts';
import { prepareEngine, warmEngine } from './prepare-engine.ts';
import { createRoomWatch, type RoomWatch } from './room-watch.ts';
import { createTranscript, type Transcript } from './transcript.ts';
import type { Snapshot } from './snapshot.ts';
import { createUtteranceFeed, type UtteranceFeed } from './utterance-feed.ts';
import { faultText } from './fault-text.ts';

/** Where a session stands; the interval events fire in pairs, so those begun are remembered apart. */
type Phase = 'starting' | 'running' | 'finishing' | 'over';

/** An AudioContext that the browser keeps suspended never delivers: better an error than a deaf page. */
const NO_AUDIO_MS = 5_000;
/** Ours: allowed to, a context runs within a fraction of a second of the press; started again, it was 32 s until told. */
const HELD_BACK_MS = 3_000;
/** A slow phone decodes a long sentence in four or five seconds; an engine that hangs never answers. */
const ANSWER_OVERDUE_MS = 20_000;

const HELD_BACK_MESSAGES: Record<HeldBack, string> = {
  blocked: 'The browser lets this page play nothing, so no sound comes.',
  interrupted: 'Something else has taken the sound, so none comes.',
};

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
  #watch: VoiceWatch | null = null;
  #stopWaiting: () => void = () => undefined;
  #stopWaitingHeldBack: () => void = () => undefined;
  #stopWaitingForAnswer: () => void = () => undefined;
  /** Whether sound came since the watchdog looked last. */
  #fed = false;
  /** Nothing but zeros so far: no room is so quiet, a muted headset is. */
  #digitalSilence = true;
  #stopWatching: () => void = () => undefined;
  readonly #endpointer: Endpointer;
  readonly #cut = createFramer();
  readonly #room: RoomWatch;
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
    this.#room = createRoomWatch(environment.onNoise);
    this.#feed = createUtteranceFeed(environment.engine);
    this.#transcript = createTranscript(wanted.maxAlternatives, wanted.phrases);
  }

  /** Never rejects: an engine or a microphone that breaks its port's promise still ends the session. */
  async run(track: MediaStreamTrack | null): Promise<void> {
    this.#stopWatching = this.#environment.onHidden(() => this.abort());
    try {
      await this.#open(track);
    } catch (error) {
      this.#fail('service-not-allowed', faultText(error));
    }
  }

  async #open(track: MediaStreamTrack | null): Promise<void> {
    const ready = await prepareEngine(this.#environment, this.#wanted, () => this.#isOver());
    if (ready === null || this.#isOver()) return;
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

  /** For another session, which takes the floor: what this one has answered already still arrives. */
  giveWay(): void {
    if (!this.#isOver()) this.abort();
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
    this.#environment.engine.listen((words, standing) => this.#guess(words, standing));
    if (this.#stopAsked) {
      this.#finish();
      return;
    }
    this.#watch =
      this.#environment.engine.watch?.((chances, untilSample) => {
        this.#endpointer.hearVoice(chances, (untilSample * 1000) / SAMPLE_RATE_HZ);
      }) ?? null;
    this.#watchForSound();
    this.#watchForHolding(capture.heldBack);
  }

  /** A telephone call or a sleeping headset stops the sound without ending the track. */
  #watchForSound(): void {
    this.#fed = false;
    this.#stopWaiting = this.#environment.after(NO_AUDIO_MS, () => {
      if (this.#fed) this.#watchForSound();
      else this.#fail('audio-capture', `No sound came for ${NO_AUDIO_MS / 1000} seconds.`);
    });
  }

  #watchForHolding(heldBack: (() => HeldBack | null) | undefined): void {
    if (heldBack === undefined) return;
    this.#stopWaitingHeldBack = this.#environment.after(HELD_BACK_MS, () => {
      const why = this.#audioStarted ? null : heldBack();
      if (why === null) return;
      this.#environment.onHeldBack(why);
      this.#fail('audio-capture', HELD_BACK_MESSAGES[why]);
    });
  }

  #hear(samples: Float32Array): void {
    if (this.#phase !== 'running') return;
    this.#fed = true;
    if (!this.#audioStarted) this.#startAudio();
    this.#watch?.accept(samples);
    try {
      for (const frame of this.#cut(samples)) this.#hearFrame(frame);
    } catch (error) {
      this.#fail('service-not-allowed', faultText(error));
    }
  }

  #hearFrame(frame: Float32Array): void {
    if (this.#phase !== 'running') return;
    this.#digitalSilence &&= isDigitalSilence(frame);
    this.#room.hear(frame, this.#speaking);
    const event = this.#endpointer.accept(frame);
    this.#environment.onLevel(levelFromDb(this.#endpointer.levelDb()));
    this.#feed.take(frame, this.#speaking);
    if (event === 'noSpeech' && !this.#speechStarted) {
      this.#failUnheard();
      return;
    }
    if (event === 'speechStarted') this.#startSpeech();
    if (event === 'speechEnded') this.#endUtterance();
  }

  #failUnheard(): void {
    if (this.#digitalSilence) this.#environment.onDigitalSilence();
    const why = this.#digitalSilence ? 'Only digital silence came: is the microphone muted?' : '';
    this.#fail('no-speech', why);
  }

  #startAudio(): void {
    this.#audioStarted = true;
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
    this.#room.sentenceEnded();
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
    this.#stopWaitingForAnswer();
    this.#stopWaitingForAnswer = this.#environment.after(ANSWER_OVERDUE_MS, () => {
      // The next session loads a new one.
      this.#environment.engine.dispose();
      this.#fail('service-not-allowed', 'The speech engine does not answer any more.');
    });
    const asked = this.#environment.engine
      .finish()
      .catch((error: unknown): Finished => ({ kind: 'failed', message: faultText(error) }))
      .then((finished) => {
        if (asked === this.#asked) this.#stopWaitingForAnswer();
        if (!this.#isOver()) this.#deliver(finished);
      });
    this.#asked = asked;
  }

  #guess(words: string, standing: Standing | null): void {
    if (this.#phase !== 'running' || !this.#speechStarted) return;
    this.#endpointer.understand(standing);
    if (!this.#wanted.interimResults) return;
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
    this.#stopWaitingForAnswer();
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
    this.#stopWaitingHeldBack();
    this.#stopWatching();
    this.#environment.engine.listen(null);
    this.#watch?.close();
    this.#watch = null;
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
