import type { Tags } from '../../grammar/nodes.ts';
import { QUANTITIES } from '../../terms/quantities.ts';
import { command } from '../commands/command.ts';
import { HOUR_AND, minutesIn } from '../numbers/durations.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { equipmentId, spanIn } from '../slots.ts';
import { wordBefore } from '../words/clause-start.ts';
import { remark } from '../plain-means.ts';

/** Driving is no time on the job; of one way alone nobody tells whether it is billed twice. */
const ON_THE_ROAD = /\b(?:drive|driving|travel|traveling|travelling|windshield|on the road)\b/i;
const OF_ONE_WAY = /\b(?:there|each way|both ways|one way)\b/i;
/** What is added to the hours on site is not all of them; labor adds up by itself. */
const ADDED = /^(?:add|plus)\b/i;

const MINUTES_IN_HOUR = 60;

/** "Three hours fifteen": the minutes, in words or figures. */
const MINUTES_BEHIND = HOUR_AND.flat().join('|');

/** Whole minutes. */
function heldIn(tags: Tags): number | null {
  const minutes = minutesIn(tags);
  return minutes === null || minutes < 1 ? null : Math.round(minutes);
}

/** "Two hours on site", "an hour and a half labor": for the office; what is not all of it is kept as it was said. */
export const timeTold: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const value = heldIn(tags);
  const fact = kindOf(words);
  if (BEHIND_HOUR.test(frame.wordsOf({ from: 0, to: frame.span.from })))
    return { remarks: [frame.wordsOf({ from: 0, to: frame.span.to })] };
  const isDistance = fact === 'travel' && /^(?:a|an|the)$/i.test(wordBefore(frame));
  const isPart =
    isDistance || OF_ONE_WAY.test(words) || (fact === 'timeOnSite' && ADDED.test(words));
  return value === null || isPart ? { remarks: [words] } : { facts: [{ fact, value, words }] };
};

/** "An hour forty and ten minutes labor": whether they are two nobody knows. */
const BEHIND_HOUR = new RegExp(String.raw`\bhours?(?: (?:${MINUTES_BEHIND})) and$`, 'i');

function kindOf(words: string): 'labor' | 'travel' | 'timeOnSite' {
  if (ON_THE_ROAD.test(words)) return 'travel';
  return BILLED.test(words) ? 'labor' : 'timeOnSite';
}
/** What is to be billed is labor, where nothing else is named. */
const BILLED =
  /\blabor\b|^(?:bill|charge|put me down|put down|log)\b(?!.*\bon (?:site|the job|this)\b)/i;

/** "Two hours on this": minutes on something are what is waited for. */
const hoursOnThis: Means = (tags, frame) =>
  /\bhours?\b/i.test(frame.wordsOf(frame.span)) ? timeTold(tags, frame) : null;

/** "An hour and a half on the walk-in": labor, where that is the unit; of another one it is kept as it was said. */
const hoursOnUnit: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const { equipment, workBegun } = frame.context;
  // "Hour on the ice machine"
  const value = tags['per'] === undefined ? MINUTES_IN_HOUR : heldIn(tags);
  if (value === null || !/\bhours?\b/i.test(words)) return null;
  return workBegun && equipmentId(tags['equipment']) === equipment
    ? { facts: [{ fact: 'labor', value, words }] }
    : { remarks: [words] };
};

/** "Two hours", and nothing else: once work has begun that is the labor, and it is said back as that. */
const bareHours: Means = (tags, frame) => {
  const { asked, workBegun } = frame.context;
  const words = frame.wordsOf(frame.span);
  const value = heldIn(tags);
  const isAsked = asked !== null && QUANTITIES[asked].dimension === 'duration';
  if (isAsked || value === null || !/\bhours?\b/i.test(words)) return null;
  return workBegun ? { facts: [{ fact: 'labor', value, words }] } : {};
};

/** "Two and a quarter hours, one fan motor, one switch": what was fitted stands behind the hours, word for word. */
const hoursAndParts: Means = (tags, frame) => {
  const value = heldIn(tags);
  const words = frame.wordsOf(frame.span);
  if (value === null || !/\bhours?\b/i.test(words) || breaksHour(tags, frame)) return null;
  const [, hours, parts = ''] = HOURS_THEN_PARTS.exec(words) ?? [];
  if (NO_PARTS.test(parts) || OF_AN_HOUR.test(parts) || /\blabor\b/i.test(words)) return null;
  return hours !== undefined && frame.context.workBegun
    ? { facts: [{ fact: 'labor', value, words: hours }], remarks: [parts] }
    : { remarks: [words] };
};

/** "An hour and three | quarters …": the part is of the hour, and begins no list of parts. */
function breaksHour(tags: Tags, frame: Frame): boolean {
  const span = spanIn(tags['clause']);
  return span !== null && /^(?:quarters?|half)\b/i.test(frame.wordsOf(span));
}

/** "One control and an hour and a half": the same the other way round. */
export const partsAndHours: Means = (tags, frame) => {
  const value = heldIn(tags);
  const words = frame.wordsOf(frame.span);
  const [, parts = '', hours = ''] = PARTS_THEN_HOURS.exec(words) ?? [];
  if (value === null || hours === '') return null;
  return frame.context.workBegun
    ? { facts: [{ fact: 'labor', value, words: hours }], remarks: [parts] }
    : { remarks: [words] };
};

const PARTS_THEN_HOURS =
  /^(.+?),? (?:and )?((?:an?|half an|[\w-]+(?: and an? (?:half|quarter))?) hours?\b.*)$/i;

const HOURS_THEN_PARTS = new RegExp(
  String.raw`^(.*?\bhours?(?: and (?:an? half|an? quarter|three quarters|\w+(?:[ -]\w+)? minutes)|(?: and)? (?:${MINUTES_BEHIND})\b)?(?: (?:even|flat|total))?),?\s+(?:(?:and|plus|with) )?(.+)$`,
  'i',
);
/** "An hour a day", "two hours and a half", "three hours and ten minutes" */
const NO_PARTS =
  /^an? (?:day|night|week|month|year|visit|trip|time|shift|piece)\b|^(?:an? (?:half|quarter)|three quarters|(?:(?:[\w-]+ )?[\w-]+ )?minutes)$/i;
/** "Three hours and a half and the compressor" */
const OF_AN_HOUR = /^(?:an? )?(?:half|quarter)\b|^three quarters\b/i;

/** "Five hours me and three for the helper": mine are the labor, and the words tell of the other man's. */
const withHelper: Means = (tags, frame) => {
  const value = heldIn(tags);
  const [, mine = '', his = ''] = MINE_THEN_HIS.exec(frame.wordsOf(frame.span)) ?? [];
  if (value === null || !/\bhours?\b/i.test(mine)) return null;
  return { facts: [{ fact: 'labor', value, words: mine }], remarks: [his] };
};
const MINE_THEN_HIS = /^(.*?\b(?:me|myself|mine)),? (?:and |plus )?(.+)$/i;
const HELPER =
  '[(for|on)] (the|my|a) (helper|apprentice|partner|other (guy|man|fella)|new guy|kid|lad|second man)';

/** "Make that three hours": of the last time that was told; the visit knows which that was. */
const amendTime: Means = (tags) => {
  const value = heldIn(tags);
  return value === null ? null : command({ do: 'amend', quantity: null, value, unit: 'min' });
};

/** Whether the road is within the hours nobody told: kept as it was said. */
const timeAndRoad = remark;

const isWorkBegun = ({ context }: Frame): boolean => context.workBegun;

const ABOUT = '[(about|around|like|right at|just over|just under|almost)]';
const IN_ALL = '[(total|in total|all told|all together|today)]';

/** What the office bills by, where the technician says it: the clock of the visit knows only when it was first spoken to. */
export const TIME_TOLD_RULES: readonly Rule[] = [
  rule(
    `[(it|this|that|this one|the (job|call)|[the] whole (thing|job))] took ${ABOUT} <duration> ${IN_ALL}`,
    hoursOnThis,
    { unheard: true, alone: true, only: isWorkBegun, examples: [] },
  ),
  rule(
    `[(it was|that was|call it|put me down for)] ${ABOUT} <duration> here ${IN_ALL}`,
    hoursOnThis,
    {
      unheard: true,
      apart: true,
      beforeTold: true,
      examples: ['three hours here'],
    },
  ),
  rule(
    `[(it|this|that|this one|the (job|call)|[the] whole (thing|job))] took (me|us) ${ABOUT} <duration> ${IN_ALL}`,
    timeTold,
    { unheard: true, alone: true, examples: ['took me three and a half hours'] },
  ),
  rule(
    `[(it was|call it|put me down for|put down|bill)] ${ABOUT} <duration> [for] (me|myself|mine) [<pause>] [(and|plus)] (<duration:other>|<number:other>) ${HELPER}`,
    withHelper,
    { unheard: true, apart: true, examples: ['five hours me and three for the helper'] },
  ),
  rule(
    `[(it was|call it|put me down for)] <duration> [(all told|in all|altogether|total)] <pause> [and] <duration:road> [of (it|that)] (driving|drive|drive time|travel|traveling|travelling|travel time|on the road)`,
    timeAndRoad,
    {
      unheard: true,
      alone: true,
      examples: [],
    },
  ),
  rule(
    `[(and|plus|add)] ${ABOUT} <duration> [of] (travel|traveling|travelling|travel time|drive|driving|drive time|windshield time|on the road) [(time|each way|both ways|one way|round trip|total|in all|there and back)]`,
    timeTold,
    {
      unheard: true,
      apart: true,
      examples: ['forty five minutes drive', 'an hour travel'],
    },
  ),
  rule(
    `[(my|the|add|plus|put down|put|log|bill|charge)] (travel|travel time|drive time|windshield time|drive) [(is|was|comes to)] ${ABOUT} <duration> [(each way|both ways|one way|round trip|total|in all)]`,
    timeTold,
    { unheard: true, apart: true, examples: ['travel is an hour'] },
  ),
  rule(
    `(bill|charge|put me down for|put down|log) [(them|him|her|the customer|me)] [for] ${ABOUT} <duration> ${IN_ALL}`,
    timeTold,
    { unheard: true, apart: true, examples: ['bill two and a half hours'] },
  ),
  rule(
    `[(it was|that was|i have got|spent|i spent)] ${ABOUT} <duration> on this ${IN_ALL}`,
    hoursOnThis,
    {
      unheard: true,
      apart: true,
      examples: ['two hours on this'],
    },
  ),
  rule(
    `[(it was|that was|i have got|spent|i spent|and|call it|put me down for|i had)] ${ABOUT} (<duration>|hour|hours) (on|for|with) (the|that|their) <equipment> ${IN_ALL}`,
    hoursOnUnit,
    {
      unheard: true,
      apart: true,
      examples: ['an hour and a half on the walk in cooler'],
    },
  ),
  rule(
    `[(my|add|plus|put down|put|log|bill|charge)] labor [(is|was|comes to)] ${ABOUT} <duration>`,
    timeTold,
    {
      unheard: true,
      examples: ['labor is two hours'],
    },
  ),
  rule(
    `[(no|sorry|wait|oops|actually)] (make (it|that)|change (it|that) to|that should be|it should be|should be|i meant|correction) <duration> [[of] labor]`,
    amendTime,
    { unheard: true, apart: true, examples: ['make that three hours'] },
  ),
];

const COUNTED = '(a|an|the|one|two|three|four|five|six|couple|a couple|some|no parts|parts)';
const MORE = ['e', 'd', 'c', 'b'].reduce(
  (behind, slot) => `[<pause> [and] <clause:${slot}> ${behind}]`,
  '',
);

/** Behind all that says of what they are. */
export const BARE_HOURS_RULES: readonly Rule[] = [
  // Without its article, as a man bills it.
  ...(
    [
      [75, 'a quarter'],
      [105, 'three quarters'],
    ] as const
  ).map(([number, part]) =>
    rule(`[(call it|about|and)] hour and ${part}`, bareHours, {
      unheard: true,
      alone: true,
      tags: { number, per: 'minutes' },
      examples: [],
    }),
  ),
  rule(
    `[(call it|about)] <duration> [(even|flat|total)] [<pause>] [(and|plus|with)] ${COUNTED} <clause> ${MORE}`,
    hoursAndParts,
    {
      unheard: true,
      alone: true,
      examples: [],
    },
  ),
  rule(
    `[(and|plus|add|call it|about|figure|say|i would say|make it|it was|that was)] <duration> ${IN_ALL} [for (that|this|it|the (job|call|whole thing))]`,
    bareHours,
    {
      unheard: true,
      alone: true,
      examples: ['two hours', 'three hours and forty five minutes'],
    },
  ),
];
