import { FLUIDS } from '../fluids/fluids.ts';
import { liquidDensity } from '../fluids/properties.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { degreesF, mass, ratio } from '../units/quantity-values.ts';
import type { Mass, Ratio, Temperature } from '../units/quantity-values.ts';
import { andThen, known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { fluidCautions } from './fluid-cautions.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

/** Water at 60 °F weighs 999.02 kg/m³ (IAPWS-95): what specific gravity is counted against. */
const WATER_DENSITY = 999.02;
const FILL_TEMPERATURE = degreesF(77);
/** AHRI Guideline K as given in achrnews.com/articles/111771. */
export const FILL_SHARE = ratio(0.8);
/** 49 CFR 173.304: liquid must not fill a cylinder at 131 °F or below. */
export const HOT_CYLINDER = degreesF(130);

/** Filling density, share of the water capacity by weight: 49 CFR 173.304a, read 2026-11. */
export const DOT_FILLING_DENSITIES: Partial<Record<RefrigerantId, Ratio>> = {
  'R-12': ratio(1.19),
  'R-22': ratio(1.05),
  'R-717': ratio(0.54),
  'R-744': ratio(0.68),
};

/** What a trade table prints instead. */
const PRINTED_GRAVITIES: Partial<Record<RefrigerantId, string>> = {
  'R-22':
    'achrnews.com/articles/111771 prints 1.197 for R-22; the equation of state’s 1.192 is used',
};

export interface Gravity {
  readonly value: Ratio;
  readonly otherSource: string | null;
}

/** Saturated liquid at 77 °F over water at 60 °F. Carbon dioxide has none that a fill could lean on. */
export function specificGravity(refrigerant: RefrigerantId): Calculated<Gravity> {
  const density = FLUIDS[refrigerant].liquidDensity25;
  if (density === null || refrigerant === 'R-744') return refused('ruleDoesNotApply');
  return known(
    {
      value: ratio(density / WATER_DENSITY),
      otherSource: PRINTED_GRAVITIES[refrigerant] ?? null,
    },
    ...fluidCautions(refrigerant),
  );
}

export interface CylinderFill {
  readonly net: Mass;
  /** What the scale shows when full: net and tare. */
  readonly gross: Mass;
  readonly specificGravity: Ratio;
  readonly ruledBy: 'eightyPercent' | 'fillingDensity';
}

interface Cylinder {
  readonly refrigerant: RefrigerantId;
  readonly waterCapacity: Mass;
  readonly tare: Mass;
  readonly specificGravity?: Ratio;
}

/** The most refrigerant a refillable cylinder may hold: the lower of both rules. Carbon dioxide is refused. */
export function cylinderFill(input: Cylinder): Calculated<CylinderFill> {
  return andThen(specificGravity(input.refrigerant), (table) => {
    if (!(input.waterCapacity > 0 && input.tare >= 0)) return refused('notPositive');
    const gravity = input.specificGravity ?? table.value;
    const filling = DOT_FILLING_DENSITIES[input.refrigerant] ?? Infinity;
    const share = Math.min(FILL_SHARE * gravity, filling);
    const net = mass(share * input.waterCapacity);
    return known(
      {
        net,
        gross: mass(net + input.tare),
        specificGravity: gravity,
        ruledBy: share === filling ? 'fillingDensity' : 'eightyPercent',
      },
      'neverOverfill',
    );
  });
}

/** What may still go in, from what the scale shows; below zero it is overfilled. */
export function cylinderRemaining(input: Cylinder & { readonly present: Mass }): Calculated<Mass> {
  return andThen(cylinderFill(input), ({ gross }) => {
    if (input.present < input.tare) return refused('notPositive');
    return known(mass(gross - input.present), 'neverOverfill');
  });
}

/** The share of a cylinder that liquid takes when it warms, filled to a share at 77 °F. One is full of liquid. */
export function liquidShare(input: {
  readonly refrigerant: RefrigerantId;
  readonly filled: Ratio;
  readonly at: Temperature;
}): Calculated<Ratio> {
  if (!(input.filled > 0 && input.filled <= 1)) return refused('notPositive');
  const cold = liquidDensity(input.refrigerant, FILL_TEMPERATURE);
  if (cold.kind === 'refused') return cold;
  const warm = liquidDensity(input.refrigerant, input.at);
  if (warm.kind === 'refused') return warm;
  return known(ratio((input.filled * cold.value) / warm.value), 'neverOverfill');
}

const GUIDELINE = 'AHRI Guideline K as given in achrnews.com/articles/111771';

export const specificGravityFormula: Formula = {
  id: 'specificGravity',
  name: 'specific gravity of the liquid at 77 °F',
  equation: 'SG = ρ(77 °F) / ρw(60 °F)',
  symbols: symbols(
    ['ρ', 'density of the saturated liquid', 'kg/m³'],
    ['ρw', 'density of water at 60 °F, 999.02', 'kg/m³'],
  ),
  range: 'refrigerants that are liquid at 77 °F, carbon dioxide apart',
  source: 'definition; densities from the equation of state (CoolProp 8.0.1dev)',
  standing: 'computed',
  example: {
    inputs: { refrigerant: 'R-22' },
    gives: { value: 1.192, unit: 'ratio' },
    within: 0.0006,
    source: 'CoolProp 8.0.1dev, worked apart from the fits',
    standing: 'computed',
  },
};

export const cylinderFillFormula: Formula = {
  id: 'cylinderFill',
  name: 'recovery cylinder fill',
  equation: 'gross = min(0.80 · SG, fd) · WC + TW',
  symbols: symbols(
    ['WC', 'water capacity stamped on the cylinder', 'g'],
    ['SG', 'liquid’s specific gravity at 77 °F', '1'],
    ['fd', 'filling density of 49 CFR 173.304a where it lists one', '1'],
    ['TW', 'tare weight stamped on the cylinder', 'g'],
  ),
  range: 'refillable cylinders, refrigerants that are liquid at 77 °F; not carbon dioxide',
  source: `${GUIDELINE}; 49 CFR 173.304a, read 2026-11; SG from the equation of state`,
  standing: 'published',
  example: {
    inputs: {
      refrigerant: 'R-22',
      waterCapacity: '1000lb',
      tare: '380lb',
      specificGravity: '1.197',
    },
    gives: { value: 1337.6, unit: 'lb' },
    within: 0.05,
    source: 'achrnews.com/articles/111771: SG 1.197, net 957.6, gross 1,337.6 lb',
    standing: 'published',
  },
};

export const cylinderRemainingFormula: Formula = {
  id: 'cylinderRemaining',
  name: 'room left in a recovery cylinder',
  equation: 'left = min(0.80 · SG, fd) · WC + TW − W',
  symbols: symbols(
    ['W', 'weight on the scale now', 'g'],
    ['WC, SG, fd, TW', 'as for the cylinder’s fill', 'g, 1, 1, g'],
  ),
  range:
    'as the cylinder’s fill; one refrigerant only in the cylinder; below zero it is overfilled',
  source: `${GUIDELINE}; arithmetic`,
  standing: 'computed',
  example: {
    inputs: {
      ...{ refrigerant: 'R-22', waterCapacity: '1000lb', tare: '380lb' },
      ...{ specificGravity: '1.197', present: '1000lb' },
    },
    gives: { value: 337.6, unit: 'lb' },
    within: 0.05,
    source: 'achrnews.com/articles/111771: gross 1,337.6 lb, less 1,000 on the scale',
    standing: 'computed',
  },
};

export const liquidShareFormula: Formula = {
  id: 'liquidShare',
  name: 'share of a cylinder that its liquid takes when warm',
  equation: 'share = filled · ρ(77 °F) / ρ(T)',
  symbols: symbols(
    ['filled', 'liquid share at 77 °F', '1'],
    ['ρ', 'density of the saturated liquid', 'kg/m³'],
    ['T', 'temperature of the cylinder', '°C'],
  ),
  range:
    'up to the range of the refrigerant’s curves; at one the liquid fills the vessel and bursts it or opens the relief: never at or below 131 °F (49 CFR 173.304)',
  source: 'mass conserved; densities from the equation of state (CoolProp 8.0.1dev)',
  standing: 'computed',
  example: {
    inputs: { refrigerant: 'R-404A' },
    gives: { value: 97, unit: 'percent' },
    within: 0.6,
    source: 'CoolProp 8.0.1dev: 80 % at 77 °F is 0.97 at 130 °F',
    standing: 'computed',
  },
};
