/** The texts of the properties' tables in core/fluids, for fit-fluids.ts to write. */
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import type { RefrigerantId } from '../../core/terms/refrigerants.ts';
import { fitWithin, stated } from './fit-within.ts';
import type { Fitted } from './fit-within.ts';
import { loadReference } from './reference.ts';
import type { ReferencePoint } from './reference.ts';

/** 0.1 %: a twentieth of what a bore printed to a hundredth of an inch leaves open in a line’s content. */
const PROPERTY = { tolerance: 1e-3, decimals: 6 };

type Property = 'rhoLiquid' | 'rhoVapour' | 'latentHeat';

function fitProperty(id: RefrigerantId, property: Property): Fitted {
  const { points, critical } = loadReference(id);
  const limit = Number((critical.tempC + 0.05).toFixed(4));
  const sample = (point: ReferencePoint) => ({ x: point.tempC, y: Math.log(point[property]) });
  return fitWithin(points.map(sample), limit, PROPERTY);
}

const percent = ({ error }: Fitted): number => stated(100 * Math.expm1(error));
const HEAD = '/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */';
const propertyText = (fitted: Fitted): string =>
  `{ log: ${JSON.stringify(fitted.curve)}, maxErrorPercent: ${percent(fitted)} }`;

interface PropertyTable {
  readonly name: string;
  readonly what: string;
  readonly property: Property;
}

const tableText = ({ name, what, property }: PropertyTable): string => `${HEAD}
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { FittedProperty } from './fluid.ts';

/** ${what} */
export const ${name}: Record<RefrigerantId, FittedProperty> = {
${REFRIGERANTS.map((id) => `  '${id}': ${propertyText(fitProperty(id, property))},`).join('\n')}
};
`;

/** File → text. */
export const propertyFiles = (): Readonly<Record<string, string>> => ({
  'liquid-densities.ts': tableText({
    name: 'LIQUID_DENSITIES',
    what: '°C → ln(kg/m³) of the saturated liquid, on the bubble line.',
    property: 'rhoLiquid',
  }),
  'vapour-densities.ts': tableText({
    name: 'VAPOUR_DENSITIES',
    what: '°C → ln(kg/m³) of the saturated vapour, on the dew line.',
    property: 'rhoVapour',
  }),
  'latent-heats.ts': tableText({
    name: 'LATENT_HEATS',
    what: '°C → ln(kJ/kg) from the bubble line to the dew line at one temperature.',
    property: 'latentHeat',
  }),
});
