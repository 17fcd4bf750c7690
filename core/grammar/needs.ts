import { CLASS_MARK } from './kinds.ts';
import type { Node } from './nodes.ts';

/** A sentence that a node reads holds at least one word of each of these. */
export type Needs = readonly ReadonlySet<string>[];

const known = new WeakMap<Node, Needs>();

/** What a sentence must hold for a node to read any of it: the cheapest way to pass most rules over. */
export function needsOf(node: Node): Needs {
  const found = known.get(node);
  if (found !== undefined) return found;
  const fresh = findNeeds(node);
  known.set(node, fresh);
  return fresh;
}

function findNeeds(node: Node): Needs {
  switch (node.kind) {
    case 'word':
      return [new Set([node.word])];
    case 'class':
      return [new Set([CLASS_MARK + node.name])];
    case 'sequence':
      return node.parts.flatMap(needsOf);
    case 'choice':
      return eitherNeed(node.options.map((option) => needsOf(option.node)));
    case 'repeat':
      return node.min === 0 ? [] : needsOf(node.node);
    case 'rule':
    case 'scope':
    case 'unheard':
      return needsOf(node.node);
    case 'optional':
    case 'tag':
    case 'pause':
    case 'list':
    case 'rest':
      return [];
  }
}

function eitherNeed(options: readonly Needs[]): Needs {
  const words = new Set<string>();
  for (const needs of options) {
    const [smallest] = [...needs].sort((one, other) => one.size - other.size);
    if (smallest === undefined) return [];
    smallest.forEach((word) => words.add(word));
  }
  return [words];
}
