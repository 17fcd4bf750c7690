import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import type { Engine } from '../../../client/recogniser/engine.ts';
import type { LessonAnswer } from '../../../client/recogniser/worker/lesson.ts';
import { createLessonLine } from '../../../client/recogniser/worker/lesson-line.ts';
import {
  ACCENT,
  ACCENTED_GRAMMAR,
  ACCENTED_LESSONS,
  ACCENTED_WORDS,
  sayAccented,
} from '../../support/accented.ts';
import { createNeuralInNode, type NeuralInNode } from '../../support/neural-in-node.ts';
import { createScratchFolder } from '../../support/scratch-folder.ts';
import { writeTinyEar } from '../../support/tiny-ear.ts';
import { combineGrammars } from '../../../core/hearing/jsgf.ts';

let folder: Awaited<ReturnType<typeof createScratchFolder>>;
beforeAll(async () => {
  folder = await createScratchFolder();
  await writeTinyEar(folder.path);
});
afterAll(() => folder.discard());

const GRAMMAR = combineGrammars([{ text: ACCENTED_GRAMMAR, weight: 1 }]) ?? '';

async function openEngine(): Promise<NeuralInNode['engine']> {
  const { engine } = await createNeuralInNode(folder.path, ACCENTED_WORDS);
  await engine.load();
  await engine.setGrammar(GRAMMAR);
  return engine;
}

async function heard(engine: Engine, sentence: string) {
  engine.accept(sayAccented(sentence, ACCENT));
  const finished = await engine.finish();
  if (finished.kind === 'failed') throw new Error(finished.message);
  return finished.hearing.rejected ?? finished.hearing.alternatives[0]?.words;
}

/** As the page gives them: heard first, then learnt. */
async function teach(engine: NeuralInNode['engine']): Promise<LessonAnswer> {
  await engine.giveLesson({ kind: 'begin' });
  for (const words of ACCENTED_LESSONS) {
    await heard(engine, words);
    const answer = await engine.giveLesson({ kind: 'learn', words });
    expect(answer).toEqual({ kind: 'heard', heard: 'learnt' });
  }
  return engine.giveLesson({ kind: 'conclude' });
}

describe('an engine that is taught a voice', { timeout: 60_000 }, () => {
  it('learns it from what it heard, and hears by it from then on, loaded anew too', async () => {
    const engine = await openEngine();
    expect(await heard(engine, 'box three')).toBe('notForUs');
    const answer = await teach(engine);
    if (answer.kind !== 'concluded' || answer.conclusion.kind !== 'better') {
      throw new Error(JSON.stringify(answer));
    }
    const voice = answer.conclusion.profile;
    expect(await engine.giveLesson({ kind: 'suit', voice })).toEqual({
      kind: 'suited',
      fits: true,
    });
    expect(await heard(engine, 'box three')).toBe('box three');
    engine.dispose();
    await engine.load();
    await engine.setGrammar(GRAMMAR);
    expect(await heard(engine, 'box three')).toBe('box three');
    await engine.giveLesson({ kind: 'suit', voice: null });
    expect(await heard(engine, 'box three')).toBe('notForUs');
  });

  it('says of a voice for another model that it does not fit, and hears on', async () => {
    const engine = await openEngine();
    const voice = { version: 1, edition: 'another', correction: [] } as const;
    expect(await engine.giveLesson({ kind: 'suit', voice })).toEqual({
      kind: 'suited',
      fits: false,
    });
    expect(await heard(engine, 'head five')).toBe('head five');
  });

  it('keeps no sound before the lessons begin, none after they end, and each for one lesson', async () => {
    const engine = await openEngine();
    const learn = () => engine.giveLesson({ kind: 'learn', words: 'head five' });
    await heard(engine, 'head five');
    expect(await learn()).toMatchObject({ kind: 'failed' });
    await engine.giveLesson({ kind: 'begin' });
    expect(await learn()).toEqual({ kind: 'heard', heard: 'unlike' });
    await heard(engine, 'head five');
    expect(await learn()).toEqual({ kind: 'heard', heard: 'learnt' });
    expect(await learn()).toEqual({ kind: 'heard', heard: 'unlike' });
    await engine.giveLesson({ kind: 'end' });
    expect(await learn()).toMatchObject({ kind: 'failed' });
  });
});

describe('a lesson line', () => {
  it('answers what a broken engine never will, and what nobody takes', async () => {
    const sent: string[] = [];
    let isThere = true;
    const line = createLessonLine(({ lesson: { kind } }) => isThere && sent.push(kind) > 0);
    const begun = line.give({ kind: 'begin' });
    line.cut('out of memory');
    expect(await begun).toEqual({ kind: 'failed', message: 'out of memory' });
    isThere = false;
    expect(await line.give({ kind: 'suit', voice: null })).toMatchObject({ kind: 'failed' });
    isThere = true;
    line.again();
    expect(sent).toEqual(['begin', 'suit']);
  });
});
