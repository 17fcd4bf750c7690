import { changed, type Token } from '../../grammar/tokens.ts';
import { askedOutright } from './asked-inside.ts';
import { Phrases, standAt } from '../words/phrases-at.ts';
import { withoutStumbles } from '../stumbles/stumbles.ts';
import { WordSet } from '../words/word-set.ts';

/** What turns to somebody before anything is said: "okay so", "alright," and the like. */
const LEADS = new WordSet('gloveside ok so and but well hey alright alrighty uh um er ah hm');

/**
 * "Okay to braze" asks whether it is; "so it's the timer" concludes; "so what is it" does not ask for what was just
 * said; "uh huh" answers; "well done" praises.
 */
const BEGINNINGS = [
  ['ok', 'to'],
  ['uh', 'huh'],
  ['well', 'done'],
  ['uh', 'uh'],
  ['so', 'it', 'is', 'the'],
  ['so', 'what', 'is', 'it'],
];

/** "Hang on, the fan's making noise" tells it; alone it stops the talk, and before a reading it takes one back. */
const HELD_UP = ['hang', 'hold'].flatMap((word) => [
  [word, 'on', 'the'],
  [word, 'on', 'there', 'is'],
]);

/** Alone it asks what comes next. */
const AND_NOW = ['and', 'now'];

/**
 * The tokens without what is stumbled over, and without what leads up to them: "alright, condenser" answers what
 * "condenser" does, and in front of more "yeah" answers only what `asksYes` tells of.
 */
export function withoutLead(said: readonly Token[], asksYes: boolean): readonly Token[] {
  const tokens = withoutStumbles(said);
  let from = HELD_UP.some((words) => standAt(tokens, 0, words)) ? 2 : 0;
  while (
    leads(tokens[from], asksYes) &&
    !(tokens.length === from + 2 && standAt(tokens, from, AND_NOW)) &&
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

const split = (words: string): readonly string[] => words.split(' ');

/** What leads to a question that stands by itself. */
const LEADS_TO_QUESTION = new Phrases([
  ...['tell me', 'can you tell me', 'could you tell me', 'will you tell me', 'just tell me'],
  ...['remind me again', 'remind me', 'can you remind me', 'could you remind me'],
  ...[
    'do you know',
    'do you remember',
    'you remember',
    'any idea',
    'wondering',
    'just wondering',
    'i am wondering',
  ],
  ...['i want to know', 'i need to know', 'i would like to know', 'i was wondering', 'i wonder'],
]);
/** The same, but a "what the head is" behind them is no question. */
const LEADS_OUTRIGHT = new Phrases([
  ...[
    'you know',
    'quick one',
    'quick question',
    'question for you',
    'question',
    'got a question',
    'buddy',
  ],
  ...['let me ask you something', 'let me ask you this', 'let me ask you', 'one more thing'],
  ...['by the way', 'real quick', 'before i forget', 'wait'],
]);
/** Before what the product is told to do. */
const LEADS_TO_COMMAND = new Phrases([
  ...['can you', 'could you', 'would you', 'will you', 'why do not you', 'you can', 'you better'],
  ...['go ahead and', 'can you go ahead and', 'you can go ahead and', 'please', 'can you please'],
  ...['i need you to', 'i want you to', 'real quick', 'no', 'wait', 'actually', 'just', 'now'],
  ...['write down', 'put down', 'mark down', 'note', 'note that'],
]);
/** What it is told in, where nothing else can be meant: it makes, starts and closes no part. */
const COMMANDED = new Phrases([
  ...['pause', 'say that', 'say it', 'say again', 'repeat', 'stop listening', 'stop talking'],
  ...['quit talking', 'quit listening', 'hold on', 'hold up', 'hang on', 'be quiet', 'mute'],
  ...['make it', 'make that', 'change it to', 'change that to', 'correct that', 'mark this'],
  ...['that is my before', 'those are my before', 'that is my after', 'those are my after'],
  ...['mark that', 'mark these', 'save this', 'save that', 'save these', 'call that', 'call this'],
  ...['undo', 'scratch', 'delete', 'remind me', 'cancel', 'finish up', 'finish the', 'finish it'],
  ...[
    'wrap it up',
    'wrap this up',
    'wrap up',
    'close it out',
    'close this out',
    'end the',
    'end this',
  ],
  ...[
    'set a',
    'set me a',
    'start a',
    'start me a',
    'take that back',
    'take it back',
    'forget that',
  ],
  ...[
    'end visit',
    'finish',
    'give me a minute',
    'give me a second',
    'read it',
    'read that',
    'read me',
  ],
]);
/** What was told to somebody else, but is what ought to be done all the same. */
const LEADS_TO_ADVICE = new Phrases([
  ...['let them know', 'let him know', 'let her know', 'make sure they know', 'i told them'],
  ...['i told him', 'i told her', 'i told the customer', 'i told the manager', 'i told the owner'],
  ...['i let them know', 'we told them', 'told the manager', 'told the customer', 'told the owner'],
  ...['put down', 'note'],
]);
const ADVISES = new WordSet('need needs should ought due recommend');
/** Behind these a question is told as if it were so. */
const ASKS_OPINION = new Phrases(['do you think', 'you think', 'would you say', 'do you reckon']);
const LEADING = new WordSet(
  [LEADS_TO_QUESTION, LEADS_OUTRIGHT, ASKS_OPINION, LEADS_TO_COMMAND, LEADS_TO_ADVICE].flatMap(
    (leads) => [...leads.firstWords],
  ),
);
const ASKING = new WordSet(
  'what where how which why when who whose is are am do does did should can',
);

/** The tokens without "can you tell me" before a question or a command, which is asked outright; `null` where nothing leads to one. */
export function withoutAsking(tokens: readonly Token[]): readonly Token[] | null {
  const [first] = tokens;
  if (first === undefined || !LEADING.has(first)) return null;
  return askedBehind(tokens) ?? commandedBehind(tokens) ?? advisedBehind(tokens);
}

/** "Can you say that again" */
function commandedBehind(tokens: readonly Token[]): readonly Token[] | null {
  const lead = LEADS_TO_COMMAND.at(tokens, 0, (length) => COMMANDED.at(tokens, length) !== null);
  return lead === null ? null : tokensFrom(tokens, lead.length);
}

/** "Let them know it needs a new gasket" */
function advisedBehind(tokens: readonly Token[]): readonly Token[] | null {
  const lead = LEADS_TO_ADVICE.at(tokens, 0);
  if (lead === null) return null;
  const from = tokens[lead.length]?.text === 'that' ? lead.length + 1 : lead.length;
  const next = tokens[from];
  const asks = next === undefined || ASKING.has(next) || next.text === 'if';
  if (asks || !ADVISES.hasAny(tokens, from)) return null;
  const advised = tokensFrom(tokens, from);
  return withoutTail(advised) ?? advised;
}

function tokensFrom(tokens: readonly Token[], from: number): readonly Token[] {
  const [first, ...more] = tokens.slice(from);
  return first === undefined ? [] : [changed(first, { pause: false }), ...more];
}

function askedBehind(tokens: readonly Token[]): readonly Token[] | null {
  const question = LEADS_TO_QUESTION.at(tokens, 0);
  const outright = question === null ? LEADS_OUTRIGHT.at(tokens, 0) : null;
  const opinion = question === null && outright === null ? ASKS_OPINION.at(tokens, 0) : null;
  const { length } = question ?? outright ?? opinion ?? [];
  const next = tokens[length];
  if (length === 0 || next === undefined) return null;
  const inside = outright === null ? askedOutright(tokens, length, opinion !== null) : null;
  if (inside !== null) return inside;
  if (!ASKING.has(next)) return null;
  const asked = tokensFrom(tokens, length);
  return withoutAsking(asked) ?? asked;
}

/** What is said to somebody behind anything. */
const TO_SOMEBODY = [
  ...['please', 'thanks', 'thank you', 'thanks a lot', 'man', 'so yeah', 'as well'],
].map(split);
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
/** What is said to whom is asked or told to do something, or what it is asked of, which is nothing else. */
const OF_ASKING = [
  ...['for me', 'for now', 'real quick', 'if you would', 'if you can', 'if you could', 'buddy'],
  ...['would you', 'would ya', 'will you', 'can you', 'if you know', 'if you do not mind'],
  ...[
    'on this thing',
    'on this one',
    'on this unit',
    'on this guy',
    'for this unit',
    'for this one',
  ],
  ...['for this thing', 'at this point', 'by the way', 'exactly', 'roughly'],
].map(split);
const TAIL_ENDS = new WordSet(
  [...OF_NOW, ...OF_ASKING, ...BEHIND_COMMA, OF_HERE].flatMap((words) => words.slice(-1)),
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
  const ofAsking = OF_ASKING.find((words) => endWith(tokens, words));
  if (ofAsking !== undefined) return tokens.slice(0, -ofAsking.length);
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
