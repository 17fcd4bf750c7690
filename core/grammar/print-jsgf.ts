import type { RuleNode } from './nodes.ts';
import { RulePrinter } from './print-rules.ts';

/**
 * Prints a JSGF 1.0 grammar whose public rule is the given one (W3C Note, 5 June 2000). Only what can be heard
 * is printed: no tags, no written-only tokens. Each rule is printed once, under its own name. With `again`
 * `many`, the public rule may follow itself any number of times, by right recursion.
 */
export function printJsgf(grammarName: string, root: RuleNode, again: 'once' | 'many'): string {
  const bodies = new Map<string, string>();
  const once = new RulePrinter(bodies, (name) => `<${name}>`).print(root.node) ?? '<VOID>';
  const body = again === 'many' ? `${once} [<${root.name}>]` : once;
  const rules = [...bodies].map(([name, text]) => `<${name}> = ${text};`);
  return [
    '#JSGF V1.0;',
    `grammar ${grammarName};`,
    ...rules,
    `public <${root.name}> = ${body};`,
    '',
  ].join('\n');
}
