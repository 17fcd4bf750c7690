import type { Token } from '../../grammar/tokens.ts';
import { HANDS_DID, HANDS_MADE } from '../../terms/hand-work.ts';
import {
  Clause,
  isUnread,
  pauseAfter,
  saysTwoWords,
  type TokenRange,
  Wording,
} from '../words/clause.ts';
import { HOLES } from '../holes.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import { isOneOfAKind } from '../parse/counts-things.ts';
import type { Item } from '../parse/read-rules.ts';
import type { Span } from '../rule.ts';
import { GRAMMAR, type Sentence } from '../parse/sentence.ts';
import { isAdvised } from '../recommendations/as-said.ts';
import { isOfTalk } from './is-talk.ts';
import { isJobTalk } from '../words/job-words.ts';
import { joinedTold, type Section } from './joined-told.ts';
import { DIRT } from '../vocabulary/state-names.ts';
import { WordSet } from '../words/word-set.ts';

const PART = HOLES['part'];
const PARTS = PART === undefined ? null : GRAMMAR.compile(PART);

/** Which tells of a part, or of the unit. */
const TELLS = new Wording(
  / (?:is|are|was|were|has|have|had|look|looks|sound|sounds|smell|smells|feel|feels|keep|keeps|will not|does not|did not|would not|went|came|started|stopped|quit|seems|hit|hits|hitting|rub|rubs|rubbing|drip|drips|leak|leaks|run|runs|barely|hardly|never|work|works|turn|turns|comes|goes|trips|needed|took) /,
);
const OF_THE_UNIT = new Wording(
  /^ (?:it|she|this thing|this one|(?:the |this )?(?:unit|box|cooler|freezer|case|machine|system|walk in|reach in)) (?:has not|has never|never|does not|did not|will not|keeps|kept|would not|has been|had been|was|were|just|finally|started|starts|stopped|quit|runs|ran|went|came|sounds|smells|looks) /,
);
/** "Won't pump down": of the unit, too, where nobody says so. */
const WILL_NOT = new Wording(
  /^ (?:it |she |still |now |just )*(?:will not|would not|does not|did not|can not|could not|refuses to) (?:pump|pull|start|restart|run|cool|freeze|harvest|drop|make|hold|shut|come|kick|cycle|defrost|drain|fill|unload|reset|stay) /,
);
/** What hands do on a job. */
const DID = new Wording(
  new RegExp(
    `^ (?:i |we |and |then |also |just |already |finally |went ahead and )*(?:${HANDS_MADE}|${HANDS_DID}) `,
  ),
);
/** What a machine does that is not well, of whatever was spoken of: "it's kind of twitching". */
const IT_DOES = new Wording(
  /^ (?:it|they|she|that one|this one|the [a-z]+|both) (?:is|are|was|were|keeps|keep|started|starts) (?:all |both |just |kind of |sort of |still |now |really |barely |like )*(?:twitching|chattering|surging|pulsing|rattling|squealing|grinding|whining|knocking|hissing|gurgling|spitting|spewing|weeping|seeping|sparking|arcing|glowing|flickering|wobbling|vibrating|shaking|jerking|stuttering|stalling|straining|laboring|lugging|groaning|moaning|popping|pinging|thumping|banging|slapping|flapping|dragging|binding|sticking|slipping|sizzling|foaming) /,
);
/** "Got a heat gun on it" */
const HELD_TO = new Wording(
  /^ (?:i |we |have |i have |we have )*(?:got|have|put|set) (?:a|the|my|some|another) (?:heat gun|steamer|hose|fan|box fan|hot water|warm water|torch|light|bucket|towel|towels|tarp|blanket|hair dryer|heater) (?:blowing |running |going |hung )?(?:on|in|at|across|under|behind|over) /,
);
const FOUND = new Wording(
  /^ (?:i |we |just |also |and )*(?:found|noticed|saw|see|can see|could see|spotted|heard|can hear|hear|smelled|smell|felt|there is|there was|there are|got|it has|it had) /,
);
/** What somebody was told to do or to know: the office may need it, whatever it was. */
const TOLD_THEM = new Wording(
  /^ (?:i |we |and |also |just |already |then |have |had )*(?:told|warned|advised|informed|reminded|instructed) (?:them|him|her|everybody|everyone|the [a-z]+|(?!you|me|us|it|that|this|i|a)[a-z]+) (?:[a-z]+ )?(?:[a-z]+ )?(?:that |to |not |the |they |he |she |it |about |anything |everything |nothing |no |all |we |i |if |how |what )/,
);
/** Out of the van: used, and not off. */
const OFF_THE_TRUCK = new Wording(
  / (?:off|from|out of|off of) (?:the|my|our) (?:truck|van|shelf|stock) /,
);
/** What was fitted, where no rule has a name for it: "new spring in the door". */
const FITTED = new Wording(
  /^ (?:and |put |put in |also |a |an |one )*(?:new|different|spare) (?:[a-z]+ )+(?:in|on|for|into|at|under) the /,
);
const MATTER = new Wording(
  new RegExp(
    ` (?:${DIRT.slice(1, -1)}|fins|ice(?! cream)|frost|oil|water|rust|corrosion|moisture|condensation|sweat|smoke|ant|ants|roach|roaches|mice|mouse|rat|rats|nest|cardboard|plastic|paper|trash|debris|airflow|air|noise|vibration|smell|leak|drip|puddle|gap|draft) `,
  ),
);
/** Guesses, conditions, plans, wishes and what ought to be: nobody saw or did them. */
const NOT_SO = new Wording(
  /^ (?:if|when|unless|since|while|until|till|once|maybe|probably|i think|i guess|i bet|i hope|i wish|hope|guess|think|figure|should|could|would|might|may|can|let|was it|was that|was this|was there|was anybody|were they|were you|what|where|how|which|why|who|is|are|am|has|have|did|does|do|will|any|give|tell me|not sure|no idea|i do not|i did not|do not|did not|never mind|like|my|your|last|used to|supposed|about to|going to|got to|need|needs|want|wanted|trying|i am|we are|i will|i have to|i was|we were|put (?:it|that|this|them|me|the box|the boxes)|move|that (?:is|was)|those are|these are|remind|left here|worked on|got (?:a|an|to|my|it|him|her)) /,
);
const UNSURE = new Wording(/ (?:could|can|somebody|someone|phone|my|office|either|wrong) /);
/** Of all that may be told. */
const GUESSED = new Wording(
  / (?:i think|i guess|i believe|maybe|might|probably|should|would|could be|could have|supposed|going to(?! (?:the|a|that|this) )|got to be|must be|if|or something|lunch|coffee|truck|van|home|traffic|pretty sure|nice|beautiful|cup|bucks|dollars|dollar|can be|can get|can do) /,
);

/** What was told of the job and no rule reads, a clause at a time: word for word, without numbers, which are asked about. */
export function keptWords(
  parse: Kept,
  asked: readonly TokenRange[] = NO_STRETCH,
): readonly string[] {
  const kept = keptStretches(parse).filter((each) => isUnread(each, asked));
  if (kept.length === 0) return NOTHING;
  const { text, tokens } = parse.sentence;
  return kept.map(({ start, end }) => text.slice(tokens[start]?.start, tokens[end - 1]?.end));
}

/** What is to be known of a sentence: what was read of it, and the numbers that count things. */
export interface Kept {
  readonly sentence: Sentence;
  readonly items: readonly Item[];
  readonly counted: readonly Span[];
}

/** Where the words stand that are kept. */
export function keptStretches(all: Kept): readonly TokenRange[] {
  const { tokens } = all.sentence;
  const parse = withoutPassing(all);
  const sections: Section[] = [];
  for (let start = 0; start < tokens.length;) {
    const section = { start, end: pauseAfter(tokens, start) };
    const told = keptOf(parse, section, sections.at(-1) ?? null);
    sections.push({ ...section, told, isFree: () => isFree(parse, section) });
    start = section.end;
  }
  return sections.length === 1 ? (sections[0]?.told ?? NO_STRETCH) : joinedTold(tokens, sections);
}

/** Whether it may be told beside what is kept: nothing of it was read, is asked or only supposed. */
function isFree({ sentence, items, counted }: Kept, section: TokenRange): boolean {
  const { tokens } = sentence;
  if (!isUnread(section, items) || hasOpenNumber(tokens, section, counted)) return false;
  return !isNotTold(tokens, section);
}

/** "Relay clicks but no voltage comes out", "two wires off the block": a "no" or a count is talk by itself, and part of what is told around it. */
function withoutPassing(all: Kept): Kept {
  const passing = all.items.filter(isPassing);
  if (passing.length === 0) return all;
  const counts = passing.map(({ start, end }) => ({ from: start, to: end }));
  return {
    sentence: all.sentence,
    items: all.items.filter((item) => !isPassing(item)),
    counted: [...all.counted, ...counts],
  };
}

const isToldOf = ({ meaning }: Item): boolean => !isOfTalk(meaning);

const isPassing = ({ start, end, meaning }: Item): boolean =>
  end - start <= LONGEST_PASSING && (meaning.correction === true || isOfTalk(meaning));
const LONGEST_PASSING = 4;

const NOTHING: readonly string[] = [];
const NO_STRETCH: readonly TokenRange[] = [];

/** Asked, supposed or guessed, and what stands behind it may belong to it. */
function isNotTold(tokens: readonly Token[], section: TokenRange): boolean {
  const clause = new Clause(tokens, behindLeads(tokens, section), section.end);
  return NOT_SO.isIn(clause) || UNSURE.isIn(clause) || GUESSED.isIn(clause);
}

/** From one pause to the next; "moved the bulb and insulated it" is told whole. */
function keptOf(
  parse: Kept,
  section: TokenRange,
  before: TokenRange | null,
): readonly TokenRange[] {
  const { sentence, items, counted } = parse;
  const { tokens } = sentence;
  let told: TokenRange[] | null = null;
  let isAsked = false;
  for (let { start } = section; start < section.end;) {
    const clause = { start, end: clauseEnd(tokens, { start, end: section.end }) };
    for (const left of unreadOf(tokens, clause, items)) {
      isAsked ||= left.end - left.start === section.end - section.start;
      if (isOfTheJob(parse, left, before)) {
        told ??= [];
        told.push({ start: behindLeads(tokens, left), end: left.end });
      }
    }
    start = clause.end;
  }
  if (told === null) {
    if (isAsked || !isUnread(section, items)) return NO_STRETCH;
    return isOfTheJob(parse, section, before) ? [section] : NO_STRETCH;
  }
  const isWhole = isUnread(section, items) && !hasOpenNumber(tokens, section, counted);
  return isWhole ? [section] : told;
}

/**
 * What nobody read of a clause: all of it, or what stands before or behind what was read and says something by itself:
 * "foamed the condenser | and rinsed it", but not "melted the ice | with warm water".
 */
function unreadOf(
  tokens: readonly Token[],
  clause: TokenRange,
  items: readonly Item[],
): readonly TokenRange[] {
  if (isUnread(clause, items)) return [clause];
  const within = items.filter(({ start, end }) => start < clause.end && end > clause.start);
  const [first, last] = [within[0], within.at(-1)];
  if (first === undefined || last === undefined) return NO_STRETCH;
  const ahead = { start: clause.start, end: first.start };
  const behind = { start: last.end, end: clause.end };
  return [ahead, behind].filter(
    ({ start, end }) => end - start > 2 && begins(tokens[start === ahead.start ? end : start]),
  );
}

/** Whether something of its own begins there. */
const begins = (token: Token | undefined): boolean =>
  token !== undefined && (JOINS.has(token) || SUBJECTS.has(token));

const JOINS = new WordSet('and but so then because while');
const SUBJECTS = new WordSet('i we it he she they the now there that');

function clauseEnd(tokens: readonly Token[], { start, end }: TokenRange): number {
  for (let at = start + 1; at < end; at += 1) {
    const [join, subject] = [tokens[at], tokens[at + 1]];
    if (join === undefined || subject === undefined) break;
    if (JOINS.has(join) && SUBJECTS.has(subject)) return at;
  }
  return end;
}

function isOfTheJob(parse: Kept, { start, end }: TokenRange, before: TokenRange | null): boolean {
  const { sentence, counted } = parse;
  const { tokens } = sentence;
  const from = behindLeads(tokens, { start, end });
  const told = { start: from, end };
  if (!saysTwoWords(tokens, told) || hasOpenNumber(tokens, told, counted)) return false;
  const clause = new Clause(tokens, from, end);
  if (isAdvised(tokens, told) || TOLD_THEM.isIn(clause)) return true;
  if (WILL_NOT.isIn(clause) || IT_DOES.isIn(clause) || HELD_TO.isIn(clause)) return true;
  if (OFF_THE_TRUCK.isIn(clause) && namesPart(sentence, clause)) return true;
  if (ADVISED.isIn(clause)) return isJobTalk(tokens, told);
  if (NOT_SO.isIn(clause) || GUESSED.isIn(clause)) return false;
  if (FAULTY.isIn(clause) && !OF_PEOPLE.isIn(clause)) return true;
  if (!UNSURE.isIn(clause)) {
    if (DID.isIn(clause)) return clause.end - clause.start > 2;
    if (isKnownTalk(sentence, clause) && !hasNumber(tokens, told)) return true;
  }
  if (NO_TELLING.isIn(clause) || !isJobTalk(tokens, told)) return false;
  return before === null || !isLeftOpen(parse, before);
}

/** Nothing was read of it, and what it supposes or asks may go on behind it. */
const isLeftOpen = ({ sentence, items }: Kept, section: TokenRange): boolean =>
  isUnread(section, items.filter(isToldOf)) && isNotTold(sentence.tokens, section);

/** By the words that tell of parts, and of what hands did. */
function isKnownTalk(sentence: Sentence, clause: Clause): boolean {
  if (OF_THE_UNIT.isIn(clause)) return clause.end - clause.start > 2;
  if (MATTER.isIn(clause)) return true;
  return (
    (TELLS.isIn(clause) || FOUND.isIn(clause) || FITTED.isIn(clause)) && namesPart(sentence, clause)
  );
}

/** Advice of what no rule has: "recommend a dedicated circuit". */
const ADVISED = new Wording(
  /^ (?:(?:i would |i |we |would )?(?:recommend|recommending|recommended|suggest|suggesting|suggested|advise|advised|quote|consider|best to|time for)|(?:you|they|we|she|customer|owner) (?:should|ought to|need to|want to|had better|might want to) (?:probably |really |maybe |just )?(?:replace|change|get|put|swap|clean|have|fix|budget|plan|order|install|fit|add|move|keep|run)|(?:ought to|should|would|want to|need to) (?:probably |really |sure )?(?:replace|change|get|swap|fix|budget|order|install|fit)|i would (?:sure |really |probably |definitely )?(?:replace|change|get|swap|clean|fix|budget|order|install|fit|add|put)) /,
);

/** What is so is broken, whatever it is. */
const FAULTY = new Wording(
  / (?:is|are|was|were|got) (?:all |really |badly |pretty |half |just )?(?:kinked|cracked|bent|broken|torn|chafed|rubbed through|wired wrong|miswired|corroded|rusted|rusted out|rusted through|frayed|pinched|crushed|dented|warped|rotted|rotted out|snapped|stripped|seized|worn out|split|busted|melted|chewed|chewed up) /,
);

const OF_PEOPLE = new Wording(
  / (?:he|she|i|we|you|my|his|her|your|guy|wife|kid|kids|road|street|game) /,
);

/** Orders, what was meant by a name before, and what asks. */
const NO_TELLING = new Wording(
  /^ (?:do|does|did|shall|not|take|charge|replace|get|hold|hand|bring|keep|watch|check|look|listen|wait|grab|find|read|show|start|stop|call|make|turn|close|open|shut|leave|add|try|hook|hang|come|go|ohmed|metered) /,
);

const LEADS = new WordSet(
  'and but so then well yeah ok oh also plus now alright because wow man okay right hey look',
);

function behindLeads(tokens: readonly Token[], { start, end }: TokenRange): number {
  for (let at = start; at < end; at += 1) {
    const token = tokens[at];
    if (token !== undefined && !LEADS.has(token)) return at;
  }
  return end;
}

const NUMBERS = new WordSet([
  ...ONES,
  ...TEENS,
  ...TENS,
  ...['zero', 'hundred', 'half', 'thousand', 'million', 'dozen'],
]);

function hasNumber(tokens: readonly Token[], { start, end }: TokenRange): boolean {
  for (let at = start; at < end; at += 1) {
    const token = tokens[at];
    if (token === undefined || pointsAt(tokens, at)) continue;
    if (token.value !== null || NUMBERS.has(token)) return true;
  }
  return false;
}

/** "Put a new one in", "it's a mechanical one", "the bottom half of the coil": no number. */
const pointsAt = (tokens: readonly Token[], at: number): boolean =>
  (tokens[at]?.text === 'one' && NEW.hasAny(tokens, Math.max(at - 1, 0), at)) ||
  (tokens[at]?.text === 'one' && isOneOfAKind(tokens, at + 1)) ||
  (tokens[at]?.text === 'half' && ENDS.hasAny(tokens, Math.max(at - 1, 0), at));
const ENDS = new WordSet('top bottom left right upper lower front back other first last');
const NEW = new WordSet('new another different');

/** Whether a number stands there that is asked about: what only counts things is kept with its words. */
function hasOpenNumber(
  tokens: readonly Token[],
  { start, end }: TokenRange,
  counted: readonly Span[],
): boolean {
  if (!hasNumber(tokens, { start, end })) return false;
  for (let at = start; at < end; at += 1) {
    const isCounted = counted.some(({ from, to }) => from <= at && at < to);
    if (!isCounted && hasNumber(tokens, { start: at, end: at + 1 })) return true;
  }
  return false;
}

function namesPart({ matcher }: Sentence, { start, end }: TokenRange): boolean {
  if (PARTS === null) return false;
  for (let at = start; at < end; at += 1) {
    for (const match of matcher.run(PARTS, at)) if (match.end <= end) return true;
  }
  return false;
}
