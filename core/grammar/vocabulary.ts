import type { Node } from './nodes.ts';
import { partsOf } from './refuse-faults.ts';

/** Every word that a recogniser must know to hear these nodes, in alphabetical order. */
export function vocabularyOf(nodes: readonly Node[]): readonly string[] {
  const words = new Set<string>();
  nodes.forEach((node) => addWords(node, words));
  return [...words].sort();
}

function addWords(node: Node, words: Set<string>): void {
  switch (node.kind) {
    case 'word':
      words.add(node.word);
      return;
    case 'sequence':
      node.parts.forEach((part) => addWords(part, words));
      return;
    case 'choice':
      node.options.forEach((option) => addWords(option.node, words));
      return;
    case 'optional':
    case 'repeat':
    case 'rule':
    case 'scope':
      addWords(node.node, words);
      return;
    case 'class':
    case 'list':
    case 'tag':
    case 'pause':
    case 'rest':
    case 'unheard':
      return;
  }
}

/** Every word in a node, those that no recogniser listens for as well. */
export function everyWordOf(node: Node): readonly string[] {
  return node.kind === 'word' ? [node.word] : partsOf(node).flatMap(everyWordOf);
}
