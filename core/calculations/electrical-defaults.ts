/** What a shop or a maker may set otherwise in electrical work: each default with its source and its standing. */
import { ratio, resistance, voltage } from '../units/quantity-values.ts';
import type { Ratio, Resistance, Voltage } from '../units/quantity-values.ts';
import type { Sourced } from './formula.ts';

/** Line-to-line imbalance that a running motor may have. */
export const VOLTAGE_IMBALANCE_LIMIT: Sourced<Ratio> = {
  value: ratio(0.02),
  source: 'compressor makers and RSES: 2 % (midtennrses.net, Voltage imbalance check)',
  standing: 'published',
  otherSource:
    'NEMA MG 1 designs motors for 1 % and derates above it (xcela.ca, Voltage imbalance)',
};

/** Above it no three-phase motor is run. */
export const VOLTAGE_IMBALANCE_STOP: Sourced<Ratio> = {
  value: ratio(0.05),
  source: 'NEMA MG 1 as cited by xcela.ca, Voltage imbalance: not above 5 %',
  standing: 'published',
};

export const CURRENT_IMBALANCE_LIMIT: Sourced<Ratio> = {
  value: ratio(0.1),
  source: 'RSES: 10 % (midtennrses.net, Voltage imbalance check); a meter maker’s 43B manual: 10 %',
  standing: 'published',
  otherSource: 'pump makers stop at 5 % (a 6S series manual, page 5)',
};

/** Share of its rated load that a motor may carry at an imbalance, between the points on straight lines. */
export const DERATING_CURVE: Sourced<readonly (readonly [imbalance: number, load: number])[]> = {
  value: [
    [0.01, 1],
    [0.02, 0.95],
    [0.03, 0.9],
    [0.04, 0.82],
    [0.05, 0.75],
  ],
  source:
    'NEMA MG 1 figure 14-1: 3 % → 0.90 as cited by new.abb.com, Power quality conditioning; the other points from memory',
  standing: 'from memory',
  otherSource: 'some readings of the same figure give 0.88 at 3 % and 0.83 at 4 %',
};

/** How far from its plate a motor's voltage may be. */
export const NAMEPLATE_VOLTAGE_TOLERANCE: Sourced<Ratio> = {
  value: ratio(0.1),
  source:
    'NEMA MG 1: 10 % either way at rated frequency (Nominal System and Utilization Voltages, ja.scribd.com/document/161814729)',
  standing: 'published',
  otherSource:
    'one compressor maker holds its single-phase welded 208/230 V models to 197 V at maximum load (bulletin AE9-1228)',
};

export type CapacitorKind = 'run' | 'start';

interface Tolerance {
  readonly below: Ratio;
  readonly above: Ratio;
}

/** The can's own marking comes first. */
export const CAPACITOR_TOLERANCES: Record<CapacitorKind, Sourced<Tolerance>> = {
  run: {
    value: { below: ratio(0.06), above: ratio(0.06) },
    source: 'famous-supply.com, Testing capacitors: ±6 %; the can’s own marking comes first',
    standing: 'published',
    otherSource:
      'hvacrschool.com, Measuring capacitance on a running system: ±10 % as a rule of thumb, for the meter’s own error; some cans are marked ±5 %',
  },
  start: {
    value: { below: ratio(0), above: ratio(0.2) },
    source: 'motor start capacitors are usually marked as a range, −0/+20 %',
    standing: 'from memory',
  },
};

export const BLEED_RESISTOR: Sourced<Resistance> = {
  value: resistance(20_000),
  source: 'about 20 kΩ, 5 W, held in insulated clips',
  standing: 'common practice',
  otherSource: 'makers fit 15 kΩ, 1 to 2 W across start capacitors (caldwellmotors.com, Guide)',
};

export type CompressorBuild = 'scrollOrSemiHermetic' | 'smallHermetic' | 'centrifugal' | 'inverter';

interface InsulationFloor {
  /** Below it the compressor is condemned. */
  readonly floor: Resistance;
  /** Above 230 V the floor is this many ohms a volt. */
  readonly ohmsPerVolt?: Resistance;
}

/** The floor is each maker's own: one figure for all would condemn good ones and pass bad ones. */
export const INSULATION_FLOORS: Record<CompressorBuild, Sourced<InsulationFloor>> = {
  scrollOrSemiHermetic: {
    value: { floor: resistance(0.5e6), ohmsPerVolt: resistance(1000) },
    source:
      'a compressor maker’s bulletin AE4-1294: 0.5 MΩ for 208 to 230 V, else 1,000 Ω a volt; a single reading condemns nothing, the trend does',
    standing: 'published',
  },
  smallHermetic: {
    value: { floor: resistance(2e6) },
    source: 'a small hermetic maker’s service handbook, page 49: below 2 MΩ is a ground fault',
    standing: 'published',
  },
  centrifugal: {
    value: { floor: resistance(50e6) },
    source: 'a chiller maker’s 17-19EX manual, page 141: 50 MΩ after 10 s and after 60 s',
    standing: 'published',
  },
  inverter: {
    value: { floor: resistance(0.1e6) },
    source: 'a maker’s AVZC18 manual, page 11: below 100 kΩ replace the compressor',
    standing: 'published',
  },
};

export const OTHER_FLOORS =
  'by maker: 0.1 MΩ (inverter), 0.5 MΩ (scroll and semi-hermetic, 208 to 230 V), 2 MΩ (small hermetic), 50 MΩ (centrifugal)';

/** What rated load current is worked from: the maximum continuous current divided by this. */
export const RATED_LOAD_DIVISOR: Sourced<number> = {
  value: 1.56,
  source:
    'UL: maximum continuous current / 1.56 (achrnews.com, Determining compressor amperage ratings)',
  standing: 'published',
  otherSource: 'some makers divide by 1.44, others by 1.4',
};

/** From this many times the rated load current a motor is not turning. */
export const LOCKED_ROTOR_MULTIPLE: Sourced<number> = {
  value: 4,
  source:
    'locked rotor is four to six times the rated load current; under a second of it is a start',
  standing: 'common practice',
};

export const CONDUCTOR_SHARE: Sourced<Ratio> = {
  value: ratio(1.25),
  source:
    'NEC 430.24 and 440.33: 125 % of the largest motor and 100 % of the rest, as given in a chiller maker’s UAA220 manual, page 32',
  standing: 'published',
};

/** What an ohmmeter on its lowest range resolves, leads and all. */
export const OHMMETER_RESOLUTION: Sourced<Resistance> = {
  value: resistance(0.1),
  source: 'a tenth of an ohm, once the leads are zeroed',
  standing: 'common practice',
};

/** Shares of the supply: what counts as none, as a bad contact's, as all of it. */
export const ACROSS_BANDS: Sourced<{
  readonly none: Ratio;
  readonly contact: Ratio;
  readonly all: Ratio;
}> = {
  value: { none: ratio(0.01), contact: ratio(0.1), all: ratio(0.9) },
  source: 'none below 1 % of the supply, a burnt contact up to 10 %, all of it from 90 %',
  standing: 'common practice',
};

/** Below this nothing is standing there: a meter's own zero, not a share of anything. */
export const NO_VOLTAGE: Voltage = voltage(1);
