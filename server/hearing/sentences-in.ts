import { createEndpointer } from '../../core/hearing/endpointer.ts';
import { KEPT_BEFORE_MS } from '../../core/hearing/endpointing-policy.ts';
import { FRAME_MS, FRAME_SAMPLES } from '../../core/hearing/frame.ts';
import { createFramer } from '../../core/hearing/framer.ts';
import type { NeuralDecoder } from '../../core/hearing/neural-decoder.ts';
import { type VoiceDetector, WINDOW_MS } from '../../core/hearing/voice-detector.ts';

/** What tells where a sentence begins and ends, as far as it is there. */
export interface Endpointing {
  readonly detector: VoiceDetector | null;
  /** With a grammar set: it tells what may follow the words so far. */
  readonly decoder: Pick<NeuralDecoder, 'start' | 'accept' | 'words' | 'standing'> | null;
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

/** Cuts a recording, mono samples at 16 kHz, into sentences as the page cuts what its microphone hears. */
export async function sentencesIn(
  samples: Float32Array,
  { detector, decoder }: Endpointing,
): Promise<readonly FoundSentence[]> {
  const endpointer = createEndpointer();
  const found: FoundSentence[] = [];
  let open: { readonly fromMs: number; readonly noticedMs: number } | null = null;
  let heardFrames = 0;
  let toldMs = 0;
  detector?.reset();
  const soundOf = (from: number, to: number): Float32Array =>
    samples.slice(from * FRAME_SAMPLES, to * FRAME_SAMPLES);
  const watch = async (to: number): Promise<void> => {
    const chances = (await detector?.accept(soundOf(to - WATCHED_FRAMES, to))) ?? [];
    toldMs += chances.length * WINDOW_MS;
    if (chances.length > 0) endpointer.hearVoice(chances, toldMs);
  };
  const hear = async (to: number): Promise<void> => {
    if (decoder === null || to - heardFrames < HEARD_FRAMES) return;
    await decoder.accept(soundOf(heardFrames, to));
    heardFrames = to;
    endpointer.understand(decoder.words() === '' ? null : decoder.standing());
  };
  for (const [index, frame] of createFramer()(samples).entries()) {
    const nowFrames = index + 1;
    const nowMs = nowFrames * FRAME_MS;
    if (nowFrames % WATCHED_FRAMES === 0) await watch(nowFrames);
    if (open !== null) await hear(nowFrames);
    const event = endpointer.accept(frame);
    if (event === 'speechStarted') {
      open = { fromMs: Math.max(0, nowMs - KEPT_BEFORE_MS), noticedMs: nowMs };
      heardFrames = open.fromMs / FRAME_MS;
      decoder?.start();
    }
    if (event === 'speechEnded' && open !== null) {
      found.push({ ...open, toMs: nowMs });
      open = null;
    }
  }
  const endMs = Math.floor(samples.length / FRAME_SAMPLES) * FRAME_MS;
  return open === null ? found : [...found, { ...open, toMs: endMs }];
}
