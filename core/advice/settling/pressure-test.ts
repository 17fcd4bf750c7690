import { nitrogenTest, nitrogenTestFormula } from '../../calculations/nitrogen-test.ts';
import { toAbsolutePressure, toGaugePressure, toGaugeReading } from '../../units/branding.ts';
import { convert, fromBase, toBase } from '../../units/convert.ts';
import type { Amount } from '../../units/amount.ts';
import { SHOWN_UNITS } from '../../units/shown-unit.ts';
import { temperature } from '../../units/quantity-values.ts';
import type { VisitState } from '../../visit/state.ts';
import { timerOf } from '../../visit/timers.ts';
import { amountOf, isNewer, type ReadingEntry } from '../../visit/views.ts';
import { calculated, needing, worked, type Found } from '../found.ts';
import { localAir, localAirInput } from '../local-air.ts';
import { minutesBetween } from './series.ts';
import type { PressureTestAnswer } from './settling-verdict.ts';

interface TestReading {
  readonly pressure: Amount;
  readonly gasTemp: Amount | null;
  readonly at: number;
}

/** From the reading that began the test to the last, with what the gas's own cooling or warming did taken off. */
export function pressureTestOf(state: VisitState): Found<PressureTestAnswer> {
  const readings = testReadings(state);
  const [first, last] = [readings[0], readings.at(-1)];
  if (!first || !last) return needing('testPressure');
  if (readings.length < 2) {
    return {
      kind: 'refused',
      about: 'testPressure',
      reason: 'seriesTooShort',
      readings: 1,
      wanted: 2,
    };
  }
  const plain: PressureTestAnswer = {
    answer: 'pressureTest',
    verdict: 'temperatureNotRead',
    from: first.pressure,
    to: last.pressure,
    fromTemp: first.gasTemp,
    toTemp: last.gasTemp,
    expected: null,
    minutes: minutesBetween(first.at, last.at),
  };
  return first.gasTemp && last.gasTemp
    ? judged(plain, { fromTemp: first.gasTemp, toTemp: last.gasTemp }, state)
    : worked(plain);
}

function judged(
  plain: PressureTestAnswer,
  { fromTemp, toTemp }: { readonly fromTemp: Amount; readonly toTemp: Amount },
  state: VisitState,
): Found<PressureTestAnswer> {
  const air = localAir(state);
  const [from, to] = [toGaugePressure(plain.from), toGaugePressure(plain.to)];
  if (from === null || to === null) return needing('testPressure');
  const test = calculated(
    nitrogenTest({
      pressure: toAbsolutePressure(from, air),
      found: toAbsolutePressure(to, air),
      from: temperature(toBase(fromTemp)),
      to: temperature(toBase(toTemp)),
    }),
    nitrogenTestFormula,
    state,
  );
  if (test.kind !== 'known') return test;
  const expected = fromBase(toGaugeReading(test.value.expected, air), plain.to.unit);
  return {
    ...test,
    value: { ...plain, verdict: test.value.verdict, expected },
    inputs: [
      { name: 'testPressure', ...plain.from, from: 'read' },
      { name: 'testPressure', ...plain.to, from: 'read' },
      ...localAirInput(state),
    ],
  };
}

/** Of a timed test, from its last reading before the clock was started. */
function testReadings(state: VisitState): readonly TestReading[] {
  const timer = timerOf(state, 'pressureTest');
  const all = state.readings.flatMap((entry) => testReading(entry, state));
  if (timer === null) return all;
  const later = all.filter(({ id }) => isNewer(state, id, timer.id));
  const start = all.findLast(({ id }) => !isNewer(state, id, timer.id));
  return start ? [start, ...later] : later;
}

function testReading(
  { id, at, reading }: ReadingEntry,
  { settings }: VisitState,
): readonly (TestReading & { readonly id: string })[] {
  const amount = reading.quantity === 'testPressure' ? amountOf(reading) : null;
  const pressure = amount && convert(amount, SHOWN_UNITS[settings.units].gaugePressure);
  return pressure ? [{ id, at, pressure, gasTemp: reading.gasTemp ?? null }] : [];
}
