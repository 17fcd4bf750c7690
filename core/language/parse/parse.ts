import { bestCovers, Covering, type Piece } from '../../grammar/cover.ts';
import type { Reach } from '../../grammar/reach.ts';
import type { Token } from '../../grammar/tokens.ts';
import { QUANTITIES, type QuantityId } from '../../terms/quantities.ts';
import type { Context } from '../context.ts';
import { openNumbers } from './open-numbers.ts';
import { type Item, RuleReader } from './read-rules.ts';
import { type Span, tellsNothing } from '../rule.ts';
import { type Otherwise, Sentence } from './sentence.ts';
import { tokenise } from '../words/tokenise.ts';
import { WordSet } from '../words/word-set.ts';

export type { Item } from './read-rules.ts';
export { GRAMMAR } from './sentence.ts';

/** What a rule may read, by a glance at it; with its item once it was read. */
interface Candidate extends Piece {
  item: Item | null;
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
  readonly sentence: Sentence;
}

/** Whether one item reads all of the tokens. */
export const isWhollyRead = (
  { length }: readonly Token[],
  [first, second]: readonly Item[],
): boolean => second === undefined && first?.start === 0 && first.end === length;

/** With what leads up to it and trails behind. */
const asItStands = (text: string, context: Context): Sentence =>
  new Sentence(text, context, tokenise(text));

/** As `parse`, with what leads up to it and trails behind: as a clause is read behind others. */
export const parseAsItStands = (text: string, context: Context): Parse =>
  parsedAs(asItStands(text, context));

/** Every rule that reads the whole sentence, preferred first: more than one is an ambiguity, decided by rank. */
export function wholeReadings(text: string, context: Context): readonly Item[] {
  const sentence = asItStands(text, context);
  return new Coverer(sentence).itemsAt(0).filter(({ end }) => end === sentence.tokens.length);
}

/**
 * Every way to read the most of a sentence that only the order of its items tells from the others: none but the first
 * is ever meant, and where the others mean something else the rules leave it to chance.
 */
export function equalReadings(text: string, context: Context): readonly (readonly Item[])[] {
  const sentence = asItStands(text, context);
  const coverer = new Coverer(sentence);
  return bestCovers(sentence.tokens.length, (at) => coverer.itemsAt(at));
}

/** A cut that is mended can show another one: this often it is looked for. */
const COVERS = 3;
/** So often is a cover guessed at; then every guess is read. */
const GUESSES = 8;

/** "The fan isn't spinning now" tells the same without its "now", but "what is it now" asks with it. */
export function parse(text: string, context: Context): Parse {
  const said = parsedAs(new Sentence(text, context));
  const asked = orShorter(said, said.sentence.withoutAsking());
  return orOtherwise(orShorter(asked, asked.sentence.withoutTail()));
}

/** Where rules leave words unread, and fewer of it in other words or with a pause where what they read ends. */
function orOtherwise(plain: Parse): Parse {
  if (isWhollyTold(plain)) return plain;
  const said = orTurned(plain);
  if (isWhollyRead(said.tokens, said.items)) return said;
  const better = orBetter(said, said.sentence.otherwise());
  return orBetter(better, better.sentence.withPauses(endsBeforeMore(better)));
}

/** What is told behind a "but" is no part of the talk before it. */
function orTurned(said: Parse): Parse {
  const other = said.sentence.withTurns();
  if (other === null) return said;
  const parsed = parsedAs(other.sentence);
  return withStepsOf(tokensTold(parsed) > tokensTold(said) ? parsed : said, said, parsed);
}

function orBetter(said: Parse, other: Otherwise | null): Parse {
  if (other === null) return said;
  const parsed = parsedAs(other.sentence);
  const isBetter =
    tokensUnread(parsed) + other.leftOut < tokensUnread(said) &&
    tokensTold(parsed) > tokensTold(said);
  return withStepsOf(isBetter ? parsed : said, said, parsed);
}

/** The one that is meant, at the cost of both. */
function withStepsOf(meant: Parse, one: Parse, other: Parse): Parse {
  const { items, unclaimed, counted, tokens, sentence } = meant;
  return { items, unclaimed, counted, steps: one.steps + other.steps, tokens, sentence };
}

/** "Superheat's nine at the bulb, twenty two at the compressor": most recognisers write no comma. */
function endsBeforeMore({ tokens, items }: Parse): readonly number[] {
  const ends: number[] = [];
  for (const [index, item] of items.entries()) {
    const next = items[index + 1]?.start ?? tokens.length;
    const behind = item.end < next ? tokens[item.end] : undefined;
    if (behind?.pause === false && !GOES_ON.has(behind) && !isTalk(item) && !isNo(item, tokens))
      ends.push(item.end);
  }
  return ends;
}

/** "No loose wires" may deny what stands behind it. */
const isNo = ({ start, end }: Item, tokens: readonly Token[]): boolean =>
  end === start + 1 && tokens[start]?.text === 'no';

/** "Scale reads nineteen point two pounds" */
const GOES_ON = new WordSet('it point');

/** Read of it, and not only kept as it was said. */
const tokensTold = (parse: Parse): number =>
  tokensRead({
    ...parse,
    items: parse.items.filter((item) => !isKeptAsSaid(item) && !isTalk(item)),
  });

/** No other way to take it tells more. */
function isWhollyTold(parse: Parse): boolean {
  const whole = wholeItemOf(parse);
  return whole !== null && !isKeptAsSaid(whole) && !isTalk(whole);
}

const isTalk = ({ meaning }: Item): boolean => tellsNothing(meaning);

const tokensUnread = (parse: Parse): number => parse.tokens.length - tokensRead(parse);

function orShorter(whole: Parse, sentence: Sentence | null): Parse {
  if (sentence === null) return whole;
  const shorter = parsedAs(sentence);
  return withStepsOf(tellsAsMuch(shorter, whole) ? shorter : whole, whole, shorter);
}

/** One rule reads it, and is not behind the one that reads the whole; or nearly as many words are read. */
function tellsAsMuch(shorter: Parse, whole: Parse): boolean {
  const [of, ofWhole] = [wholeItemOf(shorter), wholeItemOf(whole)];
  if (ofWhole !== null) {
    const isSame = of?.rank === ofWhole.rank && !isKeptAsSaid(ofWhole);
    return isSame || (of !== null && of.rank < ofWhole.rank);
  }
  const tail = whole.tokens.length - shorter.tokens.length;
  return tokensRead(shorter) + tail >= tokensRead(whole);
}

/** Word for word, "now" as well. */
const isKeptAsSaid = ({ meaning: { remarks, memos } }: Item): boolean =>
  remarks !== undefined || memos !== undefined;

const wholeItemOf = ({ tokens, items }: Parse): Item | null =>
  isWhollyRead(tokens, items) ? (items[0] ?? null) : null;

const tokensRead = ({ items }: Parse): number =>
  items.reduce((sum, { start, end }) => sum + end - start, 0);

function parsedAs(sentence: Sentence): Parse {
  const items = new Coverer(sentence).cover();
  const { unclaimed, counted } = openNumbers(sentence, items);
  const { tokens, matcher } = sentence;
  return { items, unclaimed, counted, steps: matcher.steps, tokens, sentence };
}

/** Covers a sentence with what rules read of it. */
class Coverer {
  private readonly sentence: Sentence;
  private readonly reader: RuleReader;
  private readonly length: number;
  private readonly candidates: (readonly Candidate[])[] = [];

  constructor(sentence: Sentence) {
    this.sentence = sentence;
    this.reader = new RuleReader(sentence);
    this.length = sentence.tokens.length;
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
    return items.some((_item, at) => this.takesFront(items, at))
      ? items.filter((_item, at) => !this.takesFront(items, at))
      : items;
  }

  /** "Coil measures twelve hundred ohms": no twelve, where no rule reads the rest. */
  private takesFront(items: readonly Item[], at: number): boolean {
    const end = items[at]?.end ?? this.length;
    return (
      end < this.length &&
      items[at + 1]?.start !== end &&
      this.sentence.isInsideNumber(end) &&
      this.sentence.isNumberAcross(end)
    );
  }

  /** A rule that reads all of it by itself is the best cover that there can be. */
  private wholeItem(): Item | null {
    if (this.length === 0) return null;
    const all = { from: 0, to: this.length };
    return this.reader.firstOfAll((rank) =>
      this.reader.mayMean(rank, all) ? this.reader.item(rank, all) : null,
    );
  }

  /**
   * "Box is thirty eight degrees in the walk in" is one box at 38, not one at 30 and one at 8; but "suction
   * twenty eight superheat" may well be two values.
   */
  private cutsIn(items: readonly Item[]): readonly number[] {
    const cuts: number[] = [];
    let before: Item | null = null;
    for (const [at, item] of items.entries()) {
      const isCut =
        before !== null &&
        (before.end === item.start
          ? cutsWrongly(before, item) || this.sentence.tokens[item.start]?.text === 'point'
          : this.isNoughtBetween(before, item));
      const isBroken = isCut ? this.sentence.isNumberAcross(item.start) : this.takesLast(item);
      if (isBroken || this.takesFront(items, at)) cuts.push(item.start);
      before = item;
    }
    return cuts;
  }

  /** "Head one ninety, points are pitted": a number that ends where the sentence pauses is of what stands before it. */
  private takesLast({ start, end }: Item): boolean {
    const { sentence } = this;
    if (start === 0 || !sentence.isInsideNumber(start)) return false;
    const pause = sentence.matcher.nextPause(start);
    return pause < end && sentence.isNumberAcross(start, pause);
  }

  /** "Two oh eight load": an "oh" or a "point" between two numbers belongs to one of them. */
  private isNoughtBetween(before: Item, { start }: Item): boolean {
    const between = this.sentence.tokens[before.end]?.text;
    return start === before.end + 1 && (between === 'oh' || between === 'point');
  }

  /** Every item that begins there, preferred first. */
  itemsAt(at: number): readonly Item[] {
    this.readAllAt(at);
    return itemsOf(this.candidatesAt(at));
  }

  /**
   * The best cover, of which every piece was read: a candidate that turns out to read less, or to mean nothing, makes
   * place for the next. What no best cover holds is never read at all.
   */
  private surest(barred: ReadonlySet<number>): readonly Item[] {
    const covering = new Covering(this.length, (at) =>
      barred.has(at) ? NO_CANDIDATES : this.candidatesAt(at),
    );
    for (let guess = 0; guess < GUESSES; guess += 1) {
      const chosen = covering.best();
      const last = this.readThose(chosen);
      if (last === NOT_ONE) return itemsOf(chosen);
      covering.settle(last);
    }
    for (let at = 0; at < this.length; at += 1) this.readAllAt(at);
    covering.settle(this.length - 1);
    return itemsOf(covering.best());
  }

  /** Reads those that were not read yet; where the last of them begins. */
  private readThose(chosen: readonly Candidate[]): number {
    let last = NOT_ONE;
    for (const candidate of chosen) {
      if (candidate.item !== null) continue;
      this.read(candidate);
      last = candidate.start;
    }
    return last;
  }

  private candidatesAt(at: number): readonly Candidate[] {
    return (this.candidates[at] ??= this.glanceAt(at));
  }

  private glanceAt(start: number): readonly Candidate[] {
    const candidates: Candidate[] = [];
    this.reader.glance(start, (end, rank) => {
      if (end === start || !this.reader.mayMean(rank, { from: start, to: end })) return;
      candidates.push({ start, end, rank, item: null });
    });
    return inOrder(candidates);
  }

  private readAllAt(at: number): void {
    const unread = this.candidatesAt(at).filter(({ item }) => item === null);
    for (const rank of new Set(unread.map((each) => each.rank))) {
      this.replace(at, rank, this.itemsAmong(unread.filter((each) => each.rank === rank)));
    }
  }

  /** Puts what the rule truly reads there in the place of what it may. */
  private read(candidate: Candidate): void {
    const { start, rank } = candidate;
    const all: Candidate[] = [];
    for (const each of this.candidatesAt(start)) if (each.rank === rank) all.push(each);
    const fresh = this.readAmong(all, candidate);
    if (candidate.item === null) this.replace(start, rank, fresh ?? this.itemsAmong(all));
  }

  private replace(at: number, rank: number, fresh: readonly Candidate[]): void {
    const candidates: Candidate[] = [];
    let isPut = false;
    for (const each of this.candidatesAt(at)) {
      if (!isPut && each.rank >= rank) {
        candidates.push(...fresh);
        isPut = true;
      }
      if (each.rank !== rank) candidates.push(each);
    }
    this.candidates[at] = candidates;
  }

  /** Reads one of what a rule may read from a place, the others left to be read; `null` where it depends on them. */
  private readAmong(all: readonly Candidate[], one: Candidate): readonly Candidate[] | null {
    const { start, end, rank } = one;
    if (all.length > 1 && this.sentence.isInsideNumber(end)) return null;
    const to = all.length === 1 ? end : Math.max(...all.map((each) => each.end));
    const reach = this.reader.reach(rank, { from: start, to });
    const item = this.reader.firstItem(reach, end);
    if (item === null && !reach.hasOnly(end)) return null;
    if (all.length === 1) {
      one.item = item;
      return NO_CANDIDATES;
    }
    const left =
      item === null
        ? all.filter((each) => each !== one && !this.isRefusedWith(each, one, reach))
        : all.map((each) => (each === one ? { start, end, rank, item } : each));
    return left.length < 2
      ? left
      : left.toSorted((each, other) => reach.compare(each.end, other.end));
  }

  /** "cuts in at thirty eight degrees" is no pressure, and not thirty with an eight left over either. */
  private isRefusedWith(each: Candidate, refused: Candidate, reach: Reach): boolean {
    return (
      each.end < refused.end &&
      this.sentence.isInsideNumber(each.end) &&
      reach.compare(refused.end, each.end) < 0
    );
  }

  /** What a rule truly reads of what it may read from a place. Only where that is anything need the matcher put it in order. */
  private itemsAmong(all: readonly Candidate[]): readonly Candidate[] {
    const [first] = all;
    if (first === undefined) return [];
    const { start, rank } = first;
    if (
      !this.reader.hasItem(
        rank,
        start,
        all.map(({ end }) => end),
      )
    )
      return [];
    return this.reader.items(rank, start).map((item) => ({ start, end: item.end, rank, item }));
  }
}

const NO_CANDIDATES: readonly Candidate[] = [];
const NOT_ONE = -1;

/** By rank, those of one rank left as they are: few, and those of each stretch in their order already. */
function inOrder(candidates: Candidate[]): readonly Candidate[] {
  for (let at = 1; at < candidates.length; at += 1) {
    const each = candidates[at];
    let place = at;
    for (; each !== undefined && place > 0; place -= 1) {
      const before = candidates[place - 1];
      if (before === undefined || before.rank <= each.rank) break;
      candidates[place] = before;
    }
    if (each !== undefined && place < at) candidates[place] = each;
  }
  return candidates;
}

function itemsOf(candidates: readonly Candidate[]): readonly Item[] {
  const items: Item[] = [];
  for (const { item } of candidates) if (item !== null) items.push(item);
  return items;
}

/** Only a reading of something else can take the end of a number: "suction twenty eight superheat", but not "ninety four after ten". */
const cutsWrongly = (one: Item, other: Item): boolean =>
  one.meaning.readings === undefined ||
  other.meaning.readings === undefined ||
  saysSame(one, other);

function saysSame(one: Item, other: Item): boolean {
  const [first] = one.meaning.readings ?? [];
  const [second] = other.meaning.readings ?? [];
  if (first === undefined || second === undefined) return false;
  const isSame = first.quantity === second.quantity && first.place === second.place;
  return isSame || (isThermal(first.quantity) && isThermal(second.quantity));
}

/** "Ambient is ninety four outside" is no 90 and 4 outdoors. */
const isThermal = (quantity: QuantityId): boolean =>
  QUANTITIES[quantity].dimension === 'temperature';
