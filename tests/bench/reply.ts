import type { DecoderPort } from '../../core/hearing/decoder-port.ts';
import { toHearing } from '../../core/hearing/to-hearing.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { speak } from '../hearing/signals.ts';
import { createStamp } from '../support/stamp.ts';
import { openDecoder } from './open-decoder.ts';

export interface ReplyBench {
  /** From the last sample after speech to the reply's text, the endpoint's wait not counted. */
  readonly endOfSpeechToReplyMs: number;
  readonly reply: string;
}

const CHUNK_SAMPLES = 1600;
const ROUNDS = 15;

/** A question heard in a visit that can answer it, the sound fed in as it comes from a microphone. */
export async function benchReply(): Promise<ReplyBench> {
  const sound = speak('what should head be', 'rms');
  const { decoder } = await openDecoder();
  const visit = visitToAskIn();
  const rounds = Array.from({ length: ROUNDS }, () => oneRound(decoder, sound, visit));
  decoder.dispose();
  const median = rounds.toSorted((a, b) => a.ms - b.ms)[Math.floor(ROUNDS / 2)];
  return { endOfSpeechToReplyMs: median?.ms ?? NaN, reply: median?.reply ?? '' };
}

function oneRound(
  decoder: DecoderPort,
  sound: Float32Array,
  { state, memory }: Turn,
): { readonly ms: number; readonly reply: string } {
  decoder.start();
  for (let at = 0; at < sound.length; at += CHUNK_SAMPLES) {
    decoder.accept(sound.subarray(at, at + CHUNK_SAMPLES));
  }
  const end = performance.now();
  decoder.stop();
  const words = toHearing(decoder.words()).alternatives[0]?.words ?? '';
  const turn = takeTurn({ state, memory, words, stamp: createStamp(100) });
  return { ms: performance.now() - end, reply: turn.reply.text };
}

function visitToAskIn(): Turn {
  const stamp = createStamp();
  const first = takeTurn({
    state: EMPTY_VISIT,
    memory: EMPTY_MEMORY,
    words: "it's a two door reach in on one thirty four a with a txv",
    stamp,
  });
  return takeTurn({ ...first, words: 'ambient eighty eight, head one ninety two', stamp });
}
