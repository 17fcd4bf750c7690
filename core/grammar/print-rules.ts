import type { Node, Option, RuleNode } from './nodes.ts';

/** What of nodes is printed beside what is always heard. */
export interface Width {
  /** The weight of what is marked as unheard, beside 1 for what is not; 0 leaves it out. */
  readonly unheard: number;
  /** Of a word that nobody says: whatever needs it is left out. */
  readonly isWritten: (word: string) => boolean;
}

export const NARROW: Width = { unheard: 0, isWritten: () => false };

/**
 * Prints what of nodes can be heard, in the notation that JSGF and the ABNF form of SRGS share: `( | )`, `[ ]`
 * and `/weight/`. A node's text is `null` when nothing of it can be heard, `''` when it is heard as nothing.
 */
export class RulePrinter {
  private readonly bodies: Map<string, string>;
  private readonly reference: (name: string) => string;
  private readonly width: Width;
  private readonly printed = new Map<string, RuleNode>();

  /** Each rule that is referred to is put into `bodies`, before those that refer to it. */
  constructor(
    bodies: Map<string, string>,
    reference: (name: string) => string,
    width: Width = NARROW,
  ) {
    this.bodies = bodies;
    this.reference = reference;
    this.width = width;
  }

  print(node: Node): string | null {
    switch (node.kind) {
      case 'word':
        return this.width.isWritten(node.word) ? null : node.word;
      case 'tag':
        return '';
      case 'sequence':
        return this.printSequence(node.parts);
      case 'choice':
        return node.shortly !== undefined && this.width.unheard === 0
          ? this.print(node.shortly)
          : this.printChoice(node.options);
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
        return null;
      case 'unheard':
        return this.printUnheard(node);
    }
  }

  private printSequence(parts: readonly Node[]): string | null {
    const texts = parts.map((part) => this.print(part));
    if (texts.includes(null)) return null;
    return texts.filter((text) => text !== '').join(' ');
  }

  private printChoice(options: readonly Option[]): string | null {
    const heard = options.flatMap((option) => {
      const { node, weight } = this.weighed(option);
      const text = node === null ? null : this.print(node);
      return text === null ? [] : [{ text, weight }];
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

  /** What is unheard weighs less, and nothing where it is left out. */
  private weighed({ node, weight }: Option): { node: Node | null; weight: number } {
    if (node.kind !== 'unheard') return { node, weight };
    const heard = this.leavesOut(node) ? null : (node.heardAs ?? node.node);
    return { node: heard, weight: weight * this.width.unheard };
  }

  private leavesOut(node: Node & { kind: 'unheard' }): boolean {
    return this.width.unheard === 0 || node.isWritten === true;
  }

  /** A weight tells nothing but beside another: that of what nobody can say. */
  private printUnheard(node: Node & { kind: 'unheard' }): string | null {
    if (this.leavesOut(node)) return null;
    const inner = this.print(node.heardAs ?? node.node);
    if (inner === null || inner === '') return inner;
    return `(/${this.width.unheard}/ ${inner} | /1/ <VOID>)`;
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
