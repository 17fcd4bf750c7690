import { amountOf } from '../../visit/views.ts';
import type { VisitState } from '../../visit/state.ts';
import { fromBase, toBase } from '../../units/convert.ts';
import { temperature } from '../../units/quantity-values.ts';
import { readAmount } from '../current.ts';
import { andThen, needing, worked, type Found } from '../found.ts';
import { inputOf, readingAt } from '../judged/read-at.ts';
import { condensing, measured } from '../measured.ts';
import type { Refused } from '../verdict.ts';
import { levelsOf } from './levels-of.ts';
import { isLockedRotor } from './motor-evidence.ts';
import type { Judged } from './observation.ts';
import {
  FAR_KELVIN,
  FIXED_SUPERHEAT,
  HOTTEST_DISCHARGE,
  LEAST_DISCHARGE_RISE,
  SPREADS,
} from './spreads.ts';

/** Colder than any discharge line: where condensing is not known only the top is judged. */
const NO_FLOOR = temperature(-200);

export function dischargeLine(state: VisitState): Found<Judged> {
  return andThen(readAmount(state, 'dischargeLineTemp'), (reading) => {
    const coil = condensing(state);
    const low = coil.kind === 'known' ? coil.value + LEAST_DISCHARGE_RISE : NO_FLOOR;
    const levels = levelsOf({
      value: toBase(reading),
      low: Math.min(low, HOTTEST_DISCHARGE),
      high: HOTTEST_DISCHARGE,
      spread: SPREADS.dischargeLine,
      far: FAR_KELVIN,
    });
    const shown = { kind: 'reading', about: 'dischargeLineTemp', ...reading } as const;
    return worked({ symptom: 'dischargeLineTemp', levels, shown });
  });
}

/** The plate's amps are a ceiling, not what it should draw today: only above them does the reading say anything. */
export function amps(state: VisitState): Found<Judged> {
  const entry = readingAt(state, 'current', ['compressor', null]);
  const reading = entry && amountOf(entry.reading);
  const rated = state.unit.nameplate.ratedLoadAmps;
  if (!reading) return needing('current');
  if (isLockedRotor(toBase(reading), state)) return NOT_JUDGED;
  if (rated === undefined || toBase(reading) <= toBase(rated)) return NOT_JUDGED;
  const most = toBase(rated);
  const spread = most * 0.05;
  const levels = levelsOf({ value: toBase(reading), low: 0, high: most, spread, far: most / 2 });
  const shown = { kind: 'reading', about: 'current', ...reading } as const;
  return worked({ symptom: 'current', levels, shown }, { inputs: [inputOf(entry, reading)] });
}

const NOT_JUDGED: Refused = { kind: 'refused', about: 'current', reason: 'noTargetKnown' };

/** Between flooded and starved a capillary tube's superheat is anything. */
export function fixedSuperheat(state: VisitState): Found<Judged> {
  return andThen(measured('superheat', state), (reading) => {
    const inUnit = (kelvin: number): number => fromBase(kelvin, reading.unit).value;
    const levels = levelsOf({
      value: reading.value,
      low: inUnit(FIXED_SUPERHEAT.low),
      high: inUnit(FIXED_SUPERHEAT.high),
      spread: inUnit(SPREADS.instruments),
      far: inUnit(FAR_KELVIN),
    });
    const shown = { kind: 'reading', about: 'superheat', ...reading } as const;
    return worked({ symptom: 'superheat', levels, shown });
  });
}
