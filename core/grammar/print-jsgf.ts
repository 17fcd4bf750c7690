import type { RuleNode } from './nodes.ts';
import { NARROW, RulePrinter, type Width } from './print-rules.ts';

/** Whether a public rule may follow itself any number of times, by right recursion. */
export type Again = 'once' | 'many';

export interface PublicRule {
  readonly root: RuleNode;
  readonly again: Again;
}

/** Prints a grammar whose one public rule is the given one. */
export const printJsgf = (grammarName: string, root: RuleNode, again: Again): string =>
  printPublicRules(grammarName, [{ root, again }]);

/**
 * Prints a JSGF 1.0 grammar with these public rules (W3C Note, 5 June 2000). Only what can be heard is printed: no tags,
 * no written-only tokens. Each rule is printed once, under its own name.
 */
export function printPublicRules(
  grammarName: string,
  publicRules: readonly PublicRule[],
  width: Width = NARROW,
): string {
  const bodies = new Map<string, string>();
  const printer = new RulePrinter(bodies, (name) => `<${name}>`, width);
  const publics = publicRules.map(({ root, again }) => {
    const once = printer.print(root.node) ?? '<VOID>';
    const body = again === 'many' ? `${once} [<${root.name}>]` : once;
    return `public <${root.name}> = ${body};`;
  });
  const rules = [...bodies].map(([name, text]) => `<${name}> = ${text};`);
  return ['#JSGF V1.0;', `grammar ${grammarName};`, ...rules, ...publics, ''].join('\n');
}
