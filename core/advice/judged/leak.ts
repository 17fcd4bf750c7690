import { leakRate, leakRateFormula } from '../../calculations/leak-rate.ts';
import { leakThreshold, leakThresholdFormula } from '../../calculations/leak-rules.ts';
import { toDuration, toMass } from '../../units/branding.ts';
import { fromBase } from '../../units/convert.ts';
import { mass, type Mass } from '../../units/quantity-values.ts';
import { amountOf } from '../../visit/views.ts';
import type { VisitState } from '../../visit/state.ts';
import { readAmount, refrigerantOf } from '../current.ts';
import { andThen, both, calculated, needing, worked, type Found } from '../found.ts';
import type { JudgedOf } from './judged-verdict.ts';
import { brandedAs, inputOf, needAt, needPlate, plateOf } from './read-at.ts';

/** Everything added on this visit: two additions for one leak count as one. */
function addedHere(state: VisitState): Found<Mass> {
  const entries = state.readings.flatMap((entry) => {
    if (entry.reading.quantity !== 'refrigerantAdded') return [];
    const amount = amountOf(entry.reading);
    const weight = amount && toMass(amount);
    return amount && weight !== null ? [{ weight, input: inputOf(entry, amount) }] : [];
  });
  if (entries.length === 0) return needing('refrigerantAdded');
  const total = entries.reduce((sum, { weight }) => sum + weight, 0);
  return worked(mass(total), { inputs: entries.map(({ input }) => input) });
}

/** The whole charge: as told, else as the plate has it. */
function fullCharge(state: VisitState): Found<Mass> {
  const told = brandedAs(
    readAmount(state, 'refrigerantCharge'),
    toMass,
    needPlate('nameplateCharge'),
  );
  return told.kind === 'known'
    ? told
    : brandedAs(plateOf(state, 'charge'), toMass, needPlate('nameplateCharge'));
}

export function leakJudged(state: VisitState): Found<JudgedOf<'leakRate'>> {
  const since = brandedAs(
    readAmount(state, 'sinceLastCharge'),
    toDuration,
    needAt('sinceLastCharge', []),
  );
  const given = both(both(refrigerantOf(state), addedHere(state)), both(fullCharge(state), since));
  return andThen(given, ([[refrigerant, added], [charge, days]]) =>
    andThen(calculated(leakRate({ added, charge, since: days }), leakRateFormula, state), (rate) =>
      andThen(
        calculated(
          leakThreshold({ refrigerant, charge, use: 'commercialRefrigeration', rate }),
          leakThresholdFormula,
          state,
        ),
        ({ threshold, verdict: finding, source }) =>
          worked(
            {
              answer: 'judged',
              about: 'leakRate',
              finding,
              value: fromBase(rate, 'percent').value,
              unit: 'percent',
              limit: finding === 'notCovered' ? null : fromBase(threshold, 'percent'),
            },
            { sources: [source] },
          ),
      ),
    ),
  );
}
