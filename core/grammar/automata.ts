import type { Grammar } from './compile.ts';
import { withOneMore } from './small-map.ts';
import { type Left, Lefts, type Onward, type Way } from './left.ts';
import type { ListNode, Node } from './nodes.ts';
import { type Ahead, onwardFrom } from './spread.ts';
import { isPaused, kindIn } from './kinds.ts';
import { ActLists } from './act-lists.ts';
import type { Step } from './reading.ts';
import { Transitions } from './transitions.ts';

/** Where a rule ends, by what stands behind: steps that read nothing. */
export const [BEFORE_END, BEFORE_PAUSE, BEFORE_WORD] = [0, 1, 2] as const;
const ENDINGS: readonly Ahead[] = [
  { kind: null, pause: false, isEnd: true },
  { kind: null, pause: true, isEnd: false },
  { kind: null, pause: false, isEnd: false },
];

/** The step that reads a token. */
export const reading = (symbol: number): number => ENDINGS.length + symbol;

const aheadOf = (step: number): Ahead => {
  const symbol = step - ENDINGS.length;
  return ENDINGS[step] ?? { kind: kindIn(symbol), pause: isPaused(symbol), isEnd: false };
};

/** The state from which nothing more can be read. */
export const NOWHERE = 0;

/** All sentences of the corpus together come to two thirds of it. */
const MOST_LEARNT = 45_000;

/** Of a step: the state that it leads to, how many threads come of it, and the back of each. */
const [TO, COUNT, BACKS] = [0, 1, 2];
/** A back is one number: the thread that it comes from, what is done on the way, and these. */
const HIDES_OTHERS = 1;
const IS_BEHIND_END = 2;
const [ACTS_BITS, FROM_BITS] = [14, 16];
const FLAG_BITS = 2;
/** Lists of what is done, before it is full: no sentence adds as many as a back then has room for. */
const MOST_ACTS = 2 ** (ACTS_BITS - 1);
const ACTS_END = FLAG_BITS + ACTS_BITS;
const ACTS_MASK = 2 ** ACTS_BITS - 1;

/** The thread that it comes from. */
export const originIn = (back: number): number => back >>> ACTS_END;

export const hidesOthers = (back: number): boolean => (back & HIDES_OTHERS) !== 0;

/** That it ended before this step was preferred to it. */
export const isBehindEnd = (back: number): boolean => (back & IS_BEHIND_END) !== 0;

/** What is done before the step's token is read, by its number; 0 is nothing. */
export const actsIn = (back: number): number => (back >>> FLAG_BITS) & ACTS_MASK;

interface Reads {
  /** Steps that are kept before it is full. */
  readonly most?: number;
  /** Whether every reading is wanted, not only the preferred of those that come to the same place. */
  readonly wantsEvery?: boolean;
}

/** Threads of one state; where there are more, not every reading is found. */
const MOST_THREADS = 1_000;

/**
 * Reads rules, each by itself, one look-up a token, in tables that fill as sentences come. A state is what may be left
 * of a rule, in the order of preference; a step keeps, for each of those threads, the thread that it comes from and what
 * is done on the way. So the reading that is meant is found back from its end, and tags are made on that way only
 * (D. Dubé and M. Feeley, "Efficiently building a parse tree from a regular expression", 2000).
 *
 * States, steps and what is done are numbers, and steps lie in one list: as objects they lie all over the memory, and
 * fetching them was most of the work.
 */
export class Automata {
  private readonly grammar: Grammar;
  private readonly rules: readonly Node[];
  private readonly most: number;
  private readonly lefts = new Lefts();
  private readonly starts: number[] = [];
  private readonly states = new Map<string, number>();
  /** Of each state. */
  private readonly threads = new Map<number, readonly Left[]>();
  /** From a state over a token to where the step's numbers begin. */
  private readonly transitions = new Transitions();
  /** What is done, each list of it once. */
  private readonly acts = new ActLists();
  private readonly lists = new Map<number, readonly ListNode[]>();
  private readonly cuts = new Set<number>();
  private readonly wantsEvery: boolean;

  constructor(
    grammar: Grammar,
    rules: readonly Node[],
    { most = MOST_LEARNT, wantsEvery = false }: Reads = {},
  ) {
    this.grammar = grammar;
    this.rules = rules;
    this.most = most;
    this.wantsEvery = wantsEvery;
    // What lies at 0 leads nowhere.
    this.transitions.addState([]);
  }

  /** It is to be dropped for a new one, so that no flow of words in any order fills the memory. */
  get isFull(): boolean {
    return this.transitions.size > this.most || this.acts.count > MOST_ACTS;
  }

  /** The state in which nothing is read of a rule yet. */
  startOf(rule: number): number {
    return (this.starts[rule] ??= this.freshStart(rule));
  }

  stepFrom(state: number, symbol: number): number {
    const found = this.transitions.get(state, symbol);
    return found >= 0 ? found : this.freshStep(state, symbol);
  }

  /** The state that a step leads to. */
  after(step: number): number {
    return this.transitions.at(step + TO);
  }

  /** How many threads come of it, or ways to end. */
  countOf(step: number): number {
    return this.transitions.at(step + COUNT);
  }

  /** Whether there are more readings over the step than were found. */
  isCut(step: number): boolean {
    return this.wantsEvery && this.cuts.has(step);
  }

  listsAt(step: number): readonly ListNode[] | undefined {
    return this.lists.get(step);
  }

  /** Where a thread comes from and how, for `originIn` and those behind it. */
  back(step: number, thread: number): number {
    return this.transitions.at(step + BACKS + thread);
  }

  stepsOf(acts: number): readonly Step[] {
    return this.acts.at(acts);
  }

  private freshStart(rule: number): number {
    const node = this.rules[rule];
    return node === undefined ? NOWHERE : this.stateOf([this.lefts.before(this.lefts.done, node)]);
  }

  private freshStep(state: number, symbol: number): number {
    const following = new Following(this.wantsEvery);
    const lists: ListNode[] = [];
    let isCut = false;
    for (const [from, left] of (this.threads.get(state) ?? []).entries()) {
      const onward = this.onward(left, symbol);
      isCut ||= onward.isCut || following.backs.length > MOST_THREADS;
      if (!isCut) for (const way of onward.ways) following.add(way, from);
      lists.push(...onward.lists);
    }
    const { backs, threads } = following;
    const to = symbol < ENDINGS.length ? NOWHERE : this.stateOf(threads);
    const step = this.transitions.add([to, backs.length, ...backs.map(packed)]);
    this.transitions.set(state, symbol, step);
    if (lists.length > 0) this.lists.set(step, [...new Set(lists)]);
    if (isCut) this.cuts.add(step);
    return step;
  }

  private onward(left: Left, symbol: number): Onward {
    const found = left.onward?.get(symbol);
    if (found !== undefined) return found;
    const { grammar, lefts, acts, wantsEvery } = this;
    const fresh = onwardFrom(left, aheadOf(symbol), { grammar, lefts, acts, wantsEvery });
    left.onward = withOneMore(left.onward, symbol, fresh);
    return fresh;
  }

  private stateOf(threads: readonly Left[]): number {
    if (threads.length === 0) return NOWHERE;
    const key = threads.map(({ id }) => id).join();
    const found = this.states.get(key);
    if (found !== undefined) return found;
    const fresh = this.transitions.addState([]);
    this.threads.set(fresh, threads);
    this.states.set(key, fresh);
    return fresh;
  }
}

interface Came {
  readonly from: number;
  readonly way: Way;
  hidesOthers: boolean;
}

function packed({ from, way: { acts, isBehindEnd }, hidesOthers }: Came): number {
  if (from >= 2 ** FROM_BITS || acts >= 2 ** ACTS_BITS) throw new Error('too many to tell apart');
  const flags = (hidesOthers ? HIDES_OTHERS : 0) + (isBehindEnd ? IS_BEHIND_END : 0);
  return (from << ACTS_END) | (acts << FLAG_BITS) | flags;
}

/** The threads behind a step; of those that come to the same only the one that is preferred, unless all are kept. */
class Following {
  readonly threads: Left[] = [];
  readonly backs: Came[] = [];
  private readonly places = new Map<Left, Came>();
  private readonly keepsAll: boolean;

  constructor(keepsAll: boolean) {
    this.keepsAll = keepsAll;
  }

  add(way: Way, from: number): void {
    const known = this.places.get(way.left);
    if (known !== undefined && !this.keepsAll && way.left.next !== null) {
      known.hidesOthers = true;
      return;
    }
    const fresh = { from, way, hidesOthers: way.hidesOthers };
    this.places.set(way.left, fresh);
    this.threads.push(way.left);
    this.backs.push(fresh);
  }
}
