/** What takes back what was said before it. */
const TAKES_BACK =
  "no|nope|nah|wait|hold on|hang on|sorry|i am sorry|i'm sorry|oops|whoops|shoot|my bad|my mistake|actually|correction|" +
  'rather|or rather|i mean|i meant|i should say|i should have said|i misspoke|scratch that|strike that|take that back|' +
  "check that|better make (?:that|it)|let's make (?:that|it)|make (?:that|it)|(?:let's |let us |we'll |i'd |i'll )?call it|change (?:that|it) to";

/** What leads to the right value behind that, and takes nothing back by itself. */
const LEADS_ON =
  "(?:it|that|this|there|they)(?:'s|'re| is| are| was| were| reads| should be| should have been| should've been| takes| took)|" +
  '(?:i|we) (?:had|got|put|said|read|was here|were here|(?:was|were) on it|recovered|added|pulled|took)|' +
  'was|were|should be|should have been|more like|and|so|uh|um|er|oh';

const BREAK = String.raw`[\s,;:.!—–-]`;
const LEAD = new RegExp(`^${BREAK}*(?:(?:${TAKES_BACK}|${LEADS_ON})\\b${BREAK}*)+`, 'i');
const TAKEN_LEAD = new RegExp(`^${BREAK}*(?:(?:${TAKES_BACK})\\b${BREAK}*)+`, 'i');
const HAS_TAKEN = new RegExp(`\\b(?:${TAKES_BACK})\\b`, 'i');
/** "Eleven ounces, i mean", "eleven, not ten", "eleven in" */
const TRAIL = new RegExp(
  `(?:${BREAK}+(?:(i mean|i meant|sorry|(?:not|instead of|rather than|i said)\\b[^,.]*)|in|in it|out|there|now|actually|really|altogether|total|instead|at the time))+${BREAK}*$`,
  'i',
);

/** A bare "no" may also say that there is none: "no cap tube". "Sorry" and "wait" may lead to anything. */
export type Lead = 'sure' | 'unsure' | 'bareNo';

export interface Fragment {
  readonly words: string;
  readonly lead: Lead;
}

const BARE_NO = /^[^a-z]*no\s*$/i;
const UNSURE = /^[^a-z]*(?:(?:sorry|wait|actually|hold on|hang on|oops|rather|shoot)[^a-z]*)*$/i;

/** What is said instead of something that was said before it, and without the words that take that back. */
export function fragmentOf(text: string): Fragment | null {
  const lead = LEAD.exec(text)?.[0] ?? '';
  const rest = text.slice(lead.length);
  const trail = TRAIL.exec(rest);
  const isTaken = HAS_TAKEN.test(lead) || trail?.[1] !== undefined;
  const words = trail === null ? rest : rest.slice(0, trail.index);
  if (!isTaken || words === '') return null;
  return { words, lead: BARE_NO.test(lead) ? 'bareNo' : UNSURE.test(lead) ? 'unsure' : 'sure' };
}

/** The words that take something back, where a text begins with them. */
export const takenLeadOf = (text: string): string => TAKEN_LEAD.exec(text)?.[0] ?? '';

/** Where words inside a sentence take back what it said: the end of what was said, and where they begin. */
const INSIDE = new RegExp(`${BREAK}+(?=(?:${TAKES_BACK})\\b)`, 'gi');

export function placesTakenBack(text: string): readonly number[] {
  const places = [...text.matchAll(INSIDE)].map(({ index }) => index).filter((index) => index > 0);
  return places.slice(-MOST_PLACES);
}
/** Each is read with and without what stands behind it: who takes back more in one breath is asked. */
const MOST_PLACES = 8;

/** One glance, as most sentences take nothing back. */
const MAY_TAKE_BACK = new RegExp(
  `\\b(?:${TAKES_BACK}|not|never ?mind|forget|don't|i said|instead of)\\b`,
  'i',
);
export const mayTakeBack = (text: string): boolean => MAY_TAKE_BACK.test(text);
