import {
  dischargeLine,
  dischargeLineFormula,
  DISCHARGE_LINE_LIMIT,
} from '../../calculations/discharge-line.ts';
import type { ControlSide } from '../../calculations/control-defaults.ts';
import { TRIP_TOLERANCES } from '../../calculations/control-defaults.ts';
import { nitrogenTest, nitrogenTestFormula } from '../../calculations/nitrogen-test.ts';
import { controlTrip, controlTripFormula } from '../../calculations/pressure-controls.ts';
import { toAbsolutePressure, toGaugePressure, toTemperature } from '../../units/branding.ts';
import { convert, fromBase } from '../../units/convert.ts';
import type { AbsolutePressure } from '../../units/quantity-values.ts';
import { SHOWN_UNITS } from '../../units/shown-unit.ts';
import { amountOf, type ReadingEntry } from '../../visit/views.ts';
import type { VisitState } from '../../visit/state.ts';
import { absoluteOf, shownUnit, temperatureOf } from '../current.ts';
import { andThen, both, calculated, worked, type Found } from '../found.ts';
import { localAir, localAirInput } from '../local-air.ts';
import { condensing } from '../measured.ts';
import type { Needs } from '../verdict.ts';
import type { JudgedFindings, JudgedOf } from './judged-verdict.ts';
import { inputOf } from './read-at.ts';

const SIDES = {
  high: { quantity: 'headPressure', setting: 'highCutoutPressure', need: 'highTripPressure' },
  low: { quantity: 'suctionPressure', setting: 'lowCutoutPressure', need: 'lowTripPressure' },
} as const satisfies Record<ControlSide, unknown>;

/** The pressure at which it was last seen to open. */
function openedAt(side: ControlSide, state: VisitState): Found<AbsolutePressure> {
  const { quantity, need } = SIDES[side];
  const entry = state.readings.findLast(
    ({ reading }) => reading.quantity === quantity && reading.event === 'tripped',
  );
  const amount = entry && amountOf(entry.reading);
  const gauge = amount && toGaugePressure(amount);
  if (!entry || !amount || gauge == null) return { kind: 'needs', about: null, need };
  return worked(toAbsolutePressure(gauge, localAir(state)), { inputs: [inputOf(entry, amount)] });
}

interface Trip {
  readonly answer: 'judged';
  readonly finding: JudgedFindings['highPressureSwitch'];
  readonly value: number;
  readonly unit: 'psi' | 'bar' | 'kPa';
  readonly limit: { readonly value: number; readonly unit: 'psi' | 'bar' | 'kPa' };
  readonly read: { readonly value: number; readonly unit: 'psi' | 'bar' | 'kPa' };
}

/** Whether a control opened where it is set; the setting is told, so it is asked for first. */
export function trip(side: ControlSide, state: VisitState): Found<Trip> {
  const { setting } = SIDES[side];
  const unit = SHOWN_UNITS[state.settings.units].gaugePressure;
  return andThen(both(absoluteOf(state, setting), openedAt(side, state)), ([set, opened]) =>
    andThen(
      calculated(controlTrip({ side, setting: set, opened }), controlTripFormula, state),
      ({ past, verdict: finding }) => {
        const gauge = (absolute: AbsolutePressure): Trip['limit'] => ({
          value: fromBase(absolute - localAir(state), unit).value,
          unit,
        });
        return worked(
          {
            answer: 'judged',
            finding,
            value: fromBase(Math.abs(past), unit).value,
            unit,
            limit: gauge(set),
            read: gauge(opened),
          },
          { sources: [TRIP_TOLERANCES[side].source] },
        );
      },
    ),
  );
}

const NEEDS_TEST: Needs = { kind: 'needs', about: null, need: 'testPressure' };
const NEEDS_GAS: Needs = { kind: 'needs', about: null, need: 'gasTemp' };

/** The first nitrogen reading since the last work on joints, and the newest: each with the gas's temperature. */
export function pressureTest(state: VisitState): Found<JudgedOf<'pressureTest'>> {
  const all = state.readings.filter(({ reading }) => reading.quantity === 'testPressure');
  const [first, last] = [all.at(0), all.at(-1)];
  if (!first || !last || first === last) return NEEDS_TEST;
  return andThen(both(gasAt(first, state), gasAt(last, state)), ([start, end]) =>
    andThen(
      calculated(
        nitrogenTest({
          pressure: start.pressure,
          from: start.temperature,
          to: end.temperature,
          found: end.pressure,
        }),
        nitrogenTestFormula,
        state,
      ),
      ({ change, expected, verdict: finding }) => {
        const unit = shownUnit('testPressure', state) ?? 'psi';
        return worked({
          answer: 'judged',
          about: 'pressureTest',
          finding,
          value: fromBase(Math.abs(change), unit).value,
          unit,
          limit: fromBase(expected - localAir(state), unit),
          read: fromBase(end.pressure - localAir(state), unit),
        });
      },
    ),
  );
}

interface Gas {
  readonly pressure: AbsolutePressure;
  readonly temperature: NonNullable<ReturnType<typeof toTemperature>>;
}

function gasAt(entry: ReadingEntry, state: VisitState): Found<Gas> {
  const amount = amountOf(entry.reading);
  const gauge = amount && toGaugePressure(amount);
  if (amount === null || gauge === null) return NEEDS_TEST;
  const { gasTemp } = entry.reading;
  const temperature = gasTemp === undefined ? null : toTemperature(gasTemp);
  if (gasTemp === undefined || temperature === null) return NEEDS_GAS;
  return worked(
    { pressure: toAbsolutePressure(gauge, localAir(state)), temperature },
    {
      inputs: [
        inputOf(entry, amount),
        { name: 'gasTemp', ...gasTemp, from: 'read', at: entry.at },
        ...localAirInput(state),
      ],
    },
  );
}

/** Too hot for the oil, or too cool for a dry suction; without condensing only the top is judged. */
export function dischargeJudged(state: VisitState): Found<JudgedOf<'dischargeLine'>> {
  return andThen(temperatureOf(state, 'dischargeLineTemp'), (line) => {
    const coil = condensing(state);
    const known = coil.kind === 'known' ? { condensing: coil.value } : {};
    const inputs = coil.kind === 'known' ? coil.inputs : [];
    return andThen(
      calculated(dischargeLine({ line, ...known }), dischargeLineFormula, state),
      ({ verdict: finding }) => {
        const unit = shownUnit('dischargeLineTemp', state) ?? 'degF';
        const limit = convert({ value: DISCHARGE_LINE_LIMIT.value, unit: 'degC' }, unit);
        return worked(
          {
            answer: 'judged',
            about: 'dischargeLine',
            finding,
            ...fromBase(line, unit),
            limit: finding === 'floodBack' ? null : limit,
          },
          { inputs, sources: [DISCHARGE_LINE_LIMIT.source] },
        );
      },
    );
  });
}
