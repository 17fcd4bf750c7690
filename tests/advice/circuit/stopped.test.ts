import { describe, expect, it } from 'vitest';
import { timedVisit, type TimedLine } from '../../support/timed-visit.ts';

// Voltage across: an open switch has the source's, a closed one nothing, a load that is fed the source's
// (hvacrassets.net, ETAHPM page 126); the first point without it is past the open device (achrnews.com, Ice breaker:
// the hopscotch method); a load with its voltage that does nothing is the load (achrnews.com/articles/165272).

const WALK_IN: readonly string[] = [
  "it's a walk in cooler on r twenty two with a txv and a remote condensing unit",
  "the compressor isn't running",
];

const heard = (...said: readonly string[]) =>
  timedVisit(...said.map((words, at): TimedLine => [at, words])).last;
const asked = (...said: readonly string[]): string => heard(...WALK_IN, ...said).reply.text;

const POWER = 'follow the power first: read the line side, then its controls in order.';
const NOT_ELECTRICAL = /sight glass|condenser coil|low charge|evaporator fan/i;

describe('a compressor that stands still', () => {
  it.each(['what next', 'what do i check first', 'where do i start', 'what should i check next'])(
    'is followed by its power first: "%s"',
    (question) => {
      const reply = asked(question);
      expect(reply).toContain(POWER);
      expect(reply).toContain('lock out');
      expect(reply).not.toMatch(NOT_ELECTRICAL);
    },
  );

  it.each(["it won't start", 'compressor is dead', 'the compressor is not running'])(
    'is so however it is told: "%s"',
    (told) => {
      expect(heard("it's a reach in with a compressor", told, 'what next').reply.text).not.toMatch(
        NOT_ELECTRICAL,
      );
    },
  );

  it('is asked for its kind of unit where that is not known', () => {
    expect(heard("the compressor isn't running", 'what next').verdicts).toMatchObject([
      { kind: 'needs', need: 'equipment' },
    ]);
  });

  it('asks for the next place as soon as the supply is told', () => {
    expect(asked('what next', 'two thirty two coming in')).toContain('Next, put the leads');
  });

  it('is no riddle once what stopped it was found', () => {
    expect(asked('high pressure switch is tripped', 'what next')).not.toContain(POWER);
  });

  it('stands as it should where it was switched off or pumped down', () => {
    expect(asked('locked out the disconnect', 'what next')).not.toContain(POWER);
    expect(asked('pumped it down', 'what next')).not.toContain(POWER);
  });

  it('is left alone where what can hurt comes first', () => {
    expect(asked('the disconnect is burnt', 'what next')).toContain('Make it safe first');
  });

  it('asks for pressures again once it runs', () => {
    expect(asked('compressor is running', 'what next')).not.toContain(POWER);
  });
});

const OUT = 'two thirty two on the line side of the contactor and zero on the load side';

describe('power in and none out of the contactor', () => {
  it.each(['what does that tell me', 'what next', 'what does that mean', "what's wrong with it"])(
    'leads to its coil: "%s"',
    (question) => {
      expect(asked(OUT, question)).toContain(
        'the contactor is not pulled in, or its contacts are open. Read across its coil.',
      );
    },
  );

  it.each(['coil has zero volts on it', 'zero volts at the coil', 'nothing on the coil'])(
    'and a coil without voltage to the controls before it: "%s"',
    (told) => {
      const { state, reply } = heard(...WALK_IN, OUT, told, 'what does that mean');
      expect(state.readings.at(-1)?.reading).toMatchObject({
        quantity: 'voltage',
        place: 'contactor',
        value: 0,
      });
      expect(reply.text).toContain('No power gets to the contactor: something before it is open.');
    },
  );

  it('takes a bare answer for the coil that was asked for', () => {
    for (const said of ['zero', 'nothing', 'no voltage there']) {
      const { state } = heard(...WALK_IN, OUT, 'what next', said);
      expect(state.readings.at(-1)?.reading).toMatchObject({ place: 'contactor', value: 0 });
    }
  });

  it('is no coil of pipes that has degrees', () => {
    const { state } = heard(...WALK_IN, OUT, 'the coil is at twenty eight');
    expect(state.readings.map(({ reading }) => reading.place)).toEqual(['lineSide', 'loadSide']);
  });

  it('goes on with the controls once one of them was read', () => {
    expect(asked(OUT, 'zero across the temperature control', 'what next')).not.toContain(
      'its coil',
    );
  });
});

describe('the whole supply across the low-pressure switch', () => {
  const OPEN = [OUT, 'coil has zero volts on it', 'two thirty two across the low pressure switch'];

  it.each([
    "does that mean it's bad",
    'what does that mean',
    'what would that mean',
    'is that a problem',
    'is that bad',
    'is that normal',
    'does that mean the switch is bad',
  ])('is an open switch, with what opens it: "%s"', (question) => {
    const reply = asked(...OPEN, question);
    expect(reply).toContain('it is open. Low suction opens it: short of gas, a shut valve');
    expect(reply).toContain('Do not run it with a safety bypassed');
  });

  it('did its job where suction is past its setting', () => {
    const read = [...OPEN, 'suction is nine and head is one sixty', 'is that what shut it off'];
    expect(asked(...read)).toBe('Tell me the low-pressure cut-out.');
    expect(asked(...read, 'low pressure cut out is ten')).toContain(
      'Suction is 9 psi, low-pressure cut-out at 10 psi: 1 psi past it.',
    );
  });
});

describe('what was told last', () => {
  it('means what its readings lead to', () => {
    const read = [
      "it's a reach in on one thirty four a with a txv",
      'head one ninety, suction four',
    ];
    expect(heard(...read, 'ambient eighty', 'what would that mean').verdicts).toMatchObject([
      { answer: 'causes' },
    ]);
  });

  it('is a fault by itself where a part is burnt or its coil open', () => {
    for (const told of ['the contactor is burnt', 'the solenoid coil is open']) {
      expect(heard("it's a reach in", told, "so that's bad right").reply.text).toContain(
        'That is a fault by itself: make it safe',
      );
    }
  });

  it('tells nothing alone where it was only seen', () => {
    expect(heard("it's a reach in", "coil's not iced up", 'is that normal').reply.text).toContain(
      'That alone does not tell.',
    );
  });
});
