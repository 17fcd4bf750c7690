import type {
  EtaAnswer,
  PressureTestAnswer,
  VacuumHoldAnswer,
} from '../advice/settling/settling-verdict.ts';
import type { Amount } from '../units/amount.ts';
import { figure } from './amounts.ts';
import { SHORT_NAMES } from './names.ts';
import { line, plain, sentences, type Said } from './said.ts';
import { spanSaid } from './timer-sentences.ts';

/** A straight line gives the earliest alone, and says so: a box slows as it comes down. */
export function etaSaid({ about, target, unit, minutes, uncertainty }: EtaAnswer): Said {
  const there = line`${SHORT_NAMES[about]} at ${figure({ value: target, unit })}`;
  if (uncertainty === null) {
    return line`Not before ${spanSaid(minutes)}: ${there}. It slows as it comes down: read it again on the way.`;
  }
  return line`About ${spanSaid(minutes)}, ${spanSaid(uncertainty)} either way: ${there}.`;
}

/** What it comes from and what to do; never more than the readings show. */
const HOLD_WORDED: Record<VacuumHoldAnswer['verdict'], string> = {
  tight: 'It held: tight.',
  holdingSoFar: 'It holds so far: give it ten minutes in all, and read it again.',
  leak: 'It rises without slowing: a leak. Find it before the charge goes in.',
  moisture:
    'It levelled off where water boils: moisture. Break it with dry nitrogen and pull again.',
  offGassing:
    'It levelled off: refrigerant out of the oil, most likely. Pull longer and hold again.',
  moistureOrOffGassing:
    'It levelled off: moisture, or refrigerant out of the oil. Break it with dry nitrogen and pull again.',
  readLonger:
    'That does not tell a leak from moisture yet. Hold on, and read it again in five minutes.',
};

export function vacuumHoldSaid({ verdict, from, to, unit, minutes }: VacuumHoldAnswer): Said {
  return sentences([
    line`${figure({ value: from, unit })} to ${figure({ value: to, unit })} in ${spanSaid(minutes)}.`,
    plain(HOLD_WORDED[verdict]),
  ]);
}

type Tested = Pick<PressureTestAnswer, 'to' | 'expected'>;

const TEST_WORDED: Record<PressureTestAnswer['verdict'], (test: Tested) => Said> = {
  holds: () => plain('It held.'),
  leaks: (test) => line`${lost(test)} lost beyond the temperature: a leak. Find it.`,
  rises: (test) =>
    line`${lost(test)} over what the temperature explains. Check the gas temperature, and that no liquid is in there.`,
  temperatureNotRead: () =>
    plain(
      'Without the gas temperatures that proves nothing: say each with its pressure, like one fifty of nitrogen at seventy degrees.',
    ),
};

function lost({ to, expected }: Tested): Said {
  return figure({ value: Math.abs(to.value - (expected?.value ?? to.value)), unit: to.unit });
}

export function pressureTestSaid(test: PressureTestAnswer): Said {
  const { verdict, from, to, fromTemp, toTemp, expected, minutes } = test;
  return sentences([
    line`${at(from, fromTemp)} to ${at(to, toTemp)} in ${spanSaid(minutes)}.`,
    ...(expected === null ? [] : [line`It should be ${figure(expected)} by the temperature.`]),
    TEST_WORDED[verdict](test),
  ]);
}

function at(pressure: Amount, temp: Amount | null): Said {
  return temp === null ? figure(pressure) : line`${figure(pressure)} at ${figure(temp)}`;
}
