import type { Members } from '../../../advice/by-kind.ts';
import type { Known } from '../../../advice/verdict.ts';
import { causesTold, nextCheckTold } from './causes.ts';
import { nextPlaceTold, switchTold } from './circuit.ts';
import { lastDoneTold, lastVisitTold, seenBeforeTold } from './history.ts';
import { judgedTold } from './judged.ts';
import { hottestDayTold, limitTold } from './limits.ts';
import { secondChangeTold, settledTold, tooSoonTold, trendTold } from './settling.ts';
import { etaTold, pressureTestTold, timeLeftTold, timeUpTold, vacuumHoldTold } from './timed.ts';
import type { Told } from './told.ts';
import { leftOpenTold, movedTold, stepsDoneTold } from './visit.ts';

type Answer = Known['answer'];
type Answers = Members<Known, 'answer'>;

/** Never rephrased, and why. */
interface WordForWord {
  readonly wordForWord: string;
}
/** Held by its numbers with their cues: `../claims.ts`. */
type ByFigures = 'byFigures';

type TellerOf = {
  readonly [A in Answer]: ((known: Answers[A]) => Told | null) | WordForWord | ByFigures;
};

const TELLERS: TellerOf = {
  target: 'byFigures',
  value: 'byFigures',
  compare: 'byFigures',
  saturation: 'byFigures',
  margin: 'byFigures',
  beforeAfter: 'byFigures',
  before: 'byFigures',
  readback: 'byFigures',
  judged: (known) => judgedTold(known),
  limit: (known) => limitTold(known),
  hottestDay: hottestDayTold,
  causes: causesTold,
  nextCheck: (next) => nextCheckTold(next),
  switch: switchTold,
  nextPlace: nextPlaceTold,
  leftOpen: leftOpenTold,
  moved: movedTold,
  step: { wordForWord: 'hands are on a valve, and the caution belongs to the step' },
  stepsDone: stepsDoneTold,
  note: { wordForWord: 'the note itself follows it, as it stands' },
  guide: { wordForWord: 'what keeps a hand whole is not reworded' },
  explained: { wordForWord: 'a sentence of its own, whole as it stands' },
  overall: { wordForWord: 'a row of figures, each with what it should be' },
  toCome: { wordForWord: 'what somebody recommended, in their words' },
  timeHere: { wordForWord: 'the office bills by it' },
  working: { wordForWord: 'an equation and where each input is from: nothing in it may be moved' },
  trend: trendTold,
  settled: settledTold,
  tooSoon: tooSoonTold,
  secondChange: () => secondChangeTold,
  lastVisit: lastVisitTold,
  lastDone: lastDoneTold,
  seenBefore: seenBeforeTold,
  eta: etaTold,
  timeLeft: timeLeftTold,
  timeUp: timeUpTold,
  vacuumHold: vacuumHoldTold,
  pressureTest: pressureTestTold,
};

/** What must be told of a verdict, and in which wordings; null where it is held otherwise, or word for word. */
export function toldOf(known: Known): Told | null {
  return told(known);
}

function told<A extends Answer>(known: Answers[A] & { readonly answer: A }): Told | null {
  const teller: TellerOf[A] = TELLERS[known.answer];
  return typeof teller === 'function' ? teller(known) : null;
}
