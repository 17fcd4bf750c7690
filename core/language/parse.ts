import { Automata } from '../grammar/automata.ts';
import { Grammar } from '../grammar/compile.ts';
import { bestCover, bestCovers, type Piece } from '../grammar/cover.ts';
import { END } from '../grammar/kinds.ts';
import { type Compiled, Matcher } from '../grammar/match.ts';
import type { Tags } from '../grammar/nodes.ts';
import { Reach } from '../grammar/reach.ts';
import { Skimmer } from '../grammar/skim.ts';
import type { Token } from '../grammar/tokens.ts';
import type { Context } from './context.ts';
import { isEveryday } from './everyday-words.ts';
import { isCountedThing, isPointedOut } from './counted-things.ts';
import { listsOf } from './known-names.ts';
import { ONES } from './number-words.ts';
import { NUMBER, SIGNED_NUMBER } from './numbers.ts';
import type { Frame, Meaning, Rule, Span } from './rule.ts';
import { RULES } from './rules.ts';
import { signedIn } from './slots.ts';
import { FILLERS } from './talk.ts';
import { tokenise } from './tokenise.ts';

/** A rule that reads a stretch of the sentence, and what it means there. */
export interface Item extends Piece {
  readonly rule: Rule;
  readonly tags: Tags;
  readonly meaning: Meaning;
  readonly words: string;
}

/** What a rule may read, by a glance at it; with its item once it was read. */
interface Candidate extends Piece {
  readonly item: Item | null;
}

export interface Parse {
  readonly items: readonly Item[];
  /** Numbers that no item claimed, as digits. */
  readonly unclaimed: readonly string[];
  /** Stretches of a number and the things that it counts, which no item claims and nobody need be asked about. */
  readonly counted: readonly Span[];
  /** Nodes the matcher tried: a measure of work that does not depend on the machine. */
  readonly steps: number;
  readonly tokens: readonly Token[];
}

/** Every rule that reads the whole sentence, preferred first: more than one is an ambiguity, decided by rank. */
export function wholeReadings(text: string, context: Context): readonly Item[] {
  const sentence = new Sentence(text, context);
  return sentence.itemsAt(0).filter(({ end }) => end === sentence.tokens.length);
}

/**
 * Every way to read the most of a sentence that only the order of its items tells from the others: none but the first
 * is ever meant, and where the others mean something else the rules leave it to chance.
 */
export function equalReadings(text: string, context: Context): readonly (readonly Item[])[] {
  const sentence = new Sentence(text, context);
  return bestCovers(sentence.tokens.length, (at) => sentence.itemsAt(at));
}

/** Every rule made ready for matching, once; its place in the list is its rank. */
export const GRAMMAR = new Grammar();
const READY: Compiled[] = [];
const NODES = RULES.map(({ node }) => node);
const SKIMMER = new Skimmer(GRAMMAR, NODES);
let automata = new Automata(GRAMMAR, NODES);
const ANY_NUMBER = GRAMMAR.compile(NUMBER);
const ANY_SIGNED = GRAMMAR.compile(SIGNED_NUMBER);
/** Words that a number can have before its last one: "nine thousand nine hundred and ninety nine". */
const LONGEST_NUMBER = 8;
/** A cut that is mended can show another one: this often it is looked for. */
const COVERS = 3;
/** So often is a cover guessed at; then every guess is read. */
const GUESSES = 8;

export function parse(text: string, context: Context): Parse {
  const sentence = new Sentence(text, context);
  const items = sentence.cover();
  const { matcher, tokens } = sentence;
  const unclaimed = sentence.numbersOutside(items);
  const { counted } = sentence;
  return { items, unclaimed, counted, steps: matcher.steps, tokens };
}

class Sentence {
  readonly tokens: readonly Token[];
  readonly matcher: Matcher;
  private readonly text: string;
  private readonly context: Context;
  private readonly firstWeighty: number;
  private readonly lastWeighty: number;
  private readonly candidates: (readonly Candidate[])[] = [];
  readonly counted: Span[] = [];

  constructor(text: string, context: Context) {
    this.text = text;
    this.context = context;
    this.tokens = tokenise(text);
    this.matcher = new Matcher(GRAMMAR, this.tokens, listsOf(context.names));
    this.firstWeighty = this.tokens.findIndex(isWeighty);
    this.lastWeighty = this.tokens.findLastIndex(isWeighty);
  }

  /** The items that read the most, none of which breaks off a number for one of its own kind to go on with. */
  cover(): readonly Item[] {
    const whole = this.wholeItem();
    if (whole !== null) return [whole];
    const barred = new Set<number>();
    let items = this.surest(barred);
    for (let covers = 1; covers < COVERS; covers += 1) {
      const cuts = this.cutsIn(items);
      if (cuts.length === 0) break;
      for (const at of cuts) barred.add(at);
      items = this.surest(barred);
    }
    return items;
  }

  /**
   * "Box is thirty eight degrees in the walk in" is one box at 38, not one at 30 and one at 8; but "suction
   * twenty eight superheat" may well be two values.
   */
  private cutsIn(items: readonly Item[]): readonly number[] {
    return items.flatMap((item, index) => {
      const before = items[index - 1];
      const isCut = before?.end === item.start && saysSame(before, item);
      return isCut && this.isNumberAcross(item.start) ? [item.start] : [];
    });
  }

  private isNumberAcross(at: number): boolean {
    if (this.tokens[at]?.pause === true) return false;
    for (let from = Math.max(0, at - LONGEST_NUMBER); from < at; from += 1) {
      if (this.matcher.run(ANY_NUMBER, from).some(({ end }) => end > at)) return true;
    }
    return false;
  }

  /** Every item that begins there, preferred first. */
  itemsAt(at: number): readonly Item[] {
    this.readAll(at);
    return itemsOf(this.candidatesAt(at));
  }

  /**
   * The best cover, of which every piece was read: a candidate that turns out to read less, or to mean nothing, makes
   * place for the next. What no best cover holds is never read at all.
   */
  private surest(barred: ReadonlySet<number>): readonly Item[] {
    const candidatesAt = (at: number): readonly Candidate[] =>
      barred.has(at) ? [] : this.candidatesAt(at);
    for (let guess = 0; guess < GUESSES; guess += 1) {
      const chosen = bestCover(this.tokens.length, candidatesAt);
      const unread = chosen.filter(({ item }) => item === null);
      if (unread.length === 0) return itemsOf(chosen);
      for (const each of unread) this.read(each);
    }
    for (let at = 0; at < this.tokens.length; at += 1) this.readAll(at);
    return itemsOf(bestCover(this.tokens.length, candidatesAt));
  }

  /** A rule that reads all of it by itself is the best cover that there can be. */
  private wholeItem(): Item | null {
    const { length } = this.tokens;
    for (const rank of this.ranksOfAll()) {
      const found = this.firstItem(rank, 0, length);
      if (found !== null) return found;
    }
    return null;
  }

  /** What a rule reads of that stretch. */
  private firstItem(rank: number, start: number, end: number): Item | null {
    const reach = this.reachOf(rank, start);
    const tags = reach.first(end);
    const item = tags === null ? null : this.itemOf(rank, { from: start, to: end }, tags);
    if (item !== null) return item;
    const isTold = tags !== null && !reach.isOneOfSeveral(end);
    if (isTold) return null;
    return this.itemsBy(rank, start).find((each) => each.end === end) ?? null;
  }

  private reachOf(rank: number, start: number): Reach {
    if (automata.isFull) automata = new Automata(GRAMMAR, NODES);
    return new Reach(automata, rank, this.matcher, start);
  }

  private itemOf(rank: number, span: Span, tags: Tags): Item | null {
    const rule = RULES[rank];
    const meaning = rule?.means(tags, this.frame(span)) ?? null;
    if (rule === undefined || meaning === null) return null;
    const { from: start, to: end } = span;
    return { start, end, rank, rule, tags, meaning, words: this.wordsOf(span) };
  }

  /** The rules that may read all of it, the first in rank first. */
  private ranksOfAll(): readonly number[] {
    const { length } = this.tokens;
    if (length === 0) return [];
    const whole = SKIMMER.skim(this.matcher, 0).filter(({ end }) => end === length);
    const [only, ...more] = whole;
    if (more.length === 0) return only?.numbers ?? [];
    return whole.flatMap(({ numbers }) => numbers).sort((one, other) => one - other);
  }

  private candidatesAt(at: number): readonly Candidate[] {
    return (this.candidates[at] ??= this.glanceAt(at));
  }

  private glanceAt(start: number): readonly Candidate[] {
    const candidates: Candidate[] = [];
    for (const { end, numbers } of SKIMMER.skim(this.matcher, start)) {
      const isWhole = this.isWhole(start, end);
      for (const rank of end === start ? [] : numbers) {
        if (isWhole || RULES[rank]?.alone === false) {
          candidates.push({ start, end, rank, item: null });
        }
      }
    }
    return candidates.length < 2
      ? candidates
      : candidates.sort((one, other) => one.rank - other.rank);
  }

  private readAll(at: number): void {
    for (const each of this.candidatesAt(at)) {
      const isUnread = this.candidatesAt(at).some(
        ({ rank, item }) => rank === each.rank && item === null,
      );
      if (isUnread) this.read(each);
    }
  }

  /** Puts what the rule truly reads there in the place of what it may. */
  private read(candidate: Candidate): void {
    const { start, rank } = candidate;
    const all = this.candidatesAt(start);
    const itsOwn = all.filter((each) => each.rank === rank);
    this.candidates[start] = [
      ...all.filter((each) => each.rank < rank),
      ...(this.readAmong(itsOwn, candidate) ?? this.readAllBy(rank, start)),
      ...all.filter((each) => each.rank > rank),
    ];
  }

  /** Reads one of what a rule may read from a place; `null` where it depends on the others. */
  private readAmong(all: readonly Candidate[], one: Candidate): readonly Candidate[] | null {
    const { start, end, rank } = one;
    if (all.length > 1 && this.isInsideNumber(end)) return null;
    const reach = this.reachOf(rank, start);
    const tags = reach.first(end);
    if (tags === null) return null;
    const item = this.itemOf(rank, { from: start, to: end }, tags);
    if (item === null) return null;
    return all
      .map((each) => (each === one ? { ...one, item } : each))
      .sort((each, other) => reach.compare(each.end, other.end));
  }

  private readAllBy(rank: number, start: number): readonly Candidate[] {
    return this.itemsBy(rank, start).map((item) => ({ start, end: item.end, rank, item }));
  }

  private itemsBy(rank: number, start: number): readonly Item[] {
    const items: Item[] = [];
    const rule = RULES[rank];
    if (rule === undefined) return items;
    const ready = (READY[rank] ??= GRAMMAR.compileOnce(rule.node));
    let refusedTo = start;
    for (const { end, tags: folded } of this.matcher.runOpened(ready, start)) {
      if (end === start || (rule.alone && !this.isWhole(start, end))) continue;
      // "cuts in at thirty eight degrees" is no pressure, and not thirty with an eight left over either.
      if (end < refusedTo && this.isInsideNumber(end)) continue;
      const tags = folded[0] ?? {};
      const frame = this.frame({ from: start, to: end });
      const meaning = rule.means(tags, frame);
      if (meaning === null) refusedTo = Math.max(refusedTo, end);
      else items.push({ start, end, rank, rule, tags, meaning, words: this.wordsOf(frame.span) });
    }
    return items;
  }

  private isInsideNumber(at: number): boolean {
    if (this.tokens[at]?.pause === true) return false;
    return this.canBeNumber(at - 1) && this.canBeNumber(at);
  }

  private canBeNumber(at: number): boolean {
    return ANY_NUMBER.opening.allows(this.matcher.kinds[at] ?? END);
  }

  private isWhole(start: number, end: number): boolean {
    return start <= this.firstOrEnd() && end > this.lastWeighty;
  }

  private firstOrEnd(): number {
    return this.firstWeighty === -1 ? this.tokens.length : this.firstWeighty;
  }

  private frame(span: Span): Frame {
    const endsAtPause = this.tokens[span.to]?.pause ?? true;
    return { context: this.context, span, endsAtPause, wordsOf: (at) => this.wordsOf(at) };
  }

  private wordsOf({ from, to }: Span): string {
    const first = this.tokens[from];
    const last = this.tokens[to - 1];
    return first === undefined || last === undefined ? '' : this.text.slice(first.start, last.end);
  }

  numbersOutside(items: readonly Item[]): readonly string[] {
    const numbers: string[] = [];
    let at = 0;
    for (const item of items) {
      this.addNumbers(numbers, at, item.start);
      at = item.end;
    }
    this.addNumbers(numbers, at, this.tokens.length);
    return numbers;
  }

  private addNumbers(numbers: string[], from: number, to: number): void {
    for (let at = from; at < to;) {
      const longest = this.longestNumber(at, to);
      if (longest === null) at += 1;
      else {
        const told = this.talkFrom(at, longest.end);
        if (told !== null) this.counted.push({ from: at, to: told });
        else if (!this.repeats(at, longest, numbers)) numbers.push(longest.digits);
        at = longest.end;
      }
    }
  }

  /** "Fifty, five zero": the same number again, figure by figure. */
  private repeats(
    at: number,
    { digits, end }: { digits: string; end: number },
    before: readonly string[],
  ): boolean {
    const isSpelled = this.tokens.slice(at, end).every(({ text }) => FIGURES.has(text));
    return isSpelled && end - at > 1 && before.at(-1) === digits;
  }

  /** Up to where a number that nobody claims is talk; `null` where it is not. */
  private talkFrom(at: number, end: number): number | null {
    if (this.countsThings(at, end)) return end + 1;
    return this.isEveryday(at) ? end : null;
  }

  /** "They are open till nine": of the clause that it stands in, nothing is ours. */
  private isEveryday(at: number): boolean {
    let from = at;
    while (from > 0 && this.tokens[from]?.pause !== true) from -= 1;
    return isEveryday(this.tokens.slice(from, this.matcher.nextPause(at)));
  }

  /** Behind other words: "four apples" alone may yet have been meant for us. */
  private countsThings(at: number, end: number): boolean {
    const next = this.tokens[end];
    if (next === undefined || at <= this.firstOrEnd()) return false;
    const isOne = end === at + 1 && this.tokens[at]?.text === 'one';
    return isCountedThing(next) || (isOne && isPointedOut(next));
  }

  /** "Eighty to seventy four" is no eighty two. */
  private endsTooLate(end: number): boolean {
    return LATE.has(this.tokens[end - 1]?.text ?? '') && this.canBeNumber(end);
  }

  private longestNumber(at: number, to: number): { digits: string; end: number } | null {
    let best: { digits: string; end: number } | null = null;
    for (const { end, tags } of this.matcher.run(ANY_SIGNED, at)) {
      if (this.endsTooLate(end)) continue;
      if (end <= to && (best === null || end > best.end)) {
        best = { digits: String(signedIn(tags[0] ?? {})), end };
      }
    }
    return best;
  }
}

const LATE: ReadonlySet<string> = new Set(['to', 'too', 'for', 'fore']);

const FIGURES: ReadonlySet<string> = new Set([...ONES, 'zero', 'oh']);

const itemsOf = (candidates: readonly Candidate[]): readonly Item[] =>
  candidates.flatMap(({ item }) => item ?? []);

function saysSame(one: Item, other: Item): boolean {
  const [first] = one.meaning.readings ?? [];
  const [second] = other.meaning.readings ?? [];
  return first !== undefined && first.quantity === second?.quantity && first.place === second.place;
}

const isWeighty = (token: Token): boolean => !FILLERS.has(token.text);
