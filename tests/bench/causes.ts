import { CIRCUIT_STEPS } from '../../core/advice/circuit/ready-circuits.ts';
import { answer } from '../../core/advice/answer.ts';
import type { Question } from '../../core/language/utterance.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { read, readings, REACH_IN, visitOf, WARM } from '../advice/visits.ts';

export interface CausesBench {
  readonly causesMs: number;
  readonly nextCheckMs: number;
  /** All circuits made ready, as the page does once after it is drawn. */
  readonly circuitsReadyMs: number;
  readonly nextPlaceMs: number;
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
    circuitsReadyMs: timeOf(() => CIRCUIT_STEPS.forEach((step) => step())),
    nextPlaceMs: median(
      { ask: 'nextCheck' },
      visitOf([
        REACH_IN,
        readings(
          { ...read('voltage', 115, 'V'), place: 'lineSide' },
          { ...read('voltage', 0, 'V'), place: 'compressor' },
          { ...read('voltage', 0, 'V'), place: 'highPressureSwitch' },
        ),
      ]),
    ),
  };
}

function timeOf(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

function median(question: Question, state: VisitState): number {
  const rounds = Array.from({ length: ROUNDS }, () => {
    const start = performance.now();
    answer(question, state, { lastAnswer: null });
    return performance.now() - start;
  });
  return rounds.toSorted((a, b) => a - b)[Math.floor(ROUNDS / 2)] ?? NaN;
}
