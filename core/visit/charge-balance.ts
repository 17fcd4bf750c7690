import type { QuantityId } from '../terms/quantities.ts';
import type { Amount } from '../units/amount.ts';
import { convert } from '../units/convert.ts';
import type { UnitId } from '../units/units.ts';
import type { EventId } from './events.ts';
import type { VisitState } from './state.ts';
import { amountOf, isNewer, latestAmount, type ReadingEntry } from './views.ts';

export interface ChargeBalance {
  /** What the plate says that it holds. */
  readonly nameplate: Amount | null;
  /** Recovered before the last evacuation: all that was left in it, in the plate's unit. */
  readonly takenOut: Amount | null;
  /** Weighed in since the last evacuation: all that is in it, in the plate's unit. Null where it was never empty. */
  readonly charged: Amount | null;
  /** Evacuated, and nothing let in since. */
  readonly isUnderVacuum: boolean;
}

/** What the scale says is in the unit, where it was emptied first; of its own refrigerant alone. */
export function chargeBalance(state: VisitState): ChargeBalance {
  const nameplate = state.unit.nameplate.charge ?? latestAmount(state, 'refrigerantCharge');
  const evacuated = lastEvacuation(state);
  const moved = (quantity: QuantityId): readonly ReadingEntry[] =>
    state.readings.filter(({ reading }) => reading.quantity === quantity);
  const [added, recovered] = [moved('refrigerantAdded'), moved('refrigerantRecovered')];
  const unit = nameplate?.unit ?? added.at(-1)?.reading.unit ?? 'oz';
  if (evacuated === null) {
    return { nameplate, takenOut: null, charged: null, isUnderVacuum: false };
  }
  const since = added.filter(({ id }) => isNewer(state, id, evacuated));
  return {
    nameplate,
    takenOut: sum(
      recovered.filter(({ id }) => isNewer(state, evacuated, id)),
      unit,
    ),
    charged: sum(since, unit),
    isUnderVacuum: since.length === 0,
  };
}

function lastEvacuation(state: VisitState): EventId | null {
  const pulled = [
    ...state.work.filter(({ work }) => work.did === 'evacuate').map(({ id }) => id),
    ...state.readings.filter(({ reading }) => reading.quantity === 'vacuum').map(({ id }) => id),
  ];
  return pulled.toSorted((one, other) => (isNewer(state, one, other) ? 1 : -1)).at(-1) ?? null;
}

/** Null where nothing was weighed, or something was moved without a weight. */
function sum(entries: readonly ReadingEntry[], unit: UnitId): Amount | null {
  const amounts = entries.map(({ reading }) => {
    const amount = amountOf(reading);
    return amount && convert(amount, unit);
  });
  if (amounts.length === 0) return null;
  const values = amounts.flatMap((amount) => (amount ? [amount.value] : []));
  if (values.length < amounts.length) return null;
  return { value: values.reduce((so, each) => so + each, 0), unit };
}
