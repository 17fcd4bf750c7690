import { Automata } from '../../grammar/automata.ts';
import type { Piece } from '../../grammar/cover.ts';
import type { Compiled, Matches } from '../../grammar/match.ts';
import type { Tags } from '../../grammar/nodes.ts';
import { Reach } from '../../grammar/reach.ts';
import { type MayRead, Skimmer } from '../../grammar/skim.ts';
import { readsBehindStop } from './behind-stops.ts';
import { countsThings, isBeyond, isHowLong, isOneOfAKind } from './counts-things.ts';
import { endingAt, freeWordsIn, isKept, ToldBehind } from './free-words.ts';
import { isOnlyPlace, isShortNameOfOther } from './of-other-part.ts';
import { type Meaning, type Rule, type Span, tellsNothing } from '../rule.ts';
import { RULES } from '../rules.ts';
import {
  isDeniedBefore,
  isOffBy,
  isOrderedBefore,
  isSupposedBefore,
  runsAt,
} from './supposed-before.ts';
import { GRAMMAR, type Sentence } from './sentence.ts';

/** A rule that reads a stretch of the sentence, and what it means there. Its place in the list of rules is its rank. */
export interface Item extends Piece {
  readonly rule: Rule;
  readonly tags: Tags;
  readonly meaning: Meaning;
}

const NODES = RULES.map(({ node }) => node);
const SKIMMER = new Skimmer(GRAMMAR, NODES);
let automata = new Automata(GRAMMAR, NODES);
/** Where what a rule prefers is refused, and it has other readings. */
let everyReading = new Automata(GRAMMAR, NODES, { wantsEvery: true });
/** For what the automata leave to the matcher. */
const READY: Compiled[] = [];

/** Of each rule: what is asked of a stretch besides its shape. Most ask nothing, and none need be fetched to be told that it does not stand alone. */
const [ALONE, APART, MORE] = [1, 2, 4];
const ASKS = Uint8Array.from(
  RULES,
  ({ alone, apart, needs, only }) =>
    (alone ? ALONE : 0) | (apart ? APART : 0) | (needs !== null || only !== null ? MORE : 0),
);

/** Said in one breath, and more. */
const MOST_TOKENS = 80;

const YIELDS = Uint8Array.from(RULES, ({ yields }) => (yields === null ? 0 : 1));

/** As a rule reads a stretch, before it is known what it means there. */
interface Read {
  readonly rank: number;
  readonly span: Span;
  readonly tags: Tags;
}

/** Reads a sentence by the rules that may read it. */
export class RuleReader {
  private readonly sentence: Sentence;
  /** Of each place that it was asked of: whether rules tell what stands there. */
  private readonly told: boolean[] = [];
  private readonly shortened: Item[] = [];
  /** Of what is longer nothing is asked that takes a reader of its own. */
  private readonly isShort: boolean;

  constructor(sentence: Sentence) {
    this.sentence = sentence;
    this.isShort = sentence.tokens.length <= MOST_TOKENS;
  }

  /** Tells of the rules that may read from a place on, by their ranks, and up to where. */
  glance(at: number, mayRead: MayRead): void {
    this.skim(at, (end, rank) => {
      mayRead(YIELDS[rank] === 0 ? end : this.endBeforeTold(rank, { from: at, to: end }), rank);
    });
  }

  /** As `glance`, whatever other rules tell. */
  skim(at: number, mayRead: MayRead): void {
    SKIMMER.skim(this.sentence.matcher, at, mayRead);
  }

  /** Up to where a rule reads whose free words end where others tell what stands behind. */
  private endBeforeTold(rank: number, span: Span): number {
    const tags = this.mayMean(rank, span) ? this.reach(rank, span).first(span.to) : null;
    const item = tags === null ? null : this.itemOf(rank, span, tags);
    if (item === null || item.end === span.to) return span.to;
    this.shortened.push(item);
    return item.end;
  }

  private shortenedItem(rank: number, { from, to }: Span): Item | null {
    if (YIELDS[rank] === 0) return null;
    const isThat = (item: Item): boolean =>
      item.rank === rank && item.start === from && item.end === to;
    return this.shortened.find(isThat) ?? null;
  }

  /** What comes first of the rules that may read all of it, by their ranks, the lowest first. */
  firstOfAll<Found>(of: (rank: number) => Found | null): Found | null {
    return SKIMMER.firstToEnd(this.sentence.matcher, 0, of);
  }

  /** Whether it can mean anything there, by what a look at the stretch tells. */
  mayMean(rank: number, span: Span): boolean {
    const asks = ASKS[rank] ?? 0;
    if (asks === 0) return true;
    if ((asks & ALONE) !== 0 && !this.sentence.isWhole(span.from, span.to)) return false;
    if ((asks & APART) !== 0 && !this.sentence.standsApart(span.from, span.to)) {
      if (RULES[rank]?.beforeTold !== true || !this.opensBeforeTold(span)) return false;
    }
    return (asks & MORE) === 0 || this.maySayMore(RULES[rank], span);
  }

  /** "Condenser cleaned head's one ninety": all of a clause behind which no comma was written. */
  private opensBeforeTold({ from, to }: Span): boolean {
    const { tokens } = this.sentence;
    if (!this.isShort || tokens[to]?.pause === true) return false;
    const ends = (this.told[to] ??= new ToldBehind(tokens, (at) => this.readerFrom(at)).beginsAt(
      to,
    ));
    return ends && this.sentence.standsApart(from, tokens.length);
  }

  private maySayMore(rule: Rule | undefined, span: Span): boolean {
    const needs = rule?.needs ?? null;
    if (needs !== null && !needs.hasAny(this.sentence.tokens, span.from, span.to)) return false;
    const only = rule?.only ?? null;
    return only === null || only(this.sentence.frame(span));
  }

  reach(rank: number, { from, to }: Span): Reach {
    if (automata.isFull) automata = new Automata(GRAMMAR, NODES);
    return new Reach(automata, rank, { matcher: this.sentence.matcher, at: from, to });
  }

  /** The preferred of a rule's items on a stretch. */
  item(rank: number, span: Span): Item | null {
    const reach = this.reach(rank, span);
    const first = this.firstItem(reach, span.to);
    const item = first !== null || reach.hasOnly(span.to) ? first : this.preferredItem(rank, span);
    return item?.end === span.to ? item : null;
  }

  /** As `item`, looked for among every reading. */
  private preferredItem(rank: number, span: Span): Item | null {
    const { from, to } = span;
    const shortened = this.shortenedItem(rank, span);
    if (shortened !== null) return shortened;
    const every = this.reachOfEvery(rank, span);
    const count = every.countTo(to);
    if (count < 0) return this.items(rank, from).find(({ end }) => end === to) ?? null;
    for (let which = 0; which < count; which += 1) {
      const tags = every.reading(to, which);
      const item = tags === null ? null : this.itemOf(rank, span, tags);
      if (item !== null) return item;
    }
    return null;
  }

  private reachOfEvery(rank: number, { from, to }: Span): Reach {
    if (everyReading.isFull) everyReading = new Automata(GRAMMAR, NODES, { wantsEvery: true });
    return new Reach(everyReading, rank, { matcher: this.sentence.matcher, at: from, to });
  }

  /** Whether a rule has an item that begins there and ends at one of these places. */
  hasItem(rank: number, start: number, ends: readonly number[]): boolean {
    return ends.some((end) => this.preferredItem(rank, { from: start, to: end }) !== null);
  }

  /** As the rule reads the stretch by preference; `null` where that is refused, or only the matcher can tell. */
  firstItem(reach: Reach, end: number): Item | null {
    const span = { from: reach.at, to: end };
    const tags = reach.first(end);
    return tags === null
      ? this.shortenedItem(reach.rule, span)
      : this.itemOf(reach.rule, span, tags);
  }

  /** All items of a rule that begin there, preferred first. */
  items(rank: number, start: number): readonly Item[] {
    const { sentence } = this;
    const items: Item[] = [];
    let refusedTo = start;
    for (const { end, tags } of this.matches(rank, start)) {
      if (end === start || !this.mayMean(rank, { from: start, to: end })) continue;
      // "cuts in at thirty eight degrees" is no pressure, and not thirty with an eight left over either.
      if (end < refusedTo && sentence.isInsideNumber(end)) continue;
      const item = this.itemOf(rank, { from: start, to: end }, tags[0] ?? {});
      if (item === null) refusedTo = Math.max(refusedTo, end);
      else items.push(item);
    }
    return items;
  }

  private matches(rank: number, start: number): Matches {
    const rule = RULES[rank];
    if (rule === undefined) return [];
    const ready = (READY[rank] ??= GRAMMAR.compileOnce(rule.node));
    return this.sentence.matcher.runOpened(ready, start);
  }

  /** Told of every rule by the words around: the number counts things, what is found is only supposed. */
  private isMeant(meaning: Meaning, { from, to }: Span): boolean {
    const { tokens } = this.sentence;
    const { readings, findings, ofThat, unclaimed } = meaning;
    if ((readings ?? ofThat ?? unclaimed) !== undefined) {
      if (ofThat === undefined ? countsThings(tokens, from, to) : isOneOfAKind(tokens, to))
        return false;
      if (isBeyond(tokens, to) || isHowLong(tokens, to)) return false;
    } else if (tellsNothing(meaning) && readsBehindStop(this.sentence.wordsOf({ from, to })))
      return false;
    if (tellsOfPart(meaning)) {
      if (isOnlyPlace(this.sentence, { from, to })) return false;
      if (isShortNameOfOther(this.sentence, meaning, { from, to })) return false;
    }
    if (findings === undefined) return true;
    if (isSupposedBefore(tokens, from) || isDeniedBefore(tokens, from, to)) return false;
    if (isOrderedBefore(tokens, from)) return false;
    return !(isOffBy(tokens, to) || runsAt(tokens, to));
  }

  private itemOf(rank: number, { from, to }: Span, tags: Tags): Item | null {
    const rule = RULES[rank];
    if (this.sentence.endsTooLate(to) && this.sentence.canBeNumber(to - 2)) return null;
    const span = { from, to };
    const free = this.isShort && rule?.yields ? freeWordsIn(tags, to) : null;
    const shorter = free === null ? null : this.beforeTold({ rank, span, tags }, free);
    if (shorter !== null) return this.sentence.tokens[shorter.end]?.pause === true ? null : shorter;
    const meaning = rule?.means(tags, this.sentence.frame(span)) ?? null;
    if (rule === undefined || meaning === null) return null;
    if (!this.isMeant(meaning, span)) return null;
    if (this.isShort && isKept(meaning) && freeWordsIn(tags, to) !== null) {
      if (this.isToldInParts(span)) return null;
    }
    return { start: from, end: to, rank, rule, tags, meaning };
  }

  /** Rules tell all of what this one would only keep. */
  private isToldInParts(span: Span): boolean {
    return new ToldBehind(this.sentence.tokens, (at) => this.readerFrom(at)).isInParts(span);
  }

  /** "Site is Harbor Street Deli head is one ninety": up to where the free words end; `null` where that is the end. */
  private beforeTold({ rank, span, tags }: Read, free: Span): Item | null {
    const told = new ToldBehind(this.sentence.tokens, (at) => this.readerFrom(at));
    const to = told.endOf(free, RULES[rank]?.yields === 'name');
    if (to === span.to) return null;
    const rule = RULES[rank];
    const shorter = endingAt(tags, { from: span.to, to });
    const frame = this.sentence.frame({ from: span.from, to }, true);
    const meaning = rule?.means(shorter, frame) ?? null;
    if (rule === undefined || meaning === null) return null;
    return { start: span.from, end: to, rank, rule, tags: shorter, meaning };
  }

  /** Reads what may be said from there on as if the sentence paused before it. */
  private readerFrom(at: number): RuleReader {
    const other = this.sentence.tokens[at]?.pause === true ? null : this.sentence.withPauses([at]);
    return other === null ? this : new RuleReader(other.sentence);
  }

  /** What a rule means there, whatever other rules tell of it. */
  plainMeaning(rank: number, span: Span): Meaning | null {
    if (!this.mayMean(rank, span)) return null;
    const tags = this.reach(rank, span).first(span.to);
    const meaning = tags && RULES[rank]?.means(tags, this.sentence.frame(span));
    return meaning != null && this.isMeant(meaning, span) ? meaning : null;
  }
}

const tellsOfPart = ({ findings, work, recommendations, ofIt }: Meaning): boolean =>
  (findings ?? work ?? recommendations ?? ofIt) !== undefined;
