import { workTodo } from '../replies/work-words.ts';
import { agreedBefore } from '../visit/agreed.ts';
import type { VisitState } from '../visit/state.ts';
import { isNewer } from '../visit/views.ts';
import { isOfTheUnit } from './of-the-unit.ts';
import { nameWritten, sentence, valueWritten } from './wording.ts';

/** What was told before anything was done is the complaint; what was told of numbers stands as hearsay. */
export function complaintLines(state: VisitState): readonly string[] {
  const complaint = complaintMemos(state);
  const told = complaint.map(({ memo }) => sentence(withoutCall(memo)));
  const said = [...saidByOthers(state), ...hearsayTold(state).filter(isNoneOf(complaint))];
  const hearsay = state.doubts
    .filter(({ doubt }) => doubt.why === 'hearsay' && !isToldWhole(doubt.words))
    .map(({ doubt }) =>
      sentence(`Reported, not measured: ${nameWritten(doubt)} ${valueWritten(doubt)}`),
    );
  const lines = [...told, ...cameToLines(state), ...said.map(toldLine), ...hearsay];
  return lines.length === 0 ? ['No complaint was recorded.'] : lines;
}

const cameToLines = (state: VisitState): readonly string[] =>
  agreedBefore(state).map(({ do: kind, part }) => sentence(`Came to ${workTodo(kind, part)}`));

const isNoneOf =
  (memos: readonly HearsayOrMemo[]) =>
  ({ id }: HearsayOrMemo): boolean =>
    !memos.some((memo) => memo.id === id);

type HearsayOrMemo = Pick<Memos[number], 'id' | 'at' | 'memo'>;

/**
 * "They say the lettuce is at forty eight": what others said with a number, whatever became of the number. That it is
 * asked about, confirmed or read anew by the technician makes it no less what was told.
 */
function hearsayTold({ history }: VisitState): readonly HearsayOrMemo[] {
  const gone = new Set(
    history.flatMap((event) => (event.type === 'entryTakenBack' ? [event.target] : [])),
  );
  return history.flatMap((event) => {
    if (event.type !== 'doubtRaised' || event.doubt.why !== 'hearsay' || gone.has(event.id)) {
      return [];
    }
    const { words } = event.doubt;
    return isToldWhole(words) ? [{ id: event.id, at: event.at, memo: words }] : [];
  });
}

/** Who said it, of what, and the number: less than that is a reading alone. */
const isToldWhole = (words: string): boolean => words.trim().split(/\s+/).length >= FEWEST_WORDS;
const FEWEST_WORDS = 4;

const CALL =
  /^(?:(?:they|she|he|we|(?:the )?(?:customer|owner|manager|store|kitchen))(?: were| was| got)? )?called (?:us )?(?:in |out )?(?:because|for|about|to say(?: that)?|saying(?: that)?) /i;

/** "They called because the walk in was warm": that they called is what a complaint is. */
export const withoutCall = (memo: string): string => memo.trim().replace(CALL, '');

/** "Customer says it was at fifty": told at any time, it was found by nobody. */
const SAID =
  /^(?:(?:and|so|but|well|yeah) )?(?:according to |(?:[\w']+ ){0,6}?(?:says?|said|told|tells|claims?|claimed|reports|reported|swears|thinks|thought|mentioned|complain(?:s|ed)|figures|states|stated|called (?:it|this) in|wrote)\b)/i;
/** Temperatures and pressures have two figures or more. */
const FIGURE =
  /\d|\b(?:zero|ten|eleven|twelve|\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred)\b/i;

/** What somebody else told behind the complaint. */
const saidByOthers = (state: VisitState): Memos => otherMemos(state).filter(isSaid);

const isSaid = ({ memo, remark }: Memos[number]): boolean =>
  remark === undefined && SAID.test(memo) && !PRODUCT.test(memo);

const toldLine = ({ memo }: HearsayOrMemo): string =>
  sentence(FIGURE.test(memo) ? `Reported, not measured: ${memo}` : memo);

type Memos = VisitState['memos'];

/** The first thing told that is no remark on the job itself, if it came before the first work. */
export function complaintMemos(state: VisitState): readonly HearsayOrMemo[] {
  const [firstWork] = state.work;
  const memos = state.memos.filter(
    ({ memo, remark }) => remark === undefined && !isOfTheUnit(memo),
  );
  const isOfTheTrade = ({ memo }: Memos[number], at: number): boolean =>
    OF_THE_TRADE.test(memo) ||
    (HE_SAYS.test(memo) && memos.slice(0, at).some((said) => OF_THE_TRADE.test(said.memo)));
  const theirs = memos.filter((said, at) => !isOfTheTrade(said, at) && !tellsNoTrouble(said.memo));
  return [...theirs, ...hearsayTold(state)]
    .toSorted((one, other) => (isNewer(state, one.id, other.id) ? 1 : -1))
    .slice(0, 1)
    .filter(({ at }) => firstWork === undefined || at <= firstWork.at);
}

/** What was told by whoever put it in or worked on it before is not why they called. */
const OF_THE_TRADE =
  /^(?:(?:and|so|but|well) )?(?:the |that |their |our )?(?:(?:installing |general |mechanical )?contractor|installer|electrician|plumber|builder|factory rep|(?:last|other|previous) (?:guy|tech|company|crew|mechanic|technician|outfit))\b.* (?:says?|said|swears|swore|claims|claimed|told|thinks|thought|wrote)\b/i;

/** "But he swears it's open", behind what the installer says. */
const HE_SAYS =
  /^(?:(?:and|but|so) )?(?:he|they) (?:says?|said|swears?|swore|claims?|told|thinks?)\b/i;

/** What a technician calls what is kept cold, and what becomes of it. */
const PRODUCT =
  /\b(product|food|stock|meat|fish|milk|dairy|produce|vaccines?|medicines?|lettuce|ice cream|dough|cheese|chicken|eggs|seafood|thr[eo]w (it|them|everything) out|threw out|toss\w*|discard\w*)\b/i;

/**
 * "She said they already threw out half", "she said the guy before put a new motor in": what it came to, or what was done
 * to it before, and not what is wrong with it.
 */
const tellsNoTrouble = (memo: string): boolean =>
  ((PRODUCT.test(memo) && LOST.test(memo)) || DONE_BEFORE.test(memo)) && !AMISS.test(memo);
const DONE_BEFORE =
  /\b(?:(?:last|other|previous|first) (?:guy|fella|tech|company|outfit|mechanic|technician)s?|(?:guy|tech|fella|man|company) (?:before|last (?:time|week|month|year))|they (?:just|already) had (?:it|a|the|somebody|someone))\b.*\b(?:put|changed|replaced|added|charged|gassed|topped|fixed|cleaned|worked on|was (?:out|here|in)|came (?:out|in|by)|installed|swapped)\b/i;
const LOST =
  /\b(?:thr[eo]w|thrown|toss(?:ed|ing)?|dump(?:ed|ing)?|discard(?:ed|ing)?|pitched|trashed|lost|moved|put)\b/i;
const AMISS =
  /\b(?:warm|hot|soft|mushy|melt\w*|thaw\w*|not (?:cold|cool\w*|hold\w*|keep\w*|freez\w*)|(?:won't|wouldn't|isn't|wasn't|stopped|quit) \w+)\b/i;

/** What was told of the product, apart from its temperature. */
export const productMemos = (state: VisitState): Memos =>
  otherMemos(state).filter(({ memo }) => PRODUCT.test(memo));

/** What was read off the unit and told in words. */
export const unitMemos = ({ memos }: VisitState): Memos =>
  memos.filter(({ memo }) => isOfTheUnit(memo));

/** Remarks on what was found, and on how it was left. */
export const jobMemos = (state: VisitState): Memos =>
  otherMemos(state).filter(
    (entry) => !PRODUCT.test(entry.memo) && !isSaid(entry) && causeIn(entry) === null,
  );

const CAUSE =
  /^(?:so |and |well )*(?:the )?(?:root )?(?:cause|problem|trouble|culprit|fault|diagnosis|what happened)(?: of (?:it|this|that)| here| there| with it| to it)? (?:is|was|turned out to be) (?:that )?(.+)$/i;

const causeIn = ({ memo, remark }: Memos[number]): string | null =>
  remark === true ? (CAUSE.exec(memo.trim())?.[1] ?? null) : null;

/** "The cause was a kinked line": the last that was said of it, where it is one that has no name of its own. */
export const causeSaid = (state: VisitState): string | null =>
  otherMemos(state)
    .map(causeIn)
    .findLast((said) => said !== null) ?? null;

/** Memos that are neither the complaint nor of the unit itself. */
function otherMemos(state: VisitState): Memos {
  const complaint = complaintMemos(state);
  return state.memos.filter(isNoneOf(complaint)).filter(({ memo }) => !isOfTheUnit(memo));
}
