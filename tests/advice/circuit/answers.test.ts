import { describe, expect, it } from 'vitest';
import { answer } from '../../../core/advice/answer.ts';
import type { Question, Reading } from '../../../core/language/utterance.ts';
import type { EquipmentId, PartId, PlaceId } from '../../../core/terms/names.ts';
import { utteranceOf, working } from '../../support/utterances.ts';
import { read, readings, unitIs, visitOf } from '../visits.ts';

const volts = (place: PlaceId, value: number, words = ''): Reading => ({
  ...read('voltage', value, 'V'),
  place,
  words,
});
const amps = (place: PlaceId, value: number): Reading => ({
  ...read('current', value, 'A'),
  place,
});
const is = (value: EquipmentId) => unitIs({ fact: 'equipment', value });
const still = (part: PartId) =>
  utteranceOf({ findings: [{ part, state: 'notRunning', words: '' }] });

const ask = (question: Question, ...said: Parameters<typeof visitOf>[0]) =>
  answer(question, visitOf(said), { lastAnswer: null });
const isOpen = (about: PlaceId): Question => ({ ask: 'switch', about });
const NEXT: Question = { ask: 'nextCheck' };

function stateOf(about: PlaceId, ...all: readonly Reading[]): string {
  const verdict = ask(isOpen(about), is('reachIn'), readings(...all));
  return verdict.kind === 'known' && verdict.answer === 'switch' ? verdict.state : verdict.kind;
}

describe('published voltages across a device', () => {
  // hvacrassets.net, electric troubleshooting page 126; constructionmanuals.tpub.com/14259: 230 V across an open
  // switch, none across a closed one, 230 V across a motor.
  it('230 V across a switch on a 230 V supply: it is open', () => {
    expect(
      stateOf('temperatureControl', volts('lineSide', 230), volts('temperatureControl', 230)),
    ).toBe('open');
  });
  it('230 V across a motor: it gets its voltage', () => {
    expect(stateOf('condenserFan', volts('lineSide', 230), volts('condenserFan', 230))).toBe('fed');
  });
  // machineryequipmentonline.com, the hopscotch method: 24 V across is open, nothing across settles nothing.
  it('24 V across a switch on 24 V: open; nothing: not settled', () => {
    expect(
      stateOf('lowPressureSwitch', volts('lineSide', 24), volts('lowPressureSwitch', 24)),
    ).toBe('open');
    expect(stateOf('lowPressureSwitch', volts('lineSide', 24), volts('lowPressureSwitch', 0))).toBe(
      'undetermined',
    );
  });
  // achrnews.com, Ice breaker, the hopscotch method: 115 V before a contact and none after, it is open.
  it('115 V into a switch and none out of it: it is that switch', () => {
    const pair = 'one fifteen in, zero out';
    const verdict = ask(
      NEXT,
      is('reachIn'),
      readings(volts('lineSide', 115), volts('highPressureSwitch', 115)),
      readings(volts('lineSide', 115, pair), volts('loadSide', 0, pair)),
    );
    expect(verdict).toMatchObject({
      found: 'suspects',
      suspects: [{ of: 'highPressureSwitch', mode: 'open' }],
    });
  });
  it('nothing into the switch last named is no dead supply: the line side was read', () => {
    const pair = 'zero in, zero out';
    const all = [volts('lineSide', 115), volts('lowPressureSwitch', 0)];
    const into = [volts('lineSide', 0, pair), volts('loadSide', 0, pair)];
    expect(stateOf('lowPressureSwitch', ...all, ...into)).toBe('undetermined');
    const verdict = ask(NEXT, is('reachIn'), still('compressor'), readings(...all, ...into));
    expect(verdict.kind === 'known' && verdict.answer === 'nextPlace' && verdict.suspects).toEqual([
      { of: 'returnPath', mode: 'open' },
      { of: 'temperatureControl', mode: 'open' },
      { of: 'highPressureSwitch', mode: 'open' },
    ]);
  });
  // achrnews.com/articles/165272: rated voltage at a motor that does not run.
  it('rated volts and no amps at the compressor: the compressor, not the controls', () => {
    const verdict = ask(
      NEXT,
      is('reachIn'),
      readings(volts('lineSide', 115), volts('compressor', 115), amps('compressor', 0)),
    );
    expect(verdict).toMatchObject({
      answer: 'nextPlace',
      found: 'suspects',
      suspects: [{ of: 'compressor', mode: 'open' }],
      cautions: ['liveWork', 'capacitorCharge'],
    });
  });
  it('a few volts across: a burnt contact or a ghost, read again on low impedance', () => {
    expect(
      ask(
        isOpen('overload'),
        is('reachIn'),
        readings(volts('lineSide', 115), volts('overload', 6)),
      ),
    ).toMatchObject({
      state: 'partial',
      cautions: ['liveWork', 'ghostVoltage'],
    });
  });
});

describe('what is asked before anything is judged', () => {
  it('is the supply, then the leads across the switch', () => {
    expect(
      ask(isOpen('highPressureSwitch'), readings(volts('highPressureSwitch', 0))),
    ).toMatchObject({
      kind: 'needs',
      need: 'supplyVoltage',
      place: 'lineSide',
      cautions: ['liveWork'],
    });
    expect(ask(isOpen('highPressureSwitch'), readings(volts('lineSide', 115)))).toMatchObject({
      kind: 'needs',
      need: 'voltageAcross',
      place: 'highPressureSwitch',
    });
    expect(ask(NEXT, is('reachIn'), readings(volts('compressor', 0)))).toMatchObject({
      need: 'supplyVoltage',
    });
    expect(ask(NEXT, readings(volts('compressor', 0)))).toMatchObject({ need: 'equipment' });
  });
  it('is nothing where the supply itself is dead, and that proves nothing dead', () => {
    expect(ask(isOpen('overload'), readings(volts('lineSide', 0)))).toMatchObject({
      state: 'noSupply',
      cautions: ['liveWork', 'notProvenDead'],
    });
    expect(ask(NEXT, is('walkInCooler'), readings(volts('lineSide', 0)))).toMatchObject({
      suspects: [{ of: 'supply', mode: 'dead' }],
    });
  });
});

describe('following the power', () => {
  const powered = [is('reachIn'), readings(volts('lineSide', 115)), still('compressor')];

  it('never takes readings to ground for evidence: both sides of a broken leg read the same', () => {
    const before = ask(NEXT, ...powered, readings(volts('compressor', 0)));
    const after = ask(
      NEXT,
      ...powered,
      readings(volts('commonGround', 115), volts('startGround', 115), volts('compressor', 0)),
    );
    expect(after.kind === 'known' && after.answer === 'nextPlace' && after.suspects).toEqual(
      before.kind === 'known' && before.answer === 'nextPlace' && before.suspects,
    );
  });
  it('says "passing" only when another reading shows power behind it', () => {
    const zero = volts('highPressureSwitch', 0);
    const verdict = ask(isOpen('highPressureSwitch'), ...powered, readings(zero));
    expect(verdict).toMatchObject({ state: 'undetermined' });
    const fed = ask(
      isOpen('highPressureSwitch'),
      ...powered,
      readings(zero, volts('compressor', 115)),
    );
    expect(fed).toMatchObject({ state: 'passing', next: null });
  });
  it('warns against resetting the safety it found open', () => {
    expect(ask(NEXT, ...powered, readings(volts('highPressureSwitch', 115)))).toMatchObject({
      found: 'suspects',
      suspects: [{ of: 'highPressureSwitch', mode: 'open' }],
      cautions: ['liveWork', 'repeatedReset'],
    });
  });
  it('suspects what holds a low-pressure switch open in a walk-in that pumps down', () => {
    const verdict = ask(
      NEXT,
      is('walkInCooler'),
      readings(volts('lineSide', 230), volts('lowPressureSwitch', 230)),
    );
    expect(verdict.kind === 'known' && verdict.answer === 'nextPlace' && verdict.suspects).toEqual([
      { of: 'temperatureControl', mode: 'open' },
      { of: 'temperatureControl', mode: 'burnt' },
      { of: 'liquidLineSolenoid', mode: 'open' },
      { of: 'lowPressureSwitch', mode: 'open' },
    ]);
  });
  it('begins again after work: what was done may have closed what was open', () => {
    expect(
      ask(
        isOpen('highPressureSwitch'),
        readings(volts('lineSide', 115), volts('highPressureSwitch', 115)),
        working(),
      ),
    ).toMatchObject({ kind: 'needs', need: 'supplyVoltage' });
  });
  it('says when the readings fit no circuit, and refuses a unit it has no circuit for', () => {
    const both = readings(
      volts('lineSide', 115),
      volts('highPressureSwitch', 115),
      volts('temperatureControl', 115),
    );
    expect(ask(NEXT, is('reachIn'), both, readings(volts('overload', 115)))).toMatchObject({
      found: 'contradiction',
    });
    expect(ask(NEXT, is('iceMachine'), both)).toMatchObject({ reason: 'noCircuitKnown' });
    expect(ask(isOpen('startCapacitor'), both)).toMatchObject({ reason: 'notASwitch' });
  });
  it('leaves the next check to others once something else was read last', () => {
    const running = [is('reachIn'), readings(volts('lineSide', 115))];
    const verdict = ask(NEXT, ...running, readings(read('boxTemp', 50, 'degF')));
    expect(verdict).not.toMatchObject({ answer: 'nextPlace' });
  });
  it('goes on along the power while the compressor stands, whatever else was read', () => {
    const verdict = ask(NEXT, ...powered, readings(read('boxTemp', 50, 'degF')));
    expect(verdict).toMatchObject({ answer: 'nextPlace', found: 'searching' });
  });
});

describe('ohms with power off', () => {
  const ohms = (place: PlaceId, value: number | null): Reading => {
    const { value: zero, ...rest } = { ...read('resistance', 0, 'ohm'), place };
    return value === null ? { ...rest, overlimit: true } : { ...rest, value };
  };

  it('no path is open, next to none is closed, and a winding is neither', () => {
    expect(stateOf('highPressureSwitch', ohms('highPressureSwitch', null))).toBe('noPath');
    expect(stateOf('highPressureSwitch', ohms('highPressureSwitch', 0.2))).toBe('path');
    expect(stateOf('contactor', ohms('contactor', 14))).toBe('ohmsRead');
  });

  it('find an open device without a supply reading', () => {
    const verdict = ask(NEXT, is('walkInCooler'), readings(ohms('contactor', null)));
    expect(verdict).toMatchObject({
      answer: 'nextPlace',
      found: 'suspects',
      suspects: [{ of: 'contactor', mode: 'open' }],
    });
  });

  it('take a closed switch out of the suspects that its zero volts left in', () => {
    const dead = [volts('lineSide', 115), volts('compressor', 0), volts('highPressureSwitch', 0)];
    const suspects = (...more: readonly Reading[]): readonly string[] => {
      const verdict = ask(NEXT, is('reachIn'), readings(...dead, ...more));
      return verdict.kind === 'known' && verdict.answer === 'nextPlace'
        ? verdict.suspects.map(({ of, mode }) => `${of} ${mode}`)
        : [];
    };
    expect(suspects()).toContain('lowPressureSwitch open');
    const after = suspects(ohms('lowPressureSwitch', 0.1));
    expect(after).not.toContain('lowPressureSwitch open');
    expect(after).toContain('temperatureControl open');
    expect(suspects().length).toBeGreaterThan(after.length);
  });

  it('of a heater are no part of any circuit here', () => {
    expect(ask(NEXT, is('reachIn'), readings(ohms('defrostHeater', 12)))).not.toMatchObject({
      answer: 'nextPlace',
    });
  });
});

describe('the circuit of a plug-in', () => {
  const dead = [volts('lineSide', 115), volts('compressor', 0)];
  const suspects = (isFreezer: boolean): readonly string[] => {
    const reachIn = { fact: 'equipment', value: 'reachIn' } as const;
    const kind = isFreezer ? ({ ...reachIn, freezer: true } as const) : reachIn;
    const verdict = ask(NEXT, unitIs(kind), readings(...dead));
    return verdict.kind === 'known' && verdict.answer === 'nextPlace'
      ? verdict.suspects.map(({ of, mode }) => `${of} ${mode}`)
      : [];
  };

  it('has a defrost timer in its path where it is a freezer', () => {
    expect(suspects(true)).toContain('defrostTimer open');
    expect(suspects(false)).not.toContain('defrostTimer open');
    expect(suspects(false).length).toBeGreaterThan(0);
  });
});
