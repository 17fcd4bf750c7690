import type { VisitState } from '../visit/state.ts';
import { jobMemos } from './complaint.ts';
import { HANDS_MADE } from '../terms/hand-work.ts';
import { sentence } from './wording.ts';

type Memos = ReturnType<typeof jobMemos>;

/** What was told of the job in a sentence: a thing named and nothing told of it was neither found nor left so. */
export const jobRemarks = (state: VisitState): Memos =>
  jobMemos(state).filter((entry) => !isAsked(entry) && !isScrap(entry) && !isDoing(entry));

/** "Brazed it in with nitrogen": what was done, in the words that it was told in. */
export const doneAsSaid = (state: VisitState): Memos =>
  jobMemos(state).filter((entry) => !isAsked(entry) && isDoing(entry));

/** What hands make of a unit, as it is told of oneself. */
const DOING = new RegExp(
  '^(?:(?:i|we|and|then|also|just|already|finally|so|ok|okay|ended up|went ahead and|had to) )*' +
    `(?:${HANDS_MADE}|wired|hung|purged|flowing|flowed|weighed|combed|labeled|tagged|hooked|reassembled|plugged|tied|ran (?:a |some )?new) ` +
    '(?!itself|off|out of)',
  'i',
);

const isDoing = ({ memo, remark }: Memos[number]): boolean =>
  remark === true && DOING.test(memo.trim());

/** "New filter drier": that it was said is all that is known of it. */
export const asSaidLines = (state: VisitState): readonly string[] => [
  ...new Set(
    jobMemos(state)
      .filter((entry) => !isAsked(entry) && isScrap(entry))
      .map(({ memo }) => sentence(memo)),
  ),
];

const LEADS = '(?:(?:so|and|but|ok|okay|well|hey|then) )*';
const PRONOUN = '(?:i|we|you|it|this|that|they|there|he|she|these|those|anybody|anyone)';
const ASKS = new RegExp(
  `^${LEADS}(?:(?:should|shall|do|does|did|is|are|am|was|were|can|could|would|will|may|must) ${PRONOUN}` +
    '|(?:is|are|was|were|does|did|can|could|should|would) (?:the|my|a|an)' +
    `|(?:what|why|how|where|when|which|who) (?:do|does|did|should|would|could|can|will|is|are) ${PRONOUN})\\b`,
  'i',
);

/** A memo that was dictated holds whatever it holds. */
const isAsked = ({ memo, remark }: Memos[number]): boolean =>
  remark === true && (ASKS.test(memo.trim()) || memo.trim().endsWith('?'));

/** More than a name of something and where it goes are hardly ever without a verb. */
const MOST_WORDS = 5;

function isScrap({ memo, remark }: Memos[number]): boolean {
  const told = memo.trim();
  if (remark !== true) return false;
  if (UNDER_WAY.test(told)) return true;
  if (told.split(/\s+/).length > MOST_WORDS) return false;
  return NAMES.test(told) && !TELLS.test(told);
}

/** Begun and not over: what came of it is told by what is read. */
const UNDER_WAY =
  /^(?:\w+ ){0,5}vacuum(?: pump)?(?:'s| is| has been)?(?: now)?(?: on| running| going)?(?: now)?$/i;

/** Something new, old or counted: "no leak" and "all good" say how it is. */
const NAMES =
  /^(?:(?:and|also|plus|then) )*(?:(?:a|an|the|one|two|three|some|another) )*(?:new|old|different|spare|used|rebuilt|bigger|smaller|original|aftermarket|universal|[a-z]+ style)\b/i;

/** Whatever was done or stood so ends in one of these, or is one of them. */
const TELLS =
  /\b(?:\w+(?:ed|ing)|is|are|was|were|be|been|has|have|had|\w+'(?:s|re|ve|d|ll)|\w+n't|does|did|will|would|can|could|should|must|went|came|put|got|took|cut|made|ran|fit|fits|works|looks|sounds|runs|turns|leaks|drips|needs|keeps|goes|comes|hit|hits|broke|broken|bent|worn|torn|stuck|shut|set|left|held|holds|good|bad|ok|okay|fine|tight|loose|clean|dirty|full|empty|dry|wet|warm|cold|hot|frozen|in|on)\b/i;
