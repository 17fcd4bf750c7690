import { Automata } from '../../grammar/automata.ts';
import { OTHER } from '../../grammar/kinds.ts';
import { Reach } from '../../grammar/reach.ts';
import type { Token } from '../../grammar/tokens.ts';
import { HOLES } from '../holes.ts';
import { isHowLong, isSize, SIZED_IN } from './counts-things.ts';
import { isCountedThing, isPointedOut } from '../words/counted-things.ts';
import { isEveryday } from '../words/everyday-words.ts';
import { ONES } from '../numbers/number-words.ts';
import { SIGNED_NUMBER } from '../numbers/numbers.ts';
import type { Span } from '../rule.ts';
import { GRAMMAR, type Sentence } from './sentence.ts';
import { signedIn } from '../slots.ts';
import { WordSet } from '../words/word-set.ts';

interface Found {
  readonly digits: string;
  readonly end: number;
}

export interface OpenNumbers {
  /** Numbers that no item claims, as digits. */
  readonly unclaimed: readonly string[];
  /** Stretches of a number and the things that it counts, which nobody need be asked about. */
  readonly counted: readonly Span[];
}

/** Two may have been misheard for two of ours: "sectioning thirty eight", "hedge one ninety". */
const FEWEST_UNHEARD_OF = 3;

const LEADS_TO_YEAR = new WordSet('in since during');
const YEAR = /^(?:19|20)\d\d$/;

const POINTING = new WordSet('the a an this that');
const ENDS = new WordSet('and but so is was has in on with');

const NONE: OpenNumbers = { unclaimed: [], counted: [] };
const ANY_SIGNED = GRAMMAR.compile(SIGNED_NUMBER);
let numbers = new Automata(GRAMMAR, [SIGNED_NUMBER]);

/** The numbers of a sentence outside of these stretches, which are in their order. */
export function openNumbers(
  sentence: Sentence,
  read: readonly { readonly start: number; readonly end: number }[],
): OpenNumbers {
  const { length } = sentence.tokens;
  const [first] = read;
  if (first !== undefined && first.start === 0 && first.end === length) return NONE;
  const finder = new NumberFinder(sentence);
  let at = 0;
  for (const { start, end } of read) {
    finder.addFrom(at, start);
    at = end;
  }
  finder.addFrom(at, length);
  return finder;
}

class NumberFinder implements OpenNumbers {
  readonly unclaimed: string[] = [];
  readonly counted: Span[] = [];
  private readonly sentence: Sentence;
  private readonly tokens: readonly Token[];

  constructor(sentence: Sentence) {
    this.sentence = sentence;
    this.tokens = sentence.tokens;
  }

  addFrom(from: number, to: number): void {
    for (let at = from; at < to;) {
      const longest = this.longestNumber(at, to);
      if (longest === null) at += 1;
      else {
        this.add(at, longest);
        at = longest.end;
      }
    }
  }

  private add(at: number, found: Found): void {
    const told = this.talkFrom(at, found.end);
    if (told !== null) this.counted.push({ from: at, to: told });
    else if (!this.repeats(at, found)) this.unclaimed.push(found.digits);
  }

  /** "Fifty, five zero": the same number again, figure by figure. */
  private repeats(at: number, { digits, end }: Found): boolean {
    const isSpelled = this.tokens.slice(at, end).every(({ text }) => FIGURES.has(text));
    return isSpelled && end - at > 1 && this.unclaimed.at(-1) === digits;
  }

  /** Up to where a number that nobody claims is talk; `null` where it is not. */
  private talkFrom(at: number, end: number): number | null {
    if (this.countsThings(at, end) || this.isOfSize(at, end) || this.isHowFar(at, end))
      return end + 1;
    if (this.pointsAt(at, end) || this.namesLeg(at, end) || this.namesGas(at)) return end;
    return this.isMoneyOrYear(at) || this.isEveryday(at) ? end : null;
  }

  /** "They are open till nine": of the clause that it stands in, nothing is ours. */
  private isEveryday(at: number): boolean {
    let from = at;
    while (from > 0 && this.tokens[from]?.pause !== true) from -= 1;
    const to = this.sentence.matcher.nextPause(at);
    return this.isForeign(from, to) || isEveryday(this.tokens.slice(from, to), at - from);
  }

  /** "The director painted twelve portraits of emperors": of the job nobody says so much that is in no rule of ours. */
  private isForeign(from: number, to: number): boolean {
    let count = 0;
    for (let at = from; at < to; at += 1) {
      const isUnheardOf = this.sentence.matcher.kindAt(at) === OTHER;
      if (isUnheardOf && this.tokens[at]?.value === null) count += 1;
    }
    return count >= FEWEST_UNHEARD_OF;
  }

  /** "The tickets were $35", "in 1971"; but alone "$2.20" may be how a recogniser wrote "two twenty". */
  private isMoneyOrYear(at: number): boolean {
    const [before, number] = [this.tokens[at - 1], this.tokens[at]];
    if (number === undefined || at <= this.sentence.weighty.from) return false;
    if (this.sentence.text[number.start - 1] === '$') return true;
    return before !== undefined && LEADS_TO_YEAR.has(before) && YEAR.test(number.text);
  }

  /** "The valve's an electronic one": of which kind it is. */
  private pointsAt(at: number, end: number): boolean {
    if (this.isTheOthers(at, end) || this.isThatOne(at, end)) return true;
    if (this.isOneThere(at, end)) return true;
    const [which, kind, number, next] = this.tokens.slice(Math.max(0, at - 2), at + 2);
    if (this.isOneOfThem(at, end) || this.isOfDoubleKind(at, end)) return true;
    if (at < 2 || end > at + 1 || number?.text !== 'one') return false;
    if (which === undefined || kind === undefined || kind.pause || number.pause) return false;
    return POINTING.has(which) && (next === undefined || next.pause || ENDS.has(next));
  }

  /** "Leak checked that one too", "I stuck a probe in one", "all three to ground" */
  private isThatOne(at: number, end: number): boolean {
    const [held, that, number] = [this.tokens[at - 2], this.tokens[at - 1], this.tokens[at]];
    if (that === undefined || number === undefined || end > at + 1 || number.pause) return false;
    if (number.text !== 'one') return that.text === 'all' && SMALL.has(number);
    return THAT.has(that) || (that.text === 'in' && held !== undefined && PROBES.has(held));
  }

  /** "The one at the coil", "one at the flare and one at the braze" */
  private isOneThere(at: number, end: number): boolean {
    const [the, number, place, next] = [-1, 0, 1, 2].map((by) => this.tokens[at + by]);
    if (number?.text !== 'one' || end > at + 1 || place === undefined || place.pause) return false;
    if (!PLACED.has(place)) return false;
    const isPointed = the?.text === 'the' && !number.pause;
    return isPointed || (next !== undefined && !next.pause && WHOSE.has(next));
  }

  /** "It's black on L two": which leg of a supply. */
  private namesLeg(at: number, end: number): boolean {
    const [before, number] = [this.tokens[at - 1], this.tokens[at]];
    if (number === undefined || end > at + 1 || !LEG_NUMBERS.has(number)) return false;
    return before !== undefined && LEG.has(before) && !number.pause;
  }

  /** "A brush and the CO2" */
  private namesGas(at: number): boolean {
    const [before, number] = [this.tokens[at - 1], this.tokens[at]];
    const isTwo = number?.text === '2' || number?.text === 'two';
    return isTwo && !number.pause && before !== undefined && CARBON.has(before);
  }

  /** "A fifty five degree klixon", "sixty amp time delays", "a four pole": what a part is made for, and nothing read. */
  private isOfSize(at: number, end: number): boolean {
    const { tokens, matcher } = this.sentence;
    const [before, unit, next] = [tokens[at - 1], tokens[end], tokens[end + 1]];
    if (before === undefined || unit === undefined || unit.pause || PARTS === null) return false;
    if (SIZED_IN.has(unit) || isSize(unit, next)) return true;
    return POINTING.has(before) && MADE_FOR.has(unit) && matcher.run(PARTS, end + 1).length > 0;
  }

  /** "Half an hour", "about two thirds clear": how long, and how far along it is. */
  private isHowFar(at: number, end: number): boolean {
    const [last, next] = [this.tokens[end - 1], this.tokens[end]];
    if (last === undefined || next === undefined || next.pause) return false;
    const isPart = PARTS_OF_ALL.has(last) || this.tokens[at]?.text === 'half';
    return isHowLong(this.tokens, end) || (isPart && ALONG.has(next));
  }

  /** "The under counter one": a kind in two words. */
  private isOfDoubleKind(at: number, end: number): boolean {
    const [which, first, second, number, next] = this.tokens.slice(Math.max(0, at - 3), at + 2);
    if (at < 3 || end > at + 1 || number?.text !== 'one' || number.pause) return false;
    if (which === undefined || first?.pause !== false || second?.pause !== false) return false;
    const isKind = first.value === null && second.value === null && !OF.has(second);
    return POINTING.has(which) && isKind && (next === undefined || next.pause || ENDS.has(next));
  }

  /** "The left hand one of two": of how many it is one. */
  private isOneOfThem(at: number, end: number): boolean {
    const [which, of, number, next] = this.tokens.slice(Math.max(0, at - 2), at + 2);
    if (at < 2 || end > at + 1 || which === undefined || of?.text !== 'of' || of.pause)
      return false;
    const isLast = next === undefined || next.pause;
    return WHICH_OF.has(which) && number?.pause === false && SMALL.has(number) && isLast;
  }

  /** "Cap the other two": which they are, and how many. */
  private isTheOthers(at: number, end: number): boolean {
    const [which, other, number] = this.tokens.slice(Math.max(0, at - 2), at + 1);
    if (at < 2 || end > at + 1 || which === undefined || other === undefined) return false;
    const isPointed = OTHERS_OF.has(which) && other.text === 'other' && !other.pause;
    return isPointed && number?.pause === false && SMALL.has(number);
  }

  /** Behind other words: "four apples" alone may yet have been meant for us. */
  private countsThings(at: number, end: number): boolean {
    const next = this.tokens[end];
    if (this.countsParts(at, end)) return true;
    if (next === undefined || at <= this.sentence.weighty.from) return false;
    const isOne = end === at + 1 && this.tokens[at]?.text === 'one';
    return isCountedThing(next) || (isOne && isPointedOut(next));
  }

  /** "The two evap fans are going" */
  private countsParts(at: number, end: number): boolean {
    const { tokens, matcher } = this.sentence;
    const number = tokens[at];
    if (number === undefined || end > at + 1 || !SMALL.has(number) || PARTS === null) return false;
    return matcher
      .run(PARTS, end)
      .some((part) => tokens[part.end - 1]?.text.endsWith('s') === true);
  }

  private longestNumber(at: number, to: number): Found | null {
    const { matcher } = this.sentence;
    if (!ANY_SIGNED.opening.allows(matcher.kindAt(at))) return null;
    if (numbers.isFull) numbers = new Automata(GRAMMAR, [SIGNED_NUMBER]);
    const reach = new Reach(numbers, 0, { matcher, at, to });
    for (let end = reach.farthest; end > at; end -= 1) {
      const tags = this.sentence.endsTooLate(end) ? null : reach.first(end);
      if (tags !== null) return { digits: String(signedIn(tags)), end };
    }
    return null;
  }
}

const LEG = new WordSet('l t leg phase');
const CARBON = new WordSet('co');
const LEG_NUMBERS = new WordSet('one two three 1 2 3');
const PART = HOLES['part'];
const PARTS = PART === undefined ? null : GRAMMAR.compile(PART);
const MADE_FOR = new WordSet('degree amp volt watt ton inch gallon microfarad');
const OF = new WordSet('of is at to and or by');
const WHICH_OF = new WordSet(
  'one hand left right middle center first second third last first end top bottom number',
);
const PARTS_OF_ALL = new WordSet('half third thirds quarter quarters fourths');
const ALONG = new WordSet(
  'clear cleared clean done full empty way there gone melted thawed open shut closed plugged blocked covered iced through over charged',
);
const THAT = new WordSet('that this');
const PLACED = new WordSet('at on in by near under over behind inside off from going coming to');
const WHOSE = new WordSet('the my a an his her their this that');
const PROBES = new WordSet('probe thermometer stem');
const OTHERS_OF = new WordSet('the those these all my our their');
const SMALL = new WordSet('two three four five six');
const FIGURES: ReadonlySet<string> = new Set([...ONES, 'zero', 'oh']);
