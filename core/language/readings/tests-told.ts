import { startsClause } from '../words/clause-start.ts';
import { minutesIn } from '../numbers/durations.ts';
import { atClock } from '../talk/errands.ts';
import { amountIn, isVacuumUnit, unitFor } from '../numbers/measure.ts';
import { asPumpedDown, MOST_PUMPED_DOWN } from './pumped-down.ts';
import { fixed, leftToAsk, reading } from './reading-means.ts';
import type { Frame, Meaning, Means, Rule } from '../rule.ts';
import { rule } from '../rule.ts';
import { numberIn, quantityId, tagsIn } from '../slots.ts';
import type { Tags } from '../../grammar/nodes.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import type { Reading } from '../utterance.ts';
import { remark } from '../plain-means.ts';

/** Ours: nobody holds a vacuum shut in at less, or speaks of one at more. */
const LEAST_MICRONS = 50;
const MOST_MICRONS = 20_000;
const isMicrons = (tags: Tags | null): tags is Tags => {
  if (tags === null) return false;
  const { unit, value, high } = amountIn(tags);
  const figure = value ?? high;
  if (unit !== null) return isVacuumUnit(unit);
  return figure !== null && figure >= LEAST_MICRONS && figure <= MOST_MICRONS;
};

type After = Pick<Reading, 'afterMinutes'>;
/** How long after; "in five" behind a pump that was shut off is minutes. */
function afterIn(tags: Tags): After {
  const after = tagsIn(tags['after']);
  const minutes = minutesIn(after) ?? numberIn(after?.['number']);
  return minutes === null ? {} : { afterMinutes: minutes };
}

const one = (quantity: QuantityId, tags: Tags, frame: Frame): readonly Reading[] => {
  const found = reading(quantity, amountIn(tags), frame);
  return found?.quantity === quantity ? [found] : [];
};
const later = (readings: readonly Reading[], after: After): readonly Reading[] =>
  readings.map((found) => ({ ...found, ...after }));
const told = (readings: readonly Reading[], many: number): Meaning | null =>
  readings.length === many ? { readings } : null;

/** "Valved it off at two ninety, ten minutes later three forty": where it stood, and where it came to. */
const shutInAt: Means = (tags, frame) => {
  const [start, end] = [tagsIn(tags['start']), tagsIn(tags['end'])];
  if (!isMicrons(start) || !isMicrons(end)) return null;
  const rose = later(one('vacuum', end, frame), afterIn(tags));
  return told([...one('vacuum', start, frame), ...rose], 2);
};

/** "Blanked off the pump, she rose to seven fifty in five" */
const shutInRose: Means = (tags, frame) =>
  amountIn(tags).value === null
    ? null
    : isMicrons(tags)
      ? fixed('vacuum', afterIn(tags))(tags, frame)
      : leftToAsk(tags);

const ofRise: Means = (tags, frame) =>
  isMicrons(tags) ? fixed('vacuum', afterIn(tags))(tags, frame) : null;

/** "First pull fifteen hundred, second pull eight hundred, third four hundred": each was a vacuum. */
const pulls: Means = (tags, frame) => {
  const said = ['one', 'two', 'three']
    .map((slot) => tagsIn(tags[slot]))
    .filter((each) => each !== null);
  return said.every(isMicrons)
    ? told(
        said.flatMap((each) => one('vacuum', each, frame)),
        said.length,
      )
    : null;
};

/** What goes on of the vacuum or the test that was told last. */
const isOfLast =
  (quantity: QuantityId) =>
  ({ context }: Frame): boolean =>
    context.lastQuantity === quantity;

/** "Three hundred high side, one fifty low side": what each side was tested to. */
const eachSide: Means = (tags, frame) => {
  const [first, second] = [tagsIn(tags['one']), tagsIn(tags['two'])];
  if (first === null || second === null) return null;
  return told([...one('testPressure', first, frame), ...one('testPressure', second, frame)], 2);
};

/** "Dropped from two fifty to two forty one on the nitro" */
const fellTo: Means = (tags, frame) => {
  const [from, to] = [tagsIn(tags['one']), tagsIn(tags['two'])];
  if (from === null || to === null) return null;
  const fell = later(one('testPressure', to, frame), afterIn(tags));
  return told([...one('testPressure', from, frame), ...fell], 2);
};

/** "Held rock steady half an hour at one seventy five": a standing test's, or a vacuum's. */
const heldSoLong: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  return quantity === 'vacuum' || quantity === 'testPressure'
    ? fixed(quantity, afterIn(tags))(tags, frame)
    : null;
};

/** "Lost nine pounds on the nitrogen": how far it fell is no reading. */
const howFar: Means = (tags, frame) =>
  amountIn(tags).unit === 'psi' || amountIn(tags).unit === 'pounds' ? remark(tags, frame) : null;

/** "One fifty psi, started at ten fifteen" */
const startedAt: Means = (tags, frame) => {
  const clock = tagsIn(tags['clock']);
  if (clock === null || (clock['number'] !== undefined && atClock(clock, frame) === null))
    return null;
  const test = fixed('testPressure')(tags, frame);
  return test && { ...test, ...remark(tags, frame) };
};

/** "Nitrogen's at one ninety eight now, and it's seventy one degrees in here" */
const withAir: Means = (tags, frame) => {
  const { value, unit } = amountIn(tagsIn(tags['gas']) ?? {});
  const degrees = unitFor(unit ?? 'degrees', 'temperature', frame.context.units);
  if (value === null || degrees === null) return null;
  return fixed('testPressure', { gasTemp: { value, unit: degrees } })(tags, frame);
};

/** "Held at one fifty overnight, not a pound lost": how long it stood is kept as it was told. */
const stood: Means = (tags, frame) => {
  const test = fixed('testPressure')(tags, frame);
  return test && { ...test, ...remark(tags, frame) };
};

/** "Pulled down into a vacuum on the low side, four inches" */
const inVacuum: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  return unit === 'inches' || unit === 'inHg' ? suctionAt(tags, frame) : null;
};

/** Ours: inches of a pump's gauge lie near the end of its scale. */
const LEAST_PUMPED = 15;
/** "Twenty eight and a half inches, then the pump quit": of the pump that pulled them. */
const pumpQuit: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  if (isVacuumUnit(unit)) return told(one('vacuum', tags, frame), 1);
  const isInches = unit === 'inches' || unit === 'inHg';
  return isInches && value !== null && Math.abs(value) >= LEAST_PUMPED
    ? suctionAt(tags, frame)
    : null;
};

/** Ours: less than that on one coil is its gas, and no test. */
const LEAST_TEST = 80;
const pressedUp: Means = (tags, frame) => {
  const { value, unit } = amountIn(tags);
  const isTest = unit !== null || (value !== null && value >= LEAST_TEST);
  return isTest ? fixed('testPressure')(tags, frame) : null;
};

const traceTest: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return { work: [{ did: 'pressureTest', part: null, words }], remarks: [words] };
};

const evacuated: Means = (_tags, frame) => ({
  work: [{ did: 'evacuate', part: null, words: frame.wordsOf(frame.span) }],
});

/** "Won't pump down past twenty five" */
const suctionAt: Means = (tags, frame) => {
  const found = one('suctionPressure', tags, frame);
  return told(found, 1);
};

/** "Pulled down to zero and it crept back up to fifteen" */
const downAndBack: Means = (tags, frame) => {
  const [down, back] = [tagsIn(tags['one']), tagsIn(tags['two'])];
  if (down === null || back === null || isMicronUnit(down) || isMicronUnit(back)) return null;
  const readings = [...one('suctionPressure', down, frame), ...one('suctionPressure', back, frame)];
  const { value } = amountIn(down);
  if (value === null || value >= MOST_PUMPED_DOWN) return null;
  return asPumpedDown(told(readings, 2), frame);
};
const isMicronUnit = (tags: Tags): boolean => isVacuumUnit(amountIn(tags).unit);

/** "Pump down's good, cuts off at five": the control that ends it opens there. */
const endsPumpDown: Means = (tags, frame) => {
  const [found] = one('lowCutoutPressure', tags, frame);
  if (found === undefined) return null;
  const words = frame.wordsOf(frame.span);
  if (/\bpumped\b/i.test(words))
    return { readings: [found], work: [{ did: 'pumpDown', part: null, words }] };
  return /\b(?:good|fine|ok|works?)\b/i.test(words)
    ? { readings: [found], remarks: [words] }
    : { readings: [found] };
};

const I = '[(i|we|and|just|so i|then)]';
const IT = '(it|her|she|that|this|this thing|the (system|unit|box|machine|circuit|coil))';
const SHUT =
  '((valved|blanked|closed|shut|isolated|locked) (it|the [vacuum] pump|pump|her) off|(valved|blanked|closed|shut|isolated) off [(it|the [vacuum] pump|pump|her)]|(isolated|valved in|locked in) [(it|the [vacuum] pump|her)])';
const ROSE =
  '[(it|she|that|the vacuum)] [(is|was|has)] [(rose|rises|came|come|crept|climbed|jumped|went|drifted|rising|risen|up|got|read|reads|reading)] [(back|right back)] [up] [(to|at)]';
const SOON = '(<duration:after>|<number:after>)';
const HOLD =
  '(hold|decay|decay test|rise test|hold test|rise|standing vacuum|vacuum hold|vacuum test)';
const PULL = '(pull|vacuum|vac|evacuation|one|time|round)';
const CAME_TO = '[(was|to|is|got|went|came|down|pulled|made|hit)] [down] [(to|at)]';
const NOT_LOST =
  '[[<pause>] [(and|it)] [(has|did)] (not (a|one) (pound|psi|tick|ounce|needle width) [(lost|moved|dropped|gone)]|not (drop|dropped|lose|lost|move|moved) [(a (pound|tick|psi)|any|at all)]|never (moved|dropped|budged)|no (drop|loss)|lost nothing|nothing lost)]';
const ON_SIDE = (side: string): string => `[on] [the] ${side} [side]`;
const TEST =
  '[the] [(nitrogen|standing|standing pressure|dry nitrogen)] (pressure test|test|test pressure|nitrogen)';

/** Tests and vacuums, in the other ways that what came of them is told. */
export const TEST_TOLD_RULES: readonly Rule[] = [
  rule(
    `${I} ${SHUT} at <amount:start> [<pause>] [(and|then|and then)] (<duration:after> later|after <duration:after>|in <duration:after>|<duration:after>) [<pause>] ${ROSE} <amount:end>`,
    shutInAt,
    {
      unheard: true,
      examples: ['valved the pump off at two ninety microns ten minutes later three forty'],
    },
  ),
  rule(
    `${I} ${SHUT} at <amount:start> [<pause>] [(and|then|and then)] ${ROSE} <amount:end> (after|in|for) <duration:after>`,
    shutInAt,
    {
      unheard: true,
      examples: ['valved it off at four hundred it came up to five fifty in ten minutes'],
    },
  ),
  rule(
    `${I} ${SHUT} [<pause>] [(and|then|and then)] ${ROSE} <amount> (in|after) ${SOON}`,
    shutInRose,
    {
      unheard: true,
      examples: ['blanked off the pump she rose to seven fifty in five'],
    },
  ),
  rule(
    `[the] [(micron|vacuum|standing)] (decay|rise|hold) [test] [(is|has|was)] (came|went|rose|climbed|crept|got|ran|up|reads|is|at|stopped|shows|showed|held) [(back|up|it up)] [(to|at)] <amount> [(in|after|over) <duration:after>]`,
    ofRise,
    { unheard: true, examples: ['decay test came up to six hundred in ten minutes'] },
  ),
  rule(
    `[(it|she|that|vacuum|the vacuum)] [(is|was|has|keeps)] (rising|rose|risen|climbing|climbed|creeping|crept|going|went|gone|shot|blew|ran|coming|came) [(up|right)] [(up|back up)] [(past|over|through|above|beyond|to)] <amount> (on|during|in) (the|a|my) ${HOLD} [(in|after) <duration:after>]`,
    ofRise,
    { unheard: true, examples: ['rising past two thousand on the hold'] },
  ),
  rule(
    `[(the|my)] first ${PULL} ${CAME_TO} <amount:one> [<pause>] [(and|then)] [(the|my)] (second|next|last) [${PULL}] ${CAME_TO} <amount:two> [flat] [[<pause>] [(and|then)] [(the|my)] (third|last|final) [${PULL}] ${CAME_TO} <amount:three> [flat]]`,
    pulls,
    {
      unheard: true,
      examples: [
        'first pull fifteen hundred second pull eight hundred third one four hundred flat',
      ],
    },
  ),
  rule(
    `[(the|my)] (first|second|third|last|final|next) (pull|vacuum|vac|evacuation) ${CAME_TO} <amount:one> [flat]`,
    pulls,
    { unheard: true, examples: ['second pull got down to six hundred'] },
  ),
  // "Third one's at three eighty", behind the others.
  rule(
    `[(and|the|my|then)] [the] (second|third|last|final|next) (one|time|round|go) ${CAME_TO} <amount:one> [flat]`,
    pulls,
    { unheard: true, only: isOfLast('vacuum'), examples: [] },
  ),
  rule(
    `${TEST} [(is|was|at|to)] <amount:one> ${ON_SIDE('(high|low)')} [<pause>] [and] <amount:two> ${ON_SIDE('(low|high)')}`,
    eachSide,
    { unheard: true, examples: ['pressure test three hundred high side one fifty low side'] },
  ),
  rule(
    `(tested|pressure tested|pressurized|leak tested|nitrogen tested) [(it|the system)] [(to|at|with)] <amount:one> ${ON_SIDE('(high|low)')} [<pause>] [and] <amount:two> ${ON_SIDE('(low|high)')}`,
    eachSide,
    {
      unheard: true,
      examples: ['tested to three hundred on the high side and one fifty on the low side'],
    },
  ),
  rule(
    `<amount:one> on the (high|low) side [<pause>] [and] <amount:two> on the (low|high) side [(for|on)] [the] (pressure test|nitrogen test|test|standing test|nitrogen)`,
    eachSide,
    {
      unheard: true,
      examples: ['one fifty on the low side and three hundred on the high side nitrogen test'],
    },
  ),
  rule(
    `[(it|she|we|i|pressure|the pressure)] [(has|is)] (dropped|fell|fallen|went|gone|came|drifted|down|lost) [down] from <amount:one> [down] to <amount:two> [(in|over|after) <duration:after>] on the (nitrogen|nitro|test|pressure test|standing test|standing pressure)`,
    fellTo,
    { unheard: true, examples: ['dropped from two fifty to two forty one on the nitro'] },
  ),
  rule(
    `${TEST} [(has|is)] (dropped|fell|fallen|went|gone|came|drifted|down) [down] from <amount:one> [down] to <amount:two> (in|over|after) <duration:after>`,
    fellTo,
    { unheard: true, examples: ['nitrogen went from two hundred to one ninety six in an hour'] },
  ),
  rule(
    `[the] <quantity> [(is|has)] [been] (held|holding|holds|sat|sitting|stood|standing|stayed|steady) [(rock|dead|good and|right there|perfectly)] [(steady|solid|still|good|tight)] [(for|about|over|a good)] <duration:after> [steady] at <amount>`,
    heldSoLong,
    { unheard: true, examples: ['nitrogen has held rock steady half an hour at one seventy five'] },
  ),
  rule(
    `[the] <tested> (<link>|<loose>) <amount> (overnight|all (night|day|morning|afternoon)|(over|through|all) (the weekend|lunch|the night)|the whole time|since (yesterday|last night|this morning)) ${NOT_LOST}`,
    stood,
    { unheard: true, examples: ['nitrogen held at one fifty overnight not a pound lost'] },
  ),
  rule(
    '[(it|she|he|suction|the suction|low side|the (low side|system|compressor)|i am|we are)] [(is|has)] [(pulled|pulling|running|gone|going|sitting|dropped|sucked|went|been pulled)] [(right|all the way)] [down] (in|into) [a] [(deep|slight|little|bit of a)] vacuum [(on|at) the (low|suction) side] [<pause>] [(of|at|like)] <amount>',
    inVacuum,
    {
      unheard: true,
      examples: ['she is pulled down into a vacuum on the low side four inches'],
    },
  ),
  rule(
    '[(got|had|at|i was at|we were at|down to|pulled|pulled to)] <amount> [<pause>] [(and|then|and then|when|before|but)] [the] [vacuum] pump (quit|died|stopped|locked up|tripped|gave (up|out)|shut (off|down)|is (still|on|running|pulling|done))',
    pumpQuit,
    { unheard: true, examples: ['twenty eight and a half inches then the pump quit'] },
  ),
  rule(
    '[(it|i|we|she)] [(has|have)] (lost|dropped|down|leaked|bled) [(about|only|maybe|another)] <amount> (on|of) [the] (nitrogen|nitro|pressure test|standing test|test pressure) [(in|over|after) <duration:after>]',
    howFar,
    { unheard: true, examples: [] },
  ),
  rule(
    `${TEST} [(is|was|at|to|of)] <amount> [<pause>] [(i|we)] (started|starting|put on|on|start time|begun|began) [(at|it at|is)] (<number:clock>|<clock>) [(am|pm|a m|p m)]`,
    startedAt,
    { unheard: true, examples: ['standing pressure test one fifty psi started at ten fifteen'] },
  ),
  rule(
    `[(it|i|we|and|that)] [(is|was|have|had)] [(started|starting|put on|still|holding|sitting|now|reading)] [(off|out|it|her)] [at] <amount> [(still|now|on it|even)] at (<number:clock>|<clock>) [(am|pm|a m|p m)] [[and] [(the|at the)] same (temp|temperature)]`,
    startedAt,
    { unheard: true, only: isOfLast('testPressure'), examples: [] },
  ),
  rule(
    `[the] <tested> <link> <amount> [now] [<pause>] [(and|but|with)] [(it|the (room|air|kitchen|box|temp|gas)) is] <amount:gas> (in here|in the (room|kitchen|box|cooler)|outside|out here|ambient|up here)`,
    withAir,
    {
      unheard: true,
      examples: ['nitrogen is at one ninety eight now and it is seventy one degrees in here'],
    },
  ),
  rule(
    `${I} (pressured|pressurized|pressure tested|pressured up|pumped up|nitrogen tested) (it|that|them|her|the <part>|the (coil|low side|high side|line set)) [up] [(by itself|alone|on its own|on it is own|separately|separate|only)] [<pause>] [(with|at|to|got)] <amount> [(on it|on there|of nitrogen|in it)]`,
    pressedUp,
    { unheard: true, examples: ['pressured it by itself one eighty on it'] },
  ),
  rule(
    '[(i|we|and|just)] (put|threw) <amount> [of nitrogen] [back] on (the|that) (<part>|(coil|low side|high side|line set|circuit)) [(by itself|alone|for a (leak|pressure) test|to (test|check) [it])]',
    pressedUp,
    { unheard: true, examples: ['put one fifty on the coil'] },
  ),
  rule(
    `${I} (pressured|pressurized|charged|filled|loaded|tested|pumped|pressure tested) [${IT}] [up] with [dry] nitrogen and (a|some) (trace|bit|little|shot|touch|whiff|splash) [gas] [of] [(<refrigerant>|<number:gas>|refrigerant|gas|freon)] [to (sniff|leak check|find|check|search) [(it|the leak|for leaks)] [(out|with)]]`,
    traceTest,
    {
      unheard: true,
      examples: ['pressured up with dry nitrogen and a trace of twenty two to sniff it out'],
    },
  ),
  rule(
    `${I} (evacuated|vacuumed) (her|him|this thing|this one) [(down|out)] [for <duration:after>]`,
    evacuated,
    { unheard: true, examples: ['evacuated her for an hour'] },
  ),
  rule(
    `[(a|the|my|did a|did the)] (triple|double|deep) (evac|evacuation|vacuum) [(is|was|all)] (done|complete|completed|finished|pulled)`,
    evacuated,
    { unheard: true, only: startsClause, examples: ['triple evac done'] },
  ),
  rule(`${I} did (a|the) (triple|double|deep|full) (evac|evacuation|vacuum)`, evacuated, {
    unheard: true,
    examples: ['did a triple evac'],
  }),
  rule(
    `${I} broke (it|her|that|[(the|my|each)] vacuum) [(each time|every time|once|twice)] with [dry] nitrogen [up] to <amount> [(each time|every time|in between|between)]`,
    remark,
    { unheard: true, examples: ['broke it with nitrogen to two pounds each time'] },
  ),
  rule(
    `${I} broke (the|my) vacuum (with|using) [(a little|some|a bit of)] (vapor|gas|refrigerant|freon|<refrigerant>|the charge) [(up|back up)] (to|at) [about] <amount>`,
    suctionAt,
    { unheard: true, examples: ['broke the vacuum with vapor up to ten pounds'] },
  ),
  rule(
    `[(${IT}|compressor|the compressor)] (will not|did not|would not|can not|could not|never) (pump|pumped|pumping|pull|pulled) [${IT}] down (past|below|under|lower than|any lower than|any further than|beyond) <amount>`,
    suctionAt,
    { unheard: true, examples: ['will not pump down past twenty five'] },
  ),
  rule(
    `${I} (pulled|pumped|went|goes|pumps|pulls) [${IT}] down to <amount:one> [<pause>] (and|then|but) [it] (crept|came|climbed|rose|bounced|comes|creeps|climbs|went|jumped|drifted) [(right|all the way|slowly)] back [(up|in)] [to] <amount:two>`,
    downAndBack,
    { unheard: true, examples: ['pulled down to zero and it crept right back up to fifteen'] },
  ),
  rule(
    `[the] (pump down|pumps down|pumped down) [(is|was)] [(good|fine|ok|works|working)] [<pause>] [and] [it] (cuts|cut|shuts|shut|kicks|kicked|goes|went|clicks) (off|out) at <amount>`,
    endsPumpDown,
    { unheard: true, examples: ['pump down is good cuts off at five'] },
  ),
];
