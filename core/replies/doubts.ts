import type { Doubt, DoubtReason } from '../language/utterance.ts';
import { quantityTerm } from '../terms/quantities.ts';
import type { Dimension } from '../units/dimensions.ts';
import type { UnitHabit } from '../units/shown-unit.ts';
import { heardSaid, valueSaid } from './readings.ts';
import { join, line, type Said } from './said.ts';

const KEEP_OR_AGAIN = 'Say yes to keep it, or say it again.';

const OUT_OF_RANGE: Partial<Record<Dimension, string>> = {
  gaugePressure: 'That is beyond what this refrigerant can show.',
};

const AGAINST_SIBLING: Partial<Record<Doubt['quantity'], string>> = {
  headPressure: 'That would put head below suction.',
  suctionPressure: 'That would put suction above head.',
};

/** What to ask for when a number came without a unit and its quantity has none of its own. */
const WHICH_UNIT: Record<Dimension, string> = {
  gaugePressure: 'Is that psi, or inches of vacuum?',
  absolutePressure: 'Is that microns?',
  temperature: 'Is that Fahrenheit, or Celsius?',
  temperatureDifference: 'Is that Fahrenheit degrees, or kelvin?',
  voltage: 'Is that volts?',
  current: 'Is that amps?',
  resistance: 'Is that ohms, or megohms?',
  capacitance: 'Is that microfarads?',
  power: 'Is that watts?',
  apparentPower: 'Is that volt-amps?',
  mass: 'Is that ounces, pounds, or grams?',
  duration: 'Is that minutes?',
  frequency: 'Is that hertz?',
  length: 'Is that feet?',
  volume: 'Is that litres, or cubic feet?',
  concentration: 'Is that grams per cubic metre?',
  carbonDioxideEquivalent: 'Is that tonnes of carbon dioxide equivalent?',
  ratio: 'What is that of?',
};

const WHY: Record<Exclude<DoubtReason, EitherOr>, (doubt: Doubt) => string> = {
  outOfRange: ({ quantity }) =>
    `${OUT_OF_RANGE[quantityTerm(quantity).dimension] ?? 'That is far outside what I expect.'} ${KEEP_OR_AGAIN}`,
  againstSibling: ({ quantity }) =>
    `${AGAINST_SIBLING[quantity] ?? 'That does not fit the other reading.'} ${KEEP_OR_AGAIN}`,
  noUnit: ({ quantity }) =>
    `${WHICH_UNIT[quantityTerm(quantity).dimension]} Say it again with the unit.`,
  hearsay: () => 'That is hearsay. Say yes to keep it as a reading, or no to leave it out.',
  expected: () => 'Say yes if it reads that, or no if it only should.',
};

/** Between two values that were said, or may have been. */
type EitherOr = 'soundsLike' | 'saidTwoWays';

export function doubtSaid(doubt: Doubt, units: UnitHabit): Said {
  if (doubt.why === 'soundsLike' || doubt.why === 'saidTwoWays') return whichSaid(doubt, units);
  return line`${heardSaid(doubt, units)}? ${WHY[doubt.why](doubt)}`;
}

/** "Box 15, or 50?" */
function whichSaid({ or, ...doubt }: Doubt, units: UnitHabit): Said {
  if (or === undefined) return line`${heardSaid(doubt, units)}? ${KEEP_OR_AGAIN}`;
  return line`${heardSaid(doubt, units)}, or ${valueSaid({ ...doubt, value: or }, units)}?`;
}

/** Two that contradict each other: "yes" to one of them would mean nothing. */
export function siblingsSaid(doubts: readonly Doubt[], units: UnitHabit): Said {
  const each = join(
    doubts.map((doubt) => heardSaid(doubt, units)),
    ', ',
  );
  return line`${each}? That would put suction above head. Say both again.`;
}
