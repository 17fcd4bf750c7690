import { describe, expect, it } from 'vitest';

import type { GrammarSet, NeuralDecoder } from '../../../core/hearing/neural-decoder.ts';
import { NeuralDesk, PORTION_SAMPLES } from '../../../client/recogniser/neural/neural-desk.ts';
import type { FromEngine } from '../../../client/recogniser/worker/protocol.ts';
import { heard } from '../harness.ts';

/** A decoder that notes what is asked of it; `break` makes it fail while it hears. */
function createDesk() {
  const calls: string[] = [];
  const sent: FromEngine[] = [];
  const state = { breaks: false, heardPortions: 0, wordings: ['head forty'] };
  const decoder: NeuralDecoder = {
    setGrammar: (jsgf): GrammarSet => {
      calls.push(`set ${jsgf}`);
      return jsgf === 'zorb' ? { kind: 'unknownWords', words: ['zorb'] } : { kind: 'set' };
    },
    warm: (jsgf) => void calls.push(`warm ${jsgf}`),
    start: () => void calls.push('start'),
    attune: () => Promise.reject(new Error('not asked for')),
    accept: (samples) => {
      if (state.breaks) return Promise.reject(new Error('out of memory'));
      state.heardPortions += 1;
      calls.push(`hear ${samples.length}`);
      return Promise.resolve();
    },
    words: () => Array<string>(state.heardPortions).fill('head').join(' '),
    standing: () => 'incomplete',
    close: () => {
      calls.push('close');
      return Promise.resolve(state.wordings);
    },
    finish: (opinion) => {
      calls.push(`finish ${opinion === undefined ? 'alone' : (opinion?.words ?? 'none')}`);
      return Promise.resolve(heard('head forty'));
    },
    rank: () => Promise.reject(new Error('not asked for')),
    suit: () => true,
    teacher: () => {
      throw new Error('not asked for');
    },
  };
  const desk = new NeuralDesk(decoder, (message) => void sent.push(message));
  const accept = (utterance: number, samples: number) =>
    desk.answer({ kind: 'accept', utterance, samples: new Float32Array(samples) });
  const finish = (utterance: number, awaitsOpinion = false) =>
    desk.answer({ kind: 'finish', utterance, awaitsOpinion });
  return { desk, calls, sent, state, accept, finish };
}

describe('the neural engine’s desk', () => {
  it('hears portions worth a step of the network, and the rest at the end', async () => {
    const { desk, calls, accept, finish } = createDesk();
    await desk.answer({ kind: 'setGrammar', request: 1, jsgf: 'g' });
    for (const samples of [1600, 1600, 1600]) await accept(1, samples);
    await finish(1);
    expect(calls).toEqual(['set g', 'start', 'hear 3200', 'hear 1600', 'close', 'finish alone']);
  });

  it('says words when they change, not with every portion', async () => {
    const { desk, sent, state, accept } = createDesk();
    await desk.answer({ kind: 'setGrammar', request: 1, jsgf: 'g' });
    await accept(1, PORTION_SAMPLES);
    state.heardPortions -= 1;
    await accept(1, PORTION_SAMPLES);
    await accept(1, PORTION_SAMPLES);
    expect(sent.filter(({ kind }) => kind === 'partial')).toEqual([
      { kind: 'partial', utterance: 1, words: 'head', standing: 'incomplete' },
      { kind: 'partial', utterance: 1, words: 'head head', standing: 'incomplete' },
    ]);
  });

  const opinion = { words: 'head fourteen', fit: -1 };

  it('tells its wordings and waits for an opinion on them', async () => {
    const { desk, calls, sent, accept, finish } = createDesk();
    await desk.answer({ kind: 'setGrammar', request: 1, jsgf: 'g' });
    await accept(1, PORTION_SAMPLES);
    const finished = finish(1, true);
    const next = accept(2, PORTION_SAMPLES);
    await expect.poll(() => sent.at(-1)?.kind).toBe('wordings');
    expect(sent.at(-1)).toEqual({ kind: 'wordings', utterance: 1, wordings: ['head forty'] });
    await desk.answer({ kind: 'opinion', utterance: 7, opinion: null });
    expect(calls.at(-1)).toBe('close');
    await desk.answer({ kind: 'opinion', utterance: 1, opinion });
    await finished;
    await next;
    expect(calls.slice(-4)).toEqual([
      ...['close', 'finish head fourteen', 'start', `hear ${PORTION_SAMPLES}`],
    ]);
  });

  it.each([
    ['none', { opinion: null }],
    ['alone', {}],
  ])('decides with an opinion of %s', async (told, answer) => {
    const { desk, calls, sent, accept, finish } = createDesk();
    await desk.answer({ kind: 'setGrammar', request: 1, jsgf: 'g' });
    await accept(1, PORTION_SAMPLES);
    const finished = finish(1, true);
    await expect.poll(() => sent.at(-1)?.kind).toBe('wordings');
    await desk.answer({ kind: 'opinion', utterance: 1, ...answer });
    await finished;
    expect(calls.at(-1)).toBe(`finish ${told}`);
  });

  it('asks nobody where it found no wording', async () => {
    const { desk, calls, sent, state, accept, finish } = createDesk();
    await desk.answer({ kind: 'setGrammar', request: 1, jsgf: 'g' });
    state.wordings = [];
    await accept(1, PORTION_SAMPLES);
    await finish(1, true);
    expect([calls.at(-1), sent.at(-1)?.kind]).toEqual(['finish alone', 'heard']);
  });

  it('spends no step on what waits of an utterance that was reset', async () => {
    const { desk, calls, accept } = createDesk();
    await desk.answer({ kind: 'setGrammar', request: 1, jsgf: 'g' });
    const late = [accept(1, PORTION_SAMPLES), accept(1, PORTION_SAMPLES)];
    const reset = desk.answer({ kind: 'reset', utterance: 2 });
    await Promise.all([...late, reset, accept(2, PORTION_SAMPLES)]);
    expect(calls.filter((call) => call.startsWith('hear'))).toHaveLength(1);
  });

  it('names the words it cannot sound, and hears nothing without a grammar', async () => {
    const { desk, calls, sent, accept, finish } = createDesk();
    await desk.answer({ kind: 'setGrammar', request: 7, jsgf: 'zorb' });
    await accept(1, PORTION_SAMPLES);
    await finish(1);
    expect(calls).toEqual(['set zorb']);
    expect(sent[0]).toMatchObject({ kind: 'grammarFailed', request: 7 });
    expect(JSON.stringify(sent[0])).toContain('zorb');
    expect(sent[1]).toMatchObject({ kind: 'heard', hearing: { rejected: 'nothing' } });
  });

  it('tells when the network breaks', async () => {
    const { desk, sent, state, accept } = createDesk();
    await desk.answer({ kind: 'setGrammar', request: 1, jsgf: 'g' });
    state.breaks = true;
    await accept(3, PORTION_SAMPLES);
    expect(sent.at(-1)).toEqual({ kind: 'decodeFailed', utterance: 3, message: 'out of memory' });
  });
});
