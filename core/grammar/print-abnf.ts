import type { RuleNode } from './nodes.ts';
import { RulePrinter } from './print-rules.ts';

/**
 * Prints the ABNF form of an SRGS 1.0 grammar (W3C Recommendation, 16 March 2004) whose root is the given rule.
 * Only what can be heard is printed, each rule once. With `again` `many` the root may follow itself.
 */
export function printAbnf(root: RuleNode, again: 'once' | 'many'): string {
  const bodies = new Map<string, string>();
  const once = new RulePrinter(bodies, (name) => `$${name}`).print(root.node) ?? '$VOID';
  const body = again === 'many' ? `(${once}) <1->` : once;
  const rules = [...bodies].map(([name, text]) => `$${name} = ${text};`);
  return [
    '#ABNF 1.0 UTF-8;',
    'language en-US;',
    'mode voice;',
    `root $${root.name};`,
    ...rules,
    `public $${root.name} = ${body};`,
    '',
  ].join('\n');
}
