import { OF_THE_CYCLE } from '../advice/settling/bands.ts';
import { pressureTestOf } from '../advice/settling/pressure-test.ts';
import { heldOf } from '../advice/settling/held.ts';
import { seriesOf, since, type Series } from '../advice/settling/series.ts';
import type { PressureTestAnswer, VacuumHoldAnswer } from '../advice/settling/settling-verdict.ts';
import { movedSince } from '../advice/settling/settling.ts';
import { vacuumHoldOf } from '../advice/settling/vacuum-hold.ts';
import { figureText } from '../replies/amounts.ts';
import { quantityTerm, type QuantityId } from '../terms/quantities.ts';
import type { Amount } from '../units/amount.ts';
import { lastChange, type Change } from '../visit/changes.ts';
import type { VisitState } from '../visit/state.ts';
import { sentence } from './wording.ts';

const SHOWN: readonly QuantityId[] = [...OF_THE_CYCLE, 'superheat', 'boxTemp', 'productTemp'];

/** What was read again and again until it held, and what was left standing by the clock. */
export function watchedLines(state: VisitState): readonly string[] {
  const change = lastChange(state);
  const settled = change ? SHOWN.flatMap((about) => settledLine(about, change, state)) : [];
  return [...settled, ...holdLine(state), ...testLine(state)].map(sentence);
}

const minutesText = (minutes: number): string => `${Math.max(1, Math.round(minutes))} min`;

/** One reading after the change is in the sheet already. */
function settledLine(about: QuantityId, change: Change, state: VisitState): readonly string[] {
  const series = seriesOf(state, about);
  const recent = series && since(series, change.id, state);
  const last = recent?.samples.at(-1);
  if (!series || !recent || !last || recent.samples.length < 2) return [];
  const { name } = quantityTerm(about);
  const moved = movedSince(series, change, state);
  const was = moved
    ? `from ${figureText({ value: last.value - moved.change, unit: series.unit })} `
    : '';
  const after = moved ? ` ${minutesText(moved.minutes)} after the last change` : '';
  const now = figureText({ value: last.value, unit: series.unit });
  return [`${name} ${was}to ${now}${after}, ${heldWords(recent)}`];
}

function heldWords(series: Series): string {
  const held = heldOf(series);
  if (!held?.isSteady) return 'not yet seen to hold';
  const within = figureText({ value: held.within, unit: series.changeUnit });
  return `held within ${within} for ${minutesText(held.minutes)}`;
}

const HOLD_WORDS: Record<VacuumHoldAnswer['verdict'], string> = {
  tight: 'it held',
  leak: 'it rose without slowing, as a leak does',
  moisture: 'it levelled off as moisture does',
  offGassing: 'it levelled off, as oil giving off refrigerant does',
  moistureOrOffGassing: 'it levelled off, as moisture or oil giving off refrigerant does',
  readLonger: 'not read for long enough to tell',
  holdingSoFar: 'it held so far, not read for ten minutes',
};

function holdLine(state: VisitState): readonly string[] {
  const found = vacuumHoldOf(state);
  if (found.kind !== 'known') return [];
  const { verdict, from, to, unit, minutes } = found.value;
  const [reached, after] = [figureText({ value: from, unit }), figureText({ value: to, unit })];
  return [
    `Vacuum hold: reached ${reached}, ${after} after ${minutesText(minutes)} with the pump off; ${HOLD_WORDS[verdict]}`,
  ];
}

const TEST_WORDS: Record<PressureTestAnswer['verdict'], string> = {
  holds: 'it held',
  leaks: 'it lost pressure, as a leak does',
  rises: 'it rose by more than the temperature explains',
  temperatureNotRead: 'the gas temperature was not read at both ends, so it proves nothing',
};

function testLine(state: VisitState): readonly string[] {
  const found = pressureTestOf(state);
  if (found.kind !== 'known') return [];
  const { verdict, from, to, fromTemp, toTemp, expected, minutes } = found.value;
  const should = expected === null ? '' : ` (${figureText(expected)} by the temperature)`;
  return [
    `Pressure test: ${at(from, fromTemp)}, ${at(to, toTemp)} after ${minutesText(minutes)}${should}; ${TEST_WORDS[verdict]}`,
  ];
}

function at(pressure: Amount, temp: Amount | null): string {
  return temp === null ? figureText(pressure) : `${figureText(pressure)} at ${figureText(temp)}`;
}
