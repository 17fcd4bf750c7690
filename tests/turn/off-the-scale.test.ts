import { describe, expect, it } from 'vitest';
import type { Turn } from '../../core/turn/turn.ts';
import { last } from '../support/last-turn.ts';

const moved = ({ state }: Turn) =>
  state.readings
    .map(({ reading: { quantity, value, unit } }) => [quantity, value, unit])
    .filter(([quantity]) => quantity !== 'cylinderWeight');

describe('what the tank weighs less than before', () => {
  const BEFORE = "tank's at twenty four pounds six ounces";

  it.each([
    "so that's three pounds four ounces",
    'that makes three pounds four ounces',
    'it took three pounds four ounces',
  ])('went in, once it is said: "%s"', (said) => {
    const turn = last(BEFORE, 'tank says twenty one two', said);
    expect(moved(turn)).toEqual([['refrigerantAdded', 52, 'oz']]);
  });

  it('came out where it weighs more', () => {
    const turn = last(BEFORE, 'tank says twenty six six', "so that's two pounds");
    expect(moved(turn)).toEqual([['refrigerantRecovered', 2, 'lb']]);
  });

  it('is asked about where it is another weight, or nothing was weighed twice', () => {
    const other = last(BEFORE, 'tank says twenty one two', "so that's five pounds");
    expect(moved(other)).toEqual([]);
    expect(other.state.leftOver.map(({ digits }) => digits)).toEqual(['5']);
    expect(moved(last(BEFORE, "so that's three pounds four ounces"))).toEqual([]);
  });

  it('is written in pounds and ounces, though neither was said', () => {
    expect(last(BEFORE, 'tank says twenty one two').reply.text).toBe('Cylinder weight 21 lb 2 oz.');
  });
});
