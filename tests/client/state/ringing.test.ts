import { afterEach, describe, expect, it, vi } from 'vitest';
import { ringTimers } from '../../../core/turn/ring-timers.ts';
import { takeTurn } from '../../../core/turn/take-turn.ts';
import { runningTimers } from '../../../core/visit/timers.ts';
import { noticeWords } from '../../../client/screens/words.ts';
import { listening, offered, settled, stage, type Script, type Stage } from '../scripted.ts';

const MINUTE = 60_000;
const QUIET: Script = { audible: false, takeTurn };
const HOLD = 'ten minutes on the vacuum hold';
const RUNG = '10 min up: vacuum hold. Tell me the vacuum in microns.';

const modeOf = ({ runner }: Stage): string => runner.session().mode.kind;
const told = ({ runner }: Stage): string | undefined => runner.session().memory.lastReply?.text;
const bells = ({ tones }: Stage): number => tones.filter((tone) => tone === 'timeUp').length;

async function type(on: Stage, ...sentences: readonly string[]): Promise<void> {
  for (const words of sentences) {
    on.runner.send({ kind: 'typed', words });
    await settled();
  }
}

async function wait(on: Stage, minutes: number): Promise<void> {
  on.clock.advance(minutes * MINUTE);
  await settled();
}

const eventsOf = (on: Stage): readonly string[] => on.appended.flat().map(({ type: each }) => each);

describe('a timer that is up', () => {
  it('rings, is in the log, says what to read, and the ear expects that number', async () => {
    const on = await listening(QUIET);
    await type(on, HOLD);
    await wait(on, 10);
    expect([told(on), bells(on), modeOf(on)]).toEqual([RUNG, 1, 'listening']);
    expect(eventsOf(on).slice(-2)).toEqual(['timerRang', 'readingWanted']);
    expect(on.ear.calls.at(-1)).toBe('listen number');
    await type(on, 'four hundred');
    expect(on.runner.session().visit.readings.at(-1)?.reading.quantity).toBe('vacuum');
    await wait(on, 60);
    expect(bells(on)).toBe(1);
  });

  it('rings asleep and leaves the ear asleep', async () => {
    const on = stage(QUIET);
    await type(on, HOLD);
    await wait(on, 10);
    expect([told(on), modeOf(on)]).toEqual([RUNG, 'asleep']);
    expect(on.ear.calls).not.toContain('open');
  });

  it('rings on hold and stays on hold', async () => {
    const byVoice = await listening(QUIET);
    await type(byVoice, HOLD, 'hold on');
    await wait(byVoice, 10);
    expect(told(byVoice)).toBe(RUNG);
    expect(byVoice.runner.session().mode).toEqual({ kind: 'paused', by: 'voice' });
    const byPress = await listening(QUIET);
    await type(byPress, HOLD);
    byPress.runner.send({ kind: 'pressed' });
    await wait(byPress, 10);
    expect(byPress.runner.session().mode).toEqual({ kind: 'paused', by: 'press' });
  });

  it('puts the question that stood open back after it', async () => {
    const on = await listening(QUIET);
    await type(on, 'R-134a', HOLD, 'head 840');
    const asking = on.runner.session().mode;
    expect(asking.kind).toBe('asking');
    await wait(on, 10);
    expect(told(on)).toBe(RUNG);
    expect(on.runner.session().mode).toEqual(asking);
  });

  it('waits for the end of what is being said', async () => {
    const on = await listening({ takeTurn });
    await type(on, HOLD);
    on.voice.finish();
    await settled();
    await wait(on, 1);
    on.ear.hear(offered('what time is left'));
    await settled();
    expect(modeOf(on)).toBe('speaking');
    await wait(on, 20);
    expect(bells(on)).toBe(0);
    on.voice.finish();
    await settled();
    await wait(on, 1);
    await wait(on, 0);
    expect(bells(on)).toBe(1);
  });

  it('rings at once after a reload when it was up meanwhile, and once for all that were', async () => {
    const before = await listening(QUIET);
    await type(before, HOLD, 'twenty minutes for the defrost');
    const { visit } = before.runner.session();
    const on = stage({ ...QUIET, visit });
    await wait(on, 45);
    expect(bells(on)).toBe(1);
    expect(told(on)).toContain('10 min up: vacuum hold. 20 min up: defrost.');
  });

  it('rings in the tab that writes alone', async () => {
    const before = await listening(QUIET);
    await type(before, HOLD);
    const { visit } = before.runner.session();
    const other = stage({ ...QUIET, visit, writes: () => false });
    await wait(other, 45);
    expect([bells(other), eventsOf(other)]).toEqual([0, []]);
  });
});

describe('a timer that cannot be told', () => {
  afterEach(() => {
    vi.restoreAllMocks();
  });

  it('is heard and shown to be up, the page listens on, and it is tried again each minute', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    let breaks = true;
    const on = await listening({
      ...QUIET,
      ringTimers: (input) => {
        if (breaks) throw new Error('a bug');
        return ringTimers(input);
      },
    });
    await type(on, HOLD);
    await wait(on, 10);
    expect([modeOf(on), bells(on)]).toEqual(['listening', 1]);
    const { notice } = on.runner.session();
    expect(notice && noticeWords(notice)).toMatch(/^A timer is up, and I could not tell/);
    await wait(on, 0);
    expect(bells(on)).toBe(1);
    breaks = false;
    await type(on, 'head one ninety two');
    expect(on.runner.session().visit.readings).toHaveLength(1);
    await wait(on, 1);
    expect([told(on), bells(on), modeOf(on)]).toEqual([RUNG, 2, 'listening']);
  });
});

describe('a visit that is left while something is timed', () => {
  const leaving = async (...words: readonly string[]) => {
    const on = await listening(QUIET);
    await type(on, HOLD, ...words);
    return on;
  };

  it('stops its timers and says so, by voice', async () => {
    for (const words of ['new visit', 'finish']) {
      const on = await leaving(words);
      expect(told(on)).toContain('Stopped: the vacuum hold timer.');
      await wait(on, 60);
      expect(bells(on)).toBe(0);
    }
  });

  it('keeps them while finishing is held back, and stops them when it is not', async () => {
    const on = await leaving('i closed the king valve', 'finish');
    expect(runningTimers(on.runner.session().visit)).toHaveLength(1);
    await type(on, 'finish anyway');
    expect(told(on)).toContain('Stopped: the vacuum hold timer.');
  });

  it('stops them in its own log when the new one was pressed for, and shows so', async () => {
    const on = await leaving();
    const left = on.runner.session().visit.visit ?? '';
    on.runner.send({ kind: 'newVisitChosen' });
    await settled();
    const { visit, notice } = on.runner.session();
    expect(notice && noticeWords(notice)).toBe(
      'Stopped with the visit before: the vacuum hold timer.',
    );
    expect((await on.log.readVisit(left)).events.at(-1)?.type).toBe('timerStopped');
    expect(visit.history.map(({ type: each }) => each)).toEqual(['visitOpened']);
    expect(visit.visit).not.toBe(left);
  });

  it('keeps them for it when another visit is only looked at, and rings on coming back', async () => {
    const on = await leaving();
    const { visit } = on.runner.session();
    const other = stage(QUIET).runner.session().visit;
    on.runner.send({ kind: 'visitRead', visit: { ...other, visit: 'other' }, notice: null });
    expect(on.runner.session().notice).toMatchObject({ kind: 'timersWait' });
    await wait(on, 30);
    expect(bells(on)).toBe(0);
    on.runner.send({ kind: 'visitRead', visit, notice: null });
    await wait(on, 0);
    expect([bells(on), told(on)]).toEqual([1, RUNG]);
  });
});
