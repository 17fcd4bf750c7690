import { ACROSS_BANDS, NO_VOLTAGE } from '../../calculations/electrical-defaults.ts';
import type { ReadingEntry } from '../../visit/views.ts';
import type { VisitState } from '../../visit/state.ts';
import { worked, type Found } from '../found.ts';
import { inputsAt, voltsOf } from './metered-volts.ts';
import { standingFindings } from '../standing-findings.ts';
import type { Input, Known, NextCheck } from '../verdict.ts';
import { isSupply, lastNamed, metered, supplyReading } from './evidence.ts';

/** Ours: two readings a moment apart, and the leads themselves, differ by less of the supply. */
const LEAST_LOST = 0.05;
/** Ours: with more than that gone the contacts are open, and a meter shows what leaks past them. */
const MOST_LOST = 0.5;

const SOURCE = `voltage lost across contacts that are closed is burnt contacts, from a few percent of the supply on: ${ACROSS_BANDS.standing}`;

/** Volts in and out of the contactor's closed contacts, where too much of them stays behind. */
export function contactLoss(state: VisitState): readonly Input[] | null {
  const [line, load] = [supplyReading(state), loadSide(state)];
  const [volts, left] = [line && voltsOf(line), load && voltsOf(load)];
  if (line === null || load === null || volts === null || left === null) return null;
  if (!isSupply(volts) || isOut(state)) return null;
  const lost = (volts - left) / volts;
  return lost >= LEAST_LOST && lost <= MOST_LOST ? [line, load].flatMap(inputsAt) : null;
}

/** Each pole and the coil under its load are read before anything of the refrigeration is asked. */
export const readPoles = (inputs: readonly Input[]): Found<NextCheck> =>
  worked<NextCheck>(
    { next: 'step', step: 'readPoles' },
    { inputs, sources: [SOURCE], cautions: ['liveWork'] },
  );

/**
 * Power in and none out, and nothing read at its coil yet: not pulled in, or its contacts are open. The coil tells
 * which: with its voltage the contacts or the coil itself, without it the controls in series before it
 * (achrnews.com, Ice breaker: the hopscotch method; achrnews.com/articles/165272).
 */
export function contactsPassNothing(state: VisitState): Known | null {
  const [line, load] = [supplyReading(state), loadSide(state)];
  const [volts, left] = [line && voltsOf(line), load && voltsOf(load)];
  if (line === null || load === null || volts === null || left === null) return null;
  if (!isSupply(volts) || left >= NO_VOLTAGE || isReadOn(load, state)) return null;
  return {
    kind: 'known',
    answer: 'nextCheck',
    formula: null,
    inputs: [line, load].flatMap(inputsAt),
    source: COIL_SOURCE,
    cautions: ['liveWork'],
    next: 'step',
    step: 'readCoil',
  };
}

/** Of its coil, or past it: who has read a control since follows that. */
function isReadOn({ id }: ReadingEntry, state: VisitState): boolean {
  const readings = metered(state);
  const since = readings.slice(readings.findIndex((entry) => entry.id === id) + 1);
  return lastNamed(since) !== null || readings.some(({ reading }) => reading.place === 'contactor');
}

const COIL_SOURCE =
  'achrnews.com, Ice breaker: the hopscotch method; a load with its voltage that does nothing is the load: achrnews.com/articles/165272';

/** That of the contactor: behind a switch that was just named a load side is that switch's own. */
function loadSide(state: VisitState): ReadingEntry | null {
  const readings = metered(state);
  const at = readings.findLastIndex(
    ({ reading: { quantity, place } }) => quantity === 'voltage' && place === 'loadSide',
  );
  const entry = readings[at];
  if (entry === undefined) return null;
  const named = lastNamed(readings.slice(0, at));
  const isItsOwn = named === null || named === 'contactor' || named === 'compressor';
  return isItsOwn || /contactor/i.test(entry.reading.words) ? entry : null;
}

/** Not pulled in, it passes nothing and need not. */
const isOut = (state: VisitState): boolean =>
  standingFindings(state).some(
    ({ finding: { part, state: found } }) =>
      part === 'contactor' && (found === 'open' || found === 'notRunning'),
  );
