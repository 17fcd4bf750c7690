import { capBeside, nameGoesOn } from '../findings/part-lists.ts';
import { startsClause, wordBefore } from '../words/clause-start.ts';
import type { PartId } from '../../terms/names.ts';
import { settledFan } from '../words/fans.ts';
import { timeTold } from '../facts/time-told.ts';
import { finding } from '../findings/finding-of.ts';
import { amountIn } from '../numbers/measure.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, stateId, tagsIn } from '../slots.ts';
import type { Tags } from '../../grammar/nodes.ts';
import type { Work } from '../utterance.ts';
import { remark } from '../plain-means.ts';

const replacedIn = (tags: Tags, frame: Frame): readonly Work[] => {
  const words = frame.wordsOf(frame.span);
  const slots = ['part', 'second', 'third', 'fourth'];
  const parts = slots.map((slot) =>
    partId(slot === 'part' ? tags[slot] : tagsIn(tags[slot])?.['part']),
  );
  return capBeside(parts, words).flatMap((part) =>
    part === null ? [] : [{ did: 'replace', part: settledFan(part, frame.context), words }],
  );
};

/** "New compressor, drier and contactor": what was fitted, told as a list; one alone may be what is wanted. */
const newOnes: Means = (tags, frame) => {
  // "They need a new compressor, drier and contactor": nothing was put in.
  if (NEEDED.test(wordBefore(frame))) return null;
  const work = replacedIn(tags, frame);
  return frame.endsAtPause && work.length > 1 ? { work } : null;
};

/** What was named as new; `null` where it is wanted. */
export const replacedPart: Means = (tags, frame) =>
  NEEDED.test(wordBefore(frame)) ? null : { work: replacedIn(tags, frame) };

/** "New coil on the solenoid" is on; one that is named alone may be what is wanted, until there is work on the unit. */
const newOnIt: Means = (tags, frame) => {
  const isOn = frame.context.workBegun || ON_IT.test(frame.wordsOf(frame.span));
  if (NEEDED.test(wordBefore(frame)) || !isOn) return null;
  const work = replacedIn(tags, frame);
  return nameGoesOn(frame) ? null : { work };
};
const ON_IT = /\w (?:on|in) /i;
const NEEDED =
  /^(?:needs?|wants?|requires?|recommend|quote|order|get|for|them|him|her|price|want|buy|bring|without|no)$/i;

/** "Put a new one in with a drier and a contactor": of the part that was spoken of, and the others. */
const newOneWith: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const others = replacedIn(tags, frame);
  const means = (part: PartId): Meaning => ({
    work: [{ did: 'replace', part: settledFan(part, frame.context), words }, ...others],
  });
  return { ofIt: { means, inSentence: false, otherwise: { work: others } } };
};

/** What pipes lead through: their "outlet" is no electric one. */
const PIPED: readonly PartId[] = [
  ...(['filterDrier', 'evaporator', 'condenser', 'receiver', 'accumulator'] as const),
  ...(['expansionValve', 'capillaryTube', 'liquidLineSolenoid', 'oilSeparator'] as const),
  ...(['compressor', 'kingValve', 'serviceValve', 'evaporatorPressureRegulator'] as const),
];

/** "Drier's sweating, outlet's cold": of the part that was told of in the same breath. */
const endOfThat: Means = (tags, frame) => {
  const state = stateId(tags['state']);
  if (state === null || state === 'running') return null;
  const isThermal = ['cold', 'warm', 'iced', 'wet', 'oily'].includes(state);
  const isInlet = /\binlet\b/i.test(frame.wordsOf(frame.span));
  const plug: Meaning = { findings: [finding('plug', state, frame)] };
  const otherwise = isThermal || isInlet ? remark(tags, frame) : plug;
  const means = (part: PartId): Meaning | null =>
    PIPED.includes(part) ? { findings: [finding(part, state, frame)] } : null;
  return { ofIt: { means, inSentence: true, otherwise: otherwise ?? plug } };
};

/** Regulators that hold a pressure that no quantity of ours is: kept as told. */
const setOf: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const { unit } = amountIn(tags);
  const isPressure = unit === null || unit === 'psi' || unit === 'pounds' || unit === 'bar';
  return part === 'evaporatorPressureRegulator' && isPressure ? remark(tags, frame) : null;
};

/** "Old compressor's out": it stands in nobody's way, and is not dead; "… and the new one's in" puts another in its place. */
const oldIsOut: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part === null) return null;
  const words = frame.wordsOf(frame.span);
  const did = /\bnew one\b/i.test(words) ? 'replace' : 'remove';
  return { work: [{ did, part: settledFan(part, frame.context), words }] };
};

/** Stems that are turned by turns are the expansion valve's, unless another valve was spoken of. */
const turned: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const adjusted = (part: PartId): Meaning => ({ work: [{ did: 'adjust', part, words }] });
  const means = (part: PartId): Meaning | null => (STEMS.includes(part) ? adjusted(part) : null);
  return { ofIt: { means, inSentence: false, otherwise: adjusted('expansionValve') } };
};
const STEMS: readonly PartId[] = [
  ...(['evaporatorPressureRegulator', 'headPressureValve', 'waterValve', 'kingValve'] as const),
  ...(['serviceValve', 'suctionServiceValve', 'dischargeServiceValve'] as const),
];

const repaired: Means = (tags, frame) => ({
  work: [{ did: 'repair', part: partId(tags['part']), words: frame.wordsOf(frame.span) }],
});

const toClearGlass: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return {
    facts: [{ fact: 'sightGlass', value: 'clear', words }],
    work: [{ did: 'add', part: null, words }],
  };
};

const TURNS =
  '(half|a half|quarter|a quarter|three quarters|a full|one|two|another half|another quarter) [(of a|a|of)] (turn|turns)';
const ARTICLE = '[(a|the|an|~~(one|two|three|four|a couple|a couple of|both))] [(new|brand new)]';
const AND = '(and|<pause> [and])';
const MORE = `${AND} ${ARTICLE} <part:second> [${AND} ${ARTICLE} <part:third> [${AND} ${ARTICLE} <part:fourth>]] [~~([<pause>] [(a|it is a)] <size>)]`;
const TOOK =
  '(took|takes|was|is|ran|runs|lasted|lasts|is running|is taking|came in at|is at) [(about|only|just|like|at|down to|up to)]';
const MINUTES = '(minutes|minute)';
const CYCLE =
  '([(last|first|each|every|next)] (freeze|harvest|batch) [(time|cycle)]|ice (time|cycle)|cycle time)';

/** What was fitted and set, and figures that no instrument of ours shows: word for word. */
export const WORK_TOLD_RULES: readonly Rule[] = [
  rule(
    `([(it|this|that|this one|the unit)] needed (a|another) [new] <part> [<pause>] [so] (i|we) [(went ahead and|just)] (put one in|put it in|put a new one in|replaced it|changed it [out]|swapped it [out]|got one in)|[(i|we)] [(am|was|just|finally)] (finished|finished up|got done|just finished) (putting in|installing|putting on) <the> [new] <part>)`,
    (tags, frame) => (nameGoesOn(frame) ? null : { work: replacedIn(tags, frame) }),
    { unheard: true, examples: ['it needed a new contactor so i put one in'] },
  ),
  rule(`[(so|and|that is|put in|with)] [a] (new|brand new) <part> ${MORE}`, newOnes, {
    examples: ['new compressor and contactor'],
  }),
  rule('[(so|and|that is|put in|with)] [a] (new|brand new) <part>', newOnIt, {
    apart: true,
    unheard: true,
    examples: ['new coil on the solenoid'],
  }),
  rule(
    `[(so|and|that is|put in|with)] [a] (new|brand new) <part> <part:second> and <part:third>`,
    newOnes,
    {
      examples: ['new compressor dryer and contactor'],
    },
  ),
  rule(
    `[(i|we|and|then)] ((put|stuck|installed|brazed|dropped|sweated|got) [in] [(a|the)] (new one|other one|replacement|another one) [in]) [along] with ${ARTICLE} <part> [[<pause>] and ${ARTICLE} <part:second>] [too]`,
    newOneWith,
    { examples: [] },
  ),
  rule(
    `[(i|we|just|then|and|so)] (cranked|opened|closed|turned|backed|ran|screwed|bumped|gave|cracked|cut|eased|tweaked|choked|throttled) <the> (valve|stem|txv|expansion valve|txv stem|valve stem|superheat stem) [(in|out|open|closed|up|down|off|back)] [(about|another|by|like|maybe)] [(a|an)] ${TURNS} [(in|out|open|closed|more|down|up|clockwise|counterclockwise)]`,
    turned,
    { examples: ['cranked the valve in half a turn'] },
  ),
  rule(
    '[(i|we|just)] (brazed|repaired|fixed|patched|soldered|welded|sealed) [up] (the|that|a) (rub out|rub through|pinhole|rubbed spot|chafe|worn spot) [(on|in|at) <the> <part>]',
    repaired,
    { examples: ['brazed the rub out on the suction line'] },
  ),
  rule(
    '[(i|we)] [(just|have)] (charged|filled|topped|gassed|trickled|fed|added|dribbled|bled|put) [in] [(it|her|the system|gas|refrigerant|liquid|freon|some|a little)] [(gas|in)] [(up|off)] (to|until|till) (a clear|the|a full|i had a clear) [sight] glass [(cleared [up]|was clear|is clear|went (solid|clear|full)|filled [up]|was (full|solid)|(quit|stopped) (bubbling|flashing))]',
    toClearGlass,
    { examples: ['charged it to a clear glass'] },
  ),
  rule(
    '[the] old <part> is out [[and] [the] new one is (in [place]|set|sitting (there|in there)|mounted)]',
    oldIsOut,
    {
      unheard: true,
      examples: ['old compressor is out', 'old dryer is out and the new one is in'],
    },
  ),
  rule(
    '[the] manual reset [button] (is|was|had) [(popped|tripped|out|popped out|kicked out|up)]',
    remark,
    { examples: ['manual reset was popped'] },
  ),
  rule(
    '[the] (outlet|inlet|outlet side|inlet side) (is|feels|was|are|looks) <very> <state>',
    endOfThat,
    {
      examples: [],
    },
  ),
  rule(
    '<the> <part> (is|was) [(set|holding|sitting|holding steady)] (at|to|for|on) <amount>',
    setOf,
    {
      examples: ['epr is set at thirty eight pounds'],
    },
  ),
  rule('[the] (auto|automatic) (reset|resets) [(is|at|is at|of)] <amount>', remark, {
    examples: ['auto reset at two ninety'],
  }),
  rule(
    `[(the|my|a)] ${CYCLE} (${TOOK} <number> [${MINUTES}]|<number> ${MINUTES}) [[<pause>] [and] [the] ${CYCLE} [${TOOK}] <number:other> [${MINUTES}]]`,
    (tags, frame) =>
      /\b(?:psi|pounds|degrees)\b/i.test(frame.wordsOf(frame.span)) ? null : remark(tags, frame),
    {
      examples: [
        'freeze took twenty two minutes harvest was two and a half',
        'freeze time is eighteen minutes',
      ],
    },
  ),
  rule(
    `[(a|with a|it is a)] <number> minute (freeze|harvest) [[<pause>] [(and|with)] [a] <number:other> minute (freeze|harvest)]`,
    remark,
    { examples: ['twenty minute freeze and a two minute harvest'] },
  ),
  rule(
    '[the] oil [in it] (is|was|looks) <very> (black|burnt|burned|dark|acidic|milky|brown|bad) [<pause>] [(and|it)] [it] (smells|stinks|smelled) [(like|of)] [really] (burnt|burned|bad|terrible|awful|acid|a burnout|burnt up)',
    remark,
    { examples: ['oil is black smells burnt'] },
  ),
  rule(
    '(<the> (<part>|motor)|~~(it|this|that)) is [(a|an|rated)] [~~((semi|fully) hermetic|hermetic|semi|scroll|recip|reciprocating|screw|rotary|discus)] <number> (horse|horsepower|hp) [motor] [<pause>] [[(and|at|it is|runs)] <number:speed> (rpm|r p m)]',
    remark,
    { examples: ['condenser fan motor is a one tenth horse fifteen fifty rpm'] },
  ),
  rule(
    '[the] (stepper|eev|e e v|electronic expansion valve|valve|stepper motor) [(motor|winding|windings|coil|coils)] [(is|are)] (ohms|ohm|ohmed|reads|read|ohms out|ohmed out|check|checks|measures) [at] <number> (and|by) <number:other> [ohms]',
    (_tags, frame) => ({ remarks: [frame.wordsOf(frame.span)], names: 'expansionValve' }),
    { examples: ['stepper ohms out fifty two and fifty two'] },
  ),
  rule(
    '[the] [(time|defrost)] (clock|timer) (says|shows|reads|is at|has it) [(it is|at)] [(about|like)] <number> [(in the (morning|afternoon|evening)|at night|am|pm|a m|p m|oclock)] [[<pause>] (and|but|when) it is [(really|nearly|almost|about|actually|only)] <number:now> [(oclock|in the (morning|afternoon)|now|am|pm|a m|p m)]]',
    remark,
    {
      unheard: true,
      only: startsClause,
      examples: ['clock says two in the morning and it is nearly ten'],
    },
  ),
  rule(
    '[(i|we)] (have been|am|are|been) [(just|still)] (steaming|thawing|defrosting|melting) [(down|out|off)] <the> (coil|evaporator|ice) [(off|down)] [(for|about)] [<duration>] [(now|so far)]',
    (_tags, frame) => {
      const words = frame.wordsOf(frame.span);
      return { work: [{ did: 'defrost', part: null, words }], remarks: [words] };
    },
    { unheard: true, examples: ['i have been steaming the coil for half an hour'] },
  ),
  rule('[(it is|runs|runs at|rated|at)] <number> (rpm|r p m)', remark, {
    examples: ['fifteen fifty rpm'],
  }),
  rule(
    '[(it was|about|that is|put me down for|i have got|call it|add|plus|bill|~~(put down|log|charge|another))] <duration> [of] [~~(total|all told|in all|altogether)] (on site|on the job|labor|drive time|travel [time]|windshield time|on this one) [(each way|both ways|one way|round trip|total)]',
    timeTold,
    { examples: ['two hours on site'] },
  ),
];
