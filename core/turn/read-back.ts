import type { Candidate, Choice, RejectedValue } from '../language/choose-understanding.ts';
import { confusables } from '../language/confusables.ts';
import type { Context } from '../language/context.ts';
import { isDoubtful } from '../language/doubts.ts';
import type { Doubt, Reading, Utterance } from '../language/utterance.ts';
import {
  certaintyOf,
  CLOSE_BEHIND,
  type Certainty,
  READ_BACK_POLICY,
  type ReadBack,
  type Rivalry,
} from './read-back-policy.ts';

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
  const chosen = hearing.choice?.chosen ?? null;
  const certainty = chosen === null ? 'typed' : certaintyOf(chosen.confidence);
  const rivals = plausibleRivals(reading, hearing);
  const offered = rivals.find((rival) => isOffered({ ...reading, value: rival }, hearing.choice));
  const rival = offered ?? rivals[0] ?? null;
  const rivalry = offered !== undefined ? 'offered' : rival === null ? 'none' : 'possible';
  return { reading, certainty, rivalry, rival, readBack: READ_BACK_POLICY[certainty][rivalry] };
}

/** Values that sound like it, that would not be doubted themselves and were not just said no to. */
function plausibleRivals(reading: Reading, { context, rejected }: Hearing): readonly number[] {
  if (reading.value === undefined) return [];
  return confusables(reading.value).filter(
    (value) =>
      !isDoubtful({ ...reading, value }, context) &&
      !rejected.some(
        (each) =>
          each.value === value && (each.quantity === null || each.quantity === reading.quantity),
      ),
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

/** The utterance with each reading that must be asked about as a question between the two values. */
export function askedWhich(utterance: Utterance, checked: readonly Checked[]): Utterance {
  const asked = checked.filter(({ readBack }) => readBack === 'askWhich');
  if (asked.length === 0) return utterance;
  const doubts = asked.map(({ reading, rival }): Doubt => ({
    ...reading,
    why: 'soundsLike',
    ...(rival === null ? {} : { or: rival }),
  }));
  return {
    ...utterance,
    readings: utterance.readings.filter(
      (reading) => !asked.some((each) => each.reading === reading),
    ),
    doubts: [...utterance.doubts, ...doubts],
  };
}
