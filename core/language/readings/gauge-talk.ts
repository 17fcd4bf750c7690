import { clauseBefore, opensSentence, startsClause, wordsBehind } from '../words/clause-start.ts';
import type { Tags } from '../../grammar/nodes.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { minutesIn } from '../numbers/durations.ts';
import { type Amounted, amountIn, isVacuumUnit, unitFor } from '../numbers/measure.ts';
import { pumpedAndHeld } from './pumped-down.ts';
import { fixed, reading } from './reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { liesAbove } from '../numbers/plausible.ts';
import { numberIn, quantityId, tagsIn } from '../slots.ts';
import type { Reading } from '../utterance.ts';

const leftToAsk = (tags: Tags): Meaning => {
  const { value, low, high } = amountIn(tags);
  return { unclaimed: [value, low, high].filter((number) => number !== null).map(String) };
};

/** "Standing at one sixty both sides": equalised, it is what both gauges show. */
const bothSides: Means = (tags, frame) => {
  if (isOfFittedPart(frame)) return null;
  const head = reading('headPressure', amountIn(tags), frame);
  const suction = reading('suctionPressure', amountIn(tags), frame);
  return head?.quantity === 'headPressure' && suction?.quantity === 'suctionPressure'
    ? { readings: [head, suction] }
    : null;
};

/** "One oh three both sides of the drier" is no gauge's: of the whole circuit alone are both sides pressures. */
const isOfFittedPart = (frame: Frame): boolean =>
  FITTED.test(clauseBefore(frame)) || OF_FITTED.test(wordsBehind(frame, 3));
const PART = '(?:dri?y?er|filter|coil|valve|solenoid|strainer|screen|exchanger|coupling|elbow)s?';
const FITTED = new RegExp(`\\b${PART}(?:'s| is| are| was)?$`, 'i');
const OF_FITTED = new RegExp(`^(?:of|on|at) (?:the |that |this |my )?(?:[a-z]+ )?${PART}\\b`, 'i');

/** "Superheat's about the same, twelve": of what was named before it. */
const notSameOfElse = (frame: Frame): boolean =>
  startsClause(frame) || !/^the same\b/i.test(frame.wordsOf(frame.span));

/** "Head's climbing, two ninety, three ten": one after the other of what moves. */
const moving: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  if (quantity === null || isElectrical(quantity)) return null;
  const said = [tagsIn(tags['one']), tagsIn(tags['two']), tagsIn(tags['three'])];
  const readings = said.flatMap((each): readonly Reading[] => {
    const found = each === null ? null : reading(quantity, amountIn(each), frame);
    return found === null ? [] : [found];
  });
  return readings.length === 0 ? null : { readings };
};

/** Where it was read says nothing more of it. */
const here: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  return quantity === null || isElectrical(quantity) ? null : fixed(quantity)(tags, frame);
};

/** Ours: a pump that pulls stands above this, so that a bare number below is asked about. */
const LEAST_MICRONS = 50;
const MOST_MICRONS = 20_000;

const canBeMicrons = ({ value, unit }: Amounted): boolean =>
  isVacuumUnit(unit) ||
  (unit === null && value !== null && value >= LEAST_MICRONS && value <= MOST_MICRONS);

/** What a gauge stood at that was read before: the micron gauge's, or the nitrogen's. */
export function ofGauge(tags: Tags, frame: Frame): QuantityId | null {
  const amount = amountIn(tags);
  const { lastQuantity } = frame.context;
  if (isVacuumUnit(amount.unit)) return 'vacuum';
  if (lastQuantity === 'vacuum') return canBeMicrons(amount) ? 'vacuum' : null;
  return lastQuantity === 'testPressure' && amount.unit !== 'degrees' ? 'testPressure' : null;
}

export const goesOn: Means = (tags, frame) => {
  const quantity = ofGauge(tags, frame);
  return quantity === null ? leftToAsk(tags) : fixed(quantity)(tags, frame);
};

/** What opens the sentence: "head's at one forty five and climbing" tells its own quantity. */
const OPENING = { only: opensSentence, examples: [] };

/** "Four eighty, valved it off": the vacuum as the pump was shut out. */
const thenValvedOff: Means = (tags, frame) =>
  ofGauge(tags, frame) === 'vacuum' ? fixed('vacuum')(tags, frame) : leftToAsk(tags);

/** "Went up to six ninety after ten minutes" */
export const roseTo: Means = (tags, frame) => {
  const afterMinutes = minutesIn(tagsIn(tags['after']));
  const quantity = ofGauge(tags, frame);
  if (afterMinutes === null) return null;
  const of = (rose: QuantityId): Meaning | null => fixed(rose, { afterMinutes })(tags, frame);
  const means = (read: QuantityId): Meaning | null => {
    if (read === 'suctionPressure' || read === 'headPressure') return fixed(read)(tags, frame);
    return read === 'vacuum' || read === 'testPressure' ? of(read) : null;
  };
  // "Let it sit five minutes and it came up to four", behind a pump-down.
  const last = frame.context.lastQuantity === 'suctionPressure' ? 'suctionPressure' : null;
  const own = last === null ? null : means(last);
  const otherwise = (quantity === null ? own : of(quantity)) ?? leftToAsk(tags);
  return { ofThat: { means, otherwise } };
};

/** "Down to one forty nine but it's sixty four now": a standing test and the gas's own temperature. */
const withGas: Means = (tags, frame) => {
  if (frame.context.lastQuantity !== 'testPressure') return null;
  const { value, unit } = amountIn(tagsIn(tags['gas']) ?? {});
  const degrees = unitFor(unit ?? 'degrees', 'temperature', frame.context.units);
  if (value === null || degrees === null) return null;
  return fixed('testPressure', { gasTemp: { value, unit: degrees } })(tags, frame);
};

const afterIn = (tags: Tags): { readonly afterMinutes?: number } => {
  const afterMinutes = minutesIn(tagsIn(tags['after']));
  return afterMinutes === null ? {} : { afterMinutes };
};

/** Ours: what is put on a system by a regulator is more; less is asked about. */
const LEAST_TEST = { value: 80, unit: 'psi' } as const;

/** "Put two hundred back on it": of nitrogen, where it is more than a gauge's few pounds of gas. */
const putOn: Means = (tags, frame) => {
  const found = reading('testPressure', amountIn(tags), frame);
  if (found?.value === undefined || found.unit === null) return null;
  const { value, unit } = found;
  return liesAbove({ value, unit }, LEAST_TEST) ? { readings: [found] } : leftToAsk(tags);
};

/** What a rack holds is its suction. */
const rackHolds: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const isPressure = unit === null || unit === 'psi' || unit === 'pounds' || unit === 'bar';
  return isPressure && /\b(?:hold|pull|run|down|sit)/i.test(frame.wordsOf(frame.span))
    ? fixed('suctionPressure')(tags, frame)
    : null;
};

/** "Two fifty on it since eight fifteen": only a standing test is left so; since when is kept as told. */
const standing: Means = (tags, frame) => {
  const test = fixed('testPressure')(tags, frame);
  return test === null || isVacuumUnit(amountIn(tags).unit)
    ? null
    : { ...test, remarks: [frame.wordsOf(frame.span)] };
};

const AREA =
  '(up here|in here|out here|outside|outdoors|down here|back here|over here|up on the roof|on the roof|out there|up there|in the kitchen|back there|where i am|by the unit|around (it|here))';
const NOW_AT =
  '[(it is|she is|i am|we are|that is|now|down|up|back|still|it is (down|up|back|still)|it went|it came|i am (down|back)|dropped|fell)] [(down|up|at|to|down to|up to)]';
const STILL =
  '(still (dropping|falling|going down|coming down|pulling|moving|climbing|rising|going)|and (dropping|falling|holding|going down|climbing|still dropping|still going|still pulling)|(holding|steady|dropping|holding there|holding steady|falling|creeping up|climbing) [(now|slow|slowly|fast)])';

/** A test with the gas's own temperature, and after so many minutes where it was told. */
const gasOf =
  (named: boolean): Means =>
  (tags, frame) => {
    if (!named && frame.context.lastQuantity !== 'testPressure') return null;
    const { value, unit } = amountIn(tagsIn(tags['gas']) ?? {});
    const degrees = unitFor(unit ?? 'degrees', 'temperature', frame.context.units);
    if (value === null || degrees === null) return null;
    const afterMinutes = minutesIn(tagsIn(tags['after']));
    const after = afterMinutes === null ? {} : { afterMinutes };
    return fixed('testPressure', { gasTemp: { value, unit: degrees }, ...after })(tags, frame);
  };

const OTHER_TIMES = /^(?:hours?|hrs?|seconds?|secs?|days?|weeks?|o'?clock|am|pm)$/i;

/** "Held at three ten after fifteen": minutes, behind a vacuum or a test. */
/** "Suction is twenty two after ten minutes" is suction's: a number without a word of the test begins its clause. */
const isOfVacuum = (frame: Frame): boolean =>
  startsClause(frame) ||
  /^(?:(?:and|but|it) )*(?:held|holding|settled|was|stayed|up|rose|came|crept)\b/i.test(
    frame.wordsOf(frame.span),
  );

const heldAfter: Means = (tags, frame) => {
  const afterMinutes = numberIn(tagsIn(tags['mins'])?.['number']);
  const { to } = frame.span;
  const isOther = OTHER_TIMES.test(frame.wordsOf({ from: to, to: to + 1 }));
  if (afterMinutes === null || (isOther && !frame.endsAtPause)) return null;
  const saysMinutes = /\bmin/i.test(frame.wordsOf(frame.span));
  const of = (quantity: QuantityId | null): Meaning | null =>
    quantity === 'vacuum' || quantity === 'testPressure'
      ? fixed(quantity, { afterMinutes })(tags, frame)
      : null;
  const isMicrons = amountIn(tags).unit === 'micron';
  const otherwise = of(isMicrons ? 'vacuum' : frame.context.lastQuantity) ?? {
    unclaimed: [
      ...(leftToAsk(tags).unclaimed ?? []),
      ...(saysMinutes ? [] : [String(afterMinutes)]),
    ],
  };
  return { ofThat: { means: isMicrons ? () => otherwise : of, otherwise } };
};

/** "Valve's set for one eighty": no other valve of these holds so much; what is less is asked about. */
const valveHolds: Means = (tags, frame) => {
  const found = reading('heldHeadPressure', amountIn(tags), frame);
  const { refrigerant } = frame.context;
  if (found?.value === undefined || found.unit === null) return null;
  const { value, unit } = found;
  const isHigh = refrigerant !== 'R-744' && liesAbove({ value, unit }, LEAST_HELD);
  const saysHead = /\bhead\b/i.test(frame.wordsOf(frame.span));
  return isHigh || saysHead ? { readings: [found] } : leftToAsk(tags);
};
/** Ours: an evaporator's regulator is set far below, a head pressure valve above. */
const LEAST_HELD = { value: 110, unit: 'psi' } as const;

/** "Nitrogen up to ten bar first, took it up to twenty two": of the test that was told. */
const takenUp: Means = (tags, frame) => {
  const test = fixed('testPressure')(tags, frame);
  const means = (read: QuantityId): Meaning | null => (read === 'testPressure' ? test : null);
  const isTest = frame.context.lastQuantity === 'testPressure';
  return { ofThat: { means, otherwise: isTest ? (test ?? leftToAsk(tags)) : leftToAsk(tags) } };
};

/** What gauges show, told as one looks at them. */
export const GAUGE_TALK_RULES: readonly Rule[] = [
  rule(
    '[(then|i|we|just)] (blew|bled|let|dumped|released) (it|the nitrogen|the nitro|her|the pressure) (off|down|out|go)',
    (_tags, { context }) => (context.lastQuantity === 'testPressure' ? {} : null),
    { examples: [] },
  ),
  rule(
    '(pressurized|pressured|charged|brought|took|filled) [(it|the system|her|this)] [up] to <amount> with [dry] nitrogen at <amount:gas>',
    gasOf(true),
    { examples: ['pressurized it to one fifty with nitrogen at seventy two degrees'] },
  ),
  rule(
    'after <duration:after> [(it is|we are|i am|she is)] [still] [(at|holding|holding at)] <amount> (at|with) <amount:gas>',
    gasOf(false),
    { examples: [] },
  ),
  rule(
    '([(i|we)] pumped [(it|her|the system)] down|pump down) [and] [it] (held|is holding|holding|sat|stayed|stopped|leveled off|bottomed out) [at] <amount>',
    pumpedAndHeld,
    { examples: ['pumped down and held at two pounds'] },
  ),
  rule(
    '[(i|we|then)] (put|threw|got) <amount> [back] on (it|her|the system) [(to (test|check)|and let it sit)]',
    putOn,
    { examples: ['put two hundred back on it'] },
  ),
  rule(
    '[(i|we|and|just)] (valved|blanked|shut|isolated) [(it|the pump|her)] off <pause> <duration:after> [(in|later)] <pause> [(it is|at|up to)] <amount>',
    (tags, frame) =>
      canBeMicrons(amountIn(tags)) ? fixed('vacuum', afterIn(tags))(tags, frame) : leftToAsk(tags),
    { examples: [] },
  ),
  rule(
    '[(after (lunch|a while|a bit|a (coffee|smoke|break|cuppa)|that|an hour)|and|but)] [<pause>] [(and|then)] (it|she|that) (was|is) still [(at|holding [at]|sitting [at]|showing|reading|on)] <amount>',
    goesOn,
    { unheard: true, only: startsClause, examples: [] },
  ),
  rule(
    '[(and|then|i|we|and then|then i)] (took|brought|ran|pushed|pumped|raised|bumped) it [(on|back)] [up] to <amount>',
    takenUp,
    { unheard: true, examples: [] },
  ),
  rule(
    '[the] [vacuum] (vac|vacuum|pump|vac pump) is (on|running|pulling|going) [<pause>] [(and|now|i am|it is|we are|reading|and it is)] [(at|down to|down at)] <amount>',
    (tags, frame) => (canBeMicrons(amountIn(tags)) ? fixed('vacuum')(tags, frame) : null),
    { unheard: true, only: startsClause, examples: ['vac is on seventeen hundred'] },
  ),
  rule(
    '[(it|and|and it|she)] [(has|is)] (held|holding|stayed|sat|stood|steady) [at] <amount> (for|after|over) <duration:after> (with|and) the [vacuum] pump (off|shut off|valved (off|out)|isolated|shut down|blanked off|disconnected)',
    (tags, frame) =>
      canBeMicrons(amountIn(tags)) ? fixed('vacuum', afterIn(tags))(tags, frame) : null,
    { unheard: true, examples: ['held at four ten for fifteen minutes with the pump off'] },
  ),
  rule(
    '[the] rack (is|keeps) [(holding|running|pulling|pulling down to|down to|sitting at)] <amount>',
    rackHolds,
    { examples: ['rack is holding eighteen'] },
  ),
  rule(
    '[(i have|i have got|i put|there is|got)] <amount> [of nitrogen] on (it|her|the system) (since|for|overnight|all night) [(<number:since>|<duration:since>|<clock>|lunch|noon|this morning|yesterday|last night|breakfast)]',
    standing,
    { examples: ['two fifty on it since eight fifteen'] },
  ),
  rule(
    '[(i|we|and|just)] (valved|blanked|shut|isolated) [(it|the pump|her)] off at <amount>',
    (tags, frame) =>
      canBeMicrons(amountIn(tags)) ? fixed('vacuum')(tags, frame) : leftToAsk(tags),
    { examples: ['valved off at four fifty'] },
  ),
  rule(
    '[(and|then)] [(i|we)] (let it|left it|it) [(sit|sat|stand|stood|set|rest)] [for] [about] <duration:after> [(and|then)] [it] (came|rose|crept|went|jumped|climbed|drifted|is|was) [(back|right back)] [up] [(at|to)] <amount>',
    roseTo,
    { examples: [] },
  ),
  // "Vac 280, 310 after two hours": what begins a clause is cut from no number before it.
  rule('<amount> after <duration:after>', roseTo, { only: startsClause, examples: [] }),
  rule(
    '(down to|we are down to|i am down to|it is down to|down at|down around) <amount> [now]',
    (tags, frame) => (ofGauge(tags, frame) === null ? null : goesOn(tags, frame)),
    { alone: true, examples: [] },
  ),
  rule(
    '[(and|but)] [it] [(held|holding|settled|was|stayed|up to|rose to|came up to|crept up to)] [(at|to|on)] <amount> after <number:mins> [minutes]',
    heldAfter,
    { only: isOfVacuum, examples: [] },
  ),
  rule(
    '<duration:after> [(in|later)] <pause> [(it is|at|up to|now|i am at|we are at|up at|reading|it is at)] <amount>',
    roseTo,
    OPENING,
  ),
  rule(
    '[the] [(head|head pressure|o r i)] (valve|headmaster) (is|was) (set|stamped|marked|printed) (for|at|to|with) <amount>',
    valveHolds,
    { examples: ['the valve is set for one eighty'] },
  ),
  rule(
    '[(it|she|the system|they|everything)] (equalizes|evens out|evened out|equalizing) [(out|off)] (at|to|out at|around) <amount> [(in|after|within) [(about|like)] <duration:after>]',
    bothSides,
    { examples: ['it equalizes to sixty in about five minutes'] },
  ),
  rule(
    '[(i|we|just)] (put|got|have) <amount> [of nitrogen] (on|in|into) (it|her|the system) with a (trace|shot|touch|little) of <refrigerant>',
    fixed('testPressure'),
    { examples: ['put three hundred on it with a trace of four oh four'] },
  ),
  rule(
    '[(standing|sitting|equalized|they are|it is|pressures are|i have|i have got|both|static|gages are|sat|everything is)] [(at|equalized at|sitting at|standing at)] <amount> [(on|at)] both (sides|gages|ends|of them)',
    bothSides,
    { examples: ['standing at one sixty both sides'] },
  ),
  rule(
    '[(it is|they are|pressures are|everything is|system is)] ((equal|equalized|both sides [are] [(at|sitting at|standing at)]|both gages [are] [(at|sitting at|reading)]) [(at|out at|to)]|the same (at|out at|to|<pause>)) <amount>',
    bothSides,
    { only: notSameOfElse, examples: ['equalized at one sixty'] },
  ),
  rule(
    '[the] <quantity> (is|keeps) [(still|just|really)] (climbing|rising|going up|coming up|dropping|falling|going down|coming down|moving|shooting up|creeping [(up|down)]|building|pulling down|sinking) <pause> [(it is|now|i have|at)] <amount:one> [<pause> [(now|and)] <amount:two> [<pause> [(now|and)] <amount:three>]]',
    moving,
    { examples: [] },
  ),
  rule(`[the] <quantity> <link> <amount> ${AREA}`, here, {
    examples: ['ambient is about ninety four up here'],
  }),
  rule(`${NOW_AT} <amount> [<pause>] ${STILL}`, goesOn, {
    only: opensSentence,
    examples: ['six fifty still dropping'],
  }),
  rule('[(it is|she is)] still (at|holding|sitting at|holding at|reading) <amount>', goesOn, {
    alone: true,
    examples: ['still holding one fifty'],
  }),
  rule(
    `${NOW_AT} <amount> [<pause>] [(and|so|then)] [i] (valved|blanked|closed|shut|isolated|locked) (it|the pump|her|the valve|it [all] in) [off] [now]`,
    thenValvedOff,
    { only: opensSentence, examples: ['four eighty valved it off'] },
  ),
  rule(
    `[(and|then|it|she|that)] [it] (went|came|rose|crept|climbed|jumped|drifted|is|got) [(back|right back|all the way)] [up] to <amount> (after|in) [(about|like)] <duration:after>`,
    roseTo,
    { examples: ['went up to six ninety after ten minutes'] },
  ),
  rule(
    `${NOW_AT} <amount> [<pause>] (and|but|with) (it is|the (temp|gas|air|cylinder|nitrogen|outside) is|temp is|it has (dropped|cooled [off]) to|outside is) [at] <amount:gas> [(now|degrees|in here|out here|outside|out)]`,
    withGas,
    OPENING,
  ),
];
