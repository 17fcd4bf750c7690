import { describe, expect, it } from 'vitest';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { type TimedLine, timedVisit } from '../support/timed-visit.ts';

const NAMES = { sites: [], units: ['prep table'], parts: [] };
const ON_UNDERCOUNTER = ['unit is called undercounter', "it's an undercounter", 'box is fifty two'];

const visit = (...words: readonly string[]): ReturnType<typeof timedVisit> =>
  timedVisit(...words.map((each, minute): TimedLine => [minute, each]));

function next(words: string): ReturnType<typeof takeTurn> {
  const { state, memory } = visit(...ON_UNDERCOUNTER).last;
  return takeTurn({
    state,
    memory,
    words,
    names: NAMES,
    stamp: () => {
      throw new Error('nothing is kept on the visit that was left');
    },
  });
}

describe('two units on one call', () => {
  it.each([
    'now the prep table',
    'back on the prep table',
    'okay back to the prep table now',
    'starting with the prep table',
    'start with the prep table',
    'now for the prep table',
    'i am on the prep table now',
  ])('are two visits: %s', (words) => {
    const { effect, carried } = next(words);
    expect(effect).toBe('newVisit');
    expect(
      carried.map((fact) =>
        fact.fact === 'equipment' || fact.fact === 'unit' ? fact.value : null,
      ),
    ).toEqual(['prepTable', 'prep table']);
  });

  it.each([
    "prep table's at thirty nine",
    'the walk in is at thirty eight',
    'reach in fifty', // The unit itself.
  ])('leave no box of one on the visit of the other: %s', (words) => {
    const { state } = visit(...ON_UNDERCOUNTER, words).last;
    const isOwn = words.startsWith('reach');
    expect(state.readings.map(({ reading }) => reading.value)).toEqual(isOwn ? [52, 50] : [52]);
    expect(state.memos.map(({ memo }) => memo)).toEqual(isOwn ? [] : [words]);
  });

  it('leave the walk-in a walk-in, cooler or freezer', () => {
    expect(visit("it's a walk in freezer", "walk in's at four").last.reply.text).toBe('Box 4.');
  });

  it.each([
    "it's at forty six up top and forty three down below",
    'box is forty six on top forty three on the bottom',
    "prep table's forty six in the rail and forty three underneath",
  ])('have a top and a bottom: %s', (words) => {
    const { state } = visit("it's a prep table", words).last;
    expect(state.readings.map(({ reading }) => reading.value)).toEqual([46, 43]);
  });
});
