import { fillLists } from '../grammar/fill-lists.ts';
import { choice, named, type Node, type RuleNode, sequence } from '../grammar/nodes.ts';
import { printAbnf } from '../grammar/print-abnf.ts';
import { printJsgf } from '../grammar/print-jsgf.ts';
import { startersOf } from '../grammar/starters.ts';
import { vocabularyOf } from '../grammar/vocabulary.ts';
import { AMOUNT } from './amounts.ts';
import type { Expectation } from './context.ts';
import { heardLists, type KnownNames, NO_NAMES } from './known-names.ts';
import type { Rule } from './rule.ts';
import { RULES } from './rules.ts';

/** Many sentences in one breath, or one answer to a yes or no question. */
const AGAIN: Record<Expectation, 'once' | 'many'> = {
  anything: 'many',
  number: 'many',
  yesOrNo: 'once',
};

/** JSGF text of what may be said next, known names included; loaded by the recogniser before it listens. */
export function recogniserGrammar(expectation: Expectation, names: KnownNames = NO_NAMES): string {
  return printJsgf('gloveside', heardRoot(expectation, names), AGAIN[expectation]);
}

/** The same in the ABNF form of SRGS, for recognisers that take that. */
export function recogniserGrammarAbnf(
  expectation: Expectation,
  names: KnownNames = NO_NAMES,
): string {
  return printAbnf(heardRoot(expectation, names), AGAIN[expectation]);
}

/** Every word that the recogniser's whole grammar holds. */
export function vocabulary(): readonly string[] {
  const states: readonly Expectation[] = ['anything', 'number', 'yesOrNo'];
  return vocabularyOf(states.map((state) => heardRoot(state, NO_NAMES)));
}

/** The rules heard when this is expected. */
export function heardRules(expectation: Expectation): readonly Rule[] {
  return RULES.filter((rule) => rule.heardWhen.includes(expectation));
}

/**
 * A recogniser writes out every reference to a rule in full, and numbers are the largest rule by far: so all
 * that may stand before a value is one choice, all that may stand behind it another, and the value is named
 * once between them. That hears a little more than the rules say, and loads many times faster.
 *
 * Values with nothing before them are a group of their own, since a number that may stand alone anywhere is
 * what noise turns into: "it's a two door reach in" was heard as "fifteen bar eight ten on".
 */
function heardRoot(expectation: Expectation, names: KnownNames): RuleNode {
  const rules = heardRules(expectation);
  const around = rules.flatMap((rule) => aroundAmount(rule.node) ?? []);
  const groups = [
    around.filter(({ before }) => !startersOf(before).empty),
    around.filter(({ before }) => startersOf(before).empty),
  ];
  const others = rules.filter((rule) => aroundAmount(rule.node) === null).map((rule) => rule.node);
  const valued = groups.filter((group) => group.length > 0).map(joinAround);
  const body = choice(...valued, ...others.map(bodyOf));
  return named('said', fillLists(body, heardLists(names)));
}

function joinAround(group: readonly Around[]): Node {
  return sequence(
    choice(...group.map(({ before }) => before)),
    AMOUNT,
    choice(...group.map(({ after }) => after)),
  );
}

interface Around {
  readonly before: Node;
  readonly after: Node;
}

/** The two sides of the rule's one value; `null` when it has none. */
function aroundAmount(node: Node): Around | null {
  const body = bodyOf(node);
  if (body.kind !== 'sequence') return null;
  const at = body.parts.findIndex((part) => part === AMOUNT);
  if (at === -1) return null;
  return {
    before: sequence(...body.parts.slice(0, at)),
    after: sequence(...body.parts.slice(at + 1)),
  };
}

function bodyOf(node: Node): Node {
  return node.kind === 'rule' ? node.node : node;
}
