import { describe, expect, it } from 'vitest';
import type { AppendResult } from '../../../client/offline/event-log.ts';
import { listening, offered, settled } from '../scripted.ts';

/** A page whose log does not answer until it is let. */
async function overMuteLog() {
  const on = await listening({ audible: false });
  const append = on.log.append.bind(on.log);
  const waiting: (() => void)[] = [];
  on.log.append = async (events): Promise<AppendResult> => {
    await new Promise<void>((resolve) => {
      waiting.push(resolve);
    });
    return append(events);
  };
  const say = async (words: string): Promise<void> => {
    on.ear.hear(offered(words));
    await settled();
  };
  const pass = async (ms: number): Promise<void> => {
    on.clock.advance(ms);
    await settled();
  };
  const answer = async (): Promise<void> => {
    waiting.shift()?.();
    await settled();
  };
  const kept = (): readonly string[] => on.appended.flat().map(({ type, seq }) => `${seq} ${type}`);
  return { on, say, pass, answer, kept, waiting };
}

describe('a log that does not answer', () => {
  it('is told after ten seconds, and the page goes on; what it takes late is told too, and once there', async () => {
    const { on, say, pass, answer, kept } = await overMuteLog();
    await say('192');
    await pass(9_999);
    expect(on.runner.session().mode.kind).toBe('thinking');
    await pass(1);
    const { mode, unkept, notice, visit } = on.runner.session();
    expect([mode.kind, unkept, notice]).toEqual([
      'listening',
      2,
      { kind: 'notKept', why: 'unknown' },
    ]);
    expect(visit.readings.map(({ reading }) => reading.value)).toEqual([192]);
    await answer();
    await pass(2_000);
    expect(on.runner.session()).toMatchObject({ unkept: 0, notice: { kind: 'keptAtLast' } });
    expect(kept()).toEqual(['1 visitOpened', '2 readingTaken']);
  });

  it('is asked nothing new before it has answered, and then for all that was said meanwhile', async () => {
    const { on, say, pass, answer, kept, waiting } = await overMuteLog();
    await say('192');
    await pass(10_000);
    await say('193');
    await pass(10_000);
    await pass(30_000);
    expect([waiting.length, on.runner.session().unkept]).toEqual([1, 3]);
    await answer();
    await answer();
    await pass(60_000);
    expect(kept()).toEqual(['1 visitOpened', '2 readingTaken', '3 readingTaken']);
    expect(on.runner.session().unkept).toBe(0);
  });
});
