import { beforeEach, describe, expect, it, vi } from 'vitest';
import { createStamp } from '../support/stamp.ts';

/** Another call than the rehearsed one. */
const CALL = [
  "i'm at Maple Corner Market",
  "it's a three door reach in freezer on four forty eight a",
  'it trips on head pressure every afternoon',
  'ambient ninety one, box at eleven',
  'head three ten, suction nine',
  'condenser fan is not running',
  'what should suction be',
  'brushed the condenser and replaced the fan motor',
  'recovered nothing, added nothing',
  'that is my after',
];

/** A page just opened: nothing was worked out yet. */
async function freshCore() {
  vi.resetModules();
  const { GRAMMAR } = await import('../../core/language/parse/sentence.ts');
  const { rehearsalSteps } = await import('../../core/turn/rehearse.ts');
  const { takeTurn } = await import('../../core/turn/take-turn.ts');
  const { EMPTY_MEMORY } = await import('../../core/turn/turn.ts');
  const { EMPTY_VISIT } = await import('../../core/visit/empty-visit.ts');
  const stamp = createStamp();
  return {
    rehearsalSteps,
    /** What is said back to each, and how much had to be worked out for the first time. */
    call: () => {
      let sofar = { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
      const before = GRAMMAR.remainders.made;
      const replies = CALL.map((words) => {
        const turn = takeTurn({ ...sofar, words, stamp });
        sofar = turn;
        return turn.reply.text;
      });
      return { replies, workedOut: GRAMMAR.remainders.made - before };
    },
  };
}

describe('the rehearsal', { timeout: 180_000 }, () => {
  let core: Awaited<ReturnType<typeof freshCore>>;
  beforeEach(async () => {
    core = await freshCore();
  }, 60_000);

  it('leaves another call less than a third to work out, and its replies as they are', async () => {
    const cold = core.call();
    core = await freshCore();
    for (const step of core.rehearsalSteps()) step();
    const ready = core.call();
    expect(ready.replies).toEqual(cold.replies);
    expect(cold.workedOut).toBeGreaterThan(1000);
    expect(ready.workedOut).toBeLessThan(cold.workedOut / 3);
  });
});
