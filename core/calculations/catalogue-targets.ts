/** Catalogue entries of what readings should be. */
import { temperatureDifference as toDifference } from '../units/quantity-values.ts';
import type { Calculated } from './calculated.ts';
import { DIFFERENCE, TEMPERATURE, answer, plain } from './catalogue-entry.ts';
import { temperatureIfGiven, temperatureOf } from './catalogue-entry.ts';
import type { Answer, Entry } from './catalogue-entry.ts';
import { badInput, baseOf, choiceOf, needChoice } from './catalogue-inputs.ts';
import type { BadInput, InputValues } from './catalogue-inputs.ts';
import { choice, optional, temperature, temperatureDifference } from './catalogue-keys.ts';
import { EQUIPMENT_CLASS, EQUIPMENT_IDS, METERING, METERING_IDS } from './catalogue-keys.ts';
import { productDifference, productDifferenceFormula } from './product-difference.ts';
import { PRODUCT_DIFFERENCES } from './shop-defaults.ts';
import type { Default, ProductId } from './shop-defaults.ts';
import { condensingTarget, condensingTargetFormula } from './targets.ts';
import { evaporatingTarget, evaporatingTargetFormula } from './targets.ts';
import { subcoolingTarget, subcoolingTargetFormula } from './targets.ts';
import { superheatTarget, superheatTargetFormula } from './targets.ts';
import type { Design, Metered, Target } from './targets.ts';

function designOf(inputs: InputValues, key: string): Design | BadInput {
  const given = baseOf(inputs, key);
  if (given !== undefined) return { kind: 'given', difference: toDifference(given) };
  const equipment = choiceOf(inputs, 'equipment', EQUIPMENT_IDS);
  if (equipment !== undefined) return { kind: 'class', equipment };
  return badInput(key, `give ${key}=…dF, or equipment= one of ${EQUIPMENT_IDS.join(', ')}`);
}

function meteredOf(inputs: InputValues): Metered | BadInput {
  const metering = needChoice(inputs, 'metering', METERING_IDS);
  const box = temperatureIfGiven(inputs, 'boxTemp');
  const setpoint = temperatureIfGiven(inputs, 'setpointTemp');
  if (metering === 'txv' || metering === 'eev') {
    if (box === undefined) return badInput('boxTemp', `with ${metering} give boxTemp=…F`);
    return setpoint === undefined ? { metering, box } : { metering, box, setpoint };
  }
  return setpoint === undefined
    ? badInput('setpointTemp', `with ${metering} give setpointTemp=…F: it holds only at design`)
    : { metering, setpoint };
}

const defaultSource = ({ source, standing, bandSource, otherSource }: Default) => ({
  source: `default: ${source} (${standing}); ${bandSource}`,
  ...(otherSource === undefined ? {} : { otherSource }),
});

const shown = (found: Calculated<Target<number>>): Calculated<Answer> =>
  answer(found, ({ value, low, high, from }) => ({
    base: value,
    ...(low === high ? {} : { also: { low, high } }),
    ...(from === null ? {} : defaultSource(from)),
  }));

const isProduct = (id: string): id is ProductId => Object.hasOwn(PRODUCT_DIFFERENCES, id);
const PRODUCTS: readonly ProductId[] = Object.keys(PRODUCT_DIFFERENCES).filter(isProduct);

export const TARGET_ENTRIES: readonly Entry[] = [
  {
    formula: condensingTargetFormula,
    keys: [
      temperature('ambientTemp'),
      optional(temperatureDifference('split')),
      EQUIPMENT_CLASS,
      optional(temperature('headControlTemp')),
    ],
    units: TEMPERATURE,
    run: (inputs) => {
      const design = designOf(inputs, 'split');
      if (design.kind === 'badInput') return design;
      const headControl = temperatureIfGiven(inputs, 'headControlTemp');
      const ambient = temperatureOf(inputs, 'ambientTemp');
      return shown(
        condensingTarget(
          headControl === undefined ? { ambient, design } : { ambient, design, headControl },
        ),
      );
    },
  },
  {
    formula: evaporatingTargetFormula,
    keys: [
      METERING,
      optional(temperature('boxTemp')),
      optional(temperature('setpointTemp')),
      optional(temperatureDifference('temperatureDifference')),
      EQUIPMENT_CLASS,
    ],
    units: TEMPERATURE,
    run: (inputs) => {
      const design = designOf(inputs, 'temperatureDifference');
      if (design.kind === 'badInput') return design;
      const metered = meteredOf(inputs);
      if ('kind' in metered) return metered;
      return shown(evaporatingTarget({ ...metered, design }));
    },
  },
  {
    formula: superheatTargetFormula,
    keys: [choice('equipment', EQUIPMENT_IDS)],
    units: DIFFERENCE,
    run: (inputs) =>
      shown(superheatTarget({ equipment: needChoice(inputs, 'equipment', EQUIPMENT_IDS) })),
  },
  {
    formula: subcoolingTargetFormula,
    keys: [],
    units: DIFFERENCE,
    run: () => shown(subcoolingTarget()),
  },
  {
    formula: productDifferenceFormula,
    keys: [choice('product', PRODUCTS)],
    units: DIFFERENCE,
    run: (inputs) => plain(productDifference({ product: needChoice(inputs, 'product', PRODUCTS) })),
  },
];
