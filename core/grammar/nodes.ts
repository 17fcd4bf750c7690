/** What a piece of a sentence means, as plain data. */
export type Data = string | number | boolean | Tags;
export interface Tags {
  readonly [slot: string]: Data;
}

/**
 * The grammar algebra. Every node is plain data, so one source can be matched, sampled and printed.
 * Rules hold their body and never themselves: the language is regular and can be enumerated.
 */
export type Node =
  | WordNode
  | ClassNode
  | SequenceNode
  | ChoiceNode
  | OptionalNode
  | RepeatNode
  | RuleNode
  | ListNode
  | TagNode
  | ScopeNode
  | RestNode
  | UnheardNode
  | PauseNode;

interface WordNode {
  readonly kind: 'word';
  readonly word: string;
}
/** Any token of a class that the tokeniser gives, such as digits; never heard, only written. */
export interface ClassNode {
  readonly kind: 'class';
  readonly name: string;
  /** Adds the token's own number, times this, to the sum of the rule it stands in. */
  readonly scale: number;
}
interface SequenceNode {
  readonly kind: 'sequence';
  readonly parts: readonly Node[];
}
/** Earlier options are preferred; a weight is how much likelier the option is to be said. */
export interface ChoiceNode {
  readonly kind: 'choice';
  readonly options: readonly Option[];
  /** All that is heard of it, written with fewer words: for recognisers that bear little. */
  readonly shortly?: Node;
}
export interface Option {
  readonly node: Node;
  readonly weight: number;
}
export interface OptionalNode {
  readonly kind: 'optional';
  readonly node: Node;
  /** Taken wherever it can be: what would read the sentence without it may not. */
  readonly greedy: boolean;
}
interface RepeatNode {
  readonly kind: 'repeat';
  readonly node: Node;
  readonly min: number;
  readonly max: number;
}
/** A named piece, matched once at each place. Its tags are folded where it ends. */
export interface RuleNode {
  readonly kind: 'rule';
  readonly name: string;
  readonly node: Node;
  /** `sum`: the tags `plus`, `times`, `aside` and `sign` make one `number`. */
  readonly fold: 'merge' | 'sum';
  /** May not reach across a pause in the sentence. */
  readonly unbroken: boolean;
}
/** Phrases that are known only at run time. */
export interface ListNode {
  readonly kind: 'list';
  readonly name: string;
  readonly slot: string;
}
interface TagNode {
  readonly kind: 'tag';
  readonly tags: Tags;
}
/** Keeps what a part means under a name of its own. */
export interface ScopeNode {
  readonly kind: 'scope';
  readonly slot: string;
  readonly node: Node;
}
/** Whatever words follow, at least one, up to a pause or to the end; their span goes under `slot`. */
export interface RestNode {
  readonly kind: 'rest';
  readonly slot: string;
  readonly until: 'pause' | 'end';
}
/** Understood, but seldom said: a recogniser that bears little does not listen for it, and none for what is written. */
interface UnheardNode {
  readonly kind: 'unheard';
  /** Spelled so by keyboards and other recognisers alone: nobody says it, or it sounds as something else here. */
  readonly isWritten?: true;
  /** What recognisers listen for in its place, where that is less than is understood. */
  readonly heardAs?: Node;
  readonly node: Node;
}

/** Only where the sentence pauses, as at a comma; nobody's ear is asked to tell. */
interface PauseNode {
  readonly kind: 'pause';
}

export const word = (text: string): Node => ({ kind: 'word', word: text });
export const sequence = (...parts: readonly Node[]): Node => ({ kind: 'sequence', parts });
export const choice = (...nodes: readonly Node[]): Node => ({
  kind: 'choice',
  options: nodes.map((node) => ({ node, weight: 1 })),
});
export const weighted = (...options: readonly Option[]): Node => ({ kind: 'choice', options });
export const optional = (node: Node): Node => ({ kind: 'optional', node, greedy: false });
export const greedy = (node: Node): Node => ({ kind: 'optional', node, greedy: true });
export const repeat = (node: Node, min: number, max: number): Node => ({
  kind: 'repeat',
  node,
  min,
  max,
});
export const tag = (tags: Tags): Node => ({ kind: 'tag', tags });
export const scope = (slot: string, node: Node): Node => ({ kind: 'scope', slot, node });
export const rest = (slot: string, until: RestNode['until']): Node => ({
  kind: 'rest',
  slot,
  until,
});
export const pause: Node = { kind: 'pause' };
export const unheard = (node: Node): Node => ({ kind: 'unheard', node });
export const written = (node: Node): Node => ({ kind: 'unheard', isWritten: true, node });
/** A choice, and the same to be heard with fewer words. */
export const shortly = (options: readonly Node[], shorter: Node): Node => ({
  kind: 'choice',
  options: options.map((node) => ({ node, weight: 1 })),
  shortly: shorter,
});
/** Understood as widely as the first, heard as the second, which the first must hold. */
export const heardAs = (node: Node, heardAs: Node): Node => ({ kind: 'unheard', node, heardAs });
export const list = (name: string, slot: string): Node => ({ kind: 'list', name, slot });
export const tokenClass = (name: string, scale = 1): Node => ({ kind: 'class', name, scale });
export const named = (name: string, node: Node): RuleNode => ({
  kind: 'rule',
  name,
  node,
  fold: 'merge',
  unbroken: false,
});
/** A rule whose tags add up to a number, said in one breath. */
export const summed = (name: string, node: Node): RuleNode => ({
  kind: 'rule',
  name,
  node,
  fold: 'sum',
  unbroken: true,
});
