import { KEPT_BEFORE_MS } from '../../core/hearing/endpointing-policy.ts';
import { FRAME_MS } from '../../core/hearing/frame.ts';
import { joined } from '../../core/hearing/joined.ts';
import type { Engine } from './engine.ts';

/** A worker message each: 100 ms, decoded in under 40 ms in Chromium. */
const PORTION_FRAMES = 100 / FRAME_MS;

export interface UtteranceFeed {
  readonly take: (frame: Float32Array, speaking: boolean) => void;
  /** Hands over what is left of the utterance. */
  readonly flush: () => void;
}

/** Keeps the moments before speech and passes speech on in portions. */
export function createUtteranceFeed(engine: Engine): UtteranceFeed {
  let waiting: Float32Array[] = [];
  const flush = (): void => {
    if (waiting.length > 0) engine.accept(joined(waiting));
    waiting = [];
  };
  return {
    take: (frame, speaking) => {
      waiting.push(frame);
      if (!speaking) waiting = waiting.slice(-KEPT_BEFORE_MS / FRAME_MS);
      else if (waiting.length >= PORTION_FRAMES) flush();
    },
    flush,
  };
}
