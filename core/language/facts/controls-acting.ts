import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { partId } from '../slots.ts';
import { isNominalVoltage } from '../numbers/nominal-voltages.ts';
import { amountIn } from '../numbers/measure.ts';
import { remark } from '../plain-means.ts';
import { leftToAsk } from '../readings/reading-means.ts';
import { actsOutAndIn, inAndOut, isCycled, one, settingByKind } from './controls.ts';

const ofLowControl: Means = (tags, frame) =>
  inAndOut({ ...tags, part: 'lowPressureSwitch' }, frame);

/** Settings of a low pressure control that was turned, and that it was. */
const turnedTo: Means = (tags, frame) => {
  const settings = ofLowControl(tags, frame);
  const words = frame.wordsOf(frame.span);
  return settings && { ...settings, work: [{ did: 'adjust', part: 'lowPressureSwitch', words }] };
};

/** "Fan cycling switch is one eighty off, two forty on" */
const fanPoints: Means = (tags, frame) =>
  isCycled(partId(tags['part'])) ? actsOutAndIn(tags, frame) : null;

/** "Well, it dropped out at eight and came back at thirty six": what the control that was spoken of really does. */
const actedAt: Means = (tags, frame) => {
  const settings = ofLowControl(tags, frame);
  return settings && { ...settings, remarks: [frame.wordsOf(frame.span)] };
};

/** A control's meter shows volts as well: what is a supply is asked about, unless it is what it is set at. */
const highStandsAt: Means = (tags, frame) => {
  const { value, unit } = amountIn(tags);
  const isSet = /\b(?:set|cut(?: |-)?out)\b/i.test(frame.wordsOf(frame.span));
  const mayBeVolts = !isSet && unit === null && value !== null && isNominalVoltage(value);
  return mayBeVolts ? leftToAsk(tags) : settingByKind(tags, 'highPressureSwitch', frame);
};

/** "Suction drops to eighteen before it cuts out." "Comes back on at forty five.": where the low control lets in. */
export const letsInAgain: Means = (tags, frame) => {
  const { lastPart, lastQuantity } = frame.context;
  const isLow = lastPart === 'lowPressureSwitch' || lastPart === 'compressor';
  return isLow && lastQuantity === 'suctionPressure' ? one('lowCutinPressure')(tags, frame) : null;
};

const isLowLast = ({ context: { lastPart, lastQuantity } }: Frame): boolean =>
  lastPart === 'lowPressureSwitch' ||
  lastQuantity === 'lowCutinPressure' ||
  lastQuantity === 'lowCutoutPressure';

/** Behind a cut-out that a pump-down ended in, too. */
const isPumpedDown = (frame: Frame): boolean =>
  isLowLast(frame) || frame.context.lastPart === 'liquidLineSolenoid';

const LOW = '(low pressure (switch|control)|low side|low pressure|low|suction (switch|control))';
const BACK = '[~~(back|up|down|right back|back up|back down)]';
const SET = '(set|adjusted|reset|changed|~~(put|turned|moved|dialed|cranked|brought))';
const OUT_AND_IN =
  '(<amount:in> in [~~<pause>] [and] [(at|set at)] <amount:out> out|<amount:out> out [~~<pause>] [and] [(at|set at)] <amount:in> in)';
const OFF_AND_ON =
  '(<amount:out> off [<pause>] [and] [back] [at] <amount:in> on|<amount:in> on [<pause>] [and] [at] <amount:out> off)';
const OPENED =
  '[(actually|really)] (dropped out|cut out|kicked out|opened [up]|went (off|out)|shut (off|down)|broke|let go|kicked off)';
const CLOSED =
  '[it] [(came|cut|kicked|closed|made|went|picked|is)] (back [(in|on|up)]|closed|made|in) [(again|back)]';

/** Where controls let in and cut out, with both pressures told by where they lie. */
export const CONTROL_ACTING_RULES: readonly Rule[] = [
  rule(
    '[the] (high pressure control|head pressure control|high side control|high pressure cut out|high control) (is|was) [(sitting|left|still|set|factory set)] (at|up at|down at) <amount>',
    highStandsAt,
    { unheard: true, examples: ['high pressure control is at four hundred'] },
  ),
  rule(
    `[(i am|we are|i have|i|we)] (setting|set|putting|moving|moved|turning|turned|adjusting|adjusted|dropping|dropped|bringing|brought) (it|that|her|the (low control|low pressure control|low pressure switch|low pressure|control|switch)) [(to|at|for|down to|up to)] ([a] cut in [(of|at)] <amount:in> [<pause>] [and] [a] cut out [(of|at)] <amount:out>|[a] cut out [(of|at)] <amount:out> [<pause>] [and] [a] cut in [(of|at)] <amount:in>)`,
    turnedTo,
    { unheard: true, examples: ['i am setting it cut in thirty cut out ten'] },
  ),
  rule(
    '[(and|then|and then)] [it] (came|kicked|cut|went|started|fired|picked) [(right|back|right back|back on)] (on|up|in) at <amount>',
    remark,
    { unheard: true, only: isPumpedDown, examples: [] },
  ),
  rule(
    '[(and|then|and then|but)] [it] (kicks|kicked|starts|started|picks|picked) [right] back (on|in|up) [again] at <amount>',
    letsInAgain,
    { unheard: true, examples: [] },
  ),
  rule(`[(i|we)] ${SET} [the] ${LOW} ${BACK} (at|for|to) ${OUT_AND_IN}`, turnedTo, {
    examples: [
      'set the low pressure for five out twenty five in',
      'set the low pressure back to twenty out and forty in',
    ],
  }),
  rule(
    `[the] ${LOW} [(is|was)] [~~back] (set|cuts|~~(at|to)) [(at|for|to)] ${OUT_AND_IN}`,
    ofLowControl,
    { examples: ['low side is set at twenty in five out'] },
  ),
  rule(`<the> <part> (is|was) [set] [(to|at|for)] ${OFF_AND_ON}`, fanPoints, {
    unheard: true,
    examples: ['fan cycling switch was set at one eighty off two forty on'],
  }),
  rule(
    `[(and|but|so|well)] [(it|she|the (switch|control))] ${OPENED} at <amount:out> [<pause>] [(and|then|and then)] ${CLOSED} at <amount:in>`,
    actedAt,
    { unheard: true, only: isLowLast, examples: [] },
  ),
];
