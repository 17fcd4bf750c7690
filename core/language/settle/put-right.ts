import type { Context } from '../context.ts';
import { bothPutRight } from './amended-together.ts';
import type { Fact, Reading, Utterance } from '../utterance.ts';
import { fragmentOf, mayTakeBack, placesTakenBack } from './fragments.ts';
import { meaningOf } from './meaning.ts';
import { type PutInto, putInto } from './put-into.ts';
import { restatedBefore, restatedWithin } from './restated.ts';
import { retracted } from './retracted.ts';
import { sameKind, type ToldItem } from './same-but-one.ts';
import { isNumber } from '../numbers/number-tokens.ts';
import { tokenise } from '../words/tokenise.ts';
import { WordSet } from '../words/word-set.ts';
import { nothingSaid } from './told.ts';
import type { Reads } from './reads.ts';

/**
 * What was said wrong and put right, in one sentence or in the next: "every six months, no every three", "no it was eleven
 * ounces". Said once more with the right words in it, it means what it would have meant if it had been said so at once.
 *
 * @returns `null` where nothing is put right, or where the rules know what is.
 */
export function putRight(said: Utterance, context: Context, reads: Reads): Utterance | null {
  if (!mayTakeBack(said.text)) return null;
  return (
    retracted(said, context, reads) ??
    bothPutRight(said, context) ??
    rightBefore(said, context, reads) ??
    restatedBefore(said, context) ??
    restatedWithin(said, context, reads) ??
    rightWithin(said, context, reads)
  );
}

/** What was told before this sentence, the newest first, gets what this one says in its place. */
function rightBefore(said: Utterance, context: Context, reads: Reads): Utterance | null {
  const { told, asksYes } = context;
  if (told.length === 0 || asksYes) return null;
  const fragment = fragmentOf(said.text);
  if (fragment === null) return null;
  const again = toldAgain(said, told);
  if (again !== null) return again;
  if (!tellsNoMore(isAmount(fragment.words) ? { ...said, readings: [] } : said)) return null;
  const isBare = isBareNumber(fragment.words);
  for (const [ago, each] of told.entries()) {
    if (each === null || !hasValue(each.told)) continue;
    const settled = isBare ? settledOn(said, each.told) : null;
    if (settled !== null) return settled;
    const found = putInto(each.words, fragment, (words) => reads(words, context));
    if (found === 'doubtful') return null;
    if (found !== null) return instead(found, { said, ago, was: each.told });
    // Without a unit it is of the number that was told last, or of none.
    if (isBare && hasNumber(each.told)) return null;
  }
  return null;
}

/** "Head's about ninety five, maybe a hundred." "Call it ninety eight.": one figure for what was told as two. */
function settledOn({ text, unclaimed }: Utterance, told: ToldItem): Utterance | null {
  if (told.of !== 'reading' || told.reading.low === undefined) return null;
  const [digits, ...others] = unclaimed;
  if (digits === undefined || others.length > 0) return null;
  const { low: _low, high: _high, hedged: _hedged, ...reading } = told.reading;
  return amending(text, { ...reading, value: Number(digits) });
}

/** A number and its unit, of nothing that is named: "five point nine amps". */
const isAmount = (fragment: string): boolean =>
  tokenise(fragment).every((token) => isNumber(token) || UNITS.has(token)) &&
  !isBareNumber(fragment);
const UNITS = new WordSet(
  'psi degrees degree pounds pound ounces ounce amps amp volts volt ohms ohm megs megohms microns micron bar inches hours hour minutes minute f c and a half',
);

const isBareNumber = (fragment: string): boolean => tokenise(fragment).every(isNumber);

/** A finding and work are put right by what is told of them anew. */
const hasValue = ({ of }: ToldItem): boolean => of !== 'finding' && of !== 'work';

/** So much, so long or so often. */
function hasNumber(told: ToldItem): boolean {
  if (told.of === 'fact') return typeof told.fact.value === 'number' || 'doors' in told.fact;
  if (told.of === 'recommendation')
    return told.recommendation.every !== undefined || told.recommendation.by?.kind === 'in';
  return true;
}

/** "No wait, common to run is two point one": what a meter reads somewhere is read there anew. */
function toldAgain({ text, ...said }: Utterance, told: Context['told']): Utterance | null {
  const [reading, ...more] = said.readings;
  if (reading === undefined || more.length > 0 || reading.place === null) return null;
  const others = meaningOf({ ...said, text, readings: [] });
  if (others !== meaningOf(nothingSaid(text))) return null;
  const isOfIt = told.some(
    (each) => each !== null && sameKind(each.told, { of: 'reading', reading }),
  );
  return isOfIt ? amending(text, reading) : null;
}

function amending(text: string, { quantity, place, value, unit }: Reading): Utterance | null {
  if (value === undefined) return null;
  const where = place === null ? {} : { place };
  const how = unit === null ? {} : { unit };
  return { ...nothingSaid(text), commands: [{ do: 'amend', quantity, value, ...where, ...how }] };
}

interface Instead {
  readonly said: Utterance;
  readonly ago: number;
  readonly was: ToldItem;
}

function instead(
  { changed: { is, was: read } }: PutInto,
  { said, ago, was }: Instead,
): Utterance | null {
  if (!sameKind(read, was)) return null;
  const nothing = nothingSaid(said.text);
  const undo = { do: 'undo', earlier: true, ago } as const;
  switch (is.of) {
    case 'reading':
      return amending(said.text, is.reading);
    case 'fact':
      return { ...nothing, facts: [is.fact], commands: [undo] };
    case 'recommendation':
      return { ...nothing, recommendations: [is.recommendation], commands: [undo] };
    case 'command':
      return { ...nothing, commands: [undo, is.command] };
    case 'finding':
    case 'work':
      return null;
  }
}

/** A number, words that were only kept, or a value for no matter what. */
function tellsNoMore(said: Utterance): boolean {
  const { readings, facts, findings, work, recommendations, questions, commands, memos } = said;
  const told = [readings, facts, findings, work, recommendations, questions, memos];
  return (
    told.every((list) => list.length === 0) &&
    said.doubts.every(({ why }) => why === 'expected') &&
    commands.every(
      (each) =>
        (each.do === 'amend' && each.quantity === null) ||
        (each.do === 'undo' && each.quantity === undefined) ||
        each.do === 'no',
    )
  );
}

/** What this sentence itself said before. */
function rightWithin(said: Utterance, context: Context, reads: Reads): Utterance | null {
  const { text } = said;
  const readsHere = (words: string): Utterance => reads(words, context);
  for (const place of placesTakenBack(text).toReversed()) {
    const [before, behind] = [text.slice(0, place), text.slice(place)];
    for (const [fix, rest] of fixesIn(behind)) {
      const fragment = fragmentOf(fix);
      if (fragment === null) continue;
      const without = readsHere(before + rest);
      const isOther = isAmount(fragment.words) && said.readings.length > without.readings.length;
      if (!isOther && !isUntold(said, without, behind)) continue;
      const found = putInto(before, fragment, readsHere);
      if (found === null || found === 'doubtful') continue;
      return { ...readsHere(found.text + rest), text };
    }
  }
  return toldTwice(said);
}

/** "Two door reach-in, no, single door reach-in": of one thing told twice over the first word does not hold. */
function toldTwice(said: Utterance): Utterance | null {
  const facts = said.facts.filter((fact, at) => {
    const again = said.facts.slice(at + 1).find((other) => sameThing(fact, other));
    return again === undefined || !isTakenBackBetween(said.text, fact.words, again.words);
  });
  return facts.length === said.facts.length ? null : { ...said, facts };
}

const sameThing = (one: Fact, other: Fact): boolean =>
  one.fact === other.fact &&
  one.fact !== 'cause' &&
  (one.fact !== 'nameplate' || other.fact !== 'nameplate' || one.item === other.item);

function isTakenBackBetween(text: string, first: string, second: string): boolean {
  const from = text.indexOf(first) + first.length;
  const to = text.indexOf(second, from);
  return to > from && placesTakenBack(text).some((place) => place >= from - 1 && place < to);
}

/** All that stands behind, or as far as its first pause that a number or a name may end at. */
function fixesIn(behind: string): readonly (readonly [string, string])[] {
  const pauses = [...behind.matchAll(/[,;.](?=\s)/g)]
    .map(({ index }) => index)
    .filter((at) => at > 0);
  return [[behind, ''], ...pauses.map((at) => [behind.slice(0, at), behind.slice(at)] as const)];
}

/** Whether what puts right was not understood as that: the sentence tells the same without it, or keeps it in a name. */
function isUntold(said: Utterance, without: Utterance, behind: string): boolean {
  const kept = said.facts.some(
    ({ fact, value }) =>
      (fact === 'site' || fact === 'unit') && value.endsWith(behind.replace(/^[\s,;.]+/, '')),
  );
  if (kept || told(said) === told(without)) return true;
  // "Two pounds ten ounces, no, three pounds": what is left of the one and of the other.
  const isLeft = said.unclaimed.length > 0 && without.unclaimed.length === 0;
  return isLeft && kindsOf(said) === kindsOf(without);
}

const kindsOf = ({ readings, facts }: Utterance): string =>
  [...readings.map(({ quantity }) => quantity), ...facts.map(({ fact }) => fact)].join(' ');

const told = ({ readings, facts, findings, work, recommendations, memos, questions }: Utterance) =>
  meaningOf({
    ...nothingSaid(''),
    readings,
    facts,
    findings,
    work,
    recommendations,
    memos,
    questions,
  });
