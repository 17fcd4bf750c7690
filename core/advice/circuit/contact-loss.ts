import { ACROSS_BANDS } from '../../calculations/electrical-defaults.ts';
import { toBase } from '../../units/convert.ts';
import { amountOf, type ReadingEntry } from '../../visit/views.ts';
import type { VisitState } from '../../visit/state.ts';
import { worked, type Found } from '../found.ts';
import { inputOf } from '../judged/read-at.ts';
import { standingFindings } from '../standing-findings.ts';
import type { Input, NextCheck } from '../verdict.ts';
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
  return lost >= LEAST_LOST && lost <= MOST_LOST ? [line, load].flatMap(inputs) : null;
}

/** Each pole and the coil under its load are read before anything of the refrigeration is asked. */
export const readPoles = (inputs: readonly Input[]): Found<NextCheck> =>
  worked<NextCheck>(
    { next: 'step', step: 'readPoles' },
    { inputs, sources: [SOURCE], cautions: ['liveWork'] },
  );

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

function voltsOf({ reading }: ReadingEntry): number | null {
  const amount = amountOf(reading);
  return amount && toBase(amount);
}

function inputs(entry: ReadingEntry): readonly Input[] {
  const amount = amountOf(entry.reading);
  return amount ? [inputOf(entry, amount)] : [];
}
