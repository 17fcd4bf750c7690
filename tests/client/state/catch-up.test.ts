import { describe, expect, it } from 'vitest';
import { caughtUp } from '../../../client/state/catch-up.ts';
import type { Session } from '../../../client/state/session.ts';
import { listening, settled, type Stage } from '../scripted.ts';

const values = ({ visit }: Session) => visit.readings.map(({ reading }) => reading.value);

async function type(on: Stage, words: string): Promise<void> {
  on.runner.send({ kind: 'typed', words });
  await settled();
}

/** A page that read the log before the last of these was written. */
async function late(): Promise<{ before: Session; whole: Session; on: Stage }> {
  const on = await listening({ audible: false });
  await type(on, '1');
  const before = on.runner.session();
  await type(on, '2');
  return { before, whole: on.runner.session(), on };
}

describe('a tab that becomes the writer', () => {
  it('has what the other tab wrote, in the log’s order', async () => {
    const { before, whole } = await late();
    expect(values(before)).toEqual([1]);
    expect(values(caughtUp(before, whole.visit.history))).toEqual([1, 2]);
  });

  it('has it in a sentence that is being kept meanwhile, and keeps that sentence', async () => {
    const { before, whole, on } = await late();
    const turn = on.turnOf('3', before);
    const thinking: Session = {
      ...before,
      mode: { kind: 'thinking', words: '3', ear: { kind: 'asleep' }, turn, asked: null },
    };
    const { mode } = caughtUp(thinking, whole.visit.history);
    const state = mode.kind === 'thinking' ? mode.turn?.state : undefined;
    expect(state?.readings.map(({ reading }) => reading.value)).toEqual([1, 2, 3]);
  });

  it('tries at once what it held while the other one wrote', async () => {
    const on = await listening({ audible: false });
    await type(on, '1');
    on.refuse.why = 'otherTabWrites';
    await type(on, '2');
    expect(on.runner.session().unkept).toBe(1);
    delete on.refuse.why;
    on.runner.send({ kind: 'becameWriter' });
    await settled();
    await settled();
    expect(on.runner.session().unkept).toBe(0);
    expect(on.appended.flat().map(({ seq }) => seq)).toEqual([1, 2, 3]);
    expect(values(on.runner.session())).toEqual([1, 2]);
  });

  it('leaves another visit alone', async () => {
    const { before, whole } = await late();
    const elsewhere = whole.visit.history.map((event) => ({ ...event, visit: 'another' }));
    expect(values(caughtUp(before, elsewhere))).toEqual([1]);
  });
});
