import { describe, expect, it } from 'vitest';
import { type TimedLine, timedVisit } from '../support/timed-visit.ts';

const reply = (...words: readonly string[]): string =>
  timedVisit(...words.map((said, minute): TimedLine => [minute, said])).last.reply.text;

const UNIT = "it's a reach in on one thirty four a with a txv";
const READ = 'head one oh five, suction two, suction line forty four, liquid line eighty nine';

describe('one word, with nothing asked', () => {
  it('is a question for what is worked out', () => {
    // R-134a boils at -10 °F at 2 psi by the trade's tables.
    expect(reply(UNIT, READ, 'superheat')).toMatch(/53\.8 °F/);
    expect(reply(UNIT, READ, 'subcooling')).toMatch(/[Ss]ubcooling/);
    expect(reply(UNIT, READ, 'subcooling')).not.toContain('I did not catch that');
  });

  it('asks while a reading is still waited for', () => {
    expect(reply(UNIT, READ, 'what should head be', 'subcooling')).toMatch(/[Ss]ubcooling/);
  });

  it('says what that needs where it was not read', () => {
    expect(reply(UNIT, 'superheat')).toMatch(/^Tell me the /);
  });

  it('compares the before and the after', () => {
    const said = [UNIT, 'head two thirty', "that's my before", 'brushed the condenser'];
    expect(reply(...said, 'head one ninety', "that's my after", 'compare')).toMatch(/230.*190/);
  });

  it('is the name of a number that it was asked for', () => {
    const { state } = timedVisit([0, UNIT], [1, 'nine'], [2, 'subcooling']).last;
    expect(state.readings.map(({ reading }) => reading)).toMatchObject([
      { quantity: 'subcooling', value: 9 },
    ]);
  });

  it('marks what was read as before, and as after', () => {
    const before = [UNIT, READ, 'before'];
    expect(reply(...before)).toMatch(/^Marked as before: 4 readings\./);
    expect(reply(...before, 'brushed the condenser', 'head ninety', 'after')).toMatch(
      /^Marked as after: 1 reading\./,
    );
  });

  it('ends the visit, and not while it was asked, told to do or waits for something', () => {
    expect(reply(UNIT, READ, 'done')).toMatch(/^Finished\./);
    expect(reply(UNIT, 'superheat', 'done')).not.toContain('Finished');
    expect(reply(UNIT, READ, 'what should i check next', 'done')).not.toContain('Finished');
    expect(reply(UNIT, READ, 'ten minutes on the vacuum', 'done')).not.toContain('Finished');
    expect(reply(UNIT, 'how do i pump it down', 'done')).not.toContain('Finished');
  });

  it('is no question for what is read off a gauge', () => {
    const { state } = timedVisit([0, UNIT], [1, 'suction']).last;
    expect(state.history.some(({ type }) => type === 'questionAsked')).toBe(false);
  });
});
