import { describe, expect, it } from 'vitest';
import { timedVisit, type TimedLine } from '../support/timed-visit.ts';

const lastReading = (...lines: readonly TimedLine[]) =>
  timedVisit(...lines).last.state.readings.at(-1)?.reading;

describe('the answer to what was asked', () => {
  it.each([
    ["it's four ten after ten minutes, good", 10],
    ['four ten after ten minutes', 10],
    ["it's four ten after ten minutes", 10],
    ['four ten, good', undefined],
    ["we're at four ten and holding", undefined],
    ['four ten, no rise at all', undefined],
  ])('is its value, as "%s"', (said, afterMinutes) => {
    const lines: readonly TimedLine[] = [
      [0, 'three eighty microns'],
      [1, 'ten minutes on the vacuum hold'],
      [12, said],
    ];
    expect(lastReading(...lines)).toMatchObject({ quantity: 'vacuum', value: 410 });
    expect(lastReading(...lines)?.afterMinutes).toBe(afterMinutes);
    expect(timedVisit(...lines).last.reply.text).toContain('It held: tight.');
  });

  it.each([
    'eighty four at the condenser',
    "it's eighty four going into the condenser",
    'about eighty four at the condenser',
  ])('is the air that was asked for: "%s"', (said) => {
    const asked: readonly TimedLine[] = [
      [0, "it's a reach in on one thirty four a with a txv"],
      [1, 'what should head be'],
    ];
    expect(lastReading(...asked, [2, said])).toMatchObject({ quantity: 'ambientTemp', value: 84 });
  });

  it('is asked about once much else was told', () => {
    const asked: readonly TimedLine[] = [
      [0, "it's a reach in on one thirty four a with a txv"],
      [1, 'what should head be'],
      [2, "suction's eighteen"],
    ];
    expect(lastReading(...asked, [3, 'eighty four'])).toMatchObject({ quantity: 'ambientTemp' });
    const { last } = timedVisit(
      ...asked,
      [3, "head's one fifty"],
      [4, "condenser's dirty"],
      [5, 'cleaned the condenser'],
      [6, "compressor's running"],
      [7, 'eighty four'],
    );
    expect(last.state.readings.map(({ reading }) => reading.quantity)).not.toContain('ambientTemp');
    expect(last.reply.text).toMatch(/^Ambient 84\?/);
  });

  it('is not taken for the air where that was not asked for', () => {
    expect(timedVisit([0, 'eighty four at the condenser']).last.state.readings).toEqual([]);
  });
});

describe('"still" and a number', () => {
  const test: TimedLine = [0, 'pressure test to two fifty with nitrogen'];
  const vacuum: TimedLine = [0, 'vacuum is four hundred microns'];

  it.each([
    'still two fifty',
    'still two fifty, no drop',
    "it's still at two fifty",
    'still holding two fifty after half an hour',
  ])('is of the nitrogen that is on it: "%s"', (said) => {
    const { last } = timedVisit(test, [20, said]);
    expect(last.state.readings.map(({ reading }) => reading)).toMatchObject([
      { quantity: 'testPressure', value: 250 },
      { quantity: 'testPressure', value: 250 },
    ]);
    expect(last.state.leftOver).toEqual([]);
  });

  it('is of the test whatever was asked for and not answered', () => {
    const asked: readonly TimedLine[] = [
      [0, "it's a reach in on one thirty four a with a txv"],
      [1, 'what should head be'],
      [5, 'pressure test to one fifty with nitrogen'],
    ];
    for (const said of ['still one fifty', 'still one fifty, no drop']) {
      const { state } = timedVisit(...asked, [20, said]).last;
      expect(state.wanted).toBe('ambientTemp');
      expect(state.readings.map(({ reading }) => reading)).toMatchObject([
        { quantity: 'testPressure', value: 150 },
        { quantity: 'testPressure', value: 150 },
      ]);
    }
  });

  it('is of the vacuum that holds', () => {
    expect(lastReading(vacuum, [10, 'still four ten, no rise'])).toMatchObject({
      quantity: 'vacuum',
      value: 410,
    });
  });

  it('stays with the test past what was read of the air', () => {
    const said: TimedLine = [20, 'still two fifty'];
    expect(lastReading(test, [5, 'ambient seventy'], said)).toMatchObject({ value: 250 });
  });

  it.each<[string, TimedLine, string]>([
    ['once it runs', [5, 'head one eighty, suction twenty'], 'still two fifty'],
    ['once it was charged', [5, 'added six ounces'], 'still two fifty'],
    ['far from what it stood at', [5, 'ambient seventy'], 'still seventy'],
  ])('is of no test %s', (_when, between, said) => {
    const { state } = timedVisit(test, between, [20, said]).last;
    const tested = state.readings.filter(({ reading }) => reading.quantity === 'testPressure');
    expect(tested).toHaveLength(1);
  });
});
