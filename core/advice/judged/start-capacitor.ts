import { capacitorTolerance, capacitorToleranceFormula } from '../../calculations/capacitors.ts';
import type { PlaceId } from '../../terms/names.ts';
import type { Amount } from '../../units/amount.ts';
import { toCapacitance } from '../../units/branding.ts';
import { fromBase } from '../../units/convert.ts';
import type { Capacitance } from '../../units/quantity-values.ts';
import type { VisitState } from '../../visit/state.ts';
import { andThen, both, calculated, worked, type Found } from '../found.ts';
import type { JudgedOf } from './judged-verdict.ts';
import { amountAt, brandedAs, inputOf, needAt } from './read-at.ts';

const CAN: readonly PlaceId[] = ['startCapacitor'];

interface Marking {
  readonly low: Capacitance;
  readonly high: Capacitance;
}

/** What is printed on it: a start capacitor is marked from so many to so many, seldom with one figure. */
function marking(measured: Capacitance | null, state: VisitState): Found<Marking> {
  const entry = state.readings.findLast(
    ({ reading: { quantity, place } }) =>
      quantity === 'ratedCapacitance' && place === 'startCapacitor',
  );
  const need = needAt('ratedCapacitance', CAN);
  if (entry === undefined || entry.reading.unit === null) return need;
  const { low, high, value, unit } = entry.reading;
  const branded = (figure: number | undefined): Capacitance | null =>
    figure === undefined ? null : toCapacitance({ value: figure, unit });
  const [least, most, one] = [branded(low), branded(high), branded(value)];
  if (least !== null && most !== null)
    return worked({ low: least, high: most }, { inputs: ends(entry, unit) });
  if (one === null) return need;
  return andThen(
    calculated(
      capacitorTolerance({ measured: measured ?? one, rated: one, kind: 'start' }),
      capacitorToleranceFormula,
      state,
    ),
    (found) => worked({ low: found.low, high: found.high }),
  );
}

type Entry = VisitState['readings'][number];

const ends = (entry: Entry, unit: Amount['unit']) =>
  [entry.reading.low, entry.reading.high].flatMap((value) =>
    value === undefined ? [] : [inputOf(entry, { value, unit })],
  );

/** Inside what it is marked it is good; under it it is weak, and gives too little torque to start. */
export function startCapacitor(state: VisitState): Found<JudgedOf<'startCapacitor'>> {
  const measured = brandedAs(
    amountAt(state, 'capacitance', CAN),
    toCapacitance,
    needAt('capacitance', CAN),
  );
  const marked = marking(measured.kind === 'known' ? measured.value : null, state);
  return andThen(both(marked, measured), ([{ low, high }, read]) => {
    const finding = read < low ? 'low' : read > high ? 'high' : 'within';
    return worked(
      {
        answer: 'judged',
        about: 'startCapacitor',
        finding,
        value: fromBase(read, 'uF').value,
        unit: 'uF',
        limit: fromBase(finding === 'high' ? high : low, 'uF'),
        read: fromBase(high, 'uF'),
      },
      { cautions: ['capacitorCharge'] },
    );
  });
}
