import { canBeSaid, sampleNode } from '../../support/sample-node.ts';
import { type JsgfRules, parseJsgf } from '../../../core/hearing/parse-jsgf.ts';
import { EMPTY_CONTEXT } from '../../../core/language/context.ts';
import { heardRules, recogniserGrammar } from '../../../core/language/heard/recogniser-grammar.ts';
import { understand } from '../../../core/language/understand.ts';
import { seeded } from '../../language/random.ts';
import { accepts } from './accepts.ts';
import { sampleRule } from './sample-rule.ts';
import { sayNumber } from './say-number.ts';

type Random = () => number;

/**
 * Sentences that the recogniser listens for; the same seed, the same sentences. Every other one is a reading, as that
 * is what must be right; every fourth is two in one breath.
 */
export function sampleHeard(count: number, seed: number): readonly string[] {
  const random = seeded(seed);
  const grammar = parseJsgf(recogniserGrammar('anything'));
  if (grammar.kind === 'malformed') throw new Error(grammar.message);
  return Array.from({ length: count }, (_, index) => {
    if (index % 2 === 0) return sampleReading(grammar, random);
    const other = sampleOther(grammar, random);
    return index % 4 === 1 ? other : `${other} ${sampleReading(grammar, random)}`;
  });
}

/** Readings lie below it, one in ten with a tenth. */
const HIGHEST = 350;
const TENTHS = 0.1;

/** "head one ninety two": quantity and link as the grammar has them, the value one that this quantity may have. */
function sampleReading(grammar: JsgfRules, random: Random): string {
  const names = ['quantity', 'link'].flatMap((rule) => sampleRule(grammar, rule, random));
  const whole = sayNumber(1 + Math.floor(random() * HIGHEST), random);
  const tenths =
    random() < TENTHS ? ['point', ...sayNumber(1 + Math.floor(random() * 9), random)] : [];
  const words = [...names, ...whole, ...tenths];
  const text = words.join(' ');
  return accepts(grammar, words) && isClear(text) ? text : sampleReading(grammar, random);
}

/** Anything else, rule by rule; the rules hold rarities that the recogniser is not given. */
function sampleOther(grammar: JsgfRules, random: Random): string {
  const rules = heardRules('anything').filter(({ node }) => canBeSaid(node));
  const rule = rules[Math.floor(random() * rules.length)];
  const words = rule === undefined ? [] : sampleNode(rule.node, random).words;
  const said = words.filter((word) => word !== ',');
  const text = said.join(' ');
  return accepts(grammar, said) && isClear(text) ? text : sampleOther(grammar, random);
}

/** Understood whole, and with nothing that the product would ask about. */
function isClear(text: string): boolean {
  const { unclaimed, doubts } = understand(text, EMPTY_CONTEXT);
  return unclaimed.length === 0 && doubts.length === 0;
}
