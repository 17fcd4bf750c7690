import type { Grammar } from './compile.ts';
import { END_SYMBOL, kindIn } from './kinds.ts';
import type { Compiled, Matcher } from './match.ts';
import type { Node } from './nodes.ts';
import { NOTHING, type Remainder, type Remainders } from './remainders.ts';
import type { Numbered, StarterIndex } from './starters.ts';

/** What the options of a choice have come to, some tokens on. */
interface State {
  /** What is left of each option that has not read anything yet and may still. */
  readonly open: readonly Open[];
  /** The options that may have read something. */
  readonly readers: readonly Numbered[];
  /** Once nothing is open: the options to try, in their order. */
  readonly chosen: readonly Compiled[] | null;
  readonly next: Map<number, State>;
}
interface Open {
  readonly option: Numbered;
  readonly left: Remainder;
}

/**
 * Tells, of the options of a choice, those that may read something from a place: it looks ahead until that is decided,
 * one look-up a token. Most choices are decided by the first.
 */
export class Chooser {
  private readonly grammar: Grammar;
  private readonly index: StarterIndex;
  private readonly remainders: Remainders;
  private starts = new Map<number, State>();
  private age = 0;

  constructor(grammar: Grammar, options: readonly Node[]) {
    this.grammar = grammar;
    this.index = grammar.indexOf(options);
    this.remainders = grammar.remainders;
  }

  choose(matcher: Matcher, at: number): readonly Compiled[] {
    if (this.age !== this.remainders.age) this.forget();
    let state = this.startAt(matcher.symbols[at] ?? END_SYMBOL);
    for (let place = at + 1; state.chosen === null; place += 1) {
      matcher.steps += 1;
      state = this.after(state, matcher.symbols[place] ?? END_SYMBOL);
    }
    return state.chosen;
  }

  private startAt(symbol: number): State {
    const found = this.starts.get(symbol);
    if (found !== undefined) return found;
    const options = this.index.startedBy(kindIn(symbol));
    const all = options.map((option) => ({ option, left: this.remainders.of(option.node) }));
    const sure = all.filter(({ left }) => hasRead(left)).map(({ option }) => option);
    const fresh = this.stateAfter(
      all.filter(({ left }) => !hasRead(left)),
      sure,
      symbol,
    );
    this.starts.set(symbol, fresh);
    return fresh;
  }

  private after(state: State, symbol: number): State {
    const found = state.next.get(symbol);
    if (found !== undefined) return found;
    const fresh = this.stateAfter(state.open, state.readers, symbol);
    state.next.set(symbol, fresh);
    return fresh;
  }

  private stateAfter(before: readonly Open[], sure: readonly Numbered[], symbol: number): State {
    this.remainders.learn();
    const open: Open[] = [];
    const readers = [...sure];
    for (const { option, left } of before) {
      const after = this.remainders.after(left, symbol);
      if (hasRead(after)) readers.push(option);
      else if (after !== NOTHING) open.push({ option, left: after });
    }
    readers.sort((one, other) => one.number - other.number);
    const chosen = open.length === 0 ? readers.map(({ node }) => this.grammar.ready(node)) : null;
    return { open, readers, chosen, next: chosen === null ? new Map<number, State>() : NO_NEXT };
  }

  private forget(): void {
    this.starts = new Map();
    this.age = this.remainders.age;
  }
}

/** Nothing is asked behind what is decided, which most states are. */
const NO_NEXT = new Map<number, State>();

const hasRead = ({ canEnd, mayJump }: Remainder): boolean => canEnd || mayJump;
