import type { QuantityId } from '../terms/quantities.ts';
import type { Context } from './context.ts';
import { parse } from './parse/parse.ts';
import { meaningOf } from './settle/meaning.ts';
import { isPutRight } from './words/misheard.ts';
import { understand } from './understand.ts';
import type { Utterance } from './utterance.ts';

/** One of the things that a recogniser says may have been said. */
export interface Alternative {
  readonly words: string;
  /** Chance that these words were said, 0..1; 0 where the recogniser tells none. */
  readonly confidence: number;
}

/** A value that the technician has just said no to; `quantity: null` where none was settled. */
export interface RejectedValue {
  readonly quantity: QuantityId | null;
  readonly value: number;
}

/** One thing that may have been said, and what counts for and against it. */
export interface Candidate extends Alternative {
  /** Chance that this was meant: that of every wording that means the same, added up. */
  readonly confidence: number;
  /** The same by the sound alone, whatever speaks for or against the meaning. */
  readonly soundChance: number;
  /** Its place among the recogniser's alternatives; 0 is the likeliest. */
  readonly rank: number;
  readonly utterance: Utterance;
  /** The value just rejected that it offers again. */
  readonly repeated: RejectedValue | null;
  /** Numbers that nothing claims, and values that would have to be confirmed. */
  readonly openNumbers: number;
  /** Words that no rule reads, or none but as what they may have been heard for. */
  readonly unreadWords: number;
}

/** What set the chosen one apart from the recogniser's own first, which it is when nothing did. */
export type Choice =
  | { readonly chosen: null; readonly considered: readonly Candidate[] }
  | {
      readonly chosen: Candidate;
      readonly because: 'likeliest' | 'notRejected' | 'plausible' | 'readWhole';
      readonly considered: readonly Candidate[];
    };

/**
 * Which of a recogniser's alternatives, likeliest first, to take: the meaning that is likeliest, where one that repeats
 * a value just rejected is out of the question, and numbers left open or doubted and words unread count against one.
 * `null` when each repeats a rejected value, or there is none.
 */
export function chooseUnderstanding(
  alternatives: readonly Alternative[],
  context: Context,
  rejected: readonly RejectedValue[],
): Choice {
  const considered = addedUp(
    alternatives.map((alternative, rank) => candidate(alternative, rank, { context, rejected })),
  );
  const [chosen, ...others] = considered.filter(({ repeated }) => repeated === null);
  if (chosen === undefined) return { chosen: null, considered };
  const isTold = considered.some(({ confidence }) => confidence > 0);
  const chance = (each: Candidate): number => (isTold ? each.confidence : untoldChance(each));
  const best = others.reduce((so, each) => (isBetter(each, so, chance) ? each : so), chosen);
  return { chosen: best, because: reasonFor(best, considered), considered };
}

/** Of two that mean the same the one is taken whose words are the trade's. */
function isBetter(one: Candidate, other: Candidate, chance: (each: Candidate) => number): boolean {
  const [mine, others] = [chance(one), chance(other)];
  return mine > others || (mine === others && one.unreadWords < other.unreadWords);
}

/** How much less likely a sentence is for each number in it that is left open or implausible, and each word unread. Ours. */
const OPEN_NUMBER = 0.1;
const UNREAD_WORD = 0.5;

/**
 * The chance of each meaning: "suction is fourteen" and "suction fourteen" speak for each other, what was just said no
 * to was not meant, and what cannot well be has hardly been.
 */
function addedUp(candidates: readonly Candidate[]): readonly Candidate[] {
  const heard = candidates.map(({ confidence }) => confidence);
  const likely = candidates.map((each) => each.confidence * priorOf(each));
  const scale = sumOf(heard) / Math.max(sumOf(likely), Number.MIN_VALUE);
  const meanings = candidates.map(({ utterance }) => meaningOf(utterance));
  const ofMeaning = (at: number, chances: readonly number[]): number =>
    Math.min(1, sumOf(chances.filter((_, other) => meanings[other] === meanings[at])));
  return candidates.map((each, at) => ({
    ...each,
    confidence: Math.min(1, ofMeaning(at, likely) * scale),
    soundChance: ofMeaning(at, heard),
  }));
}

const priorOf = ({ repeated, openNumbers, unreadWords }: Candidate): number =>
  repeated === null ? OPEN_NUMBER ** openNumbers * UNREAD_WORD ** unreadWords : 0;

/** How much less likely each next alternative is where the recogniser says no more than their order. Ours. */
const NEXT_UNTOLD = 0.5;

const untoldChance = (each: Candidate): number => priorOf(each) * NEXT_UNTOLD ** each.rank;

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

interface Settled {
  readonly context: Context;
  readonly rejected: readonly RejectedValue[];
}

function candidate(
  { words, confidence }: Alternative,
  rank: number,
  { context, rejected }: Settled,
): Candidate {
  const utterance = understand(words, context);
  const { items, tokens } = parse(words, context);
  const read = items.reduce((sum, { start, end }) => sum + end - start, 0);
  const putRight = tokens.filter((token) => isPutRight(token, words.slice(token.start, token.end)));
  return {
    words,
    confidence,
    soundChance: confidence,
    rank,
    utterance,
    repeated: rejected.find((value) => repeats(utterance, value)) ?? null,
    openNumbers: utterance.unclaimed.length + utterance.doubts.length,
    unreadWords: tokens.length - read + putRight.length,
  };
}

function repeats(utterance: Utterance, { quantity, value }: RejectedValue): boolean {
  const same = (each: { readonly quantity: QuantityId | null; readonly value?: number }): boolean =>
    each.value === value &&
    (quantity === null || each.quantity === null || each.quantity === quantity);
  return (
    [...utterance.readings, ...utterance.doubts].some(same) ||
    utterance.commands.some((command) => command.do === 'amend' && same(command)) ||
    utterance.unclaimed.some((digits) => Number(digits) === value)
  );
}

function reasonFor(best: Candidate, [first]: readonly Candidate[]) {
  if (first === undefined || first === best) return 'likeliest';
  if (first.repeated !== null) return 'notRejected';
  if (best.openNumbers < first.openNumbers) return 'plausible';
  return best.unreadWords < first.unreadWords ? 'readWhole' : 'likeliest';
}
