import { canBeSaid, sampleNode } from '../../../core/grammar/sample.ts';
import { parseJsgf } from '../../../core/hearing/parse-jsgf.ts';
import { EMPTY_CONTEXT } from '../../../core/language/context.ts';
import { heardRules, recogniserGrammar } from '../../../core/language/recogniser-grammar.ts';
import { understand } from '../../../core/language/understand.ts';
import { seeded } from '../../language/random.ts';
import { accepts } from './accepts.ts';

/** Every n-th sentence is two in one breath, every other one holds a reading: that is what must be right. */
const TWO_IN_ONE = 4;
const READING = 2;

/** Sentences sampled rule by rule out of those that the recogniser listens for; the same seed, the same sentences. */
export function sampleHeard(count: number, seed: number): readonly string[] {
  const random = seeded(seed);
  const rules = heardRules('anything').filter(({ node }) => canBeSaid(node));
  const one = (): readonly string[] => {
    const rule = rules[Math.floor(random() * rules.length)];
    return rule === undefined ? [] : sampleNode(rule.node, random).words;
  };
  const isHeard = hearable();
  const sentences: string[] = [];
  while (sentences.length < count) {
    const two = sentences.length % TWO_IN_ONE === TWO_IN_ONE - 1;
    const words = [...one(), ...(two ? one() : [])].filter((word) => word !== ',');
    if (!isHeard(words) || !isClear(words, sentences.length % READING === 0)) continue;
    sentences.push(words.join(' '));
  }
  return sentences;
}

/** The rules hold spellings and rarities that the recogniser is not given. */
function hearable(): (words: readonly string[]) => boolean {
  const grammar = parseJsgf(recogniserGrammar('anything'));
  if (grammar.kind === 'malformed') throw new Error(grammar.message);
  return (words) => accepts(grammar, words);
}

/** Understood whole, and with nothing that the product would ask about. */
function isClear(words: readonly string[], reading: boolean): boolean {
  const { text, unclaimed, doubts, readings, ...parts } = understand(
    words.join(' '),
    EMPTY_CONTEXT,
  );
  if (text === '' || unclaimed.length > 0 || doubts.length > 0) return false;
  return reading ? readings.length > 0 : Object.values(parts).some((part) => part.length > 0);
}

/** Talk that is for somebody else. Some of its words are ours. */
export const STRAY_TALK = [
  'my uncle went fishing on saturday',
  'please call me a taxi tomorrow',
  'the game last night was terrible',
  'she said we could borrow the ladder',
  'turn the radio down a little',
  'where is the manager of this place',
  'i will be there in about half an hour',
  'can you hand me that flashlight',
  'they moved to ohio five years ago',
  'we had eight people for dinner on sunday',
  'he wants forty dollars for the old bicycle',
  'put those boxes next to the back door',
  'did anybody feed the dog this morning',
  'the truck is parked across the street',
  'i told him twice and he still forgot',
  'we close at ten on weekdays',
  'my daughter turns seventeen in june',
  'there is fresh coffee in the kitchen',
  'the soup of the day is tomato',
  'how many plates do we need for table six',
  'somebody left the lights on again',
  'could you sign here and print your name',
  'the delivery came two hours late',
  'i have not seen him since monday',
] as const;
