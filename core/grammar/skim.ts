import type { Grammar } from './compile.ts';
import { END_SYMBOL, kindIn } from './kinds.ts';
import { longer } from './longer.ts';
import type { Matcher } from './match.ts';
import type { ListNode, Node, RestNode } from './nodes.ts';
import { NOTHING, type Remainder, type Remainders } from './remainders.ts';
import { type Numbered, type StarterIndex, startersOf } from './starters.ts';
import { OWN, Transitions } from './transitions.ts';

/** What may be left to read of a node that has read the tokens so far. */
interface Thread {
  readonly number: number;
  readonly left: Remainder;
}
interface StateJump {
  readonly node: ListNode | RestNode;
  readonly state: number;
}

/** Told of a node that may read up to `end`. */
export type MayRead = (end: number, number: number) => void;

/**
 * A state is its place in the lists, and whether nodes may end there and whether words outside the grammar may come
 * next: most do not, and the lists lie far apart in memory.
 */
const [MAY_END, MAY_REST, MAY_LIST, FLAG_BITS] = [1, 2, 4, 3] as const;
const NOWHERE = 0;
const NO_THREADS: readonly Thread[] = [];
const NO_JUMPS: readonly StateJump[] = [];

/**
 * Finds, of many nodes at once, those that may read a stretch of a sentence: one step a token, however many nodes.
 * What it passes over is read by none; what it finds a matcher may still refuse.
 */
export class Skimmer {
  private readonly index: StarterIndex;
  private readonly jumpers: readonly Numbered[];
  private readonly remainders: Remainders;
  private readonly transitions = new Transitions();
  private readonly numbers = new Map<string, number>();
  /** Of each state: what may be left of the nodes. */
  private readonly threads = new Map<number, readonly Thread[]>();
  private readonly jumps = new Map<number, readonly StateJump[]>();
  private age = 0;
  private nested = 0;
  private start: number = NOWHERE;
  /** Where the first token leads, by its symbol: every walk asks it, and hardly two ask of the same. */
  private firsts = new Int32Array(0);

  constructor(grammar: Grammar, nodes: readonly Node[]) {
    for (const node of nodes) grammar.learn(node);
    this.remainders = grammar.remainders;
    this.index = grammar.indexOf(nodes);
    this.jumpers = this.index.things.filter(({ node }) => startersOf(node).words === null);
    this.begin();
  }

  /** Which nodes may read the matcher's tokens from `at`, and up to where: the nearest first, and there the lowest. */
  skim(matcher: Matcher, at: number, mayRead: MayRead): void {
    this.whole(() => this.walk(this.start, at, { matcher, mayRead }));
  }

  /** What comes first of the nodes that may read all tokens from `at` on, the lowest first; `null` where nothing does. */
  firstToEnd<Found>(
    matcher: Matcher,
    at: number,
    of: (number: number) => Found | null,
  ): Found | null {
    return this.whole(() => this.firstOf(matcher, at, of));
  }

  /** Who is told of a reading may skim on: what is forgotten meanwhile is built anew once nobody stands in a state of it. */
  private whole<Found>(skim: () => Found): Found {
    if (this.nested === 0 && this.age !== this.remainders.age) this.begin();
    this.nested += 1;
    try {
      return skim();
    } finally {
      this.nested -= 1;
    }
  }

  private firstOf<Found>(
    matcher: Matcher,
    at: number,
    of: (number: number) => Found | null,
  ): Found | null {
    const { symbols } = matcher;
    const end = symbols.length - 1;
    let state = this.start;
    for (let place = at; place < end && state !== NOWHERE; place += 1) {
      if (mayJump(state, matcher)) return this.firstToEndByJumps(matcher, at, of);
      state = this.after(state, symbols[place] ?? END_SYMBOL);
    }
    matcher.steps += end - at;
    if ((state & MAY_END) === 0) return null;
    const ends = (state >> FLAG_BITS) + OWN;
    const last = ends + this.transitions.at(ends);
    for (let each = ends + 1; each <= last; each += 1) {
      const found = of(this.transitions.at(each));
      if (found !== null) return found;
    }
    return null;
  }

  private firstToEndByJumps<Found>(
    matcher: Matcher,
    at: number,
    of: (number: number) => Found | null,
  ): Found | null {
    const { length } = matcher.tokens;
    const last: number[] = [];
    this.skim(matcher, at, (end, number) => {
      if (end === length) last.push(number);
    });
    for (const number of last.sort((one, other) => one - other)) {
      const found = of(number);
      if (found !== null) return found;
    }
    return null;
  }

  private walk(from: number, at: number, walk: Walk): void {
    const { matcher } = walk;
    const { symbols } = matcher;
    let state = from;
    for (let place = at; state !== NOWHERE; place += 1) {
      if ((state & MAY_END) !== 0) this.tellEnds(state, place, walk);
      if (mayJump(state, matcher)) {
        for (const jump of this.jumps.get(state) ?? NO_JUMPS) this.jump(jump, place, walk);
      }
      const symbol = symbols[place] ?? END_SYMBOL;
      if (symbol === END_SYMBOL) return;
      matcher.steps += 1;
      state = this.after(state, symbol);
    }
  }

  private tellEnds(state: number, end: number, { mayRead }: Walk): void {
    const ends = (state >> FLAG_BITS) + OWN;
    const last = ends + this.transitions.at(ends);
    for (let each = ends + 1; each <= last; each += 1) mayRead(end, this.transitions.at(each));
  }

  private jump({ node, state }: StateJump, at: number, walk: Walk): void {
    walk.matcher.steps += 1;
    for (const end of walk.matcher.endsOf(node, at)) this.walk(state, end, walk);
  }

  private after(state: number, symbol: number): number {
    if (state === this.start) return this.afterStart(symbol);
    const from = state >> FLAG_BITS;
    const found = this.transitions.get(from, symbol);
    if (found >= 0) return found;
    const fresh = this.learn(state, symbol);
    this.transitions.set(from, symbol, fresh);
    return fresh;
  }

  private afterStart(symbol: number): number {
    const found = this.firsts[symbol] ?? NOT_KNOWN;
    if (found !== NOT_KNOWN) return found - 1;
    const fresh = this.learn(this.start, symbol);
    if (symbol >= this.firsts.length) this.firsts = longer(this.firsts, symbol);
    // One more than it is: what was never written is nothing.
    this.firsts[symbol] = fresh + 1;
    return fresh;
  }

  private learn(state: number, symbol: number): number {
    const fresh = this.stateOf(this.threadsAfter(state, symbol));
    this.remainders.learn();
    return fresh;
  }

  private threadsAfter(state: number, symbol: number): readonly Thread[] {
    const before =
      state === this.start ? this.begunBy(kindIn(symbol)) : (this.threads.get(state) ?? NO_THREADS);
    const threads: Thread[] = [];
    for (const { number, left } of before) {
      const after = this.remainders.after(left, symbol);
      if (after !== NOTHING) threads.push({ number, left: after });
    }
    return threads;
  }

  private begunBy(kind: number): readonly Thread[] {
    return this.index.startedBy(kind).map((each) => this.threadOf(each));
  }

  private readonly threadOf = ({ number, node }: Numbered): Thread => ({
    number,
    left: this.remainders.of(node),
  });

  private stateOf(threads: readonly Thread[]): number {
    if (threads.length === 0) return NOWHERE;
    const key = threads.map(({ number, left }) => `${number}:${left.id}`).join();
    const found = this.numbers.get(key);
    if (found !== undefined) return found;
    const fresh = this.fresh(threads);
    this.numbers.set(key, fresh);
    return fresh;
  }

  private fresh(threads: readonly Thread[]): number {
    const jumps = this.jumpsOf(threads);
    const ends = threads.filter(({ left }) => left.canEnd).map(({ number }) => number);
    return this.add(threads, ends, jumps);
  }

  private add(
    threads: readonly Thread[],
    ends: readonly number[],
    jumps: readonly StateJump[],
  ): number {
    const own = ends.length === 0 ? [] : [ends.length, ...ends];
    const flags = (ends.length === 0 ? 0 : MAY_END) + flagsOf(jumps);
    const state = (this.transitions.addState(own) << FLAG_BITS) + flags;
    this.threads.set(state, threads);
    if (jumps.length > 0) this.jumps.set(state, jumps);
    return state;
  }

  private jumpsOf(threads: readonly Thread[]): readonly StateJump[] {
    const byNode = new Map<ListNode | RestNode, Thread[]>();
    for (const { number, left } of threads) {
      for (const { node, next } of this.remainders.jumpsIn(left)) {
        const beyond = byNode.get(node) ?? [];
        beyond.push({ number, left: next });
        byNode.set(node, beyond);
      }
    }
    return [...byNode].flatMap(([node, beyond]) => {
      const state = this.stateOf(beyond);
      return state === NOWHERE ? [] : [{ node, state }];
    });
  }

  /** Everything that was learnt is forgotten. */
  private begin(): void {
    this.age = this.remainders.age;
    this.transitions.clear();
    this.firsts = new Int32Array(0);
    this.numbers.clear();
    this.threads.clear();
    this.jumps.clear();
    this.add(NO_THREADS, [], NO_JUMPS);
    this.start = this.add(NO_THREADS, [], this.jumpsOf(this.jumpers.map(this.threadOf)));
  }
}

const NOT_KNOWN = 0;

/** Lists that hold nothing lead nowhere. */
const mayJump = (state: number, { hasLists }: Matcher): boolean =>
  (state & MAY_REST) !== 0 || (hasLists && (state & MAY_LIST) !== 0);

function flagsOf(jumps: readonly StateJump[]): number {
  let flags = 0;
  for (const { node } of jumps) flags |= node.kind === 'rest' ? MAY_REST : MAY_LIST;
  return flags;
}

interface Walk {
  readonly matcher: Matcher;
  readonly mayRead: MayRead;
}
