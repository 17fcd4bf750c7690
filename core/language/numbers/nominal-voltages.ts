import { choice, named, type Node, optional, scope, sequence, tag } from '../../grammar/nodes.ts';
import { parseShape } from '../../grammar/shape.ts';

/** The voltages that supplies and plates are named by, as they are said: common practice in North America. */
const NOMINAL: readonly (readonly [string, number])[] = [
  ['one fifteen', 115],
  ['one twenty', 120],
  ['two hundred', 200],
  ['two (oh|o|zero) eight', 208],
  ['two twenty', 220],
  ['two thirty', 230],
  ['two forty', 240],
  ['two seventy seven', 277],
  ['four sixty', 460],
  ['four eighty', 480],
];

export const NOMINAL_VOLTAGE = named(
  'nominalVoltage',
  choice(
    ...NOMINAL.map(([said, number]) =>
      sequence(parseShape(`(${said}|${number})`), tag({ number })),
    ),
  ),
);

export const isNominalVoltage = (value: number): boolean =>
  NOMINAL.some(([, number]) => number === value);

/** Common practice: control and supply voltages within a tenth of 24, 115 to 120, 208 to 240 and 277. */
const SUPPLIES: readonly (readonly [number, number])[] = [
  [22, 29],
  [104, 132],
  [187, 305],
];

/** What a meter may show of a supply. */
export const isSupply = (volts: number): boolean =>
  SUPPLIES.some(([least, most]) => volts >= least && volts <= most);

const pair = (name: string, between: Node): Node => ({
  kind: 'rule',
  name,
  node: sequence(scope('first', NOMINAL_VOLTAGE), between, scope('second', NOMINAL_VOLTAGE)),
  fold: 'merge',
  unbroken: true,
});

/** "Two oh eight two thirty" in one breath; with a word between them they may be a range. */
export const VOLTAGE_PAIR = pair('voltagePair', sequence());
export const JOINED_VOLTAGES = pair(
  'joinedVoltages',
  optional(parseShape('to|slash|dash|or|over|hyphen|stroke')),
);
