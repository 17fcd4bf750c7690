/** Writes core/fluids/data from the reference states: `npm run fluids`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { format } from 'prettier';
import type { Phase } from '../../core/fluids/fluid.ts';
import * as sources from '../../core/fluids/sources.ts';
import { BOILING_POINTS } from '../../core/fluids/sources.ts';
import { evaluate } from '../../core/fluids/evaluate.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import type { RefrigerantId } from '../../core/terms/refrigerants.ts';
import { CHART_NOTES, SAFETY_GROUPS, SAFETY_READ_OF, WARMING } from './fluid-notes.ts';
import { propertyFiles } from './fit-properties.ts';
import { fitWithin, stated } from './fit-within.ts';
import type { Fitted } from './fit-within.ts';
import { loadReference } from './reference.ts';
import type { Reference } from './reference.ts';

/** A fifth of the bar (0.05 %, 0.02 K) and less: P → T → P then stays within twice the stated error. */
const LOG_PRESSURE = { tolerance: 1e-4, decimals: 7 };
const TEMPERATURE = { tolerance: 1e-3, decimals: 6 };

const FOLDER = new URL('../../core/fluids/', import.meta.url);

interface FittedLine {
  readonly logPressure: Fitted;
  readonly temperature: Fitted;
}

function fitLine({ points, critical }: Reference, phase: Phase): FittedLine {
  const logs = points.map((point) => ({ x: point.tempC, y: Math.log(point[phase]) }));
  const swapped = logs.map(({ x, y }) => ({ x: y, y: x }));
  const temperatureLimit = Number((critical.tempC + 0.5).toFixed(4));
  const logLimit = Number((Math.log(critical.kPa) + 0.01).toFixed(6));
  return {
    logPressure: fitWithin(logs, temperatureLimit, LOG_PRESSURE),
    temperature: fitWithin(swapped, logLimit, TEMPERATURE),
  };
}

function lineText({ logPressure, temperature }: FittedLine, reference: Reference): string {
  const { tempC: lowC } = first(reference.points);
  const { tempC: highC } = last(reference.points);
  const pressureAt = (tempC: number): number => Math.exp(evaluate(logPressure.curve, tempC));
  // Rounded outward, so that the pressure at an end of the range is itself in range.
  const low = Math.floor(pressureAt(lowC) * 1e4) / 1e4;
  const high = Math.ceil(pressureAt(highC) * 1e4) / 1e4;
  return `{
    logPressure: ${JSON.stringify(logPressure.curve)},
    temperature: ${JSON.stringify(temperature.curve)},
    low: absolutePressure(${low}),
    high: absolutePressure(${high}),
  }`;
}

const first = <Item>(list: readonly Item[]): Item => known(list[0]);
const last = <Item>(list: readonly Item[]): Item => known(list.at(-1));
function known<Item>(item: Item | undefined): Item {
  if (item === undefined) throw new Error('the reference or the notes lack a value');
  return item;
}

function chartText(id: RefrigerantId): string {
  const note = CHART_NOTES[id];
  if (note === undefined) return 'null';
  return `{
    against: ${note.against === BOILING_POINTS ? 'BOILING_POINTS' : JSON.stringify(note.against)},
    pressurePercent: ${note.pressurePercent},
    temperature: differenceF(${note.degF}),
    fromMemory: ${note.fromMemory},
    readAt: ${JSON.stringify(note.readAt)},
  }`;
}

function tripleText({ triple }: Reference): string {
  if (triple === null) return 'null';
  return `{ temperature: temperature(${triple.tempC}), pressure: absolutePressure(${triple.kPa}) }`;
}

/** The mean of the components by mass. */
function warmingText({ composition }: Reference): string {
  const [names = '', shares = '100'] = composition.replace('R-', '').split(' ');
  const parts = names.split('/').map((name) => known(WARMING[name]));
  const weights = shares.split('/').map((share) => Number(share) / 100);
  const value = parts.reduce((sum, part, index) => sum + part.value * known(weights[index]), 0);
  const named = parts.map(({ source }) => source);
  const blend = named.includes('WARMING_EU') ? 'WARMING_BLEND_EU' : 'WARMING_BLEND';
  const source = parts.length > 1 ? blend : known(named[0]);
  return `{ value: ${Number(value.toFixed(1))}, source: ${source} }`;
}

function glideText({ normalBoiling }: Reference): string {
  if (normalBoiling === null) return 'null';
  return `temperatureDifference(${(normalBoiling.dewC - normalBoiling.bubbleC).toFixed(3)})`;
}

function linesText(reference: Reference, { bubble, dew }: Record<Phase, FittedLine>): string {
  const isBlend = reference.composition.includes('/');
  const bubbleText = `const bubble: SaturationLine = ${lineText(bubble, reference)};`;
  return isBlend
    ? `${bubbleText}\nconst dew: SaturationLine = ${lineText(dew, reference)};`
    : `${bubbleText}\nconst dew = bubble;`;
}

export const fluidName = (id: RefrigerantId): string => id.replace('-', '').toLowerCase();
export const fluidFile = (id: RefrigerantId): string => `${id.toLowerCase()}.ts`;

function fluidText(id: RefrigerantId): string {
  const reference = loadReference(id);
  const { points, critical } = reference;
  const lines = { bubble: fitLine(reference, 'bubble'), dew: fitLine(reference, 'dew') };
  const worst = (way: keyof FittedLine): number =>
    Math.max(lines.bubble[way].error, lines.dew[way].error);
  const density = points.find(({ tempC }) => tempC === 25)?.rhoLiquid ?? 'null';
  return `/* Written by tests/checks/fit-fluids.ts: change that and run \`npm run fluids\`. */
import { absolutePressure, differenceF, temperature, temperatureDifference } from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { ${Object.keys(sources).join(', ')} } from '../sources.ts';

${linesText(reference, lines)}

export const ${fluidName(id)}: Fluid = {
  id: '${id}',
  composition: ${JSON.stringify(reference.composition)},
  safetyGroup: '${SAFETY_GROUPS[id]}',
  safetyGroupSource: ${SAFETY_READ_OF.includes(id) ? 'SAFETY_READ' : 'SAFETY_FROM_MEMORY'},
  range: { low: temperature(${first(points).tempC}), high: temperature(${last(points).tempC}) },
  critical: { temperature: temperature(${critical.tempC}), pressure: absolutePressure(${critical.kPa}) },
  triple: ${tripleText(reference)},
  molarMass: ${reference.molarMass},
  gwp: ${warmingText(reference)},
  glide: ${glideText(reference)},
  liquidDensity25: ${density},
  lines: { bubble, dew },
  maxError: {
    pressurePercent: ${stated(100 * Math.expm1(worst('logPressure')))},
    temperature: temperatureDifference(${stated(worst('temperature'))}),
  },
  source: ${sourceName(reference)},
  chartsDiffer: ${chartText(id)},
};
`;
}

/** The reference's own words must be those that the fluids carry. */
function sourceName({ model, source }: Reference): string {
  const names = ['PURE_FLUID', 'MULTI_FLUID'] as const;
  return known(names.find((name) => sources[name] === `${model}, ${source}`));
}

/** Only what a file uses is imported: unused names are an error here. */
function withUsedImports(text: string): string {
  const body = text.replaceAll(/import [^;]*;/g, '');
  const isUsed = (name: string): boolean => new RegExp(`\\b${name.trim()}\\b`).test(body);
  return text.replaceAll(/import \{([^}]*)\}/g, (_, names: string) => {
    const used = names.split(',').filter(isUsed);
    return `import { ${used.join(',')} }`;
  });
}

function indexText(): string {
  const imports = REFRIGERANTS.map(
    (id) => `import { ${fluidName(id)} } from './data/${fluidFile(id)}';`,
  );
  const rows = REFRIGERANTS.map((id) => `  '${id}': ${fluidName(id)},`);
  return `/* Written by tests/checks/fit-fluids.ts: change that and run \`npm run fluids\`. */
${imports.join('\n')}
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { Fluid } from './fluid.ts';

export const FLUIDS: Record<RefrigerantId, Fluid> = {
${rows.join('\n')}
};
`;
}

async function write(file: string, text: string): Promise<void> {
  const options = { parser: 'typescript', singleQuote: true, printWidth: 100 } as const;
  writeFileSync(new URL(file, FOLDER), await format(text, options));
}

mkdirSync(new URL('data/', FOLDER), { recursive: true });
await Promise.all([
  ...REFRIGERANTS.map((id) => write(`data/${fluidFile(id)}`, withUsedImports(fluidText(id)))),
  write('fluids.ts', indexText()),
  ...Object.entries(propertyFiles()).map(([file, text]) => write(file, text)),
]);
