import type { Grammar } from './compile.ts';
import { END_SYMBOL, kindIn } from './kinds.ts';
import type { ListNode, Node, RestNode, Tags } from './nodes.ts';
import type { Opening } from './starters.ts';
import type { Token } from './tokens.ts';

/** One way a node reads the tokens from where it began up to `end`. */
export interface Match {
  readonly end: number;
  readonly tags: readonly Tags[];
}
export type Matches = readonly Match[];

/** A node made ready for matching. */
export interface Compiled {
  /** The tokens that it can read something at. */
  readonly opening: Opening;
  /** At any other token it reads nothing and goes on. */
  readonly optional: boolean;
  /** Every way to read the tokens from `at`, preferred first; asked only where the opening allows the token. */
  readonly run: (matcher: Matcher, at: number) => Matches;
}

/** Phrases for the grammar's lists, each split into tokens' texts. */
export type RuntimeLists = Readonly<Record<string, readonly (readonly string[])[]>>;

export const NO_LISTS: RuntimeLists = {};

const NO_TAGS: readonly Tags[] = [];
const NO_ENDS: readonly number[] = [];
export const NO_MATCH: Matches = [];

/**
 * Matches nodes against one tokenised sentence. A named rule is matched once at each place and remembered,
 * so the work grows with the sentence's length, not with the ways to read it.
 */
export class Matcher {
  /** Nodes tried so far: a bound on work that does not depend on the machine. */
  steps = 0;
  readonly tokens: readonly Token[];
  /** Each token as automata read it, and the end. */
  readonly symbols: readonly number[];
  readonly lists: RuntimeLists;
  readonly hasLists: boolean;
  /** The match that says nothing and ends at each place: the commonest one, so it is made once. */
  private readonly silent: (Matches | undefined)[] = [];
  private readonly grammar: Grammar;
  private pauseEnds: readonly number[] | null = null;

  /** Knows the words that the grammar has compiled so far. */
  constructor(grammar: Grammar, tokens: readonly Token[], lists = NO_LISTS) {
    this.grammar = grammar;
    this.tokens = tokens;
    this.symbols = grammar.symbolsOf(tokens);
    this.lists = lists;
    this.hasLists = lists !== NO_LISTS && hasPhrases(lists);
  }

  /** The kind of a token, or of the end. */
  kindAt(at: number): number {
    return kindIn(this.symbols[at] ?? END_SYMBOL);
  }

  /** Every way a node reads the tokens from `at`, preferred first. */
  run(node: Compiled, at: number): Matches {
    if (node.opening.allows(this.kindAt(at))) return this.runOpened(node, at);
    return node.optional ? this.silentTo(at) : NO_MATCH;
  }

  /** As `run`, where the opening is known to allow the token. */
  runOpened(node: Compiled, at: number): Matches {
    this.steps += 1;
    return node.run(this, at);
  }

  silentTo(end: number): Matches {
    return (this.silent[end] ??= [{ end, tags: NO_TAGS }]);
  }

  /** What has been read so far, each continued by another part in every way. */
  extendAll(reached: Matches, part: Compiled): Matches {
    const [only] = reached;
    if (only !== undefined && reached.length === 1) {
      return this.isPassedOver(part, only.end) ? reached : this.extend(only, part);
    }
    const extended: Match[] = [];
    for (const each of reached) extended.push(...this.extend(each, part));
    return extended;
  }

  private isPassedOver({ optional, opening }: Compiled, at: number): boolean {
    return optional && !opening.allows(this.kindAt(at));
  }

  private extend({ end: at, tags: before }: Match, part: Compiled): Matches {
    const next = this.run(part, at);
    if (before.length === 0 || next.length === 0) return next;
    const extended: Match[] = [];
    for (const { end, tags } of next) {
      extended.push({ end, tags: tags.length === 0 ? before : before.concat(tags) });
    }
    return extended;
  }

  /** Whether a node that could read something here reads nothing. */
  readsNothing(node: Node, at: number): boolean {
    return this.run(this.grammar.ready(node), at).length === 0;
  }

  /** Where the words that only the sentence or its lists know can end, if they begin here. */
  endsOf(node: ListNode | RestNode, at: number): readonly number[] {
    if (node.kind === 'list') {
      return this.hasLists ? this.phrasesAt(node, at).map((phrase) => at + phrase.length) : NO_ENDS;
    }
    if (at >= this.tokens.length) return NO_ENDS;
    return [node.until === 'end' ? this.tokens.length : this.nextPause(at)];
  }

  phrasesAt({ name }: ListNode, at: number): readonly (readonly string[])[] {
    return (this.lists[name] ?? []).filter((phrase) =>
      phrase.every((text, index) => this.tokens[at + index]?.text === text),
    );
  }

  isBroken(from: number, to: number): boolean {
    for (let at = from + 1; at < to; at += 1) if (this.tokens[at]?.pause === true) return true;
    return false;
  }

  nextPause(at: number): number {
    this.pauseEnds ??= pauseEndsOf(this.tokens);
    return this.pauseEnds[at] ?? this.tokens.length;
  }
}

function hasPhrases(lists: RuntimeLists): boolean {
  for (const name in lists) if ((lists[name]?.length ?? 0) > 0) return true;
  return false;
}

function pauseEndsOf(tokens: readonly Token[]): readonly number[] {
  const ends: number[] = [];
  let next = tokens.length;
  for (let index = tokens.length - 1; index >= 0; index -= 1) {
    ends[index] = next;
    if (tokens[index]?.pause === true) next = index;
  }
  return ends;
}
