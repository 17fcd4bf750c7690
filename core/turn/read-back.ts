import type { Candidate, Choice, RejectedValue } from '../language/choose-understanding.ts';
import { confusables } from '../language/numbers/confusables.ts';
import type { Context } from '../language/context.ts';
import { isDoubtful } from '../language/settle/doubts.ts';
import type { Doubt, Reading, Utterance } from '../language/utterance.ts';
import {
  certaintyOf,
  CLOSE_BEHIND,
  type Certainty,
  READ_BACK_POLICY,
  type ReadBack,
  type Rivalry,
  SENTENCE_FROM,
  WORTH_OFFERING,
} from './read-back-policy.ts';
import { chanceThat } from './surely-said.ts';

/** What was decided about one reading, and by what: kept on the turn so that it can be explained. */
export interface Checked {
  readonly reading: Reading;
  readonly certainty: Certainty;
  readonly rivalry: Rivalry;
  /** The value that may have been said in its place. */
  readonly rival: number | null;
  readonly readBack: ReadBack;
}

export interface Hearing {
  /** `null`: the words were typed. */
  readonly choice: Choice | null;
  readonly context: Context;
  readonly rejected: readonly RejectedValue[];
}

/** Each reading by the policy. */
export function checkReadings(utterance: Utterance, hearing: Hearing): readonly Checked[] {
  return utterance.readings.map((reading) => check(reading, hearing));
}

function check(reading: Reading, hearing: Hearing): Checked {
  const { choice } = hearing;
  const certainty = howCertain(reading, choice);
  const rivals = plausibleRivals(reading, hearing);
  const offered = rivals.find((rival) => isOffered({ ...reading, value: rival }, choice));
  const rival = offered ?? likeliestRival(reading, hearing) ?? rivals[0] ?? null;
  const rivalry = offered !== undefined ? 'offered' : rival === null ? 'none' : 'possible';
  return { reading, certainty, rivalry, rival, readBack: READ_BACK_POLICY[certainty][rivalry] };
}

/** A value may stand in every wording of a noise: it is no surer than the sentence it stands in. */
function howCertain(reading: Reading, choice: Choice | null): Certainty {
  if (choice?.chosen == null) return 'typed';
  const certainty = certaintyOf(chanceThat(choice, (each) => says(each, reading)));
  const isLikely = choice.chosen.soundChance >= SENTENCE_FROM || repeatedIn(choice);
  return certainty === 'untold' || isLikely ? certainty : 'unsure';
}

const repeatedIn = ({ considered }: Choice): boolean =>
  considered.some(({ repeated }) => repeated !== null);

/** The value that another of the recogniser's alternatives has in its place, where there is one worth offering. */
function likeliestRival(reading: Reading, { choice, context, rejected }: Hearing): number | null {
  const others = (choice?.considered ?? [])
    .filter(({ confidence }) => confidence >= WORTH_OFFERING)
    .flatMap(({ utterance, confidence }) =>
      utterance.readings
        .filter((other) => isRival(other, reading))
        .map(({ value }) => ({ value, confidence })),
    )
    .toSorted((one, other) => other.confidence - one.confidence);
  const plausible = others.find(({ value }) => isPlausible(value, reading, { context, rejected }));
  return plausible?.value ?? null;
}

const isRival = (other: Reading, { quantity, place, value }: Reading): boolean =>
  other.quantity === quantity && other.place === place && other.value !== value;

/** Values that sound like it, that would not be doubted themselves and were not just said no to. */
function plausibleRivals(reading: Reading, hearing: Hearing): readonly number[] {
  if (reading.value === undefined) return [];
  return confusables(reading.value).filter((value) => isPlausible(value, reading, hearing));
}

function isPlausible(
  value: number | undefined,
  reading: Reading,
  { context, rejected }: Pick<Hearing, 'context' | 'rejected'>,
): value is number {
  return (
    value !== undefined &&
    !isDoubtful({ ...reading, value }, context) &&
    !rejected.some(
      (each) =>
        each.value === value && (each.quantity === null || each.quantity === reading.quantity),
    )
  );
}

function isOffered(rival: Reading, choice: Choice | null): boolean {
  const chosen = choice?.chosen ?? null;
  if (choice === null || chosen === null) return false;
  return choice.considered.some(
    (other) =>
      other !== chosen &&
      chosen.confidence - other.confidence <= CLOSE_BEHIND &&
      says(other, rival),
  );
}

function says({ utterance }: Candidate, { quantity, place, value }: Reading): boolean {
  return utterance.readings.some(
    (each) => each.quantity === quantity && each.place === place && each.value === value,
  );
}

/** The utterance with each reading that must be asked about as a question: between two values, or about its own. */
export function askedAbout(utterance: Utterance, checked: readonly Checked[]): Utterance {
  const asked = checked.filter(({ readBack }) => ASKS.has(readBack));
  if (asked.length === 0) return utterance;
  const doubts = asked.map(({ reading, rival, readBack }): Doubt => ({
    ...reading,
    why: 'soundsLike',
    ...(rival === null || readBack === 'confirm' ? {} : { or: rival }),
  }));
  return {
    ...utterance,
    readings: utterance.readings.filter(
      (reading) => !asked.some((each) => each.reading === reading),
    ),
    doubts: [...utterance.doubts, ...doubts],
  };
}

const ASKS: ReadonlySet<ReadBack> = new Set(['confirm', 'askWhich']);
