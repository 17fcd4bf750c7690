import type { RoomNoise } from '../../core/hearing/earshot.ts';
import { FRAME_MS } from '../../core/hearing/frame.ts';
import {
  createNoiseMeter,
  isDigitalSilence,
  LEAST_SENTENCE_MS,
} from '../../core/hearing/noise-meter.ts';

/** Tells what the room is like while a session hears. */
export interface RoomWatch {
  readonly hear: (frame: Float32Array, speaking: boolean) => void;
  readonly sentenceEnded: () => void;
}

const TOLD_EVERY_MS = 1_000;
/** A session that opens in the middle of a word has not heard the room yet. */
const FIRST_TOLD_MS = 2_000;

/** For one session: of the last one's room, seconds or an hour ago, nothing is known any more. */
export function createRoomWatch(tell: (noise: RoomNoise) => void): RoomWatch {
  const meter = createNoiseMeter();
  let heardMs = 0;
  return {
    hear: (frame, speaking) => {
      if (isDigitalSilence(frame)) return;
      meter.accept(frame);
      heardMs += FRAME_MS;
      const isDue = heardMs >= FIRST_TOLD_MS && heardMs % TOLD_EVERY_MS === 0;
      if (isDue && !speaking) tell({ ...meter.measure(), sentence: false });
    },
    sentenceEnded: () => tell({ ...meter.measure(LEAST_SENTENCE_MS), sentence: true }),
  };
}
