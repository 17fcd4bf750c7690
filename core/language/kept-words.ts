import { Grammar } from '../grammar/compile.ts';
import { Matcher } from '../grammar/match.ts';
import type { Token } from '../grammar/tokens.ts';
import { HOLES } from './holes.ts';
import { ONES, TEENS, TENS } from './number-words.ts';
import type { Said } from './questions/by-cue.ts';
import { FILLERS } from './talk.ts';
import { DIRT } from './vocabulary/state-names.ts';

interface Stretch {
  readonly start: number;
  readonly end: number;
}

const GRAMMAR = new Grammar();
const PART = HOLES['part'];
const PARTS = PART === undefined ? null : GRAMMAR.compile(PART);

/** Which tells of a part, or of the unit. */
const TELLS =
  / (?:is|are|was|were|has|have|had|looks?|sounds?|smells?|feels?|keeps?|will not|does not|did not|would not|went|came|started|stopped|quit|seems|hits?|hitting|rubs?|rubbing|drips?|leaks?|runs?|barely|hardly|never|works?|turns?|comes|goes|trips|needed|took) /;
const OF_THE_UNIT =
  /^ (?:it|she|this thing|this one|(?:the |this )?(?:unit|box|cooler|freezer|case|machine|system|walk in|reach in)) (?:has not|has never|never|does not|did not|will not|keeps|kept|would not|has been|had been|was|were|just|finally|started|starts|stopped|quit|runs|ran|went|came|sounds|smells|looks) /;
/** What hands do on a job. */
const DID =
  / ?(?:i |we |and |then |also |just |already |finally |went ahead and )*(?:straightened|taped|zip tied|strapped|moved|shimmed|leveled|swept|mopped|rewired|rerouted|insulated|greased|oiled|lubed|sanded|filed|dressed|cleaned|wiped|scraped|chipped|thawed|steamed|unplugged|plugged|cut|bent|drilled|bolted|screwed|mounted|hung|rehung|relocated|raised|lowered|shortened|extended|capped|sealed|caulked|painted|labeled|tagged|marked|photographed|took (?:a )?(?:picture|pictures|photo|photos)|bagged|checked|rechecked|double checked|inspected|verified|confirmed|tested|tried|showed|walked|emptied|dumped|drained|flushed|blew|vacuumed|brushed|washed|rinsed|hosed|sprayed|treated|tightened|loosened|adjusted|swapped|changed|replaced|fixed|repaired|patched|soldered|brazed|welded|crimped|spliced|reset|programmed|cleared|removed|pulled|reinstalled|installed|put|pushed|pried|knocked|tapped|freed|spun|worked|set|turned|propped|shut|closed|opened|disconnected|reconnected|locked|unlocked|threw|rigged|reused|saved|kept|left) /;
const FOUND =
  /^ (?:i |we |just |also |and )*(?:found|noticed|saw|see|can see|could see|spotted|heard|can hear|hear|smelled|smell|felt|there is|there was|there are|got|it has|it had) /;
const MATTER = new RegExp(
  ` (?:${DIRT.slice(1, -1)}|ice(?! cream)|frost|oil|water|rust|corrosion|moisture|condensation|sweat|smoke|ants?|roach(?:es)?|mice|mouse|rats?|nest|cardboard|plastic|paper|trash|debris|airflow|air|noise|vibration|smell|leak|drip|puddle|gap|draft) `,
);
/** Guesses, conditions, plans, wishes and what ought to be: nobody saw or did them. */
const NOT_SO =
  /^ (?:if|when|unless|maybe|probably|i think|i guess|i bet|i hope|i wish|hope|guess|think|figure|should|could|would|might|may|can|let|what|where|how|which|why|who|is|are|am|has|have|did|does|do|will|any|give|tell me|not sure|no idea|i do not|i did not|do not|did not|never mind|like|my|your|last|used to|supposed|about to|going to|got to|need|needs|want|wanted|trying|i am|we are|i will|i have to|i was|we were|put (?:it|that|this|them|me|the box|the boxes)|move|that (?:is|was)|those are|these are|remind|left here|worked on|got (?:a|an|to|my|it|him|her)) /;
const UNSURE =
  / (?:i think|i guess|i believe|maybe|might|probably|should|could|would|supposed|going to|if|or something|somebody|someone|lunch|coffee|truck|van|home|phone|traffic|my|office|either|pretty sure|wrong|can|nice|beautiful) /;

/** What was told of the job and no rule reads, a clause at a time: word for word, without numbers, which are asked about. */
export function keptWords({ text, tokens }: Said, read: readonly Stretch[]): readonly string[] {
  const [only] = read;
  if (read.length === 1 && only?.start === 0 && only.end === tokens.length) return NOTHING;
  const isUnread = ({ start, end }: Stretch): boolean =>
    !read.some((each) => each.start < end && each.end > start);
  const tells = ({ start, end }: Stretch): boolean => isOfTheJob(tokens.slice(start, end));
  const kept = sectionsOf(tokens).flatMap((section) => {
    const clauses = clausesOf(tokens, section).filter(isUnread);
    if (!clauses.some(tells)) return [];
    // "Moved the bulb and insulated it" is told whole.
    const isWhole = isUnread(section) && !tokens.slice(section.start, section.end).some(isNumber);
    return isWhole ? [section] : clauses.filter(tells);
  });
  return kept.map(({ start, end }) => text.slice(tokens[start]?.start, tokens[end - 1]?.end));
}

const NOTHING: readonly string[] = [];

const JOINS: ReadonlySet<string> = new Set(['and', 'but', 'so', 'then', 'because', 'while']);
const SUBJECTS: ReadonlySet<string> = new Set([
  'i',
  'we',
  'it',
  'he',
  'she',
  'they',
  'the',
  'now',
  'there',
  'that',
]);

/** From pause to pause. */
const sectionsOf = (tokens: readonly Token[]): readonly Stretch[] =>
  stretchesFrom(
    tokens.flatMap(({ pause }, at) => (at === 0 || pause ? [at] : [])),
    tokens.length,
  );

function clausesOf(tokens: readonly Token[], { start, end }: Stretch): readonly Stretch[] {
  const begins = (at: number): boolean =>
    JOINS.has(tokens[at]?.text ?? '') && SUBJECTS.has(tokens[at + 1]?.text ?? '');
  const starts = tokens
    .slice(start, end)
    .flatMap((_, index) => (index === 0 || begins(start + index) ? [start + index] : []));
  return stretchesFrom(starts, end);
}

const stretchesFrom = (starts: readonly number[], last: number): readonly Stretch[] =>
  starts.map((start, index) => ({ start, end: starts[index + 1] ?? last }));

function isOfTheJob(clause: readonly Token[]): boolean {
  const first = clause.findIndex(({ text }) => !LEADS.has(text));
  const said = first === -1 ? [] : clause.slice(first);
  if (said.filter(({ text }) => !FILLERS.has(text)).length < 2 || said.some(isNumber)) return false;
  const words = ` ${said.map(({ text }) => text).join(' ')} `;
  if (NOT_SO.test(words) || UNSURE.test(words)) return false;
  if (DID.exec(words)?.index === 0 || OF_THE_UNIT.test(words)) return said.length > 2;
  const isThing = namesPart(said) || MATTER.test(words);
  return isThing && (TELLS.test(words) || FOUND.test(words) || MATTER.test(words));
}

const LEADS: ReadonlySet<string> = new Set(
  'and but so then well yeah ok oh also plus now alright because wow man okay right hey look'.split(
    ' ',
  ),
);
const NUMBERS: ReadonlySet<string> = new Set([
  ...ONES,
  ...TEENS,
  ...TENS,
  ...['zero', 'hundred', 'half', 'thousand', 'million', 'dozen'],
]);
const isNumber = ({ text, value }: Token): boolean => value !== null || NUMBERS.has(text);

function namesPart(tokens: readonly Token[]): boolean {
  if (PARTS === null) return false;
  const matcher = new Matcher(GRAMMAR, tokens);
  return tokens.some((_, at) => matcher.run(PARTS, at).length > 0);
}
