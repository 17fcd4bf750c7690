import { answer } from '../../core/advice/answer.ts';
import type { Question } from '../../core/language/utterance.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { read, readings, REACH_IN, visitOf, WARM } from '../advice/visits.ts';

export interface CausesBench {
  readonly causesMs: number;
  readonly nextCheckMs: number;
}

const ROUNDS = 200;

/** A whole answer each, on a visit with every reading that counts: the median of many. */
export function benchCauses(): CausesBench {
  const state = visitOf([
    REACH_IN,
    WARM,
    readings(
      read('suctionLineTemp', 29, 'degF'),
      read('liquidLineTemp', 104, 'degF'),
      read('dischargeLineTemp', 190, 'degF'),
      read('setpointTemp', 36, 'degF'),
    ),
  ]);
  return {
    causesMs: median({ ask: 'causes' }, state),
    nextCheckMs: median({ ask: 'nextCheck' }, state),
  };
}

function median(question: Question, state: VisitState): number {
  const rounds = Array.from({ length: ROUNDS }, () => {
    const start = performance.now();
    answer(question, state, { lastAnswer: null });
    return performance.now() - start;
  });
  return rounds.toSorted((a, b) => a - b)[Math.floor(ROUNDS / 2)] ?? NaN;
}
