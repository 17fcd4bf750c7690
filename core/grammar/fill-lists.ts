import type { RuntimeLists } from './match.ts';
import { choice, type Node, sequence, word } from './nodes.ts';

/** The node with its run-time lists written out, for a recogniser that must know every word beforehand. */
export function fillLists(node: Node, lists: RuntimeLists): Node {
  return new ListFiller(lists).fill(node);
}

/** Each node once: a rule that is referred to twice must stay one rule. */
class ListFiller {
  private readonly lists: RuntimeLists;
  private readonly filled = new Map<Node, Node>();

  constructor(lists: RuntimeLists) {
    this.lists = lists;
  }

  fill(node: Node): Node {
    const found = this.filled.get(node);
    if (found !== undefined) return found;
    const fresh = this.fresh(node);
    this.filled.set(node, fresh);
    return fresh;
  }

  /** A node without a list in it is given back as it is. */
  private fresh(node: Node): Node {
    switch (node.kind) {
      case 'list':
        return this.written(node);
      case 'sequence': {
        const parts = node.parts.map((part) => this.fill(part));
        return parts.every((part, at) => part === node.parts[at]) ? node : { ...node, parts };
      }
      case 'choice': {
        const options = node.options.map((option) => {
          const filled = this.fill(option.node);
          return filled === option.node ? option : { ...option, node: filled };
        });
        return options.every((option, at) => option === node.options[at])
          ? node
          : { ...node, options };
      }
      case 'optional':
      case 'repeat':
      case 'rule':
      case 'scope':
      case 'unheard': {
        const inner = this.fill(node.node);
        return inner === node.node ? node : { ...node, node: inner };
      }
      case 'word':
      case 'class':
      case 'tag':
      case 'rest':
      case 'pause':
        return node;
    }
  }

  /** A list without phrases stays a list: nothing of it can be heard. */
  private written(node: Node & { kind: 'list' }): Node {
    const phrases = this.lists[node.name] ?? [];
    if (phrases.length === 0) return node;
    return choice(...phrases.map((phrase) => sequence(...phrase.map(word))));
  }
}
