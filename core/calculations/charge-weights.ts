import { liquidDensity } from '../fluids/properties.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { degreesF, mass, ratio, volume } from '../units/quantity-values.ts';
import type { Length, Mass, Ratio, Temperature, Volume } from '../units/quantity-values.ts';
import { andThen, known, refused } from './calculated.ts';
import type { Calculated, Caution } from './calculated.ts';
import { fluidCautions } from './fluid-cautions.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

const LITRES_PER_M3 = 1000;
export const LINE_TEMPERATURE = degreesF(70);
/** ASHRAE 15: 90 % at 90 °F, the temperature from memory; 80 % is common design. */
export const RECEIVER_TEMPERATURE = degreesF(90);
export const RECEIVER_SHARE = ratio(0.9);

/** What saturated liquid in that volume weighs. */
function liquidIn(
  refrigerant: RefrigerantId,
  { room, at }: { readonly room: Volume; readonly at: Temperature },
): Calculated<Mass> {
  if (!(room > 0)) return refused('notPositive');
  const density = liquidDensity(refrigerant, at);
  if (density.kind === 'refused') return density;
  return known(mass(density.value * room), ...fluidCautions(refrigerant));
}

/** The most liquid that a receiver may hold in a pump-down. */
export function receiverCapacity(input: {
  readonly refrigerant: RefrigerantId;
  readonly room: Volume;
  readonly at?: Temperature;
  readonly share?: Ratio;
}): Calculated<Mass> {
  const { refrigerant, room, at = RECEIVER_TEMPERATURE, share = RECEIVER_SHARE } = input;
  if (!(share > 0 && share <= 1)) return refused('notPositive');
  return andThen(liquidIn(refrigerant, { room, at }), (full) =>
    known(mass(share * full), 'neverOverfill', 'trappedLiquid'),
  );
}

/** A line or hose full of liquid, by its bore and length: the worst case for a hose. */
export function lineContent(input: {
  readonly refrigerant: RefrigerantId;
  readonly length: Length;
  readonly bore: Length;
  readonly at?: Temperature;
}): Calculated<Mass> {
  const { refrigerant, length, bore, at = LINE_TEMPERATURE } = input;
  if (!(length > 0 && bore > 0)) return refused('notPositive');
  const room = volume((Math.PI / 4) * bore ** 2 * length * LITRES_PER_M3);
  return andThen(liquidIn(refrigerant, { room, at }), (content) => known(content, 'trappedLiquid'));
}

/** What to add or take out for a line longer or shorter than the one the unit was charged for. */
export function lineSetAdjustment(input: {
  readonly length: Length;
  readonly chargedFor: Length;
  /** By the maker, for a metre. */
  readonly perMetre: Mass;
}): Calculated<Mass> {
  if (!(input.length >= 0 && input.chargedFor >= 0 && input.perMetre > 0)) {
    return refused('notPositive');
  }
  return known(mass((input.length - input.chargedFor) * input.perMetre), 'chargeByNameplate');
}

/** Common practice: a critical charge is weighed in to two percent. */
export const CHARGE_TOLERANCE = ratio(0.02);
/** A scale is fine enough when one step is no more than a quarter of what may be off. */
const STEPS_IN_TOLERANCE = 4;

export interface ChargeWindow {
  readonly low: Mass;
  readonly high: Mass;
  /** One step of the scale as a share of the charge. */
  readonly resolution: Ratio;
  readonly scale: 'fineEnough' | 'tooCoarse';
}

/** What the scale must show for a critical charge, and whether this scale can show it. */
export function chargeByWeight(input: {
  readonly nameplate: Mass;
  readonly step: Mass;
  readonly tolerance?: Ratio;
}): Calculated<ChargeWindow> {
  const { nameplate, step, tolerance = CHARGE_TOLERANCE } = input;
  if (!(nameplate > 0 && step > 0 && tolerance > 0)) return refused('notPositive');
  const scale = step * STEPS_IN_TOLERANCE <= tolerance * nameplate ? 'fineEnough' : 'tooCoarse';
  const cautions: Caution[] = scale === 'tooCoarse' ? ['scaleTooCoarse'] : [];
  return known(
    {
      low: mass(nameplate * (1 - tolerance)),
      // Never above the nameplate: the tolerance is downward only.
      high: nameplate,
      resolution: ratio(step / nameplate),
      scale,
    },
    'chargeByNameplate',
    ...cautions,
  );
}

const DENSITY_SOURCE = 'liquid density from the equation of state (CoolProp 8.0.1dev)';

export const receiverCapacityFormula: Formula = {
  id: 'receiverCapacity',
  name: 'liquid that a receiver may hold',
  equation: 'm = share · V · ρ(T)',
  symbols: symbols(
    ['share', 'of the volume, 0.9 unless given', '1'],
    ['V', 'internal volume', 'L'],
    ['ρ', 'density of the saturated liquid', 'kg/m³'],
    ['T', 'temperature of the receiver, 90 °F unless given', '°C'],
  ),
  range: 'within the refrigerant’s curves; 80 % is common design',
  source: `90 % in bitzer.de, AT-660; 90 °F: ASHRAE 15, from memory; ${DENSITY_SOURCE}`,
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-404A', volume: '1L', temperature: '20C' },
    gives: { value: 0.96, unit: 'kg' },
    within: 0.005,
    source: 'bitzer.de, AT-660: 0.96 kg for each litre at 20 °C and 90 %',
    standing: 'published',
  },
};

const LINE_SYMBOLS = symbols(
  ['d', 'bore', 'm'],
  ['L', 'length', 'm'],
  ['ρ', 'density of the saturated liquid', 'kg/m³'],
  ['T', 'temperature of the liquid, 70 °F unless given', '°C'],
);

export const lineContentFormula: Formula = {
  id: 'lineContent',
  name: 'refrigerant in a liquid line',
  equation: 'm = π/4 · d² · L · ρ(T)',
  symbols: LINE_SYMBOLS,
  range: 'a line full of liquid; the maker’s ounces per foot come first',
  source: `geometry; ${DENSITY_SOURCE}`,
  standing: 'computed',
  example: {
    inputs: { refrigerant: 'R-404A', length: '16ft', bore: '0.315in' },
    gives: { value: 0.57, unit: 'lb' },
    within: 0.006,
    source: 'CoolProp 8.0.1dev: 0.57 oz for a foot of 3/8 in OD at 70 °F, sixteen feet of it',
    standing: 'computed',
  },
};

export const hoseContentFormula: Formula = {
  id: 'hoseContent',
  name: 'refrigerant in a hose full of liquid',
  equation: 'm = π/4 · d² · L · ρ(T)',
  symbols: LINE_SYMBOLS,
  range: 'the worst case, all liquid; on a small charge it is not negligible',
  source: `geometry; ${DENSITY_SOURCE}`,
  standing: 'computed',
  example: {
    inputs: { refrigerant: 'R-290', length: '60in', bore: '0.25in' },
    gives: { value: 24, unit: 'g' },
    within: 0.5,
    source: 'CoolProp 8.0.1dev: 48.3 cm³ at 70 °F, 24 g, a sixth of a 150 g charge',
    standing: 'computed',
  },
};

export const lineSetAdjustmentFormula: Formula = {
  id: 'lineSetAdjustment',
  name: 'charge for a longer or shorter line set',
  equation: 'Δm = (L − L0) · q',
  symbols: symbols(
    ['L, L0', 'length of the line, and what the unit was charged for', 'm'],
    ['q', 'maker’s charge for a length of liquid line', 'g/m'],
  ),
  range: 'by the maker’s figure for that line size; below zero is taken out',
  source: 'manualshive.com, an air conditioner maker’s manual HR18D2VAR, page 18',
  standing: 'published',
  example: {
    inputs: { length: '35ft', chargedFor: '25ft', perFoot: '0.6oz' },
    gives: { value: 6, unit: 'oz' },
    within: 0.001,
    source: 'the same page: ±0.6 oz a foot for 3/8 in beyond 25 ft',
    standing: 'published',
  },
};

export const chargeByWeightFormula: Formula = {
  id: 'chargeByWeight',
  name: 'critical charge by weight',
  equation:
    'low = (1 − t) · m, high = m; resolution = step / m; fine enough while 4 · step ≤ t · m',
  symbols: symbols(
    ['m', 'nameplate charge', 'g'],
    ['t', 'tolerance, 2 % unless given', '1'],
    ['step', 'smallest step of the scale', 'g'],
  ),
  range: 'capillary tubes and small circuits: take all out, evacuate, weigh in; never top up',
  source: 'weighing in to 1 to 2 % or the scale’s limit: common practice',
  standing: 'common practice',
  example: {
    inputs: { nameplate: '150g', step: '0.1oz' },
    gives: { value: 1.9, unit: 'percent' },
    within: 0.05,
    source: '2.835 g over 150 g by hand: a tenth of an ounce is 1.9 %',
    standing: 'computed',
  },
};
