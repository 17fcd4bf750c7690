import { describe, expect, it } from 'vitest';
import { NO_NAMES } from '../../../core/language/names/known-names.ts';
import { createEar } from '../../../client/ear/create-ear.ts';
import type { Heard } from '../../../client/ear/ear.ts';
import type { HeldBack } from '../../../client/recogniser/capture.ts';
import { createSentences } from '../../../client/ear/web-speech-sentences.ts';
import { createBench, GRAMMAR, heard, loud, quiet, zeros } from '../../recogniser/harness.ts';
import { handClock, settled } from '../scripted.ts';
import { SilentStream } from './silent-stream.ts';
import { SilentTrack } from './silent-track.ts';

class Page extends EventTarget {
  visibilityState: DocumentVisibilityState = 'visible';

  turn(visibilityState: DocumentVisibilityState): void {
    this.visibilityState = visibilityState;
    this.dispatchEvent(new Event('visibilitychange'));
  }
}

/** The whole ear over the recogniser itself, with a scripted engine and microphone. */
async function openEar(heldBack: () => HeldBack | null = () => null) {
  let onSilence: () => void = () => undefined;
  let onHeldBack: (why: HeldBack | null) => void = () => undefined;
  const bench = createBench({
    hearings: [heard('yes'), heard('yes'), heard('yes')],
    onDigitalSilence: () => onSilence(),
    onHeldBack: (why) => onHeldBack(why),
    heldBack,
  });
  const page = new Page();
  const clock = handClock();
  const ear = createEar({
    devices: { getUserMedia: () => Promise.resolve(new SilentStream(new SilentTrack())) },
    isSecure: true,
    wakeLock: undefined,
    page,
    recogniser: createSentences(bench.SpeechRecognition),
    clock,
    grammarsFor: () => [{ text: GRAMMAR, weight: 1 }],
    onLevel: () => undefined,
    onProgress: () => undefined,
    onEngineChange: () => undefined,
    onDigitalSilence: (report) => {
      onSilence = report;
    },
    onHeldBack: (report) => {
      onHeldBack = report;
    },
    onNoise: () => undefined,
    onNews: () => undefined,
  });
  const reports: Heard[] = [];
  ear.onHeard((one) => reports.push(one));
  const open = async (): Promise<void> => {
    const opening = ear.open();
    for (let turn = 0; turn < 5; turn += 1) {
      await settled();
      await bench.settle();
    }
    expect(await opening).toEqual({ kind: 'open' });
  };
  await open();
  const listen = async (): Promise<void> => {
    ear.listen('anything', NO_NAMES);
    await bench.settle();
  };
  /** As long as a session waits, and as long as it counts as one that waited. */
  const wait = async (sound: (ms: number) => Float32Array): Promise<void> => {
    clock.advance(8_100);
    await bench.sound(sound(8_100));
  };
  const turnSound = async (why: HeldBack | null): Promise<void> => {
    onHeldBack(why);
    await bench.settle();
  };
  return { bench, page, ear, open, reports, listen, wait, turnSound };
}

const silent = { kind: 'news', news: 'silent' } as const;

describe('the ear on a muted microphone', () => {
  it('tells of it after 24 seconds, once, and listens on', async () => {
    const { listen, wait, reports } = await openEar();
    await listen();
    for (let times = 0; times < 2; times += 1) await wait(zeros);
    expect(reports).not.toContainEqual(silent);
    for (let times = 0; times < 5; times += 1) await wait(zeros);
    expect(reports.filter(({ kind }) => kind === 'news')).toEqual([silent]);
    expect(reports.filter(({ kind }) => kind === 'hearing')).toHaveLength(7);
  });

  it('does not take a still room for one, nor a headset that lets words through', async () => {
    const still = await openEar();
    await still.listen();
    for (let times = 0; times < 5; times += 1) await still.wait(quiet);
    expect(still.reports).not.toContainEqual(silent);
    const gating = await openEar();
    await gating.listen();
    await gating.bench.sound(zeros(500), loud(800), zeros(1500));
    expect(gating.reports).toContainEqual({ kind: 'words', alternatives: [expect.anything()] });
    await gating.listen();
    for (let times = 0; times < 5; times += 1) await gating.wait(zeros);
    expect(gating.reports).not.toContainEqual(silent);
  });
});

describe('the ear where the browser lets nothing play', () => {
  it('says so after one try, and hears once it is allowed and pressed again', async () => {
    let held: HeldBack | null = 'blocked';
    const { bench, open, listen, reports } = await openEar(() => held);
    await listen();
    bench.timeUp(3_000);
    await bench.settle();
    expect(reports).toEqual([{ kind: 'deaf', why: 'soundHeldBack' }]);
    expect(bench.openCaptures()).toBe(0);
    held = null;
    await open();
    await listen();
    await bench.sound(quiet(500), loud(800), quiet(1500));
    expect(reports.at(-1)).toMatchObject({ kind: 'words' });
  });
});

describe('the ear whose sound a call takes', () => {
  const cutOff = { kind: 'deaf', why: 'interrupted' } as const;
  const soundBack = { kind: 'soundBack' } as const;

  it('tells at once, drops half a sentence, and tells when the sound is back', async () => {
    const { bench, listen, reports, turnSound } = await openEar();
    await listen();
    await bench.sound(quiet(500), loud(500));
    await turnSound('interrupted');
    expect(reports.at(-1)).toEqual(cutOff);
    expect(bench.openCaptures()).toBe(0);
    await turnSound(null);
    expect(reports.at(-1)).toEqual(soundBack);
    await listen();
    await bench.sound(quiet(500), loud(800), quiet(1500));
    expect(reports.at(-1)).toMatchObject({ kind: 'words' });
    expect(reports.filter(({ kind }) => kind === 'words')).toHaveLength(1);
  });

  it('tells after three seconds where a sentence is waited for in a call that began before', async () => {
    const { bench, ear, listen, reports, turnSound } = await openEar(() => 'interrupted');
    ear.gate();
    await turnSound('interrupted');
    expect(reports).toEqual([]);
    await listen();
    bench.timeUp(3_000);
    await bench.settle();
    expect(reports).toEqual([cutOff]);
    await turnSound(null);
    expect(reports).toEqual([cutOff, soundBack]);
  });

  it('tells nothing of sound that comes and goes while nobody is to be heard, or out of sight', async () => {
    const { page, ear, listen, reports, turnSound } = await openEar();
    await turnSound(null);
    await listen();
    page.turn('hidden');
    await turnSound('interrupted');
    await turnSound(null);
    page.turn('visible');
    ear.gate();
    await turnSound('interrupted');
    await turnSound(null);
    expect(reports.filter(({ kind }) => kind === 'deaf' || kind === 'soundBack')).toEqual([]);
  });

  it('takes a press for a wish to try again: the end of the call is no news then', async () => {
    const { listen, open, reports, turnSound } = await openEar();
    await listen();
    await turnSound('interrupted');
    await open();
    await listen();
    await turnSound(null);
    expect(reports).not.toContainEqual(soundBack);
  });
});

describe('the ear of a page out of sight', () => {
  it('lets go of the microphone’s sound, and tells that it hears again', async () => {
    const { bench, page, listen, reports } = await openEar();
    await listen();
    await bench.sound(quiet(500), loud(500));
    page.turn('hidden');
    await bench.settle();
    expect(bench.openCaptures()).toBe(0);
    page.turn('visible');
    await bench.settle();
    expect(bench.openCaptures()).toBe(1);
    expect(reports.at(-1)).toEqual({ kind: 'news', news: 'back' });
    await bench.sound(quiet(500), loud(800), quiet(1500));
    expect(reports.at(-1)).toMatchObject({ kind: 'words' });
  });

  it('says nothing of it where it was not listening', async () => {
    const { page, ear, listen, reports } = await openEar();
    await listen();
    ear.gate();
    page.turn('hidden');
    page.turn('visible');
    expect(reports).not.toContainEqual({ kind: 'news', news: 'back' });
  });
});
