import { Automata } from '../grammar/automata.ts';
import type { Piece } from '../grammar/cover.ts';
import type { Compiled, Matches } from '../grammar/match.ts';
import type { Tags } from '../grammar/nodes.ts';
import { Reach } from '../grammar/reach.ts';
import { Skimmer, type Stretch } from '../grammar/skim.ts';
import type { Meaning, Rule, Span } from './rule.ts';
import { RULES } from './rules.ts';
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

/** Of each rule: whether more is asked of a stretch than its shape. Most ask nothing, and need not be fetched. */
const [NOTHING_MORE, MORE] = [0, 1];
const ASKS = Uint8Array.from(RULES, ({ alone, apart, needs, only }) =>
  alone || apart || needs !== null || only !== null ? MORE : NOTHING_MORE,
);

/** Reads a sentence by the rules that may read it. */
export class RuleReader {
  private readonly sentence: Sentence;

  constructor(sentence: Sentence) {
    this.sentence = sentence;
  }

  /** The rules that may read from a place on, by their ranks, and up to where. */
  stretchesFrom(at: number): readonly Stretch[] {
    return SKIMMER.skim(this.sentence.matcher, at);
  }

  /** The ranks of the rules that may read all of it, the lowest first. */
  ranksOfAll(): readonly number[] {
    return SKIMMER.toEnd(this.sentence.matcher, 0);
  }

  /** Whether it can mean anything there, by what a look at the stretch tells. */
  mayMean(rank: number, span: Span): boolean {
    const asks = ASKS[rank] ?? NOTHING_MORE;
    if (asks === NOTHING_MORE) return true;
    const rule = RULES[rank];
    if (rule === undefined || !this.stands(rule, span)) return false;
    return rule.only === null || rule.only(this.sentence.frame(span));
  }

  private stands({ alone, apart, needs }: Rule, { from, to }: Span): boolean {
    if (alone && !this.sentence.isWhole(from, to)) return false;
    if (apart && !this.sentence.standsApart(from, to)) return false;
    return needs === null || needs.hasAny(this.sentence.tokens, from, to);
  }

  reach(rank: number, { from, to }: Span): Reach {
    if (automata.isFull) automata = new Automata(GRAMMAR, NODES);
    return new Reach(automata, rank, { matcher: this.sentence.matcher, at: from, to });
  }

  /** The preferred of a rule's items on a stretch. */
  item(rank: number, span: Span): Item | null {
    const reach = this.reach(rank, span);
    const first = this.firstItem(reach, span.to);
    return first !== null || reach.hasOnly(span.to) ? first : this.preferredItem(rank, span);
  }

  /** As `item`, looked for among every reading. */
  private preferredItem(rank: number, span: Span): Item | null {
    const { from, to } = span;
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
    const tags = reach.first(end);
    return tags === null ? null : this.itemOf(reach.rule, { from: reach.at, to: end }, tags);
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

  private itemOf(rank: number, { from, to }: Span, tags: Tags): Item | null {
    const rule = RULES[rank];
    if (this.sentence.leadsOn(to - 1) && this.sentence.canBeNumber(to - 2)) return null;
    const meaning = rule?.means(tags, this.sentence.frame({ from, to })) ?? null;
    return rule === undefined || meaning === null
      ? null
      : { start: from, end: to, rank, rule, tags, meaning };
  }
}
