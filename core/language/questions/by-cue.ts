import type { Token } from '../../grammar/tokens.ts';
import type { AnswerableId } from '../../terms/quantities.ts';
import type { PlaceId } from '../../terms/names.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import { Clause, isUnread, pauseAfter, type TokenRange, Wording } from '../words/clause.ts';
import type { Question } from '../utterance.ts';
import { WordSet } from '../words/word-set.ts';
import { type Asked, type Cue, CUES } from './cues.ts';
import { placeNamedIn, quantityNamedIn } from './named-in.ts';

/** A clause that asks something and that no rule reads. Names are looked for once, and only where a cue wants one: there are hundreds. */
class Asking extends Clause implements Asked {
  private named: AnswerableId | null | undefined;
  private where: PlaceId | null | undefined;

  quantity(): AnswerableId | null {
    return this.named === undefined ? (this.named = quantityNamedIn(this.words)) : this.named;
  }

  place(): PlaceId | null {
    return this.where === undefined ? (this.where = placeNamedIn(this.words)) : this.where;
  }
}

const LEAD =
  /^(?: (?:so|ok|and|hey|well|now|then|alright|all right|um|oh|but|please|can you|could you|would you|will you|do you know|you know|i wonder|wondering|i need to know|i want to know|just|quick question|question|my|the|on|for))+(?= )/;
const ASKING =
  '(?:what|where|how|which|why|who|whose|when|is|are|am|has|have|did|does|do|should|will|would|can|could|may|any|anything|give|tell|read|show|remind|say|run|list|go|compare|calculate|figure|explain|got any|got a|you got|you have|current)';
const SOME_WORD = /[a-z]+/g;
const ASKING_WORDS = new WordSet(ASKING.match(SOME_WORD) ?? []);
const LEAD_WORDS = new WordSet(LEAD.source.match(SOME_WORD) ?? []);

/** Told by single words, in a tenth of the time that the patterns take: most clauses ask nothing. */
function mayBeginAsking({ tokens, start, end }: Clause): boolean {
  for (let at = start; at < end; at += 1) {
    const token = tokens[at];
    if (token === undefined || ASKING_WORDS.has(token)) return true;
    if (!LEAD_WORDS.has(token)) return false;
  }
  return false;
}
const ASKS = new RegExp(`^ ${ASKING}(?= )`);

/** "Can't get a torch in there" tells, and asks nothing. */
const TELLS =
  /^ (?:(?:can|could|will|would|do|did|does) not|(?:could|would|may|will) be|did (?:a|an|another|some|both|all)|tell (?:them|em|him|her|the|everybody)|got (?:a|an) (?!target|number|reading|value|figure|guess|clue|idea|minute|sec|good|limit)\w+) /;
/** A sentence that breaks off has not said yet what it asks; "what should it come down to" has. */
const BROKEN_OFF = /(?<! (?:up|down|back)) (?:to|of|the|my|a|an|and|or|than|but|is) $/;

/** Words of which a number or a name of somebody else's say that it is no question to us. */
const NOT_OURS = new Wording(
  / (?:lunch|coffee|beer|truck|van|home|office|boss|game|weather|parking|park|phone|invoice|bill|price|cost|costs|pay|paid|if|he|she|they|him|her|them|your|customer|manager|owner|dispatch|somewhere|thing about|time is it) /,
);

const NUMBER_WORDS = new WordSet([
  ...ONES.slice(1),
  ...TEENS,
  ...TENS,
  ...['hundred', 'thousand', 'half', 'quarter', 'zero', 'point', 'minus'],
]);

function hasNumber({ tokens, start, end }: Clause): boolean {
  for (let at = start; at < end; at += 1) {
    const token = tokens[at];
    if (token === undefined) continue;
    const isName = token.text === 'point' && tokens[at - 1]?.text === 'set';
    if (token.value !== null || (!isName && NUMBER_WORDS.has(token))) return true;
  }
  return false;
}

interface Read extends TokenRange {
  readonly meaning: object;
}

/** A sentence, and its words. */
export interface Said {
  readonly text: string;
  readonly tokens: readonly Token[];
}

interface Told {
  readonly question: Question;
  /** The row that tells it; null for a name with its question mark. */
  readonly cue: Cue | null;
}

/** A question told by its cue words, and the stretch of tokens that it was told by. */
export interface AskedByCue extends Told, TokenRange {}

const NOTHING_ASKED: readonly AskedByCue[] = [];

/** What the clauses ask that no rule reads anything of. */
export function askedByCues({ text, tokens }: Said, read: readonly Read[]): readonly AskedByCue[] {
  if (!text.includes('?') && !ASKING_WORDS.hasAny(tokens)) return NOTHING_ASKED;
  const asked: AskedByCue[] = [];
  for (let start = 0; start < tokens.length;) {
    const end = pauseAfter(tokens, start);
    const from = isLeft({ start, end }, read) ? start : askedBehind(tokens, { start, end }, read);
    const told =
      from === null
        ? null
        : askedBy(new Asking(tokens, from, end), endsAsking(text, tokens[end - 1]));
    if (told !== null) asked.push({ ...told, start: from ?? start, end });
    start = end;
  }
  return asked;
}

const endsAsking = (text: string, last: Token | undefined): boolean =>
  text.includes('?') && /^\s*\?/.test(text.slice(last?.end ?? 0));

/** "Last time we were here": talk behind its beginning leaves a question what it was, a condition does not. */
const isLeft = (clause: TokenRange, read: readonly Read[]): boolean =>
  isUnread(clause, read) || read.every((each) => isUnread(clause, [each]) || isAside(each, clause));

/** "Suction line's two degrees so what superheat does that give me": where a question begins behind all that is read. */
function askedBehind(
  tokens: readonly Token[],
  { start, end }: TokenRange,
  read: readonly Read[],
): number | null {
  const from = Math.max(
    start,
    ...read.filter((each) => each.start < end).map((each) => Math.min(each.end, end)),
  );
  const [join, asks, next] = [tokens[from], tokens[from + 1], tokens[from + 2]];
  if (join === undefined || asks === undefined || next === undefined) return null;
  return JOINS.has(join) && ASKS_ITSELF.has(asks) && !TELLERS.has(next) ? from + 1 : null;
}
const JOINS = new WordSet('and so but then');
const ASKS_ITSELF = new WordSet('what where how which');
/** "So what I did is clean it" */
const TELLERS = new WordSet('i we he she they it you');

const isAside = ({ start, meaning }: Read, clause: TokenRange): boolean =>
  start > clause.start && Object.keys(meaning).length === 0;

/**
 * What a clause asks by the words in it, where no rule reads any of it: "what all should this superheat be running
 * today". Nothing for a clause with a number, which must be asked about itself.
 */
function askedBy(clause: Asking, asksBySign: boolean): Told | null {
  if (!asksBySign && !mayBeginAsking(clause)) return null;
  if (hasNumber(clause) || NOT_OURS.isIn(clause) || BROKEN_OFF.test(clause.words)) return null;
  if (!asksBySign && !asksByWords(clause)) return null;
  for (const ready of READY) {
    const question = ready.fits(clause) ? ready.cue.asks(clause) : null;
    if (question !== null) return { question, cue: ready.cue };
  }
  return asksBySign ? namedAlone(clause) : null;
}

/** "Superheat?", "head okay?", "superheat looking any better?" */
function namedAlone(clause: Asking): Told | null {
  const length = clause.end - clause.start;
  const named = length <= MOST_NAMED ? clause.quantity() : null;
  if (named === null) return null;
  if (RIGHT.isIn(clause)) return { question: { ask: 'compare', about: named }, cue: null };
  return length > FEW ? null : { question: { ask: 'value', about: named }, cue: null };
}
const FEW = 3;
const MOST_NAMED = 6;
const RIGHT = new Wording(
  / (?:ok|good|normal|right|fine|alright|off|bad|too|looking|better|worse) /,
);

function asksByWords({ words }: Clause): boolean {
  const asking = words.replace(LEAD, '');
  return ASKS.test(asking) && !TELLS.test(asking);
}

/** A row of the table, its wordings made ready to be looked for. */
class ReadyCue {
  readonly cue: Cue;
  private readonly says: readonly Wording[];
  private readonly unless: Wording | null;

  constructor(cue: Cue) {
    const { says, unless } = cue;
    this.cue = cue;
    this.says = says.map(wording);
    this.unless = unless === undefined ? null : wording(unless);
  }

  fits(clause: Clause): boolean {
    for (const each of this.says) if (!each.isIn(clause)) return false;
    return this.unless === null || !this.unless.isIn(clause);
  }
}

const wording = (shape: string): Wording =>
  new Wording(new RegExp(` (?:${shape.replaceAll('(', '(?:')}) `));

const READY = CUES.map((cue) => new ReadyCue(cue));
