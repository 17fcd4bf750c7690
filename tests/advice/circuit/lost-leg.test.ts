import { describe, expect, it } from 'vitest';
import { answer } from '../../../core/advice/answer.ts';
import type { Verdict } from '../../../core/advice/verdict.ts';
import type { Question, Reading, Utterance } from '../../../core/language/utterance.ts';
import type { PlaceId } from '../../../core/terms/names.ts';
import { timedVisit } from '../../support/timed-visit.ts';
import { utteranceOf } from '../../support/utterances.ts';
import { read, readings, unitIs, visitOf } from '../visits.ts';

const volts = (place: PlaceId, value: number): Utterance =>
  readings({ ...read('voltage', value, 'V'), place } satisfies Reading);
const FREEZER = unitIs(
  { fact: 'refrigerant', value: 'R-448A' },
  { fact: 'equipment', value: 'walkInFreezer' },
  { fact: 'metering', value: 'txv' },
);
const legs = (oneTwo: number, twoThree: number, oneThree: number): readonly Utterance[] => [
  FREEZER,
  volts('lineOneTwo', oneTwo),
  volts('lineTwoThree', twoThree),
  volts('lineOneThree', oneThree),
];
const ask = (ask_: 'causes' | 'nextCheck', ...said: readonly Utterance[]): Verdict =>
  answer({ ask: ask_ } satisfies Question, visitOf(said), { lastAnswer: null });
const FUSE_REPLACED = utteranceOf({ work: [{ did: 'replace', part: 'fuse', words: '' }] });

/** Both pairs that a dead leg belongs to read low, whichever leg it is: by Kirchhoff's voltage law. */
describe('a leg that is lost', () => {
  it.each([
    ['three', legs(231, 118, 115), 'lineThreeLost'],
    ['one', legs(102, 229, 128), 'lineOneLost'],
    ['two', legs(0, 0, 480), 'lineTwoLost'],
  ] as const)('is line %s by the pair that is whole', (_line, said, step) => {
    expect(ask('nextCheck', ...said)).toMatchObject({ next: 'step', step });
    expect(ask('causes', ...said)).toMatchObject({ causes: [], next: { next: 'step', step } });
  });

  it.each([
    ['all three are alike', legs(231, 229, 228)],
    ['they are out of balance, and none is gone', legs(231, 226, 210)],
    ['there is no supply at all', legs(2, 0, 1)],
    ['only two were read', legs(231, 118, 115).slice(0, 3)],
    ['what was read is of before a repair', [...legs(231, 118, 115), FUSE_REPLACED]],
  ])('is none where %s', (_what, said) => {
    const verdict = ask('nextCheck', ...said);
    expect(JSON.stringify(verdict)).not.toContain('Lost');
  });

  it('leaves no imbalance of before the repair: the legs are asked for again', () => {
    const said = [...legs(231, 118, 115), FUSE_REPLACED];
    const imbalance: Question = { ask: 'judge', about: 'voltageImbalance' };
    const judged = (all: readonly Utterance[]): Verdict =>
      answer(imbalance, visitOf(all), { lastAnswer: null });
    expect(judged(said)).toMatchObject({ kind: 'needs', need: 'voltage', place: 'lineOneTwo' });
    expect(judged([...said, ...legs(232, 230, 229)])).toMatchObject({ finding: 'within' });
  });

  it('is told before anybody asks, and once', () => {
    const { turns } = timedVisit(
      [0, "it's a walk in freezer on four forty eight a with a txv"],
      [1, 'line one to two is two thirty one, two to three is one eighteen'],
      [2, 'line one to three is one fifteen'],
      [3, 'outdoor is seventy four'],
    );
    const told = turns.map(({ reply }) => /Line three is lost: shut it off/.test(reply.text));
    expect(told).toEqual([false, false, true, false]);
  });
});
