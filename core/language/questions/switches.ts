import type { AnswerableId, QuantityId } from '../../terms/quantities.ts';
import { heardRule, type Means, type Rule, rule } from '../rule.ts';
import { placeId } from '../slots.ts';
import { aboutIn, ask, MY } from './asking.ts';

/** How near a pressure is to the control that watches it. */
const CUTOUT_OF: Partial<Record<AnswerableId, QuantityId>> = {
  headPressure: 'highCutoutPressure',
  condensingTemp: 'highCutoutPressure',
  suctionPressure: 'lowCutoutPressure',
};

const margin: Means = (tags, frame) => {
  const named = aboutIn(tags) ?? frame.context.lastQuantity ?? 'headPressure';
  return ask({ ask: 'margin', about: CUTOUT_OF[named] ?? named });
};

const marginOf =
  (quantity: QuantityId): Means =>
  () =>
    ask({ ask: 'margin', about: quantity });

/** Of what was last measured at, where the switch is not named; else which one is asked. */
const lastSwitchOpen: Means = (_tags, { context }) =>
  ask({ ask: 'switch', about: context.lastPlace });

/** "Is it open?" may be of a door: only of what a meter was put at. */
const placeOfLast: Means = (tags, frame) =>
  frame.context.lastPlace === null ? null : lastSwitchOpen(tags, frame);

const SIDES = [
  ['(high [(pressure|side|head)]|high head)', 'highCutoutPressure'],
  ['(low [(pressure|side)]|suction)', 'lowCutoutPressure'],
] as const;
const ACTS = '(trips|opens|cuts out|kicks out|shuts it down|goes|trip|open)';
const WE = '(am i|are we|is it|is that)';

const GOES =
  '([(the|my|this)] <asked>|this [(thing|unit|one|system|machine)]|it|she|i|we|the (unit|system|pressure|thing))';
const CUTS_OUT =
  '((cut|cuts|cutting|trip|trips|tripping|kick|kicks|kicking|go|goes|going|open|opens|opening|shut|shuts|shutting|pop|pops|drop|drops|lock|locks) [(it|me|us)] [(out|off|down|open)])';

/** How high it may go is told by the control that would stop it. */
const highestBefore: Means = (tags, frame) => {
  const named = aboutIn(tags);
  const about = named === null ? 'highCutoutPressure' : CUTOUT_OF[named];
  return about === undefined || !frame.endsAtPause ? null : ask({ ask: 'margin', about });
};

/** How near the control of a side is that is named. */
const marginsOfSide = SIDES.flatMap(([side, quantity]): readonly Rule[] => {
  const CONTROL = `(${side} (cut out|switch|control|limit|trip [point]|cut off))`;
  return [
    rule(
      `how (close|near|far) [(${WE}|i am|we are)] [(getting|coming)] (to|from|off|away from|above|below|over|under) [the] (${CONTROL}|(tripping|cutting out|opening) [(on|the)] [the] (${CONTROL}|${side})) [(${WE}|i am|we are)]`,
      marginOf(quantity),
    ),
    rule(
      `(how (close|near|far) [(${WE}|i am|we are)]|(am i|are we|is it) [getting] (close|near)) [(getting|coming)] (to|from|off) (kicking|going|dropping|shutting|popping|cutting|tripping) (out|off) [(on|the)] [the] (${CONTROL}|${side}) [(${WE}|i am|we are)]`,
      marginOf(quantity),
      { unheard: true },
    ),
    rule(
      `how (close|near|far) (to|from|off) [the] ${CONTROL} (${WE}|i am|we are)`,
      marginOf(quantity),
    ),
    rule(
      `(am i|are we|is it) [getting] (close|near) to ([the] ${CONTROL}|(tripping|cutting out|opening) (on|the) [the] (${CONTROL}|${side}))`,
      marginOf(quantity),
    ),
    rule(
      `how (much [(room|margin|more|further|farther|higher)]|many (psi|pounds)|far) [(is there|do i have|is left|have i got)] (before|until|till|to) ([the] ${CONTROL} [${ACTS}]|(it|she|that) (${ACTS}|shuts down) [on] [the] (${CONTROL}|${side}))`,
      marginOf(quantity),
    ),
    rule(
      `((am i|are we|is it) (going to|about to)|will (i|it|we)) (trip|cut out|kick out|go off|go out) [(on|the)] [the] (${CONTROL}|${side})`,
      marginOf(quantity),
    ),
    rule(
      `how (close|near|far) is ${MY} <asked> (to|from|off) [the] ${CONTROL}`,
      marginOf(quantity),
    ),
    rule(
      `how much (margin|room|headroom) [(is there|is left|do i have|have i got)] (on|to) [the] ${side}`,
      marginOf(quantity),
    ),
    rule(
      `[(what is|what is my|the|my|how much)] (margin|room|headroom) (to|on|before) [the] ${CONTROL}`,
      marginOf(quantity),
    ),
  ];
});

const switchOpen: Means = (tags) => {
  const place = placeId(tags['place']);
  return place === null ? null : ask({ ask: 'switch', about: place });
};

/** How near a pressure is to the control that watches it, and whether that control is open. */
export const SWITCH_QUESTIONS: readonly Rule[] = [
  heardRule('how close is [(my|the)] <side> to [the] cut out', margin, {
    examples: ['how close is head to the cut out'],
  }),
  rule(
    `how (close|~near) is ${MY} <asked> to [the] (cut out|~cutting out|~tripping|~switch|~limit|~high limit|~high pressure (cut out|switch|control)|~low pressure (cut out|switch|control)|~trip [point])`,
    margin,
    {
      examples: ['how close is head to tripping'],
    },
  ),
  rule(
    'how (close|near) (am i|are we|is it|is that|i am) [(getting|coming)] to [the] [high] [pressure] (cut out|cutting out|tripping|switch|limit|trip)',
    margin,
    { examples: ['how close am i to the cut out'] },
  ),
  rule(
    `how (far|close) (is|am i|are we) [${MY} <asked>] (from|to|off) [the] [high] [pressure] (cut out|cutting out|tripping|limit)`,
    margin,
    {
      examples: ['how far is head from the cut out'],
    },
  ),
  rule(
    'how much (room|margin) (is there|do i have|is left|have i got) [(to|before|until|on)] [the] [high] [pressure] [(cut out|it trips|tripping|it cuts out|limit)]',
    margin,
    { examples: ['how much room do i have before it trips'] },
  ),
  rule(
    '[(the|this|that|my)] <place> <pause> (is|was) it (open|closed|tripped|made|making|open or closed|closed or open|stuck|pulled in)',
    switchOpen,
    { examples: [] },
  ),
  heardRule(
    'is [the] <place> (open|~closed|~tripped|~open or closed|~making|~stuck open|~made|~bad)',
    switchOpen,
    {
      examples: ['is the high pressure switch open'],
    },
  ),
  rule(
    `(is|are) ${MY} <asked> [(getting|pretty|too|really)] (close|near) to [the] (cut out|cutting out|tripping|switch|limit|trip [point]|cut off)`,
    margin,
    { unheard: true, examples: ['is head close to the cut out'] },
  ),
  ...marginsOfSide,
  rule(
    `((what is|is there) [the] (highest|most|max|maximum|furthest) [(pressure|head|head pressure)]|how (high|far|much higher|much further)) [that] ((can|could|will|would) ${GOES}|${GOES} (can|could|will|would)) [(safely|still|really)] (go|get|run|climb|hit|see|take|handle|reach|rise|stand) [up] [to] [there] (before|until|till|without) ([(it|she|the switch|[the] high [(pressure|side|head)] (switch|control|cut out)|i|we|that|something)] ${CUTS_OUT})`,
    highestBefore,
    { unheard: true, examples: ['what is the highest this thing can go before it cuts out'] },
  ),
  rule(
    'how (many (psi|pounds|degrees)|much (more|further|farther|room|higher)|far) [(do i have|have i got|is there|is left|left)] (till|until|before|to) (it|she|that) (trips|cuts out|opens|kicks out|goes out|shuts off|shuts down)',
    margin,
    { examples: ['how many psi till it trips'] },
  ),
  rule('((am i|are we|is it) (going to|about to)|will (i|it)) (trip|cut out|kick out)', margin, {
    examples: ['am i about to trip'],
  }),
  rule('how (close|near|far) (to|from) [the] cut out (am i|are we|is it)', margin, {
    examples: ['how far from the cut out am i'],
  }),
  rule(
    '(am i|are we|is it) [getting] (close|near) to (tripping|cutting out|[the] cut out)',
    margin,
    {
      examples: ['am i close to tripping'],
    },
  ),
  rule(
    '[(what is my|what is the|the)] (margin|headroom) [(to [the] cut out|to tripping)]',
    margin,
    {
      alone: true,
      examples: ['what is my margin'],
    },
  ),
  rule('is (that|this|the) (switch|control) (open|closed|tripped|open or closed)', lastSwitchOpen),
  rule(
    '(tell me|let me know|can you tell|do you know|any idea|i wonder) (if|whether) <the> <place> is [(still|any)] (open|closed|tripped|good|bad|ok|working|stuck|made|open or closed)',
    switchOpen,
    { examples: ['tell me if the contactor is open'] },
  ),
  rule('is it (open|closed|tripped|open or closed)', placeOfLast, { alone: true }),
  rule(
    '(does that mean|is that telling me|would that mean|do you think|are you saying|is it that) [that] [the] <place> is (open|closed|tripped|bad)',
    switchOpen,
    { examples: ['does that mean the high pressure switch is open'] },
  ),
  rule(
    'is (my|this|that|our) <place> (open|closed|tripped|open or closed|stuck|stuck open|stuck closed|bad|good|making|made)',
    switchOpen,
    {
      examples: ['is my contactor closed'],
    },
  ),
  rule(
    'is [the] <place> (good|stuck|stuck closed|ok|working|pulled in|pulling in|closed or open|making contact|letting power through|passing power)',
    switchOpen,
    {
      examples: ['is the contactor pulled in'],
    },
  ),
  rule(
    '(did [the] <place> (open|trip|cut out)|has [the] <place> (opened|tripped)|which way is [the] <place>)',
    switchOpen,
    { examples: ['did the low pressure switch open'] },
  ),
];
