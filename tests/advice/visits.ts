import type { Fact, Reading, Utterance } from '../../core/language/utterance.ts';
import type { QuantityId } from '../../core/terms/quantities.ts';
import type { UnitId } from '../../core/units/units.ts';
import { applyEvents } from '../../core/visit/apply.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import type { VisitSettings } from '../../core/visit/events.ts';
import { fromUtterance } from '../../core/visit/from-utterance.ts';
import type { Stamp } from '../../core/turn/turn.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { createStamp } from '../support/stamp.ts';
import { utteranceOf } from '../support/utterances.ts';

/** The state after these sentences, in the habit and at the height of this visit. */
export function visitOf(
  said: readonly Utterance[],
  settings: VisitSettings = { units: 'us', altitudeM: 0 },
): VisitState {
  const stamp = createStamp();
  const opened = applyEvents([stamp({ type: 'visitOpened', v: 1, settings })], EMPTY_VISIT);
  return said.reduce((state, each) => fromUtterance(each, state, inOneBreath(stamp)).state, opened);
}

/** All that one sentence makes has one time. */
function inOneBreath(stamp: Stamp): Stamp {
  let first: number | null = null;
  return (body) => {
    const event = stamp(body);
    first ??= event.at;
    return { ...event, at: first };
  };
}

export function read(quantity: QuantityId, value: number, unit: UnitId): Reading {
  return { quantity, value, unit, unitFrom: 'implied', place: null, words: '' };
}

export const readings = (...all: readonly Reading[]): Utterance => utteranceOf({ readings: all });

/** A sentence that states facts: R-134a, a reach-in, an expansion valve. */
export function unitIs(...facts: readonly FactOf[]): Utterance {
  return utteranceOf({ facts: facts.map((fact) => ({ ...fact, words: '' })) });
}

type FactOf = Fact extends infer F ? (F extends Fact ? Omit<F, 'words'> : never) : never;

export const REACH_IN: Utterance = unitIs(
  { fact: 'refrigerant', value: 'R-134a' },
  { fact: 'equipment', value: 'reachIn', doors: 2 },
  { fact: 'metering', value: 'txv' },
);

export const WARM: Utterance = readings(
  read('ambientTemp', 88, 'degF'),
  read('headPressure', 192, 'psi'),
  read('suctionPressure', 14, 'psi'),
  read('boxTemp', 44, 'degF'),
);
