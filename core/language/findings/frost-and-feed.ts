import type { Tags } from '../../grammar/nodes.ts';
import type { PartId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { minutesIn } from '../numbers/durations.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { finding } from './finding-of.ts';
import { amountIn } from '../numbers/measure.ts';
import { reading } from '../readings/reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { equipmentFact, partId, sightGlassId, tagsIn } from '../slots.ts';
import { DIRT } from '../vocabulary/state-names.ts';
import { nothing, remark } from '../plain-means.ts';

const foundAs =
  (state: 'dirty' | 'failed'): Means =>
  (tags, frame) => {
    const part = partId(tags['part']);
    return part === null ? null : { findings: [finding(part, state, frame)] };
  };

/** "Level's at sixty percent" of a recovery tank is its filling, which other rules pass over. */
const unlessTank: Means = (tags, frame) =>
  /\b(?:tank|cylinder|recovery)\b/i.test(frame.wordsOf(frame.span)) ? null : remark(tags, frame);

const LINES: Partial<Record<PartId, QuantityId>> = {
  liquidLine: 'liquidLineTemp',
  suctionLine: 'suctionLineTemp',
  dischargeLine: 'dischargeLineTemp',
};

/** What a line leads through; what is metered into a switch is volts. */
const PIPED: readonly PartId[] = [
  ...(['filterDrier', 'evaporator', 'condenser', 'receiver', 'accumulator'] as const),
  ...(['expansionValve', 'compressor', 'oilSeparator'] as const),
];

const numbersOf = (tags: Tags): readonly string[] => {
  const { value, low, high } = amountIn(tags);
  return [value, low, high].filter((number) => number !== null).map(String);
};

/** "Ninety one going into the drier and seventy eight coming out": of the line that was named. */
const intoAndOut: Means = (tags, frame) => {
  const [entering, leaving] = [tagsIn(tags['in']) ?? {}, tagsIn(tags['out']) ?? {}];
  const through = partId(tagsIn(tags['into'])?.['part']);
  if (through === null || !PIPED.includes(through)) return null;
  const means = (part: PartId): Meaning | null => {
    const quantity = LINES[part] ?? (through === 'filterDrier' ? 'liquidLineTemp' : undefined);
    if (quantity === undefined) return null;
    const readings = [entering, leaving].flatMap(
      (each) => reading(quantity, amountIn(each), frame) ?? [],
    );
    return readings.length === 2 ? { readings } : null;
  };
  const otherwise = { unclaimed: [...numbersOf(entering), ...numbersOf(leaving)] };
  return { ofIt: { means, inSentence: true, otherwise } };
};

/** "Now it's thirty one at ten minutes": of what was read last, as time goes on. */
const asTimeGoes: Means = (tags, frame) => {
  const { lastQuantity } = frame.context;
  const { unit } = amountIn(tags);
  const isGauged = unit === null || unit === 'degrees' || unit === 'psi' || unit === 'pounds';
  if (!isGauged || minutesIn(tagsIn(tags['after'])) === null) return null;
  const isOther = lastQuantity === null || isElectrical(lastQuantity) || WEIGHED.has(lastQuantity);
  const found = isOther ? null : reading(lastQuantity, amountIn(tags), frame);
  return found === null ? { unclaimed: numbersOf(tags) } : { readings: [found] };
};
const WEIGHED: ReadonlySet<QuantityId> = new Set<QuantityId>([
  ...(['refrigerantAdded', 'refrigerantRecovered', 'refrigerantLost', 'cylinderWeight'] as const),
  ...(['refrigerantCharge', 'tareWeight', 'waterCapacity', 'vacuum', 'testPressure'] as const),
]);

const glass: Means = (tags, frame) => {
  const value = sightGlassId(tags['sightGlass']);
  return value === null
    ? null
    : { facts: [{ fact: 'sightGlass', value, words: frame.wordsOf(frame.span) }] };
};

/** A case is as long as it is: no box stands at twelve feet. */
const longCase: Means = (tags, frame) => {
  const fact = equipmentFact(
    { ...tags, equipment: tags['equipment'] ?? 'displayCase' },
    frame.wordsOf(frame.span),
  );
  return fact === null ? null : { facts: [fact] };
};

const opensSentence = (frame: Frame): boolean => frame.span.from <= 1;
const counted: Means = (_tags, frame) => (opensSentence(frame) ? null : {});

const HAS = '(has|has got|is got|have|got|have got) [got]';
const PASSES =
  '[only] [the] [(first|last|top|bottom|front|back|inlet|outlet|lower|upper)] [(<number>|few|couple|couple of)] (pass|passes|tube|tubes|row|rows|bends|u bends|circuit|circuits|foot|feet|inches|inch) [(only|or so|and that is it|of it)]';
const FROST = '(frost|frosted|frosting|ice|iced|iced up|cold|sweat|sweating)';
const ALL_OVER =
  '(evenly|even|across|edge to edge|end to end|top to bottom|wall to wall|all the way (across|up|through|down|to the (end|top|bottom|last pass))|on every pass|full face|clear across)';
const LENGTH = '(foot|footer|ft)';
const OF_A_CASE =
  '(dairy|meat|deli|produce|frozen|frozen food|multi deck|open|coffin|service|beverage|bakery|reach in|seafood|cheese)';

/** "Whole evap's frosted now": fed to its end, and not iced up. */
const frostedAll: Means = (tags, frame) =>
  OF_COIL.includes(partId(tags['part'])) && !/\bic(?:e|ed)\b/i.test(frame.wordsOf(frame.span))
    ? remark(tags, frame)
    : null;

/** A condenser, which a bare coil may be as well, is never frosted. */
const OF_COIL: readonly (PartId | null)[] = ['evaporator', 'condenser'];

const isolated: Means = (_tags, frame) => ({
  work: [{ did: 'isolate', part: 'disconnect', words: frame.wordsOf(frame.span) }],
});

/** How a coil is fed and frosts, and what is told of cases, racks and ice machines. */
export const FEED_RULES: readonly Rule[] = [
  rule(
    `<the> <part> (${HAS}|is (getting|showing|building|making|carrying)) (a|some) [(nice|good|light|thin)] [(and|nice|good|light|thin|white)] (even|light|thin|normal|full|uniform) [(coat|coating|layer) of] frost [(on it|across it|all over|all the way across|on the fins|top to bottom)]`,
    remark,
    { unheard: true, examples: ['coil has a nice even frost on it'] },
  ),
  rule(
    `<the> <part> (${HAS}|is|is only|only has) [only] ${FROST} [only] [(on|over|for|through)] ${PASSES}`,
    remark,
    { examples: ['evaporator has frost on the first two passes only'] },
  ),
  rule(
    `[(the|my|~~now|~~now the)] (whole|entire) <part> (is|was|${HAS}) [(now|all|nice and|a|an)] ${FROST} [(now|again|over)]`,
    frostedAll,
    { unheard: true, examples: ['whole evaporator is frosted now'] },
  ),
  rule(
    `<the> <part> [(is|was|${HAS}|looks)] [(now|all|nice and|a|an|a nice|an even|a good)] [even] ${FROST} [(pattern|up|on it)] [(nice and|all|real|pretty)] ${ALL_OVER} [(now|again)]`,
    frostedAll,
    { unheard: true, examples: ['evaporator is frosted all the way across'] },
  ),
  rule(
    `[(there is|i see|i have|only)] ${FROST} [only] (on|over|for|through) [only] the (first|last|top|bottom|inlet|outlet) [(<number>|few|couple|couple of)] (pass|passes|tube|tubes|row|rows|bends|u bends|circuit|circuits) [only]`,
    remark,
    { examples: ['frost on the first two passes only'] },
  ),
  rule(
    '((<the> <part>|[the] valve) (is|was|opens|opened|sits|stepping|steps) [(at|only|only at|sitting at|up to|down to|about|now at|still at|running at|to)] [about] <number> (percent|steps) [open] [now]|it (is|was|opens|sits) [(at|only at|up to|down to)] <number> (percent|steps) open [now])',
    remark,
    { examples: ['the valve is at forty percent now'] },
  ),
  rule(
    '[the] (receiver|rack|level|liquid level|reservoir) [(level|is level|receiver)] (is|at|reads|shows) [(at|about|only|down to)] [about] <number> percent [(level|full)] [(in|on) the (receiver|rack)]',
    unlessTank,
    { examples: ['rack is at fifty five percent'] },
  ),
  rule(
    '[(so|and|but|looks like)] (it|she|that|<the> (coil|evaporator|valve|evap|case|txv|eev)) is [(just|really|still)] (starving|starved|flooding|flooded|overfeeding|underfeeding) [(out|it|the coil|for refrigerant)]',
    remark,
    { examples: ['so it is starving'] },
  ),
  rule(
    '[(it is|i have|i have got)] <amount:in> [(going|coming)] (in|into|in to) <the> <part:into> [(and|but|<pause>)] [(it is|i have)] <amount:out> [(going|coming)] (out|off|leaving|out of it)',
    intoAndOut,
    { examples: [] },
  ),
  rule(
    '[(and|so|then)] (now (it is|it|we are)|it is|it is now|we are|down|up) [(at|to|down to|up to)] <amount> (at|after|in) [(about|like)] <duration:after> [in]',
    asTimeGoes,
    { examples: ['now it is thirty one at ten minutes'] },
  ),
  rule(
    '[the] [sight] glass (ahead of|before|after|at|by|in front of|behind|on|leaving) <the> (valve|<part>|case|rack) <sightGlass>',
    glass,
    { examples: ['sight glass ahead of the valve is flashing'] },
  ),
  rule('(i count|i see|that is|there are|all) <number> [of (them|those)]', counted, {
    examples: [],
  }),
  rule(
    `<the> <part> ${HAS} (a|some) [(bad|worn|noisy|shot|dry|loose|bent|broken|cracked|chipped)] (bearing|bearings|bushing|blade|shaft|motor)`,
    foundAs('failed'),
    { examples: ['condenser fan has got a bad bearing'] },
  ),
  rule(
    `<the> <part> ${HAS} [(about|maybe|like|at least)] [(a|an)] [(<number>|full|good|solid|thick|whole|heavy|couple)] [of an] [(inch|inches|layer|coat|mat|blanket|coating|wad)] of ${DIRT} [(on|in|all over|across|over|caked on|built up on)] [(it|the face|the fins)]`,
    foundAs('dirty'),
    { examples: ['condenser has got about a half inch of lint on it'] },
  ),
  rule(
    `((it is|this is|case is|<the> case is|that is|got) [(a|an)] <number> ${LENGTH} [${OF_A_CASE}] [(case|island|display)]|[(a|an)] <number> ${LENGTH} (${OF_A_CASE} [(case|island|display)]|case|island|display))`,
    longCase,
    { examples: ['case is a twelve foot dairy'] },
  ),
  rule(
    '[(i am|i|we|just|ok)] (putting|put|switched|switching|flipped|flipping|set|turned|turning) (it|her|the machine|the switch) [back] (in|into|to|on) [(the|a)] (freeze|harvest|ice|ice mode|clean|wash|run|auto|freeze mode|harvest mode|clean cycle) [(now|again|mode|cycle|position)]',
    remark,
    { examples: ['i am putting it back in freeze'] },
  ),
  rule(
    '<the> <part> (reads|is reading|is|shows|ohms out at|checks at) <number> (k|kilohms|kilo ohms|k ohms|thousand ohms) at <number:temp> [degrees]',
    remark,
    { examples: ['sensor reads ten k at seventy seven'] },
  ),
  rule('(air|water) cooled', (_tags, frame) => {
    if (frame.span.from !== 0 || !frame.endsAtPause) return null;
    const words = frame.wordsOf(frame.span);
    const value = /^water/i.test(words) ? 'waterCooled' : 'airCooled';
    return { facts: [{ fact: 'condenser', value, words }] };
  }),
  rule(
    '[(i|we|just|i have|ok)] (killed|cut|shut off|turned off|flipped off|threw|opened|pulled) (the|my) (switch|breaker|toggle|toggle switch|power switch|main|main switch|service switch|disconnect) [off]',
    isolated,
    { examples: ['killed the switch'] },
  ),
  rule(
    '[(i|we|just|i have|ok)] ((turned|shut|switched|flipped|pulled|knocked) the (disconnect|isolator|main switch|service switch|main|breaker) (off|out|open)|(killed|cut|shut off|turned off|switched off|opened|pulled|locked [off]) the isolator) [[(down|over)] at the (wall|panel|board|box|unit)]',
    isolated,
    { unheard: true, examples: ['turned the isolator off at the wall'] },
  ),
  rule(
    '[the] isolator is (off|out|pulled|locked|locked (off|out)) [<pause>] [[and] (locked|tagged|locked (off|out)|tagged (off|out)|locked and tagged)]',
    isolated,
    { unheard: true, examples: ['isolator is off and locked'] },
  ),
  rule(
    '(strap|straps|clip|clamp) (is|are) (rusted|gone|broke|broken|missing|rotted) [off]',
    nothing,
  ),
];
