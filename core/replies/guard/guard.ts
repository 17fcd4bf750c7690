import type { Verdict } from '../../advice/verdict.ts';
import { formatAmount } from '../../units/format-amount.ts';
import { unitRow } from '../../units/units.ts';
import { unreachable } from '../../unreachable.ts';
import { saidWithIt } from '../answers.ts';
import { verdictSaid } from '../verdict-said.ts';
import { claimsOf, namesOfSlot, type Claims, type Slot } from './claims.ts';
import { mentions, type Mention } from './clauses.ts';
import { PASSED, rejected, type Guarded } from './guarded.ts';
import { looseWordFault } from './loose-words.ts';
import { isOrdinary, tokens, type Token } from './tokens.ts';
import { cover } from './told/cover.ts';
import { toldOf } from './told/told-of.ts';
import type { Told } from './told/told.ts';
import { directionOf, isGlue, isNegation } from './words.ts';

/** A sentence is heard once, over a fan: longer than this and its start is gone. */
const LONGEST = 400;
/** An earlier visit or the causes are lists, and lists are long. */
const LONGEST_TOLD = 1200;

/**
 * Whether a sentence says what the verdict says and nothing else: its numbers with their units, each beside
 * the name and in the part it has there, its directions, nothing denied, nothing needed left out. What is in
 * doubt is rejected, since the template's sentence is always at hand. Refusals, needs and workings tell a
 * technician why not and what to do: those pass word for word or not at all.
 */
export function guard(sentence: string, verdict: Verdict): Guarded {
  const claims = verdict.kind === 'known' ? claimsOf(verdict) : null;
  if (verdict.kind === 'known' && claims) {
    const own = withoutItsOwn(sentence, saidWithIt(verdict)?.text ?? null);
    return own === null ? rejected('missingStatement', sentence) : judge(own, claims);
  }
  const told = verdict.kind === 'known' ? toldOf(verdict) : null;
  if (told) {
    const own = withoutItsOwn(sentence, told.tail?.text ?? null);
    return own === null ? rejected('missingStatement', sentence) : judgeTold(own, told);
  }
  return sentence === verdictSaid(verdict).text ? PASSED : rejected('notVerbatim', sentence);
}

/**
 * The sentence without what must be said beside it word for word; null where that is not there. Told of two timers of one
 * name with as long to run, it says the same twice: the last is what stands beside it.
 */
function withoutItsOwn(sentence: string, own: string | null): string | null {
  if (own === null) return sentence;
  for (let at = sentence.lastIndexOf(own); at > 0; at = sentence.lastIndexOf(own, at - 1)) {
    const before = sentence.slice(0, at);
    const after = sentence.slice(at + own.length);
    if (/\. $/.test(before) && (after === '' || after.startsWith(' ')))
      return before.trimEnd() + after;
  }
  return null;
}

/** A verdict that is more than its numbers: every word is one of a statement's wordings, or says nothing. */
function judgeTold(sentence: string, told: Told): Guarded {
  if (sentence.length > LONGEST_TOLD) return rejected('tooLong', sentence.slice(LONGEST_TOLD));
  const odd = Array.from(sentence).find((each) => each !== '’' && !isOrdinary(each));
  if (odd !== undefined) return rejected('strangeCharacter', odd);
  const covered = cover(sentence, told);
  switch (covered.kind) {
    case 'whole':
      return PASSED;
    case 'stuck':
      return rejected('foreignStatement', covered.at);
    case 'unsaid':
      return rejected('missingStatement', covered.what);
  }
}

function judge(sentence: string, claims: Claims): Guarded {
  if (sentence.length > LONGEST) return rejected('tooLong', sentence.slice(LONGEST));
  const all = tokens(sentence);
  const found = mentions(all);
  const checks = [
    () => all.map((token) => tokenFault(token, claims)).find((fault) => fault !== null),
    () => found.map((mention) => mentionFault(mention, claims)).find((fault) => fault !== null),
    () => looseWordFault(all, claims),
    () => missingFault(all, claims),
  ];
  return checks.reduce<Guarded | null>((fault, check) => fault ?? check() ?? null, null) ?? PASSED;
}

function tokenFault(token: Token, claims: Claims): Guarded | null {
  switch (token.kind) {
    case 'strange':
      return rejected('strangeCharacter', token.what);
    case 'number':
      return null;
    case 'stop':
      return token.mark === '?' ? rejected('question', token.mark) : null;
    case 'name':
      return token.meanings.some(({ id }) => claims.names.some((own) => own === id))
        ? null
        : rejected('foreignName', token.words);
    case 'word':
      return wordFault(token.word, claims);
    default:
      return unreachable(token);
  }
}

function wordFault(word: string, claims: Claims): Guarded | null {
  if (isNegation(word)) return rejected('negation', word);
  if (isGlue(word) || claims.ownWords.includes(word) || directionOf(word) !== undefined)
    return null;
  return rejected('unknownWord', word);
}

function mentionFault(mention: Mention, claims: Claims): Guarded | null {
  const same = claims.slots.filter((slot) => isNumberOf(mention, slot, claims));
  const own = same.filter((slot) => isInPlace(mention, slot, claims));
  if (own.length === 0) return rejected('foreignNumber', mention.digits);
  if (mention.direction === null) return null;
  return own.some((slot) => slot.direction === mention.direction)
    ? null
    : rejected('wrongDirection', mention.digits);
}

/** A number without its unit is understood only where every number of its quantity is shown in the same unit. */
function isNumberOf({ digits, units }: Mention, slot: Slot, claims: Claims): boolean {
  if (digits !== formatAmount(slot).digits) return false;
  if (units) return units.includes(slot.unit);
  const own = claims.slots.filter(
    ({ about, place }) => about === slot.about && place === slot.place,
  );
  return own.every(({ unit }) => unitRow(unit).symbol === unitRow(slot.unit).symbol);
}

/** A number that no name stands before belongs to the one thing the verdict is about, if it is about one. */
function isInPlace({ cue, about, place }: Mention, slot: Slot, claims: Claims): boolean {
  if (!slot.cues.includes(cue)) return false;
  if (about !== null) return about === slot.about && place === slot.place;
  const itsOwn = namesOfSlot(slot);
  return (
    (place === null || place === slot.place) &&
    (itsOwn.length === 0 ||
      claims.requiredNames.every((name) => itsOwn.some((own) => own === name)))
  );
}

function missingFault(all: readonly Token[], claims: Claims): Guarded | null {
  const named = all.flatMap((token) => (token.kind === 'name' ? token.meanings : []));
  const name = claims.requiredNames.find((needed) => !named.some(({ id }) => id === needed));
  if (name !== undefined) return rejected('missingName', name);
  const found = mentions(all);
  const unsaid = claims.slots
    .filter((slot) => slot.required)
    .find((slot) => !found.some((mention) => says(mention, slot, claims)));
  if (unsaid) return rejected('missingNumber', formatAmount(unsaid).digits);
  return missingWordFault(all, claims);
}

function says(mention: Mention, slot: Slot, claims: Claims): boolean {
  return isNumberOf(mention, slot, claims) && isInPlace(mention, slot, claims);
}

const SHOULD = new Set(['should', 'ought', 'want', 'aim']);

/** "You are on target" tells of the reading: it makes no target of the number beside it. */
const saysShould = (words: readonly string[]): boolean =>
  words.some((word, index) => SHOULD.has(word) || (word === 'target' && words[index - 1] !== 'on'));

/** "It is from 150 to 200" would be where it is, not where it should be. */
function needsShould(all: readonly Token[], { mustSayShould }: Claims): boolean {
  if (mustSayShould !== 'withEnds') return mustSayShould === 'always';
  return mentions(all).some(({ cue }) => cue === 'low' || cue === 'high');
}

function missingWordFault(all: readonly Token[], claims: Claims): Guarded | null {
  const words = all.map((token) => (token.kind === 'word' ? token.word : ''));
  if (needsShould(all, claims) && !saysShould(words)) {
    return rejected('missingName', 'should');
  }
  const unsaid = claims.mustSay.find((word) => !words.includes(word));
  if (unsaid !== undefined) return rejected('missingWord', unsaid);
  const onTarget = words.some(
    (word, index) => word === 'on' && ['target', 'it'].includes(words[index + 1] ?? ''),
  );
  if (onTarget && claims.onTarget === 'forbidden') return rejected('wrongDirection', 'on');
  return !onTarget && claims.onTarget === 'required' ? rejected('wrongDirection', '') : null;
}
