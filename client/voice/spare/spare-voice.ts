import type { Clock } from '../../state/clock.ts';
import { breathsOf } from '../breaths.ts';
import type { Voice } from '../voice.ts';
import type { SpokenSound } from './flite.ts';
import type { FromVoice, ToVoice } from './protocol.ts';

export interface SpareVoicePorts {
  readonly openWorker: () => VoiceWorker;
  /** Plays a sound; `over` resolves when it is, or when it was stopped. Null where there is no Web Audio. */
  readonly createPlayer: () => SoundPlayer | null;
  readonly clock: Clock;
}

export interface VoiceWorker {
  readonly post: (message: ToVoice) => void;
  readonly listen: (onMessage: (message: FromVoice) => void, onCrash: () => void) => void;
}

export interface SoundPlayer {
  readonly unlock: () => void;
  readonly play: (sound: SpokenSound) => {
    readonly over: Promise<void>;
    readonly stop: () => void;
  };
}

export interface SpareVoice extends Voice {
  /** Fetches it, once, however often it is called. */
  readonly load: () => void;
}

/** A breath took 0.15 of its length on a desk; a phone that needs longer than this is no use as a voice. */
const OVERDUE_MS = 8_000;
/** Ours: what was handed over has left the loudspeaker within a second, over Bluetooth too. */
const OVERDUE_END_MS = 2_000;

/** A voice of the page's own, for browsers that have none: the whole of it runs on the device. */
export function createSpareVoice(ports: SpareVoicePorts, url: string): SpareVoice {
  return new FliteVoice(ports, url);
}

class FliteVoice implements SpareVoice {
  readonly #ports: SpareVoicePorts;
  readonly #url: string;
  readonly #waiting = new Map<number, (sound: SpokenSound | null) => void>();
  #worker: VoiceWorker | null = null;
  #player: SoundPlayer | null = null;
  #ready = false;
  #request = 0;
  #speech = 0;
  #stop: () => void = () => undefined;

  constructor(ports: SpareVoicePorts, url: string) {
    this.#ports = ports;
    this.#url = url;
  }

  readonly load = (): void => {
    if (this.#worker !== null) return;
    this.#worker = this.#ports.openWorker();
    this.#worker.listen(
      (message) => this.#receive(message),
      () => this.#lose(),
    );
    this.#worker.post({ kind: 'load', url: this.#url });
  };

  canSpeak(): boolean {
    return this.#ready && this.#player !== null;
  }

  unlock(): void {
    this.#player ??= this.#ports.createPlayer();
    this.#player?.unlock();
  }

  hush(): void {
    this.#speech += 1;
    this.#stop();
  }

  /** The next breath is made while one is heard. */
  async speak(spoken: string): Promise<void> {
    const mine = (this.#speech += 1);
    const breaths = breathsOf(spoken);
    let coming = this.#make(breaths[0]);
    for (const next of [...breaths.slice(1), undefined]) {
      const sound = await coming;
      coming = this.#make(next);
      if (mine !== this.#speech) return;
      if (sound !== null) await this.#play(sound);
    }
  }

  async #play(sound: SpokenSound): Promise<void> {
    const playing = this.#player?.play(sound);
    if (playing === undefined) return;
    this.#stop = playing.stop;
    await this.#inTime(playing.over, sound);
    this.#stop = () => undefined;
  }

  /** Sound that a call has taken may never be over: then the ear behind it opens again all the same. */
  #inTime(over: Promise<void>, { samples, rateHz }: SpokenSound): Promise<void> {
    return new Promise((resolve, reject) => {
      const callOff = this.#ports.clock.after(
        (samples.length / rateHz) * 1000 + OVERDUE_END_MS,
        () => {
          this.#stop();
          resolve();
        },
      );
      over.then(resolve, reject).finally(callOff);
    });
  }

  #make(text: string | undefined): Promise<SpokenSound | null> {
    if (text === undefined || this.#worker === null) return Promise.resolve(null);
    const request = (this.#request += 1);
    this.#worker.post({ kind: 'say', request, text });
    return new Promise((resolve) => {
      const answer = (sound: SpokenSound | null): void => {
        callOff();
        this.#waiting.delete(request);
        resolve(sound);
      };
      // Whatever the voice does, the ear behind it opens again.
      const callOff = this.#ports.clock.after(OVERDUE_MS, () => answer(null));
      this.#waiting.set(request, answer);
    });
  }

  #receive(message: FromVoice): void {
    if (message.kind === 'loaded') this.#ready = true;
    else if (message.kind === 'said') this.#waiting.get(message.request)?.(message.sound);
    else this.#lose();
  }

  /** Replies are then shown only; the next load() tries again. */
  #lose(): void {
    this.#ready = false;
    this.#worker = null;
    for (const answer of [...this.#waiting.values()]) answer(null);
  }
}
