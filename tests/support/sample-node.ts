import { foldSum, foldTags } from '../../core/grammar/fold.ts';
import type { Node, Option, RuleNode, Tags } from '../../core/grammar/nodes.ts';

/** A way to say what a node means. */
export interface Sample {
  readonly words: readonly string[];
  readonly tags: readonly Tags[];
}

const SILENCE: Sample = { words: [], tags: [] };

/** Says a node at random, `random` giving numbers in [0, 1). Written-only tokens and lists are not said. */
export function sampleNode(node: Node, random: () => number): Sample {
  switch (node.kind) {
    case 'word':
      return { words: [node.word], tags: [] };
    case 'tag':
      return { words: [], tags: [node.tags] };
    case 'pause':
      return { words: [','], tags: [] };
    case 'sequence':
      return joinSamples(node.parts.map((part) => sampleNode(part, random)));
    case 'choice':
      return sampleNode(pick(node.options, random), random);
    case 'optional':
      return random() < 0.5 && canBeSaid(node.node) ? sampleNode(node.node, random) : SILENCE;
    case 'repeat':
      return sampleRepeat(node, random);
    case 'rule':
      return sampleRule(node, random);
    case 'scope': {
      const { words, tags } = sampleNode(node.node, random);
      return { words, tags: [{ [node.slot]: foldTags(tags) }] };
    }
    case 'unheard':
      return sampleNode(node.node, random);
    case 'class':
    case 'list':
    case 'rest':
      return SILENCE;
  }
}

function sampleRule(rule: RuleNode, random: () => number): Sample {
  const { words, tags } = sampleNode(rule.node, random);
  return { words, tags: [rule.fold === 'sum' ? foldSum(tags) : foldTags(tags)] };
}

function sampleRepeat(node: Node & { kind: 'repeat' }, random: () => number): Sample {
  const times = node.min + Math.floor(random() * (node.max - node.min + 1));
  return joinSamples(Array.from({ length: times }, () => sampleNode(node.node, random)));
}

function pick(options: readonly Option[], random: () => number): Node {
  const sayable = options.filter((option) => canBeSaid(option.node));
  let left = random() * sayable.reduce((sum, option) => sum + option.weight, 0);
  for (const option of sayable) {
    left -= option.weight;
    if (left < 0) return option.node;
  }
  return sayable.at(-1)?.node ?? { kind: 'sequence', parts: [] };
}

/** Whether every word of it is in the grammar, none left to the sentence. */
export function canBeSaid(node: Node): boolean {
  switch (node.kind) {
    case 'class':
    case 'list':
    case 'rest':
      return false;
    case 'sequence':
      return node.parts.every(canBeSaid);
    case 'choice':
      return node.options.some((option) => canBeSaid(option.node));
    case 'repeat':
    case 'rule':
    case 'scope':
    case 'unheard':
      return canBeSaid(node.node);
    case 'word':
    case 'tag':
    case 'pause':
    case 'optional':
      return true;
  }
}

function joinSamples(samples: readonly Sample[]): Sample {
  return {
    words: samples.flatMap((sample) => sample.words),
    tags: samples.flatMap((sample) => sample.tags),
  };
}
