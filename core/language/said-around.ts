import { changed, type Token } from '../grammar/tokens.ts';
import { WordSet } from './word-set.ts';

/** What turns to somebody before anything is said: "okay so", "alright," and the like. */
const LEADS = new WordSet('gloveside ok so and but well hey alright uh um er ah hm');

/** "Okay to braze" asks whether it is; "so it's the timer" concludes; "uh huh" answers. */
const BEGINNINGS = [
  ['ok', 'to'],
  ['uh', 'huh'],
  ['uh', 'uh'],
  ['so', 'it', 'is', 'the'],
];

/**
 * The tokens without what leads up to them: "alright, condenser" answers what "condenser" does, and in front of more
 * "yeah" answers only what `asksYes` tells of.
 */
export function withoutLead(tokens: readonly Token[], asksYes: boolean): readonly Token[] {
  let from = 0;
  while (
    leads(tokens[from], asksYes) &&
    !BEGINNINGS.some((words) => standAt(tokens, from, words))
  ) {
    from += 1;
  }
  const first = tokens[from];
  if (first === undefined || (from === 0 && !first.pause)) return tokens;
  return [changed(first, { pause: false }), ...tokens.slice(from + 1)];
}

const leads = (token: Token | undefined, asksYes: boolean): boolean =>
  token !== undefined && (LEADS.has(token) || (!asksYes && token.text === 'yeah'));

const standAt = (tokens: readonly Token[], at: number, words: readonly string[]): boolean =>
  words.every((word, index) => tokens[at + index]?.text === word);

const split = (words: string): readonly string[] => words.split(' ');

/** What leads to a question that stands by itself. */
const LEADS_TO_QUESTION = [
  ...['tell me', 'can you tell me', 'could you tell me', 'will you tell me', 'just tell me'],
  ...['do you know', 'you know', 'any idea', 'quick question', 'question', 'wondering'],
  ...['i want to know', 'i need to know', 'i would like to know', 'i was wondering', 'i wonder'],
].map(split);
const LEADING = new WordSet(LEADS_TO_QUESTION.flatMap((words) => words.slice(0, 1)));
const ASKING = new WordSet(
  'what where how which why when who whose is are am do does did should can',
);

/** The tokens without "can you tell me" before a question; `null` where nothing leads to one. */
export function withoutAsking(tokens: readonly Token[]): readonly Token[] | null {
  const [first] = tokens;
  if (first === undefined || !LEADING.has(first)) return null;
  const lead = LEADS_TO_QUESTION.find((words) => standAt(tokens, 0, words));
  const next = lead && tokens[lead.length];
  if (lead === undefined || next === undefined || !ASKING.has(next)) return null;
  return [changed(next, { pause: false }), ...tokens.slice(lead.length + 1)];
}

/** What is said to somebody behind anything. */
const TO_SOMEBODY = ['please', 'thanks', 'thank you', 'thanks a lot', 'man', 'so yeah'].map(split);
/** The same, but words of the job where no comma stands before them: "the relay is okay". */
const BEHIND_COMMA = ['ok', 'alright', 'yeah', 'right'].map(split);
const ENDS = new WordSet([...TO_SOMEBODY, ...BEHIND_COMMA].flatMap((words) => words.slice(-1)));
/** Fewer words may be all of "condenser fan, okay", where the fan is: that is for the rules to tell. */
const MORE_THAN_A_NAME = 4;

/** The tokens without what is said to somebody behind them. */
export function withoutThanks(tokens: readonly Token[]): readonly Token[] {
  const last = tokens.at(-1);
  if (last === undefined || !ENDS.has(last)) return tokens;
  const isLong = tokens.length > MORE_THAN_A_NAME;
  const tail =
    TO_SOMEBODY.find((words) => endWith(tokens, words)) ??
    (isLong ? tailBehindComma(tokens) : undefined);
  return tail === undefined ? tokens : withoutThanks(tokens.slice(0, -tail.length));
}

const endWith = (tokens: readonly Token[], words: readonly string[]): boolean =>
  tokens.length > words.length && standAt(tokens, tokens.length - words.length, words);

function tailBehindComma(tokens: readonly Token[]): readonly string[] | undefined {
  return BEHIND_COMMA.find((words) => {
    const from = tokens.length - words.length;
    return tokens[from]?.pause === true && endWith(tokens, words);
  });
}

/** What is said behind anything that is measured or found: all of it is of now and of here. */
const OF_NOW = ['right now', 'now', 'at the moment', 'currently', 'today'].map(split);
const OF_HERE = ['here'];
const TAIL_ENDS = new WordSet(
  [...OF_NOW, ...BEHIND_COMMA, OF_HERE].flatMap((words) => words.slice(-1)),
);
/** "Until now", "that's not right now": no tail of what stands before it. */
const TAKES_NOW = new WordSet('from to on by till until before since for not just');
const TAKES_HERE = new WordSet(
  'got get gets getting came come comes coming been was is are be am from in left worked works',
);

/** The tokens without what tells that they are of now or of here, or is said to somebody; `null` where nothing is. */
export function withoutTail(tokens: readonly Token[]): readonly Token[] | null {
  const last = tokens.at(-1);
  if (last === undefined || !TAIL_ENDS.has(last)) return null;
  const said = tailBehindComma(tokens);
  if (said !== undefined) return tokens.slice(0, -said.length);
  const isHere = endWith(tokens, OF_HERE);
  const tail = isHere ? OF_HERE : OF_NOW.find((words) => endWith(tokens, words));
  const before = tail && tokens[tokens.length - tail.length - 1];
  if (tail === undefined || before === undefined) return null;
  return (isHere ? TAKES_HERE : TAKES_NOW).has(before) ? null : tokens.slice(0, -tail.length);
}

const TURNS = new WordSet('but');
/** Who or what it turns to; "nothing but", "all but one" and "but barely" turn to nothing. */
const TURNED_TO = new WordSet(
  'i we it this that the my our he she they there now ours head suction superheat box',
);

/** Where it turns without a pause: "they had fifty in theirs but this one's at eleven". */
export function turnsIn(tokens: readonly Token[]): readonly number[] {
  if (!TURNS.hasAny(tokens, 1)) return NOWHERE;
  return tokens.flatMap((token, at) => {
    const next = tokens[at + 1];
    const turns = at > 0 && !token.pause && TURNS.has(token) && next !== undefined;
    return turns && TURNED_TO.has(next) ? [at] : [];
  });
}

const NOWHERE: readonly number[] = [];
