import { beforeEach, describe, expect, it } from 'vitest';

import type { Engine, EngineOutcome, Finished } from '../../client/recogniser/engine.ts';
import { WINDOW_SAMPLES } from '../../core/hearing/voice-detector.ts';
import { grammarOf, YES } from './small-grammars.ts';

/** What every engine is made to hear. */
export const SENTENCES = ['head forty five', 'box four', 'yes'] as const;
export type Sentence = (typeof SENTENCES)[number];

/** What a session without grammars sets. */
const NOTHING_TO_SAY = grammarOf('<VOID>');
export const READINGS = grammarOf('(head | box) (forty [four | five] | four)');
const ZORB = grammarOf('head zorbular');

export interface EngineStage {
  readonly engine: Engine;
  readonly say: (sentence: Sentence) => Float32Array;
  /** Whether the model is damaged from now on. */
  readonly damage: (damaged: boolean) => void;
  /** Times that something was loaded. */
  readonly loads: () => number;
  /** Bytes of WebAssembly memory; 0 where there is none. */
  readonly heapBytes: () => number;
}

export interface Settings {
  readonly open: () => Promise<EngineStage>;
  readonly utterances: number;
}

/** As the page feeds it: 100 ms. */
const PORTION = 1600;
const READY: EngineOutcome = { kind: 'ready' };

/** Lets an engine within this process do all that it has to. */
async function settled(): Promise<void> {
  for (let turn = 0; turn < 20; turn += 1) await new Promise((resolve) => setImmediate(resolve));
}

const wordsOf = (finished: Finished): string | undefined =>
  finished.kind === 'failed' || finished.hearing.rejected !== undefined
    ? undefined
    : finished.hearing.alternatives[0]?.words;

/** What the page and the standard's face rely on, whichever engine it is. */
export function describeEngine(name: string, { open, utterances }: Settings): void {
  describe(`the ${name} engine`, () => {
    let stage: EngineStage;
    beforeEach(async () => {
      stage = await open();
    });

    const accept = (sound: Float32Array): void => {
      for (let at = 0; at < sound.length; at += PORTION) {
        stage.engine.accept(sound.slice(at, at + PORTION));
      }
    };
    /** As sound comes: what follows from one portion is over before the next. */
    const acceptSlowly = async (sound: Float32Array): Promise<void> => {
      for (let at = 0; at < sound.length; at += PORTION) {
        accept(sound.slice(at, at + PORTION));
        await settled();
      }
    };
    const hear = (sentence: Sentence): Promise<Finished> => {
      accept(stage.say(sentence));
      return stage.engine.finish();
    };
    const ready = async (jsgf = READINGS): Promise<void> => {
      expect(await stage.engine.load()).toEqual(READY);
      expect(await stage.engine.setGrammar(jsgf)).toEqual(READY);
    };
    const noted = (): string[] => {
      const told: string[] = [];
      stage.engine.listen((words) => void told.push(words));
      return told;
    };

    it('is absent until it is loaded, and loads once', async () => {
      expect(stage.engine.state()).toBe('absent');
      expect((await stage.engine.setGrammar(READINGS)).kind).toBe('failed');
      await Promise.all([stage.engine.load(), stage.engine.load()]);
      expect(await stage.engine.load()).toEqual(READY);
      expect([stage.engine.state(), stage.loads()]).toEqual(['ready', 1]);
    });

    it('fails on a damaged model, says what to do, and loads once it is whole', async () => {
      stage.damage(true);
      const outcome = await stage.engine.load();
      expect(outcome.kind === 'failed' ? outcome.message : '').toMatch(/reload/);
      expect(stage.engine.state()).toBe('absent');
      stage.damage(false);
      await ready();
      expect(wordsOf(await hear('box four'))).toBe('box four');
    });

    it('says the words as they come, and then all of them', async () => {
      await ready();
      const told = noted();
      await acceptSlowly(stage.say('head forty five'));
      expect(wordsOf(await stage.engine.finish())).toBe('head forty five');
      const counts = told.map((words) => words.split(' ').length);
      expect(counts.length).toBeGreaterThan(1);
      expect(counts[0]).toBeLessThan(counts.at(-1) ?? 0);
      // The last word is still growing in the last of them: the neural model is 0.4 s behind the sound.
      expect(told.at(-1)).toMatch(/^head forty/);
    });

    it('answers two utterances in a row in their order', async () => {
      await ready();
      const finished = await Promise.all([hear('head forty five'), hear('box four')]);
      expect(finished.map(wordsOf)).toEqual(['head forty five', 'box four']);
    });

    it('hears nothing where no sound was given', async () => {
      await ready();
      expect(await stage.engine.finish()).toMatchObject({ hearing: { rejected: 'nothing' } });
      expect(wordsOf(await hear('box four'))).toBe('box four');
    });

    it('delivers nothing of an utterance that was reset', async () => {
      await ready();
      const told = noted();
      await acceptSlowly(stage.say('head forty five'));
      accept(stage.say('head forty five'));
      stage.engine.reset();
      const before = told.length;
      expect(wordsOf(await hear('box four'))).toBe('box four');
      expect(told.slice(before).join(' ')).not.toMatch(/head|five/);
    });

    it('says no words to who stopped listening', async () => {
      await ready();
      const told = noted();
      stage.engine.listen(null);
      await hear('box four');
      expect(told).toEqual([]);
    });

    it('hears by the grammar that was set last, warmed or not, and by the earlier one again', async () => {
      await ready();
      stage.engine.warm(YES);
      expect(wordsOf(await hear('box four'))).toBe('box four');
      expect(await stage.engine.setGrammar(YES)).toEqual(READY);
      expect(wordsOf(await hear('yes'))).toBe('yes');
      expect(wordsOf(await hear('head forty five'))).not.toBe('head forty five');
      await stage.engine.setGrammar(READINGS);
      expect(wordsOf(await hear('head forty five'))).toBe('head forty five');
    });

    it('understands nothing by a grammar that nothing can be said by', async () => {
      await ready(NOTHING_TO_SAY);
      expect(wordsOf(await hear('box four'))).toBeUndefined();
      await stage.engine.setGrammar(READINGS);
      expect(wordsOf(await hear('box four'))).toBe('box four');
    });

    it('names a word that it cannot sound, and goes on', async () => {
      await ready();
      const outcome = await stage.engine.setGrammar(ZORB);
      expect(outcome.kind === 'failed' ? outcome.message : '').toContain('zorbular');
      expect(await stage.engine.setGrammar(READINGS)).toEqual(READY);
      expect(wordsOf(await hear('box four'))).toBe('box four');
    });

    it('hears words while it looks for a voice, tells windows in order, and none once nobody watches', async () => {
      await ready();
      const ends: number[] = [];
      const watch = stage.engine.watch?.((_, untilSample) => void ends.push(untilSample));
      for (const sentence of ['box four', 'head forty five'] as const) {
        watch?.accept(stage.say(sentence));
        expect(wordsOf(await hear(sentence))).toBe(sentence);
      }
      expect(ends).toEqual(ends.toSorted((one, other) => one - other));
      // A detector that came after the first sound begins there, wherever that is.
      const [first = 0] = ends;
      expect(ends.map((end) => (end - first) % WINDOW_SAMPLES)).toEqual(ends.map(() => 0));
      watch?.close();
      const told = ends.length;
      watch?.accept(stage.say('yes'));
      await settled();
      expect(ends).toHaveLength(told);
    });

    it('answers nothing once it is disposed of, and can be loaded again', async () => {
      await ready();
      accept(stage.say('box four'));
      stage.engine.dispose();
      expect((await stage.engine.finish()).kind).toBe('failed');
      expect(stage.engine.state()).toBe('absent');
      await ready();
      expect(wordsOf(await hear('box four'))).toBe('box four');
    });

    it(`hears ${utterances} utterances in a row with its memory flat`, async () => {
      await ready(YES);
      let flat = 0;
      for (let done = 0; done < utterances; done += 1) {
        expect(wordsOf(await hear('yes'))).toBe('yes');
        if (done === 10) flat = stage.heapBytes();
      }
      expect(stage.heapBytes()).toBe(flat);
    });
  });
}
