import type { Node, RestNode, RuleNode, Tags } from './nodes.ts';
import { StarterIndex, type Starters, startersOf } from './starters.ts';

/** A node made ready for matching: what it can begin with is known, and choices are found by their first word. */
export type Compiled = { readonly starters: Starters } & (
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'class'; readonly name: string; readonly scale: number }
  | { readonly kind: 'sequence'; readonly parts: readonly Compiled[] }
  | { readonly kind: 'choice'; readonly index: StarterIndex<Compiled> }
  | { readonly kind: 'optional'; readonly node: Compiled; readonly greedy: boolean }
  | {
      readonly kind: 'repeat';
      readonly node: Compiled;
      readonly min: number;
      readonly max: number;
    }
  | CompiledRule
  | { readonly kind: 'list'; readonly name: string; readonly slot: string }
  | { readonly kind: 'tag'; readonly tags: readonly Tags[] }
  | { readonly kind: 'scope'; readonly slot: string; readonly node: Compiled }
  | { readonly kind: 'pause' }
  | { readonly kind: 'rest'; readonly slot: string; readonly until: RestNode['until'] }
);

export interface CompiledRule {
  readonly kind: 'rule';
  readonly starters: Starters;
  readonly node: Compiled;
  readonly fold: 'merge' | 'sum';
  readonly unbroken: boolean;
}

/** As `compile`, keeping the rule's own kind. */
export function compileRule(rule: RuleNode): CompiledRule {
  const { fold, unbroken } = rule;
  return { kind: 'rule', fold, unbroken, node: compile(rule.node), starters: startersOf(rule) };
}

const compiled = new WeakMap<Node, Compiled>();

export function compile(node: Node): Compiled {
  const found = compiled.get(node);
  if (found !== undefined) return found;
  const fresh = compileFresh(node);
  compiled.set(node, fresh);
  return fresh;
}

function compileFresh(node: Node): Compiled {
  const starters = startersOf(node);
  switch (node.kind) {
    case 'word':
    case 'class':
    case 'list':
    case 'rest':
    case 'pause':
      return { ...node, starters };
    case 'tag':
      return { kind: 'tag', tags: [node.tags], starters };
    case 'sequence':
      return { kind: 'sequence', parts: node.parts.map(compile), starters };
    case 'choice':
      return {
        kind: 'choice',
        index: indexOf(node.options.map((option) => option.node)),
        starters,
      };
    case 'unheard':
      return compile(node.node);
    case 'optional':
    case 'repeat':
    case 'rule':
    case 'scope':
      return { ...node, node: compile(node.node), starters };
  }
}

function indexOf(nodes: readonly Node[]): StarterIndex<Compiled> {
  return new StarterIndex(nodes.map((node) => [startersOf(node), compile(node)]));
}
