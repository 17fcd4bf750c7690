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
import { MONTHS, PERIODS, WEEKDAYS } from '../../terms/calendar.ts';
import { ONES_IN_ROW, TEENS_IN_ROW } from '../../terms/number-words.ts';
import { namesNode } from '../names/names-node.ts';
import { NUMBER } from '../numbers/numbers.ts';
import { idIn, numberIn } from '../slots.ts';
import type { Due, TimeSpan } from '../utterance.ts';

/** Every day of a month by its place. */
const PLACES_OF_DAYS: readonly (readonly [string, number])[] = [
  ...[...ONES_IN_ROW, ...TEENS_IN_ROW].map((words, index) => [words, index + 1] as const),
  ...ONES_IN_ROW.map((words, index) => [`twenty ${words}`, index + 21] as const),
  ['twentieth', 20],
  ['thirtieth', 30],
  ['thirty first', 31],
];

/** "The fifteenth", "the 15th": a bare number alone is no day. */
const DAY_PLACE = named(
  'dayPlace',
  choice(
    ...PLACES_OF_DAYS.map(([words, day]) => sequence(parseShape(words), tag({ day }))),
    parseShape('<number> (st|nd|rd|th)', { number: NUMBER }),
  ),
);
/** Behind its month, a number is one. */
const DAY_NUMBER = named('dayNumber', choice(DAY_PLACE, NUMBER));

const itself = (names: readonly string[]): Record<string, readonly string[]> =>
  Object.fromEntries(names.map((name) => [name, [name]]));
const WEEKDAY = namesNode('weekday', itself(Object.keys(WEEKDAYS)));
const MONTH = namesNode('month', itself(Object.keys(MONTHS)));

const PERIOD = namesNode(
  'unit',
  {
    day: ['(day|days)'],
    week: ['(week|weeks)'],
    month: ['(month|months)'],
    year: ['(year|years)'],
  },
  'period',
);

/** "A month", "two weeks", "a couple of days" */
const STRETCH = named(
  'stretch',
  choice(
    parseShape('a <one> <period>', { period: PERIOD, one: tag({ amount: 1 }) }),
    parseShape('a <two> <period> or two', { period: PERIOD, two: tag({ amount: 2 }) }),
    parseShape('[a] couple [of] <two> <period>', { period: PERIOD, two: tag({ amount: 2 }) }),
    parseShape('<number> <period>', { period: PERIOD, number: NUMBER }),
  ),
);

const WHEN = namesNode('when', {
  before: ['before'],
  by: ['by'],
  in: ['in'],
  this: ['this'],
  next: ['next'],
  until: ['until'],
});
const SEASONS = ['summer', 'winter', 'spring', 'fall', 'autumn'];
const SEASON = namesNode('season', {
  ...itself([...SEASONS, ...SEASONS.map((season) => `the ${season}`)]),
  ...itself(SEASONS.map((season) => `next ${season}`)),
  ...itself(['week', 'month', 'year', 'weekend', 'hot weather', 'the hot weather', 'the holidays']),
  ...itself(['week', 'month', 'year', 'summer', 'winter'].map((of) => `the end of the ${of}`)),
  ...itself(['week', 'month', 'year', 'visit', 'trip'].map((time) => `the ${time}`)),
  ...itself(Object.keys(MONTHS)),
  ...itself(['pm', 'service call', 'call', 'cleaning', 'time it is opened up']),
  ...itself(['it gets hot', 'it gets warm', 'it gets cold', 'the weekend', 'visit', 'trip']),
});

const BY = tag({ said: 'by' });
const ON = tag({ said: 'on' });
const as = (kind: Due['kind']): Node => tag({ kind });
const NEXT = tag({ next: true });
const HOLES = {
  by: BY,
  on: ON,
  in: as('in'),
  weekday: WEEKDAY,
  month: MONTH,
  next: NEXT,
  stretch: STRETCH,
  stretchOne: parseShape('<one> <period>', { period: PERIOD, one: tag({ amount: 1 }) }),
  place: DAY_PLACE,
  day: DAY_NUMBER,
  isWeekday: as('weekday'),
  isDayOfMonth: as('dayOfMonth'),
  isDate: as('date'),
  inWords: as('words'),
  when: WHEN,
  season: SEASON,
  tomorrow: tag({ amount: 1, unit: 'day' }),
  soon: tag({ when: 'as', season: 'soon as possible' }),
  onReturn: tag({ when: 'when', season: 'we come back' }),
  sometime: tag({ when: 'when', season: 'there is time' }),
};
const shaped = (shape: string): Node => parseShape(shape, HOLES);
const SAID = '(<by> (by|before)|<on> [on])';

/** When something is to be done: "within a month", "next tuesday", "on the fifteenth", "before summer". */
export const DUE = named(
  'due',
  choice(
    shaped('<by> (within|in the next|inside of|in under) <in> [the next] <stretch>'),
    shaped('<by> within <in> the <stretchOne>'),
    shaped('<on> in <in> [about] <stretch> [time]'),
    shaped('<on> <in> <stretch> from (now|today)'),
    shaped('<on> <in> <tomorrow> tomorrow'),
    shaped('<by> (by|before) <in> <tomorrow> tomorrow'),
    shaped(`${SAID} <isWeekday> [(this|this coming|the coming)] <weekday>`),
    shaped(`${SAID} <isWeekday> next <next> <weekday>`),
    shaped(`(<by> (by|before)|<on> on) <isDayOfMonth> the <place>`),
    shaped(`${SAID} <isDate> <month> [the] <day>`),
    shaped(`${SAID} <isDate> the <place> of <month>`),
    shaped('<on> <inWords> [[(at|on)] the] <when> <season>'),
    shaped('<on> <inWords> (asap|right away) <soon>'),
    shaped(
      '<on> <inWords> (when there is time|when (you|they|we|i|somebody) (get|gets|got) (a chance|time)) <sometime>',
    ),
    written(shaped('<on> <inWords> when (i|we) (come|get) back <onReturn>')),
  ),
);

/** How often: "every three months", "once a week", "quarterly". */
export const EVERY = named(
  'every',
  choice(
    parseShape('every <one> <period>', { period: PERIOD, one: tag({ amount: 1 }) }),
    parseShape('every (other|second) <two> <period>', { period: PERIOD, two: tag({ amount: 2 }) }),
    parseShape('every <number> <period>', { period: PERIOD, number: NUMBER }),
    parseShape('(once (a|every)|each) <one> <period>', { period: PERIOD, one: tag({ amount: 1 }) }),
    parseShape('monthly <is>', { is: tag({ amount: 1, unit: 'month' }) }),
    parseShape('weekly <is>', { is: tag({ amount: 1, unit: 'week' }) }),
    parseShape('(quarterly|every quarter) <is>', { is: tag({ amount: 3, unit: 'month' }) }),
    parseShape('twice a year <is>', { is: tag({ amount: 6, unit: 'month' }) }),
    parseShape('(yearly|annually) <is>', { is: tag({ amount: 1, unit: 'year' }) }),
  ),
);

const periodId = idIn(PERIODS);
const weekdayId = idIn(WEEKDAYS);
const monthId = idIn(MONTHS);

/** Two years ahead nobody promises a day. */
const FURTHEST = 730;

/** `null`: no stretch of time that anybody means, such as half a week or a thousand days. */
export function stretchIn(tags: Tags): TimeSpan | null {
  const amount = numberIn(tags['amount']) ?? numberIn(tags['number']);
  const unit = periodId(tags['unit']);
  if (amount === null || unit === null) return null;
  return Number.isInteger(amount) && amount > 0 && amount <= FURTHEST ? { amount, unit } : null;
}

export function dueIn(tags: Tags): Due | null {
  const said = tags['said'] === 'by' ? 'by' : 'on';
  const day = numberIn(tags['day']) ?? numberIn(tags['number']);
  const isDay = day !== null && Number.isInteger(day) && day >= 1 && day <= 31;
  switch (tags['kind']) {
    case 'in': {
      const stretch = stretchIn(tags);
      return stretch && { said, kind: 'in', ...stretch };
    }
    case 'weekday': {
      const weekday = weekdayId(tags['weekday']);
      const next = tags['next'] === true ? ({ next: true } as const) : {};
      return weekday && { said, kind: 'weekday', weekday, ...next };
    }
    case 'dayOfMonth':
      return isDay ? { said, kind: 'dayOfMonth', day } : null;
    case 'date': {
      const month = monthId(tags['month']);
      return month !== null && isDay ? { said, kind: 'date', month, day } : null;
    }
    case 'words': {
      const { when, season } = tags;
      const isSaid = typeof when === 'string' && typeof season === 'string';
      return isSaid ? { said, kind: 'words', words: `${when} ${season}` } : null;
    }
    default:
      return null;
  }
}
