import { localAtmosphere } from '../units/atmosphere.ts';
import { fromBase } from '../units/convert.ts';
import { absolutePressure, type AbsolutePressure } from '../units/quantity-values.ts';
import { SHOWN_UNITS, thermalSystem } from '../units/shown-unit.ts';
import type { VisitState } from '../visit/state.ts';
import type { Input } from './verdict.ts';

/** The air a gauge reads against on this visit: by the barometer where one was read, else by the altitude. */
export function localAir({ settings }: VisitState): AbsolutePressure {
  const { altitudeM, barometerKpa } = settings;
  return barometerKpa === undefined
    ? localAtmosphere({ by: 'altitude', altitudeM })
    : localAtmosphere({ by: 'barometer', pressure: absolutePressure(barometerKpa) });
}

/** Shown beside a gauge pressure's working where it makes a difference. */
export function localAirInput({ settings }: VisitState): readonly Input[] {
  const { units, altitudeM, barometerKpa } = settings;
  if (barometerKpa !== undefined) {
    const shown = fromBase(
      barometerKpa,
      SHOWN_UNITS[units].absolutePressure === 'psia' ? 'psia' : 'kPaa',
    );
    return [{ name: 'barometer', ...shown, from: 'set' }];
  }
  if (altitudeM === 0) return [];
  return [
    {
      name: 'altitude',
      ...fromBase(altitudeM, thermalSystem(units) === 'us' ? 'ft' : 'm'),
      from: 'set',
    },
  ];
}
