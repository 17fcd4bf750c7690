import { type Means, type Rule, rule } from '../rule.ts';
import { command, plain, answer } from './command.ts';

const undo: Means = () => command({ do: 'undo' });

const THAT =
  '(that|it|this|that one|that last one|the last one|my last one|that reading|that number)';
const SHORTLY = '(a (second|sec|minute|moment|bit)|one (second|sec|minute|moment))';
const THESE = '(this|that|it|these|those|that one|these ones) [(readings|numbers)]';

interface Loose {
  readonly means: Means;
  readonly shape: string;
  readonly examples: readonly string[];
}

const kept = (as: 'before' | 'after'): string =>
  `(mark|call|save|make|keep|use|log|put|set|record|note|write) ${THESE} [down] [(as|for|is)] [(the|my|our)] ${as} [(readings|numbers)]`;

/** Who is spoken to, as one speaks to a colleague. */
const SOMEBODY =
  '[[<pause>] (love|mate|buddy|bud|pal|boss|dear|hon|honey|chief|partner|friend|brother|bro|sweetheart|darling)]';

const LOOSE: readonly Loose[] = [
  {
    means: undo,
    shape: `((toss|back|wipe|x|cross|clear|strike|drop|lose|ditch) ${THAT} [(out|off|away)]|(cross|x|wipe|clear|back|toss|throw) out ${THAT}|pull ${THAT} [back] out|[(let me|i want to|i need to|i would like to|i have to|i am going to)] take ${THAT} back|undo (what|everything) (i|we) [just] (said|told you|gave you)|forget (i|we) said (that|it|anything)|that [last] (reading|number|value|entry) (is|was) (wrong|no good|bad|off|not right)|that last one (is|was) (bad|no good|off)|(wrong|bad) (number|reading|value)|that should not be in there|[(i|we)] misread (that|it)|i gave you the wrong (one|number|reading)|not that (reading|number))`,
    examples: ['cross that out', 'i gave you the wrong number'],
  },
  {
    means: plain('repeat'),
    shape: `(come again|say again|pardon me|[sorry] [(i|we)] (missed|did not (catch|hear|get|understand)|could not (hear|catch|get)|can not hear) (that|you|it) [(last (part|one)|at all)]|sorry what|(say|run|give me|tell me|hit me with) (that|it) [(by me|to me)] (again|one more time|once more)|(say|tell me) (that|it) [(again|one more time)] slower|speak up|louder|say what|what was that (again|last (part|one|bit))|what are you saying|(tell me|go) again|once more|what did you [just] say|(come again|huh|pardon|say that again|repeat that) [<pause>] (what was that|come again|what did you say|what|say (that|it) again))`,
    examples: ['run that by me again', 'speak up'],
  },
  {
    means: plain('pause'),
    shape: `((wait|hold it|stop|pause|stand by|hold that) [for] ${SHORTLY}|(hold (that thought|your horses)|whoa|easy|hang on|hold on|hold up) [<pause>] (quit|stop|do not) (listening|listen|recording|talking|talk) [for] [(a (second|minute|bit|sec|moment))]|hold (that thought|your horses)|take a break|stand by|standby|hush|zip it|stop (recording|listening to me)|[turn] [(the|your)] mic off|turn off (the|your) mic|mute yourself|pause listening|wait one|(hang|sit) tight|(stop|quit) (listening|recording|talking) [for] [${SHORTLY}] [[<pause>] [because] (i|we) (have to|have got to|got to|need to) <clause>])`,
    examples: ['wait a minute', 'stand by'],
  },
  {
    means: plain('resume'),
    shape:
      '(pick (it|this|that) back up|(let us|pick (it|this) up where we) (keep going|continue|carry on|left off)|[are] you (there|listening|awake)|un pause|unpause|[turn] [(the|your)] mic [back] on|start back up|ok go|back on|listen again|you can talk [(now|again)]|i am ready|pick up where we left off)',
    examples: ['pick up where we left off', 'you there'],
  },
  {
    means: plain('markBefore'),
    shape: `(${kept('before')}|(those|these|this) (are|is) [(my|the|our)] befores|mark the before|(that is|this is|these are|those are) [(my|the|our)] (starting point|starting (numbers|readings)|baseline)|before numbers|mark [(this|that|it|the|these)] [as] [(the|my|a)] baseline|that is how it was before)`,
    examples: ['log these as my before', 'this is my baseline'],
  },
  {
    means: plain('markAfter'),
    shape: `(${kept('after')}|(those|these|this) (are|is) [(my|the|our)] afters|mark the after|[(that is|this is|these are|those are)] [(my|the|our)] (ending|final) (numbers|readings)|after numbers)`,
    examples: ['log these as my after', 'final readings'],
  },
  {
    means: plain('finish'),
    shape:
      '((all done|done|we are done|i am done|finished) [here] [<pause>] [(and|so|you can|go ahead and)] (((close|wrap|finish) (her|it|this|this one) (out|up)|(write|type) (it|this|her|this one|everything) up|close out))|(finish|end|complete|finalize) (this|that) (one|unit|call)|finalize (it|this)|that does it|[the] job [is] (done|complete|finished)|all (wrapped up|finished)|(i am|we are) (finished up|done) here|[(i am|we are)] [all] (done|finished|through) (with|on) this (one|unit|box|call|job|machine))',
    examples: ['job is done', 'done with this unit'],
  },
  {
    means: plain('newVisit'),
    shape:
      '([let us] (start|open|begin|make) (a new|a fresh|a clean|another|the next) (visit|call|job|one|ticket|unit|sheet)|[(moving|going)] on to the next (one|unit|call|job|box|stop)|(new|next|different) (customer|stop|box|unit) [<pause>] [(same|at the same) (store|site|place|customer|building|address|location|stop)])',
    examples: ['on to the next one', 'next stop'],
  },
  {
    means: plain('help'),
    shape:
      '(what all can (i|you) (say|do|ask|tell you)|what can i tell you|what kind of things can i (say|ask) [you]|what commands (are there|do you (know|have))|how do you work|what should i say|[(show|give|tell)] me the commands|list the commands|(help me with|i need [some] help with) (this thing|this app|you)|i need [some] help here)',
    examples: ['what commands are there', 'list the commands'],
  },
  {
    means: () => ({}),
    shape: '[(wait|ok)] just a second',
    examples: ['just a second'],
  },
  {
    means: answer('yes'),
    shape:
      '[(yes|yeah|ok)] (absolutely|definitely|you bet|ten four|10 four|roger [that]|copy [that]|for sure|bingo|you know it|of course|that works|go for it|please do|go ahead|that is the one|sure (is|was)|you got it)',
    examples: [],
  },
  {
    means: plain('yes'),
    shape:
      '(yes|yep|yup|yeah|right) [<pause>] (that is the one|that would be (it|the one)|you got it|it sure is|that is him|that is her)',
    examples: ['yep that is the one'],
  },
  {
    means: plain('no'),
    shape:
      '(no|nope|nah|naw) [<pause>] (that is not (it|the one|her|him|right)|it is not|not (that one|it|even close))',
    examples: ['nah that is not it'],
  },
  {
    means: answer('no'),
    shape:
      '[(no|nope|nah)] (no|no no|absolutely not|do not|do not do that|leave it [(alone|be)]|not that [one]|i did not say that|that is not what i said|[that is] not right|that is not it)',
    examples: [],
  },
];

/** The same commands, in the ways that nobody listens for: each is the whole of a sentence. */
export const LOOSE_COMMANDS: readonly Rule[] = LOOSE.map(({ shape, means, examples }) =>
  rule(`${shape} ${SOMEBODY}`, means, { alone: true, unheard: true, examples }),
);
