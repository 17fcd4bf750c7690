import { signedIn, spanIn } from '../slots.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { isTimeOfDay } from '../words/time-of-day.ts';
import { amountIn } from '../numbers/measure.ts';
import { nothing, remark } from '../plain-means.ts';

const MINUTES_IN_HOUR = 60;

export const atClock: Means = (tags) => (isTimeOfDay(tags) ? {} : null);

/** What others ask for a part is talk; what we quoted the customer, the office must know. */
export const unlessQuotedByUs: Means = (tags, frame) =>
  BY_US.test(frame.wordsOf(frame.span)) ? remark(tags, frame) : {};
const BY_US = /^(?:(?:i|we) )?(?:just |only |had )?quoted (?:him|her|them|the customer)\b/i;

/** So many minutes, when nobody says of what. */
const inMinutes: Means = (tags) => {
  const number = signedIn(tags);
  return number !== null && number > 0 && number <= MINUTES_IN_HOUR ? {} : null;
};

/** "Lost twenty microns" is how far it moved, not where it stands. */
const howFarMicrons: Means = (tags) => {
  const { unit, value } = amountIn(tags);
  return value === null || unit !== 'micron' ? null : { unclaimed: [String(value)] };
};

/** "My last two wire nuts", unless a reading stands in the clause. */
const unlessMetered: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  const words = span === null ? '' : frame.wordsOf(span);
  return /\b(?:psi|degrees|volts|amps|ohms|microns|pounds|ounces)\b/i.test(words) ? null : {};
};

const WHO = '(i|we|they|you|he|she|somebody|the (store|shop|kitchen|restaurant|bar|office|place))';
const YEARS = '(twenty|nineteen|two thousand [and])';

/** Errands, hours and years: what a clock or a calendar shows, said on a call and never read off an instrument. */
const COUNTED = '(a|an|one|two|three|four|five|six|a couple [of]|some|another)';

export const ERRAND_RULES: readonly Rule[] = [
  rule(
    '(i will be|i am|be|we will be|he will be|see (you|ya|them|him|her)|meet (you|me)) [(back|there|here|over|done|out|up|down|off|right back)] in [about] <number> [(minutes|minute|hours|hour|days|weeks)]',
    inMinutes,
    { examples: ['i will be back in ten'] },
  ),
  rule(
    '(i will be|we will be|i should be|we should be|i am|be) (out of here|out of your hair|done here|gone|on my way|heading out|wrapped up) (at|by|around|before|till) <number>',
    atClock,
    { unheard: true, examples: ['i will be out of here by four thirty'] },
  ),
  rule('(back|there) in [about] <number>', inMinutes, { alone: true, examples: ['back in ten'] }),
  rule('(give (me|us|him)|gimme) [(about|another)] <number>', inMinutes, {
    alone: true,
    examples: ['give me ten'],
  }),
  rule(
    `${WHO} [(am|is|are|will be|get|gets|got|do not get|got to|have to|need to|going to|want to|better|should|will)] (off|open|close|opens|closes|done|start|starts|leave|leaves|eat|open up|close up|knock off|quit) (at|by|around|till|until) <number>`,
    atClock,
    { examples: ['we open at eleven', 'i get off at four thirty'] },
  ),
  rule(
    '[been] (here|there|at it|at this|on this|on the clock|up|working|open|out here|in here) since <number>',
    atClock,
    { examples: ['been up since five'] },
  ),
  rule(
    '(wake|pick|call|text|meet|get) (me|us|him|her) [(up|back)] (at|by|around) <number>',
    atClock,
    {
      examples: ['wake me up at six'],
    },
  ),
  rule(
    `((put in|installed|built|made|bought|new|done|replaced|dated|remodeled|here|manufactured) [back] [(in|since|on)]|(manufacture|mfg|build|date) (date|code|year) [is]|date of manufacture [is]|made [(in|on)] [the] year) ${YEARS} <number>`,
    nothing,
    { examples: ['it was put in back in twenty twelve'] },
  ),
  rule(
    '(unit|number|stop|call|item) <number> on (the|my|this) (ticket|list|sheet|schedule|work order)',
    nothing,
    {
      examples: ['unit fourteen on the ticket'],
    },
  ),
  rule(
    '(turned|turns|turning) <number> (last|next|this|yesterday|today|tomorrow) [(week|month|year|monday|friday|weekend)]',
    nothing,
    { examples: ['she turned thirty last week'] },
  ),
  rule('my (last|first|only|next) <number> <clause>', unlessMetered, {
    examples: ['i am down to my last two wire nuts'],
  }),
  rule(
    '[(i|we)] [(just|will|still)] (need|want|am looking for|are looking for|looking for|got to get) [to get] [(a|the|your)] (part number|model number|serial number|price|prices|pricing|availability|cross|cross reference|eta) [(and|or) (price|availability)] (for|on) <clause>',
    nothing,
    { examples: ['i need a part number for a fan motor'] },
  ),
  rule(
    '[(i|we|he|she|they|it|<who>|the (supply house|office|shop))] [(just|only|had|got)] (quoted|bid|priced) [(me|us|them|him|her|it|you)] [(out|at)] [(about|like)] <number> [(dollars|bucks)] (on|for) <clause>',
    unlessQuotedByUs,
    { examples: ['he quoted me two ninety on the motor and ninety on the cap'] },
  ),
  rule(
    '[(i|we|they|he)] (have|has|got|have got|there is|there might be|might have|should have) (a|an|another|some|the) [(spare|new|extra|used|old)] [<number> (microfarad|amp|volt|inch|pole|horse|horsepower|ton|watt)] <part> (in|on|at) (the|my|his) (truck|van|shop|drawer|bag|warehouse|supply house)',
    nothing,
    { examples: ['i have got a five microfarad cap in the truck'] },
  ),
  rule(
    `[(i|we)] (have|have got|got|found|keep|carry|brought) (${COUNTED} [(spare|new|extra|of those|of these|of them)]|[(a|an|another)] <size>) [<part>] (in|on) (the|my) (truck|van) [(part|model|catalog|stock) [number] <clause>]`,
    remark,
    { unheard: true, examples: ['i have two heaters on the truck'] },
  ),
  rule('<number> for (one|two|the price of one)', nothing, { examples: ['it is two for one'] }),
  rule(
    '(he|she|they|somebody|someone) had it [set] (at|to|on) <amount> (last (year|summer|winter|week|month|time)|before|the other day)',
    nothing,
    { examples: ['they had it set at thirty last year'] },
  ),
  rule(
    '(lost|gained|picked up|dropped) [(about|only|maybe)] <amount> [in <duration:after>]',
    howFarMicrons,
    {
      examples: ['lost twenty microns in five minutes'],
    },
  ),
];
