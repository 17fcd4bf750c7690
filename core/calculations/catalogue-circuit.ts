/** Catalogue entries of the refrigerant circuit. */
import { FLUIDS } from '../fluids/fluids.ts';
import type { Phase } from '../fluids/fluid.ts';
import type { Temperature } from '../units/quantity-values.ts';
import { andThen } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { DIFFERENCE, GAUGE, TEMPERATURE, both, gauge, plain } from './catalogue-entry.ts';
import { refrigerantOf, temperatureIfGiven, temperatureOf } from './catalogue-entry.ts';
import type { Entry } from './catalogue-entry.ts';
import { badInput, choiceOf, needPressure } from './catalogue-inputs.ts';
import type { BadInput, InputValues } from './catalogue-inputs.ts';
import { ALTITUDE, PHASE, PHASES, REFRIGERANT } from './catalogue-keys.ts';
import { optional, pressure, temperature } from './catalogue-keys.ts';
import { split, splitFormula } from './coil-differences.ts';
import { temperatureDifference, temperatureDifferenceFormula } from './coil-differences.ts';
import { coilPressure, coilPressureFormula } from './coil-temperature.ts';
import { condensingTemperature, condensingTemperatureFormula } from './coil-temperature.ts';
import { evaporatingTemperature, evaporatingTemperatureFormula } from './coil-temperature.ts';
import { compressionRatio, compressionRatioFormula } from './compression-ratio.ts';
import { saturationPressure, saturationPressureFormula } from './saturation.ts';
import { saturationTemperature, saturationTemperatureFormula } from './saturation.ts';
import { subcooling, subcoolingFormula, superheat, superheatFormula } from './superheat.ts';

/** One line or the other; a pure substance has one line and needs no choice. */
function phaseOf(inputs: InputValues): Phase | BadInput {
  const fluid = FLUIDS[refrigerantOf(inputs)];
  const isPure = fluid.lines.dew === fluid.lines.bubble;
  return (
    choiceOf(inputs, 'phase', PHASES) ??
    (isPure
      ? 'dew'
      : badInput(
          'phase',
          `${fluid.id} is a blend: add phase=dew (vapour) or phase=bubble (liquid)`,
        ))
  );
}

/** The temperature itself, or the pressure it is the coil temperature of. */
function coilOf(
  inputs: InputValues,
  keys: { readonly temperature: string; readonly pressure: string },
  toTemperature: (inputs: InputValues) => Calculated<Temperature>,
): Calculated<Temperature> | BadInput {
  const given = temperatureIfGiven(inputs, keys.temperature);
  if (given !== undefined) return { kind: 'known', value: given, cautions: [] };
  if (inputs.has('refrigerant') && inputs.has(keys.pressure)) return toTemperature(inputs);
  return badInput(
    keys.temperature,
    `give ${keys.temperature}, or both refrigerant and ${keys.pressure}`,
  );
}

const condensing = (inputs: InputValues): Calculated<Temperature> =>
  condensingTemperature({
    refrigerant: refrigerantOf(inputs),
    head: needPressure(inputs, 'headPressure'),
  });

const evaporating = (inputs: InputValues): Calculated<Temperature> =>
  evaporatingTemperature({
    refrigerant: refrigerantOf(inputs),
    suction: needPressure(inputs, 'suctionPressure'),
  });

export const SATURATION_ENTRIES: readonly Entry[] = [
  {
    formula: saturationPressureFormula,
    keys: [REFRIGERANT, temperature('temperature'), PHASE, ALTITUDE],
    units: GAUGE,
    run: (inputs) => {
      const phase = phaseOf(inputs);
      if (typeof phase === 'object') return phase;
      const refrigerant = refrigerantOf(inputs);
      const at = temperatureOf(inputs, 'temperature');
      return gauge(inputs, saturationPressure({ refrigerant, temperature: at, phase }));
    },
  },
  {
    formula: saturationTemperatureFormula,
    keys: [REFRIGERANT, pressure('pressure'), PHASE, ALTITUDE],
    units: TEMPERATURE,
    run: (inputs) => {
      const phase = phaseOf(inputs);
      if (typeof phase === 'object') return phase;
      const refrigerant = refrigerantOf(inputs);
      const at = needPressure(inputs, 'pressure');
      return plain(saturationTemperature({ refrigerant, pressure: at, phase }));
    },
  },
  {
    formula: condensingTemperatureFormula,
    keys: [REFRIGERANT, pressure('headPressure'), ALTITUDE],
    units: TEMPERATURE,
    run: (inputs) => plain(condensing(inputs)),
  },
  {
    formula: evaporatingTemperatureFormula,
    keys: [REFRIGERANT, pressure('suctionPressure'), ALTITUDE],
    units: TEMPERATURE,
    run: (inputs) => plain(evaporating(inputs)),
  },
  {
    formula: coilPressureFormula,
    keys: [REFRIGERANT, temperature('temperature'), ALTITUDE],
    units: GAUGE,
    run: (inputs) =>
      gauge(
        inputs,
        coilPressure({
          refrigerant: refrigerantOf(inputs),
          temperature: temperatureOf(inputs, 'temperature'),
        }),
      ),
  },
];

export const CIRCUIT_ENTRIES: readonly Entry[] = [
  {
    formula: superheatFormula,
    keys: [REFRIGERANT, pressure('suctionPressure'), temperature('suctionLineTemp'), ALTITUDE],
    units: DIFFERENCE,
    run: (inputs) =>
      plain(
        superheat({
          refrigerant: refrigerantOf(inputs),
          suction: needPressure(inputs, 'suctionPressure'),
          suctionLine: temperatureOf(inputs, 'suctionLineTemp'),
        }),
      ),
  },
  {
    formula: subcoolingFormula,
    keys: [REFRIGERANT, pressure('headPressure'), temperature('liquidLineTemp'), ALTITUDE],
    units: DIFFERENCE,
    run: (inputs) =>
      plain(
        subcooling({
          refrigerant: refrigerantOf(inputs),
          head: needPressure(inputs, 'headPressure'),
          liquidLine: temperatureOf(inputs, 'liquidLineTemp'),
        }),
      ),
  },
  {
    formula: splitFormula,
    keys: [
      temperature('ambientTemp'),
      optional(temperature('condensingTemp')),
      optional(REFRIGERANT),
      optional(pressure('headPressure')),
      ALTITUDE,
    ],
    units: DIFFERENCE,
    run: (inputs) => {
      const keys = { temperature: 'condensingTemp', pressure: 'headPressure' };
      const coil = coilOf(inputs, keys, condensing);
      if (coil.kind === 'badInput') return coil;
      const ambient = temperatureOf(inputs, 'ambientTemp');
      return plain(andThen(coil, (value) => split({ condensing: value, ambient })));
    },
  },
  {
    formula: temperatureDifferenceFormula,
    keys: [
      temperature('boxTemp'),
      optional(temperature('evaporatingTemp')),
      optional(REFRIGERANT),
      optional(pressure('suctionPressure')),
      ALTITUDE,
    ],
    units: DIFFERENCE,
    run: (inputs) => {
      const keys = { temperature: 'evaporatingTemp', pressure: 'suctionPressure' };
      const coil = coilOf(inputs, keys, evaporating);
      if (coil.kind === 'badInput') return coil;
      const box = temperatureOf(inputs, 'boxTemp');
      return plain(andThen(coil, (value) => temperatureDifference({ box, evaporating: value })));
    },
  },
  {
    formula: compressionRatioFormula,
    keys: [pressure('suctionPressure'), pressure('headPressure'), ALTITUDE],
    units: both('ratio'),
    run: (inputs) =>
      plain(
        compressionRatio({
          suction: needPressure(inputs, 'suctionPressure'),
          head: needPressure(inputs, 'headPressure'),
        }),
      ),
  },
];
