import { describe, expect, it } from 'vitest';

import type { VoiceDetector } from '../../../core/hearing/voice-detector.ts';
import { VoiceDesk } from '../../../client/recogniser/neural/voice-desk.ts';
import type { FromEngine } from '../../../client/recogniser/worker/protocol.ts';

/** A detector that hears a window in every 512 samples, and breaks when it is told to. */
function createDesk() {
  const calls: string[] = [];
  const sent: FromEngine[] = [];
  const state = { breaks: false };
  const detector: VoiceDetector = {
    accept: (samples) => {
      if (state.breaks) return Promise.reject(new Error('out of memory'));
      calls.push(`hear ${samples.length}`);
      return Promise.resolve(Array<number>(Math.floor(samples.length / 512)).fill(0.7));
    },
    reset: () => void calls.push('reset'),
  };
  const desk = new VoiceDesk((message) => void sent.push(message));
  const hear = (watch: number, fromSample: number): Promise<void> =>
    desk.answer({ kind: 'watch', watch, fromSample, samples: new Float32Array(1024) });
  return { desk, detector, calls, sent, state, hear };
}

const answer = (watch: number, untilSample: number): FromEngine => ({
  kind: 'voice',
  watch,
  chances: [0.7, 0.7],
  untilSample,
});

describe('the voice detector’s desk', () => {
  it('answers each portion with where its windows end, and begins anew with a watch', async () => {
    const { desk, detector, calls, sent, hear } = createDesk();
    desk.useDetector(detector);
    await Promise.all([hear(1, 0), hear(1, 1024), hear(2, 0)]);
    expect(sent).toEqual([answer(1, 1024), answer(1, 2048), answer(2, 1024)]);
    expect(calls).toEqual(['reset', 'hear 1024', 'hear 1024', 'reset', 'hear 1024']);
  });

  it('counts from where it joined a watch that was under way', async () => {
    const { desk, detector, sent, hear } = createDesk();
    await hear(1, 0);
    desk.useDetector(detector);
    await hear(1, 1024);
    expect(sent).toEqual([answer(1, 2048)]);
  });

  it('answers nothing more once the detector broke', async () => {
    const { desk, detector, sent, state, hear } = createDesk();
    desk.useDetector(detector);
    await hear(1, 0);
    state.breaks = true;
    await hear(1, 1024);
    state.breaks = false;
    await hear(1, 2048);
    expect(sent).toEqual([answer(1, 1024)]);
  });
});
