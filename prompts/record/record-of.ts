import type { Members } from '../../core/advice/by-kind.ts';
import type { Known, Verdict } from '../../core/advice/verdict.ts';
import { saidWithIt } from '../../core/replies/answers.ts';
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
import { toldRecord } from './told-record.ts';

type Answer = Known['answer'];
type Answers = Members<Known, 'answer'>;
type Records = { readonly [A in Answer]: ((known: Answers[A]) => Recorded) | 'told' | null };

/** Null for what its template alone may say; `told`: its fields and slots are those of its statements. */
const RECORDS: Records = {
  target: targetRecord,
  value: valueRecord,
  compare: compareRecord,
  saturation: saturationRecord,
  margin: marginRecord,
  beforeAfter: beforeAfterRecord,
  before: rowsRecord,
  readback: rowsRecord,
  judged: 'told',
  limit: 'told',
  hottestDay: 'told',
  causes: 'told',
  nextCheck: 'told',
  switch: 'told',
  nextPlace: 'told',
  leftOpen: 'told',
  moved: 'told',
  step: null,
  stepsDone: 'told',
  note: null,
  guide: null,
  explained: null,
  overall: null,
  toCome: null,
  timeHere: null,
  working: null,
  trend: 'told',
  settled: 'told',
  tooSoon: 'told',
  secondChange: 'told',
  lastVisit: 'told',
  lastDone: 'told',
  seenBefore: 'told',
  eta: 'told',
  timeLeft: 'told',
  timeUp: 'told',
  vacuumHold: 'told',
  pressureTest: 'told',
};

/** What a model is told of a verdict; null for what is only ever said by its template. */
export function recordOf(verdict: Verdict): PhraseRecord | null {
  return isRephrasable(verdict) ? recorded(verdict) : null;
}

function recorded<A extends Answer>(
  known: Answers[A] & { readonly answer: A },
): PhraseRecord | null {
  const of: Records[A] = RECORDS[known.answer];
  if (of === null) return null;
  const record = of === 'told' ? toldRecord(known) : of(known);
  const tail = saidWithIt(known);
  return record && { kind: known.answer, ...(tail && { tail }), ...record };
}
