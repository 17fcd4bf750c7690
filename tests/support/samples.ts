import type { Tags } from '../../core/grammar/nodes.ts';
import { canBeSaid, sampleNode } from './sample-node.ts';
import type { Rule } from '../../core/language/rule.ts';
import { RULES } from '../../core/language/rules.ts';

/** A sentence made from the grammar itself, and what it was made to mean. */
export interface SampledSentence {
  readonly text: string;
  /** The shape of the rule that it says. */
  readonly shape: string;
  readonly tags: Tags;
}

/** Sentences at random, `random` giving numbers in [0, 1): the same numbers give the same sentences. */
export function sampleSentences(count: number, random: () => number): readonly SampledSentence[] {
  const rules = sayableRules();
  return Array.from({ length: count }, () => sampleRule(pick(rules, random), random));
}

/** The rules of which samples can be drawn: those that hold what is not only known at run time. */
export const sayableRules = (): readonly Rule[] => RULES.filter((rule) => canBeSaid(rule.node));

export function sampleRule(rule: Rule, random: () => number): SampledSentence {
  const { words, tags } = sampleNode(rule.node, random);
  return { text: words.join(' '), shape: rule.shape, tags: tags[0] ?? {} };
}

function pick(rules: readonly Rule[], random: () => number): Rule {
  const rule = rules[Math.floor(random() * rules.length)];
  if (rule === undefined) throw new Error('random() must be at least 0 and less than 1');
  return rule;
}
