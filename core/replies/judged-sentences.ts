import type { JudgedFindings } from '../advice/judged/judged-verdict.ts';
import type { Members } from '../advice/by-kind.ts';
import type { Known } from '../advice/verdict.ts';
import type { JudgedId } from '../terms/judged.ts';
import type { Amount } from '../units/amount.ts';
import { figure } from './amounts.ts';
import { line, plain, type Said } from './said.ts';

type Judged = Members<Known, 'answer'>['judged'];
type Figures = Pick<Judged, 'value' | 'unit' | 'limit' | 'read'>;
type Sentence = (figures: Figures) => Said;
type Sentences = { readonly [J in JudgedId]: Record<JudgedFindings[J], Sentence> };

const shown = (amount: Amount | null | undefined): Said =>
  amount ? figure(amount) : plain('nothing');

const value = ({ value: number, unit }: Figures): Said =>
  number === null ? plain('over the meter’s limit') : figure({ value: number, unit });
const limit = (figures: Figures): Said => shown(figures.limit);
const read = (figures: Figures): Said => shown(figures.read);

const always =
  (words: string): Sentence =>
  () =>
    plain(words);

const heater = (name: string): Record<JudgedFindings['defrostHeater'], Sentence> => ({
  expected: (found) => line`${value(found)}, by its ohms and the voltage. Clamp it and tell me.`,
  byRating: (found) =>
    line`About ${value(found)} cold and ${limit(found)} running, by its rating and the voltage. Read it and tell me.`,
  asExpected: (found) => line`${value(found)}, should be ${limit(found)}: the ${name} is good.`,
  off: (found) =>
    line`${value(found)}, should be ${limit(found)}: look for a dead element or a bad joint.`,
  noCurrent: (found) =>
    line`It draws nothing, should be ${limit(found)}: prove voltage at the ${name} while it calls.`,
});

const control = (name: string): Record<JudgedFindings['highPressureSwitch'], Sentence> => ({
  whereSet: (found) =>
    line`Opened at ${read(found)}, set at ${limit(found)}: the ${name} trips where it is set. Find why it got there.`,
  early: (found) =>
    line`Opened at ${read(found)}, set at ${limit(found)}: ${value(found)} early. The ${name} is at fault, or its setting is.`,
  late: (found) =>
    line`Opened at ${read(found)}, set at ${limit(found)}: ${value(found)} late. The ${name} does not protect it.`,
});

/** The number first, then what it comes to, then what to do. */
const SENTENCES: Sentences = {
  runCapacitor: {
    low: (found) => line`${value(found)}, rated ${limit(found)}: weak. Replace it.`,
    within: (found) => line`${value(found)}, rated ${limit(found)}: good.`,
    high: (found) =>
      line`${value(found)}, rated ${limit(found)}: high. Check the can and the reading, then replace it.`,
  },
  startCapacitor: {
    low: (found) => line`${value(found)}, marked from ${limit(found)}: weak. Replace it.`,
    within: (found) => line`${value(found)}, marked ${limit(found)} to ${read(found)}: good.`,
    high: (found) =>
      line`${value(found)}, marked up to ${limit(found)}: high. Check the can and the reading, then replace it.`,
  },
  windings: {
    addsUp: always('The windings add up. Still read each to ground.'),
    doesNotAddUp: (found) =>
      line`The windings are ${value(found)} out: run and start do not add up to run to start. Zero the leads and read again.`,
    overloadOpen: always(
      'Run to start reads, common reads open: that is the internal overload, not a winding. Let it cool.',
    ),
    startOpen: always(
      'The start winding is open. Let it cool and read once more before you condemn it.',
    ),
    runOpen: always(
      'The run winding is open. Let it cool and read once more before you condemn it.',
    ),
    open: always(
      'Everything reads open. Check the terminals and leads, let it cool, and read again.',
    ),
    contradiction: always('Those three readings cannot all be right. Read them again.'),
  },
  insulation: {
    aboveFloor: (found) =>
      line`${value(found)} to ground, ${limit(found)} is the floor: it passes. One reading is no trend.`,
    belowFloor: (found) =>
      line`${value(found)} to ground, ${limit(found)} is the floor: it fails. Leave it off.`,
  },
  compressorCurrent: {
    underRating: (found) =>
      line`${value(found)}, rated load ${limit(found)}: under the plate. What it should draw is on the maker’s curve.`,
    overRating: (found) =>
      line`${value(found)}, rated load ${limit(found)}: over the plate. Look at head, voltage and the run capacitor.`,
    lockedRotor: (found) =>
      line`${value(found)}, rated load ${limit(found)}: that is locked rotor. Look at the start gear and the voltage as it tries.`,
  },
  supplyVoltage: {
    low: (found) =>
      line`${value(found)}, at least ${limit(found)} by the plate: low. Read it as it starts.`,
    within: (found) => line`${value(found)}: within the plate.`,
    high: (found) => line`${value(found)}, at most ${limit(found)} by the plate: high.`,
  },
  voltageImbalance: {
    within: (found) => line`${value(found)} imbalance: all right, up to ${limit(found)}.`,
    aboveLimit: (found) =>
      line`${value(found)} imbalance, ${limit(found)} is the most: find the bad leg.`,
    stop: (found) => line`${value(found)} imbalance, over ${limit(found)}: shut it down.`,
  },
  currentImbalance: {
    within: (found) => line`${value(found)} current imbalance: all right, up to ${limit(found)}.`,
    aboveLimit: (found) =>
      line`${value(found)} current imbalance, ${limit(found)} is the most: move all three leads on by one line. If it stays with the line it is the supply, else the motor.`,
  },
  nonCondensables: {
    none: (found) =>
      line`${value(found)} off the coil’s own temperature: no air to speak of, up to ${limit(found)}.`,
    suspected: (found) =>
      line`${value(found)} over the coil’s own temperature: air, or a wrong or mixed refrigerant. Let it settle and read again.`,
    present: (found) =>
      line`${value(found)} over the coil’s own temperature: air, or a wrong or mixed refrigerant. Recover, evacuate and weigh in.`,
    testFailed: (found) =>
      line`${value(found)} under the coil’s own temperature: the test failed. No liquid there, or not settled: read both again.`,
  },
  food: {
    within: (found) =>
      line`${value(found)} in the food, the usual limit is ${limit(found)}: within it now.`,
    above: (found) => line`${value(found)} in the food, over the usual limit of ${limit(found)}.`,
    thawed: (found) =>
      line`${value(found)} in the food: it has thawed, and frozen food has to stay frozen.`,
  },
  pressureTest: {
    holds: (found) =>
      line`It holds: ${read(found)}, should be ${limit(found)} at that temperature.`,
    leaks: (found) =>
      line`It lost ${value(found)}: ${read(found)}, should be ${limit(found)} at that temperature.`,
    rises: (found) =>
      line`It gained ${value(found)}: ${read(found)}, should be ${limit(found)}. The gas was not at the temperature you read.`,
  },
  highPressureSwitch: control('high-pressure switch'),
  lowPressureSwitch: control('low-pressure switch'),
  dischargeLine: {
    withinLimit: (found) =>
      line`${value(found)} discharge, ${limit(found)} is the most: all right.`,
    aboveLimit: (found) =>
      line`${value(found)} discharge, ${limit(found)} is the most: too hot for the oil. Look at superheat and compression ratio.`,
    floodBack: (found) =>
      line`${value(found)} discharge is hardly above condensing: liquid may be coming back.`,
  },
  leakRate: {
    within: (found) => line`${value(found)} a year, ${limit(found)} is the limit: within it.`,
    overThreshold: (found) =>
      line`${value(found)} a year, over the ${limit(found)} limit: it has to be repaired and verified.`,
    notCovered: (found) =>
      line`${value(found)} a year. The federal limit does not cover so small a charge; fix the leak all the same.`,
  },
  defrostHeater: heater('defrost heater'),
  doorHeater: heater('door heater'),
};

export function judgedSaid<J extends JudgedId>(
  known: { readonly about: J; readonly finding: JudgedFindings[J] } & Figures,
): Said {
  const table: Record<JudgedFindings[J], Sentence> = SENTENCES[known.about];
  return table[known.finding](known);
}
