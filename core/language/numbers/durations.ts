import {
  choice,
  named,
  type Node,
  sequence,
  tag,
  type Tags,
  written,
} from '../../grammar/nodes.ts';
import { parseShape } from '../../grammar/shape.ts';
import { NUMBER } from './numbers.ts';
import { numberIn, tagsIn } from '../slots.ts';

const MINUTES_IN = { minutes: 1, hours: 60, seconds: 1 / 60 } as const;
type Per = keyof typeof MINUTES_IN;

const isPer = (data: unknown): data is Per =>
  typeof data === 'string' && Object.hasOwn(MINUTES_IN, data);

const counted = (per: Per, words: string): Node =>
  sequence(parseShape(`<number> (${words})`, { number: NUMBER }), tag({ per }));

/** "an hour and twenty minutes" */
const withMinutes = (words: string, over: number): Node =>
  sequence(
    parseShape(`${words} <number> (minutes|minute)`, { number: NUMBER }),
    tag({ per: 'minutes', over }),
  );

const fixed = (number: number, words: string): Node =>
  sequence(parseShape(words), tag({ number, per: 'minutes' }));

/** Said without "minutes" behind an hour; the longer first, as "forty" is how it begins. */
export const HOUR_AND: readonly (readonly [string, number])[] = [
  ['ten', 10],
  ['fifteen', 15],
  ['twenty', 20],
  ['thirty', 30],
  ['forty five', 45],
  ['forty', 40],
  ['fifty', 50],
];

/** The parts of an hour that are told behind whole ones. */
const HOURS_AND: readonly (readonly [string, number])[] = [
  ['a quarter', 15],
  ['a half', 30],
  ['three quarters', 45],
];

/** "two hours and three quarters", "three hours forty five", "two hours and forty minutes" */
const hoursAnd: readonly Node[] = [
  parseShape('[and] <number:over> (minutes|minute)', { number: NUMBER }),
  ...HOURS_AND.map(([words, over]) => sequence(parseShape(`and (${words})`), tag({ over }))),
  ...HOUR_AND.map(([words, over]) =>
    sequence(parseShape(`[and] (${words}|${over})`), tag({ over })),
  ),
].map((behind) => written(sequence(counted('hours', 'hours'), behind)));

/** A stretch of time as said: "ten minutes", "half an hour", "an hour and a half". */
export const DURATION = named(
  'duration',
  choice(
    counted('minutes', 'minutes|minute'),
    ...hoursAnd,
    counted('hours', 'hours|hour'),
    counted('seconds', 'seconds|second|sec'),
    fixed(90, '[(an|one|a)] hour and a half'),
    fixed(75, '(an|one|a) hour and a quarter'),
    written(fixed(75, 'hour and a quarter')),
    written(fixed(105, '[(an|one|a)] hour and three quarters')),
    withMinutes('(an|one|a) hour [and]', 60),
    fixed(1.5, '(a|one) minute and a half'),
    ...HOUR_AND.map(([words, minutes]) =>
      written(fixed(60 + minutes, `[(an|one|a)] hour [and] (${words}|${minutes})`)),
    ),
    fixed(60, '(an|a|another|one more) hour'),
    fixed(45, 'three quarters of an hour'),
    fixed(15, '(a quarter of an hour|quarter of an hour)'),
    fixed(1, 'a minute'),
  ),
);

/** Its length in minutes; `null` where none was said. */
export function minutesIn(tags: Tags | null): number | null {
  const number = numberIn(tags?.['number']);
  const per = tags?.['per'];
  if (number === null || !isPer(per)) return null;
  const minutes = tagsIn(tags?.['over']);
  const over = numberIn(minutes === null ? tags?.['over'] : minutes['number']) ?? 0;
  // "An hour and twenty, two sevenths minutes": nobody tells parts of a minute so.
  if (minutes !== null && !isBehindHours(over, number)) return null;
  return Math.round((number * MINUTES_IN[per] + over) * 1000) / 1000;
}

const MINUTES_IN_HOUR = 60;
const isBehindHours = (minutes: number, hours: number): boolean =>
  Number.isInteger(minutes) && minutes >= 0 && minutes < MINUTES_IN_HOUR && Number.isInteger(hours);
