import { describe, expect, it } from 'vitest';
import { earOf } from '../../../client/state/session.ts';
import { listening, offered, settled, stage, type Stage } from '../scripted.ts';

const mode = ({ runner }: Stage): string => runner.session().mode.kind;

async function say(on: Stage, words: string): Promise<void> {
  on.ear.hear(offered(words));
  await settled();
}

/** The voice is done and the room's echo is over. */
async function spoken(on: Stage): Promise<void> {
  on.voice.finish();
  await settled();
  on.clock.advance(1_000);
  await settled();
}

describe('one press', () => {
  it('opens the ear, sounds the rising tone and listens', async () => {
    const on = stage();
    on.runner.send({ kind: 'pressed' });
    expect(mode(on)).toBe('opening');
    await settled();
    expect(on.tones).toEqual(['listening']);
    expect(on.ear.calls).toEqual(['open', 'listen anything']);
    expect(mode(on)).toBe('listening');
  });

  it('claims to hear only once sound reaches the recogniser', async () => {
    const on = stage();
    on.runner.send({ kind: 'pressed' });
    await settled();
    expect(on.runner.session().hearing).toBe(false);
    on.ear.hear({ kind: 'hearing' });
    expect(on.runner.session().hearing).toBe(true);
    on.runner.send({ kind: 'pressed' });
    expect(on.runner.session().hearing).toBe(false);
  });

  it('says why it cannot hear, and tries again at the next press', async () => {
    const on = stage();
    on.ear.opening = { kind: 'deaf', why: 'refused' };
    on.runner.send({ kind: 'pressed' });
    await settled();
    expect(on.runner.session().mode).toEqual({ kind: 'deaf', why: 'refused' });
    on.ear.opening = { kind: 'open' };
    on.runner.send({ kind: 'pressed' });
    await settled();
    expect(mode(on)).toBe('listening');
  });

  it('lets go of a microphone that came after a second press', async () => {
    const on = stage();
    on.runner.send({ kind: 'pressed' });
    on.runner.send({ kind: 'pressed' });
    await settled();
    expect(mode(on)).toBe('asleep');
    expect(on.ear.calls.at(-1)).toBe('close');
  });
});

describe('a sentence', () => {
  it('is on the disk before it is shown, sounded or said', async () => {
    const on = await listening();
    on.ear.hear(offered('192'));
    expect(mode(on)).toBe('thinking');
    expect(on.runner.session().visit.readings).toHaveLength(0);
    expect(on.voice.said).toEqual([]);
    expect(on.tones).toEqual(['listening']);
    await settled();
    const { visit } = on.runner.session();
    const read = await on.log.readVisit(visit.visit ?? '');
    expect(read.events.map(({ type }) => type)).toEqual(['visitOpened', 'readingTaken']);
    expect(visit.readings.map(({ reading }) => reading.value)).toEqual([192]);
    expect(on.voice.said).toEqual(['spoken 192']);
    expect(on.tones).toEqual(['listening', 'kept']);
  });

  it('keeps the ear closed until the voice and its echo are over', async () => {
    const on = await listening();
    await say(on, '192');
    expect(mode(on)).toBe('speaking');
    expect(on.ear.calls.at(-1)).toBe('gate');
    on.voice.finish();
    await settled();
    expect(mode(on)).toBe('speaking');
    on.clock.advance(1_000);
    await settled();
    expect(mode(on)).toBe('listening');
    expect(on.ear.calls.at(-1)).toBe('listen anything');
    expect(on.tones.at(-1)).toBe('listening');
  });

  it('opens the ear again where the browser has no voice, with a tone for the answer', async () => {
    const on = await listening({ audible: false });
    await say(on, 'question');
    expect(on.voice.said).toEqual([]);
    expect(on.tones).toEqual(['listening', 'kept', 'listening']);
    expect(mode(on)).toBe('listening');
    expect(on.runner.session().memory.lastReply?.text).toBe('text of question');
  });

  it('is not heard twice: words that come while the page speaks are dropped', async () => {
    const on = await listening();
    await say(on, '192');
    await say(on, '193');
    await spoken(on);
    expect(on.runner.session().visit.readings).toHaveLength(1);
  });

  it('that breaks the page’s understanding leaves it listening, with the words shown', async () => {
    const on = await listening();
    await say(on, 'break');
    expect(mode(on)).toBe('listening');
    expect(on.runner.session().notice).toEqual({ kind: 'broke', words: 'break' });
    expect(on.tones.at(-1)).toBe('again');
  });

  it('gives every event the next place in the log, also after one that was thrown away', async () => {
    const on = await listening({ audible: false });
    await say(on, 'pause');
    await say(on, '55');
    await say(on, 'resume');
    await say(on, '192');
    await say(on, '193');
    expect(on.appended.flat().map(({ seq }) => seq)).toEqual([1, 2, 3]);
  });
});

describe('on hold', () => {
  it('heeds nothing but the word to go on', async () => {
    const on = await listening({ audible: false });
    await say(on, 'pause');
    expect(on.runner.session().mode).toEqual({ kind: 'paused', by: 'voice' });
    await say(on, '192');
    expect(mode(on)).toBe('paused');
    expect(on.runner.session().visit.readings).toEqual([]);
    await say(on, 'resume');
    expect(mode(on)).toBe('listening');
  });

  it('by a press hears nothing at all until the next', async () => {
    const on = await listening();
    on.runner.send({ kind: 'pressed' });
    expect(on.ear.calls.at(-1)).toBe('gate');
    await say(on, 'resume');
    expect(on.runner.session().mode).toEqual({ kind: 'paused', by: 'press' });
    on.runner.send({ kind: 'pressed' });
    await settled();
    expect(mode(on)).toBe('listening');
  });
});

describe('a press while the page speaks', () => {
  it('cuts it off and listens; the cut-off speech’s end does not end the next one', async () => {
    const on = await listening();
    on.voice.slow.toHush = true;
    await say(on, '192');
    on.runner.send({ kind: 'pressed' });
    on.clock.advance(249);
    await settled();
    expect(mode(on)).toBe('speaking'); // its last word still sounds in the room
    on.clock.advance(1);
    await settled();
    expect(mode(on)).toBe('listening');
    await say(on, '193');
    on.voice.finishFirst();
    await settled();
    on.clock.advance(1_000);
    await settled();
    expect(mode(on)).toBe('speaking');
    expect(on.tones).toEqual(['listening', 'kept', 'kept']);
  });
});

describe('typing', () => {
  const typed = (on: Stage, words: string) => on.runner.send({ kind: 'typed', words });

  it('works where the microphone is refused', async () => {
    const on = stage({ audible: false });
    on.ear.opening = { kind: 'deaf', why: 'refused' };
    on.runner.send({ kind: 'pressed' });
    await settled();
    typed(on, '192');
    await settled();
    expect(on.runner.session().visit.readings).toHaveLength(1);
    expect(on.runner.session().mode).toEqual({ kind: 'deaf', why: 'refused' });
  });

  it('waits its turn while a sentence is being kept, and loses nothing', async () => {
    const on = stage({ audible: false });
    typed(on, '1');
    typed(on, '2');
    typed(on, '3');
    await settled();
    expect(on.runner.session().visit.readings.map(({ reading }) => reading.value)).toEqual([
      1, 2, 3,
    ]);
    expect(mode(on)).toBe('asleep');
  });

  it('while the page speaks cuts it off', async () => {
    const on = await listening();
    await say(on, '192');
    typed(on, '193');
    await settled();
    expect(on.voice.said).toEqual(['spoken 192', 'spoken 193']);
    expect(on.runner.session().visit.readings).toHaveLength(2);
  });

  it('takes no empty sentence', () => {
    const on = stage();
    typed(on, '  ');
    expect(mode(on)).toBe('asleep');
  });
});

describe('a doubt', () => {
  it('is asked about when the reply is over, and listened to as yes or no', async () => {
    const on = await listening();
    await say(on, 'doubt');
    await spoken(on);
    expect(mode(on)).toBe('asking');
    expect(on.ear.calls.at(-1)).toBe('listen yesOrNo');
  });

  it('is asked about without a microphone too', async () => {
    const on = stage({ audible: false });
    on.runner.send({ kind: 'typed', words: 'doubt' });
    await settled();
    expect(mode(on)).toBe('asking');
    expect(earOf(on.runner.session().mode)).toEqual({ kind: 'asleep' });
  });

  it('does not hold the page up: the next sentence is heard as anything', async () => {
    const on = await listening({ audible: false });
    await say(on, 'doubt');
    await say(on, '192');
    expect(mode(on)).toBe('listening');
    expect(on.ear.calls.at(-1)).toBe('listen anything');
    expect(on.runner.session().visit.doubts).toHaveLength(1);
  });
});

describe('an ear that is lent', () => {
  it('hears nothing until the next press', async () => {
    const on = await listening({ audible: false });
    on.runner.send({ kind: 'earLent' });
    expect([mode(on), on.ear.calls.at(-1)]).toEqual(['paused', 'gate']);
    on.runner.send({ kind: 'pressed' });
    await settled();
    expect(mode(on)).toBe('listening');
  });

  it('stays asleep where it was', () => {
    const on = stage();
    on.runner.send({ kind: 'earLent' });
    expect(mode(on)).toBe('asleep');
  });
});

describe('a question left open', () => {
  it('is taken up from the sheet and answered', async () => {
    const on = await listening({ audible: false });
    await say(on, 'doubt');
    on.runner.send({ kind: 'questionLeft' });
    await say(on, '192');
    expect(on.runner.session().raised).toBeNull();
    on.runner.send({ kind: 'questionTakenUp' });
    expect(mode(on)).toBe('asking');
    expect(on.ear.calls.at(-1)).toBe('listen yesOrNo');
  });

  it('is taken up on hold and without a microphone too, and a press then opens the ear', async () => {
    const on = await listening({ audible: false });
    await say(on, 'doubt');
    on.runner.send({ kind: 'pressed' });
    on.runner.send({ kind: 'questionTakenUp' });
    expect(mode(on)).toBe('asking');
    expect(on.ear.calls.at(-1)).toBe('gate');
    on.runner.send({ kind: 'pressed' });
    expect(on.ear.calls.at(-1)).toBe('open');
  });

  it('cannot be taken up where there is none', async () => {
    const on = await listening({ audible: false });
    on.runner.send({ kind: 'questionTakenUp' });
    expect(mode(on)).toBe('listening');
  });
});

describe('the open tab', () => {
  it('is wide when pressed and gives way when pressed again', async () => {
    const on = await listening({ audible: false });
    const tall: boolean[] = [];
    for (const tab of ['sheet', 'sheet', 'note', 'sheet'] as const) {
      on.runner.send({ kind: 'tabChosen', tab });
      tall.push(on.runner.session().tall);
    }
    expect(tall).toEqual([true, false, true, true]);
  });

  it('is the note, wide, while it is read, until the next sentence', async () => {
    const on = await listening({ audible: false });
    await say(on, '192');
    await say(on, 'readNote');
    expect(on.runner.session()).toMatchObject({ tab: 'note', tall: true, lastEffect: 'readNote' });
    await say(on, '193');
    expect(on.runner.session()).toMatchObject({ tab: 'note', tall: false, lastEffect: null });
  });
});

describe('a log that does not take it', () => {
  it('is told, never said to be kept, and tried again until it does', async () => {
    const on = await listening();
    on.refuse.why = 'storageFull';
    await say(on, '192');
    expect(on.tones.at(-1)).toBe('again');
    expect(on.voice.said).toEqual(['not kept: storageFull.']);
    expect(on.runner.session().unkept).toBe(2);
    expect(on.runner.session().notice).toEqual({ kind: 'notKept', why: 'storageFull' });
    await spoken(on);
    delete on.refuse.why;
    on.clock.advance(60_000);
    await settled();
    expect(on.runner.session().unkept).toBe(0);
    expect(on.runner.session().notice).toEqual({ kind: 'keptAtLast' });
    expect(on.appended.flat().map(({ type }) => type)).toEqual(['visitOpened', 'readingTaken']);
  });

  it('still answers what was asked', async () => {
    const on = await listening();
    on.refuse.why = 'unknown';
    await say(on, 'question');
    expect(on.voice.said).toEqual(['not kept: unknown. spoken question']);
  });

  it('takes what was held together with the next sentence, in order and once', async () => {
    const on = await listening({ audible: false });
    on.refuse.why = 'unknown';
    await say(on, '192');
    delete on.refuse.why;
    await say(on, '193');
    on.clock.advance(60_000);
    await settled();
    expect(on.appended.flat().map(({ type, seq }) => `${seq} ${type}`)).toEqual([
      '1 visitOpened',
      '2 readingTaken',
      '3 readingTaken',
    ]);
    expect(on.runner.session().unkept).toBe(0);
  });
});

describe('a finished visit', () => {
  const finished = async (): Promise<Stage> => {
    const on = await listening({ audible: false });
    await say(on, '192');
    await say(on, 'finish');
    return on;
  };

  it('shows the note, lets the microphone go and sleeps', async () => {
    const on = await finished();
    expect(mode(on)).toBe('asleep');
    expect(on.runner.session().tab).toBe('note');
    expect(on.ear.calls).toContain('close');
    expect(await on.log.openVisit()).toBeNull();
  });

  it('still answers questions, and a reading begins the next visit', async () => {
    const on = await finished();
    const first = on.runner.session().visit.visit;
    on.runner.send({ kind: 'typed', words: 'question' });
    await settled();
    expect(on.runner.session().visit.visit).toBe(first);
    on.runner.send({ kind: 'typed', words: '150' });
    await settled();
    const { visit } = on.runner.session();
    expect(visit.visit).not.toBe(first);
    expect(visit.readings.map(({ reading }) => reading.value)).toEqual([150]);
  });
});

describe('choices on the page', () => {
  it('a blank pressed asks for that reading, and the ear expects a number', async () => {
    const on = await listening({ audible: false });
    on.runner.send({ kind: 'readingWanted', quantity: 'boxTemp' });
    await settled();
    expect(on.runner.session().visit.wanted).toBe('boxTemp');
    expect(on.ear.calls.at(-1)).toBe('listen number');
  });

  it('expects that number once: what is not one may be anything', async () => {
    const on = await listening({ audible: false });
    on.runner.send({ kind: 'readingWanted', quantity: 'boxTemp' });
    await settled();
    on.ear.hear({ kind: 'unclear' });
    expect(on.ear.calls.at(-1)).toBe('listen anything');
    await say(on, 'question');
    expect(on.ear.calls.at(-1)).toBe('listen anything');
    expect(on.runner.session().visit.wanted).toBe('boxTemp');
  });

  it('settings are events, and the next visit keeps them', async () => {
    const on = stage({ audible: false });
    on.runner.send({ kind: 'settingsChosen', settings: { units: 'si', altitudeM: 300 } });
    await settled();
    on.runner.send({ kind: 'newVisitChosen' });
    await settled();
    expect(on.runner.session().visit.settings).toEqual({ units: 'si', altitudeM: 300 });
    expect(await on.log.visits()).toHaveLength(2);
  });

  it('a choice made while a sentence is being kept is not undone by it', async () => {
    const on = await listening({ audible: false });
    await say(on, '192');
    on.runner.send({ kind: 'readingWanted', quantity: 'boxTemp' });
    on.ear.hear(offered('193'));
    await settled();
    expect(on.runner.session().visit.wanted).toBe('boxTemp');
    expect(on.runner.session().visit.readings).toHaveLength(2);
  });
});

describe('what cannot be understood', () => {
  it('beeps twice in a row, then only shows it', async () => {
    const on = await listening();
    const beeps = () => on.tones.filter((tone) => tone === 'again').length;
    for (const expected of [1, 2, 2, 2]) {
      on.ear.hear({ kind: 'unclear' });
      expect(beeps()).toBe(expected);
      expect(mode(on)).toBe('listening');
    }
    expect(on.runner.session().notice).toEqual({ kind: 'unclear' });
  });
});
