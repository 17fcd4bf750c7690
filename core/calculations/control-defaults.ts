/** What a shop may set otherwise about pressure controls, heads and tests: each default with its source. */
import { degreesF, differenceF, differencePsi, duration, ratio } from '../units/quantity-values.ts';
import type {
  Duration,
  PressureDifference,
  Ratio,
  Temperature,
  TemperatureDifference,
} from '../units/quantity-values.ts';
import type { Sourced } from './formula.ts';

export type ControlSide = 'high' | 'low';

/** How far from its setting a control in order may open. */
export const TRIP_TOLERANCES: Record<ControlSide, Sourced<PressureDifference>> = {
  high: {
    value: differencePsi(10),
    source: 'a rooftop maker’s LCM156U manual, page 23: opens at 640 ± 10 psig',
    standing: 'published',
    otherSource: 'a transport maker’s CSR manual, page 127: 470 ± 7 psig',
  },
  low: {
    value: differencePsi(5),
    source: 'a rooftop maker’s LCM156U manual, page 23: opens at 40 ± 5 psig',
    standing: 'published',
    otherSource: 'other makers print ±4 and ±10 psi (a ceiling unit’s manual, page 57)',
  },
};

/** Between the head of the hottest day and the cut-out. */
export const CUT_OUT_MARGIN: Sourced<PressureDifference> = {
  value: differencePsi(25),
  source: 'more than the control’s own ±10 psi above the hottest day’s head',
  standing: 'common practice',
  otherSource:
    'refrigeratordiagrams.com, High-pressure control: about 20 % above ordinary head, on older refrigerants',
};

/** Of the relief valve's setting, gauge. */
export const SHARE_OF_RELIEF: Sourced<Ratio> = {
  value: ratio(0.9),
  source: 'ANSI/ASHRAE Standard 15, pressure-limiting devices: 90 % of the relief setting',
  standing: 'from memory',
};

export const REGULATOR_LINE_DROP: Sourced<PressureDifference> = {
  value: differencePsi(2),
  source: 'a display-case maker’s control settings, August 1996, page 8-2: 2 psi of line drop',
  standing: 'published',
};

interface FanCycleBand {
  readonly on: readonly [low: Temperature, high: Temperature];
  readonly off: readonly [low: Temperature, high: Temperature];
}

const band = (low: number, high: number): readonly [Temperature, Temperature] => [
  degreesF(low),
  degreesF(high),
];

/** Condensing temperatures at which a condenser fan is usually cycled. */
export const FAN_CYCLE: Sourced<FanCycleBand> = {
  value: { on: band(100, 105), off: band(80, 90) },
  source: 'on near 100 to 105 °F, off near 80 to 90 °F condensing; the maker’s pair comes first',
  standing: 'common practice',
  otherSource:
    'behler-young.com, Head pressure controls: on at 120 to 130 °F, off at 90 to 100 °F, far above an ordinary day',
};

interface Threshold {
  readonly suspected: TemperatureDifference;
  readonly present: TemperatureDifference;
}

/** In degrees, not psi: 5 psi is 1.8 °F for R-404A and 5.8 °F for R-600a. */
export const NON_CONDENSABLE_EXCESS: Sourced<Threshold> = {
  value: { suspected: differenceF(3), present: differenceF(6) },
  source: 'suspected above 3 °F, confirmed above 6 °F (5 and 10 psi of R-134a)',
  standing: 'common practice',
};

export const NON_CONDENSABLE_CONFLICT =
  'subcooling is no sign of it: iheatcool.com, How to diagnose non-condensables, has it low, behler-young.com, Non-condensables, has it high';

/** Leaving water to condensing temperature. */
export const WATER_APPROACH: Sourced<TemperatureDifference> = {
  value: differenceF(10),
  source:
    'air-conditioning-and-refrigeration-guide.com, Refrigeration condenser: about 10 °F above leaving water',
  standing: 'published',
};

interface Steady {
  readonly span: Duration;
  readonly within: TemperatureDifference;
}

export const STEADY: Sourced<Steady> = {
  value: { span: duration(10), within: differenceF(1) },
  source: 'ten minutes without a change of more than 1 °F; ten to twenty is the habit',
  standing: 'common practice',
};
