import { type Means, type Rule, rule } from '../rule.ts';
import { equipmentFact, quantityId, tagsIn } from '../slots.ts';
import { amend } from './changes.ts';
import type { Fact } from '../utterance.ts';
import { command, plain, answer } from './command.ts';

const undo: Means = (tags) => {
  const quantity = quantityId(tags['quantity']);
  return command(quantity === null ? { do: 'undo' } : { do: 'undo', quantity });
};

/** With nothing read before, a dial is what is turned: "bump it up to forty". */
const amendLast: Means = (tags, frame) =>
  frame.context.lastQuantity === null ? null : amend(tags, frame);

/** "Next one's the walk-in freezer": another unit, and its kind; where it stands is its name. */
const nextUnit: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const fact = equipmentFact(tags, words);
  if (fact === null) return null;
  const named = tags['clause'] === undefined ? null : AFTER_WHICH.exec(words)?.[1];
  const unit: readonly Fact[] = named == null ? [] : [{ fact: 'unit', value: named, words }];
  return { ...command({ do: 'newVisit' }), facts: [fact, ...unit] };
};
const AFTER_WHICH =
  /^.*?\b(?:one|unit|box|machine|up|to|moving on(?: to)?)(?:'s| is| will be)?(?: (?:now|here|today))?,? (?:(?:this|that|it)(?:'s| is| will be)? )?(?:(?:the|a|an|their|this) )?(.+)$/i;

/** "Two things today, the ice machine and then the walk-in": what will be looked at, and which comes first is told then. */
const severalUnits: Means = (_tags, frame) => ({ remarks: [frame.wordsOf(frame.span)] });

const WHOA =
  '[(nah|no|nope|whoa|hey|sorry|oh|oops|wait|shoot|dang|my bad|actually)] [<pause>] [(nah|no|wait|sorry)]';
/** Who is spoken to, and how one takes leave of a sentence. */
const BUD =
  '[[<pause>] (bud|buddy|mate|love|pal|boss|chief|hon|honey|partner|friend|sir|guv|lad|eh|would you|will you|please|thanks|for me|then)]';
const THESE =
  '(these|those|this|that|them|all (this|that|these|those|of (it|this|that|these|them))|everything [(so far|i [have] (said|gave you))]|the lot) [(readings|numbers)]';
const BECAUSE = '[<pause>] [(because|cause|since)]';
const CALLED_AWAY =
  '((i am|we are) on the phone|[the] phone is (ringing|going)|(i|we) (have to|got to|have got to|need to) (take|answer|get|talk to|deal with|run|step|grab|see|call) <clause>|(the|my) (customer|manager|owner|boss|lady|chef|cook) is (here|coming|talking|calling|back)|customer is (here|coming|talking)|somebody is (here|coming|talking))';

interface Free {
  readonly means: Means;
  readonly shape: string;
  readonly examples: readonly string[];
}

const FREELY: readonly Free[] = [
  {
    means: undo,
    shape: `${WHOA} (take (that|it) [(one|last one)] (off|out) [(of there|there|the (list|note|record))]|(bin|scrub|chuck|sack|junk|nuke|trash) that [(one|last one|off|out)]|back up [<pause>] (that|it) (is|was|were) (wrong|not right|not it))`,
    examples: ['nah take that off'],
  },
  {
    means: undo,
    shape: `${WHOA} (take|leave|throw|pull|scratch|drop|wipe|bin) [(the|that|my)] <quantity> [(reading|number)] [(out|off|back)] [<pause>] [because] (i|we) (misread|had|got|read|said) (it|that) [wrong]`,
    examples: ['take the box temp out i misread it'],
  },
  {
    means: amend,
    shape: `${WHOA} [(the|that|my)] <quantity> [that] i (gave you|told you|said|read [you]|called [out]) [was] wrong [<pause>] (it is|make it|it should be|should be|that is|it was) [really] <amount>`,
    examples: ['liquid line i gave you wrong it is ninety one'],
  },
  {
    means: amendLast,
    shape: `${WHOA} (bump|knock|bring|drop|round|change|switch) (that|it|the last one) [(up|down|back)] to <amount>`,
    examples: [],
  },
  {
    means: plain('markBefore'),
    shape: `(as found|that is (how|what|the way) (i found (it|them|her|everything)|it was when i got here) [[<pause>] all of (them|it|that)]|(mark|call|put|save|log|keep) ${THESE} [down] [(as|for|is)] [(the|my|our|as)] (before|befores|as found|before (numbers|readings))|(here is|here are|these are|those are|this is|that is) [(your|my|the|our)] (befores|as found|as found (numbers|readings))|everything (up to (here|now)|so far) is before)`,
    examples: ['that is how i found it'],
  },
  {
    means: plain('markAfter'),
    shape: `(as left|that is how (i am leaving|i left) it|(mark|call|put|save|log|keep) ${THESE} [down] [(as|for|is)] [(the|my|our|as)] (after|afters|as left|final|finals|(after|final) (numbers|readings)|(final|ending) ones)|(here is|here are|these are|those are|this is|that is) [(your|my|the|our)] (afters|as left|as left (numbers|readings)|(after|final) (numbers|readings))|everything (from (here|now) [on] [out]|after this|(i|we) (say|give you) (now|from here|next)) [is] after|from (here|now) on [out] [it is] (all|everything is) after)`,
    examples: ['as left'],
  },
  ...(['markBefore', 'markAfter'] as const).map((mark) => ({
    means: plain(mark),
    shape: `[(ok|so|and)] (i am [just] going to|going to|i will [just]|let me|let us|i want to) (mark|call|save|make|use) ${THESE} [(as|is)] [(the|my|our)] ${mark === 'markAfter' ? '(after|afters)' : '(before|befores)'}`,
    examples: [],
  })),
  {
    means: plain('repeat'),
    shape:
      '([did] you (get|catch|hear) (that last (one|bit|reading)|the last (one|bit|reading))|(sorry|pardon|eh|whoa|huh) [<pause>] (say again|come again|say that again|one more time|what was that|what)|(say again|come again)|what was that [<pause>] (i (had|have) <clause>|(it|that) (is|was) (loud|too loud|noisy)|(the|that) <clause> (is|was) (loud|running|going)))',
    examples: ['sorry say again'],
  },
  {
    means: plain('pause'),
    shape: `${WHOA} (hold on|hold up|hang on|hold it|wait|wait up|shush|hush|quiet|be quiet|stop|pause|shut up|give me) [(now|up)] [[(for|just)] (a|one) (second|sec|minute|moment|bit|tick)] ${BECAUSE} ${CALLED_AWAY}`,
    examples: ['hold up i am on the phone'],
  },
  {
    means: plain('pause'),
    shape:
      '((whoa|easy|hey|shush|hush|ok) [<pause>] (hang on|hold on|hold up|wait|shush) [[(for|just)] (a|one) (second|sec|minute|moment|bit|tick)]|(hang on|hold on|hold up|wait) [[(for|just)] (a|one) (second|sec|minute|moment|bit|tick)] [<pause>] pause [(it|listening|for a (second|minute|moment))])',
    examples: ['whoa hang on a sec'],
  },
  {
    means: plain('resume'),
    shape:
      '((go ahead and|you can|start) (listen|listening|hear) [to me] (again|now)|[ok] i am back [(with you|now|on)]|right [<pause>] where were we|[ok] back (with you|to it|at it))',
    examples: ['go ahead and listen again'],
  },
  {
    means: plain('finish'),
    shape:
      '(that is me [all] (done|finished|sorted|through)|(that is|it is) a wrap|[i am coming down <pause>] i am [all] (done|finished) [here]|we are [all] (done|finished) [here]|all done [here]|(send|ship) (it|her|that) (in|off|over|to (them|the office))|[(you can|go ahead and)] finish (it|her|this) [(up|off)]|do (us|me|up) the (paperwork|ticket|report|write up)|write (it|her|this|the thing) up) [[<pause>] [(so|and|ok)] (i am done|we are done|cheers|(send|ship) (it|her|that) [(in|off)]|finish (it|her|this) [up]|(do|write) (us|me|up) the (paperwork|ticket|report|write up)|write (it|her|this) up|close (it|her) (out|up))]',
    examples: ['that is me finished send it'],
  },
  {
    means: plain('help'),
    shape:
      '(help me out [<pause>] what can i (say|do|ask)|what all (do|can) you (do|know|understand|help with)|what (are you|is this thing) (good for|able to do)|how (do|would|can) i (tell|give|say|enter|put in) [(you|it)] (a|the|my) (<quantity>|pressure|temperature|temp|reading|number))',
    examples: ['how do i tell you a pressure'],
  },
  {
    means: answer('yes'),
    shape:
      '((yeah|yes|aye|yep|yup|yessir|yes sir|sure|ok|alright) [<pause>] (go on [then]|do (that|it)|that is (it|the one|right|fine)|go ahead|please do|sounds good|it is)|aye|yessir|you betcha|you bet|go on then|too right|spot on|dead right|bang on|that will do|reckon so|i reckon|i guess so)',
    examples: [],
  },
  {
    means: answer('no'),
    shape:
      '((nope|no|nah|naw) [<pause>] (leave it [(be|alone|as it is)]|that is not (it|right|the one|what i (said|meant))|it is not|do not|forget it|not that [one])|i do not (think|reckon) so|not really|nowhere near|not even close)',
    examples: [],
  },
];

/** "I said one eighty, meant one ninety": what is meant, and what is put in its place. */
const amendRight: Means = (tags, frame) => amend(tagsIn(tags['right']) ?? {}, frame);

/** Of a value that was told before. */
export const FREE_CHANGES: readonly Rule[] = [
  rule(
    '[i] (said|thought i said) <amount:wrong> [(<pause>|and|but)] [i] (meant|mean) <amount:right>',
    amendRight,
    { alone: true, unheard: true, examples: ['said sixty meant sixteen'] },
  ),
  rule(
    '(wait|wait no|no wait|oops|hold on) (it is|that is|it was|that was|it should be|that should be|i said|i meant) <amount:right> (not|instead of|rather than) <amount:wrong>',
    amendRight,
    { alone: true, unheard: true, examples: ['wait no that was thirty six not thirty eight'] },
  ),
  rule(
    '[(no|nope|wait|sorry|actually)] (make|call) (that|it) <amount> <pause> [(on|for)] (the|my) <quantity>',
    amend,
    {
      unheard: true,
      alone: true,
      examples: ['make that fourteen, the suction'],
    },
  ),
  rule(
    '(no|nope|wait|sorry|actually) (call|make) [(the|my|that)] <quantity> [(to|be|should be)] <amount>',
    amend,
    { unheard: true, examples: ['no call the suction twenty one'] },
  ),
];

/** Commands as people give them to people: each is the whole of a sentence. */
export const FREE_COMMANDS: readonly Rule[] = FREELY.map(({ shape, means, examples }) =>
  rule(`${shape} ${BUD}`, means, { alone: true, unheard: true, examples }),
);

/** Before the commands that only tell that there is another one. */
export const NEXT_UNIT: Rule = rule(
  `([ok] (new|different|another|next) (unit|one|box|machine) [(now|here|up)] [<pause>] (this|that|it) (is|will be|would be)|next (one|unit|box|machine|up) [(now|here)] [(is|will be|<pause>)]|[(the|my)] (second|third|last|other) (one|unit|box|machine) [(now|here|today)] [(is|will be|<pause>)]|(moving|going|move|on) [on] to|moving on) [(the|a|an|their|this)] (<equipment>|<count:doors> (door|doors) (<doored>|<equipment>)) [(in|by|at|on|near|under|behind|next to|across from|out|down|up) <clause>]`,
  nextUnit,
  { alone: true, unheard: true, examples: ['next one is the walk in freezer'] },
);

const MANY =
  '[(i have|i have got|got|there is|there are|we have|doing|looking at)] (two|three|four|couple|a couple|couple of|a couple of) [(different|separate)] (things|units|calls|boxes|machines|jobs|pieces|problems|ones)';
const A_UNIT = '[(a|an|the|their|one)] <equipment>';

/** Before facts, which would take the last for what is looked at. */
export const SEVERAL_UNITS: Rule = rule(
  `${MANY} [(in one|in all)] [(here|today|for them|on this one|at this one|on this call|to (do|look at))] [(here|today)] <pause> ${A_UNIT} (and|then|and then|<pause>) ${A_UNIT} [(and|then|and then|<pause>) ${A_UNIT}]`,
  severalUnits,
  { alone: true, unheard: true, examples: [] },
);
