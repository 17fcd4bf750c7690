import type { Node } from './nodes.ts';

/**
 * Everything that can be heard of a node, for names and other short lists: loops are walked as seldom as they
 * may be, once where they need not be.
 */
export function phrasesOf(node: Node): readonly string[] {
  return [...new Set(heard(node).map((words) => words.join(' ')))].filter((text) => text !== '');
}

type Words = readonly string[];
const SILENCE: Words = [];

function heard(node: Node): readonly Words[] {
  switch (node.kind) {
    case 'word':
      return [[node.word]];
    case 'tag':
      return [SILENCE];
    case 'sequence':
      return inTurn(node.parts);
    case 'choice':
      return node.options.flatMap((option) => heard(option.node));
    case 'optional':
      return [SILENCE, ...heard(node.node)];
    case 'repeat':
      return node.min === 0
        ? [SILENCE, ...heard(node.node)]
        : inTurn(Array.from({ length: node.min }, () => node.node));
    case 'rule':
    case 'scope':
      return heard(node.node);
    case 'class':
    case 'list':
    case 'pause':
    case 'rest':
    case 'unheard':
      return [];
  }
}

function inTurn(parts: readonly Node[]): readonly Words[] {
  return parts.reduce<readonly Words[]>(
    (before, part) => before.flatMap((start) => heard(part).map((end) => [...start, ...end])),
    [SILENCE],
  );
}
