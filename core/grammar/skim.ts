import type { Grammar } from './compile.ts';
import { END_SYMBOL, kindIn } from './kinds.ts';
import type { Matcher } from './match.ts';
import type { ListNode, Node, RestNode } from './nodes.ts';
import { NOTHING, type Remainder, type Remainders } from './remainders.ts';
import { type Numbered, type StarterIndex, startersOf } from './starters.ts';
import { Transitions } from './transitions.ts';

/** What may be left to read of a node that has read the tokens so far. */
interface Thread {
  readonly number: number;
  readonly left: Remainder;
}
interface StateJump {
  readonly node: ListNode | RestNode;
  readonly state: number;
}

/** The nodes that may read up to `end`, by their numbers, the lowest first. */
export interface Stretch {
  readonly end: number;
  readonly numbers: readonly number[];
}

/**
 * A state is its place in the lists, and whether nodes may end there and whether words outside the grammar may come
 * next: most do not, and the lists lie far apart in memory.
 */
const [MAY_END, MAY_REST, MAY_LIST, FLAG_BITS] = [1, 2, 4, 3] as const;
const NOWHERE = 0;
const START = 1 << FLAG_BITS;
const NO_THREADS: readonly Thread[] = [];
const NONE: readonly number[] = [];
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
  private threads: (readonly Thread[])[] = [];
  /** Of each state: the nodes that may end there, by their numbers, the lowest first. */
  private ends: (readonly number[])[] = [];
  private jumps: (readonly StateJump[])[] = [];
  private age = 0;
  private start: number = START;

  constructor(grammar: Grammar, nodes: readonly Node[]) {
    for (const node of nodes) grammar.learn(node);
    this.remainders = grammar.remainders;
    this.index = grammar.indexOf(nodes);
    this.jumpers = this.index.things.filter(({ node }) => startersOf(node).words === null);
    this.begin();
  }

  /** Which nodes may read the matcher's tokens from `at`, and up to where. */
  skim(matcher: Matcher, at: number): readonly Stretch[] {
    if (this.age !== this.remainders.age) this.begin();
    const walk: Walk = { matcher, found: NO_STRETCHES };
    this.walk(this.start, at, walk);
    return walk.found;
  }

  /** The nodes that may read all tokens from `at` on, by their numbers, the lowest first. */
  toEnd(matcher: Matcher, at: number): readonly number[] {
    if (this.age !== this.remainders.age) this.begin();
    const { symbols } = matcher;
    const end = symbols.length - 1;
    let state = this.start;
    for (let place = at; place < end && state !== NOWHERE; place += 1) {
      if (mayJump(state, matcher)) return this.toEndByJumps(matcher, at);
      state = this.after(state, symbols[place] ?? END_SYMBOL);
    }
    matcher.steps += end - at;
    return this.endsIn(state);
  }

  private endsIn(state: number): readonly number[] {
    return (state & MAY_END) === 0 ? NONE : (this.ends[state >> FLAG_BITS] ?? NONE);
  }

  private toEndByJumps(matcher: Matcher, at: number): readonly number[] {
    const { length } = matcher.tokens;
    const last = this.skim(matcher, at).filter(({ end }) => end === length);
    const [only] = last;
    if (last.length < 2) return only?.numbers ?? NONE;
    return last.flatMap(({ numbers }) => numbers).sort((one, other) => one - other);
  }

  private walk(from: number, at: number, walk: Walk): void {
    const { symbols } = walk.matcher;
    let state = from;
    for (let place = at; state !== NOWHERE; place += 1) {
      const ends = this.endsIn(state);
      if (ends !== NONE) {
        if (walk.found === NO_STRETCHES) walk.found = [];
        walk.found.push({ end: place, numbers: ends });
      }
      if (mayJump(state, walk.matcher)) {
        for (const jump of this.jumps[state >> FLAG_BITS] ?? NO_JUMPS) this.jump(jump, place, walk);
      }
      const symbol = symbols[place] ?? END_SYMBOL;
      if (symbol === END_SYMBOL) return;
      walk.matcher.steps += 1;
      state = this.after(state, symbol);
    }
  }

  private jump({ node, state }: StateJump, at: number, walk: Walk): void {
    walk.matcher.steps += 1;
    for (const end of walk.matcher.endsOf(node, at)) this.walk(state, end, walk);
  }

  private after(state: number, symbol: number): number {
    const from = state >> FLAG_BITS;
    const found = this.transitions.get(from, symbol);
    if (found >= 0) return found;
    const fresh = this.stateOf(this.threadsAfter(state, symbol));
    this.transitions.set(from, symbol, fresh);
    this.remainders.learn();
    return fresh;
  }

  private threadsAfter(state: number, symbol: number): readonly Thread[] {
    const before =
      state === this.start
        ? this.begunBy(kindIn(symbol))
        : (this.threads[state >> FLAG_BITS] ?? NO_THREADS);
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
    const ends = threads.filter(({ left }) => left.canEnd).map(({ number }) => number);
    const fresh = this.fresh(threads, ends);
    this.numbers.set(key, fresh);
    return fresh;
  }

  private fresh(threads: readonly Thread[], ends: readonly number[]): number {
    const jumps = this.jumpsOf(threads);
    this.threads.push(threads);
    this.ends.push(ends.length === 0 ? NONE : ends);
    this.jumps.push(jumps.length === 0 ? NO_JUMPS : jumps);
    return (
      ((this.threads.length - 1) << FLAG_BITS) + (ends.length === 0 ? 0 : MAY_END) + flagsOf(jumps)
    );
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
    this.numbers.clear();
    this.threads = [NO_THREADS, NO_THREADS];
    this.ends = [NONE, NONE];
    this.jumps = [NO_JUMPS, NO_JUMPS];
    const jumps = this.jumpsOf(this.jumpers.map(this.threadOf));
    this.jumps[START >> FLAG_BITS] = jumps;
    this.start = START + flagsOf(jumps);
  }
}

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
  found: Stretch[];
}
/** Made anew where one is found. */
const NO_STRETCHES: Stretch[] = [];
