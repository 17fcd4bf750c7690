import { phrasesOf } from '../../grammar/phrases.ts';
import type { Node } from '../../grammar/nodes.ts';
import type { Expectation } from '../context.ts';
import { HOLES } from '../holes.ts';
import { heardLists, type KnownNames, NO_NAMES } from '../names/known-names.ts';
import { heardRules } from './recogniser-grammar.ts';
import { UNIT } from '../numbers/units.ts';

/** The dictionary of the Web Speech API's `SpeechRecognitionPhrase`: a boost from 0 to 10 of its likelihood. */
export interface PhraseHint {
  readonly phrase: string;
  readonly boost: number;
}

/**
 * Common practice: names of the trade that a general recogniser would write as other words ("superheat", "four
 * oh four a") are boosted most, everyday words least; no recogniser publishes how it weighs them.
 */
const BOOSTS: readonly (readonly [Node | undefined, number])[] = [
  [HOLES['quantity'], 5],
  [HOLES['refrigerant'], 5],
  [HOLES['metering'], 5],
  [HOLES['place'], 4],
  [HOLES['part'], 4],
  [HOLES['equipment'], 3],
  [UNIT, 3],
  [HOLES['done'], 2],
  [HOLES['state'], 2],
];

/** Ours: a name of its own is what no general recogniser would write. */
const NAME_BOOST = 6;

/** An answer that is waited for: likelier than any other word, and short enough to be taken for one. */
const ANSWER_BOOST = 4;

/** What a browser's own recogniser is told to expect; of a phrase with two uses, the higher boost. */
export function phraseHints(
  expectation: Expectation = 'anything',
  names: KnownNames = NO_NAMES,
): readonly PhraseHint[] {
  const boosts = new Map<string, number>();
  const raise = (phrase: string, boost: number): void => {
    boosts.set(phrase, Math.max(boost, boosts.get(phrase) ?? 0));
  };
  for (const [node, boost] of expectation === 'yesOrNo' ? [] : BOOSTS) {
    if (node !== undefined) for (const phrase of phrasesOf(node)) raise(phrase, boost);
  }
  if (expectation !== 'anything') for (const phrase of answers()) raise(phrase, ANSWER_BOOST);
  const called = expectation === 'anything' ? Object.values(heardLists(names)).flat() : [];
  for (const phrase of called) raise(phrase.join(' '), NAME_BOOST);
  return [...boosts].map(([phrase, boost]) => ({ phrase, boost }));
}

/** Commands and answers in full; a number has too many phrases to be listed. */
function answers(): readonly string[] {
  const rules = heardRules('yesOrNo').filter(({ shape }) => !shape.includes('<amount>'));
  return rules.flatMap(({ node }) => phrasesOf(node));
}
