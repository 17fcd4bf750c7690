import type { Data, Tags } from '../../grammar/nodes.ts';
import type { Token } from '../../grammar/tokens.ts';
import { FILLERS } from '../words/fillers.ts';
import { NAME_WORDS } from '../names/name-words.ts';
import type { Meaning, Span } from '../rule.ts';
import { spanIn, tagsIn } from '../slots.ts';
import { WordSet } from '../words/word-set.ts';

// What is told behind a name, a timer's purpose or anything else that may be any words, where no comma tells that it ends.

/** Only the words themselves, or nothing at all. */
export function isKept(meaning: Meaning): boolean {
  for (const part in meaning) if (!KEPT.has(part)) return false;
  return true;
}
const KEPT: ReadonlySet<string> = new Set(['remarks', 'memos', 'supposed']);

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
/** Of whom it is told changes nothing. */
const US = new WordSet('i we you am are');
const OURS = new WordSet(['the', ...NAME_WORDS]);
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
/** And so many are not. */
const NO_NAME = 3;

/** What tells of the rules that may read from a place on, and of what they mean there. */
interface Reader {
  skim(at: number, mayRead: (end: number, rank: number) => void): void;
  plainMeaning(rank: number, span: Span): Meaning | null;
}

export class ToldBehind {
  private readonly tokens: readonly Token[];
  private readonly readerFrom: (at: number) => Reader;
  /** Behind "to" stands what is to be done, and what reads as done is not. */
  private isToDo = false;
  private ofName = false;

  constructor(tokens: readonly Token[], readerFrom: (at: number) => Reader) {
    this.tokens = tokens;
    this.readerFrom = readerFrom;
  }

  /** Where free words end: at the first place from which rules tell. */
  endOf({ from, to }: Span, ofName: boolean): number {
    this.ofName = ofName;
    this.isToDo = this.standsBehindTo(from);
    const least = this.isToDo ? this.behindObject(from) : from + 1;
    for (let at = least; at + FEWEST_WORDS <= to; at += 1) {
      if (this.isToDo && SUPPOSES.has(this.wordAt(at - 1))) return to;
      if (this.tellsFrom({ from: this.behindJoins(at), to })) {
        return this.withoutLead(at, least);
      }
    }
    return to;
  }

  /** All of it, or so much that it is no part of a name. */
  private tellsFrom({ from, to }: Span): boolean {
    if (to - from < FEWEST_WORDS) return false;
    const [farthest = from] = this.endsTold(from, to);
    return farthest >= from + NO_NAME || this.tellsAll({ from, to }, MOST_RULES);
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

  /** Whether rules tell what stands there, as if a clause began. */
  beginsAt(at: number): boolean {
    return this.tellsFrom({ from: this.behindJoins(at), to: this.tokens.length });
  }

  /** Whether two or more rules tell all of it between them, where another would only keep it; or one behind an "and" of its. */
  isInParts({ from: start, to }: Span): boolean {
    let from = this.behindJoins(start);
    if (from > start && this.tellsAll({ from, to }, 1)) return true;
    while (US.hasWord(this.wordAt(from))) from += 1;
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
    const reader = this.readerFrom(from);
    reader.skim(from, (end, rank) => {
      if (end > to || end < from + FEWEST_WORDS || ends.has(end)) return;
      const meaning = reader.plainMeaning(rank, { from, to: end });
      if (meaning !== null && this.tells(meaning, from)) ends.add(end);
    });
    return [...ends].sort((one, other) => other - one);
  }

  private tells(meaning: Meaning, from: number): boolean {
    if (this.isToDo && isDone(meaning) && !this.isSurelyTold(from)) return false;
    if (meaning.ofIt !== undefined) return OURS.hasWord(this.wordAt(from));
    if (this.ofName && numbersBox(meaning)) return false;
    for (const part in meaning) if (TOLD.has(part)) return true;
    const isNamed = !this.ofName || this.wordAt(from + 1) === 'is';
    return meaning.facts?.some(({ fact }) => isNamed || !NAMES.has(fact)) === true;
  }

  /** "To check the head and reset the breaker" did not reset it. */
  private isSurelyTold(from: number): boolean {
    const word = this.wordAt(from);
    return US.hasWord(word) || OURS.hasWord(word) || /ed$/.test(word);
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

/** "Unit is called cellar box two": which box, and no reading of it. */
const numbersBox = ({ readings = [] }: Meaning): boolean => {
  const [only, ...more] = readings;
  const { quantity, value = MOST_BOXES } = only ?? {};
  return more.length === 0 && quantity === 'boxTemp' && value < MOST_BOXES;
};
const MOST_BOXES = 20;

const TOLD: ReadonlySet<string> = new Set(
  'readings findings work recommendations questions commands'.split(' '),
);
const isDone = ({ work, recommendations }: Meaning): boolean =>
  work !== undefined || recommendations !== undefined;
/** A kind of unit may be of its name. */
const NAMES: ReadonlySet<string> = new Set(['equipment', 'unit', 'site']);
