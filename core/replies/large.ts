import type { TimeLeftAnswer, TimeUpAnswer } from '../advice/settling/settling-verdict.ts';
import type { Known, Verdict } from '../advice/verdict.ts';
import type { Reading } from '../language/utterance.ts';
import { JUDGED } from '../terms/judged.ts';
import { PROCEDURES } from '../terms/procedures.ts';
import { formatAmount } from '../units/format-amount.ts';
import { unitRow, type UnitId } from '../units/units.ts';
import { unreachable } from '../unreachable.ts';
import type { Acknowledgement } from '../visit/acknowledgement.ts';
import { figureText, heardNumber } from './amounts.ts';
import { SHORT_NAMES } from './names.ts';
import { readName } from './readings.ts';
import type { Large } from './reply.ts';
import { timerName } from './timer-sentences.ts';

interface Shown {
  readonly acknowledgements: readonly Acknowledgement[];
  readonly verdicts: readonly Verdict[];
}

/** The one thing for the screen: the last answer that is one number, else the last reading kept or asked about. */
export function largeOf({ acknowledgements, verdicts }: Shown): Large | null {
  const answer = verdicts.findLast((verdict) => verdict.kind === 'known');
  return (answer && largeAnswer(answer)) ?? largeReading(acknowledgements);
}

function largeAnswer(known: Known): Large | null {
  switch (known.answer) {
    case 'value':
      return large(known.of ?? SHORT_NAMES[known.about], known.value, known.unit);
    case 'target':
    case 'trend':
      return large(SHORT_NAMES[known.about], known.value, known.unit);
    case 'compare':
      return known.direction === 'on'
        ? large(`${SHORT_NAMES[known.about]}, on target`, known.measured, known.measuredUnit)
        : large(`${SHORT_NAMES[known.about]} ${known.direction}`, known.value, known.unit);
    case 'step':
      return largeStep(known);
    case 'saturation':
      return large(known.refrigerant, known.value, known.unit);
    case 'margin':
      return large(`${known.side} ${SHORT_NAMES[known.about]}`, known.value, known.unit);
    case 'limit':
      return large(LIMIT_NAMES[known.about], known.value, known.unit);
    case 'hottestDay':
      return large('head, hottest day', known.value, known.unit);
    case 'judged':
      return largeJudged(known);
    case 'eta':
      return largeEta(known);
    case 'vacuumHold':
      return large('vacuum', known.to, known.unit);
    case 'pressureTest':
      return large('test pressure', known.to.value, known.to.unit);
    case 'timeLeft':
    case 'timeUp':
      return largeTimer(known);
    case 'settled':
    case 'tooSoon':
    case 'secondChange':
    case 'beforeAfter':
    case 'before':
    case 'readback':
    case 'switch':
    case 'nextPlace':
    case 'causes':
    case 'nextCheck':
    case 'leftOpen':
    case 'moved':
    case 'lastVisit':
    case 'lastDone':
    case 'seenBefore':
    case 'stepsDone':
    case 'note':
    case 'guide':
    case 'explained':
    case 'overall':
    case 'toCome':
    case 'timeHere':
    case 'working':
      return null;
    default:
      return unreachable(known);
  }
}

type Told<Answer extends Known['answer']> = Extract<Known, { answer: Answer }>;

const largeJudged = ({ about, value, unit }: Told<'judged'>): Large | null =>
  value === null || about === 'windings' ? null : large(JUDGED[about], value, unit);

const largeStep = ({ procedure, number, of }: Told<'step'>): Large => ({
  name: PROCEDURES[procedure].name,
  value: String(number),
  unit: `of ${String(of)}`,
});

function largeEta({ about, target, unit, minutes }: Told<'eta'>): Large {
  const name = `to ${SHORT_NAMES[about]} ${figureText({ value: target, unit })}`;
  return large(name, Math.round(minutes), 'min');
}

const LIMIT_NAMES = {
  testPressure: 'test pressure, at most',
  cylinderFill: 'full on the scale',
  charge: 'nameplate charge',
} as const;

/** The next to ring, or the one that did. */
function largeTimer({ answer, timers }: TimeLeftAnswer | TimeUpAnswer): Large | null {
  const first = answer === 'timeUp' ? timers.at(-1) : timers[0];
  if (!first) return null;
  const name = `${timerName(first.timer)} ${answer === 'timeUp' ? 'up' : 'left'}`;
  return large(name, Math.ceil(first.minutes), 'min');
}

function large(name: string, value: number, unit: UnitId): Large {
  const { digits, symbol } = formatAmount({ value, unit });
  return { name, value: digits, unit: symbol };
}

function largeReading(acknowledgements: readonly Acknowledgement[]): Large | null {
  const kept = acknowledgements.flatMap((one) => {
    if (one.kind === 'reading') return [one.reading];
    if (one.kind === 'doubt') return [one.doubt];
    return one.kind === 'amended' ? [one.to] : [];
  });
  const last = kept.at(-1);
  return last ? heard(last) : null;
}

function heard(reading: Reading): Large | null {
  const name = readName(reading);
  const unit = reading.unit === null ? '' : unitRow(reading.unit).symbol;
  if (reading.overlimit) return { name, value: 'OL', unit };
  const { value, low, high } = reading;
  if (value !== undefined) return { name, value: heardNumber(value), unit };
  if (low === undefined || high === undefined) return null;
  return { name, value: `${heardNumber(low)}–${heardNumber(high)}`, unit };
}
