import type { Members } from '../../core/advice/by-kind.ts';
import type { Known, Verdict } from '../../core/advice/verdict.ts';
import { isRephrasable } from '../../core/replies/guard/phrase-or.ts';
import {
  beforeAfterRecord,
  compareRecord,
  marginRecord,
  type Recorded,
  rowsRecord,
  saturationRecord,
  targetRecord,
  valueRecord,
} from './number-records.ts';
import type { PhraseRecord } from './phrase-record.ts';

type Answer = Known['answer'];
type Answers = Members<Known, 'answer'>;
type Records = { readonly [A in Answer]: ((known: Answers[A]) => Recorded) | null };

/** Null for what its template alone may say. */
const RECORDS: Records = {
  target: targetRecord,
  value: valueRecord,
  compare: compareRecord,
  saturation: saturationRecord,
  margin: marginRecord,
  beforeAfter: beforeAfterRecord,
  before: rowsRecord,
  readback: rowsRecord,
  judged: null,
  limit: null,
  hottestDay: null,
  causes: null,
  nextCheck: null,
  switch: null,
  nextPlace: null,
  leftOpen: null,
  moved: null,
  step: null,
  stepsDone: null,
  note: null,
  working: null,
  trend: null,
  settled: null,
  tooSoon: null,
  secondChange: null,
  lastVisit: null,
  lastDone: null,
  seenBefore: null,
  eta: null,
  timeLeft: null,
  timeUp: null,
  vacuumHold: null,
  pressureTest: null,
};

/** What a model is told of a verdict; null for what is only ever said by its template. */
export function recordOf(verdict: Verdict): PhraseRecord | null {
  return isRephrasable(verdict) ? recorded(verdict) : null;
}

function recorded<A extends Answer>(
  known: Answers[A] & { readonly answer: A },
): PhraseRecord | null {
  const of: Records[A] = RECORDS[known.answer];
  return of === null ? null : { kind: known.answer, ...of(known) };
}
