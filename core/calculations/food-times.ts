/** Food temperatures and times, as data with where each was read; release or discard is never decided here. */
import { degreesF, difference, duration } from '../units/quantity-values.ts';
import type { Duration, Temperature, TemperatureDifference } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula, Standing } from './formula.ts';

const MINUTES_AN_HOUR = 60;
const hours = (count: number): Duration => duration(count * MINUTES_AN_HOUR);

interface Read<Value> {
  readonly value: Value;
  readonly source: string;
  readonly standing: Standing;
  readonly otherSource?: string;
}

/** US Food Code temperatures, of the product. A shop sets its own code’s figures over these. */
export const FOOD_TEMPERATURES = {
  coldHold: {
    value: degreesF(41),
    source: 'Washington WAC 246-215-03525, read 2026-11: verify with the authority',
    standing: 'published',
    otherSource:
      'FDA’s guidance for homes and outages says 40 °F; one state keeps raw shell eggs in air of 45 °F; local codes vary',
  },
  hotEnd: {
    value: degreesF(135),
    source: 'Tennessee 0080-04-09-.03, read 2026-11: verify with the authority',
    standing: 'published',
  },
  firstStep: {
    value: degreesF(70),
    source: 'Tennessee 0080-04-09-.03, read 2026-11: verify with the authority',
    standing: 'published',
  },
  freezer: {
    value: degreesF(0),
    source:
      'FDA emergency guidance as given by cobbanddouglaspublichealth.com; the Food Code asks only that frozen food stays frozen (Maine 144-200-3-5)',
    standing: 'published',
  },
} as const satisfies Record<string, Read<Temperature>>;

export const FOOD_TIMES = {
  coolToFirstStep: {
    value: hours(2),
    source: 'Tennessee 0080-04-09-.03, read 2026-11',
    standing: 'published',
  },
  coolTotal: {
    value: hours(6),
    source: 'Tennessee 0080-04-09-.03, read 2026-11',
    standing: 'published',
  },
  coolFromAmbient: {
    value: hours(4),
    source: 'foodprotect.org, 2018 issue III-019, read 2026-11',
    standing: 'published',
  },
  timeControl: {
    value: hours(4),
    source: 'Wisconsin ATCP 75, 3-501.19, read 2026-11',
    standing: 'published',
  },
  timeControlBelow70: {
    value: hours(6),
    source: 'Wisconsin ATCP 75, 3-501.19, read 2026-11',
    standing: 'published',
  },
} as const satisfies Record<string, Read<Duration>>;

export const COLD_STORES = ['cooler', 'freezerFull', 'freezerHalf'] as const;
export type ColdStore = (typeof COLD_STORES)[number];

const OUTAGE_SOURCE =
  'FDA emergency guidance as given by cobbanddouglaspublichealth.com and garrettcountymd.gov, read 2026-11';

/** How long a closed store keeps without power. Household guidance: retail follows its code and plan. */
export const OUTAGE_TIMES: Record<ColdStore, Read<Duration>> = {
  cooler: { value: hours(4), source: OUTAGE_SOURCE, standing: 'published' },
  freezerFull: { value: hours(48), source: OUTAGE_SOURCE, standing: 'published' },
  freezerHalf: { value: hours(24), source: OUTAGE_SOURCE, standing: 'published' },
};

const ALWAYS = ['operatorDecides', 'verifyWithAuthority'] as const;

export interface ColdHold {
  /** Product less limit: above zero it is too warm. */
  readonly over: TemperatureDifference;
  readonly verdict: 'within' | 'above';
}

/** A product’s temperature against cold holding. */
export function coldHolding(product: Temperature): Calculated<ColdHold> {
  const limit = FOOD_TEMPERATURES.coldHold.value;
  const over = difference(product, limit);
  // Half a thousandth of a degree: 41 °F and 5 °C are one limit.
  const verdict = over > 5e-4 ? 'above' : 'within';
  return known({ over, verdict }, 'probeTheProduct', ...ALWAYS);
}

export interface TimeLeft {
  readonly limit: Duration;
  /** Below zero it has run out. */
  readonly left: Duration;
}

/** Time in place of temperature: 4 h, or 6 h while it never passes 70 °F. Without a procedure beforehand it is none. */
export function timeControl(input: {
  readonly start: Temperature;
  readonly highest: Temperature;
  readonly elapsed: Duration;
  readonly procedureBefore: boolean;
}): Calculated<TimeLeft> {
  if (!(input.elapsed >= 0)) return refused('notPositive');
  if (!input.procedureBefore || coldHoldAbove(input.start)) return refused('ruleDoesNotApply');
  const cool = input.highest <= FOOD_TEMPERATURES.firstStep.value + 5e-4;
  const limit = (cool ? FOOD_TIMES.timeControlBelow70 : FOOD_TIMES.timeControl).value;
  return known({ limit, left: duration(limit - input.elapsed) }, 'probeTheProduct', ...ALWAYS);
}

const coldHoldAbove = (at: Temperature): boolean => at > FOOD_TEMPERATURES.coldHold.value + 5e-4;

/** How much of its hours a closed store without power has left. */
export function outageTime(store: ColdStore, elapsed: Duration): Calculated<TimeLeft> {
  if (!(elapsed >= 0)) return refused('notPositive');
  const limit = OUTAGE_TIMES[store].value;
  return known({ limit, left: duration(limit - elapsed) }, 'householdGuidance', ...ALWAYS);
}

export interface ProductReading {
  readonly minutes: number;
  readonly product: Temperature;
}

/** "open" while it has neither reached the temperature nor run out of time. */
export type CoolingStep = 'met' | 'missed' | 'open';

export interface Cooling {
  /** To the last temperature where it was reached, else so far. */
  readonly taken: Duration;
  readonly firstStep: CoolingStep;
  readonly whole: CoolingStep;
}

/** Minutes since the first reading at which the product came down to a temperature; null if it has not. */
function reachedAfter(readings: readonly ProductReading[], target: Temperature): number | null {
  const [start] = readings;
  for (const [at, { minutes, product }] of readings.entries()) {
    if (start === undefined || product > target + 5e-4) continue;
    const before = readings[at - 1];
    if (before === undefined) return 0;
    const share = (before.product - target) / (before.product - product || 1);
    return before.minutes + Math.min(1, share) * (minutes - before.minutes) - start.minutes;
  }
  return null;
}

const step = (reached: number | null, elapsed: number, limit: Duration): CoolingStep => {
  if (reached !== null) return reached <= limit + 1e-6 ? 'met' : 'missed';
  return elapsed > limit ? 'missed' : 'open';
};

/** Cooling of cooked food from 135 °F, or of what was put together at room temperature. */
export function foodCooling(input: {
  readonly readings: readonly ProductReading[];
  readonly from: 'cooked' | 'ambientIngredients';
}): Calculated<Cooling> {
  const { readings, from } = input;
  const [first, last] = [readings[0], readings.at(-1)];
  if (readings.length < 2 || first === undefined || last === undefined)
    return refused('tooFewReadings');
  const inOrder = readings.every(
    ({ minutes }, at) => minutes > (readings[at - 1]?.minutes ?? -Infinity),
  );
  if (!inOrder) return refused('readingsDoNotFit');
  const elapsed = last.minutes - first.minutes;
  const at70 = reachedAfter(readings, FOOD_TEMPERATURES.firstStep.value);
  const at41 = reachedAfter(readings, FOOD_TEMPERATURES.coldHold.value);
  const total = (from === 'cooked' ? FOOD_TIMES.coolTotal : FOOD_TIMES.coolFromAmbient).value;
  const whole = step(at41, elapsed, total);
  return known(
    {
      taken: duration(at41 ?? elapsed),
      firstStep: from === 'cooked' ? step(at70, elapsed, FOOD_TIMES.coolToFirstStep.value) : whole,
      whole,
    },
    'probeTheProduct',
    ...ALWAYS,
  );
}

export const coldHoldingFormula: Formula = {
  id: 'coldHolding',
  name: 'product against the cold-holding limit',
  equation: 'over = T − 41 °F',
  symbols: symbols(['T', 'temperature of the product, not of the air', '°F']),
  range: 'food that needs temperature control; local codes vary',
  source: FOOD_TEMPERATURES.coldHold.source,
  standing: 'published',
  example: {
    inputs: { product: '5C' },
    gives: { value: 0, unit: 'dC' },
    within: 0.001,
    source: 'WAC 246-215-03525: 41 °F (5 °C)',
    standing: 'published',
  },
};

export const timeControlFormula: Formula = {
  id: 'timeControl',
  name: 'time left under time control',
  equation: 'left = 4 h − t, or 6 h − t while it never passes 70 °F',
  symbols: symbols(['t', 'time since it left cold holding', 'h']),
  range: 'from 41 °F or below, with a written procedure beforehand: no rescue for a breakdown',
  source: 'Wisconsin ATCP 75, 3-501.19, read 2026-11: verify with the authority',
  standing: 'published',
  example: {
    inputs: { start: '41F', highest: '75F', elapsed: '1h', procedure: 'writtenBefore' },
    gives: { value: 3, unit: 'h' },
    within: 0.001,
    source: 'Wisconsin ATCP 75, 3-501.19: four hours',
    standing: 'published',
  },
};

export const outageTimeFormula: Formula = {
  id: 'outageTime',
  name: 'time left in a closed store without power',
  equation: 'left = limit − t; cooler 4 h, full freezer 48 h, half-full freezer 24 h',
  symbols: symbols(['t', 'time without power, door closed', 'h']),
  range:
    'household guidance; refreeze only at 40 °F or below or with ice crystals; above 40 °F for more than 2 h it is thrown away',
  source: OUTAGE_SOURCE,
  standing: 'published',
  example: {
    inputs: { store: 'cooler', elapsed: '1h' },
    gives: { value: 3, unit: 'h' },
    within: 0.001,
    source: 'FDA emergency guidance: a closed refrigerator keeps about 4 hours',
    standing: 'published',
  },
};

export const foodCoolingFormula: Formula = {
  id: 'foodCooling',
  name: 'cooling of food against its two steps',
  equation: 't(70 °F) ≤ 2 h and t(41 °F) ≤ 6 h from 135 °F; t(41 °F) ≤ 4 h from room temperature',
  symbols: symbols(['t', 'time from the first reading, straight lines between readings', 'h']),
  range: 'product temperatures, in order of time, the first at the start of cooling',
  source:
    'Tennessee 0080-04-09-.03 and foodprotect.org issue III-019, read 2026-11: verify with the authority',
  standing: 'published',
  example: {
    inputs: { readings: '0h:135F,2h:70F,6h:41F', from: 'cooked' },
    gives: { value: 6, unit: 'h' },
    within: 0.001,
    source: 'Tennessee 0080-04-09-.03: the limits themselves',
    standing: 'published',
  },
};
