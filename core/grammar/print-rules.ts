import type { Node, Option, RuleNode } from './nodes.ts';

/**
 * Prints what of nodes can be heard, in the notation that JSGF and the ABNF form of SRGS share: `( | )`, `[ ]`
 * and `/weight/`. A node's text is `null` when nothing of it can be heard, `''` when it is heard as nothing.
 */
export class RulePrinter {
  private readonly bodies: Map<string, string>;
  private readonly reference: (name: string) => string;
  private readonly printed = new Map<string, RuleNode>();

  /** Each rule that is referred to is put into `bodies`, before those that refer to it. */
  constructor(bodies: Map<string, string>, reference: (name: string) => string) {
    this.bodies = bodies;
    this.reference = reference;
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
      // Its own body may hold another of its name: printed, the rule would call itself.
      if (this.printed.has(rule.name)) throw new Error(`two rules are named ${rule.name}`);
      this.bodies.set(rule.name, body);
      this.printed.set(rule.name, rule);
    } else if (printed !== rule) throw new Error(`two rules are named ${rule.name}`);
    return this.reference(rule.name);
  }
}
