import type { CautionId, Known, Needs, Verdict } from '../advice/verdict.ts';
import type { Alternative, Choice, RejectedValue } from '../language/choose-understanding.ts';
import type { Expectation } from '../language/context.ts';
import type { KnownNames } from '../language/names/known-names.ts';
import type { Fact, Question, Reading, Utterance } from '../language/utterance.ts';
import type { PlaceId } from '../terms/names.ts';
import type { Reply } from '../replies/reply.ts';
import type { EventBody, VisitEvent } from '../visit/events.ts';
import type { VisitState } from '../visit/state.ts';
import type { Checked } from './read-back.ts';

/** One sentence through the whole core: the page, the command line and the tests all take this path. */
export interface Turn {
  readonly utterance: Utterance;
  /** Which of a recogniser's alternatives was taken, and why; `null` for typed words. */
  readonly choice: Choice | null;
  /** How each reading was taken: kept, said back, or asked about. */
  readonly checked: readonly Checked[];
  /** To be kept before the reply is spoken. */
  readonly events: readonly VisitEvent[];
  readonly state: VisitState;
  readonly verdicts: readonly Verdict[];
  readonly reply: Reply;
  /** What the session itself must do, outside the visit. */
  readonly effect: SessionEffect | null;
  /** With `newVisit`: what was said of the next unit, for the visit that the session opens. */
  readonly carried: readonly Fact[];
  /** What the reply asks for: the next sentence should be that, and need not be. */
  readonly expects: Expectation;
  readonly memory: Memory;
}

export type SessionEffect = 'pause' | 'resume' | 'readNote' | 'newVisit' | 'finish';

/** What was last answered and said: "where does that come from" and "say again" look back at it. */
export interface Memory {
  readonly lastAnswer: Known | null;
  readonly lastReply: Reply | null;
  /** A caution is spoken once and not repeated with every answer. */
  readonly cautionsSaid: readonly CautionId[];
  /** A question that lacked something: it is answered as soon as that is said. */
  readonly pending: Pending | null;
  /** Values that were said no to just now: they are not offered again. */
  readonly rejected: readonly RejectedValue[];
  /** What the last reply said back: "no" right behind it is about that. */
  readonly readBack: readonly Reading[];
}

export interface Pending {
  readonly question: Question;
  readonly need: Needs['need'];
  readonly place?: PlaceId;
  /** It was asked in the last reply: "next" is said of it. */
  readonly askedNow: boolean;
}

export const EMPTY_MEMORY: Memory = {
  lastAnswer: null,
  lastReply: null,
  cautionsSaid: [],
  pending: null,
  rejected: [],
  readBack: [],
};

/** Gives an event its id, device, place in the log and moment: the clock and the dice stay outside core. */
export type Stamp = (body: EventBody) => VisitEvent;

export interface TurnInput {
  readonly state: VisitState;
  readonly memory: Memory;
  /** Typed words, or what a recogniser offers for one sentence, likeliest first. */
  readonly words: string | readonly Alternative[];
  readonly stamp: Stamp;
  /** Sites and units of earlier visits. */
  readonly names?: KnownNames;
  /** Earlier visits, in any order: those to this unit are found by its name and its site. */
  readonly past?: readonly VisitState[];
}
