import {
  capacitorTolerance,
  capacitorToleranceFormula,
  runCapacitance,
  runCapacitanceFormula,
} from '../../calculations/capacitors.ts';
import {
  heaterCurrent,
  heaterCurrentFormula,
  heaterResistance,
  heaterResistanceByAmps,
  heaterResistanceByAmpsFormula,
  heaterResistanceFormula,
} from '../../calculations/heaters.ts';
import {
  currentImbalance,
  currentImbalanceFormula,
  voltageImbalance,
  voltageImbalanceFormula,
} from '../../calculations/imbalance.ts';
import {
  CURRENT_IMBALANCE_LIMIT,
  LOCKED_ROTOR_MULTIPLE,
  NAMEPLATE_VOLTAGE_TOLERANCE,
  RATED_LOAD_DIVISOR,
  VOLTAGE_IMBALANCE_LIMIT,
  VOLTAGE_IMBALANCE_STOP,
} from '../../calculations/electrical-defaults.ts';
import { motorVoltage, motorVoltageFormula } from '../../calculations/supply-voltage.ts';
import type { PlaceId } from '../../terms/names.ts';
import { LEG_PAIRS } from '../../terms/three-phase.ts';
import type { Amount } from '../../units/amount.ts';
import {
  toCapacitance,
  toCurrent,
  toPower,
  toResistance,
  toVoltage,
} from '../../units/branding.ts';
import { fromBase } from '../../units/convert.ts';
import {
  frequency,
  type Capacitance,
  type Current,
  type Resistance,
  type Voltage,
} from '../../units/quantity-values.ts';
import { SHOWN_UNITS } from '../../units/shown-unit.ts';
import type { VisitState } from '../../visit/state.ts';
import { andThen, both, calculated, worked, type Found } from '../found.ts';
import type { Input } from '../verdict.ts';
import type { HeaterFinding, JudgedOf } from './judged-verdict.ts';
import { amountAt, brandedAs, needAt, needPlate, plateOf, readingAt } from './read-at.ts';
import { sinceRepair } from './since-repair.ts';

const CAN: readonly (PlaceId | null)[] = ['runCapacitor', null];

const voltsAt = (state: VisitState, places: readonly (PlaceId | null)[]): Found<Voltage> =>
  brandedAs(amountAt(state, 'voltage', places), toVoltage, needAt('voltage', places));

const ampsAt = (state: VisitState, places: readonly (PlaceId | null)[]): Found<Current> =>
  brandedAs(amountAt(state, 'current', places), toCurrent, needAt('current', places));

/** The mains: 60 Hz where gauges read in psi, 50 Hz elsewhere. */
function mains({ settings }: VisitState): Found<number> {
  const value = SHOWN_UNITS[settings.units].gaugePressure === 'psi' ? 60 : 50;
  const input: Input = { name: 'frequency', value, unit: 'Hz', from: 'assumed' };
  return worked(value, { inputs: [input] });
}

/** Read off a meter, power off; or worked out from its amps and volts where it was clamped running. */
function canMeasured(state: VisitState): Found<Capacitance> {
  const meter = brandedAs(
    amountAt(state, 'capacitance', CAN),
    toCapacitance,
    needAt('capacitance', CAN),
  );
  const isUnderLoad = readingAt(state, 'current', ['runCapacitor']) !== null;
  if (meter.kind === 'known' || !isUnderLoad) return meter;
  const running = both(ampsAt(state, ['runCapacitor']), voltsAt(state, ['runCapacitor']));
  return andThen(both(running, mains(state)), ([[current, voltage], hertz]) =>
    calculated(
      runCapacitance({ current, voltage, frequency: frequency(hertz) }),
      runCapacitanceFormula,
      state,
    ),
  );
}

/** What is printed on it for the compressor, or for the fan of a can with two sides. */
const canRated = (state: VisitState, place: PlaceId | null): Found<Capacitance> =>
  brandedAs(
    amountAt(state, 'ratedCapacitance', [place]),
    toCapacitance,
    needAt('ratedCapacitance', []),
  );

function againstRated(
  found: Found<Capacitance>,
  rating: Found<Capacitance>,
  state: VisitState,
): Found<JudgedOf<'runCapacitor'>> {
  return andThen(both(found, rating), ([measured, rated]) =>
    andThen(
      calculated(
        capacitorTolerance({ measured, rated, kind: 'run' }),
        capacitorToleranceFormula,
        state,
      ),
      ({ verdict: finding, from }) =>
        worked(
          {
            answer: 'judged',
            about: 'runCapacitor',
            finding,
            value: measured,
            unit: 'uF',
            limit: { value: rated, unit: 'uF' },
          },
          { sources: from === null ? [] : [from.source] },
        ),
    ),
  );
}

/** A can with two sides is as bad as its worse one. */
export function runCapacitor(state: VisitState): Found<JudgedOf<'runCapacitor'>> {
  const main = againstRated(canMeasured(state), canRated(state, null), state);
  const measured = brandedAs(
    amountAt(state, 'capacitance', ['condenserFan']),
    toCapacitance,
    needAt('capacitance', CAN),
  );
  const ofFan = againstRated(measured, canRated(state, 'condenserFan'), state);
  const isWorse = ofFan.kind === 'known' && ofFan.value.finding !== 'within';
  return isWorse && main.kind === 'known' && main.value.finding === 'within' ? ofFan : main;
}

/** The plate's amps are a ceiling, and no target: what it should draw today is on the maker's curve. */
export function compressorCurrent(state: VisitState): Found<JudgedOf<'compressorCurrent'>> {
  const rated = brandedAs(plateOf(state, 'ratedLoadAmps'), toCurrent, needPlate('nameplateAmps'));
  return andThen(both(ampsAt(state, ['compressor', null]), rated), ([amps, plate]) => {
    const isLocked = amps >= LOCKED_ROTOR_MULTIPLE.value * plate;
    const finding = isLocked ? 'lockedRotor' : amps > plate ? 'overRating' : 'underRating';
    return worked(
      {
        answer: 'judged',
        about: 'compressorCurrent',
        finding,
        value: amps,
        unit: 'A',
        limit: { value: plate, unit: 'A' },
      },
      {
        cautions: ['liveWork', 'notRunningAmps', ...(isLocked ? (['doNotOperate'] as const) : [])],
        sources: [isLocked ? LOCKED_ROTOR_MULTIPLE.source : RATED_LOAD_DIVISOR.source],
      },
    );
  });
}

const SUPPLY: readonly PlaceId[] = ['lineSide', 'lineOneTwo'];

export function supplyVoltage(state: VisitState): Found<JudgedOf<'supplyVoltage'>> {
  return andThen(both(voltsAt(state, SUPPLY), ratedVolts(state)), ([measured, plate]) =>
    andThen(
      calculated(
        motorVoltage({ rated: nearestRated(plate, measured, state), measured }),
        motorVoltageFormula,
        state,
      ),
      ({ verdict, low, high }) =>
        worked(
          {
            answer: 'judged',
            about: 'supplyVoltage',
            finding: verdict ?? 'within',
            value: measured,
            unit: 'V',
            limit: { value: verdict === 'high' ? high : low, unit: 'V' },
          },
          { sources: [NAMEPLATE_VOLTAGE_TOLERANCE.source] },
        ),
    ),
  );
}

export function imbalance(all: VisitState): Found<JudgedOf<'voltageImbalance'>> {
  const state = sinceRepair(all, 'voltage', LEG_PAIRS);
  const legs = both(
    voltsAt(state, ['lineOneTwo']),
    both(voltsAt(state, ['lineTwoThree']), voltsAt(state, ['lineOneThree'])),
  );
  return andThen(legs, ([ab, [bc, ca]]) =>
    andThen(
      calculated(voltageImbalance({ ab, bc, ca }), voltageImbalanceFormula, state),
      (share) => {
        const stop = VOLTAGE_IMBALANCE_STOP.value;
        const most = VOLTAGE_IMBALANCE_LIMIT.value;
        const finding = share > stop ? 'stop' : share > most ? 'aboveLimit' : 'within';
        return worked(
          {
            answer: 'judged',
            about: 'voltageImbalance',
            finding,
            ...percent(share),
            limit: percent(finding === 'stop' ? stop : most),
          },
          { sources: [VOLTAGE_IMBALANCE_LIMIT.source] },
        );
      },
    ),
  );
}

/** Of the three line currents while it runs. */
export function currentBalance(all: VisitState): Found<JudgedOf<'currentImbalance'>> {
  const state = sinceRepair(all, 'current', ['lineOne', 'lineTwo', 'lineThree']);
  const lines = both(
    ampsAt(state, ['lineOne']),
    both(ampsAt(state, ['lineTwo']), ampsAt(state, ['lineThree'])),
  );
  return andThen(lines, ([one, [two, three]]) =>
    andThen(
      calculated(currentImbalance({ one, two, three }), currentImbalanceFormula, state),
      (share) => {
        const most = CURRENT_IMBALANCE_LIMIT.value;
        return worked(
          {
            answer: 'judged',
            about: 'currentImbalance',
            finding: share > most ? 'aboveLimit' : 'within',
            ...percent(share),
            limit: percent(most),
          },
          { sources: [CURRENT_IMBALANCE_LIMIT.source] },
        );
      },
    ),
  );
}

const percent = (share: number): { readonly value: number; readonly unit: 'percent' } => ({
  value: fromBase(share, 'percent').value,
  unit: 'percent',
});

/** A tenth either way: a heater's own tolerance and the meter's (common practice). */
const HEATER_TOLERANCE = 0.1;
/** Amps that a clamp shows around nothing (common practice). */
const NO_CURRENT = 0.05;

interface Heater {
  readonly answer: 'judged';
  readonly finding: HeaterFinding;
  readonly value: number;
  readonly unit: 'A' | 'ohm';
  readonly limit: Amount | null;
}
type HeaterPlace = 'defrostHeater' | 'doorHeater';

/** What it should draw at its voltage, and whether it does; before its ohms are read, what it should read. */
export function heater(place: HeaterPlace, state: VisitState): Found<Heater> {
  const ohms = brandedAs(
    amountAt(state, 'resistance', [place]),
    toResistance,
    needAt('resistance', [place]),
  );
  if (ohms.kind !== 'known') return heaterByRating(place, state);
  return andThen(both(ohms, heaterVolts(place, state)), ([resistance, voltage]) =>
    andThen(
      calculated(heaterCurrent({ voltage, resistance }), heaterCurrentFormula, state),
      (should) => {
        const read = ampsAt(state, [place]);
        const limit = { value: should, unit: 'A' } as const;
        const base = { answer: 'judged', unit: 'A' } as const;
        if (read.kind !== 'known' || (read.value >= NO_CURRENT && drawsTogether(place, state)))
          return worked<Heater>({ ...base, finding: 'expected', value: should, limit: null });
        const finding = heaterFinding(read.value, should);
        return worked<Heater>(
          { ...base, finding, value: read.value, limit },
          { inputs: read.inputs },
        );
      },
    ),
  );
}

/** "Heaters pulling twenty nine amps total": of all of them, which the ohms of one tell nothing about. */
function drawsTogether(place: HeaterPlace, { readings }: VisitState): boolean {
  const last = readings.findLast(
    ({ reading }) => reading.quantity === 'current' && reading.place === place,
  );
  return (
    last !== undefined &&
    /\b(?:heaters|elements|total|all|together|altogether)\b/i.test(last.reading.words)
  );
}

/** Cold ohms at the voltage that it is rated at: by the watts or amps printed on it, else by watts that were told. */
function ratedOhms(place: HeaterPlace, voltage: Voltage, state: VisitState): Found<Resistance> {
  const printed = state.unit.heaters[place];
  const current = printed && toCurrent(printed);
  if (current) {
    const ohms = heaterResistanceByAmps({ voltage, current });
    return calculated(ohms, heaterResistanceByAmpsFormula, state);
  }
  const told = printed ? worked(printed) : amountAt(state, 'power', [place]);
  return andThen(brandedAs(told, toPower, needAt('power', [place])), (power) =>
    calculated(heaterResistance({ voltage, power }), heaterResistanceFormula, state),
  );
}

/** Its ohms by what it is rated, and the amps that they let through at the voltage there is. */
function heaterByRating(place: HeaterPlace, state: VisitState): Found<Heater> {
  const isRated = state.unit.heaters[place] !== undefined;
  const watts = isRated ? worked(null) : amountAt(state, 'power', [place]);
  return andThen(both(watts, heaterVolts(place, state)), ([, volts]) => {
    const plate = ratedVolts(state);
    const rated = plate.kind === 'known' ? nearestRated(plate.value, volts, state) : volts;
    return andThen(ratedOhms(place, rated, state), (resistance) =>
      andThen(
        calculated(heaterCurrent({ voltage: volts, resistance }), heaterCurrentFormula, state),
        (should) =>
          worked<Heater>({
            answer: 'judged',
            finding: 'byRating',
            value: resistance,
            unit: 'ohm',
            limit: { value: should, unit: 'A' },
          }),
      ),
    );
  });
}

function heaterFinding(amps: Current, should: Current): HeaterFinding {
  if (amps < NO_CURRENT) return 'noCurrent';
  return Math.abs(amps - should) <= HEATER_TOLERANCE * should ? 'asExpected' : 'off';
}

/** Across the heater itself, else the supply, else what the plate says. */
function heaterVolts(place: PlaceId, state: VisitState): Found<Voltage> {
  const read = voltsAt(state, [place]);
  if (read.kind === 'known') return read;
  const supply = voltsAt(state, SUPPLY);
  return supply.kind === 'known' ? supply : ratedVolts(state);
}

/** A plate of 208-230 takes both: what is measured is judged by the one that it lies nearer to. */
function nearestRated(plate: Voltage, measured: Voltage, state: VisitState): Voltage {
  const amount = state.unit.nameplate.upperVoltage;
  const upper = amount === undefined ? null : toVoltage(amount);
  return upper !== null && Math.abs(upper - measured) < Math.abs(plate - measured) ? upper : plate;
}

export function ratedVolts(state: VisitState): Found<Voltage> {
  return brandedAs(plateOf(state, 'voltage'), toVoltage, needPlate('nameplateVoltage'));
}
