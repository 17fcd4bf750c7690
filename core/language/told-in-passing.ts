import type { PartId, WorkKindId } from '../terms/names.ts';
import { type Means, type Rule, rule } from './rule.ts';

const nothing: Means = () => ({});
const remark: Means = (_tags, frame) => ({ remarks: [frame.wordsOf(frame.span)] });
const complaint: Means = (_tags, frame) => ({ memos: [frame.wordsOf(frame.span)] });

const doing =
  (did: WorkKindId, part: PartId | null): Means =>
  (_tags, frame) => ({ work: [{ did, part, words: frame.wordsOf(frame.span) }] });

/** What was looked for and not found, and the looking. */
const checkedClear: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return { work: [{ did: 'leakCheck', part: null, words }], remarks: [words] };
};

const EVERYTHING =
  '(it|everything|all of it|all the (joints|fittings|flares)|every joint|the whole thing|it all|all my joints|every fitting)';
const NONE =
  '((no|not a|zero|not one) (bubbles|bubble|hits|hit|foam)|no leaks (at all|on anything|on any of it|on any of them)) [(anywhere|at all|on anything|on any of it|showing|nowhere|on any of them)]';
const NOW = '[(now|here|right now|next|real quick)]';
const I = '[(i am|i will|i|we are|going to|i am going to|let me|about to|time to|and|then|now)]';

/** Steps that are told as they are taken, and what is said of the job in passing. */
export const PASSING_RULES: readonly Rule[] = [
  rule(
    `[(i|we|just|i have|have)] (soaped|bubbled|sprayed|sniffed|checked|leak checked|went over|soaped up) ${EVERYTHING} [(down|up|twice|again)] [<pause>] [(and|there is|i have|i see|got)] ${NONE}`,
    checkedClear,
    { examples: ['soaped everything no bubbles anywhere'] },
  ),
  rule(
    '(no|not any|zero) bubbles (anywhere|at all|on (it|them|anything|any of (it|them)|the joints|any joint)|at (the|any) (joint|joints|flare|flares|fitting|fittings))',
    remark,
    { examples: ['no bubbles anywhere'] },
  ),
  rule(
    `[(i am|alright|ok)] (powering|firing|turning|kicking|bringing|switching) (it|her|this thing|the unit) (back up|back on|up|on)`,
    doing('restore', 'disconnect'),
    { examples: ['powering it back up'] },
  ),
  rule(`[(i|i have|just|ok)] killed it`, doing('isolate', 'disconnect'), {
    examples: ['killed it'],
  }),
  rule(
    `[(i am|just)] (pulling|taking|popping) (the|my|this) (panel|cover|front cover|access panel) [off] ${NOW}`,
    doing('remove', 'panel'),
    { examples: ['pulling the panel now'] },
  ),
  rule(
    '[(i|we|just|i have)] (turned|turn|advanced|rolled|cranked|dialed|spun|ran|moved) (it|her|the (dial|timer|clock|knob|time clock)) [(through|around|over|by hand|manually)] [by hand] (in|into|to|in to) defrost',
    doing('defrost', null),
    { examples: ['turned the dial by hand into defrost'] },
  ),
  rule(
    '[(i|we|just|i have)] (cut|recut|trimmed) (the|that) (flare|old flare|line|tubing) [(back|off)] [(and|<pause> [and]) (made|put|flared|did|ran) (a new one|a new flare|it again|it over)]',
    doing('repair', 'joint'),
    { examples: ['cut the flare back and made a new one'] },
  ),
  rule(
    '[(i|we|just|i have)] (reflared|re flared|remade|redid) (it|that|the (flare|joint|fitting|connection))',
    doing('repair', 'joint'),
    { examples: ['reflared it'] },
  ),
  rule(
    `${I} (pumping|pump) (it|her|the system|the unit|this thing|everything) down [(to|down to) <amount>] ${NOW}`,
    nothing,
    { examples: ['pumping it down to zero'] },
  ),
  rule(
    `${I} (bleed|bleeding|blow|blowing|let|letting) (it|the nitrogen|the nitro|that) (off|down|out|go) [(and|then) (hook|put|get|hooking|pull|throw) [up] (the|my) [vacuum] pump [(up|on|on it)]]`,
    nothing,
    { examples: ['bleed it off and hook up the pump'] },
  ),
  rule(
    `${I} (hook|hooking|hooked|put|putting|get|getting) [up] (the|my) [(vacuum|recovery)] (pump|machine) [(up|on|on it)] ${NOW}`,
    nothing,
    { examples: ['hooking up the vacuum pump'] },
  ),
  rule(
    '[(the|my)] [vacuum] pump is (on|running|going|hooked up|on it) <pause> [(with|it has|got|changed)] [(fresh|new|clean|the)] oil [(is (fresh|clean|new))]',
    nothing,
    { examples: [] },
  ),
  rule(
    `${I} (ohming|metering|checking|testing|megging|amping|reading|tracing) (<the> <part>|<the> windings|it|them) [(out|now|up)] ${NOW}`,
    nothing,
    { examples: ['ohming the heater out now'] },
  ),
  rule(
    '[(and|so|but)] [(it|she|<the> (unit|box|coil|freezer)|this thing)] [(is|has been|was)] not (defrosting|going into defrost|coming out of defrost|terminating)',
    remark,
    { examples: ['so it is not defrosting'] },
  ),
  rule(
    `<who> (has|have|is|are) been (chipping|knocking|beating|resetting|unplugging|kicking|flipping|adding|topping|turning|running|cranking|propping|hosing|cleaning|using|scraping) <clause>`,
    complaint,
    { examples: ['customer has been chipping ice off the evap all week'] },
  ),
  rule(
    '[(it is|set for|set at|it is set for|runs|it runs|it does|does)] <number> [defrosts] (a|per) day [[<pause>] (at|for|of|with|and)] [[<pause>] <duration> [(fail safe|failsafe|max|each|defrost|defrosts)]]',
    remark,
    { examples: ['four a day at thirty minutes'] },
  ),
  rule(
    '[(i|we|just)] (set|changed|moved|put) (it|the (timer|clock|defrost|defrosts|time clock)) (for|to|at) <number> [defrosts] (a|per) day [[<pause>] (at|for|of|with|and)] [[<pause>] <duration> [(fail safe|failsafe|max|each)]]',
    (_tags, frame) => {
      const words = frame.wordsOf(frame.span);
      return { work: [{ did: 'adjust', part: 'defrostTimer', words }], remarks: [words] };
    },
    { examples: ['set it for four a day'] },
  ),
  rule(
    '[(and|so|but|<pause>)] [(it|that|they)] (should|ought to|is supposed to|supposed to|needs to|has to) be (open|closed|made|shut) [(at that|by now|at (this|that) temp|there|then|cold)]',
    nothing,
    { examples: ['it should be closed'] },
  ),
];
