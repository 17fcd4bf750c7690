import type { Act } from './left.ts';
import type { Node } from './nodes.ts';
import { madeReady, type Step } from './reading.ts';

/** Lists of acts, made ready, each once and under a number: most steps do the same few things, or nothing. */
export class ActLists {
  private readonly lists: (readonly Step[])[] = [NOTHING];
  private readonly numbers = new Map<string, number>([['[]', 0]]);
  private readonly nodes = new Map<Node, number>();

  get count(): number {
    return this.lists.length;
  }

  at(number: number): readonly Step[] {
    return this.lists[number] ?? NOTHING;
  }

  numberOf(acts: readonly Act[]): number {
    const key = JSON.stringify(acts.map((act) => this.keyOf(act)));
    const found = this.numbers.get(key);
    if (found !== undefined) return found;
    const fresh = this.lists.push(acts.map(madeReady)) - 1;
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

const NOTHING: readonly Step[] = [];
