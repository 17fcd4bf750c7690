import type { CautionId, Known, Needs, Verdict } from '../advice/verdict.ts';
import type { Question, Utterance } from '../language/utterance.ts';
import type { Reply } from '../replies/reply.ts';
import type { EventBody, VisitEvent } from '../visit/events.ts';
import type { VisitState } from '../visit/state.ts';

/** One sentence through the whole core: the page, the command line and the tests all take this path. */
export interface Turn {
  readonly utterance: Utterance;
  /** To be kept before the reply is spoken. */
  readonly events: readonly VisitEvent[];
  readonly state: VisitState;
  readonly verdicts: readonly Verdict[];
  readonly reply: Reply;
  /** What the session itself must do, outside the visit. */
  readonly effect: SessionEffect | null;
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
}

export interface Pending {
  readonly question: Question;
  readonly need: Needs['need'];
}

export const EMPTY_MEMORY: Memory = {
  lastAnswer: null,
  lastReply: null,
  cautionsSaid: [],
  pending: null,
};

/** Gives an event its id, device, place in the log and moment: the clock and the dice stay outside core. */
export type Stamp = (body: EventBody) => VisitEvent;

export interface TurnInput {
  readonly state: VisitState;
  readonly memory: Memory;
  readonly words: string;
  readonly stamp: Stamp;
}
