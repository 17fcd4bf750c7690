import type { AnswerableId } from '../terms/quantities.ts';
import type { Amount } from '../units/amount.ts';
import { convert } from '../units/convert.ts';
import type { VisitState } from '../visit/state.ts';
import { both, andThen, worked, type Found } from './found.ts';
import { COIL_OF, deviation } from './deviation.ts';
import { measured } from './measured.ts';
import { wanted, type Wanted } from './targets.ts';
import type { Comparison, Deviation, TargetBasis } from './verdict.ts';

/** What is read against what it should be. */
export function compared(about: AnswerableId, state: VisitState): Found<Comparison> {
  return andThen(both(measured(about, state), wanted(about, state)), ([reading, found]) => {
    const target = nearestTo(reading, found);
    const off = judged(about, deviation(reading, target, state), { target, state });
    return off
      ? worked(comparison(about, off, { target, state }))
      : { kind: 'refused', about, reason: 'noTargetKnown' };
  });
}

/** Where anything between the ends is right, a reading is as far off as it is from the nearer end. */
const ONLY_A_BAND: ReadonlySet<TargetBasis> = new Set<TargetBasis>([
  'fanCycling',
  'pullDown',
  'hottestDayHead',
  'usualFanPair',
]);

function nearestTo(reading: Amount, target: Wanted): Wanted {
  const { low, high, basis, unit } = target;
  const now = convert(reading, unit);
  if (!ONLY_A_BAND.has(basis) || low === undefined || high === undefined || !now) return target;
  const { through, ...ends } = target;
  return { ...ends, value: Math.min(Math.max(now.value, low), high) };
}

interface Aim {
  readonly target: Wanted;
  readonly state: VisitState;
}

/** A pressure is on target when its coil is: 5 psi are 3 °F of R-134a and 1.8 °F of R-404A. */
function judged(about: AnswerableId, off: Deviation | null, aim: Aim): Deviation | null {
  const coil = coilDeviation(about, aim);
  return off && coil?.direction === 'on' ? { ...off, direction: 'on' } : off;
}

function coilDeviation(about: AnswerableId, { target, state }: Aim): Deviation | null {
  const coil = COIL_OF[about];
  if (coil === undefined || target.through === undefined) return null;
  const now = measured(coil, state);
  return now.kind === 'known' ? deviation(now.value, target.through, state) : null;
}

function comparison(about: AnswerableId, off: Deviation, aim: Aim): Comparison {
  const { value, unit, low, high, basis } = aim.target;
  const coil = COIL_OF[about];
  const ride = coilDeviation(about, aim);
  return {
    answer: 'compare',
    about,
    measured: off.measured,
    target: value,
    measuredUnit: unit,
    value: off.value,
    unit: off.unit,
    direction: off.direction,
    basis,
    ...(low === undefined || high === undefined ? {} : { low, high }),
    ...(coil && ride ? { alongside: { about: coil, ...without(ride) } } : {}),
  };
}

function without({ value, unit, direction }: Deviation): Omit<Deviation, 'measured'> {
  return { value, unit, direction };
}

/** How far off the reading is, where there is one, to go with a target. */
export function deviationNow(
  about: AnswerableId,
  target: Wanted,
  state: VisitState,
): Deviation | null {
  const reading = measured(about, state);
  if (reading.kind !== 'known') return null;
  const aim = nearestTo(reading.value, target);
  return judged(about, deviation(reading.value, aim, state), { target: aim, state });
}
