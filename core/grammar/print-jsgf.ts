import type { Node, Option, RuleNode } from './nodes.ts';

/**
 * Prints a JSGF 1.0 grammar whose public rule is the given one (W3C Note, 5 June 2000). Only what can be heard
 * is printed: no tags, no written-only tokens. Each rule is printed once, under its own name. With `again`
 * `many`, the public rule may follow itself any number of times, by right recursion.
 */
export function printJsgf(grammarName: string, root: RuleNode, again: 'once' | 'many'): string {
  const bodies = new Map<string, string>();
  const once = new Printer(bodies).print(root.node) ?? '<VOID>';
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

/** A node's text; `null` when nothing of it can be heard, `''` when it is heard as nothing. */
class Printer {
  private readonly bodies: Map<string, string>;
  private readonly printed = new Map<string, RuleNode>();

  constructor(bodies: Map<string, string>) {
    this.bodies = bodies;
  }

  print(node: Node): string | null {
    switch (node.kind) {
      case 'word':
        return node.word;
      case 'tag':
        return '';
      case 'sequence':
        return this.printSequence(node.parts);
      case 'choice':
        return this.printChoice(node.options);
      case 'optional': {
        const inner = this.print(node.node);
        return inner === null || inner === '' ? '' : `[${inner}]`;
      }
      case 'repeat':
        return this.printRepeat(node);
      case 'rule':
        return this.printReference(node);
      case 'scope':
        return this.print(node.node);
      case 'class':
      case 'list':
      case 'pause':
      case 'rest':
      case 'unheard':
        return null;
    }
  }

  private printSequence(parts: readonly Node[]): string | null {
    const texts = parts.map((part) => this.print(part));
    if (texts.includes(null)) return null;
    return texts.filter((text) => text !== '').join(' ');
  }

  private printChoice(options: readonly Option[]): string | null {
    const heard = options.flatMap((option) => {
      const text = this.print(option.node);
      return text === null ? [] : [{ text, weight: option.weight }];
    });
    const [only, second] = heard;
    if (only === undefined) return null;
    if (second === undefined) return only.text;
    const filled = heard.filter((option) => option.text !== '');
    if (filled.length === 0) return '';
    const even = filled.every((option) => option.weight === 1);
    const texts = filled.map(({ text, weight }) => (even ? text : `/${weight}/ ${text}`));
    const group = [...new Set(texts)].join(' | ');
    return filled.length < heard.length ? `[${group}]` : `(${group})`;
  }

  private printRepeat(node: Node & { kind: 'repeat' }): string | null {
    const inner = this.print(node.node);
    if (inner === null) return node.min === 0 ? '' : null;
    const sure = Array.from({ length: node.min }, () => inner);
    let maybe = '';
    for (let times = node.min; times < node.max; times += 1) {
      maybe = maybe === '' ? `[${inner}]` : `[${inner} ${maybe}]`;
    }
    return [...sure, maybe].filter((text) => text !== '').join(' ');
  }

  private printReference(rule: RuleNode): string | null {
    const printed = this.printed.get(rule.name);
    if (printed === undefined) {
      const body = this.print(rule.node);
      if (body === null || body === '') return body;
      this.bodies.set(rule.name, body);
      this.printed.set(rule.name, rule);
    } else if (printed !== rule) throw new Error(`two rules are named ${rule.name}`);
    return `<${rule.name}>`;
  }
}
