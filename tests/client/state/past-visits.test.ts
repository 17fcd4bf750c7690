import { describe, expect, it } from 'vitest';
import { pastVisits, withVisit } from '../../../client/state/past-visits.ts';
import { takeTurn } from '../../../core/turn/take-turn.ts';
import { listening, settled, type Stage } from '../scripted.ts';

async function type(on: Stage, ...said: readonly string[]): Promise<string> {
  for (const words of said) {
    on.runner.send({ kind: 'typed', words });
    await settled();
    on.voice.finish();
    await settled();
    on.clock.advance(1_000);
    await settled();
  }
  return on.runner.session().memory.lastReply?.text ?? '';
}

const NAMED = ['site is Harbor Street Deli', 'unit is called reach-in by the back door'];
const ASKED = 'what was done here last time';

describe('the earlier visits of this device', () => {
  it('are read from its log, newest first', async () => {
    const on = await listening({ takeTurn });
    expect(await pastVisits(on.log)).toEqual([]);
    await type(on, ...NAMED, 'condenser is plugged', 'next unit is called prep table two');
    const past = await pastVisits(on.log);
    expect(past.map(({ unit }) => unit.name)).toEqual([
      'prep table two',
      'reach-in by the back door',
    ]);
    expect(past[1]?.findings).toHaveLength(1);
  });

  it('answer once the page has read them', async () => {
    const before = await listening({ takeTurn });
    await type(
      before,
      'unit is called prep table two',
      'new visit',
      ...NAMED,
      'i washed the condenser',
    );
    const past = await pastVisits(before.log);
    const on = await listening({ takeTurn });
    on.clock.advance(60_000);
    expect(await type(on, ...NAMED, ASKED)).toBe(
      'I have no earlier visit to this unit on this device.',
    );
    on.runner.send({ kind: 'pastKnown', past });
    expect(await type(on, ASKED)).toContain('Done: condenser washed.');
  });

  it('hold the one that ended a moment ago, told to end or finished and gone on from', async () => {
    const on = await listening({ takeTurn });
    await type(on, ...NAMED, 'condenser is plugged', 'new visit', ...NAMED);
    expect(await type(on, ASKED)).toContain('Found: condenser plugged.');
    await type(on, 'i washed the condenser', 'finish', ...NAMED);
    expect(await type(on, ASKED)).toContain('Done: condenser washed.');
    const { past, visit } = on.runner.session();
    expect(past).toHaveLength(2);
    expect(withVisit(past, visit)).toHaveLength(3);
  });
});
