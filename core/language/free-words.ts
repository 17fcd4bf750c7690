import type { Data, Tags } from '../grammar/nodes.ts';
import type { Token } from '../grammar/tokens.ts';
import { FILLERS } from './fillers.ts';
import type { Meaning, Span } from './rule.ts';
import type { Sentence } from './sentence.ts';
import { spanIn, tagsIn } from './slots.ts';
import { WordSet } from './word-set.ts';

// What is told behind a name, a timer's purpose or anything else that may be any words, where no comma tells that it ends.

/** Only the words themselves, or nothing at all. */
export function isKept(meaning: Meaning): boolean {
  for (const part in meaning) if (part !== 'remarks' && part !== 'memos') return false;
  return true;
}

/** The free words that end there; `null` where there are none. */
export function freeWordsIn(tags: Tags, end: number): Span | null {
  for (const slot in tags) {
    const span = spanIn(tags[slot]);
    if (span !== null) {
      if (span.to === end) return span;
      continue;
    }
    const inner = tagsIn(tags[slot]);
    const found = inner === null ? null : freeWordsIn(inner, end);
    if (found !== null) return found;
  }
  return null;
}

/** The tags with the free words that ended at `from` ending at `to`. */
export function endingAt(tags: Tags, ends: Span): Tags {
  const shorter: Record<string, Data> = {};
  for (const [slot, data] of Object.entries(tags)) {
    const inner = tagsIn(data);
    const span = spanIn(data);
    if (span !== null) shorter[slot] = { ...inner, to: span.to === ends.from ? ends.to : span.to };
    else shorter[slot] = inner === null ? data : endingAt(inner, ends);
  }
  return shorter;
}

const JOINS = new WordSet('and but so then now also plus');
/** What may stand before a value, and be told of none. */
const LEADS = new WordSet('i we am are got get getting showing seeing to at on runs running');
const WAYS: ReadonlySet<string> = new Set(['down', 'up']);
/** What hands are not needed for. */
const LOOKS: ReadonlySet<string> = new Set(['check', 'recheck', 'watch', 'read', 'look']);
const SUPPOSES: ReadonlySet<string> = new Set(
  'if whether that when how until till for is are what'.split(' '),
);
const TO = new WordSet('to');
const THE = new WordSet('the');
/** Told by so many rules between them. */
const MOST_RULES = 3;
/** A word alone may be of the name: "site is Walk In Cooler Supply". */
const FEWEST_WORDS = 2;

type MeaningOf = (rank: number, span: Span) => Meaning | null;
type Glance = (at: number, mayRead: (end: number, rank: number) => void) => void;

export class ToldBehind {
  private readonly tokens: readonly Token[];
  private readonly glance: Glance;
  private readonly meaningOf: MeaningOf;
  /** Behind "to" stands what is to be done, and what reads as done is not. */
  private isToDo = false;

  constructor({ tokens }: Sentence, glance: Glance, meaningOf: MeaningOf) {
    this.tokens = tokens;
    this.glance = glance;
    this.meaningOf = meaningOf;
  }

  /** Where free words end: at the first place from which rules tell all the rest of them. */
  endOf({ from, to }: Span): number {
    this.isToDo = this.standsBehindTo(from);
    const least = this.isToDo ? this.behindObject(from) : from + 1;
    for (let at = least; at + FEWEST_WORDS <= to; at += 1) {
      if (this.isToDo && SUPPOSES.has(this.wordAt(at - 1))) return to;
      if (this.tellsAll({ from: this.behindJoins(at), to }, MOST_RULES)) {
        return this.withoutLead(at, least);
      }
    }
    return to;
  }

  /** "To check the head fan's not running": what is looked at is named before anything is told. */
  private behindObject(from: number): number {
    if (!LOOKS.has(this.wordAt(from))) return Infinity;
    let at = from + 1;
    while (FILLERS.hasWord(this.wordAt(at)) || LEADS.hasWord(this.wordAt(at))) at += 1;
    return at + 1;
  }

  /** "For the vacuum I'm down to three fifty": what leads up to what is told is no part of a name. */
  private withoutLead(at: number, least: number): number {
    let end = at;
    while (end > least && this.isLead(end - 1)) end -= 1;
    return end;
  }

  private isLead(at: number): boolean {
    const [word, next] = [this.wordAt(at), this.wordAt(at + 1)];
    return FILLERS.hasWord(word) || LEADS.hasWord(word) || (next === 'to' && WAYS.has(word));
  }

  private wordAt(at: number): string {
    return this.tokens[at]?.text ?? '';
  }

  /** Whether two or more rules tell all of it between them, where another would only keep it. */
  isInParts({ from, to }: Span): boolean {
    return this.endsTold(from, to).some((end) =>
      this.tellsAll({ from: this.behindJoins(end), to }, MOST_RULES - 1),
    );
  }

  private tellsAll({ from, to }: Span, rules: number): boolean {
    if (to - from < FEWEST_WORDS || rules === 0) return false;
    return this.endsTold(from, to).some(
      (end) => end === to || this.tellsAll({ from: this.behindJoins(end), to }, rules - 1),
    );
  }

  /** Where rules end that tell something from there on. */
  private endsTold(from: number, to: number): readonly number[] {
    const ends = new Set<number>();
    this.glance(from, (end, rank) => {
      if (end > to || end < from + FEWEST_WORDS || ends.has(end)) return;
      const meaning = this.meaningOf(rank, { from, to: end });
      if (meaning !== null && this.tells(meaning)) ends.add(end);
    });
    return [...ends].sort((one, other) => other - one);
  }

  private tells(meaning: Meaning): boolean {
    for (const part in meaning) if ((this.isToDo ? TOLD : TOLD_OR_DONE).has(part)) return true;
    return meaning.facts?.some(({ fact }) => !NAMES.has(fact)) === true;
  }

  private behindJoins(at: number): number {
    let behind = at;
    for (let token = this.tokens[behind]; token !== undefined && JOINS.has(token);) {
      behind += 1;
      token = this.tokens[behind];
    }
    return behind;
  }

  private standsBehindTo(at: number): boolean {
    const [before, word] = [this.tokens[at - 2], this.tokens[at - 1]];
    if (word === undefined) return false;
    return TO.has(word) || (before !== undefined && THE.has(word) && TO.has(before));
  }
}

const TOLD: ReadonlySet<string> = new Set(['readings', 'findings']);
const TOLD_OR_DONE: ReadonlySet<string> = new Set([
  ...TOLD,
  ...['work', 'recommendations', 'questions', 'commands'],
]);
/** A kind of unit may be of its name. */
const NAMES: ReadonlySet<string> = new Set(['equipment', 'unit', 'site']);
