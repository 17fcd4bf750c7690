import { describe, expect, it } from 'vitest';
import type { Fact, Utterance } from '../../core/language/utterance.ts';
import { REACH_IN, unitIs, visitOf, WARM } from '../advice/visits.ts';
import { commanding, working } from '../support/utterances.ts';
import { linesOf } from './note-lines.ts';

const minutes = (fact: 'timeOnSite' | 'labor' | 'travel', value: number): Utterance =>
  unitIs({ fact, value });
const inAll = (value: number): Utterance => ({
  ...minutes('labor', value),
  facts: [{ fact: 'labor', value, words: 'labor comes to that' }],
});
const correctedTo = (value: number): Utterance =>
  commanding({ do: 'amend', quantity: null, value, unit: 'min' });
const since: Utterance = unitIs({ fact: 'hereSince', value: '9:30' });
const JOB = [REACH_IN, WARM, working('brush')];
const FINISHED = commanding({ do: 'finish' });

const timesIn = (...said: readonly Utterance[]): readonly string[] =>
  linesOf(visitOf([...JOB, ...said]), 'work').slice(1);

describe('the time that the technician tells', () => {
  it('stands in the work beside what the clock says', () => {
    expect(timesIn(minutes('timeOnSite', 160), FINISHED)).toEqual([
      'On site, as told: 2 h 40 min.',
      expect.stringMatching(/^On the visit, by the clock: \d+ min\.$/),
    ]);
    expect(timesIn(FINISHED)).toEqual([expect.stringMatching(/^On the visit: \d+ min\.$/)]);
  });

  it('holds by its last word, and by each kind', () => {
    expect(timesIn(minutes('timeOnSite', 90), minutes('timeOnSite', 160), since)).toEqual([
      'On site, as told: 2 h 40 min.',
      'On site since 9:30, as told.',
    ]);
    expect(timesIn(minutes('labor', 90))).toEqual(['Labor, as told: 1 h 30 min.']);
  });

  it('of labor adds up, told once with its parts, and apart from the hours on site', () => {
    expect(
      timesIn(minutes('labor', 120), minutes('timeOnSite', 240), minutes('labor', 90)),
    ).toEqual([
      'On site, as told: 4 h 0 min.',
      'Labor, as told: 3 h 30 min (2 h 0 min and 1 h 30 min).',
    ]);
    expect(timesIn(minutes('labor', 120), minutes('labor', 90), inAll(300))).toEqual([
      'Labor, as told: 5 h 0 min.',
    ]);
  });

  it('on the road adds up by itself, beside labor', () => {
    const told = [minutes('travel', 60), minutes('labor', 90), minutes('travel', 45)];
    expect(timesIn(...told)).toEqual([
      'Labor, as told: 1 h 30 min.',
      'Travel, as told: 1 h 45 min (1 h 0 min and 45 min).',
    ]);
    const all: Fact = { fact: 'travel', value: 120, words: "travel's two hours" };
    expect(timesIn(...told, { ...minutes('travel', 120), facts: [all] })).toContain(
      'Travel, as told: 2 h 0 min.',
    );
    expect(linesOf(visitOf([...JOB, ...told, FINISHED]), 'office').join(' ')).toMatch(
      /\(1 h 30 min of labor as told, 1 h 45 min of travel as told\)/,
    );
    expect(linesOf(visitOf([REACH_IN, WARM, minutes('travel', 60)]), 'work')).toEqual([
      'No work was recorded.',
      'Travel, as told: 1 h 0 min.',
    ]);
  });

  it('that is put right takes the place of the last that was told', () => {
    const told = [minutes('labor', 60), minutes('labor', 120), correctedTo(180)];
    expect(timesIn(...told)).toEqual(['Labor, as told: 4 h 0 min (1 h 0 min and 3 h 0 min).']);
    expect(timesIn(minutes('labor', 60), minutes('timeOnSite', 120), correctedTo(180))).toEqual([
      'On site, as told: 3 h 0 min.',
      'Labor, as told: 1 h 0 min.',
    ]);
    const warm = visitOf([...JOB, correctedTo(180)]);
    expect(warm.readings).toEqual(visitOf(JOB).readings);
  });

  it('is billed by the office, and no matter of the customer', () => {
    const office = (...said: readonly Utterance[]): string =>
      linesOf(visitOf([...JOB, ...said, FINISHED]), 'office').join(' ');
    expect(office(minutes('timeOnSite', 160))).toMatch(
      /On the visit for 2 h 40 min as told \(\d+ min by the clock\)\./,
    );
    expect(office(since)).toMatch(/On the visit for \d+ min \(since 9:30 as told\)\./);
    expect(office(minutes('labor', 90))).toMatch(
      /On the visit for \d+ min \(1 h 30 min of labor as told\)\./,
    );
    const told = visitOf([...JOB, minutes('timeOnSite', 160), FINISHED]);
    expect(linesOf(told, 'customer').join(' ')).not.toContain('2 h 40 min');
  });

  it('is kept where no work was, and is gone when it is taken back', () => {
    const state = visitOf([REACH_IN, WARM, minutes('timeOnSite', 160)]);
    expect(linesOf(state, 'work')).toEqual([
      'No work was recorded.',
      'On site, as told: 2 h 40 min.',
    ]);
    const undone = visitOf([...JOB, minutes('timeOnSite', 160), commanding({ do: 'undo' })]);
    expect(linesOf(undone, 'work')).toHaveLength(1);
  });
});

const facts = ['timeOnSite', 'labor', 'travel', 'hereSince'] as const;
it.each(facts)('is no fact of the unit: %s', (fact) => {
  const told = fact === 'hereSince' ? since : minutes(fact, 60);
  expect(visitOf([...JOB, told]).unit).toEqual(visitOf(JOB).unit);
});
