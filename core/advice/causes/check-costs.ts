import type { CautionId, CheckId, NextCheck } from '../verdict.ts';
import type { SymptomId } from './symptom.ts';

/** What a check exposes a person or the unit to: a minute of it counts as so many minutes of looking. */
export const RISKS = {
  look: 1,
  touch: 1.2,
  /** Hoses on: a little charge lost, on a small circuit not so little. */
  gauges: 1.5,
  /** A meter on live parts. */
  live: 3,
  /** The unit run or shut down in a way it was not made to be. */
  disturbs: 3,
} as const;
type Risk = keyof typeof RISKS;

export interface Cost {
  /** Of work, as common practice has it. */
  readonly minutes: number;
  readonly risk: Risk;
}

/** What it takes to have one more symptom to judge. */
export const READ_COSTS: Readonly<Record<SymptomId, Cost>> = {
  headPressure: { minutes: 4, risk: 'gauges' },
  suctionPressure: { minutes: 4, risk: 'gauges' },
  superheat: { minutes: 3, risk: 'touch' },
  subcooling: { minutes: 3, risk: 'touch' },
  split: { minutes: 4, risk: 'gauges' },
  temperatureDifference: { minutes: 4, risk: 'gauges' },
  dischargeLineTemp: { minutes: 2, risk: 'touch' },
  current: { minutes: 3, risk: 'live' },
};

/** A thermometer in the air, and what is only asked for. */
export const CHEAP_READ: Cost = { minutes: 1, risk: 'look' };

/** What must be heard with a check that puts a hand or a meter where it can be hurt. */
const CHECK_CAUTIONS: Partial<Record<CheckId, readonly CautionId[]>> = {
  checkFanControl: ['liveWork'],
  defrostHeaters: ['liveWork'],
  standstillTest: ['fanStaysLive'],
  supplyAtStart: ['liveWork'],
  testStartGear: ['capacitorCharge'],
  coolOverload: ['compressorTerminals'],
};

export function nextCautions(next: NextCheck): readonly CautionId[] {
  if (next.next === 'check') return CHECK_CAUTIONS[next.check] ?? [];
  return next.next === 'read' && next.need === 'current' ? ['liveWork'] : [];
}
