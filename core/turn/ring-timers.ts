import type { Known } from '../advice/verdict.ts';
import type { Utterance } from '../language/utterance.ts';
import { say } from '../replies/say.ts';
import { TIMED_WORK } from '../terms/timed-work.ts';
import { applyEvents } from '../visit/apply.ts';
import type { EventBody } from '../visit/events.ts';
import { dueTimers, type TimerEntry } from '../visit/timers.ts';
import { expectationAfter } from './context-of.ts';
import type { Turn, TurnInput } from './turn.ts';

export type RingInput = Omit<TurnInput, 'words'> & {
  /** Milliseconds since 1970, by whoever has a clock. */
  readonly now: number;
};

/**
 * What the visit says by itself when timers are up: which, and what to read now. Nobody said anything, so its
 * utterance is empty. Null while nothing is due.
 */
export function ringTimers({ state, memory, stamp, now }: RingInput): Turn | null {
  const due = dueTimers(state, now);
  if (due.length === 0) return null;
  const events = bodiesOf(due).map(stamp);
  const after = applyEvents(events, state);
  const verdict = timeUp(due);
  const reply = say(
    { acknowledgements: [], verdicts: [verdict], nothingHeard: false },
    after.settings,
  );
  return {
    utterance: NOTHING_SAID,
    choice: null,
    checked: [],
    events,
    state: after,
    verdicts: [verdict],
    reply: { ...reply, earcon: 'timeUp' },
    effect: null,
    carried: [],
    expects: expectationAfter(events, after),
    memory: { ...memory, lastReply: reply, readBack: [] },
  };
}

/** The reading that the last of them was for is asked for, also where it has been before: a bare number answers it. */
function bodiesOf(due: readonly TimerEntry[]): readonly EventBody[] {
  const work = due.at(-1)?.work ?? null;
  const quantity = work === null ? null : TIMED_WORK[work].asks;
  const rang = due.map(({ id }): EventBody => ({ type: 'timerRang', v: 1, target: id }));
  if (quantity === null) return rang;
  return [...rang, { type: 'readingWanted', v: 1, quantity }];
}

function timeUp(due: readonly TimerEntry[]): Known {
  const timers = due.map(({ about, work, minutes }) => ({ timer: { about, work }, minutes }));
  return {
    kind: 'known',
    formula: null,
    inputs: [],
    source: null,
    cautions: [],
    answer: 'timeUp',
    timers,
  };
}

const NOTHING_SAID: Utterance = {
  text: '',
  readings: [],
  facts: [],
  findings: [],
  work: [],
  recommendations: [],
  questions: [],
  commands: [],
  memos: [],
  remarks: [],
  unclaimed: [],
  doubts: [],
};
