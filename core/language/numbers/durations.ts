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
import { numberIn } from '../slots.ts';

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

/** "two hours and three quarters", "three hours forty five" */
const hoursAnd: readonly Node[] = [
  ...HOURS_AND.map(([words, over]) => [`and (${words})`, over] as const),
  ...HOUR_AND.map(([words, over]) => [`[and] (${words}|${over})`, over] as const),
].map(([words, over]) =>
  written(sequence(counted('hours', 'hours'), parseShape(words), tag({ over }))),
);

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
  const over = numberIn(tags?.['over']) ?? 0;
  return Math.round((number * MINUTES_IN[per] + over) * 1000) / 1000;
}
