import type { QuantityId } from '../terms/quantities.ts';
import type { Context } from './context.ts';
import { doubtful } from './doubts.ts';
import { isElectrical } from './electrical-quantities.ts';
import type { Meaning } from './rule.ts';
import { doneToNothing, settleIts } from './its.ts';
import { askedByCues } from './questions/by-cue.ts';
import { toldOnly, toUsOnly } from './asked-of-us.ts';
import { oursOnly } from './done-by-us.ts';
import { withUnreadNames } from './names-unread.ts';
import { keptWords } from './kept-words.ts';
import { isWhollyRead, type Item, type Parse, parse } from './parse.ts';
import type { Sentence } from './sentence.ts';
import { takenBackFirst } from './taken-back.ts';
import type {
  Command,
  Doubt,
  Fact,
  Reading,
  Recommendation,
  Utterance,
  Work,
} from './utterance.ts';

/** What one sentence means after what was settled before it. Never throws: any text has an answer. */
export function understand(text: string, context: Context): Utterance {
  const parsed = parse(text, context);
  const { tokens, sentence } = parsed;
  const items = withUnreadNames(sentence, toldOnly(sentence, parsed.items));
  const all = nothingSaid(text);
  if (isWhollyRead(tokens, items)) {
    gather(all, items, sentence);
    if (items[0]?.meaning.ofIt !== undefined)
      all.remarks = both(all.remarks, keptWords(withoutLoose(parsed, items)));
  } else {
    gather(all, toUsOnly(sentence, oursOnly(sentence, items)), sentence);
    addUnread(all, items === parsed.items ? parsed : { ...parsed, items });
  }
  if (all.readings.length > 0) putInDoubt(all, context);
  return all;
}

type Writable<Fields> = { -readonly [Field in keyof Fields]: Fields[Field] };
type Told = Writable<Utterance>;
type Gathered = Omit<Utterance, 'text'>;

const NOTHING: readonly never[] = [];

const nothingSaid = (text: string): Told => ({
  text,
  readings: NOTHING,
  facts: NOTHING,
  findings: NOTHING,
  work: NOTHING,
  recommendations: NOTHING,
  questions: NOTHING,
  commands: NOTHING,
  memos: NOTHING,
  remarks: NOTHING,
  unclaimed: NOTHING,
  doubts: NOTHING,
});

/** By the refrigerant that was told in the same breath, where one was. */
const withGasOf = (context: Context, facts: readonly Fact[]): Context => {
  const gas = facts.find((each) => each.fact === 'refrigerant');
  return gas === undefined ? context : { ...context, refrigerant: gas.value };
};

function putInDoubt(all: Told, before: Context): void {
  const context = withGasOf(before, all.facts);
  const { readings, doubts } = doubtful(all.readings, context);
  all.readings = readings;
  all.doubts = both(doubts, all.doubts);
}

/** What no rule reads may be asked, told or a number all the same. */
function addUnread(all: Told, parsed: Parse): void {
  const { items, unclaimed, sentence } = parsed;
  const asked = askedByCues(sentence, items);
  if (asked.length > 0) {
    all.questions = both(
      all.questions,
      asked.map(({ question }) => question),
    );
  }
  all.remarks = both(all.remarks, keptWords(withoutLoose(parsed, items), asked));
  all.unclaimed = both(unclaimed, all.unclaimed);
}

/** What was done to nobody knows what is kept as it was said. */
function withoutLoose(parsed: Parse, items: readonly Item[]): Parse {
  const loose = doneToNothing(
    items.map(({ meaning }) => meaning),
    parsed.sentence.context,
  );
  if (loose.size === 0) return { ...parsed, items };
  return { ...parsed, items: items.filter(({ meaning }) => !loose.has(meaning)) };
}

function gather(all: Told, items: readonly Item[], sentence: Sentence): void {
  if (stand(items)) for (const { meaning } of items) join(all, meaning);
  else settleTogether(all, items, sentence);
}

/** Whether nothing else in the sentence or before it can change what the items mean. */
function stand(items: readonly Item[]): boolean {
  const least = items.length > 1 ? CHANGED_BY_OTHERS : CHANGED_BY_WHAT_WAS;
  for (const { meaning } of items) {
    for (const part in meaning) if ((CHANGED.get(part) ?? 0) >= least) return false;
  }
  return true;
}

const [CHANGED_BY_OTHERS, CHANGED_BY_WHAT_WAS] = [1, 2];
const CHANGED: ReadonlyMap<string, number> = new Map([
  ...['correction', 'findings', 'work', 'commands'].map(
    (part) => [part, CHANGED_BY_OTHERS] as const,
  ),
  ...['hearsay', 'ofIt', 'ofThat', 'recommendations'].map(
    (part) => [part, CHANGED_BY_WHAT_WAS] as const,
  ),
]);

function settleTogether(all: Told, items: readonly Item[], sentence: Sentence): void {
  const plain = items.filter((item) => item.meaning.hearsay === undefined);
  const said = settleIts(
    plain.map((item) => item.meaning),
    sentence.context,
  );
  for (const meaning of takenBackFirst(settleCorrections(said, all.text))) join(all, meaning);
  for (const item of items) {
    if (item.meaning.hearsay !== undefined) join(all, secondHand(item, sentence));
  }
}

/** Only what there is more of is asked for: meanings come in many shapes. */
function join(all: Told, more: Partial<Gathered>): void {
  for (const part in more) JOIN.get(part)?.(all, more);
}

type Join = (all: Told, more: Partial<Gathered>) => void;

const JOIN_EACH: Record<keyof Gathered, Join> = {
  readings: (all, more) => (all.readings = both(all.readings, more.readings)),
  facts: (all, more) => (all.facts = both(all.facts, more.facts)),
  findings: (all, more) => (all.findings = both(all.findings, more.findings)),
  work: (all, more) => (all.work = both(all.work, notTold(all.work, more.work))),
  recommendations: (all, more) =>
    (all.recommendations = both(
      all.recommendations,
      notAdvised(all.recommendations, more.recommendations),
    )),
  questions: (all, more) => (all.questions = both(all.questions, more.questions)),
  commands: (all, more) =>
    (all.commands = both(all.commands, notGiven(all.commands, more.commands))),
  memos: (all, more) => (all.memos = both(all.memos, more.memos)),
  remarks: (all, more) => (all.remarks = both(all.remarks, more.remarks)),
  unclaimed: (all, more) => (all.unclaimed = both(all.unclaimed, more.unclaimed)),
  doubts: (all, more) => (all.doubts = both(all.doubts, more.doubts)),
};
const JOIN: ReadonlyMap<string, Join> = new Map(Object.entries(JOIN_EACH));

/** "Power's off and locked out" tells one thing twice. */
const notTold = (told: readonly Work[], more: readonly Work[] = []): readonly Work[] =>
  told.length === 0
    ? more
    : more.filter(
        ({ did, part, called }) =>
          !told.some((each) => each.did === did && each.part === part && each.called === called),
      );

/** "Door heater's had it, wants a new one" advises one thing; a date or a reason that comes with it again is new. */
const notAdvised = (
  given: readonly Recommendation[],
  more: readonly Recommendation[] = [],
): readonly Recommendation[] =>
  given.length === 0 ? more : more.filter((each) => !given.some((one) => saysNoMore(each, one)));

const saysNoMore = (
  { words: _new, part, ...more }: Recommendation,
  than: Recommendation,
): boolean => {
  const known = new Map(Object.entries(than).map(([key, value]) => [key, JSON.stringify(value)]));
  return (
    part === than.part &&
    Object.entries(more).every(([key, value]) => known.get(key) === JSON.stringify(value))
  );
};

/** "That's it, I'm done here, wrap it up" ends one visit; but what was taken back twice is twice taken back. */
const notGiven = (given: readonly Command[], more: readonly Command[] = []): readonly Command[] =>
  given.length === 0
    ? more
    : more.filter((each) => !ONCE.has(each.do) || !given.some((one) => one.do === each.do));

const ONCE: ReadonlySet<Command['do']> = new Set([
  ...(['finish', 'newVisit', 'yes', 'no', 'pause', 'resume', 'help'] as const),
  ...(['markBefore', 'markAfter', 'repeat'] as const),
]);

const both = <Part>(said: readonly Part[], more: readonly Part[] = []): readonly Part[] =>
  more.length === 0 ? said : said.length === 0 ? more : [...said, ...more];

/** After "no wait", a second reading of the same quantity and place takes the first one's place. */
function settleCorrections(meanings: readonly Meaning[], text: string): readonly Meaning[] {
  const settled: Meaning[] = [];
  let correcting = false;
  for (const meaning of meanings) {
    if (putRight(settled, meaning)) continue;
    if (isCorrection(meaning)) {
      // "That was the other unit, forget it" takes back one thing.
      const isAgain = correcting && isPlainUndo(meaning) && isPlainUndo(settled.at(-1) ?? {});
      correcting = true;
      if (meaning.correction !== true && !isAgain) settled.push(meaning);
      continue;
    }
    const [fresh] = meaning.readings ?? [];
    const amended = correcting ? amendedBy(settled, meaning) : null;
    if (amended !== null) {
      settled.splice(0, 1, amended);
      correcting = false;
      continue;
    }
    if (correcting && fresh !== undefined) replaceLast(settled, fresh);
    if (correcting && isDenied(text)) replaceFinding(settled, meaning);
    correcting = false;
    settled.push(meaning);
  }
  return settled;
}

/** "Scratch that, suction line's forty six": what was told before this sentence gets another value, and is not taken away. */
function amendedBy(settled: readonly Meaning[], { readings = [] }: Meaning): Meaning | null {
  const [first, ...more] = settled;
  const [read, ...others] = readings;
  if (first === undefined || more.length > 0 || !isPlainUndo(first)) return null;
  if (read?.value === undefined || read.unit === null || others.length > 0) return null;
  const { quantity, value, unit } = read;
  return isElectrical(quantity)
    ? { readings }
    : { commands: [{ do: 'amend', quantity, value, unit }] };
}

/** Taken back by its value, or put in the place of what was told last. */
function meantIn(command: Command | undefined): { quantity?: QuantityId; value?: number } {
  if (command?.do === 'undo') return command;
  return command?.do === 'amend' && command.quantity === null ? { value: command.value } : {};
}

/** "fourteen on the suction, scratch that, fifteen": a value that was not said before is not taken back but meant. */
function putRight(settled: Meaning[], { commands = [] }: Meaning): boolean {
  const { quantity, value } = meantIn(commands[0]);
  if (value === undefined) return false;
  const at = settled.findLastIndex(({ readings = [] }) => readings.length > 0);
  const [old, ...more] = settled[at]?.readings ?? [];
  if (old === undefined || more.length > 0 || old.value === value) return false;
  if (old.value === undefined || (quantity !== undefined && quantity !== old.quantity))
    return false;
  settled[at] = { ...settled[at], readings: [{ ...old, value }] };
  return true;
}

const isPlainUndo = ({ commands = [] }: Meaning): boolean => {
  const [only] = commands;
  return only?.do === 'undo' && only.quantity === undefined && only.value === undefined;
};

const isCorrection = (meaning: Meaning): boolean =>
  meaning.correction === true || meaning.commands?.[0]?.do === 'undo';

function replaceLast(settled: Meaning[], fresh: Reading): void {
  const at = settled.findLastIndex((meaning) => {
    const [old] = meaning.readings ?? [];
    return old?.quantity === fresh.quantity && old.place === fresh.place;
  });
  if (at === -1) return;
  settled.splice(at, 1);
  // The words that took it back have done so: as a command they would take back one more.
  const last = settled.at(-1);
  if (last?.commands?.[0]?.do === 'undo') settled.pop();
}

/** "Fan's dead, wait, compressor's dead too" finds both. */
const isDenied = (text: string): boolean =>
  /\b(?:no|nope|sorry|not|meant?|scratch|correction|actually)\b/i.test(text) &&
  !/\b(?:too|also|either|as well)\b/i.test(text);

/** "Evap fan's dead, no sorry, condenser fan's dead": the same was found, of another part. */
function replaceFinding(settled: Meaning[], { findings: [found] = [] }: Meaning): void {
  const at = settled.findLastIndex((meaning) => !isCorrection(meaning));
  const [old, ...more] = settled[at]?.findings ?? [];
  if (found === undefined || old?.state !== found.state || more.length > 0) return;
  const { findings: _taken, ...others } = settled[at] ?? {};
  settled[at] = others;
}

interface SecondHand {
  readonly memos: readonly string[];
  /** What we read ourselves, told behind it. */
  readonly readings: readonly Reading[];
  readonly doubts: readonly Doubt[];
  readonly unclaimed: readonly string[];
}

/** "Last guy said head was three ten, but I'm reading two forty" */
const READING =
  /^(?:i'm|i am|we're|we are|i've|we've|i|we) (?:only )?(?:reading|getting|seeing|read|got|get|see|have)\s+/i;
const BUT_WE_READ =
  /,? but (?:now )?(?=(?:i'm|i am|we're|we are) (?:reading|getting|seeing|only)\b|(?:i|we|i've|we've) (?:read|got|get|see|have|only)\b|my (?:meter|gauges?|probe|thermometer)\b)/i;

/** Somebody else's numbers are never readings: doubted where a quantity is named, else kept as words. */
function secondHand({ start, end, meaning }: Item, sentence: Sentence): SecondHand {
  const { context } = sentence;
  const words = sentence.wordsOf({ from: start, to: end });
  const [told = '', ours] = (meaning.hearsay ?? '').split(BUT_WE_READ);
  const { items, unclaimed } = parse(told, { ...context, asked: null });
  const theirs = items.flatMap((item) => item.meaning.readings ?? []);
  const lastQuantity = theirs.at(-1)?.quantity ?? context.lastQuantity;
  const read =
    ours === undefined
      ? { items: [], unclaimed: [] }
      : parse(ours.replace(READING, ''), { ...context, asked: lastQuantity, lastQuantity });
  const readings = read.items.flatMap((item) => item.meaning.readings ?? []);
  if (theirs.length === 0)
    return { memos: [words], readings, doubts: [], unclaimed: read.unclaimed };
  const doubts = theirs.map((reading): Doubt => ({ ...reading, words, why: 'hearsay' }));
  return { memos: [], readings, doubts, unclaimed: [...unclaimed, ...read.unclaimed] };
}
