import { Matcher } from '../../grammar/match.ts';
import type { Context } from '../context.ts';
import { isOfTalk } from './is-talk.ts';
import { keptStretches } from './kept-words.ts';
import { GRAMMAR, parse } from '../parse/parse.ts';
import { SIGNED_NUMBER } from '../numbers/numbers.ts';
import type { Span } from '../rule.ts';
import { signedIn } from '../slots.ts';

/** A number that was found in a sentence and is not for us: what it counts or costs was talk. */
export interface TalkNumber {
  readonly value: number;
  /** The talk that it stands in. */
  readonly words: string;
}

/** "The 4th" is a place in a row, and "no one" nobody. */
const ORDINAL_ENDS: ReadonlySet<string> = new Set(['st', 'nd', 'rd', 'th']);
const NUMBER = GRAMMAR.compile(SIGNED_NUMBER);

/**
 * The numbers of what was passed over as talk, in their order: nothing records or asks about them, but whoever looks at
 * the answer sees that they were not lost.
 */
export function talkNumbers(text: string, context: Context): readonly TalkNumber[] {
  const parsed = parse(text, context);
  const { items, tokens } = parsed;
  const kept = keptStretches(parsed);
  const talk = items.filter(({ meaning }) => isOfTalk(meaning));
  const spans = [...talk.map(({ start, end }) => ({ from: start, to: end })), ...parsed.counted];
  const matcher = new Matcher(GRAMMAR, tokens);
  return spans
    .filter(({ from, to }) => !kept.some(({ start, end }) => start <= from && to <= end))
    .toSorted((one, other) => one.from - other.from)
    .flatMap((span) => {
      const words = text.slice(tokens[span.from]?.start, tokens[span.to - 1]?.end);
      return numbersIn(matcher, span).map((value) => ({ value, words }));
    });
}

function numbersIn(matcher: Matcher, { from, to }: Span): readonly number[] {
  const values: number[] = [];
  for (let at = from; at < to;) {
    const found = matcher.run(NUMBER, at).filter(({ end }) => end <= to);
    const longest = found.toSorted((one, other) => other.end - one.end)[0];
    const value = longest === undefined ? null : signedIn(longest.tags[0] ?? {});
    const isPlace = ORDINAL_ENDS.has(matcher.tokens[longest?.end ?? to]?.text ?? '');
    const isPronoun = longest?.end === at + 1 && matcher.tokens[at]?.text === 'one';
    if (value !== null && !isPlace && !isPronoun) values.push(value);
    at = longest?.end ?? at + 1;
  }
  return values;
}
