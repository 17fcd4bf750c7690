import type { Grammar } from './compile.ts';
import { END } from './kinds.ts';
import type { Matcher } from './match.ts';
import type { ListNode, Node, RestNode } from './nodes.ts';
import { NOTHING, type Remainder, type Remainders } from './remainders.ts';
import { type Numbered, type StarterIndex, startersOf } from './starters.ts';

/** What may be left to read of every node that has read the tokens so far. */
interface State {
  readonly threads: readonly Thread[];
  /** The nodes that may end here, by their numbers, the lowest first. */
  readonly ends: readonly number[];
  readonly jumps: readonly StateJump[];
  readonly next: Map<number, State | null>;
}
interface Thread {
  readonly number: number;
  readonly left: Remainder;
}
interface StateJump {
  readonly node: ListNode | RestNode;
  readonly state: State;
}

/** The nodes that may read up to `end`, by their numbers, the lowest first. */
export interface Stretch {
  readonly end: number;
  readonly numbers: readonly number[];
}

/**
 * Finds, of many nodes at once, those that may read a stretch of a sentence: one step a token, however many nodes.
 * What it passes over is read by none; what it finds a matcher may still refuse.
 */
export class Skimmer {
  private readonly index: StarterIndex;
  private readonly jumpers: readonly Numbered[];
  private readonly remainders: Remainders;
  private states = new Map<string, State>();
  private start: State;
  private age = 0;

  constructor(grammar: Grammar, nodes: readonly Node[]) {
    for (const node of nodes) grammar.learn(node);
    this.remainders = grammar.remainders;
    this.index = grammar.indexOf(nodes);
    this.jumpers = this.index.things.filter(({ node }) => startersOf(node).words === null);
    this.start = this.startState();
  }

  /** Which nodes may read the matcher's tokens from `at`, and up to where. */
  skim(matcher: Matcher, at: number): readonly Stretch[] {
    if (this.age !== this.remainders.age) this.forget();
    const found: Stretch[] = [];
    this.walk(this.start, at, { matcher, found });
    return found;
  }

  private walk(from: State, at: number, walk: Walk): void {
    const { kinds } = walk.matcher;
    let state: State | null = from;
    for (let place = at; state !== null; place += 1) {
      if (state.ends.length > 0) walk.found.push({ end: place, numbers: state.ends });
      for (const jump of state.jumps) this.jump(jump, place, walk);
      const kind = kinds[place] ?? END;
      if (kind === END) return;
      walk.matcher.steps += 1;
      state = this.after(state, kind);
    }
  }

  private jump({ node, state }: StateJump, at: number, walk: Walk): void {
    walk.matcher.steps += 1;
    for (const end of walk.matcher.endsOf(node, at)) this.walk(state, end, walk);
  }

  private after(state: State, kind: number): State | null {
    const found = state.next.get(kind);
    if (found !== undefined) return found;
    this.remainders.learn();
    const fresh = this.stateOf(this.threadsAfter(state, kind));
    state.next.set(kind, fresh);
    return fresh;
  }

  private threadsAfter(state: State, kind: number): readonly Thread[] {
    const before = state === this.start ? this.begunBy(kind) : state.threads;
    const threads: Thread[] = [];
    for (const { number, left } of before) {
      const after = this.remainders.after(left, kind);
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

  private startState(): State {
    return this.fresh(this.jumpers.map(this.threadOf), []);
  }

  private stateOf(threads: readonly Thread[]): State | null {
    if (threads.length === 0) return null;
    const key = threads.map(({ number, left }) => `${number}:${left.id}`).join();
    const found = this.states.get(key);
    if (found !== undefined) return found;
    const ends = threads.filter(({ left }) => left.canEnd).map(({ number }) => number);
    const fresh = this.fresh(threads, ends);
    this.states.set(key, fresh);
    return fresh;
  }

  private fresh(threads: readonly Thread[], ends: readonly number[]): State {
    return { threads, ends, jumps: this.jumpsOf(threads), next: new Map() };
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
      return state === null ? [] : [{ node, state }];
    });
  }

  private forget(): void {
    this.states = new Map();
    this.start = this.startState();
    this.age = this.remainders.age;
  }
}

interface Walk {
  readonly matcher: Matcher;
  readonly found: Stretch[];
}
