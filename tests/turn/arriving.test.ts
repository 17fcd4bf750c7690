import { describe, expect, it } from 'vitest';
import { complaintLines } from '../../core/note/complaint.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { type TimedLine, timedVisit } from '../support/timed-visit.ts';

const visit = (...words: readonly string[]): VisitState =>
  timedVisit(...words.map((said, minute): TimedLine => [minute, said])).last.state;

describe('the first thing said', () => {
  it.each([
    ['cedar hill diner', 'Cedar Hill Diner'],
    ['Cedar Hill Diner.', 'Cedar Hill Diner'],
    ['alright so i just got here, this is uh the Granite Bay Fish House', 'Granite Bay Fish House'],
    ['riverside bakery, walk-in cooler', 'Riverside Bakery'],
    ["joe's pizza", "Joe's Pizza"],
    ["i'm at the blue lantern", 'Blue Lantern'],
    [
      "good morning i'm over at pepper and thyme on third street",
      'Pepper and Thyme on Third Street',
    ],
    ["we're at salt and vine", 'Salt and Vine'],
    ["i'm down at the copper kettle on main street", 'Copper Kettle on Main Street'],
    ['this is the Blue Lantern', 'Blue Lantern'],
  ])('is where one is: %s', (said, site) => {
    expect(visit(said).unit.site).toBe(site);
  });

  it.each([
    ...['the cook at the diner', 'they run a bakery next door', 'nice restaurant', 'high school'],
    ...['clean kitchen', "i'm at the loading dock", 'at the moment', 'at the condensing unit'],
    ...["i'm at home and sick", "i'm over at the counter", "we're at suction and liquid"],
    ...['this is Dave Miller', 'he works at the blue lantern', 'two brothers pizza'],
  ])('is no name where it tells anything else: %s', (said) => {
    expect(visit(said).unit.site).toBeNull();
  });

  it('is no name once something was read', () => {
    expect(visit('head one ninety', 'cedar hill diner').unit.site).toBeNull();
  });
});

describe('what is wrong, before anything was read, found or done', () => {
  it.each([
    ...['warm since yesterday', 'not cooling', "it's dead", "won't start", 'high temp alarm'],
    ...['keeps tripping', 'been warm for two days', "can't get below forty", 'they say it ices up'],
    "owner called and said it's been climbing since about midnight, it was at eighteen when he came in",
  ])('is why they called, word for word: %s', (said) => {
    const { state, reply } = timedVisit([0, 'cedar hill diner'], [1, said]).last;
    expect(reply.text).toMatch(/^Kept for the note\./);
    expect(complaintLines(state).join(' ').toLowerCase()).toContain(said.toLowerCase());
    expect([state.readings, state.findings, state.leftOver, state.doubts]).toEqual([
      [],
      [],
      [],
      [],
    ]);
  });

  it('is told behind what the unit is', () => {
    expect(complaintLines(visit('walk in cooler, warm since yesterday'))).toEqual([
      'Warm since yesterday.',
    ]);
  });

  it.each([
    ...['hot day', 'warm out today', "i'm dead tired", 'stopped for lunch', 'noisy in here'],
    ...['down the hall', 'customer called, he will be late', 'climbing up on the roof'],
  ])('is no talk: %s', (said) => {
    expect(visit(said).memos).toEqual([]);
  });

  it('leaves what is found, and what is asked', () => {
    expect(visit('fan is noisy').findings).toHaveLength(1);
    expect(visit('it tripped again at one oh five').leftOver).toHaveLength(1);
    expect(visit('is it dead').memos).toEqual([]);
  });

  it('is a finding once it is known what they called for', () => {
    const { findings, memos } = visit('warm since yesterday', "it's dead");
    expect(findings.map(({ finding }) => finding.state)).toEqual(['notRunning']);
    expect(memos).toHaveLength(1);
  });
});
