import { createEndpointer, type Endpointer } from '../../core/hearing/endpointer.ts';
import { type EndpointerSettings, KEPT_BEFORE_MS } from '../../core/hearing/endpointing-policy.ts';
import { FRAME_MS, FRAME_SAMPLES } from '../../core/hearing/frame.ts';
import { createFramer } from '../../core/hearing/framer.ts';
import type { NeuralDecoder } from '../../core/hearing/neural-decoder.ts';
import { type VoiceDetector, WINDOW_MS } from '../../core/hearing/voice-detector.ts';

/** What follows a sentence while it is being said. */
export type Follower = Pick<NeuralDecoder, 'attune' | 'start' | 'accept' | 'words' | 'standing'>;

/** What tells where a sentence begins and ends, as far as it is there. */
export interface Endpointing {
  readonly detector: VoiceDetector | null;
  /** With a grammar set: it tells what may follow the words so far. */
  readonly decoder: Follower | null;
  /** Other waits than the page's, to measure them. */
  readonly settings?: EndpointerSettings;
}

/** A sentence of a recording, with the moments before it that the page keeps. */
export interface FoundSentence {
  readonly fromMs: number;
  /** When speech was taken note of, and when it was over, the wait after it included. */
  readonly noticedMs: number;
  readonly toMs: number;
}

/** As the page's microphone and its engines pass sound on. */
const WATCHED_FRAMES = 100 / FRAME_MS;
const HEARD_FRAMES = 160 / FRAME_MS;

/**
 * Cuts a recording, mono samples at 16 kHz, into sentences as the page cuts what its microphone hears; each is told
 * when its end is found. Whoever takes one may use the decoder before asking for the next.
 */
export async function* sentencesIn(
  samples: Float32Array,
  { detector, decoder, settings }: Endpointing,
): AsyncGenerator<FoundSentence, void, undefined> {
  const endpointer = createEndpointer(settings);
  const soundOf = (from: number, to: number): Float32Array =>
    samples.slice(from * FRAME_SAMPLES, to * FRAME_SAMPLES);
  const watch = createWatch(endpointer, detector);
  const follow = createFollow(endpointer, decoder);
  let open: Omit<FoundSentence, 'toMs'> | null = null;
  let overFrames = 0;
  await decoder?.attune(new Float32Array(0));
  for (const [index, frame] of createFramer()(samples).entries()) {
    const nowFrames = index + 1;
    const nowMs = nowFrames * FRAME_MS;
    if (nowFrames % WATCHED_FRAMES === 0) {
      await watch(soundOf(nowFrames - WATCHED_FRAMES, nowFrames));
    }
    if (open !== null) await follow.hear(nowFrames, soundOf);
    const event = endpointer.accept(frame);
    if (event === 'speechStarted') {
      const fromFrames = Math.max(overFrames, nowFrames - KEPT_BEFORE_MS / FRAME_MS);
      open = { fromMs: fromFrames * FRAME_MS, noticedMs: nowMs };
      follow.begin(fromFrames);
    }
    if (event === 'speechEnded' && open !== null) {
      yield { ...open, toMs: nowMs };
      open = null;
      overFrames = nowFrames;
    }
  }
  const endMs = Math.floor(samples.length / FRAME_SAMPLES) * FRAME_MS;
  if (open !== null) yield { ...open, toMs: endMs };
}

/** Has the detector look for a voice in what comes next. */
function createWatch(endpointer: Endpointer, detector: VoiceDetector | null) {
  let toldMs = 0;
  detector?.reset();
  return async (sound: Float32Array): Promise<void> => {
    const chances = (await detector?.accept(sound)) ?? [];
    toldMs += chances.length * WINDOW_MS;
    if (chances.length > 0) endpointer.hearVoice(chances, toldMs);
  };
}

type SoundOf = (fromFrames: number, toFrames: number) => Float32Array;

/** Has the decoder tell what may follow the words so far. */
function createFollow(endpointer: Endpointer, decoder: Follower | null) {
  let heardFrames = 0;
  return {
    begin: (fromFrames: number): void => {
      heardFrames = fromFrames;
      decoder?.start();
    },
    hear: async (toFrames: number, soundOf: SoundOf): Promise<void> => {
      if (decoder === null || toFrames - heardFrames < HEARD_FRAMES) return;
      await decoder.accept(soundOf(heardFrames, toFrames));
      heardFrames = toFrames;
      endpointer.understand(decoder.words() === '' ? null : decoder.standing());
    },
  };
}
