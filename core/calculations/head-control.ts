import { difference, raise, ratio } from '../units/quantity-values.ts';
import type {
  AbsolutePressure,
  Ratio,
  Temperature,
  TemperatureDifference,
} from '../units/quantity-values.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { andThen, known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { condensingTemperature } from './coil-temperature.ts';
import { FAN_CYCLE } from './control-defaults.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

export type Against = 'below' | 'usual' | 'above';

export interface FanCycle {
  readonly on: Temperature;
  readonly off: Temperature;
  readonly onAgainst: Against;
  readonly offAgainst: Against;
}

/** The condensing temperatures at which a fan is cycled, from the control's pair of pressures. */
export function fanCycle(input: {
  readonly refrigerant: RefrigerantId;
  readonly on: AbsolutePressure;
  readonly off: AbsolutePressure;
}): Calculated<FanCycle> {
  const { refrigerant } = input;
  if (!(input.on > input.off)) return refused('notPositive');
  return andThen(condensingTemperature({ refrigerant, head: input.on }), (on) =>
    andThen(condensingTemperature({ refrigerant, head: input.off }), (off) => {
      const usual = FAN_CYCLE.value;
      const onAgainst = against(on, usual.on);
      return known({ on, off, onAgainst, offAgainst: against(off, usual.off) }, 'designTableOnly');
    }),
  );
}

function against(found: Temperature, [low, high]: readonly [Temperature, Temperature]): Against {
  if (found < low) return 'below';
  return found > high ? 'above' : 'usual';
}

export interface HeldHead {
  readonly expected: Temperature;
  /** What the head goes by today: the weather, or the control that holds it up. */
  readonly ruledBy: 'ambient' | 'headControl';
  /** The split to expect: with the control holding, a high one and nothing wrong. */
  readonly split: TemperatureDifference;
}

/** What the condensing temperature should be with a control that holds head at a pressure. */
export function heldHead(input: {
  readonly refrigerant: RefrigerantId;
  readonly setting: AbsolutePressure;
  readonly ambient: Temperature;
  readonly split: TemperatureDifference;
}): Calculated<HeldHead> {
  const { refrigerant, setting, ambient } = input;
  const free = raise(ambient, input.split);
  return andThen(condensingTemperature({ refrigerant, head: setting }), (held) =>
    free >= held
      ? known<HeldHead>({ expected: free, ruledBy: 'ambient', split: input.split })
      : known(
          { expected: held, ruledBy: 'headControl', split: difference(held, ambient) },
          'winterCharge',
        ),
  );
}

/**
 * How much of a condenser is under liquid when a valve holds head by flooding: what is left free must reject the
 * same heat over the larger split. None where the weather alone makes the head.
 */
export function floodedShare(input: {
  readonly held: Temperature;
  readonly ambient: Temperature;
  readonly split: TemperatureDifference;
}): Calculated<Ratio> {
  const { held, ambient, split } = input;
  if (!(split > 0)) return refused('notPositive');
  const available = difference(held, ambient);
  if (available <= split) return known(ratio(0));
  return known(ratio(1 - split / available), 'winterCharge');
}

export const fanCycleFormula: Formula = {
  id: 'fanCycle',
  name: 'condensing temperatures of a fan-cycling control',
  equation: 'Ton = SCT(Pon), Toff = SCT(Poff)',
  symbols: symbols(
    ['Pon, Poff', 'pressures at which the fan starts and stops, absolute', 'kPa'],
    ['SCT', 'condensing temperature, middle of bubble and dew', '°C'],
  ),
  range: 'air-cooled; the maker’s pair comes first; shown: where the fan starts',
  source: 'saturation at the control’s two pressures',
  standing: 'computed',
  example: {
    inputs: { refrigerant: 'R-134a', on: '124.2psi', off: '86.7psi' },
    gives: { value: 100, unit: 'degF' },
    within: 0.2,
    source: 'CoolProp 8.0: R-134a at 100 °F is 124.2 psig, at 80 °F 86.7 psig',
    standing: 'computed',
  },
};

export const heldHeadFormula: Formula = {
  id: 'heldHead',
  name: 'condensing temperature with head held by a control',
  equation: 'SCT = max(Tair + split, SCT(Pset))',
  symbols: symbols(
    ['Tair', 'air entering the condenser', '°C'],
    ['split', 'at design', 'K'],
    ['Pset', 'pressure that the control holds, absolute', 'kPa'],
  ),
  range: 'fixed head pressure valve or fan control; a high split and subcooling are then normal',
  source: 'achrnews.com/articles/105038, Low ambient controls; the larger of the two: definition',
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-404A', setting: '180psi', ambientTemp: '20F', split: '15dF' },
    gives: { value: 82, unit: 'degF' },
    within: 0.5,
    source: 'CoolProp 8.0: R-404A at 180 psig is 82 °F: a split of 62 °F with nothing wrong',
    standing: 'computed',
  },
};

export const floodedShareFormula: Formula = {
  id: 'floodedShare',
  name: 'flooded share of a condenser',
  equation: 'share = 1 − split / (Tset − Tair)',
  symbols: symbols(
    ['split', 'at which the condenser was sized', 'K'],
    ['Tset', 'condensing temperature that the valve holds', '°C'],
    ['Tair', 'air entering the condenser', '°C'],
  ),
  range: 'constant heat to reject; none where the air alone makes the head',
  source:
    'hvac-talk.com, Tech tip on flooded head pressure control: twice the difference, half flooded; three times, two thirds',
  standing: 'published',
  example: {
    inputs: { heldTemp: '90F', ambientTemp: '0F', split: '15dF' },
    gives: { value: 83.3, unit: 'percent' },
    within: 0.05,
    source: '1 − 15 / 90 by hand, the case of hvac-talk.com’s tech tip',
    standing: 'computed',
  },
};
