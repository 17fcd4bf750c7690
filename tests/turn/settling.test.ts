import { describe, expect, it } from 'vitest';
import { timedVisit } from '../support/timed-visit.ts';

const BEFORE = [
  [0, "it's a reach in on one thirty four a with a txv"],
  [1, 'head two fifty, suction twenty four, box forty nine'],
  [2, 'i brushed the condenser'],
] as const;

const SETTLING = [
  ...BEFORE,
  [8, 'head one eighty, suction twenty two'],
  [14, 'head one seventy one, suction eighteen'],
  [19, 'head one seventy, suction eighteen'],
] as const;

const textOf = (visit: ReturnType<typeof timedVisit>): string => visit.last.reply.text;

describe('watching it settle', () => {
  it('says unasked, at the reading that shows it, that the pressures have held, and what to do', () => {
    const visit = timedVisit(...SETTLING, [25, 'head one seventy, suction eighteen']);
    expect(textOf(visit)).toBe(
      'Head 170, suction 18. Head has held within 2 psi for 11 min, down 80 psi since the change. ' +
        'So has suction. Take the after readings.',
    );
  });

  it('says it once', () => {
    const visit = timedVisit(
      ...SETTLING,
      [25, 'head one seventy, suction eighteen'],
      [31, 'head one seventy, suction eighteen'],
    );
    expect(textOf(visit)).toBe('Head 170, suction 18.');
  });

  it('does not say it before ten minutes, nor of two readings, nor while one still moves', () => {
    const early = timedVisit(...SETTLING);
    const two = timedVisit(...BEFORE, [14, 'head one seventy'], [40, 'head one seventy']);
    const moving = timedVisit(...SETTLING, [25, 'head one sixty, suction twenty one']);
    for (const visit of [early, two, moving]) expect(textOf(visit)).not.toContain('held');
  });

  it('names the pressure that is still waited for', () => {
    const visit = timedVisit(...SETTLING, [25, 'head one seventy']);
    expect(textOf(visit)).toBe(
      'Head 170. Head has held within 2 psi for 11 min, down 80 psi since the change. ' +
        'Read suction again: it is not shown to hold yet.',
    );
  });

  it('starts anew with a charge moved, a setting changed and a compressor that runs again', () => {
    const changes = [
      ['added four ounces of one thirty four a'],
      ['set point thirty six', 'set point thirty four'],
      ['compressor is not running', 'compressor is running'],
    ];
    for (const change of changes) {
      const visit = timedVisit(
        [0, 'head one eighty, suction twenty'],
        ...change.map((words, index) => [1 + index, words] as const),
        [4, 'head one seventy'],
        [9, 'head one seventy'],
        [15, 'head one seventy'],
      );
      expect(textOf(visit)).toContain('Head has held within 2 psi for 11 min');
    }
  });

  it('says nothing of settling where nothing was changed', () => {
    const visit = timedVisit(
      [0, 'head one seventy'],
      [6, 'head one seventy'],
      [12, 'head one seventy'],
    );
    expect(textOf(visit)).toBe('Head 170.');
  });

  it('says that an after is marked too soon, by the time and by what still moves', () => {
    const early = timedVisit(...BEFORE, [6, 'head one eighty'], [7, 'mark this as after']);
    expect(textOf(early)).toContain('Only 5 min since the change: too soon to call it settled.');
    const moving = timedVisit(
      ...BEFORE,
      [10, 'head one eighty'],
      [15, 'head one seventy'],
      [16, 'mark this as after'],
    );
    expect(textOf(moving)).toContain('Too soon: head is still moving.');
  });

  it('marks an after that has settled without a word more, and an after without gauges as well', () => {
    const settled = timedVisit(
      ...SETTLING,
      [25, 'head one seventy, suction eighteen'],
      [26, 'mark this as after'],
    );
    expect(textOf(settled)).toBe('Marked as after: 2 readings.');
    const noGauges = timedVisit(
      [0, 'box forty nine'],
      [1, 'i replaced the door gasket'],
      [2, 'mark this as after'],
    );
    expect(textOf(noGauges)).not.toContain('too soon');
  });

  it('asks for the after again once one marked too soon has settled', () => {
    const visit = timedVisit(
      ...BEFORE,
      [5, 'head one seventy, suction eighteen'],
      [6, 'mark this as after'],
      [12, 'head one seventy, suction eighteen'],
      [18, 'head one seventy, suction eighteen'],
    );
    expect(textOf(visit)).toContain('Take the after readings.');
  });

  it('remarks once on a second change before the first has settled', () => {
    const visit = timedVisit(
      ...BEFORE,
      [4, 'added four ounces of one thirty four a'],
      [6, 'i adjusted the expansion valve'],
      [8, 'added two ounces of one thirty four a'],
    );
    const remarks = visit.turns.map(({ reply }) => reply.text.includes('One change at a time'));
    expect(remarks.filter(Boolean)).toHaveLength(1);
    expect(remarks.at(-2)).toBe(true);
  });

  it('says so of refrigerant and valves alone, and each upon itself too', () => {
    const remarked = (...said: readonly string[]) =>
      textOf(timedVisit(...BEFORE, ...said.map((words, index) => [4 + index, words] as const)));
    for (const pair of [
      ['i replaced the contactor', 'i replaced the run capacitor'],
      ['i defrosted the evaporator', 'i replaced the defrost heater'],
      ['added four ounces of one thirty four a', 'i replaced the door gasket'],
    ]) {
      expect(remarked(...pair)).not.toContain('One change at a time');
    }
    for (const pair of [
      ['i adjusted the expansion valve', 'i adjusted the expansion valve'],
      ['added four ounces of one thirty four a', 'added two ounces of one thirty four a'],
    ]) {
      expect(remarked(...pair)).toContain('One change at a time');
    }
  });

  it('names the box while that is what moves, and takes a needle and a thermostat for no movement', () => {
    const after = (earlier: string, later: string, ...facts: readonly string[]) =>
      textOf(
        timedVisit(
          ...facts.map((words) => [0, words] as const),
          ...BEFORE,
          [40, earlier],
          [80, later],
          [81, 'mark this as after'],
        ),
      );
    expect(
      after('box forty six, head two thirty', 'box thirty nine, head two twenty two'),
    ).toContain('Too soon: box is still moving.');
    // At its set point it is not on its way any more, and the head stands within two needles' width.
    const settled = after(
      'box forty two, head one ninety two',
      'box thirty eight, head one eighty eight',
      'set point is thirty seven',
    );
    expect(settled).toContain('Marked as after');
    expect(settled).not.toMatch(/too soon/i);
    expect(after('box thirty nine, head two thirty', 'box thirty eight, head two ten')).toContain(
      'Too soon: head is still moving.',
    );
  });

  it('leaves the work on an open circuit alone, and the same part, and a first change that settled', () => {
    const open = timedVisit(
      ...BEFORE,
      [4, 'i recovered the charge'],
      [6, 'i replaced the filter drier'],
    );
    const samePart = timedVisit(...BEFORE, [4, 'i washed the condenser']);
    const settled = timedVisit(
      ...SETTLING,
      [25, 'head one seventy, suction eighteen'],
      [26, 'added four ounces of one thirty four a'],
    );
    for (const visit of [open, samePart, settled]) {
      expect(textOf(visit)).not.toContain('One change at a time');
    }
  });

  it('says at once that charge was moved before anything was read, and takes a reset for no change', () => {
    const NONE = /no readings|before any reading|without a baseline/i;
    const after = (words: string): string =>
      textOf(timedVisit([0, 'ambient ninety, high cutout two ninety'], [1, words]));
    expect(after('added four ounces of one thirty four a')).toMatch(NONE);
    expect(after('i reset the high pressure switch')).not.toMatch(NONE);
    expect(textOf(timedVisit([0, 'box forty'], [1, 'i brushed the condenser']))).not.toMatch(NONE);
  });
});

describe('asked how it goes', () => {
  it('tells where it is, which way it goes and how fast, whether it holds, and how far it came', () => {
    const visit = timedVisit(...SETTLING.slice(0, 5), [15, "what's head doing"]);
    expect(textOf(visit)).toBe(
      'Head is 171 psi, down 9 psi in 6 min. Not steady yet: it must hold within 2 psi for 10 min. ' +
        'Down 79 psi since the change.',
    );
  });

  it('means what was spoken of last, and says when to take the after readings', () => {
    const visit = timedVisit(
      ...SETTLING,
      [25, 'head one seventy, suction eighteen'],
      [26, 'has it settled'],
    );
    expect(textOf(visit)).toContain('Steady: within 2 psi for 11 min.');
    expect(textOf(visit)).toContain('Take the after readings.');
  });

  it('does not let an old reading stand for what it does now', () => {
    const visit = timedVisit(...SETTLING, [40, "what's head doing"]);
    expect(textOf(visit)).toContain('That was read 21 min ago: read it again.');
  });

  it('cannot tell by one reading, and asks for what was never read', () => {
    const one = timedVisit([0, 'head one seventy'], [1, "what's head doing"]);
    expect(one.last.verdicts).toMatchObject([{ kind: 'refused', reason: 'seriesTooShort' }]);
    const none = timedVisit([0, "what's suction doing"]);
    expect(none.last.verdicts).toMatchObject([{ kind: 'needs', need: 'suctionPressure' }]);
  });

  it('follows an amended reading, and forgets one taken back', () => {
    const amended = timedVisit(
      ...BEFORE,
      [8, 'head one seventy'],
      [9, 'make it one eighty'],
      [14, 'head one seventy two'],
      [15, "what's head doing"],
    );
    expect(textOf(amended)).toContain('down 8 psi in 6 min');
    const back = timedVisit(
      ...BEFORE,
      [8, 'head one seventy'],
      [9, 'take that back'],
      [14, 'head one seventy two'],
      [15, "what's head doing"],
    );
    expect(textOf(back)).toContain('down 78 psi in 13 min');
  });

  it('answers in the units of the visit', () => {
    const visit = timedVisit(...SETTLING.slice(0, 5), [15, "what's head doing"]);
    expect(visit.last.verdicts[0]).toMatchObject({
      answer: 'trend',
      unit: 'psi',
      changeUnit: 'psi',
    });
  });
});

describe('when the box will be there', () => {
  const COOLING = [
    [0, 'box seventy'],
    [1, 'i replaced the compressor'],
    [5, 'box sixty eight'],
    [25, 'box fifty nine'],
    [45, 'box fifty two'],
    [65, 'box forty seven'],
    [85, 'box forty three'],
  ] as const;

  it('gives a time with its uncertainty from a curve, counted from now', () => {
    const at85 = timedVisit(...COOLING, [85, 'when will the box reach forty']).last.verdicts[0];
    const at95 = timedVisit(...COOLING, [95, 'when will the box reach forty']).last.verdicts[0];
    expect(at85).toMatchObject({ kind: 'known', answer: 'eta', target: 40 });
    if (at85?.kind !== 'known' || at85.answer !== 'eta') throw new Error('not known');
    if (at95?.kind !== 'known' || at95.answer !== 'eta') throw new Error('not known');
    expect(at85.minutes - at95.minutes).toBeCloseTo(10, 6);
    // 30 + 38·e^(−t/75 min) is 40 after 100 min of cooling: 20 min to go.
    expect(Math.abs(at85.minutes - 20)).toBeLessThan(at85.uncertainty ?? 0);
  });

  it('takes the set point where no temperature is named, and asks for it', () => {
    const asked = timedVisit(...COOLING, [86, 'when will the box be down to temperature']);
    expect(asked.last.verdicts).toMatchObject([{ kind: 'needs', need: 'setpointTemp' }]);
    const told = timedVisit([0, 'set point forty'], ...COOLING, [
      86,
      'when will the box be down to temperature',
    ]);
    expect(told.last.verdicts).toMatchObject([{ answer: 'eta', target: 40 }]);
  });

  it('refuses what the readings do not carry, and says why', () => {
    const ask = 'when will the box reach thirty six';
    const reasons = [
      timedVisit([0, 'box fifty'], [10, 'box forty eight'], [11, ask]),
      timedVisit([0, 'box forty'], [10, 'box forty one'], [20, 'box forty two'], [21, ask]),
      timedVisit([0, 'box thirty five'], [1, ask]),
      timedVisit([0, 'head two hundred'], [1, 'when will head be at one fifty']),
    ].map(({ last: { verdicts } }) => verdicts.map((one) => one.kind === 'refused' && one.reason));
    expect(reasons.flat()).toEqual([
      'seriesTooShort',
      'seriesTooShort',
      'alreadyThere',
      'noTimeFor',
    ]);
  });
});
