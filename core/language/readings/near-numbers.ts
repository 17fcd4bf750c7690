import { ONES } from '../../terms/number-words.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { amountIn } from '../numbers/measure.ts';
import { reading } from './reading-means.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, quantityId, tagsIn } from '../slots.ts';
import { remark } from '../plain-means.ts';

/** Further apart, two figures are two readings. */
const NEAR = 5;
/** "Right in there" says itself that they are one. */
const IN_THERE = 15;

/** "About seventy eight, seventy nine": between the two. */
const within =
  (most: number): Means =>
  (tags, frame) => {
    const quantity = quantityId(tags['quantity']);
    const low = numberIn(tagsIn(tags['low'])?.['number']);
    const high = numberIn(tagsIn(tags['high'])?.['number']);
    if (quantity === null || low === null || high === null) return null;
    if (high <= low || high - low > most) return null;
    const { unit } = amountIn(tags);
    const amount = { value: null, low, high, unit, hedged: false, overlimit: false };
    const found = reading(quantity, amount, frame);
    return found === null ? null : { readings: [found] };
  };

/** "Two ten two fifteen right in there": no pause between them, so they must lie near each other. */
const inThere: Means = (tags, frame) =>
  isElectrical(quantityId(tags['quantity']) ?? 'current') ? null : within(IN_THERE)(tags, frame);

/** "Suction's around two three pounds": nobody hedges a figure so, which is no twenty three. */
const nextTo: Means = (tags, frame) => {
  const [low, high] = ['low', 'high'].map((slot) => numberIn(tagsIn(tags[slot])?.['number']));
  const isOne = quantityId(tags['quantity']) === 'headPressure';
  return low != null && high === low + 1 && high < 10 && !isOne ? within(1)(tags, frame) : null;
};

/** "Head one seventy... one seventy six": broken off, and begun again to say it whole. */
const begunAgain: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const [first = '', ...more] = frame.wordsOf(frame.span).split(/\s*(?:\.{2,}|…|—|–|,)\s*/);
  const again = more.join(' ').replace(/^(?:it's|it is|is|at|no|uh|um) /i, '');
  const begun = again.split(/\s+/).slice(0, -1).join(' ');
  if (quantity === null || isElectrical(quantity) || begun === '') return null;
  if (!first.toLowerCase().endsWith(` ${begun.toLowerCase()}`)) return null;
  // "Head one ninety, ninety six liquid" tells two.
  const started = numberIn(tagsIn(tags['begun'])?.['number']);
  const { value } = amountIn(tags);
  if (started !== null && value !== null && value < started) return null;
  const found = reading(quantity, amountIn(tags), frame);
  return found === null ? null : { readings: [found] };
};

/** What is hot is the line, and the figure its temperature. */
const hotLine: Means = (tags, frame) => {
  const found = reading('dischargeLineTemp', amountIn(tags), frame);
  return found === null ? null : { readings: [found], names: 'dischargeLine' };
};

const boxByProbe: Means = (tags, frame) => {
  const found = reading('boxTemp', amountIn(tags), frame);
  return found === null || amountIn(tags).unit === 'V'
    ? null
    : { readings: [found], remarks: [frame.wordsOf(frame.span)] };
};

/** "Box two on the left reads thirty eight": which of several, and what is read of it. */
const ofTheBox: Means = (tags, frame) => {
  const found = reading('boxTemp', amountIn(tags), frame);
  return found === null ? null : { readings: [found] };
};

const COLD: readonly (QuantityId | null)[] = ['boxTemp', 'setpointTemp', 'productTemp'];

/** "Seven above": of a box that is spoken of, from zero. */
const fromZero: Means = (tags, frame) => {
  const number = numberIn(tags['number']);
  const { lastQuantity, equipment } = frame.context;
  if (number === null || !(COLD.includes(lastQuantity) || equipment === 'walkInFreezer'))
    return null;
  const isBelow = /\bbelow\b/i.test(frame.wordsOf(frame.span));
  const amount = { value: isBelow ? -number : number, low: null, high: null, unit: null };
  const found = reading('boxTemp', { ...amount, hedged: false, overlimit: false }, frame);
  return found === null ? null : { readings: [found] };
};

/** "My thermometer's got nine": of a box that is spoken of. */
const speaksOfBox = ({ context: { lastQuantity } }: Frame): boolean =>
  lastQuantity === 'boxTemp' || lastQuantity === 'setpointTemp';

/** Ours: a control's dial goes to seven or nine, and no thermometer's is told by "dial" alone below that. */
const MOST_ON_DIAL = 10;
const ON_DIAL = /\bdial\b(?! thermometer)/i;

/** "Case thermometer says forty nine": the box's own, kept as such, and the box itself where nothing better was read of it. */
const boxByItsOwn: Means = (tags, frame) => {
  const found = reading('boxTemp', amountIn(tags), frame);
  const words = frame.wordsOf(frame.span);
  if (found === null || (ON_DIAL.test(words) && (found.value ?? 0) < MOST_ON_DIAL)) return null;
  const remarks = [words];
  const isRead = frame.context.told.some(
    (each) => each?.told.of === 'reading' && each.told.reading.quantity === 'boxTemp',
  );
  const otherwise = isRead ? { remarks } : { readings: [found], remarks };
  // "Box is at fifty eight on my thermometer, his dial says fifty five"
  const means = (quantity: QuantityId): Meaning =>
    quantity === 'boxTemp' ? { remarks } : otherwise;
  return { ofThat: { means, otherwise } };
};

const HEDGE = '(about|around|like|maybe|roughly|somewhere around|right around|call it)';
/** No premises have more boxes that go by a number alone. */
const WHICH = `[number] (${ONES.join('|')}|ten|10)`;
const WHERE =
  '(on|in|at|by|near) the [(far|back|front)] (left|right|middle|end|top|bottom|back|front|corner|kitchen|bar|dock|line|door)';
const OWN_THERMOMETER =
  '(wall|door|dial|box|built in|unit|~~(their|house|cooler|freezer|case|cabinet)) thermometer';
const DISPLAY = `(display|readout|controller|screen|stat|thermostat|dial|${OWN_THERMOMETER}|thermometer on the (door|wall|front|box|case|unit)) [(on|in) the (door|front|wall|box|case|unit|panel)]`;
const PROBE =
  '[own] (probe|thermometer|stick thermometer|pocket thermometer|thermocouple|gun|temp gun|infrared|meter|clamp|stem)';
const SHOWS =
  '(is|says|is showing|shows|reads|is reading|is at|showing|reading|has it at|is saying|got|puts it at|gives me)';

/** Values told by two figures beside each other, or by two instruments. */
export const NEAR_NUMBER_RULES: readonly Rule[] = [
  rule('[(it is|she is|box is)] [(at|down to|now|up to)] <number> (above|below) [zero]', fromZero),
  rule(
    '[the] discharge [line] <link> <amount> [<pause>] [(and|it is)] [(that is|which is|she is)] [(way|pretty|really|plenty|kind of|a little)] (too hot|hot|burning|hotter) [<clause>]',
    hotLine,
    { examples: ['discharge is two forty too hot to hold'] },
  ),
  rule(
    `[the] <quantity> [(in|out|up|down|over) (here|there)] <link> ${HEDGE} <number:low> <pause> [maybe] <number:high> [<unit>] [(in|out|up) (here|there)]`,
    within(NEAR),
    { examples: [] },
  ),
  rule(
    `[the] <quantity> [(in|out|up|down|over) (here|there)] <link> [somewhere] ${HEDGE} <short:low> <short:high> [<unit>]`,
    nextTo,
    { unheard: true, examples: ['suction is around two three pounds'] },
  ),
  rule(
    `[the] <quantity> [(in|out|up|down|over) (here|there)] <link> [${HEDGE}] <short:low> [(or|to)] <short:high> (right in there|somewhere in there|in there somewhere|in that (range|area|neighborhood))`,
    inThere,
    { examples: ['head two ten two fifteen right in there'] },
  ),
  rule(
    `[the] (box|cooler|freezer|case|walk in|reach in) ${WHICH} [${WHERE}] (is|is at|reads|is reading|shows|is showing|is running|is sitting at|at|is only at|is up to|is down to) <amount>`,
    ofTheBox,
    { examples: ['box two on the left reads thirty eight'] },
  ),
  rule(
    `[the] (box|cooler|freezer|case) ${WHICH} [${WHERE}] (is|was|looks|feels) [(really|pretty|too|still|running|a little)] (warm|cold|iced up|frozen|noisy|down|off|dead|dirty|good|fine|ok|leaking|soft)`,
    remark,
    { examples: ['case three in the middle is warm'] },
  ),
  rule(
    `((my|mine|the) [(own|stick|pocket)] (probe|thermometer)|mine) (says|has got|is got|got|has|reads|shows|is at|is reading|is showing) <amount>`,
    ofTheBox,
    { unheard: true, only: speaksOfBox, examples: [] },
  ),
  rule(
    `[(the|their|that|his|her)] ((${OWN_THERMOMETER}|dial|(thermometer|display|readout|dial|one) (on|in) the (door|wall|front|box|case|unit|panel)|door (display|readout)) [(on|in) the (door|front|wall|box|case|unit|panel)] [is] [still] (${SHOWS}|saying)|door (says|shows|reads|is (showing|saying))) <amount> [[<pause>] (but|and) it is (coming|going|still coming) (down|up)]`,
    boxByItsOwn,
    { unheard: true, examples: ['case thermometer says forty nine'] },
  ),
  rule(
    `[(it|she|he|they|that|(the|this|that|their) (box|cooler|freezer|case|one))] [(is|has|have|shows|says|reads|are)] [(got [it] [at]|at|still|showing|reading|saying)] <amount> (on|by) ((the|their|that|its|his|her) ([(thermometer|dial|stat|thermostat) on the] (wall|door)|display|dial|readout|front|screen)|the thermometer (on|in) the (front|box|case)|(the|their|that) ${OWN_THERMOMETER}) [(right now|now|in there|in here|there)]`,
    boxByItsOwn,
    {
      unheard: true,
      apart: true,
      // "It's got one twenty on the door heater"
      only: ({ endsAtPause }) => endsAtPause,
      examples: ['it says forty one on the display', 'she has got forty six on the wall'],
    },
  ),
  rule('[the] <quantity> <link> <number:begun> <pause> <amount>', begunAgain, { examples: [] }),
  rule(
    `(it is|box is|<the> box is|unit is|<the> unit is|it) [(reading|showing|saying|at|says|shows|reads)] <amount:shown> on [the] (${DISPLAY}|~~(door|wall|outside|front)) [<pause>] [(but|and)] (my|mine) ${PROBE} ${SHOWS} <amount>`,
    boxByProbe,
    { examples: ['it is reading forty four on the display but my probe is showing forty one'] },
  ),
  rule(
    `(it is|i have|i have got|got|box is) <amount> (on|by|with|off|according to) (my|mine|the) ${PROBE} [<pause>] [(but|and)] [(it is|only)] <amount:shown> (on|by|according to) ((theirs|their <clause>)|[the] ${DISPLAY})`,
    boxByProbe,
    { unheard: true, examples: ['it is forty one by my thermometer and thirty eight on theirs'] },
  ),
  rule(
    `[(my|the)] ${PROBE} ${SHOWS} <amount> [<pause>] [(but|and)] [the] ${DISPLAY} (says|is|reads|is reading|is showing|shows|is saying) <amount:shown>`,
    boxByProbe,
    { examples: ['my probe says thirty eight but the controller says forty four'] },
  ),
  rule(
    `[the] ${DISPLAY} (says|is|reads|is reading|is showing|shows|is saying) <amount:shown> [<pause>] [(but|and)] ((my|mine|the) ${PROBE}|~~mine) ${SHOWS} <amount>`,
    boxByProbe,
    { examples: ['display says forty four but my probe is showing forty one'] },
  ),
];
