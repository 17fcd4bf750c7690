import type { Token } from '../grammar/tokens.ts';
import { Clause, isUnread, pauseAfter, type Stretch, Wording } from './clause.ts';
import { HOLES } from './holes.ts';
import { ONES, TEENS, TENS } from './number-words.ts';
import { GRAMMAR, type Sentence } from './sentence.ts';
import { FILLERS } from './fillers.ts';
import { DIRT } from './vocabulary/state-names.ts';
import { WordSet } from './word-set.ts';

const PART = HOLES['part'];
const PARTS = PART === undefined ? null : GRAMMAR.compile(PART);

/** Which tells of a part, or of the unit. */
const TELLS = new Wording(
  / (?:is|are|was|were|has|have|had|look|looks|sound|sounds|smell|smells|feel|feels|keep|keeps|will not|does not|did not|would not|went|came|started|stopped|quit|seems|hit|hits|hitting|rub|rubs|rubbing|drip|drips|leak|leaks|run|runs|barely|hardly|never|work|works|turn|turns|comes|goes|trips|needed|took) /,
);
const OF_THE_UNIT = new Wording(
  /^ (?:it|she|this thing|this one|(?:the |this )?(?:unit|box|cooler|freezer|case|machine|system|walk in|reach in)) (?:has not|has never|never|does not|did not|will not|keeps|kept|would not|has been|had been|was|were|just|finally|started|starts|stopped|quit|runs|ran|went|came|sounds|smells|looks) /,
);
/** What hands do on a job. */
const DID = new Wording(
  /^ (?:i |we |and |then |also |just |already |finally |went ahead and )*(?:straightened|taped|zip tied|strapped|moved|shimmed|leveled|swept|mopped|rewired|rerouted|insulated|greased|oiled|lubed|sanded|filed|dressed|cleaned|wiped|scraped|chipped|thawed|steamed|unplugged|plugged|cut|bent|drilled|bolted|screwed|mounted|hung|rehung|relocated|raised|lowered|shortened|extended|capped|sealed|caulked|painted|labeled|tagged|marked|photographed|took (?:a )?(?:picture|pictures|photo|photos)|bagged|checked|rechecked|double checked|inspected|verified|confirmed|tested|tried|showed|walked|emptied|dumped|drained|flushed|blew|vacuumed|brushed|washed|rinsed|hosed|sprayed|treated|tightened|loosened|adjusted|swapped|changed|replaced|fixed|repaired|patched|soldered|brazed|welded|crimped|spliced|reset|programmed|cleared|removed|pulled|reinstalled|installed|put|pushed|pried|knocked|tapped|freed|spun|worked|set|turned|propped|shut|closed|opened|disconnected|reconnected|locked|unlocked|threw|rigged|reused|saved|kept|left) /,
);
const FOUND = new Wording(
  /^ (?:i |we |just |also |and )*(?:found|noticed|saw|see|can see|could see|spotted|heard|can hear|hear|smelled|smell|felt|there is|there was|there are|got|it has|it had) /,
);
const MATTER = new Wording(
  new RegExp(
    ` (?:${DIRT.slice(1, -1)}|ice(?! cream)|frost|oil|water|rust|corrosion|moisture|condensation|sweat|smoke|ant|ants|roach|roaches|mice|mouse|rat|rats|nest|cardboard|plastic|paper|trash|debris|airflow|air|noise|vibration|smell|leak|drip|puddle|gap|draft) `,
  ),
);
/** Guesses, conditions, plans, wishes and what ought to be: nobody saw or did them. */
const NOT_SO = new Wording(
  /^ (?:if|when|unless|maybe|probably|i think|i guess|i bet|i hope|i wish|hope|guess|think|figure|should|could|would|might|may|can|let|what|where|how|which|why|who|is|are|am|has|have|did|does|do|will|any|give|tell me|not sure|no idea|i do not|i did not|do not|did not|never mind|like|my|your|last|used to|supposed|about to|going to|got to|need|needs|want|wanted|trying|i am|we are|i will|i have to|i was|we were|put (?:it|that|this|them|me|the box|the boxes)|move|that (?:is|was)|those are|these are|remind|left here|worked on|got (?:a|an|to|my|it|him|her)) /,
);
const UNSURE = new Wording(
  / (?:i think|i guess|i believe|maybe|might|probably|should|could|would|supposed|going to|if|or something|somebody|someone|lunch|coffee|truck|van|home|phone|traffic|my|office|either|pretty sure|wrong|can|nice|beautiful) /,
);

/** What was told of the job and no rule reads, a clause at a time: word for word, without numbers, which are asked about. */
export function keptWords(sentence: Sentence, read: readonly Stretch[]): readonly string[] {
  const { text, tokens } = sentence;
  let kept: string[] | null = null;
  for (let start = 0; start < tokens.length;) {
    const section = { start, end: pauseAfter(tokens, start) };
    for (const each of keptOf(sentence, section, read)) {
      kept ??= [];
      kept.push(text.slice(tokens[each.start]?.start, tokens[each.end - 1]?.end));
    }
    start = section.end;
  }
  return kept ?? NOTHING;
}

const NOTHING: readonly string[] = [];
const NO_STRETCH: readonly Stretch[] = [];

/** From one pause to the next; "moved the bulb and insulated it" is told whole. */
function keptOf(
  sentence: Sentence,
  section: Stretch,
  read: readonly Stretch[],
): readonly Stretch[] {
  const { tokens } = sentence;
  let told: Stretch[] | null = null;
  for (let { start } = section; start < section.end;) {
    const clause = { start, end: clauseEnd(tokens, { start, end: section.end }) };
    if (isUnread(clause, read) && isOfTheJob(sentence, clause)) {
      told ??= [];
      told.push(clause);
    }
    start = clause.end;
  }
  if (told === null) return NO_STRETCH;
  const isWhole = isUnread(section, read) && !hasNumber(tokens, section);
  return isWhole ? [section] : told;
}

const JOINS = new WordSet('and but so then because while');
const SUBJECTS = new WordSet('i we it he she they the now there that');

function clauseEnd(tokens: readonly Token[], { start, end }: Stretch): number {
  for (let at = start + 1; at < end; at += 1) {
    const [join, subject] = [tokens[at], tokens[at + 1]];
    if (join === undefined || subject === undefined) break;
    if (JOINS.has(join) && SUBJECTS.has(subject)) return at;
  }
  return end;
}

function isOfTheJob(sentence: Sentence, { start, end }: Stretch): boolean {
  const { tokens } = sentence;
  const from = behindLeads(tokens, { start, end });
  if (!saysTwoWords(tokens, { start: from, end }) || hasNumber(tokens, { start: from, end })) {
    return false;
  }
  const clause = new Clause(tokens, from, end);
  if (NOT_SO.isIn(clause) || UNSURE.isIn(clause)) return false;
  if (DID.isIn(clause) || OF_THE_UNIT.isIn(clause)) return end - from > 2;
  if (MATTER.isIn(clause)) return true;
  return (TELLS.isIn(clause) || FOUND.isIn(clause)) && namesPart(sentence, clause);
}

const LEADS = new WordSet(
  'and but so then well yeah ok oh also plus now alright because wow man okay right hey look',
);

function behindLeads(tokens: readonly Token[], { start, end }: Stretch): number {
  for (let at = start; at < end; at += 1) {
    const token = tokens[at];
    if (token !== undefined && !LEADS.has(token)) return at;
  }
  return end;
}

/** Two that are no fillers. */
function saysTwoWords(tokens: readonly Token[], { start, end }: Stretch): boolean {
  let count = 0;
  for (let at = start; at < end && count < 2; at += 1) {
    const token = tokens[at];
    if (token !== undefined && !FILLERS.has(token)) count += 1;
  }
  return count === 2;
}

const NUMBERS = new WordSet([
  ...ONES,
  ...TEENS,
  ...TENS,
  ...['zero', 'hundred', 'half', 'thousand', 'million', 'dozen'],
]);

function hasNumber(tokens: readonly Token[], { start, end }: Stretch): boolean {
  for (let at = start; at < end; at += 1) {
    const token = tokens[at];
    if (token !== undefined && (token.value !== null || NUMBERS.has(token))) return true;
  }
  return false;
}

function namesPart({ matcher }: Sentence, { start, end }: Stretch): boolean {
  if (PARTS === null) return false;
  for (let at = start; at < end; at += 1) {
    for (const match of matcher.run(PARTS, at)) if (match.end <= end) return true;
  }
  return false;
}
