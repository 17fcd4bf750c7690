import { describe, expect, it } from 'vitest';
import { isOfTheUnit } from '../../core/note/of-the-unit.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { timedVisit } from '../support/timed-visit.ts';
import { linesOf } from './note-lines.ts';

const visit = (...words: readonly string[]): VisitState =>
  timedVisit(...words.map((each, minute) => [minute, each] as const)).last.state;

describe('what is told of the unit in words', () => {
  it.each([
    'model number t forty nine',
    'the compressor model is n j x',
    "the serial's one two three four",
    'serial ends in four four one two',
    'the label says p o e oil',
    'the sticker on the panel says it was converted',
    'the nameplate is worn off',
    'there is no tag on it',
    "it's a three phase unit",
    'runs on single phase',
    'dual voltage',
  ])('is of the unit: "%s"', (memo) => {
    expect(isOfTheUnit(memo)).toBe(true);
  });

  it.each([
    'told the owner his model is out of production',
    "the model doesn't matter",
    'we lost a phase, single phase only',
    'the three phase monitor tripped',
    'they ordered the newer model',
    'first batch was good',
    'labeled the breaker',
    "nameplate's one point four",
    'tag says eleven',
  ])('is none of the unit: "%s"', (memo) => {
    expect(isOfTheUnit(memo)).toBe(false);
  });

  it('stands with the unit, never as found, and is no complaint', () => {
    const state = visit(
      "it's a reach-in on one thirty four a",
      'memo model is t forty nine',
      'memo customer says it trips every afternoon',
      'serial number ends in four four one two',
      "condenser's plugged",
    );
    expect(linesOf(state, 'unit')).toEqual(
      expect.arrayContaining(['Model T49.', 'Serial number ends in 4412.']),
    );
    expect(linesOf(state, 'complaint').join()).toMatch(/trips every afternoon/);
    expect(linesOf(state, 'complaint').join()).not.toMatch(/model/i);
    expect(linesOf(state, 'findings').join()).not.toMatch(/model|serial/i);
  });
});
