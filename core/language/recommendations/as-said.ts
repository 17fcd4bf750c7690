import type { Token } from '../../grammar/tokens.ts';
import type { Recommendation } from '../utterance.ts';
import { Clause, type TokenRange, Wording } from '../words/clause.ts';
import { KEPT } from '../words/food-words.ts';
import { isJobTalk } from '../words/job-words.ts';
import { WordSet } from '../words/word-set.ts';

const LIGHTLY = '(?:probably |really |also |just |definitely |please |maybe )*';
const THEM =
  '(?:they|you|you guys|you all|he|she|somebody|someone|(?:the |their )?(?:customer|owner|manager|landlord|staff|crew|kitchen|chef|cooks|store|electrician|plumber|roofer|contractor|installer))';
/** "Needs this cleaned every spring" */
const DONE_TO_IT =
  '(?:this|that|it|these|those|them|(?:the|their|his|her) (?:[a-z]+ ){1,2})(?: ?[a-z]+ed|done|cut|rebuilt)\\b';
const OUGHT = `(?:should|oughta|ought to|need to|needs to|have to|has to|have got to|has got to|gotta|(?<!you )got to|(?:'ll|will|are going to|gonna|are gonna|is gonna|'re gonna) (?:have|need) to|'ve got to|'ve gotta|'s got to|'s gotta|needs?(?= ${DONE_TO_IT})|must|had better|better|will want to|might want to|want to)`;

/** Who is to do it, up to what is to be done. */
const ADVISES = new RegExp(
  `^(?:(?:and|but|so|then|also) )*(?:${THEM}(?: ${LIGHTLY})?${OUGHT} |(?:(?:i )?told|tell|remind|reminded|have|advised|get) (?:them|him|her|(?:customer|owner|manager|staff)|the [a-z]+) (?:that )?(?:to |(?:they|he|she) ?${OUGHT} )?` +
    "|(?:i |we )?(?:just |also |already )?said (?=(?:not )?to |do not |don't )" +
    `|(?:i |we )?(?:would )?(?:recommend|recommended|suggest|suggested) (?:that )?(?:they |them |he |she |you )?(?:should |to )?)${LIGHTLY}`,
  'i',
);
/** What somebody does to a thing, and no state, feeling or errand. */
const DOES =
  /^(?:not (?:to )?)?(?:come (?:back|out)|get|buy|install|put|fit|add|keep|move|clean|clear|dump|throw|toss|discard|pitch|replace|change|swap|fix|repair|seal|close|shut|leave|stop|quit|check|call|turn|lower|raise|defrost|thaw|unload|load|stock|order|budget|insulate|reroute|run|use|wipe|wash|hose|sweep|mop|lock|cover|rotate|hang|mount|level|schedule|talk|speak|ask|make|empty|dispose|plug|unplug|watch|stay|wait|pay|hire|invest|see|trim|remove|take|pull|open|reset|write|log|record|post|label|block|pile|stack|store|spread|cool|a|an|some|new|another|[a-z]+s(?= (?:on|for|in|at) (?:the|both|all|each|a) )|replacing|moving|adding|getting|keeping|installing|insulating|cleaning|having|have (?:a|an|the|them|him|her|it|their|somebody|someone|that)(?= .*(?:[a-z]ed|look|check|done|cut|put|run)(?: |$))) /i;

const STARTS_DONE = new RegExp(`^${DONE_TO_IT}`, 'i');

/** Of these nobody but us speaks beside a box that is kept cold. */
const AROUND = new WordSet(
  'tub tubs box boxes sweep curtain curtains shelf shelves shelving rack racks lid lids door doors latch closer stock circuit outlet ' +
    'electrician plumber landlord roofer roof vent hood screen filter filters mat gasket gaskets seal weatherstrip insulation cardboard ' +
    'milk cream meat chicken fish product food tray trays pan pans drawer drawers canopy fence cage awning thermometer alarm drain drains grille grilles grill unit units cooler freezer box condenser coil door health inspector inspection inventory power electric electrical',
);

const ADVISED = new Wording(
  new RegExp(
    ` (?:they|you|he|she|somebody|someone|customer|owner|manager|landlord|staff|crew|kitchen|chef|cooks|store|electrician|plumber|roofer|contractor|installer|told|tell|remind|reminded|have|advised|get|recommend|recommended|suggest|suggested) `,
  ),
);

/** "Somebody needs to come back and do that" */
const COMES = new Wording(
  / (?:need|needs|has|have|got) to come (?:back|out) (?:out |here |over )?(?:and|to) /,
);

/** What somebody is advised to do to something that no rule knows: told in his words, and said of a job like ours. */
export function isAdvised(tokens: readonly Token[], { start, end }: TokenRange): boolean {
  const clause = new Clause(tokens, start, end);
  if (!ADVISED.isIn(clause)) return false;
  const isOfTheJob = clause.holds(AROUND) || isJobTalk(tokens, clause) || COMES.isIn(clause);
  return isOfTheJob && adviceIn(clause.words.trim()) !== null;
}

/** "Dump it", "throw them out": of what, only the sentence before tells. */
const OF_FOOD =
  /^(?:not (?:to )?)?(?:dump|throw|toss|discard|pitch|use) (?:it|them|that|those|all of it)\b/i;
/** What was said of the food is told of the food, and is no work on the unit. */
const TOLD = /\b(?:told|tell|advised|remind(?:ed)?) /i;
const FOODS = new RegExp(`\\b(?:${KEPT.slice(1, -1).replaceAll(/ ?\[.*?\]/g, '')})\\b`, 'i');

/** The recommendation that words are which no rule reads; `null` where they advise nothing. */
export function adviceIn(words: string): Recommendation | null {
  const [lead = ''] = ADVISES.exec(words) ?? [];
  const told = words.slice(lead.length);
  const isDoneToIt = STARTS_DONE.test(told);
  if (lead === '' || !(isDoneToIt || DOES.test(told)) || OF_FOOD.test(told)) return null;
  if (TOLD.test(lead) && FOODS.test(told)) return null;
  const [, what = told, reason] = WITH_REASON.exec(told) ?? [];
  const called = isDoneToIt ? `have ${what}` : what.replace(/^(?:not to|not) /i, 'do not ');
  return { do: 'asSaid', part: null, called, ...(reason === undefined ? {} : { reason }), words };
}

/** "Keep boxes off the condenser it can't breathe": why, which runs on; behind "that" and "if" it is what is to be seen to. */
const WITH_REASON =
  /^(.+?(?<! (?:that|if|when|until|till|'?til|so|while|before|after|how|where|what|why|sure|and|or|like|whether|as|once|unless))),? ((?:because|since) .+|(?:it|they)(?:'s|'re| is| are| was| were| has| have| keeps?| can't| cannot| can not| won't| will not| doesn't| don't| does not| do not| gets?) .+)$/i;
