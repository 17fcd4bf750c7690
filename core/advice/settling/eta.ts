import { timeToTarget, timeToTargetFormula } from '../../calculations/time-to-target.ts';
import type { Question } from '../../language/utterance.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import type { Amount } from '../../units/amount.ts';
import { convert, toBase } from '../../units/convert.ts';
import { temperature } from '../../units/quantity-values.ts';
import { lastChange } from '../../visit/changes.ts';
import type { VisitState } from '../../visit/state.ts';
import { readAmount } from '../current.ts';
import { andThen, needing, worked, type Found } from '../found.ts';
import { inputsOf, minutesBetween, seriesOf, since, type Series } from './series.ts';
import type { EtaAnswer } from './settling-verdict.ts';
import { nowOf } from './trend.ts';

type Eta = Extract<Question, { ask: 'eta' }>;

/** What comes down to a level that it then keeps; a pressure follows the temperatures within minutes. */
const LEVELS_OFF: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'boxTemp',
  'productTemp',
  'supplyAirTemp',
]);
const FEWEST = 3;

/** When a box will be at a temperature, or at its set point where none is named: from now. */
export function etaOf({ about, value, unit }: Eta, state: VisitState): Found<EtaAnswer> {
  if (!LEVELS_OFF.has(about)) return { kind: 'refused', about, reason: 'noTimeFor' };
  const target: Found<Amount> =
    value === undefined || unit === undefined
      ? readAmount(state, 'setpointTemp')
      : worked({ value, unit });
  return andThen(target, (to) => etaTo(to, about, state));
}

function etaTo(target: Amount, about: QuantityId, state: VisitState): Found<EtaAnswer> {
  const series = coolingOf(state, about);
  const to = series && convert(target, series.unit);
  const last = series?.samples.at(-1);
  if (!series || !last || !to) return needing(about);
  const { unit, samples } = series;
  const refused = { kind: 'refused', about, target: to.value, unit } as const;
  if (last.value <= to.value) return { ...refused, reason: 'alreadyThere', value: last.value };
  if (samples.length < FEWEST) {
    return {
      kind: 'refused',
      about,
      reason: 'seriesTooShort',
      readings: samples.length,
      wanted: FEWEST,
    };
  }
  const found = timeToTarget({
    readings: samples.map(({ at, value }) => ({
      minutes: minutesBetween(samples[0]?.at ?? at, at),
      box: temperature(toBase({ value, unit })),
    })),
    target: temperature(toBase(to)),
  });
  if (found.kind === 'refused') return { ...refused, reason: 'notGettingNearer' };
  const { toTarget, uncertainty } = found.value;
  const eta: EtaAnswer = {
    answer: 'eta',
    about,
    target: to.value,
    unit,
    minutes: Math.max(0, toTarget - minutesBetween(last.at, nowOf(state))),
    uncertainty,
    readings: samples.length,
  };
  return worked(eta, {
    inputs: inputsOf(series),
    cautions: found.cautions.filter((id) => id === 'probeTheProduct'),
    formula: timeToTargetFormula,
  });
}

/** The readings since it began to come down: the last change, or the highest reading after it. */
function coolingOf(state: VisitState, about: QuantityId): Series | null {
  const all = seriesOf(state, about);
  const recent = all && since(all, lastChange(state)?.id ?? null, state);
  if (!recent) return null;
  const highest = Math.max(...recent.samples.map(({ value }) => value));
  const from = recent.samples.findLastIndex(({ value }) => value === highest);
  return { ...recent, samples: recent.samples.slice(Math.max(0, from)) };
}
