import type { Act } from './left.ts';
import type { Node } from './nodes.ts';

/** Lists of acts, each once and under a number: most steps do the same few things, or nothing. */
export class ActLists {
  private readonly lists: (readonly Act[])[] = [NOTHING];
  private readonly numbers = new Map<string, number>([['[]', 0]]);
  private readonly nodes = new Map<Node, number>();

  at(number: number): readonly Act[] {
    return this.lists[number] ?? NOTHING;
  }

  numberOf(acts: readonly Act[]): number {
    const key = JSON.stringify(acts.map((act) => this.keyOf(act)));
    const found = this.numbers.get(key);
    if (found !== undefined) return found;
    const fresh = this.lists.push(acts) - 1;
    this.numbers.set(key, fresh);
    return fresh;
  }

  /** A node is known by itself, anything else by what it holds. */
  private keyOf(act: Act): unknown {
    if (act.do !== 'unless') return act;
    const known = this.nodes.get(act.node) ?? this.nodes.size;
    this.nodes.set(act.node, known);
    return known;
  }
}

const NOTHING: readonly Act[] = [];
