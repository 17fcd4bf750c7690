import type { Node } from './nodes.ts';
import type { Remainders } from './remainders.ts';
import type { StarterIndex } from './starters.ts';

/** So that no flow of words in any order fills the memory; a day's talk has fewer pairs. */
const MOST_PAIRS = 2_000;

interface Indexed<Thing> { readonly node: Node; readonly ready: Thing }

/** Finds, of many things in their order, those that two tokens in a row can begin. */
export class PairIndex<Thing> {
  private readonly index: StarterIndex<Indexed<Thing>>;
  private readonly remainders: Remainders;
  private readonly byPair = new Map<number, readonly Thing[]>();

  constructor(index: StarterIndex<Indexed<Thing>>, remainders: Remainders) {
    this.index = index;
    this.remainders = remainders;
  }

  startedBy(first: number, second: number): readonly Thing[] {
    const pair = first * 2 ** 20 + second;
    const found = this.byPair.get(pair);
    if (found !== undefined) return found;
    const fresh = this.index.startedBy(first).filter(({ node }) => this.remainders.canBegin(node, first, second)).map(({ ready }) => ready);
    if (this.byPair.size >= MOST_PAIRS) this.byPair.clear();
    this.byPair.set(pair, fresh);
    return fresh;
  }
}
