import { Grammar } from '../../grammar/compile.ts';
import { Matcher } from '../../grammar/match.ts';
import { changed, type Token } from '../../grammar/tokens.ts';
import { everyWordOf } from '../../grammar/vocabulary.ts';
import type { Context } from '../context.ts';
import { listsOf } from '../names/known-names.ts';
import { NUMBER } from '../numbers/numbers.ts';
import type { Frame, Span } from '../rule.ts';
import { FILLERS } from '../words/fillers.ts';
import { turnsIn, withoutAsking, withoutLead, withoutTail, withoutThanks } from './said-around.ts';
import { saidOtherwise } from './said-otherwise.ts';
import { tokenise } from '../words/tokenise.ts';
import { WordSet } from '../words/word-set.ts';

/** All that can be said, made ready for matching once. */
export const GRAMMAR = new Grammar();
const ANY_NUMBER = GRAMMAR.compile(NUMBER);
const IN_NUMBERS = new WordSet(everyWordOf(NUMBER));
const isInNumbers = (token: Token | undefined): boolean =>
  token !== undefined && (token.value !== null || IN_NUMBERS.has(token));
/** Words that a number can have before its last one: "nine thousand nine hundred and ninety nine". */
const LONGEST_NUMBER = 8;

/** What sounds as a figure does at the end of a number, and is none before these. */
const LATE_FIGURES = new WordSet('to too for fore');
const LED_ON_TO = new WordSet(
  'the a an my your his her our their its this that these those it them us me him somebody someone everybody',
);

/** A sentence as it may have been meant, and how many tokens were left out for it. */
export interface Otherwise {
  readonly sentence: Sentence;
  readonly leftOut: number;
}

/** A sentence taken apart into tokens, and what is to be known of it wherever it is read. */
export class Sentence {
  readonly text: string;
  readonly context: Context;
  readonly tokens: readonly Token[];
  readonly matcher: Matcher;
  private weightyPart: Span | null = null;

  constructor(
    text: string,
    context: Context,
    tokens = withoutThanks(withoutLead(tokenise(text), context.asksYes)),
  ) {
    this.text = isShouted(text) ? text.toLowerCase() : text;
    this.context = context;
    this.tokens = tokens;
    this.matcher = new Matcher(GRAMMAR, this.tokens, listsOf(context.names));
  }

  /** It without the "can you tell me" before a question; `null` where there is none. */
  withoutAsking(): Sentence | null {
    const tokens = withoutAsking(this.tokens);
    return tokens === null ? null : new Sentence(this.text, this.context, tokens);
  }

  /** It without the "right now" or "here" at its end, or the "okay" behind a comma; `null` where there is none. */
  withoutTail(): Sentence | null {
    const tokens = withoutTail(this.tokens);
    return tokens === null ? null : new Sentence(this.text, this.context, tokens);
  }

  /** It in other words that may have been meant; `null` where there are none. */
  otherwise(): Otherwise | null {
    const other = saidOtherwise(this.tokens);
    if (other === null) return null;
    const { tokens, leftOut } = other;
    return { sentence: new Sentence(this.text, this.context, tokens), leftOut };
  }

  /** It with a pause where it turns; `null` where it does not. */
  withTurns(): Otherwise | null {
    return this.withPauses(turnsIn(this.tokens));
  }

  /** It with pauses before these tokens; `null` where there are none. */
  withPauses(places: readonly number[]): Otherwise | null {
    if (places.length === 0) return null;
    const tokens = this.tokens.map((token, at) =>
      places.includes(at) ? changed(token, { pause: true }) : token,
    );
    return { sentence: new Sentence(this.text, this.context, tokens), leftOut: 0 };
  }

  /** All of it but the fillers at both ends. */
  get weighty(): Span {
    return (this.weightyPart ??= weightyOf(this.tokens));
  }

  /** Whether all of it but fillers lies in that stretch. */
  isWhole(start: number, end: number): boolean {
    const { from, to } = this.weighty;
    return start <= from && end >= to;
  }

  /** Whether it is all of a clause but fillers, of which nothing before tells that it is asked, supposed or another's. */
  standsApart(start: number, end: number): boolean {
    if (this.isWhole(start, end)) return true;
    const isClause = beginsClause(this.tokens, start) && endsClause(this.tokens, end);
    return isClause && !NOT_TOLD.hasAny(this.tokens, 0, start);
  }

  /** Around what a rule reads; `endsAtPause` where that is known otherwise than by its tokens. */
  frame(span: Span, endsAtPause = this.tokens[span.to]?.pause ?? true): Frame {
    return new SentenceFrame(this, span, endsAtPause);
  }

  /** Whether nothing but fillers stands between that place and a pause before it. */
  startsAtPause(from: number): boolean {
    for (let at = from; at > 0; at -= 1) {
      const before = this.tokens[at - 1];
      if (this.tokens[at]?.pause === true) return true;
      if (before === undefined || !FILLERS.has(before) || before.text === 'think') return false;
    }
    return false;
  }

  wordsOf({ from, to }: Span): string {
    const first = this.tokens[from];
    const last = this.tokens[to - 1];
    if (first === undefined || last === undefined) return '';
    // "Ten minutes, make that fifteen": what is put right stands where the wrong one did, before words that were said earlier.
    const words = this.text.slice(Math.min(first.start, last.start), Math.max(first.end, last.end));
    return this.hasGaps({ from, to }) ? words.replace(NOISE, '').replace(STUMBLE, '$1') : words;
  }

  /** Whether more than a space stands between any two of its tokens: what is no token may stand there. */
  private hasGaps({ from, to }: Span): boolean {
    for (let at = from + 1; at < to; at += 1) {
      if ((this.tokens[at]?.start ?? 0) > (this.tokens[at - 1]?.end ?? 0) + 1) return true;
    }
    return false;
  }

  /** Whether one number reaches over the place between two tokens, and up to there where that is given. */
  isNumberAcross(at: number, to: number | null = null): boolean {
    if (this.tokens[at]?.pause === true) return false;
    if (!isInNumbers(this.tokens[at - 1]) || !isInNumbers(this.tokens[at])) return false;
    for (let from = Math.max(0, at - LONGEST_NUMBER); from < at; from += 1) {
      if (
        this.matcher.run(ANY_NUMBER, from).some(({ end }) => (to === null ? end > at : end === to))
      ) {
        return true;
      }
    }
    return false;
  }

  isInsideNumber(at: number): boolean {
    if (this.tokens[at]?.pause === true) return false;
    return this.canBeNumber(at - 1) && this.canBeNumber(at);
  }

  canBeNumber(at: number): boolean {
    return ANY_NUMBER.opening.allows(this.matcher.kindAt(at)) && !this.leadsOn(at);
  }

  /** Whether a number that ends there would take a word that is no figure of it: "eighty to seventy four" is no eighty two. */
  endsTooLate(end: number): boolean {
    const last = this.tokens[end - 1];
    if (last === undefined || !LATE_FIGURES.has(last)) return false;
    return this.leadsOn(end - 1) || this.canBeNumber(end);
  }

  /** "Three ninety for the motor" is no three ninety four, whatever a recogniser may write for "four". */
  leadsOn(at: number): boolean {
    const [word, next] = [this.tokens[at], this.tokens[at + 1]];
    if (word === undefined || next === undefined || next.pause) return false;
    return LATE_FIGURES.has(word) && LED_ON_TO.has(next);
  }
}

/** Said while thinking, and no part of a name: "the walk-in at uh the back dock". */
const NOISE = /\b(?:uh|um|erm|hmm?),? /gi;
const STUMBLE = /\b(the|and|we|i|my|of) \1\b/gi;
/** All in capitals, none of which tells a name. */
function isShouted(text: string): boolean {
  for (let at = 0; at < text.length; at += 1) if (isSmallLetter(text.charCodeAt(at))) return false;
  return text.length >= FEWEST_SHOUTED;
}
const FEWEST_SHOUTED = 3;
const [BEFORE_SMALL, AFTER_SMALL] = [96, 123];
const isSmallLetter = (code: number): boolean => code > BEFORE_SMALL && code < AFTER_SMALL;

class SentenceFrame implements Frame {
  readonly context: Context;
  readonly span: Span;
  readonly endsAtPause: boolean;
  private readonly sentence: Sentence;

  constructor(sentence: Sentence, span: Span, endsAtPause: boolean) {
    this.context = sentence.context;
    this.span = span;
    this.endsAtPause = endsAtPause;
    this.sentence = sentence;
  }

  get startsAtPause(): boolean {
    return this.sentence.startsAtPause(this.span.from);
  }

  get isAsked(): boolean {
    const { text, tokens } = this.sentence;
    return /^\s*\?/.test(text.slice(tokens[this.span.to - 1]?.end ?? 0));
  }

  wordsOf(span: Span): string {
    return this.sentence.wordsOf(span);
  }
}

/** Behind these, what stands apart was asked, supposed, told by somebody or is to be looked at. */
const NOT_TOLD = new WordSet(
  'if when could might may maybe should would what why how who unless until probably perhaps either or said says say ' +
    'told tell tells thinks think claims swears guess bet hope wish suppose',
);
const JOINS = new WordSet('and but then plus also');

function beginsClause(tokens: readonly Token[], start: number): boolean {
  const before = tokens[start - 1];
  if (before === undefined || JOINS.has(before)) return true;
  let at = start;
  while (at > 0 && tokens[at]?.pause !== true && isFiller(tokens[at - 1])) {
    at -= 1;
    if (tokens[at]?.text === 'and') return true;
  }
  return at === 0 || tokens[at]?.pause === true;
}

function endsClause(tokens: readonly Token[], end: number): boolean {
  let at = end;
  while (at < tokens.length && tokens[at]?.pause !== true) {
    const token = tokens[at];
    if (token === undefined || token.text === 'and') return true;
    if (!isFiller(token)) return false;
    at += 1;
  }
  return true;
}

/** Nothing, at the end, where all are fillers. */
function weightyOf(tokens: readonly Token[]): Span {
  let [from, to] = [0, tokens.length];
  while (isFiller(tokens[from])) from += 1;
  if (from === to) return { from, to: 0 };
  while (isFiller(tokens[to - 1])) to -= 1;
  return { from, to };
}

const isFiller = (token: Token | undefined): boolean => token !== undefined && FILLERS.has(token);
