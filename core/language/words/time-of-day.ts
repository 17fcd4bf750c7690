import type { Tags } from '../../grammar/nodes.ts';
import { signedIn } from '../slots.ts';

const MINUTES_IN_HOUR = 60;

/** "At four", "at four thirty": what a clock can show, and "came back at two eighty" cannot. */
export function isTimeOfDay(tags: Tags): boolean {
  const number = signedIn(tags);
  if (number === null || !Number.isInteger(number) || number < 1) return false;
  if (number <= 12) return true;
  const [hour, minute] = [Math.floor(number / 100), number % 100];
  return hour >= 1 && hour <= 12 && minute < MINUTES_IN_HOUR && minute % 5 === 0;
}
