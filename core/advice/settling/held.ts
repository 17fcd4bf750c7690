import { heldWithin } from '../../calculations/held-within.ts';
import { fromBase, toBase } from '../../units/convert.ts';
import { BANDS, FEWEST_READINGS, type Band } from './bands.ts';
import { minutesBetween, type Series } from './series.ts';
import type { Held } from './settling-verdict.ts';

/** How long its last readings have held, and whether that is called steady. Null for what has no band. */
export function heldOf({ about, changeUnit, samples }: Series): Held | null {
  const band = BANDS[about]?.value;
  const [first, last] = [samples[0], samples.at(-1)];
  if (!band || !first || !last) return null;
  const within = widthOf(band, last.value, changeUnit);
  const readings = samples.map(({ at, value }) => ({
    minutes: minutesBetween(first.at, at),
    value,
  }));
  const held = heldWithin({ readings, within });
  if (held.kind === 'refused') return null;
  const { minutes, readings: count } = held.value;
  return {
    within,
    minutes,
    readings: count,
    isSteady: minutes >= band.minutes && count >= FEWEST_READINGS,
    wantedMinutes: band.minutes,
  };
}

/** In the unit that differences are shown in, and no finer than that unit is read: 1 % of 252 psi is 2. */
function widthOf({ within, share }: Band, value: number, unit: Series['changeUnit']): number {
  const least = fromBase(toBase(within), unit).value;
  if (share === undefined) return least;
  const step = unit === 'psi' ? 1 : least / 2;
  return Math.max(least, Math.floor((share * Math.abs(value)) / step) * step);
}
