import { atmosphereAt } from '../units/atmosphere.ts';
import { fromBase } from '../units/convert.ts';
import type { AbsolutePressure } from '../units/quantity-values.ts';
import type { VisitState } from '../visit/state.ts';
import type { Input } from './verdict.ts';

/** The air a gauge reads against on this visit. */
export function localAir(state: VisitState): AbsolutePressure {
  return atmosphereAt(state.settings.altitudeM);
}

/** Shown beside a gauge pressure's working where it makes a difference. */
export function altitudeInput(state: VisitState): readonly Input[] {
  const { altitudeM } = state.settings;
  if (altitudeM === 0) return [];
  const shown = fromBase(altitudeM, state.settings.units === 'us' ? 'ft' : 'm');
  return [{ name: 'altitude', ...shown, from: 'set' }];
}
