import { beforeEach, describe, expect, it, vi } from 'vitest';

import { soundWords } from '../../../core/hearing/dictionary.ts';
import { WINDOW_SAMPLES } from '../../../core/hearing/voice-detector.ts';
import { readDictionary } from '../../../server/hearing/node-model.ts';
import { NEURAL_MODEL_FOLDER } from '../../../server/hearing/neural-model.ts';
import { openVoiceDetector } from '../../../server/hearing/voice-model.ts';
import type { WorkerEngine } from '../../../client/recogniser/worker/worker-engine.ts';
import { grammarOf } from '../../contracts/small-grammars.ts';
import { besideFan, speak } from '../../hearing/signals.ts';
import { createNeuralInNode, type NeuralInNode } from '../../support/neural-in-node.ts';

const SOUND = besideFan(speak('yes', 'rms'), 10, 3);
/** As the page's microphone passes it on. */
const PORTION = 320;
const PATIENCE = { timeout: 60_000 };

let neural: NeuralInNode;
beforeEach(async () => {
  const { pronunciations } = soundWords(['yes'], await readDictionary(), {});
  neural = await createNeuralInNode(NEURAL_MODEL_FOLDER, pronunciations);
});

/** What is told of the sound, window by window. */
function watch(engine: WorkerEngine): Map<number, number> {
  const told = new Map<number, number>();
  const { accept } = engine.watch((chances, untilSample) => {
    const first = untilSample / WINDOW_SAMPLES - chances.length;
    for (const [index, chance] of chances.entries()) told.set(first + index, chance);
  });
  for (let at = 0; at < SOUND.length; at += PORTION) accept(SOUND.slice(at, at + PORTION));
  return told;
}

/** It comes after the engine, which does not wait for it. */
async function untilItTells(engine: WorkerEngine): Promise<void> {
  let told = 0;
  const { accept } = engine.watch((chances) => {
    told += chances.length;
  });
  await vi.waitFor(() => {
    accept(new Float32Array(PORTION));
    expect(told).toBeGreaterThan(0);
  }, PATIENCE);
}

async function hearYes(engine: WorkerEngine): Promise<string | undefined> {
  await engine.setGrammar(grammarOf('yes'));
  engine.accept(SOUND);
  const finished = await engine.finish();
  return finished.kind === 'heard' ? finished.hearing.alternatives[0]?.words : undefined;
}

describe('the neural engine’s voice detector', () => {
  it('tells every window of a watch as it does outside the page, while words are heard', async () => {
    const { engine } = neural;
    await engine.load();
    await untilItTells(engine);
    const told = watch(engine);
    expect(await hearYes(engine)).toBe('yes');
    const chances = (await (await openVoiceDetector())?.accept(SOUND)) ?? [];
    // What is left of the last portion is not told.
    await vi.waitFor(() => expect(told.size).toBeGreaterThanOrEqual(chances.length - 4), PATIENCE);
    for (const [window, chance] of told) expect(chance).toBeCloseTo(chances[window] ?? NaN, 2);
    expect(Math.max(...told.values())).toBeGreaterThan(0.9);
  });

  it.each([
    ['missing', new Uint8Array(0)],
    ['damaged', new Uint8Array(9000).fill(7)],
  ])('tells nothing where its model is %s, and words are heard as ever', async (_, bytes) => {
    const { engine, asked, serveDetector } = neural;
    const warn = vi.spyOn(console, 'warn').mockReturnValue(undefined);
    serveDetector(bytes);
    expect(await engine.load()).toEqual({ kind: 'ready' });
    await vi.waitFor(() => expect(warn).toHaveBeenCalled(), PATIENCE);
    expect(asked).toEqual(expect.arrayContaining(['/detector', '/detector?again']));
    const told = watch(engine);
    expect(await hearYes(engine)).toBe('yes');
    expect(told.size).toBe(0);
    warn.mockRestore();
  });
});
