import { type SmallMap, withOneMore } from './small-map.ts';
import type { Summand } from './fold.ts';
import type { Data, ListNode, Node, RestNode } from './nodes.ts';

/**
 * What is left to read of a rule once some tokens are read: an item, and what is left behind it. There is one of each,
 * so what was found out about it is found out for every rule and sentence that comes to it.
 */
export interface Left {
  readonly id: number;
  readonly item: Item;
  /** Behind the item; nothing is behind what is done. */
  readonly next: Left | null;
  /** How many of the rules begun may not reach across a pause. */
  readonly unbroken: number;
  /** What is read here adds to a sum, in which a rule's tags are one summand. */
  readonly inSum: boolean;
  /** This behind another item; words of one spelling are one item. */
  behind: SmallMap<Item | string, Left> | null;
  /** Where it leads, by what is ahead, as far as that was asked. */
  onward: SmallMap<number, Onward> | null;
}

/** Nodes, and what is to be done behind a part of one. */
export type Item = Node | Mark;
export type Mark = EndMark | RestingMark | UnlessMark | { readonly kind: 'done' };

/** A scope, or a rule that is more than its parts, ends. */
export interface EndMark {
  readonly kind: 'end';
  /** What was read goes under this; `null`: among what is read around it. */
  readonly slot: string | null;
  readonly unbroken: boolean;
  readonly isSum: boolean;
}
/** Inside a rest of which something was read. */
interface RestingMark {
  readonly kind: 'resting';
  readonly node: RestNode;
}
/** A greedy part was passed over. */
interface UnlessMark {
  readonly kind: 'unless';
  readonly node: Node;
}

/** What is done to the tags of a reading on its way, before the token at its place is read. */
export type Act =
  | { readonly do: 'put'; readonly slot: string; readonly data: Data }
  | { readonly do: 'sum'; readonly summand: Summand }
  /** The token's own value, times this, is put or is a summand. */
  | { readonly do: 'value'; readonly scale: number }
  | { readonly do: 'begin'; readonly isSum: boolean }
  | { readonly do: 'end'; readonly slot: string | null }
  | { readonly do: 'rest' }
  | { readonly do: 'restEnds'; readonly slot: string }
  /** It is no reading where this node reads something here. */
  | { readonly do: 'unless'; readonly node: Node };

/** Makes each `Left` once. */
export class Lefts {
  readonly done: Left;
  private count = 0;
  private readonly marks = new Map<Node, Item>();

  constructor() {
    this.done = this.fresh({ kind: 'done' }, null);
  }

  /** The item, and then what is left. */
  before(next: Left, item: Item): Left {
    const key = item.kind === 'word' ? item.word : item;
    const found = next.behind?.get(key);
    if (found !== undefined) return found;
    const fresh = this.fresh(item, next);
    next.behind = withOneMore(next.behind, key, fresh);
    return fresh;
  }

  /** The items in their order, and then what is left. */
  beforeAll(next: Left, items: readonly Item[]): Left {
    return items.reduceRight<Left>((left, item) => this.before(left, item), next);
  }

  /** The one mark that goes with a node. */
  mark(node: Node, make: () => Item): Item {
    const found = this.marks.get(node);
    if (found !== undefined) return found;
    const fresh = make();
    this.marks.set(node, fresh);
    return fresh;
  }

  private fresh(item: Item, next: Left | null): Left {
    this.count += 1;
    const isEnd = item.kind === 'end';
    return {
      id: this.count,
      item,
      next,
      unbroken: (next?.unbroken ?? 0) + (isEnd && item.unbroken ? 1 : 0),
      inSum: isEnd ? item.isSum : (next?.inSum ?? false),
      behind: null,
      onward: null,
    };
  }
}

/** One way on: what is left behind it, and what it does to the tags. */
export interface Way {
  readonly left: Left;
  /** Its number in the automata's list of what is done. */
  readonly acts: number;
  /** Less preferred ways that come to the same were left out. */
  readonly hidesOthers: boolean;
  /** To end here is preferred to it. */
  readonly isBehindEnd: boolean;
}

/** Where what is left leads from a place. */
export interface Onward {
  /** One for each thing that may be left then, in the order of preference. */
  readonly ways: readonly Way[];
  /** Words that only these lists know can come next. */
  readonly lists: readonly ListNode[];
  /** Whether there are more ways than were found. */
  readonly isCut: boolean;
}
