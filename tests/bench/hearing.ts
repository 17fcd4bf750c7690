import { hearSamples } from '../../core/hearing/to-hearing.ts';
import { RATE_HZ, speak } from '../hearing/signals.ts';
import { type OpenedDecoder, openDecoder } from './open-decoder.ts';

export interface HearingBench {
  /** Processor time by sound time, with the whole grammar, one thread. */
  readonly realTimeFactor: number;
  /** From nothing to a decoder that knows the vocabulary. */
  readonly startUpMs: number;
  readonly grammarLoadMs: OpenedDecoder['grammarLoadMs'];
}

const SENTENCES = ['head one ninety two', 'what should head be', 'suction fourteen', 'finish'];

/** Measures the embedded engine on sentences by a voice made from a recorded person. */
export async function benchHearing(): Promise<HearingBench> {
  const sounds = SENTENCES.map((sentence) => speak(sentence, 'rms'));
  const { decoder, startUpMs, grammarLoadMs } = await openDecoder();
  const before = process.cpuUsage();
  for (const sound of sounds) hearSamples(decoder, sound);
  const { user } = process.cpuUsage(before);
  decoder.dispose();
  const seconds = sounds.reduce((sum, sound) => sum + sound.length / RATE_HZ, 0);
  return { realTimeFactor: user / 1e6 / seconds, startUpMs, grammarLoadMs };
}
