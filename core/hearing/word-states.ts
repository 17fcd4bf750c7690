import type { NetNode, WordNet } from './word-net.ts';

/** A node of the net, the state that the end of its rule comes back to, and the log weight of being there. */
export interface Place {
  readonly node: number;
  readonly back: number;
  readonly logWeight: number;
}

/** To a state, with the log of the grammar's weight: 0 for the likeliest of its choice. */
export interface Onward {
  readonly to: number;
  readonly logWeight: number;
}

/** What may follow some words of a grammar. */
export interface WordState {
  /** Where words begin: `wordsAt` each node, all of whose places come back to the same. */
  readonly places: readonly Place[];
  /** Log weight of ending here; null where no sentence can. */
  readonly ends: number | null;
  /** Where another sentence begins, without a word. */
  readonly again: readonly Onward[];
}

/** A word, and the node that it leads to. */
export interface WordStep extends Onward {
  readonly word: string;
}

/** The states of a grammar, worked out as they are come to, each once: all of them would be millions. */
export interface WordStates {
  readonly begin: number;
  readonly at: (state: number) => WordState;
  readonly wordsAt: (node: number) => readonly WordStep[];
  /** The one state of all places that a word leads to, whatever rules they belong to. */
  readonly join: (places: readonly Place[]) => Onward;
  /** The places that a state began as. */
  readonly kernel: (state: number) => readonly Place[];
  /** Gives what a state of other ones of the same grammar is here, and makes it. */
  readonly movedFrom: (before: WordStates) => (state: number) => number;
}

/**
 * Makes one way of the many in which words can be read (the subset construction of Rabin and Scott, 1959, with weights:
 * Mohri, 1997). Where several rules call the same one it is gone through once, and what it comes back to is a state too.
 */
export function wordStates(net: WordNet): WordStates {
  return new LazyStates(net);
}

/** The end of a public rule ends the sentence. */
const NOWHERE = -1;

class LazyStates implements WordStates {
  readonly begin: number;
  readonly #net: WordNet;
  readonly #ends: ReadonlySet<number>;
  readonly #ids = new Map<string, number>();
  /** Of each state the places that a word leads to. */
  readonly #kernels: (readonly Place[])[] = [];
  readonly #entries: (Entry | undefined)[] = [];

  constructor(net: WordNet) {
    this.#net = net;
    this.#ends = new Set([...net.rules.values()].map(({ end }) => end));
    const begins = net.publicRules.flatMap((rule) => this.#beginning(rule, NOWHERE, 0));
    this.begin = this.join(begins).to;
  }

  readonly at = (state: number): WordState => {
    const places = this.#closure(this.#kernels[state] ?? []);
    const ends = places.flatMap(({ node, back, logWeight }) => {
      const { end } = this.#entryAt(node);
      return back === NOWHERE && end !== null ? [logWeight + end] : [];
    });
    return {
      places: places.filter(({ node }) => this.#entryAt(node).words.length > 0),
      ends: ends.length === 0 ? null : Math.max(...ends),
      again: places.flatMap((place) => this.#againFrom(place)),
    };
  };

  readonly wordsAt = (node: number): readonly WordStep[] => this.#entryAt(node).words;

  readonly join = (places: readonly Place[]): Onward => {
    const logWeight = Math.max(...places.map((place) => place.logWeight));
    const kernel = likeliest(places);
    const key = kernel.map((place) => nameOf(place, logWeight)).join(' ');
    let to = this.#ids.get(key);
    if (to === undefined) {
      to = this.#kernels.push(kernel.map((place) => lighter(place, -logWeight))) - 1;
      this.#ids.set(key, to);
    }
    return { to, logWeight };
  };

  readonly kernel = (state: number): readonly Place[] => this.#kernels[state] ?? [];

  readonly movedFrom = (before: WordStates): ((state: number) => number) => {
    const known = new Map([[NOWHERE, NOWHERE]]);
    // A state comes back to older ones alone: this ends.
    const moved = (state: number): number => {
      const here = known.get(state) ?? this.#made(before.kernel(state), moved);
      known.set(state, here);
      return here;
    };
    return moved;
  };

  #made(kernel: readonly Place[], moved: (state: number) => number): number {
    return this.join(kernel.map((place) => ({ ...place, back: moved(place.back) }))).to;
  }

  /** Wherever these lead without a word. */
  #closure(kernel: readonly Place[]): readonly Place[] {
    const known = new Map<number, Place>();
    let fresh = kernel;
    while (fresh.length > 0) fresh = this.#called(this.#spread(fresh, known));
    return [...known.values()];
  }

  /** Adds these and where they come back to; gives those that call a rule. */
  #spread(from: readonly Place[], known: Map<number, Place>): readonly Place[] {
    const callers: Place[] = [];
    const waiting = [...from];
    for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
      const before = known.get(keyOf(place));
      if (before !== undefined && before.logWeight >= place.logWeight) continue;
      known.set(keyOf(place), place);
      if (this.#entryAt(place.node).calls.length > 0) callers.push(place);
      waiting.push(...this.#returnsFrom(place));
    }
    return callers;
  }

  #returnsFrom({ node, back, logWeight }: Place): readonly Place[] {
    const { end } = this.#entryAt(node);
    if (back === NOWHERE || end === null) return [];
    return (this.#kernels[back] ?? []).map((place) => lighter(place, logWeight + end));
  }

  /** The beginnings of what these call, each rule once: it comes back to all that called it. */
  #called(callers: readonly Place[]): readonly Place[] {
    const backs = new Map<string, Place[]>();
    for (const { node, back, logWeight } of callers) {
      for (const { rule, to, logWeight: called } of this.#entryAt(node).calls) {
        const place = { node: to, back, logWeight: logWeight + called };
        const others = backs.get(rule);
        if (others === undefined) backs.set(rule, [place]);
        else others.push(place);
      }
    }
    return [...backs].flatMap(([rule, places]) => {
      const { to, logWeight } = this.join(places);
      return this.#beginning(rule, to, logWeight);
    });
  }

  #againFrom({ node, back, logWeight }: Place): readonly Onward[] {
    return this.#entryAt(node).again.map((again) => ({
      to: this.join(this.#beginning(again.rule, back, 0)).to,
      logWeight: logWeight + again.logWeight,
    }));
  }

  #beginning(rule: string, back: number, logWeight: number): readonly Place[] {
    const node = this.#net.rules.get(rule)?.begin ?? null;
    return node === null ? [] : [{ node, back, logWeight }];
  }

  #entryAt(node: number): Entry {
    return (this.#entries[node] ??= this.#enter(node));
  }

  #enter(from: number): Entry {
    const reached = this.#skipsFrom(from);
    const ends = reached.filter(({ to }) => this.#ends.has(to));
    return {
      words: reached.flatMap(({ to: node, logWeight }) =>
        this.#nodeAt(node).words.map((step) => ({ ...step, logWeight })),
      ),
      calls: reached.flatMap(({ to: node, logWeight }) =>
        this.#nodeAt(node).calls.map((call) => ({ ...call, logWeight })),
      ),
      again: reached.flatMap(({ to: node, logWeight }) =>
        this.#nodeAt(node).again.map((rule) => ({ rule, logWeight })),
      ),
      end: ends.length === 0 ? null : Math.max(...ends.map(({ logWeight }) => logWeight)),
    };
  }

  /** The node and all that skips lead to from it. */
  #skipsFrom(from: number): readonly Onward[] {
    const best = new Map([[from, 0]]);
    const waiting = [from];
    for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
      for (const { to, logWeight } of this.#nodeAt(node).skips) {
        const total = (best.get(node) ?? 0) + logWeight;
        if ((best.get(to) ?? -Infinity) >= total) continue;
        best.set(to, total);
        waiting.push(to);
      }
    }
    return [...best].map(([to, logWeight]) => ({ to, logWeight }));
  }

  #nodeAt(node: number): NetNode {
    return this.#net.nodes[node] ?? NO_NODE;
  }
}

/** All that can be done at a node, skips taken. */
interface Entry {
  readonly words: readonly WordStep[];
  readonly calls: readonly {
    readonly rule: string;
    readonly to: number;
    readonly logWeight: number;
  }[];
  readonly again: readonly { readonly rule: string; readonly logWeight: number }[];
  /** Log weight of being at the end of the rule; null where more must come. */
  readonly end: number | null;
}

const NO_NODE: NetNode = { words: [], calls: [], skips: [], again: [] };

/** More states than fit into memory: with it two numbers make one. */
const MOST_STATES = 2 ** 24;

const keyOf = ({ node, back }: Place): number => node * MOST_STATES + back;

const lighter = (place: Place, logWeight: number): Place =>
  logWeight === 0 ? place : { ...place, logWeight: place.logWeight + logWeight };

/** Weights are told apart to a hundredth of a nat: sums of the same ones in another order differ by less. */
function nameOf(place: Place, heaviest: number): string {
  const weight = Math.round((heaviest - place.logWeight) * 100);
  return weight === 0 ? String(keyOf(place)) : `${keyOf(place)}/${weight}`;
}

/** Each place once, in order. */
function likeliest(places: readonly Place[]): readonly Place[] {
  if (places.length === 1) return places;
  const best = new Map<number, Place>();
  for (const place of places) {
    const known = best.get(keyOf(place));
    if (known === undefined || known.logWeight < place.logWeight) best.set(keyOf(place), place);
  }
  return [...best.values()].sort((one, other) => keyOf(one) - keyOf(other));
}
