import { FLUIDS } from '../fluids/fluids.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { concentration, ratio } from '../units/quantity-values.ts';
import type { Concentration, Mass, Ratio, Volume } from '../units/quantity-values.ts';
import { andThen, known, refused } from './calculated.ts';
import type { Calculated, Caution } from './calculated.ts';
import {
  CONCENTRATION_LIMITS,
  EXPOSURE_LEVELS,
  LOWER_FLAMMABLE_LIMITS,
} from './exposure-limits.ts';
import type { ExposedGas, ExposureLevel } from './exposure-limits.ts';
import { fluidCautions } from './fluid-cautions.ts';
import { symbols } from './formula.ts';
import type { Formula, Standing } from './formula.ts';

/** L/mol of an ideal gas at 25 °C and 1 atm. */
const MOLAR_VOLUME = 24.465;
const LITRES_PER_M3 = 1000;

/** g/m³ as a share of the air by volume. */
export function shareOfAir(input: {
  readonly refrigerant: RefrigerantId;
  readonly concentration: Concentration;
}): Calculated<Ratio> {
  if (!(input.concentration >= 0)) return refused('notPositive');
  const { molarMass } = FLUIDS[input.refrigerant];
  const share = ((input.concentration / molarMass) * MOLAR_VOLUME) / LITRES_PER_M3;
  return known(ratio(share), ...fluidCautions(input.refrigerant), 'idealGas');
}

/** Institutional rooms (beds, cells) get half: ASHRAE 15, from memory. */
const INSTITUTIONAL_SHARE = 0.5;

export interface RoomLimit {
  readonly concentration: Concentration;
  readonly limit: Concentration;
  readonly verdict: 'within' | 'over';
  /** Share of the lower flammable limit; null where the refrigerant does not burn or it is not known. */
  readonly ofFlammable: Ratio | null;
  readonly source: string;
  readonly standing: Standing;
  readonly otherSource: string | null;
}

/** The whole charge let go into the smallest space that it can reach, against the limit for that space. */
export function roomConcentration(input: {
  readonly refrigerant: RefrigerantId;
  readonly charge: Mass;
  readonly room: Volume;
  readonly institutional: boolean;
}): Calculated<RoomLimit> {
  const { refrigerant, charge, room } = input;
  if (!(charge >= 0 && room > 0)) return refused('notPositive');
  const listed = CONCENTRATION_LIMITS[refrigerant];
  if (listed === undefined) return refused('noTargetKnown');
  const found = concentration((charge / room) * LITRES_PER_M3);
  const limit = concentration(listed.gPerM3 * (input.institutional ? INSTITUTIONAL_SHARE : 1));
  const flammable = LOWER_FLAMMABLE_LIMITS[refrigerant];
  const verdict = found > limit ? 'over' : 'within';
  return known(
    {
      concentration: found,
      limit,
      verdict,
      ofFlammable: flammable === undefined ? null : ratio(found / flammable.gPerM3),
      source: listed.source,
      standing: listed.standing,
      otherSource: flammable?.otherSource ?? null,
    },
    ...fluidCautions(refrigerant),
    ...roomCautions(refrigerant, verdict),
  );
}

function roomCautions(refrigerant: RefrigerantId, verdict: RoomLimit['verdict']): Caution[] {
  const toxic: Caution[] = refrigerant === 'R-744' && verdict === 'over' ? ['toxicGas'] : [];
  // Ammonia is lighter than air and rises.
  const low: Caution[] = refrigerant === 'R-717' ? [] : ['gasPoolsLow'];
  return [...low, ...toxic, 'verifyWithAuthority'];
}

export interface Exposure {
  /** The highest level passed; null below them all. */
  readonly passed: ExposureLevel | null;
  readonly next: ExposureLevel | null;
}

/** Which limit a measured concentration of ammonia or carbon dioxide has passed. */
export function gasExposure(input: {
  readonly refrigerant: ExposedGas;
  readonly share: Ratio;
}): Calculated<Exposure> {
  if (!(input.share >= 0)) return refused('notPositive');
  // One part in a billion against the float's error of ppm written as a share.
  const ppm = input.share * 1e6 + 1e-9;
  const levels = EXPOSURE_LEVELS[input.refrigerant];
  const passed = levels.findLast((level) => ppm >= level.ppm) ?? null;
  const next = levels.find((level) => ppm < level.ppm) ?? null;
  return andThen(known({ passed, next }, 'toxicGas', 'verifyWithAuthority'), (value) =>
    known(value, ...fluidCautions(input.refrigerant)),
  );
}

export const shareOfAirFormula: Formula = {
  id: 'shareOfAir',
  name: 'parts per million of a refrigerant in air',
  equation: 'ppm = c / M · 24,465',
  symbols: symbols(['c', 'concentration', 'g/m³'], ['M', 'molar mass', 'g/mol']),
  range: 'ideal gas at 25 °C and 101.325 kPa',
  source: 'molar volume of the ideal gas, R·T/p with R by CODATA 2018',
  standing: 'computed',
  example: {
    inputs: { refrigerant: 'R-410A', concentration: '420g/m3' },
    gives: { value: 141_600, unit: 'ppm' },
    within: 100,
    source: '420 / 72.585 × 24,465 by hand',
    standing: 'computed',
  },
};

export const roomConcentrationFormula: Formula = {
  id: 'roomConcentration',
  name: 'refrigerant in a room after a full leak',
  equation: 'c = m / V, against RCL (half of it in an institution)',
  symbols: symbols(
    ['m', 'whole charge of the circuit', 'g'],
    ['V', 'smallest space it can reach, with what is permanently open to it', 'm³'],
    ['RCL', 'refrigerant concentration limit', 'g/m³'],
  ),
  range:
    'even mixing; ASHRAE 15, 7.2 and 7.3; for what burns RCL is a quarter of the lower flammable limit',
  source:
    'ASHRAE 15-2013 interpretation 4 (standards.globalspec.com) for the volume; limits and the half: from memory: get the licensed standard, verify with the authority',
  standing: 'from memory',
  example: {
    inputs: { refrigerant: 'R-404A', charge: '20lb', volume: '640ft3' },
    gives: { value: 31.25, unit: 'lbPerMcf' },
    within: 0.005,
    source: '20 lb in 640 ft³ by hand: over the 31 that the table prints',
    standing: 'computed',
  },
};

export const gasExposureFormula: Formula = {
  id: 'gasExposure',
  name: 'ammonia or carbon dioxide in the air, against exposure limits',
  equation: 'the highest of the limits that c has reached',
  symbols: symbols(['c', 'concentration by volume', 'ppm']),
  range: 'air as it is measured; ammonia and carbon dioxide only',
  source: `NIOSH and OSHA limits as given in mda.state.mn.us, sigueigerem.com and engineeringtoolbox.com, read 2026-11; carbon dioxide’s permissible and short-term limits from memory: verify with the authority`,
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-717', concentration: '40ppm' },
    gives: { value: 35, unit: 'ppm' },
    within: 0.001,
    source: 'mda.state.mn.us: 35 ppm for 15 minutes at most',
    standing: 'published',
  },
};
