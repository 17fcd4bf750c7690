import { describe, expect, it } from 'vitest';

import type { Engine } from '../../../client/recogniser/engine.ts';
import { createChosenEngine } from '../../../client/recogniser/free-text/chosen-engine.ts';
import { createScriptedEngine } from '../../support/scripted-engine.ts';

const GONE = { kind: 'failed', message: 'gone' } as const;

function setUp(other: Engine | null) {
  const own = createScriptedEngine();
  const told: string[] = [];
  const chosen = { other };
  const engine = createChosenEngine({
    own,
    other: () => chosen.other,
    onFailed: (message) => told.push(message),
  });
  return { own, told, chosen, engine };
}

describe('the engine that is chosen', () => {
  it('is the own one unless another is wanted, from the next load on', async () => {
    const other = createScriptedEngine();
    const on = setUp(null);
    await on.engine.load();
    await on.engine.setGrammar('g');
    on.chosen.other = other;
    await on.engine.setGrammar('g');
    await on.engine.load();
    await on.engine.setGrammar('g');
    on.chosen.other = null;
    await on.engine.load();
    on.engine.accept(new Float32Array(1));
    expect(other.calls).toEqual(['load', 'setGrammar g']);
    expect(on.own.calls).toEqual(['load', 'setGrammar g', 'setGrammar g', 'load', 'accept 1']);
  });

  it('is the own one where the other does not come, told once, until it is forgiven', async () => {
    const other = createScriptedEngine({ load: GONE });
    const on = setUp(other);
    expect(await on.engine.load()).toEqual({ kind: 'ready' });
    expect(await on.engine.load()).toEqual({ kind: 'ready' });
    expect([on.told, other.calls]).toEqual([['gone'], ['load']]);
    expect(on.engine.state()).toBe('ready');
    on.engine.forgive();
    await on.engine.load();
    expect(on.told).toEqual(['gone', 'gone']);
  });

  it('tells the guesses of whichever hears, and of no other', async () => {
    const other = createScriptedEngine();
    const on = setUp(other);
    const guesses: string[] = [];
    on.engine.listen((words) => guesses.push(words));
    await on.engine.load();
    other.guess('by the other');
    on.own.guess('by the own');
    expect(guesses).toEqual(['by the other']);
  });
});
