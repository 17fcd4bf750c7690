import { heldWithinFormula } from '../../calculations/held-within.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { lastChange } from '../../visit/changes.ts';
import type { VisitState } from '../../visit/state.ts';
import { needing, worked, type Found } from '../found.ts';
import { BANDS } from './bands.ts';
import { heldOf } from './held.ts';
import { inputsOf, minutesBetween, seriesOf, since } from './series.ts';
import { movedSince, settlingNext } from './settling.ts';
import type { TrendAnswer } from './settling-verdict.ts';

/** The moment of what was said last: a question is an event of its own. */
export const nowOf = ({ history }: VisitState): number => history.at(-1)?.at ?? 0;

/** What a quantity is doing, by its own readings; two of them at least. */
export function trendOf(about: QuantityId, state: VisitState): Found<TrendAnswer> {
  const series = seriesOf(state, about);
  const [last, before] = [series?.samples.at(-1), series?.samples.at(-2)];
  if (!series || !last) return needing(about);
  if (!before) return { kind: 'refused', about, reason: 'seriesTooShort', readings: 1, wanted: 2 };
  const change = lastChange(state);
  const { place, unit, changeUnit } = series;
  const trend: TrendAnswer = {
    answer: 'trend',
    about,
    place,
    value: last.value,
    unit,
    changeUnit,
    recent: { change: last.value - before.value, minutes: minutesBetween(before.at, last.at) },
    sinceChange: change && movedSince(series, change, state),
    held: heldOf(change ? since(series, change.id, state) : series),
    agoMinutes: minutesBetween(last.at, nowOf(state)),
    next: settlingNext(state),
  };
  return worked(trend, {
    inputs: inputsOf(series),
    formula: heldWithinFormula,
    sources: bandSource(about),
  });
}

export function bandSource(about: QuantityId): readonly string[] {
  const band = BANDS[about];
  return band ? [`${band.source} (${band.standing})`] : [];
}
