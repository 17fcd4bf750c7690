import { describe, expect, it } from 'vitest';
import { timeTold } from '../../core/visit/time-told.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { last } from '../support/last-turn.ts';

/** All that the visit holds, without when and in which words it was said. */
function held(state: VisitState): unknown {
  const { unit, readings, findings, work, recommendations, timers, memos, doubts, leftOver } =
    state;
  return JSON.parse(
    JSON.stringify(
      {
        ...{ unit, findings, work, recommendations, memos, doubts, leftOver },
        readings: readings.map(({ reading: { unitFrom: _from, hedged: _hedged, ...of } }) => of),
        timers: timers.map(({ about, minutes }) => ({ about, minutes })),
        time: timeTold(state),
      },
      (key, value: unknown) => (['words', 'id', 'at'].includes(key) ? undefined : value),
    ),
  );
}

interface Kind {
  /** What is said, with the value left open, and what stands behind the value. */
  readonly says: (value: string) => string;
  readonly wrong: string;
  readonly right: string;
}

/** Every kind of value that a visit keeps, said wrong, and what is right. */
const KINDS: Readonly<Record<string, Kind>> = {
  'a charge put in': kind((value) => `charged it with ${value}`, 'ten ounces', 'eleven ounces'),
  'a charge put in, in pounds': kind(
    (value) => `added ${value}`,
    'two pounds four ounces',
    'two pounds six ounces',
  ),
  'a charge taken out': kind((value) => `recovered ${value}`, 'fourteen ounces', 'fifteen ounces'),
  'a pressure': kind((value) => `suction is ${value}`, 'twenty six', 'twenty eight'),
  'a temperature': kind((value) => `box is ${value}`, 'thirty four', 'thirty eight'),
  'a temperature of a line': kind((value) => `suction line's ${value}`, 'thirty six', 'forty'),
  'a product': kind((value) => `cheese is ${value}`, 'forty four', 'forty two'),
  'a current': kind(
    (value) => `compressor is pulling ${value}`,
    'four point nine amps',
    'five point nine amps',
  ),
  'a current at a place': kind(
    (value) => `evap fan is pulling ${value}`,
    'point nine',
    'point five',
  ),
  'a voltage at a place': kind(
    (value) => `${value} across the contactor`,
    'one fifteen',
    'one eighteen',
  ),
  'a winding': kind((value) => `common to run is ${value}`, 'one point nine', 'two point one'),
  'a vacuum': kind((value) => `vacuum is ${value}`, 'five hundred microns', 'four hundred microns'),
  'a setting': kind((value) => `high cutout is ${value}`, 'two ninety', 'two eighty'),
  'a set point': kind((value) => `thermostat is set at ${value}`, 'thirty five', 'thirty six'),
  'a charge on the plate': kind(
    (value) => `nameplate charge ${value}`,
    'nine ounces',
    'eleven ounces',
  ),
  'a voltage on the plate': kind(
    (value) => `nameplate ${value}`,
    'one fifteen volts',
    'two thirty volts',
  ),
  'amps on the plate': kind(
    (value) => `nameplate ${value}`,
    'six point two amps',
    'six point five amps',
  ),
  'hours here': kind((value) => `i was here ${value}`, 'two hours', 'three hours'),
  'how often': kind(
    (value) => `they should clean the condenser every ${value}`,
    'six months',
    'three months',
  ),
  'how soon': kind(
    (value) => `they should replace the door gasket in ${value}`,
    'two weeks',
    'three weeks',
  ),
  'a timer': kind((value) => `set a timer for ${value}`, 'ten minutes', 'twenty minutes'),
};

function kind(says: Kind['says'], wrong: string, right: string): Kind {
  return { says, wrong, right };
}

const WAYS: readonly ((right: string) => string)[] = [
  (right) => `no ${right}`,
  (right) => `no, ${right}`,
  (right) => `no it was ${right}`,
  (right) => `no it's ${right}`,
  (right) => `no that's ${right}`,
  (right) => `make that ${right}`,
  (right) => `i meant ${right}`,
  (right) => `i mean ${right}`,
  (right) => `sorry, ${right}`,
  (right) => `no wait, ${right}`,
  (right) => `actually ${right}`,
  (right) => `correction, ${right}`,
];

const CASES = Object.entries(KINDS).flatMap(([name, { says, wrong, right }]) =>
  WAYS.map((way) => ({ name, wrong: says(wrong), again: way(right), right: says(right) })),
);

describe('a value that was said wrong', () => {
  it.each(CASES)('$name: "$wrong", put right by "$again" in the next sentence', (said) => {
    expect(held(last(said.wrong, said.again).state)).toEqual(held(last(said.right).state));
  });

  it.each(CASES)('$name: "$wrong, $again" in one breath', (said) => {
    expect(held(last(`${said.wrong}, ${said.again}`).state)).toEqual(held(last(said.right).state));
  });

  it('says what it is now and what it was', () => {
    const charged = last('charged it with ten ounces', 'no it was eleven ounces');
    expect(charged.reply.text).toContain('Added 11 oz now, was 10 oz.');
    const here = last('i was here two hours', 'make that three');
    expect(here.reply.text).toBe('Taken back: on site for 2 h. On site for 3 h.');
  });

  it('is put right by the number alone, in the unit that it was told in', () => {
    for (const again of ['no, three', 'no it was three', 'make that three']) {
      expect(timeTold(last('i was here two hours', again).state).onSite).toBe(180);
    }
    const every = last('they should clean the condenser every six months', 'no every three');
    expect(every.state.recommendations[0]?.recommendation.every).toEqual({
      amount: 3,
      unit: 'month',
    });
  });
});

describe('what was told last', () => {
  it('is put right, and not the reading before it', () => {
    const { state } = last('box is forty three', 'i was here two hours', 'make that three');
    expect(state.readings.map(({ reading }) => reading.value)).toEqual([43]);
    expect(timeTold(state).onSite).toBe(180);
    const timed = last(
      'evap fan is pulling point nine',
      'set a timer for ten minutes',
      'no twenty',
    );
    expect(timed.state.readings[0]?.reading.value).toBe(0.9);
    expect(timed.state.timers.map(({ minutes }) => minutes)).toEqual([20]);
  });

  it('is the last of that unit, where the unit is said', () => {
    const { state } = last(
      'nameplate nine ounces, one fifteen volts, six point two amps',
      'no eleven ounces',
    );
    expect(state.unit.nameplate).toMatchObject({
      charge: { value: 11, unit: 'oz' },
      voltage: { value: 115 },
      ratedLoadAmps: { value: 6.2 },
    });
    const read = last('charged it with ten ounces', 'suction twenty eight', 'no eleven ounces');
    expect(read.state.readings.map(({ reading }) => reading.value)).toEqual([11, 28]);
  });

  it('takes no value of another unit', () => {
    const { state } = last('suction twenty eight', 'no eleven ounces');
    expect(state.readings.map(({ reading: { value, unit } }) => [value, unit])).toEqual([
      [28, 'psi'],
    ]);
  });

  it('is asked about where what is said instead cannot be', () => {
    const { state } = last('suction fourteen', 'box is thirty eight', 'no, four hundred');
    expect(state.readings.map(({ reading }) => reading.value)).toEqual([14, 38]);
    expect(state.doubts).toHaveLength(1);
  });

  it('is amended where a meter read it, by its name', () => {
    const { state, reply } = last(
      'common to run is one point nine, start to run eight point seven',
      'no wait common to run is two point one',
    );
    expect(state.readings.map(({ reading }) => reading.value)).toEqual([2.1, 8.7]);
    expect(reply.text).toContain('Common to run 2.1 Ω now, was 1.9 Ω.');
  });
});

describe('two figures that were told in one breath', () => {
  const fans = 'condenser fans are pulling two point one and two point two';
  const read = (...said: readonly [string, ...string[]]) =>
    last(...said).state.readings.map(({ reading: { place, value } }) => [place, value]);

  it.each([
    'no, make that two point one and two point four',
    'sorry, two point one and two point four',
    'wait, two point one and two point four',
  ])('are put right together by "%s"', (again) => {
    expect(read(fans, again)).toEqual([
      ['condenserFan', 2.1],
      ['condenserFan', 2.4],
    ]);
  });

  it('put right nothing that was told before, where they were not told together', () => {
    const ground = 'common to ground is point two megs';
    const again = 'no, make that two point one and two point four';
    expect(read(ground, again)).toEqual([['commonGround', 0.2]]);
    expect(read(ground, fans, again)[0]).toEqual(['commonGround', 0.2]);
    expect(last(ground, again).state.leftOver).toHaveLength(2);
  });

  it('leave a reading as it was where the number put right is one that was asked about', () => {
    const { state } = last('common to ground is point two megs', 'twelve', 'make that fourteen');
    expect(state.readings.map(({ reading }) => reading.value)).toEqual([0.2]);
    expect(state.leftOver.map(({ digits }) => digits)).toEqual(['14']);
  });
});

describe('a name or a kind that was said wrong', () => {
  it.each([
    ["i'm at Copper Lane Cafe, no sorry, Copper Lane Bakery", 'Copper Lane Bakery'],
    ['site is Copper Lane Cafe, i mean Copper Lane Bakery', 'Copper Lane Bakery'],
    ['site is Copper Lane Cafe, make that Copper Lane Bakery', 'Copper Lane Bakery'],
    ["i'm at Joe's Diner, no, Harbor Street Deli", 'Harbor Street Deli'],
    ["i'm at Joe's Diner, sorry i'm late", "Joe's Diner"],
    ["i'm at Joe's Diner, no parking", "Joe's Diner"],
  ])('"%s" is at %s', (said, site) => {
    expect(last(said).state.unit.site).toBe(site);
  });

  it('is put right in the next sentence, where it is alike', () => {
    const moved = last('site is Copper Lane Cafe', 'no Copper Lane Bakery');
    expect(moved.state.unit.site).toBe('Copper Lane Bakery');
    expect(last('site is Copper Lane Cafe', 'no worries').state.unit.site).toBe('Copper Lane Cafe');
  });

  it('is told once, of one unit', () => {
    const said = 'two door reach in by the ovens, no, single door reach in by the ovens';
    const { state, reply } = last(said);
    expect(state.unit.doors).toBe(1);
    expect(reply.text).not.toContain('2 doors');
  });

  it('is not what a bare "no" says that there is none of', () => {
    expect(last("it's got a txv", 'no cap tube').state.unit.metering).toBe('txv');
    expect(last("it's a txv system with no cap tube").state.unit.metering).toBe('txv');
    expect(last("it's got a txv, no, cap tube").state.unit.metering).toBe('capTube');
  });

  it('may be a day', () => {
    const { state } = last('they should replace the door gasket by friday', 'no by monday');
    expect(state.recommendations.map(({ recommendation }) => recommendation.by)).toEqual([
      { said: 'by', kind: 'weekday', weekday: 'monday' },
    ]);
  });
});
