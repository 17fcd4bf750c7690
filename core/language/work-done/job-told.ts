import { atClock } from '../talk/errands.ts';
import { clauseBefore, startsClause } from '../words/clause-start.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import { holdsNumber } from '../words/own-reading.ts';
import { partsAndHours } from '../facts/time-told.ts';
import { complaint, remark } from '../talk/people-remarks.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { spanIn, tagsIn } from '../slots.ts';
import { nothing } from '../plain-means.ts';

const clauseOf = (...[tags, frame]: Parameters<Means>): string => {
  const span = spanIn(tags['clause']);
  return span === null ? '' : frame.wordsOf(span);
};

/** The gas that went in is weighed and no material, and microns are none. */
const WEIGHED =
  /\b(?:pounds?|ounces?|oz|lbs?|grams?|kilos?|microns?|psi|degrees)\b(?! of (?:dry )?(?:nitrogen|solder|rod|salt|cleaner))|\b(?:refrigerant|freon)\b/i;

/** "Used two sticks of silver solder": what the office bills. */
const material: Means = (tags, frame) => {
  const used = clauseOf(tags, frame);
  return startsClause(frame) && !WEIGHED.test(used) && !/^to\b/i.test(used)
    ? remark(tags, frame)
    : null;
};

/** "Parts were a drier and five ounces of four forty eight": gas that was weighed in before is listed once more, and no more of it. */
const partsBilled: Means = (tags, frame) => {
  const isWeighedBefore = frame.context.movedLast !== null;
  const isAside = !startsClause(frame) || (!isWeighedBefore && WEIGHED.test(clauseOf(tags, frame)));
  return isAside ? null : remark(tags, frame);
};

/** How long somebody drove or waited for a part is nobody's business but his. */
const ON_THE_WAY =
  /\b(?:traffic|to get (?:here|there|out|over|across|through|past|home|a hold)|driv\w+|here from|the phone|lunch|hold with|on hold|parking|park|supply house|highway|find (?:this place|the place|you|parking|a spot)|get in|get on the roof)\b/i;
const workedSoLong: Means = (tags, frame) =>
  ON_THE_WAY.test(frame.wordsOf(frame.span))
    ? {}
    : / (?:to|on|into)$/i.test(frame.wordsOf(frame.span))
      ? null
      : remark(tags, frame);

const workedFrom: Means = (tags, frame) =>
  atClock(tags, frame) !== null && atClock(tagsIn(tags['end']) ?? {}, frame) !== null
    ? remark(tags, frame)
    : null;

/** A time of day; "got in at one ninety" is none. */
const arrived: Means = (tags, frame) =>
  tags['number'] === undefined || atClock(tags, frame) !== null ? remark(tags, frame) : null;

/** "Waiting on it to cool" waits for the machine, not for the supply house. */
const awaited: Means = (tags, frame) =>
  /\b(?:to|is|come|cool|settle|drop|warm)\b/i.test(clauseOf(tags, frame))
    ? null
    : remark(tags, frame);

/** What one would see is no reading; what one would want done is told by others. */
const hoped: Means = (tags, frame) => {
  const told = clauseOf(tags, frame);
  const isHope = HOPED.test(told) && !GOES_ON.test(told);
  return startsClause(frame) && isHope && holdsNumber(told) ? {} : null;
};
const HOPED = new RegExp(
  `^(?:\\d|(?:about|around|at least|at most|maybe|somewhere|between|roughly|like|to (?:see|have|be|run|get)|it|a|an|the|your|my|that|${[...ONES, ...TEENS, ...TENS].join('|')})\\b)`,
  'i',
);
/** Behind these comes what is: "I'd like to see ten, I've got four". */
const GOES_ON = /\b(?:it's|it is|i've|i have|i got|i'm|now|but|we've|we have|currently|instead)\b/i;

const I = '[(i|we|just|also|i also|and|then|ended up|i have|we have|had)]';
const IT =
  '(it|she|this thing|this one|<the> (unit|box|machine|system|cooler|freezer|case)|<the> <equipment>|everything)';
const SOME =
  '(<number>|a|an|some|half|about|most of|another|the (last|whole|rest)|my (last|whole)|all (my|the)|several|a few|a couple)';

const ITEM =
  '(<part>|[new] (control|controls|boards|[(evaporator|evap|condenser|cond)] fan motors|motors|valves))';
/** Ours: more of one part are volts or amps at it. */
const COUNT =
  '(a|an|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|another|a couple [of])';
const A_PART = `[(plus|and|used)] ${COUNT} ${ITEM}`;

/** "An hour and a half labor, one start cap" */
const isBehindTime = (frame: Frame): boolean =>
  frame.endsAtPause && /\b(?:hours?|labor|time|drive|travel)$/i.test(clauseBefore(frame));

/** Of the job and its bill: what was used, how long it took, what is waited for, how long it was down. */
export const JOB_RULES: readonly Rule[] = [
  rule(`${A_PART} [and] ${COUNT} ${ITEM} [[and] ${COUNT} ${ITEM}]`, remark, {
    unheard: true,
    alone: true,
    examples: ['one fan motor one gasket one control'],
  }),
  rule(
    `${A_PART} [[and] ${COUNT} ${ITEM}] [<pause>] [and] <duration> [(of labor|labor|on site|total)]`,
    partsAndHours,
    {
      unheard: true,
      alone: true,
      examples: ['one gasket and an hour and a half'],
    },
  ),
  rule(`${A_PART} [[and] ${COUNT} ${ITEM}]`, remark, {
    unheard: true,
    only: isBehindTime,
    examples: [],
  }),
  rule(
    `${I} (used|went through|burned through|burned|used up|consumed) [up] ${SOME} <clause>`,
    material,
    {
      examples: ['used two sticks of silver solder and a filter dryer'],
    },
  ),
  rule('[(the|my)] (parts|materials|material) (were|was|are|<pause>) <rest>', partsBilled, {
    unheard: true,
    alone: true,
    examples: ['parts were one dryer and a foot of quarter inch copper'],
  }),
  rule(
    '[(the|my)] (parts|materials|material) [(i|we)] used [(is|are|was|were)] <clause>',
    material,
    {
      examples: ['parts used one start cap and one relay'],
    },
  ),
  rule(
    '[(i|we|it|and|just|ended up)] (put in|added|ran|installed|took|needed|used up|cut in|brazed in) [(about|another)] (<number>|a|an) (feet|foot|ft|inches|pieces|piece|sticks|stick|lengths|length|cans|can|bottles|bottle|bags|bag|jugs|jug|rolls|roll|tubes|tube|<size> (can|bottle|bag|jug|roll|stick|piece|tube)) of <clause>',
    material,
    { examples: ['put in six feet of copper and four elbows'] },
  ),
  rule(
    '[(i|we)] (arrived|got here|got there|pulled up|pulled in|got on site|showed up|rolled in|clocked in|got in) [(on site|here|there|today)] [(at|around|about|right at)] (<number>|<clock>) [(am|pm|a m|p m|oclock|this morning|this afternoon|today)]',
    arrived,
    { examples: ['rolled in today at eight forty five'] },
  ),
  rule(
    `[(it|she|this|the (unit|box|thing)|<the> <equipment>)] [(has|had|is)] been (down|out|off|warm|dead|like (this|that)|acting up|running warm|leaking|iced up) [(again|ever)] (since|from) <clause>`,
    complaint,
    { examples: ['been down since around noon on sunday'] },
  ),
  rule(
    '[(i|we)] ((was|were|have been|been|am) (here|there|on site|on it|out here) from|(started|began|got started) [(it|on it|here|work)] (at|around)|here at) [(about|around)] <number> [(and|then)] (to|till|until|through|[(i|we)] (finished|stopped|left|was done|were done|got done|out) [(up|it)] (at|by|around)) [(about|around)] <number:end>',
    workedFrom,
    { examples: ['i was here from nine to eleven'] },
  ),
  rule(
    '(charge|bill|invoice) (them|him|her|the (customer|store|owner)) [for] <number> (bottle|bottles|tank|can|cans|bag|bags|stick|sticks|pound|pounds|foot|feet|roll|trip|trips) [<clause>]',
    remark,
    { examples: ['charge them for one bottle of nitrogen'] },
  ),
  rule(
    `[(i|we|it)] [(just|already|have)] (spent|got|took (me|us)|has taken (me|us)|been at it for|put in) [(about|like|over|almost|a good)] <duration> [(just|more)] (on|to|finding|chasing|looking|getting|trying|cleaning|digging|thawing|waiting|troubleshooting|working|tracing|brazing|running|there|here|today|in|into) [<clause>]`,
    workedSoLong,
    { examples: ['spent an hour and a half on the braze repair'] },
  ),
  rule(
    '(quote|price) [(them|him|her|it)] [(on|for|out)] (a|an|the) [new] (condensing unit|box|case|machine|unit|reach in|walk in|door|evaporator section|system|contract|pm|maintenance agreement) [<clause>] [<pause> (this|the|it|that|old) <clause:more>]',
    remark,
    { examples: ['quote them a new condensing unit'] },
  ),
  rule('[(i am|we are|they are)] [(still|just)] waiting (on|for) <clause>', awaited, {
    examples: ['still waiting on the thermostat'],
  }),
  rule(
    '[(i|we)] [(still|just)] ((did not|could not|never|have not|can not) [(get|got|gotten|getting)] (to|around to|the time for)|ran out of time (on|for|to)|(did not|could not|have not) (finish|finished)) <clause>',
    (tags, frame) =>
      /\b(?:work|you|see|say)\b/i.test(clauseOf(tags, frame)) ? null : remark(tags, frame),
    { examples: ['did not get to the drain line'] },
  ),
  rule(
    `${IT} (was|has been|is been|had been) [(off|down|out|out of (service|order)|dead|warm|sitting|shut (off|down)|without power)] (for|going on|about|over) [(about|at least|over|almost|like|close to|maybe)] (<duration>|<number> (days|day|weeks|week|months|month|nights)) [(now|already|before i got here|straight|when i got here|overnight)]`,
    complaint,
    { examples: ['it was down for six hours'] },
  ),
  rule(
    '((called|sent) [(out|in|here|over)]|dispatched|got called|got sent) [(out|in|here)] (for|on|about|because|to look at|to see about) (a|an|the|their|one|it is) <clause> [<pause> [and] (supposed|should|set|it is supposed|it should|was|it was|normally) <clause:more>]',
    complaint,
    { examples: ['called out for a walk in freezer at twenty eight degrees'] },
  ),
  rule(
    '[(the|this|that|a|my|whole)] <part> (runs|costs|cost|is|are|was|goes for|lists for|run|is running|ran) [(you|me|them|us)] [(about|like|around|only|over)] <number> (dollars|dollar|bucks|cents|grand|a piece|apiece|each|plus tax|plus labor|list|retail) [<clause>]',
    nothing,
    { examples: ['compressor runs you eight hundred bucks'] },
  ),
  rule(
    '(in a perfect world|in theory|on paper|by the book|in my experience|as a rule|rule of thumb|on a (good|normal|typical|hot|cold|perfect) day|on a (day|box|unit|system) like (this|that)|under normal conditions|if everything is (right|working)) <clause>',
    nothing,
    { examples: ['in a perfect world you would see ten degrees of subcooling'] },
  ),
  rule(
    '[(and|but|so)] ((you|i|we) [(really|usually|normally)] (would|might|could) [(really|usually|normally|always)] (want|like|expect|see|hope for|look for|be looking (for|at))|you [(really|usually|normally|generally|always|typically|never)] (want|look for|expect|like to see|are looking for|shoot for)) <clause>',
    hoped,
    { examples: ['you want about ten degrees of superheat'] },
  ),
  rule(
    '(won|lost|beat [(them|us)]|tied|ahead|winning|losing|up|down) <number> (to|nothing|zip) [<number:other>]',
    (_tags, frame) =>
      /^(?:won|lost|beat|tied|ahead|winning|losing)/i.test(frame.wordsOf(frame.span)) ? {} : null,
    { examples: ['lost nine to four'] },
  ),
  rule('(on the radio|you are listening to|tuned to|the station is) <clause>', nothing, {
    examples: ['you are listening to ninety three point seven'],
  }),
];
