import { VOLTAGE_IMBALANCE_STOP } from '../../calculations/electrical-defaults.ts';
import type { PlaceId } from '../../terms/names.ts';
import type { VisitState } from '../../visit/state.ts';
import type { ReadingEntry } from '../../visit/views.ts';
import { worked, type Found } from '../found.ts';
import type { Input, NextCheck, StepId } from '../verdict.ts';
import { inputsAt, voltsOf } from './metered-volts.ts';
import { isSupply, metered } from './evidence.ts';

/** Ours: what a motor on two legs feeds back into the dead one seldom comes to more of the supply. */
const MOST_FED_BACK = 0.9;

const SOURCE = `two of the three line voltages well under the third have the dead leg in common: common practice; ${VOLTAGE_IMBALANCE_STOP.source}`;

/** Which leg it is where only this pair of lines has its voltage. */
const LOST_BY_WHOLE_PAIR = {
  lineOneTwo: 'lineThreeLost',
  lineTwoThree: 'lineOneLost',
  lineOneThree: 'lineTwoLost',
} as const satisfies Partial<Record<PlaceId, StepId>>;
type Pair = keyof typeof LOST_BY_WHOLE_PAIR;
const PAIRS: readonly Pair[] = ['lineOneTwo', 'lineTwoThree', 'lineOneThree'];

export interface LostLeg {
  readonly step: (typeof LOST_BY_WHOLE_PAIR)[Pair];
  readonly inputs: readonly Input[];
}

/** Of three phases: the leg that has no supply, by the newest line voltages since the last work. */
export function lostLeg(state: VisitState): LostLeg | null {
  const read = PAIRS.map((pair) => ({ pair, entry: newestAcross(pair, state) }));
  const volts = read.map(({ entry }) => (entry === null ? null : voltsOf(entry)));
  const known = volts.filter((each) => each !== null);
  if (known.length < PAIRS.length) return null;
  const most = Math.max(...known);
  const whole = read.filter((_each, index) => (volts[index] ?? 0) >= MOST_FED_BACK * most);
  const [only] = whole;
  if (!isSupply(most) || only === undefined || whole.length > 1) return null;
  return {
    step: LOST_BY_WHOLE_PAIR[only.pair],
    inputs: read.flatMap(({ entry }) => (entry === null ? [] : inputsAt(entry))),
  };
}

/** Its sentence says itself to shut it off: on two legs a motor burns, and a small screen shows few lines. */
export const findLostLeg = ({ step, inputs }: LostLeg): Found<NextCheck> =>
  worked<NextCheck>({ next: 'step', step }, { inputs, sources: [SOURCE], cautions: ['liveWork'] });

const newestAcross = (pair: PlaceId, state: VisitState): ReadingEntry | null =>
  metered(state).findLast(
    ({ reading: { quantity, place } }) => quantity === 'voltage' && place === pair,
  ) ?? null;
