import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { createEar } from '../../client/ear/create-ear.ts';
import { createSentences } from '../../client/ear/web-speech-sentences.ts';
import type { CaptureSink } from '../../client/recogniser/capture.ts';
import type { Engine } from '../../client/recogniser/engine.ts';
import { createRecognitionClass } from '../../client/recogniser/recognition-class.ts';
import { ENDPOINTER_SETTINGS } from '../../core/hearing/endpointing-policy.ts';
import type { Hearing } from '../../core/hearing/hearing.ts';
import { heardGrammars } from '../../core/language/heard/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { type Hearer, openHearer } from '../../server/hearing/open-hearer.ts';
import { fan, RATE_HZ, speak } from '../hearing/signals.ts';
import { SilentStream } from './ear/silent-stream.ts';
import { SilentTrack } from './ear/silent-track.ts';
import { handClock, settled, stage, type Stage } from './scripted.ts';

const PATIENCE = { timeout: 30_000, interval: 10 };
const TAIL_MS = 250;
const ROOM = 0.003;

/** What a technician says on a visit; the replies hold one number, three, and sentences with numbers in them. */
const VISIT = [
  "it's a two-door reach-in on one thirty four a with a TXV",
  'ambient ninety one',
  'head two fifty two, suction twenty four, box forty nine',
  'what should head be',
  'how far off am I',
];

const room = (ms: number, seed: number): Float32Array =>
  fan(ms / 1000, seed).map((sample) => sample * ROOM);

const at = (samples: Float32Array, db: number): Float32Array =>
  samples.map((sample) => sample * 10 ** (db / 20));

const last = (samples: Float32Array, ms: number): Float32Array =>
  samples.slice(-Math.round((ms / 1000) * RATE_HZ));

describe('the product’s own voice', { timeout: 120_000 }, () => {
  let hearer: Hearer;

  beforeAll(async () => {
    const grammars = heardGrammars('anything');
    const outcome = await openHearer('neural', { grammars, pronunciations: PRONUNCIATIONS });
    if (outcome.kind === 'unavailable') throw new Error(outcome.message);
    hearer = outcome.hearer;
  }, 120_000);
  afterAll(() => hearer.dispose());

  /** The trained model behind an engine's face, heard sentence by sentence. */
  function createEngine() {
    let sound: Float32Array[] = [];
    let asked = 0;
    const answered: Hearing[] = [];
    const take = (): Float32Array => Float32Array.from(sound.flatMap((part) => [...part]));
    const engine: Engine = {
      load: () => Promise.resolve({ kind: 'ready' }),
      setGrammar: () => Promise.resolve({ kind: 'ready' }),
      warm: () => undefined,
      accept: (samples) => void sound.push(samples),
      finish: async () => {
        const utterance = take();
        sound = [];
        asked += 1;
        const hearing = await hearer.hear(utterance);
        answered.push(hearing);
        return { kind: 'heard', hearing };
      },
      reset: () => {
        sound = [];
      },
      listen: () => undefined,
      state: () => 'ready',
      dispose: () => undefined,
    };
    return { engine, asked: () => asked, answered };
  }

  /** The page's session and its whole ear; the microphone gives what `play` is given, listened to or not. */
  async function openPage() {
    const { engine, asked, answered } = createEngine();
    let sink: CaptureSink | null = null;
    const SpeechRecognition = createRecognitionClass({
      engine,
      capture: {
        open: (_, given) => {
          sink = given;
          return Promise.resolve({ kind: 'open', close: () => undefined });
        },
      },
      page: {
        isActive: () => true,
        wasTouched: () => true,
        allowsOnDevice: () => true,
        language: () => 'en-US',
        isCrossOrigin: () => false,
      },
      queueTask: (task) => void setImmediate(task),
      after: () => () => undefined,
      fetchText: () => Promise.reject(new Error('no grammar lies anywhere')),
      onHidden: () => () => undefined,
      endpointing: ENDPOINTER_SETTINGS,
      expected: () => [],
      onLevel: () => undefined,
      onNoise: () => undefined,
      onDigitalSilence: () => undefined,
      onHeldBack: () => undefined,
      onProgress: () => undefined,
      room: {},
    });
    const clock = handClock();
    const page: Pick<Document, 'visibilityState' | 'addEventListener'> = Object.assign(
      new EventTarget(),
      { visibilityState: 'visible' as const },
    );
    const ear = createEar({
      devices: { getUserMedia: () => Promise.resolve(new SilentStream(new SilentTrack())) },
      isSecure: true,
      wakeLock: undefined,
      page,
      recogniser: createSentences(SpeechRecognition),
      clock,
      grammarsFor: () => [{ text: '#JSGF V1.0; grammar g; public <said> = yes;', weight: 1 }],
      onLevel: () => undefined,
      onProgress: () => undefined,
      onEngineChange: () => undefined,
      onDigitalSilence: () => undefined,
      onHeldBack: () => undefined,
      onNoise: () => undefined,
      onNews: () => undefined,
    });
    const on = stage({ ear, takeTurn });
    const play = async (...sounds: readonly Float32Array[]): Promise<void> => {
      for (const sound of sounds) {
        for (let from = 0; from < sound.length; from += 1600) {
          sink?.onSamples(sound.subarray(from, from + 1600));
        }
        await settled();
      }
    };
    /** A session hears from its first sound on. */
    const hears = (): Promise<void> =>
      vi.waitFor(async () => {
        await play(room(20, 9));
        expect(on.runner.session().hearing).toBe(true);
      }, PATIENCE);
    /** Until all that was played is answered for, and the page listens on. */
    const heardOut = async (): Promise<void> => {
      await vi.waitFor(() => expect(answered.length).toBe(asked()), PATIENCE);
      for (let turn = 0; turn < 20; turn += 1) await settled();
    };
    on.runner.send({ kind: 'pressed' });
    await hears();
    return { on, asked, play, hears, heardOut };
  }

  const readings = (on: Stage): number => on.runner.session().visit.readings.length;

  /** A typed sentence is answered; gives back what is being said of it. */
  async function answer(on: Stage, words: string): Promise<string> {
    const before = on.voice.said.length;
    on.runner.send({ kind: 'typed', words });
    await vi.waitFor(() => expect(on.voice.said.length).toBeGreaterThan(before), PATIENCE);
    return on.voice.said.at(-1) ?? '';
  }

  async function finishSpeaking(on: Stage): Promise<void> {
    on.voice.finish();
    await settled();
    on.clock.advance(TAIL_MS);
    await settled();
  }

  it('would be heard, were the ear open: what the rest of these tests rest on', async () => {
    const { on, asked, play } = await openPage();
    await play(room(1500, 1), speak('Ambient 91.', 'slt'), room(1500, 2));
    expect(asked()).toBe(1);
    await vi.waitFor(() => expect(readings(on)).toBe(1), PATIENCE);
  });

  it('is not heard while it speaks, nor until its echo is over', async () => {
    const { on, asked, play, hears } = await openPage();
    for (const words of VISIT) {
      const before = on.runner.session().visit.history.length;
      const said = speak(await answer(on, words), 'slt');
      const kept = on.runner.session().visit.history.length;
      expect(kept).toBeGreaterThan(before);
      await play(room(500, 3), said, room(1500, 4));
      on.voice.finish();
      await settled();
      on.clock.advance(TAIL_MS - 1);
      await settled();
      await play(said, room(1500, 5));
      expect([on.runner.session().mode.kind, asked()]).toEqual(['speaking', 0]);
      expect(on.runner.session().visit.history).toHaveLength(kept);
      on.clock.advance(1);
      await hears();
    }
    expect(readings(on)).toBe(4);
  });

  it.each([-20, -12])(
    'leaves no reading by an echo of %i dB after the ear is open again',
    async (db) => {
      const { on, asked, play, hears, heardOut } = await openPage();
      for (const words of VISIT) {
        const said = speak(await answer(on, words), 'slt');
        await finishSpeaking(on);
        await hears();
        const kept = on.runner.session().visit.history.length;
        await play(at(last(said, 400), db), room(2500, 6));
        await heardOut();
        expect(on.runner.session().visit.history).toHaveLength(kept);
      }
      expect(asked()).toBeGreaterThan(0);
      expect(readings(on)).toBe(4);
    },
  );

  it('leaves no reading by what still sounds of it after a press cut it off', async () => {
    const { on, asked, play, hears, heardOut } = await openPage();
    for (const words of VISIT) {
      const said = speak(await answer(on, words), 'slt');
      const kept = on.runner.session().visit.history.length;
      const middle = Math.round(said.length / 2);
      await play(said.subarray(0, middle));
      on.runner.send({ kind: 'pressed' });
      const echo = middle + (TAIL_MS / 1000) * RATE_HZ;
      await play(at(said.subarray(middle, echo), -6));
      on.clock.advance(TAIL_MS);
      await hears();
      await play(at(said.subarray(echo, echo + 0.1 * RATE_HZ), -12), room(2500, 7));
      await heardOut();
      expect(on.runner.session().visit.history).toHaveLength(kept);
    }
    expect(asked()).toBeGreaterThan(0);
  });
});
