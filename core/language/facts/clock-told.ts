import type { Tags } from '../../grammar/nodes.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { remark } from '../plain-means.ts';
import { numberIn, signedIn, tagsIn } from '../slots.ts';
import { startsClause, wordBehind } from '../words/clause-start.ts';
import { holdsNumber } from '../words/own-reading.ts';
import { WordSet } from '../words/word-set.ts';

const MINUTES_IN_HOUR = 60;
const HOURS = 12;
const PART_OF_HOUR: Readonly<Record<string, number>> = { quarter: 15, half: 30 };

/** "Nine", "nine thirty", "ten after eight", "quarter to nine", as a clock shows it; `null` where none can. */
function clockIn(tags: Tags): string | null {
  const hour = numberIn(tagsIn(tags['hour'])?.['number']);
  const said = hour ?? numberIn(tagsIn(tags['clock'])?.['number']);
  if (said === null || !Number.isInteger(said)) return null;
  const isBare = said < MINUTES_IN_HOUR;
  const [whole, past] = isBare ? [said, 0] : [Math.trunc(said / 100), said % 100];
  const minutes = hour === null ? past : minutesIn(tags);
  if (minutes === null || minutes >= MINUTES_IN_HOUR || whole < 1 || whole > HOURS) return null;
  if (hour !== null && !isBare) return null;
  const isBefore = tags['before'] === true;
  const at = isBefore ? (whole === 1 ? HOURS : whole - 1) : whole;
  const shown = isBefore ? MINUTES_IN_HOUR - minutes : minutes;
  return `${String(at)}:${String(shown).padStart(2, '0')}`;
}

function minutesIn(tags: Tags): number | null {
  const part = tags['part'];
  if (typeof part === 'string') return PART_OF_HOUR[part] ?? null;
  const minutes = signedIn(tagsIn(tags['minutes']) ?? {});
  return minutes === null || minutes < 1 || !Number.isInteger(minutes) ? null : minutes;
}

/** "We've been here since ten after eight" */
const since: Means = (tags, frame) => {
  const value = clockIn(tags);
  return value === null
    ? null
    : { facts: [{ fact: 'hereSince', value, words: frame.wordsOf(frame.span) }] };
};

/** "Leaving at ten fifteen": for the office. */
const left: Means = (tags, frame) => (clockIn(tags) === null ? null : remark(tags, frame));

/** "At twelve thirty it's down to thirty nine": when, and no number of what is told behind it. */
const when: Means = (tags, frame) => {
  const isMeant = startsClause(frame) && TOLD_OF.hasWord(wordBehind(frame));
  return isMeant && isSurely(tags, frame) ? left(tags, frame) : null;
};

/** "At one twenty it cuts out" is of a pressure as well: from ten o'clock on four figures are none. */
const isSurely = (tags: Tags, frame: Frame): boolean =>
  tags['hour'] !== undefined ||
  (numberIn(tagsIn(tags['clock'])?.['number']) ?? 0) >= LEAST_FOUR_FIGURES ||
  /\b(?:o'?\s?clock|[ap]\.?\s?m|this (?:morning|afternoon))\b/i.test(frame.wordsOf(frame.span));
const LEAST_FOUR_FIGURES = 1000;

const TOLD_OF = new WordSet(
  'it the i we she he they that this box product suction head everything compressor now had got temp unit cooler freezer',
);

/** "It's ten to eight"; but "it's five to eleven" may be a needle that moves, and is asked about. */
const timeIsIt: Means = (tags, frame) => {
  const minutes = minutesIn(tags);
  const hour = numberIn(tagsIn(tags['hour'])?.['number']);
  if (clockIn(tags) === null || minutes === null || hour === null) return null;
  const mayBeRange = / to /i.test(frame.wordsOf(frame.span)) && tags['part'] === undefined;
  if (!mayBeRange || minutes > hour) return {};
  return RANGED.has(frame.context.lastQuantity)
    ? null
    : { unclaimed: [String(minutes), String(hour)] };
};
const RANGED: ReadonlySet<QuantityId | null> = new Set<QuantityId | null>([
  'superheat',
  'subcooling',
]);

const ABOUT =
  '[(about|around|like|right at|just over|just under|almost|right around|just after|just before|a little (after|before)|at about|at around)]';
const DAY =
  '[(a m|p m|am|pm|this morning|this afternoon|in the morning|in the afternoon|tonight|or so|or thereabouts)]';

/** The ways to tell the time, each with what it does to the hour. */
const CLOCKS = [
  { said: '<number:clock> [o clock]', tags: {} },
  { said: '<number:minutes> [minutes] (after|past) <number:hour> [o clock]', tags: {} },
  { said: '[a] quarter (after|past) <number:hour>', tags: { part: 'quarter' } },
  { said: 'half past <number:hour>', tags: { part: 'half' } },
  {
    said: '<number:minutes> [minutes] (to|till|til|before|of) <number:hour> [o clock]',
    tags: { before: true },
  },
  {
    said: '[a] quarter (to|till|til|before|of) <number:hour>',
    tags: { before: true, part: 'quarter' },
  },
] as const;

const HERE = '(here|in|there|on site|to (the|this) (job|site|place)|on the job)';
const GOT_HERE = `(been here since|been on site since|(got|came|showed up|pulled up|rolled up|rolled in|pulled in|walked in|was|made it) ${HERE} [(at|by)]|(arrived|pulled up|rolled up|showed up|pulled in) [(here|on site)] [at])`;
const LEAVING =
  '(leaving|heading out|pulling out|rolling out|out of here|off site|on my way out|out the door|done|all done|wrapped up|wrapping up|packing up|finished|finished up|signing off|clocking out|back on the road)';
const LEFT =
  '(left [here]|left the (site|job|store)|headed out|pulled out|wrapped up|clocked out|finished up)';

const AT = '[(at|by|around|about|as of)]';
const AT_HOUR = '((at|by|around|about|as of) <number:clock> [o clock]|<number:clock> o clock)';

/** "Pins are set for six and six": when a clock defrosts, which nothing reads off a thermometer. */
const pinsSet: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return holdsNumber(words) || /\b(?:noon|midnight)\b/i.test(words)
    ? { remarks: [words], names: 'defrostTimer' }
    : null;
};

export const PIN_RULES: readonly Rule[] = [
  rule(
    '[(the|its|their|all the|clock)] (pins|trippers|tripper pins|trip pins) (are|is|were) [(set|pushed in|in|sitting|still|all)] [set] [(for|at|to)] <clause>',
    pinsSet,
    { unheard: true, only: startsClause, examples: ['pins are set for six and six'] },
  ),
  rule(
    '[(no|and|so)] (two|three|four|six|eight|one) [(times|defrosts)] a day [(at|is what it is set for)]',
    remark,
    { unheard: true, alone: true, examples: ['four times a day'] },
  ),
];

/** When they came, when they went, and at what hour something was read. */
export const CLOCK_RULES: readonly Rule[] = CLOCKS.flatMap(({ said, tags }, at) => [
  rule(`[(i have|we have|i|we)] ${GOT_HERE} ${ABOUT} ${said} ${DAY}`, since, {
    unheard: true,
    tags,
    apart: true,
    examples: at === 0 ? ['i have been here since nine'] : [],
  }),
  rule(
    `[(i am|we are|i have|we have)] ([(heading|headed)] ${LEAVING} [here]|${LEFT}) (at|about|around|by|at about|at around) ${said} ${DAY}`,
    left,
    { unheard: true, tags, apart: true, examples: at === 0 ? ['leaving at ten fifteen'] : [] },
  ),
  ...(at === 0
    ? []
    : [
        rule(`[(and|so|well)] it is [now] ${ABOUT} ${said} ${DAY} [(now|already)]`, timeIsIt, {
          unheard: true,
          tags,
          apart: true,
          examples: [],
        }),
      ]),
  rule(
    `[(i|we)] (started|began|finished|stopped|got done) (thawing|defrosting|steaming|melting|chipping|soaking|the thaw|the defrost|the manual defrost|recovering|brazing|pulling the vacuum|the vacuum) [(it|her|out|it out|the (coil|ice|evaporator|drain))] (at|around|about) ${said} ${DAY}`,
    left,
    { unheard: true, tags, examples: at === 0 ? ['started thawing at ten fifteen'] : [] },
  ),
  // "One o'clock it's thirty seven"; a figure alone is anything.
  rule(`[(and|so|then|now|but)] ${at === 0 ? AT_HOUR : `${AT} ${said}`} ${DAY} [<pause>]`, when, {
    unheard: true,
    tags,
    examples: [],
  }),
]);
