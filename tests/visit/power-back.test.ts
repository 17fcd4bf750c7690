import { describe, expect, it } from 'vitest';
import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../core/turn/turn.ts';
import { applyEvents } from '../../core/visit/apply.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { leftOpen } from '../../core/visit/left-open.ts';
import { visitEventSchema } from '../../core/wire/event-schema.ts';
import { createStamp } from '../support/stamp.ts';

function speak(...lines: readonly string[]): readonly Turn[] {
  const stamp = createStamp();
  return lines.reduce<readonly Turn[]>((before, words) => {
    const { state, memory } = before.at(-1) ?? { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
    return [...before, takeTurn({ state, memory, words, stamp })];
  }, []);
}

function lastOf(...lines: readonly string[]): Turn {
  const last = speak(...lines).at(-1);
  if (!last) throw new Error('say at least one line');
  return last;
}

const written = (turn: Turn): string => noteText(draftNote(turn.state)).replace(/\s+/g, ' ');

const LOCKED = ['head one ninety', 'locked it out'];
const ASKED = 'Is the disconnect back on?';

describe('power that was told off', () => {
  it.each([
    'compressor is running',
    'condenser fan is running',
    'evaporator fan is running',
    'two thirty three at the compressor',
    'running amps are eleven point six',
    'evaporator fan two thirty volts',
  ])('is asked about at "%s"', (said) => {
    expect(lastOf(...LOCKED, said).reply.text).toMatch(/Is the disconnect back on\?$/);
  });

  it.each([
    'zero volts at the compressor',
    'compressor is not running',
    'two thirty on the line side',
    'compressor reads zero amps',
    'box is forty',
    'compressor to ground is over a hundred megohms',
  ])('is not asked about at "%s"', (said) => {
    expect(lastOf(...LOCKED, said).reply.text).not.toContain('back on');
  });

  it('is not asked about by what ran before it was cut', () => {
    const turns = speak('compressor is running', 'locked it out', 'head one ninety');
    expect(turns.map(({ reply }) => reply.text).join(' ')).not.toContain('back on?');
  });

  it('names the plug, the breaker, or both that are told', () => {
    expect(lastOf('unplugged it', 'compressor is running').reply.text).toBe(
      'Compressor running. Is the plug back in?',
    );
    expect(lastOf('unplugged it', 'locked it out', 'compressor is running').reply.text).toBe(
      'Compressor running. Is the plug back in and the disconnect back on?',
    );
  });

  it('takes yes for it, and nothing is left open', () => {
    const turn = lastOf(...LOCKED, 'compressor is running', 'yes');
    expect(turn.reply.text).toBe('Disconnect back on.');
    expect(leftOpen(turn.state)).toEqual([]);
    expect(lastOf(...LOCKED, 'compressor is running', 'yes', 'finish').effect).toBe('finish');
  });

  it('takes no for it, and says so to the end', () => {
    const said = [...LOCKED, 'evaporator fan is running', 'no'];
    expect(lastOf(...said).reply.text).toBe('Still off: disconnect.');
    expect(lastOf(...said, 'what have i left open').reply.text).toContain('disconnect locked out');
    expect(lastOf(...said, 'finish').reply.text).toContain('Still open: disconnect locked out.');
    expect(written(lastOf(...said))).toContain('Left with disconnect locked out.');
  });

  it('does not let no take back what was read with it', () => {
    const { state } = lastOf(...LOCKED, 'two thirty three at the compressor', 'no');
    expect(state.readings.some(({ reading }) => reading.value === 233)).toBe(true);
  });

  it('is asked once, and again once it is cut again', () => {
    const once = speak(
      ...LOCKED,
      'compressor is running',
      'box is forty',
      'condenser fan is running',
    );
    expect(once.filter(({ reply }) => reply.text.includes(ASKED))).toHaveLength(1);
    const again = speak(
      ...LOCKED,
      'compressor is running',
      'yes',
      'locked it out',
      'compressor is running',
    );
    expect(again.filter(({ reply }) => reply.text.includes(ASKED))).toHaveLength(2);
  });

  it('leaves a yes to a doubt that is asked later', () => {
    const said = [...LOCKED, 'compressor is running', 'head eight hundred and forty'];
    const { state } = lastOf(...said, 'yes');
    expect(state.readings.some(({ reading }) => reading.value === 840)).toBe(true);
    expect(leftOpen(state)).toHaveLength(1);
  });

  it('is never written down as left off while that is not answered', () => {
    const turn = lastOf(...LOCKED, 'compressor is running', 'box is forty');
    expect(lastOf(...LOCKED, 'compressor is running', 'what have i left open').reply.text).toBe(
      'Nothing you told me is left open. 1 question besides.',
    );
    expect(written(turn)).not.toMatch(/Left with|As we left it/);
    expect(written(turn)).toContain(
      'Not reported put back, and the unit ran after that: disconnect locked out.',
    );
  });

  it('holds the finish and asks there', () => {
    const said = [...LOCKED, 'compressor is running', 'box is forty', 'finish'];
    const held = lastOf(...said);
    expect(held.effect).toBeNull();
    expect(held.reply.text).toBe(
      'Not finished. Say what is put back, or say finish anyway. Is the disconnect back on?',
    );
    expect(lastOf(...said, 'yes').reply.text).toBe(
      'Disconnect back on. Nothing is left open. Say finish.',
    );
    expect(lastOf(...said, 'yes', 'finish').state.finishedAt).not.toBeNull();
    const anyway = lastOf(...said, 'finish anyway');
    expect(anyway.reply.text).toBe('Finished. 1 open question in the note: settle it there.');
  });

  it('stands the same when the log is read again, and crosses the wire', () => {
    for (const answer of ['yes', 'no']) {
      const { state } = lastOf(...LOCKED, 'compressor is running', answer);
      expect(applyEvents(state.history)).toEqual(state);
      for (const event of state.history) expect(visitEventSchema.parse(event)).toEqual(event);
    }
  });
});
