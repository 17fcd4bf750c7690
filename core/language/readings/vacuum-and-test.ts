import type { QuantityId } from '../../terms/quantities.ts';
import { opensSentence } from '../words/clause-start.ts';
import { minutesIn } from '../numbers/durations.ts';
import { amountIn, isVacuumUnit, unitFor } from '../numbers/measure.ts';
import { drawnDown, pumpedDownTo } from './pumped-down.ts';
import { fixed } from './reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { quantityId, tagsIn } from '../slots.ts';
import { wordsOfNames } from '../names/names-node.ts';
import { QUANTITY_NAMES } from '../vocabulary/quantity-names.ts';
import { UNIT_NAMES } from '../vocabulary/unit-names.ts';

/** Inches are the low side's pressure, microns a deep vacuum. */
export const vacuumByUnit: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  if (isVacuumUnit(unit)) return fixed('vacuum')(tags, frame);
  const suction =
    unit === 'inches' || unit === 'inHg' ? fixed('suctionPressure')(tags, frame) : null;
  const isRecovered = /\brecover/i.test(frame.wordsOf({ from: 0, to: frame.span.from }));
  return suction && isRecovered ? drawnDown(suction) : suction;
};

/** "Two four six minutes" may be two and forty-six, or twenty-four and six: something must stand between. */
const runsTogether = (frame: Frame): boolean =>
  !/\b(?:after|for|in|at|hold|holds|holding|held|still|steady|later|drop|moved)\b/i.test(
    frame.wordsOf(frame.span),
  );

const vacuumAfter: Means = (tags, frame) => {
  const minutes = minutesIn(tagsIn(tags['after']));
  const { unit } = amountIn(tags);
  if (minutes === null || (!isVacuumUnit(unit) && tags['quantity'] !== 'vacuum')) return null;
  if (unit === null && runsTogether(frame)) return null;
  return risen(fixed('vacuum', { afterMinutes: minutes })(tags, frame), minutes);
};

/** "Four ten to four ninety in ten minutes": where it stood, and where after that time. */
function risen(meaning: Meaning | null, minutes: number): Meaning | null {
  const [found] = meaning?.readings ?? [];
  if (found?.low === undefined || found.high === undefined) return meaning;
  const { low, high, afterMinutes, ...rest } = found;
  return {
    readings: [
      { ...rest, value: low },
      { ...rest, value: high, afterMinutes: afterMinutes ?? minutes },
    ],
  };
}

/** A standing test read again after a while. */
const testAfter: Means = (tags, frame) => {
  const minutes = minutesIn(tagsIn(tags['after']));
  const quantity = quantityId(tags['quantity']) ?? 'testPressure';
  if (minutes === null || quantity !== 'testPressure') return null;
  if (amountIn(tags).unit === null && runsTogether(frame)) return null;
  return fixed('testPressure', { afterMinutes: minutes })(tags, frame);
};

/** Ours: no air around a bottle of nitrogen is hotter, so "one seventy five seventy one degrees" parts in one way only. */
const HOTTEST_AIR = 140;

const gasTest: Means = (tags, frame) => {
  const gas = tagsIn(tags['gas']);
  const amount = gas === null ? null : amountIn(gas);
  if (amount?.value == null) return null;
  const isNoAir = amount.unit === null && amount.value >= HOTTEST_AIR;
  const unit = unitFor(amount.unit ?? 'degrees', 'temperature', frame.context.units);
  if (unit === null || isNoAir) return null;
  return fixed('testPressure', { gasTemp: { value: amount.value, unit } })(tags, frame);
};

/** Of a vacuum or a standing test, whichever was spoken of. */
const heldLast: Means = (tags, frame) => {
  const { lastQuantity } = frame.context;
  if (lastQuantity === 'testPressure') return testAfter(tags, frame);
  return lastQuantity === 'vacuum' ? vacuumAfter({ ...tags, quantity: 'vacuum' }, frame) : null;
};

/** "It was two hundred at seventy degrees": a standing test's, where that was spoken of. */
export const ofLastTest: Means = (tags, frame) =>
  frame.context.lastQuantity === 'testPressure' ? gasTest(tags, frame) : null;

const MOST_PRESSURE = 1000;
const gasTestBeside: Means = (tags, frame) => {
  const { value } = amountIn(tagsIn(tags['gas']) ?? {});
  const pressure = amountIn(tags).value;
  const isOneWay = pressure !== null && pressure < MOST_PRESSURE;
  if (isOneWay && value !== null && isOneNumber(pressure, value)) return null;
  return isOneWay && value !== null && value <= HOTTEST_AIR && value >= 0
    ? gasTestNamed(tags, frame)
    : null;
};

/** "Nitrogen, it's seventy four degrees" is no seventy at four. */
const isOneNumber = (pressure: number, gas: number): boolean =>
  pressure < 100 && pressure % 10 === 0 && gas < 10;

const gasTestNamed: Means = (tags, frame) =>
  amountIn(tagsIn(tags['gas']) ?? {}).unit === null ? null : gasTest(tags, frame);

const { micron, mbar, Pa } = UNIT_NAMES;
const VACUUM_UNITS = { micron, mbar, Pa };
const VACUUM_WORDS = wordsOfNames({ ...VACUUM_UNITS, vacuum: QUANTITY_NAMES.vacuum });

const VACUUM_GOES =
  '[(rose|rises|rose back|came|came back|come back|crept|jumped|went|climbed|dropped|held|holding|sat|stayed|steady|is holding|is|got|pulled|stopped)] [(up|down|in)] [(to|at)]';
const STEADY =
  '[<pause>] [and] [(it is|is|still|it has)] (holding|held|steady|holding steady|stable|solid|not moving|not moved)';
const HELD =
  '((is holding|holding|held|holds|still|is steady|steady|no drop|not moved) [(after|for|in|at)]|(after|for|in|at)|<pause>)';
const NITROGEN =
  '[(pressurized to|pressured up to|pressure test at|pressure tested at|pressure tested to|holding|held|put|pumped up to|charged to|holding at|it is holding|still|still holding|i have|i have got)]';

/** Ours: what a pump is said to have pulled it to without a unit is microns from here up, else a pressure. */
const LEAST_MICRONS = 100;
const MOST_MICRONS = 5000;

const pulledTo: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const isMicrons = value !== null && value >= LEAST_MICRONS && value <= MOST_MICRONS;
  return unit === null && isMicrons ? fixed('vacuum')(tags, frame) : null;
};

/** What a pump that ran so long has pulled: microns, unless inches are said. */
const pumpedSince: Means = (tags, frame) => {
  const pulled = pulledTo(tags, frame);
  if (pulled === null && !isVacuumUnit(amountIn(tags).unit)) return vacuumByUnit(tags, frame);
  return vacuumAfter({ ...tags, quantity: 'vacuum' }, frame) ?? fixed('vacuum')(tags, frame);
};

/** "Held at four ten": of the vacuum or the test that was read last; nothing else is held so. */
const heldAt: Means = (tags, frame) => {
  const of = (quantity: QuantityId | null): Meaning | null =>
    quantity === 'vacuum' || quantity === 'testPressure' ? fixed(quantity)(tags, frame) : null;
  const { value, unit } = amountIn(tags);
  if (isVacuumUnit(unit)) return fixed('vacuum')(tags, frame);
  const left = value === null ? {} : { unclaimed: [String(value)] };
  return {
    ofThat: { means: of, otherwise: of(frame.context.lastQuantity) ?? left },
  };
};

/** What was tested, at what, and whether it held. */
const testedTo: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const meant = gasTest(tags, frame) ?? fixed('testPressure')(tags, frame);
  const held = /\bh[eo]ld/i.test(words) ? { remarks: [words] } : {};
  return meant && { ...meant, ...held, work: [{ did: 'pressureTest', part: null, words }] };
};

/** A vacuum and a standing test, and what each came to after a while. */
export const VACUUM_AND_TEST_RULES: readonly Rule[] = [
  rule(
    '[(and|but)] [it] [(is|has)] [still] (held|holding|settled|leveled (off|out)|stopped|steady) [(steady|solid|right|good)] (at|on) <amount>',
    heldAt,
    { examples: [] },
  ),
  rule(
    '[(i|we)] (pressure tested|nitrogen tested|leak tested) [(it|the system|everything)] [(to|at|with|up to)] <amount> [[of nitrogen] at <amount:gas>] [[<pause>] [and] [it] (held|holding|is holding|holds) [(good|fine|solid|steady)]]',
    testedTo,
    { examples: ['pressure tested to one fifty'] },
  ),
  rule(
    '[(i|we)] (pressure tested|nitrogen tested|leak tested) [(it|the system|everything)] [(to|at|with|up to)] <amount> [(of|with) [dry] nitrogen] (for|over|and held it [for]|and let it (sit|stand) [for]) <duration:after> [<pause> [and] [it] (held|holding|is holding|holds) [(good|fine|solid|steady)]]',
    testedTo,
    { examples: ['pressure tested to one fifty for half an hour'] },
  ),
  rule(
    '[~~(the (system|unit)|system|unit)] (pumped|pumps) [(it|her|the system|the unit|this|~~it all|~~everything|~~the (charge|gas|low side))] down to <amount>',
    pumpedDownTo,
    { examples: ['pumped it down to two pounds'] },
  ),
  rule(
    '(it|she|that) (was|is|started) [(now|at|back)] <amount> (at|with [the gas at]|when it was) <amount:gas>',
    ofLastTest,
    { examples: [] },
  ),
  rule(
    `[(i|we|and|just)] (valved|blanked|closed|shut|isolated|locked) (it|the pump|her|it [all] in) [off] [(and|then)] [(it|she|that)] ${VACUUM_GOES} <amount> [(after|for|at|in)] <duration:after>`,
    (tags, frame) => vacuumAfter({ ...tags, quantity: 'vacuum' }, frame),
    { examples: ['valved it off and it came up to six fifty in five minutes'] },
  ),
  rule(
    '[(it is|it has|it)] (still|holding|held|sitting|steady|stayed) [at] <amount> (after|for) <duration:after>',
    heldLast,
    { examples: [] },
  ),
  rule(
    '[the] [vacuum] pump (has been|is been) (on|running) [for] [about] (<duration:after>|a while) and (i am|it is|we are) [(only|still|down)] [(at|to)] <amount>',
    pumpedSince,
    { unheard: true, examples: ['pump has been on an hour and i am at nine hundred'] },
  ),
  rule(
    '[still] <amount> <duration:after> later [(no drop|not moved|[still] holding|steady)]',
    heldLast,
    { unheard: true, only: opensSentence, examples: [] },
  ),
  rule(
    '((pulled|pulled it|pulled the system|pulled down|pulled her|we are|down|it is|went|got it) [down] to [a vacuum of]|[(low side|suction|it|she|the (low side|suction|system|compressor))] (is (in|into|down in|pulling|running in)|(pulls|pulled|runs|ran|went) [down] [(to|in|into)])) <amount>',
    vacuumByUnit,
    {
      examples: ['down to four hundred microns', 'pulled it to twenty nine inches'],
    },
  ),
  rule(
    `[[the] <quantity>] [<link>] ${VACUUM_GOES} <amount> [${STEADY}] [(after|for|at|in)] <duration:after> [(in|into it|later|in to it|now|on the pump)]`,
    vacuumAfter,
    {
      needs: VACUUM_WORDS,
      examples: ['eight hundred microns five minutes in'],
    },
  ),
  rule(
    `[after] <duration:after> [(in|into it|later|on the pump)] [[the] <quantity>] [(<link>|(i am|it is|we are) [at])] ${VACUUM_GOES} <amount>`,
    vacuumAfter,
    { needs: VACUUM_WORDS, examples: ['after fifteen minutes it is at five fifty microns'] },
  ),
  rule(
    `${NITROGEN} <amount> [of] [dry] nitrogen ${HELD} <duration:after> [(in|later)]`,
    testAfter,
    { examples: ['one fifty of nitrogen holding after twenty minutes'] },
  ),
  rule(
    `[the] <quantity> [(still|holding)] <link> <amount> ${HELD} <duration:after> [(in|later)]`,
    testAfter,
    {
      examples: ['test pressure is one forty eight after an hour'],
    },
  ),
  rule(`after <duration:after> [the] <quantity> <link> <amount>`, testAfter, {
    examples: ['after an hour the nitrogen is at one fifty'],
  }),
  rule('[the] <tested> <link> <amount> <pause> [(at|it is)] <amount:gas>', gasTestNamed),
  rule(
    '[the] <quantity> [(of|with)] <link> <amount> of [dry] (nitrogen|nitro)',
    (tags, frame) =>
      tags['quantity'] === 'testPressure' ? fixed('testPressure')(tags, frame) : null,
    { examples: ['test pressure one fifty of nitrogen'] },
  ),
  rule(
    '[(it is|i am|we are|holding|i have [got] it|is)] (testing|tested|pressure testing|under test|leak testing) [it] (at|to|with) <amount> [of [dry] nitrogen]',
    (tags, frame) => (amountIn(tags).unit === null ? null : fixed('testPressure')(tags, frame)),
    { examples: ['testing at one fifty psi'] },
  ),
  rule('[the] <tested> <link> <amount> <amount:gas>', gasTestBeside, { examples: [] }),
  rule('[the] <tested> <link> <amount> (at|with [the gas at]) <amount:gas>', gasTestNamed, {
    examples: ['standing pressure test one eighty at seventy degrees'],
  }),
  rule(
    '[(holding|put|i have|i have got|got|there is|it is holding|pumped up to)] <amount> [of] [dry] ((nitrogen|nitro) (on|in) (it|her|there|the (system|coil|unit))|nitro) at <amount:gas>',
    gasTest,
    { unheard: true, examples: ['two hundred of nitro on it at seventy two degrees'] },
  ),
  rule(
    '(charged|brought|took|filled|blew) [(it|the system|her|this)] [up] to <amount> with ([some] [dry] nitro|some [dry] nitrogen|oxygen free)',
    fixed('testPressure'),
    { unheard: true, examples: ['blew it up to twenty bar with oxygen free'] },
  ),
  rule(
    '[(pressurized to|pressured up to|pressure test at|pressure tested at|holding|put|pumped up to|charged to|holding at|it is holding)] <amount> [of] [dry] nitrogen at <amount:gas>',
    gasTest,
    {
      examples: ['one eighty of nitrogen at sixty five degrees'],
    },
  ),
  rule(
    '[(pressurized to|pressured up to|pressure test at|pressure tested at|pressure tested to|holding|put|pumped up to|charged to|holding at|it is holding|(got|have|have got|brought|took) it up to)] <amount> [(of|on)] [dry] nitrogen',
    fixed('testPressure'),
    {
      examples: ['holding one fifty of nitrogen'],
    },
  ),
  rule(
    '(charged|brought|took|filled|blew) [(it|the system|her|this)] [up] to <amount> with [dry] nitrogen',
    fixed('testPressure'),
    { examples: ['charged it up to one fifty with nitrogen'] },
  ),
  rule(
    '((pressurized|pressured|pumped) [(it|the system)] [up] to|pressurized at|pressure test at|pressure test to|pressure testing at|put) <amount> [of [dry] nitrogen] [on it] at (<number:time> (am|pm|a m|p m|oclock|this (morning|afternoon)|tonight|today)|<clock> [(am|pm|a m|p m)])',
    fixed('testPressure'),
    { examples: ['pressurized to one fifty at ten forty a m'] },
  ),
  rule(
    '((pressurized|pressured|pumped) [(it|the system)] [up] to|pressurized at|pressure test at|pressure test to|pressure testing at) <amount> [[of nitrogen] at <amount:gas>]',
    (tags, frame) => (tags['gas'] === undefined ? fixed('testPressure') : gasTest)(tags, frame),
    {
      examples: ['pressurized to one fifty'],
    },
  ),
  rule(
    '[(i|we)] (pulled|got|brought|have|have got|vacced|evacuated|sucked) (it|her|this thing|the system) [all the way] [down] to <amount>',
    pulledTo,
    { examples: ['pulled it to three eighty'] },
  ),
];
