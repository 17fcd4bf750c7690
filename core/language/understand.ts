import type { Context } from './context.ts';
import { amendsOne } from './settle/amended-together.ts';
import { keepFreezer } from './settle/bare-walk-in.ts';
import { tellWhere } from './settle/bare-site.ts';
import { withoutUnnamed } from './settle/done-to-unnamed.ts';
import { atCompressor } from './settle/at-compressor.ts';
import { endsAtPoint, restOfNumber } from './settle/cut-in-two.ts';
import { settleCorrections } from './settle/corrections.ts';
import { tellClipped } from './settle/clipped-values.ts';
import { doubtful } from './settle/doubts.ts';
import { doneToNothing, settleIts } from './settle/its.ts';
import { adviceIn } from './recommendations/as-said.ts';
import { askedByCues } from './questions/by-cue.ts';
import { toldOnly, toUsOnly } from './settle/asked-of-us.ts';
import { oursOnly } from './settle/done-by-us.ts';
import { withUnreadNames } from './settle/names-unread.ts';
import { tellDrawnDown } from './settle/drawn-down.ts';
import { tellLocked } from './settle/locked.ts';
import { tellLegs } from './settle/legs-answered.ts';
import { bothFans, fansOfCoils } from './settle/fans-of-coils.ts';
import { keptWords } from './settle/kept-words.ts';
import { isWhollyRead, type Item, type Parse, parse } from './parse/parse.ts';
import { tellOtherBoxes } from './settle/other-box.ts';
import { ofOtherOne } from './settle/other-one.ts';
import { putRight } from './settle/put-right.ts';
import { tellWhoOpened } from './settle/opened-by-us.ts';
import { doneSo } from './settle/done-so.ts';
import { ofSided } from './settle/sided-advice.ts';
import { withShortNames } from './settle/short-names.ts';
import { secondHand } from './settle/second-hand.ts';
import type { Sentence } from './parse/sentence.ts';
import { ofTheControl } from './settle/the-control.ts';
import { ofTheMotor } from './settle/the-motor.ts';
import { takenBackFirst } from './settle/taken-back.ts';
import { withSide } from './words/which-one.ts';
import { tellWhatHappened } from './settle/what-happened.ts';
import { ofNamed, turnTo } from './settle/turned-to.ts';
import { tellWhyCalled } from './settle/why-called.ts';
import { both, join, nothingSaid, type DraftUtterance } from './settle/told.ts';
import type { Fact, Utterance } from './utterance.ts';

/** What one sentence means after what was settled before it. Never throws: any text has an answer. */
export function understand(text: string, context: Context): Utterance {
  const said = endsAtPoint(text, context, asItWasSaid) ?? asItWasSaid(text, context);
  return (
    restOfNumber(said, context, asItWasSaid) ??
    putRight(said, context, asItWasSaid) ??
    doneSo(said, context, asItWasSaid) ??
    ofOtherOne(said, context, asItWasSaid) ??
    ofTheControl(said, context, asItWasSaid) ??
    ofTheMotor(said, context, asItWasSaid) ??
    ofSided(said, context, asItWasSaid) ??
    ofNamed(said, context, asItWasSaid) ??
    said
  );
}

/** "Good?" asks, and "good" without its mark, which no token keeps, is talk. */
const GOOD_ALONE =
  /^\s*(?:and |so )?(?:good|ok|okay|all right|alright|any good|good enough)\s*\?\s*$/i;

function asItWasSaid(text: string, context: Context): Utterance {
  const parsed = parse(GOOD_ALONE.test(text) ? 'is that good' : text, context);
  const { tokens, sentence } = parsed;
  const items = withoutUnnamed(
    sentence,
    withUnreadNames(sentence, toldOnly(sentence, parsed.items)),
  );
  const all = nothingSaid(text);
  if (isWhollyRead(tokens, items)) {
    gather(all, items, sentence);
    if (items[0]?.meaning.ofIt !== undefined)
      all.remarks = both(all.remarks, keptWords(withoutLoose(parsed, items)));
  } else {
    gather(all, toUsOnly(sentence, oursOnly(sentence, items)), sentence);
    addUnread(all, items === parsed.items ? parsed : { ...parsed, items });
  }
  if (all.remarks.length > 0) advise(all);
  if (all.findings.length > 0) all.findings = bothFans(all.findings, text);
  if (all.findings.length > 1) all.findings = fansOfCoils(all.findings);
  if (all.findings.length > 0) tellWhoOpened(all, context);
  if (all.work.length > 0) tellLocked(all, text);
  if (all.readings.length > 0) tellDrawnDown(all, context);
  if (all.findings.length > 0) all.findings = all.findings.map((each) => withSide(each, text));
  if (all.facts.length > 0) keepFreezer(all, context);
  tellLegs(all, context);
  if (all.readings.length > 0) tellOtherBoxes(all, context);
  if (all.readings.length > 0) {
    all.readings = atCompressor(all.readings, context);
    putInDoubt(all, context);
  }
  if (all.doubts.length + all.unclaimed.length > 0) tellClipped(all, context);
  tellWhere(all, context);
  tellWhyCalled(all, context);
  tellWhatHappened(all);
  turnTo(all, { tokens, items });
  return amendsOne(all);
}

/** "Told them to keep boxes away from the condenser": kept as it was said, and as what they are to do. */
function advise(all: DraftUtterance): void {
  const advised = all.remarks.map(adviceIn);
  if (advised.every((each) => each === null)) return;
  all.remarks = all.remarks.filter((_words, at) => advised[at] === null);
  all.recommendations = both(
    all.recommendations,
    advised.filter((each) => each !== null),
  );
}

/** By the refrigerant that was told in the same breath, where one was. */
const withGasOf = (context: Context, facts: readonly Fact[]): Context => {
  const gas = facts.find((each) => each.fact === 'refrigerant');
  return gas === undefined ? context : { ...context, refrigerant: gas.value };
};

function putInDoubt(all: DraftUtterance, before: Context): void {
  const context = withGasOf(before, all.facts);
  const { readings, doubts } = doubtful(all.readings, context);
  all.readings = readings;
  all.doubts = both(doubts, all.doubts);
}

/** What no rule reads may be asked, told or a number all the same. */
function addUnread(all: DraftUtterance, parsed: Parse): void {
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

function gather(all: DraftUtterance, items: readonly Item[], sentence: Sentence): void {
  const { lastPart, lastPlace } = sentence.context;
  if (stand(items))
    for (const { meaning } of items)
      join(all, withShortNames(meaning, [null, lastPart, lastPlace]));
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
  ...['hearsay', 'ofIt', 'ofThat', 'also', 'recommendations'].map(
    (part) => [part, CHANGED_BY_WHAT_WAS] as const,
  ),
]);

function settleTogether(all: DraftUtterance, items: readonly Item[], sentence: Sentence): void {
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
