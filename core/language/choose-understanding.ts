import type { QuantityId } from '../terms/quantities.ts';
import type { Context } from './context.ts';
import { parse } from './parse.ts';
import { understand } from './understand.ts';
import type { Utterance } from './utterance.ts';

/** One of the things that a recogniser says may have been said. */
export interface Alternative {
  readonly words: string;
  /** 0..1, an order rather than a chance: see core/hearing/confidence.ts. */
  readonly confidence: number;
}

/** A value that the technician has just said no to; `quantity: null` where none was settled. */
export interface RejectedValue {
  readonly quantity: QuantityId | null;
  readonly value: number;
}

/** One thing that may have been said, and what counts for and against it. */
export interface Candidate extends Alternative {
  /** Its place among the recogniser's alternatives; 0 is the likeliest. */
  readonly rank: number;
  readonly utterance: Utterance;
  /** The value just rejected that it offers again. */
  readonly repeated: RejectedValue | null;
  /** Numbers that nothing claims, and values that would have to be confirmed. */
  readonly openNumbers: number;
  /** Words that no rule reads. */
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
 * Which of a recogniser's alternatives, likeliest first, to take: one that repeats no value just rejected,
 * then the one with the fewest numbers left open or doubted, then the one most of whose words are read, then
 * the likeliest. `null` when each repeats a rejected value, or there is none.
 */
export function chooseUnderstanding(
  alternatives: readonly Alternative[],
  context: Context,
  rejected: readonly RejectedValue[],
): Choice {
  const considered = alternatives.map((alternative, rank) =>
    candidate(alternative, rank, { context, rejected }),
  );
  const [chosen, ...others] = considered.filter(({ repeated }) => repeated === null);
  if (chosen === undefined) return { chosen: null, considered };
  const best = others.reduce((so, each) => (isBetter(each, so) ? each : so), chosen);
  return { chosen: best, because: reasonFor(best, considered), considered };
}

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
  return {
    words,
    confidence,
    rank,
    utterance,
    repeated: rejected.find((value) => repeats(utterance, value)) ?? null,
    openNumbers: utterance.unclaimed.length + utterance.doubts.length,
    unreadWords: tokens.length - read,
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

function isBetter(one: Candidate, other: Candidate): boolean {
  if (one.openNumbers !== other.openNumbers) return one.openNumbers < other.openNumbers;
  return one.unreadWords < other.unreadWords;
}

function reasonFor(best: Candidate, [first]: readonly Candidate[]) {
  if (first === undefined || first === best) return 'likeliest';
  if (first.repeated !== null) return 'notRejected';
  return best.openNumbers < first.openNumbers ? 'plausible' : 'readWhole';
}
