import { describe, expect, it } from 'vitest';

import type { DecodedWord, DecoderPort } from '../../core/hearing/decoder-port.ts';
import { createDecoderPool } from '../../client/recogniser/embedded/decoder-pool.ts';
import type { EmbeddedFiles } from '../../client/recogniser/embedded/embedded-engine.ts';
import { EngineDesk } from '../../client/recogniser/embedded/engine-desk.ts';
import type { FromEngine, ToEngine } from '../../client/recogniser/worker/protocol.ts';
import { createWorkerEngine } from '../../client/recogniser/worker/worker-engine.ts';

/** A decoder that hears the name of its grammar; `damaged` breaks while it decodes. */
function createFakeDecoder(calls: string[]): DecoderPort {
  let grammar = '';
  const words = (): readonly DecodedWord[] => [
    { word: grammar, startSeconds: 0, durationSeconds: 0.5, probability: 0.99 },
  ];
  return {
    setGrammar: (jsgf) => {
      calls.push(`compile ${jsgf}`);
      grammar = jsgf;
      return jsgf === 'zorb' ? ['zorb'] : [];
    },
    start: () => void calls.push(`start ${grammar}`),
    accept: () => {
      if (grammar === 'damaged') throw new Error('out of memory');
    },
    acceptWhole: () => undefined,
    stop: () => void calls.push('stop'),
    text: () => grammar,
    words,
    dispose: () => undefined,
  };
}

function createDesk() {
  const calls: string[] = [];
  const sent: FromEngine[] = [];
  let decoders = 0;
  const pool = createDecoderPool(() => {
    decoders += 1;
    return Promise.resolve(createFakeDecoder(calls));
  });
  const desk = new EngineDesk(pool, (message) => void sent.push(message));
  return { calls, sent, desk, decoders: () => decoders };
}

const samples = new Float32Array(320);

describe('the worker', () => {
  it('compiles each grammar once and keeps three decoders, the oldest given up first', async () => {
    const { calls, desk, decoders } = createDesk();
    for (const [request, jsgf] of ['a', 'b', 'c', 'a', 'd', 'a', 'b'].entries()) {
      await desk.answer({ kind: 'setGrammar', request, jsgf });
    }
    expect(calls).toEqual(['a', 'b', 'c', 'd', 'b'].map((jsgf) => `compile ${jsgf}`));
    expect(decoders()).toBe(3);
  });

  it('warms a grammar beside the one in use, and gives none up for it', async () => {
    const { calls, sent, desk, decoders } = createDesk();
    await desk.answer({ kind: 'setGrammar', request: 1, jsgf: 'a' });
    await desk.answer({ kind: 'accept', utterance: 1, samples });
    for (const jsgf of ['a', 'zorb', 'b', 'c', 'd']) await desk.answer({ kind: 'warm', jsgf });
    await desk.answer({ kind: 'finish', utterance: 1, awaitsOpinion: false });
    const heard = sent.at(-1);
    expect(heard?.kind === 'heard' && heard.hearing.alternatives[0]?.words).toBe('a');
    const compiled = calls.filter((call) => call.startsWith('compile')).length;
    for (const jsgf of ['b', 'c', 'a']) {
      await desk.answer({ kind: 'setGrammar', request: 2, jsgf });
    }
    expect(calls.filter((call) => call.startsWith('compile'))).toHaveLength(compiled);
    expect(calls).not.toContain('compile d');
    expect(decoders()).toBe(3);
  });

  it('answers each utterance by its number and forgets one that was reset', async () => {
    const { calls, sent, desk } = createDesk();
    await desk.answer({ kind: 'setGrammar', request: 1, jsgf: 'head' });
    await desk.answer({ kind: 'accept', utterance: 1, samples });
    await desk.answer({ kind: 'reset', utterance: 2 });
    await desk.answer({ kind: 'accept', utterance: 2, samples });
    await desk.answer({ kind: 'finish', utterance: 2, awaitsOpinion: false });
    await desk.answer({ kind: 'finish', utterance: 3, awaitsOpinion: false });
    expect(calls).toEqual(['compile head', 'start head', 'stop', 'start head', 'stop']);
    expect(sent.map(({ kind }) => kind)).toEqual([
      'grammarSet',
      'partial',
      'partial',
      'heard',
      'heard',
    ]);
    expect(sent.at(-2)).toMatchObject({ hearing: { alternatives: [{ words: 'head' }] } });
    expect(sent.at(-1)).toMatchObject({ utterance: 3, hearing: { rejected: 'nothing' } });
  });

  it('chooses among wordings beside what is open, by a decoder that no grammar needs', async () => {
    const { calls, sent, desk, decoders } = createDesk();
    await desk.answer({ kind: 'setGrammar', request: 1, jsgf: 'head' });
    await desk.answer({ kind: 'accept', utterance: 1, samples });
    const choose = (request: number, wordings: readonly string[]) =>
      desk.answer({ kind: 'choose', request, samples, wordings });
    await choose(2, ['box four', 'box forty']);
    await choose(3, []);
    await desk.answer({ kind: 'finish', utterance: 1, awaitsOpinion: false });
    const [, , chosen, none, heard] = sent;
    expect(chosen).toMatchObject({ kind: 'chosen', request: 2 });
    expect(JSON.stringify(chosen)).toContain('public <said> = box four | box forty ;');
    expect(none).toEqual({ kind: 'chosen', request: 3, opinion: null });
    expect(heard).toMatchObject({ hearing: { alternatives: [{ words: 'head' }] } });
    expect([decoders(), calls.filter((call) => call === 'start head').length]).toEqual([2, 1]);
  });

  it('names words without a sound and tells when decoding breaks', async () => {
    const { sent, desk } = createDesk();
    await desk.answer({ kind: 'setGrammar', request: 1, jsgf: 'zorb' });
    expect(sent.at(-1)).toMatchObject({ kind: 'grammarFailed', request: 1 });
    expect(JSON.stringify(sent.at(-1))).toContain('zorb');
    await desk.answer({ kind: 'setGrammar', request: 2, jsgf: 'damaged' });
    await desk.answer({ kind: 'accept', utterance: 1, samples });
    expect(sent.at(-1)).toEqual({ kind: 'decodeFailed', utterance: 1, message: 'out of memory' });
  });
});

function createWorkerBench() {
  const posted: ToEngine<EmbeddedFiles>[] = [];
  const timers = new Set<() => void>();
  let workers = 0;
  let alive = 0;
  let receive: (message: FromEngine) => void = () => undefined;
  let crash: () => void = () => undefined;
  const engine = createWorkerEngine<EmbeddedFiles>({
    files: { modelUrl: '/model', pronunciations: {} },
    after: (_, task) => {
      timers.add(task);
      return () => timers.delete(task);
    },
    createWorker: () => {
      workers += 1;
      alive += 1;
      return {
        post: (message) => void posted.push(message),
        listen: (onMessage, onCrash) => {
          receive = onMessage;
          crash = onCrash;
        },
        terminate: () => {
          alive -= 1;
        },
      };
    },
  });
  return {
    engine,
    posted,
    workers: () => workers,
    alive: () => alive,
    timers,
    timeUp: () => {
      for (const task of [...timers]) task();
    },
    receive: (message: FromEngine) => receive(message),
    crash: () => crash(),
  };
}

describe('the embedded engine', () => {
  it('loads once, tells progress, and tries again after a failure', async () => {
    const bench = createWorkerBench();
    const progress: number[] = [];
    const first = bench.engine.load(({ loadedBytes }) => void progress.push(loadedBytes));
    expect(bench.engine.load()).toBe(first);
    expect(bench.engine.state()).toBe('loading');
    bench.receive({ kind: 'progress', loadedBytes: 5, totalBytes: 10 });
    bench.receive({ kind: 'loadFailed', message: 'means did not come' });
    expect(await first).toEqual({ kind: 'failed', message: 'means did not come' });
    expect([progress, bench.engine.state(), bench.alive()]).toEqual([[5], 'absent', 0]);
    const second = bench.engine.load();
    bench.receive({ kind: 'loaded', pace: null });
    expect(await second).toEqual({ kind: 'ready' });
    expect([bench.engine.state(), bench.workers()]).toEqual(['ready', 2]);
  });

  it('gives up a load that nothing more comes of, and not one that is slow', async () => {
    const bench = createWorkerBench();
    const first = bench.engine.load();
    const [patience] = bench.timers;
    bench.receive({ kind: 'progress', loadedBytes: 5, totalBytes: 10 });
    expect(bench.timers.size).toBe(1);
    expect(bench.timers).not.toContain(patience);
    bench.timeUp();
    const given = await first;
    expect(given.kind === 'failed' ? given.message : '').toMatch(/reload/);
    expect([bench.engine.state(), bench.alive()]).toEqual(['absent', 0]);
    const second = bench.engine.load();
    bench.receive({ kind: 'loaded', pace: null });
    expect(await second).toEqual({ kind: 'ready' });
    bench.receive({ kind: 'progress', loadedBytes: 10, totalBytes: 10 });
    bench.crash();
    expect(bench.timers.size).toBe(0);
  });

  it('tells everyone who waits when the worker crashes, and can be loaded again', async () => {
    const bench = createWorkerBench();
    void bench.engine.load();
    bench.receive({ kind: 'loaded', pace: null });
    const grammar = bench.engine.setGrammar('head');
    bench.engine.accept(samples);
    const finished = bench.engine.finish();
    bench.crash();
    expect((await grammar).kind).toBe('failed');
    expect((await finished).kind).toBe('failed');
    expect((await bench.engine.finish()).kind).toBe('failed');
    expect(bench.alive()).toBe(0);
    void bench.engine.load();
    expect(bench.workers()).toBe(2);
  });

  it('warms each grammar once, and again in a new worker', () => {
    const { engine, posted, crash } = createWorkerBench();
    const warmed = () => posted.filter(({ kind }) => kind === 'warm').length;
    void engine.load();
    engine.warm('a');
    engine.warm('a');
    expect(warmed()).toBe(1);
    crash();
    engine.warm('a');
    expect(warmed()).toBe(1);
    void engine.load();
    engine.warm('a');
    expect(warmed()).toBe(2);
  });

  it('asks about wordings of the utterance that was finished, and gives on what was answered', async () => {
    const { engine, posted, receive } = createWorkerBench();
    void engine.load();
    engine.accept(samples);
    const opinion = { words: 'head four', fit: -1 };
    void engine.finishWith(([first]) =>
      Promise.resolve(first === 'head four' ? opinion : undefined),
    );
    const asked = posted.at(-1);
    const utterance = asked?.kind === 'finish' && asked.awaitsOpinion ? asked.utterance : NaN;
    receive({ kind: 'wordings', utterance, wordings: ['head four', 'head five'] });
    await expect.poll(() => posted.at(-1)).toEqual({ kind: 'opinion', utterance, opinion });
    receive({ kind: 'wordings', utterance, wordings: ['head five'] });
    await expect.poll(() => posted.at(-1)).toEqual({ kind: 'opinion', utterance });
  });

  it('chooses among wordings, and tells when it cannot any more', async () => {
    const { engine, posted, receive, crash } = createWorkerBench();
    void engine.load();
    const sound = [samples, samples];
    const [first, second] = [engine.choose(sound, ['one']), engine.choose(sound, ['two'])];
    const asked = posted.filter((message) => message.kind === 'choose');
    expect(asked.map(({ wordings }) => wordings)).toEqual([['one'], ['two']]);
    expect(asked[0]?.samples).toHaveLength(640);
    receive({ kind: 'chosen', request: asked[1]?.request ?? NaN, opinion: null });
    expect(await second).toEqual({ kind: 'chosen', opinion: null });
    crash();
    expect((await first).kind).toBe('failed');
    expect((await engine.choose(sound, ['three'])).kind).toBe('failed');
  });

  it('numbers utterances and lets no words of an earlier one through', async () => {
    const bench = createWorkerBench();
    void bench.engine.load();
    bench.receive({ kind: 'loaded', pace: null });
    const guesses: string[] = [];
    bench.engine.listen((words) => void guesses.push(words));
    bench.engine.accept(samples);
    const finished = bench.engine.finish();
    const [accepted, asked] = bench.posted.slice(1);
    const utterance = accepted?.kind === 'accept' ? accepted.utterance : NaN;
    expect(asked).toEqual({ kind: 'finish', utterance, awaitsOpinion: false });
    bench.receive({ kind: 'partial', utterance, words: 'late', standing: null });
    bench.receive({ kind: 'partial', utterance: utterance + 1, words: 'now', standing: null });
    expect(guesses).toEqual(['now']);
    bench.receive({
      kind: 'heard',
      utterance,
      hearing: { alternatives: [], rejected: 'unsure' },
      pace: 0.2,
    });
    expect(await finished).toMatchObject({ kind: 'heard', hearing: { rejected: 'unsure' } });
    expect(samples.length).toBe(320);
  });
});
