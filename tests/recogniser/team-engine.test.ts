import { describe, expect, it } from 'vitest';

import type { Hearing } from '../../core/hearing/hearing.ts';
import type { EngineOutcome, EngineState, Finished } from '../../client/recogniser/engine.ts';
import {
  affordedUse,
  type EngineUse,
  type EngineWish,
} from '../../client/recogniser/team/engine-use.ts';
import { createTeamEngine, type EngineChange } from '../../client/recogniser/team/team-engine.ts';
import type { Choosing, WorkerEngine } from '../../client/recogniser/worker/worker-engine.ts';
import { heard } from './harness.ts';

const READY: EngineOutcome = { kind: 'ready' };
const BROKEN = { kind: 'failed', message: 'out of memory' } as const;
const portion = (value: number): Float32Array => new Float32Array(320).fill(value);

/** One of the two, made to break at will. It hears what it is told, and notes what it is given. */
function createPlayer(words: string) {
  const calls: string[] = [];
  const broken: { finish: Finished | null } = { finish: null };
  const player = {
    ...{ calls, load: READY, ...broken, answers: true },
    chooses: Promise.resolve<Choosing>({ kind: 'chosen', opinion: { words, fit: -1 } }),
  };
  let state: EngineState = 'absent';
  const hearing: Hearing = heard(words);
  const end = (): Promise<Finished> => {
    calls.push('finish');
    if (player.finish?.kind === 'failed') state = 'absent';
    const finished = player.finish ?? { kind: 'heard', hearing };
    return player.answers ? Promise.resolve(finished) : new Promise(() => undefined);
  };
  const engine: WorkerEngine = {
    state: () => state,
    pace: () => 0.1,
    load: () => {
      calls.push('load');
      if (player.load.kind === 'ready') state = 'ready';
      return Promise.resolve(player.load);
    },
    setGrammar: (jsgf) => {
      calls.push(`setGrammar ${jsgf}`);
      return Promise.resolve(state === 'ready' ? READY : BROKEN);
    },
    warm: (jsgf) => void calls.push(`warm ${jsgf}`),
    accept: (samples) => void calls.push(`accept ${samples[0]}`),
    finish: end,
    finishWith: async (opine) => {
      calls.push(`opinion ${(await opine([words, 'head four']))?.words}`);
      return end();
    },
    giveLesson: ({ kind }) => {
      calls.push(`lesson ${kind}`);
      return Promise.resolve({ kind: 'begun' });
    },
    choose: (sound, wordings) => {
      calls.push(`choose ${wordings.join(' or ')} in ${sound.map(([first]) => first).join()}`);
      return player.chooses;
    },
    reset: () => void calls.push('reset'),
    listen: () => undefined,
    watch: () => ({ accept: () => undefined, close: () => undefined }),
    dispose: () => {
      state = 'absent';
    },
  };
  const crash = (): void => {
    state = 'absent';
  };
  return Object.assign(player, { engine, crash });
}

function createTeam(settings: { use?: EngineUse; wish?: EngineWish } = {}) {
  const affords = { use: settings.use ?? 'both' };
  const neural = createPlayer('head forty');
  const embedded = createPlayer('head fourteen');
  const changes: EngineChange[] = [];
  const timers = new Map<number, () => void>();
  const choice = { wish: settings.wish ?? 'automatic' };
  const team = createTeamEngine({
    neural: neural.engine,
    embedded: embedded.engine,
    wish: () => choice.wish,
    afforded: () => affords.use,
    onChange: (change) => void changes.push(change),
    after: (delayMs, task) => {
      timers.set(delayMs, task);
      return () => void timers.delete(delayMs);
    },
  });
  const wordsOf = (finished: Finished): string | undefined =>
    finished.kind === 'heard' ? finished.hearing.alternatives[0]?.words : finished.message;
  return {
    ...{ team, neural, embedded, changes, choice, affords },
    /** The shorter of the waits under way is over, or the longer one. */
    timeUp: (which: 'first' | 'last') => {
      const waits = [...timers.keys()].sort((one, other) => one - other);
      timers.get(waits.at(which === 'first' ? 0 : -1) ?? 0)?.();
    },
    hear: async (...values: readonly number[]) => {
      for (const value of values) team.accept(portion(value));
      return wordsOf(await team.finish());
    },
  };
}

describe('two engines as one', () => {
  it('loads the second only once the first is there, and asks it for its opinion', async () => {
    const { team, neural, embedded, hear } = createTeam();
    const loading = team.load();
    expect([neural.calls, embedded.calls]).toEqual([['load'], []]);
    expect(await loading).toEqual(READY);
    expect(team.use()).toBe('both');
    await team.setGrammar('g');
    expect(await hear(1, 2)).toBe('head forty');
    expect(neural.calls).toContain('opinion head fourteen');
    expect(embedded.calls).toEqual(['load', 'choose head forty or head four in 1,2']);
  });

  it('does not wait for an opinion that comes too late', async () => {
    const { team, neural, embedded, hear, timeUp } = createTeam();
    await team.load();
    await team.setGrammar('g');
    embedded.chooses = new Promise(() => undefined);
    const hearing = hear(1);
    timeUp('first');
    expect(await hearing).toBe('head forty');
    expect(neural.calls).toContain('opinion undefined');
  });

  it('leaves the second alone on a device that cannot afford it', async () => {
    const { team, embedded, hear } = createTeam({ use: 'neural' });
    await team.load();
    await team.setGrammar('g');
    expect(await hear(1)).toBe('head forty');
    expect([team.use(), embedded.calls]).toEqual(['neural', []]);
  });

  it('takes the second in once the device turns out to afford it, and not again one that broke', async () => {
    const { team, neural, embedded, affords, hear } = createTeam({ use: 'neural' });
    await team.load();
    await team.setGrammar('g');
    affords.use = 'both';
    await team.load();
    await team.setGrammar('g');
    await hear(1);
    expect([team.use(), neural.calls.at(-2)]).toEqual(['both', 'opinion head fourteen']);
    embedded.chooses = Promise.resolve(BROKEN);
    await hear(1);
    await team.load();
    expect(team.use()).toBe('neural');
  });

  it('goes by what was chosen, from the next sentence on', async () => {
    const { team, neural, choice, hear } = createTeam({ wish: 'embedded' });
    await team.load();
    expect([team.use(), neural.calls.includes('load')]).toEqual(['embedded', false]);
    await team.setGrammar('g');
    expect(await hear(1)).toBe('head fourteen');
    choice.wish = 'neural';
    await team.load();
    await team.setGrammar('g');
    expect([team.use(), await hear(1)]).toEqual(['neural', 'head forty']);
  });

  it('hears by the other engine when the first cannot be loaded, says so, and tries again when asked', async () => {
    const { team, neural, changes } = createTeam();
    neural.load = BROKEN;
    expect(await team.load()).toEqual(READY);
    expect(changes).toEqual([
      { from: 'neural', to: 'embedded', why: 'out of memory', midSentence: false },
    ]);
    await team.load();
    const loads = () => neural.calls.filter((call) => call === 'load').length;
    expect([team.use(), loads()]).toEqual(['embedded', 1]);
    neural.load = READY;
    team.forgive();
    await team.load();
    expect([team.use(), loads()]).toEqual(['both', 2]);
  });

  it('fails when neither can be loaded', async () => {
    const { team, neural, embedded, changes } = createTeam();
    neural.load = BROKEN;
    embedded.load = BROKEN;
    expect(await team.load()).toEqual(BROKEN);
    expect(changes).toEqual([]);
  });

  it.each(['both', 'neural'] as const)(
    'plays the sentence again where the first of %s breaks',
    async (use) => {
      const { team, neural, embedded, changes, hear } = createTeam({ use });
      await team.load();
      await team.setGrammar('g');
      team.warm('number');
      neural.finish = BROKEN;
      expect(await hear(1, 2)).toBe('head fourteen');
      expect(embedded.calls.slice(-6)).toEqual([
        ...[
          'load',
          'setGrammar g',
          'warm g',
          'warm number',
          'accept 1',
          'accept 2',
          'finish',
        ].slice(1),
      ]);
      expect(changes).toEqual([
        { from: use, to: 'embedded', why: 'out of memory', midSentence: true },
      ]);
      await team.setGrammar('h');
      expect(await hear(3)).toBe('head fourteen');
      expect(changes).toHaveLength(1);
    },
  );

  it('notices between two sentences that the first broke', async () => {
    const { team, neural, changes, hear } = createTeam();
    await team.load();
    await team.setGrammar('g');
    neural.crash();
    expect(await team.load()).toEqual(READY);
    expect(changes[0]).toMatchObject({ to: 'embedded', midSentence: false });
    await team.setGrammar('g');
    expect(await hear(1)).toBe('head fourteen');
  });

  it('goes on alone when the second breaks, and says so', async () => {
    const { team, embedded, changes, hear } = createTeam();
    await team.load();
    await team.setGrammar('g');
    embedded.chooses = Promise.resolve(BROKEN);
    expect(await hear(1)).toBe('head forty');
    expect(changes[0]).toMatchObject({ from: 'both', to: 'neural' });
    expect(await hear(1)).toBe('head forty');
    expect([team.use(), changes.length]).toEqual(['neural', 1]);
  });

  it('takes one that answers nothing for broken, and loses nothing of the sentence', async () => {
    const { team, neural, changes, hear, timeUp } = createTeam({ use: 'neural' });
    await team.load();
    await team.setGrammar('g');
    neural.answers = false;
    const hearing = hear(1);
    timeUp('last');
    expect(await hearing).toBe('head fourteen');
    expect(changes[0]).toMatchObject({ to: 'embedded', midSentence: true });
  });

  it('forgets what was heard of an utterance that was reset', async () => {
    const { team, neural, embedded, hear } = createTeam({ use: 'neural' });
    await team.load();
    await team.setGrammar('g');
    team.accept(portion(1));
    team.reset();
    neural.finish = BROKEN;
    await hear(2);
    expect(embedded.calls.filter((call) => call.startsWith('accept'))).toEqual(['accept 2']);
  });
});

describe('what a device affords', () => {
  it.each([
    ['both', { cores: 8, memoryGb: 8 }, 0.1],
    ['both', { cores: 4, memoryGb: null }, 0.3],
    ['neural', { cores: 1, memoryGb: 8 }, 0.1],
    ['neural', { cores: 8, memoryGb: 1 }, 0.1],
    ['neural', { cores: 8, memoryGb: 8 }, 0.5],
    ['neural', { cores: 8, memoryGb: 8 }, null],
  ] as const)('is %s for %o at a pace of %s', (use, device, pace) => {
    expect(affordedUse(device, pace)).toBe(use);
  });
});
