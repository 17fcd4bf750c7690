import { describe, expect, it } from 'vitest';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { leftOpen } from '../../core/visit/left-open.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { applyEvents } from '../../core/visit/apply.ts';
import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { createStamp } from '../support/stamp.ts';

function speak(...lines: readonly string[]): Turn {
  const stamp = createStamp();
  const turns = lines.reduce<readonly Turn[]>((before, words) => {
    const { state, memory } = before.at(-1) ?? { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
    return [...before, takeTurn({ state, memory, words, stamp })];
  }, []);
  const last = turns.at(-1);
  if (!last) throw new Error('say at least one line');
  return last;
}

const left = (state: VisitState) => leftOpen(state).map(({ part, as }) => `${part} ${as}`);
const after = (...lines: readonly string[]) => left(speak(...lines).state);

describe('what was clamped on for the job', () => {
  it.each(['pulled the taps', 'took the line taps off', 'removed the piercing valves'])(
    'is not left open: %s',
    (words) => {
      expect(after('put line taps on', words)).toEqual([]);
    },
  );

  it('but an access fitting that was taken off is', () => {
    expect(after('removed the access fitting')).toEqual(['accessFitting removed']);
  });
});

describe('what is left open', () => {
  it('is put back with the breaker only where it was told off by it: a lock stands elsewhere', () => {
    expect(after('killed the breaker', "breaker's back on")).toEqual([]);
    expect(after('locked out the disconnect', "breaker's back on")).toEqual([
      'disconnect lockedOut',
    ]);
  });

  it('is a lock only where one was told, which stays on until it is told off', () => {
    expect(after('shut it off')).toEqual(['disconnect isolated']);
    expect(after('shut it off', 'locked it out')).toEqual(['disconnect lockedOut']);
    expect(after('locked it out', "power's off")).toEqual(['disconnect lockedOut']);
    expect(after('locked it out', 'my lock is off')).toEqual([]);
  });

  it.each([
    'reset the high pressure switch',
    'high pressure switch is closed',
    'high pressure switch is ok',
    'replaced the high pressure switch',
  ])('stays bypassed after "%s": the jumper is still on', (said) => {
    const jumped = 'i jumped out the high pressure switch';
    expect(after(jumped, said)).toEqual(['highPressureSwitch bypassed']);
    expect(after(jumped, said, 'pulled the jumper')).toEqual([]);
  });

  it.each([
    ['i jumped out the low pressure switch', 'lowPressureSwitch bypassed'],
    ['shut off the king valve', 'kingValve closed'],
    ['front seated the discharge service valve', 'dischargeServiceValve closed'],
    ['suction service valve is closed', 'suctionServiceValve closed'],
    ['propped the door open', 'door open'],
    ['the disconnect is open', 'disconnect open'],
    ['locked out and tagged', 'disconnect lockedOut'],
    ['unplugged the evaporator fan', 'evaporatorFan disabled'],
    ['it is unplugged', 'plug disabled'],
    ['put my gauges on', 'gauges connected'],
    ['took the caps off', 'caps removed'],
    ['pulled the cover', 'panel removed'],
    ['turned the thermostat down for the test', 'temperatureControl setForTest'],
    ['pulled the compressor', 'compressor removed'],
  ])('is told by "%s"', (said, open) => {
    expect(after(said)).toEqual([open]);
  });

  it.each([
    ['i jumped out the low pressure switch', 'pulled the jumper'],
    ['i jumped out the low pressure switch', 'took the jumper off the low pressure switch'],
    ['shut off the king valve', 'opened the king valve'],
    ['shut off the king valve', "valve's back open"],
    ['king valve is closed', 'king valve is back open'],
    ['front seated the discharge service valve', 'back seated the discharge service valve'],
    ['propped the door open', 'closed the door'],
    ['locked out and tagged', "power's back on"],
    ['it is unplugged', 'plugged it back in'],
    ['disconnected the condenser fan', 'condenser fan is running'],
    ['pulled the compressor leads off to ohm it', "compressor's running"],
    ['pulled the compressor leads off to ohm it', 'compressor amps six point two'],
    ['disconnected the condenser fan motor', 'condenser fan is drawing one point four amps'],
    ['put my gauges on', 'gauges are off'],
    ['took the caps off', 'caps are on'],
    ['turned the thermostat down for the test', 'thermostat is back where it was'],
    ['pulled the compressor', 'replaced the compressor'],
  ])('after "%s" is put right by "%s"', (said, putRight) => {
    expect(after(said, putRight)).toEqual([]);
  });

  it('takes a part that was disconnected for a test and drew amps since for none that was left so', () => {
    const tested = ['box forty', 'pulled the compressor leads off to ohm it'];
    const note = (...more: readonly string[]) =>
      noteText(draftNote(speak(...tested, ...more, 'replaced the start relay').state));
    expect(note()).toMatch(/disconnected the compressor/);
    const ran = note('compressor amps six point two');
    expect(ran).not.toMatch(/disconnected/);
    expect(ran).toContain('Compressor disabled; it ran again after that.');
  });

  it('leaves off what was disconnected after it ran, and what drew nothing since', () => {
    const off = 'pulled the compressor leads off to ohm it';
    expect(after("compressor's running", off)).toEqual(['compressor disabled']);
    expect(after(off, 'compressor amps zero')).toEqual(['compressor disabled']);
    expect(after(off, 'condenser fan is running')).toEqual(['compressor disabled']);
  });

  it('does not guess which of two bypasses the jumper was on', () => {
    const said = ['i jumped out the low pressure switch', 'bypassed the high pressure switch'];
    expect(after(...said, 'pulled the jumper')).toEqual([
      'lowPressureSwitch bypassed',
      'highPressureSwitch bypassed',
    ]);
  });

  it('takes gauges for no work: what is read with them is the baseline', () => {
    const { state, reply } = speak('put my gauges on', 'head one ninety');
    expect(state.work).toEqual([]);
    expect(state.readings.map(({ phase }) => phase)).toEqual(['before']);
    expect(reply.text).toBe('Head 190.');
  });

  it('lets the after stand when the gauges come off', () => {
    const { state } = speak(
      'head one ninety',
      'i brushed the condenser',
      'head one sixty',
      'mark this as after',
      'gauges are off',
    );
    expect(state.afterMarkedAt).not.toBeNull();
  });

  it('is undone with the words that told it', () => {
    expect(after('i jumped out the low pressure switch', 'take that back')).toEqual([]);
  });
});

describe('finishing with something open', () => {
  const open = ['head one ninety', 'i jumped out the low pressure switch', 'put my gauges on'];

  it('says what is open and does not finish, however often it is asked', () => {
    const { state, reply, effect } = speak(...open, 'finish', 'finish');
    expect(state.finishedAt).toBeNull();
    expect(effect).toBeNull();
    expect(reply.text).toBe(
      'Not finished. Still open: low-pressure switch jumped out, gauges on. Say what is put back, or say finish anyway.',
    );
  });

  it('counts down as things are put back, and finishes then', () => {
    const first = speak(...open, 'finish', 'jumper is off');
    expect(first.reply.text).toBe(
      'Low-pressure switch restored. Still open: gauges on. Say what is put back, or say finish anyway.',
    );
    expect(speak(...open, 'finish', 'jumper is off', 'gauges are off').reply.text).toBe(
      'Gauges taken off. Nothing is left open. Say finish.',
    );
    const last = speak(...open, 'finish', 'jumper is off', 'gauges are off', 'finish');
    expect(last.effect).toBe('finish');
    expect(last.state.finishedAt).not.toBeNull();
  });

  it('finishes on the technician’s word, and the note says so', () => {
    const { state, effect, reply } = speak(...open, 'finish', 'finish anyway');
    expect(effect).toBe('finish');
    expect(reply.text).toBe(
      'Finished, left so: low-pressure switch jumped out, gauges on. The note says it.',
    );
    const lines = draftNote(state).sections.find(({ id }) => id === 'open')?.lines;
    expect(lines).toContain(
      'Finished with this not reported put back: low-pressure switch jumped out.',
    );
  });

  it('stands the same when the log is read again', () => {
    const { state } = speak(...open, 'finish');
    expect(applyEvents(state.history)).toEqual(state);
  });
});

describe('the refrigerant account', () => {
  it('reconciles what went in, out and astray', () => {
    const { reply, state } = speak(
      "it's on 134a",
      'the charge is thirty eight ounces',
      'recovered two pounds',
      'lost an ounce in the hoses',
      'weighed in thirty eight ounces',
      'how much did i move',
    );
    expect(reply.text).toBe(
      'R-134a: 5 oz more in it: in 38 oz, out 32 oz, lost 1 oz. The nameplate charge is 38 oz.',
    );
    const lines = draftNote(state).sections.find(({ id }) => id === 'refrigerant')?.lines;
    expect(lines).toContain('R-134a: in 2 lb 6 oz, out 2 lb, lost 1 oz, net 5 oz added.');
  });
});
