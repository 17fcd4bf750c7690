import {
  opensSentence,
  startsClause,
  wordBefore,
  wordBehind,
  wordsBehind,
} from '../words/clause-start.ts';
import { type Frame, heardCommand, type Means, type Rule, rule } from '../rule.ts';
import { command, plain } from './command.ts';

const choose =
  (which: 'first' | 'second'): Means =>
  () =>
    command({ do: 'choose', which });

/** "Start a new job on monday" starts none now. */
const beginsNow = (frame: Frame): boolean =>
  startsClause(frame) && !/^(?:on|next|tomorrow|tonight|later|at|by)$/i.test(wordBehind(frame));

/** By itself, or behind what else was told: "back to finish the motor" ends nothing. */
const ENDED =
  '(that is it finish|finish|~(finish (up|the visit|visit|this visit|it|the note|the job|this)|i am (done|finished|all done)|we are (done|finished|all done)|(end|close|complete|wrap up|close out) (the|this) (visit|job|call|ticket)|end visit|close it out|wrap it up|(write|type) (it|this|this one|that|everything) up|write up (the|this|my) (ticket|note|call|visit|job)|(let us|let is) (wrap (up|it up)|finish [up]|close it out|call it)|all done|that is it [i am] [(done|finish|finished|we are done)]|done here|call it done|close it|that will do it|(close|wrap) (it|her|this|this one|that one|him|this (visit|call|ticket)) (out|up)|(i am|we are) [all] done [here]|that is a wrap|that will be (all|it)|call it good|(i am|we are) (good|finished|through) here))';

/** "That's it" agrees to what was just asked, and ends the visit otherwise. */
const thatIsIt: Means = (_tags, frame) => command({ do: frame.context.asksYes ? 'yes' : 'finish' });

/** "Gages off finish": at the very end, behind what was put off, on or back. */
const finishBehind: Means = (_tags, frame) => {
  const { to } = frame.span;
  const isLast = frame.wordsOf({ from: to, to: to + 1 }) === '';
  return isLast && /^(?:off|on|back|up|closed|out)$/i.test(wordBefore(frame))
    ? command({ do: 'finish' })
    : null;
};

const ends = (frame: Frame): boolean =>
  /^(?:|and|please|now|then|so|thanks)$/.test(wordBehind(frame));

/** "That was after the wedding", "had been set before" */
const marks = (frame: Frame): boolean =>
  startsClause(frame) && !/^(?:the|a|an|his|her|their|your|lunch|noon)$/.test(wordBehind(frame));

/** "Two more screws and I'm done" is not done yet. */
const finishNow: Means = (_tags, frame) =>
  (/^and\b/i.test(frame.wordsOf(frame.span)) && STILL_TO_DO.test(clauseBefore(frame))) ||
  explainsIt(frame)
    ? null
    : command({ do: 'finish' });
/** "Disconnect was off, that's it, that's the whole call": so little was wrong. */
const explainsIt = (frame: Frame): boolean =>
  /^that['’]?s?(?: is)?(?: (?:the|all|what|everything|why|how)|$)/i.test(wordsBehind(frame, 3));
const STILL_TO_DO =
  /\b(?:more|let me|gonna|going to|gotta|got to|need to|have to|want to|just|then|when|once|after|soon|till|until|if|should|will|i'll|we'll)\b/i;

/** The last clause that stands before it. */
const clauseBefore = (frame: Frame): string =>
  frame
    .wordsOf({ from: 0, to: frame.span.from })
    .split(/[,.;:!?…—]/)
    .at(-1) ?? '';

const SO_FAR = '(so far|up to (here|now|this point)|till now|until now)';
const FROM_NOW = '(from (here|now|this point|there) (on|forward|out)|from here|after this)';
const THESE =
  '(all [of] (that|this|it|those|these|them)|(all|everything) [(you have|i gave you|i told you|i said)] [SO_FAR]|(all|what) [of] (those|these|my) (numbers|readings))';

/** "Mark all that as before", "everything from here on is after": more than the last of them. */
const allAre = (which: 'before' | 'after'): string =>
  `((mark|call|save|make|keep|use|put|log|count|take|tag|label) ${THESE.replace('SO_FAR', SO_FAR)} [down] [(as|is|for|under)] [(the|my|our)] ${which}|${
    which === 'before' ? `[(everything|all [of] (it|this|that))] ${SO_FAR}` : ''
  }${which === 'after' ? `[(everything|anything|all|whatever|what) [(i (say|give you|tell you|call out|read))]] ${FROM_NOW}` : ''} (is|was|are|counts as|goes (under|in as|down as)|will be) [(the|my|our)] ${which})`;

/** Steering the dialogue and the visit. */
export const DIALOGUE_COMMANDS: readonly Rule[] = [
  heardCommand(
    '(that is my before|~that is (the|our) before|~(mark|call|save|make|keep|use) (this|that|it|these|those) [(readings|numbers)] [(as|is)] [(the|my|our)] before|~(these|those|this) (are|is) [(my|the|our)] before [(readings|numbers)]|~before readings|~mark before|~(that is|this is) before|~(that was|those were) [(my|the|our)] before [(readings|numbers)]|~those are before|~set before)',
    plain('markBefore'),
    { only: marks, examples: ['that is my before', 'mark this as before'] },
  ),
  heardCommand(
    '(mark this as after|that is my after|~that is (the|our) after|~(mark|call|save|make|keep|use) (this|that|it|these|those) [(readings|numbers)] [(as|is)] [(the|my|our)] after|~(these|those|this) (are|is) [(my|the|our)] after [(readings|numbers)]|~after readings|~mark after|~(that is|this is) after|~(that was|those were) [(my|the|our)] after [(readings|numbers)]|~those are after|~set after)',
    plain('markAfter'),
    { only: marks, examples: ['mark this as after', 'that is my after'] },
  ),
  ...(['markBefore', 'markAfter'] as const).map((mark) =>
    rule(allAre(mark === 'markBefore' ? 'before' : 'after'), plain(mark), {
      unheard: true,
      only: marks,
      examples: [mark === 'markBefore' ? 'mark all that as before' : 'from here on is after'],
    }),
  ),
  heardCommand(
    '[~(can|could|would|will) you] [please] (say that again|~repeat [(that|it|please|again)]|~(come again|what was that|what did you say|what would you say|pardon|say again|again please|one more time|say it again|i did not (hear|catch|get) (that|you)|huh|what)|~again|~(did you|you|have you) [(just)] (get|got|catch|hear|heard) (that|me|it|all (that|of that)))',
    plain('repeat'),
    { alone: true, examples: ['say that again'] },
  ),
  heardCommand(
    '(pause|hold on|stop|~(hold on|hold up) [a] (second|sec|minute|moment)|~(quit|stop|do not) (listening|listen|talking|talk) [(for (now|a (second|sec|minute|bit|while))|now)]|~hold it|~((be|go|keep|stay) quiet [for (now|a (second|minute|sec|bit|while))]|quiet [for a (second|minute|sec)]|wait|hang on [a (second|sec|minute)]|go to sleep|mute|shut up|stop stop|hold up|give me a (second|minute|sec)|one (second|minute|moment|sec)))',
    plain('pause'),
    {
      alone: true,
      examples: ['pause', 'stop', 'stop listening'],
    },
  ),
  heardCommand(
    '(resume|go on|~(start listening|listen|wake up|i am back|go ahead|continue|unmute|carry on|keep going|ok i am back|back|listen up|you can listen [(now|again)]|start listening again))',
    plain('resume'),
    { alone: true, examples: ['resume', 'go on', 'i am back'] },
  ),
  heardCommand(
    '(yes|yeah|~(yep|yup|correct|right|affirmative|that is (right|correct|fine)|sure|confirm|confirmed|yes it is|yes sir|you got it|exactly|sounds good|uh huh|it is|that is what i said|yes please|do it))',
    plain('yes'),
    // "It's reading, uh": a verb cut short by its apostrophe goes on.
    {
      alone: true,
      only: (frame) => !/^it['’]s$/i.test(frame.wordsOf(frame.span)),
      examples: ['yes', 'that is right'],
    },
  ),
  rule('that is it', thatIsIt, { alone: true, examples: ['that is it'] }),
  heardCommand(
    '(no [wait]|nope|~(wait no|negative|nah|no it is not|incorrect|not right|no sir|no way|[no] that is not it|uh uh|no thanks|it is not|wrong|not that [one]))',
    plain('no'),
    { alone: true, examples: ['no', 'no wait'] },
  ),
  heardCommand('(the first [one]|~(first [one]|the former|number one))', choose('first'), {
    alone: true,
    heardWhen: ['number', 'yesOrNo'],
    examples: ['the first', 'first one'],
  }),
  heardCommand(
    '(the second [one]|~(second [one]|the (latter|last) [one]|number two))',
    choose('second'),
    { alone: true, heardWhen: ['number', 'yesOrNo'], examples: ['the second', 'second one'] },
  ),
  rule('(i (meant|mean|said)|it (is|was)|that is) the first [one]', choose('first'), {
    alone: true,
    unheard: true,
    examples: ['i meant the first one'],
  }),
  rule('(i (meant|mean|said)|it (is|was)|that is) the second [one]', choose('second'), {
    alone: true,
    unheard: true,
    examples: ['it was the second'],
  }),
  rule(
    '(hang on|hold on|wait) [a (second|sec|minute|moment)] [<pause>] (quit|stop|do not) (listening|listen|talking|talk)',
    plain('pause'),
    { alone: true, unheard: true, examples: ['hang on a minute stop listening'] },
  ),
  rule(
    '(what|what was that|sorry) [<pause>] i did not (hear|catch|get) (that|you)',
    plain('repeat'),
    {
      alone: true,
      unheard: true,
      examples: ['sorry i did not catch that'],
    },
  ),
  heardCommand(
    '(new visit|~(start|begin|open) [a] (new|another) (visit|call|job|one|ticket)|~(new|next) (call|job|ticket|unit)|~start (over|a visit)|~start fresh)',
    plain('newVisit'),
    { only: beginsNow, examples: ['new visit', 'start a new visit'] },
  ),
  rule(
    '[(on to (the|our)|now the)] next (one|stop|call|job|customer|unit) [up] [<pause>] (it is|that is|this is|we are at|i am at|is) [at] (the|a|an|our|my|over|across|down|up) <clause>',
    plain('newVisit'),
    { alone: true, unheard: true, examples: ['next one it is the bakery across the street'] },
  ),
  heardCommand(ENDED, plain('finish'), {
    alone: true,
    examples: ['that is it finish', 'finish the visit'],
  }),
  rule(
    '(that is it|that is all|that will do it|all set|all done|i am done|we are done) [<pause>] [(and|so)] (i am|we are) (out of here|out|gone|leaving|heading (out|to the next one)|headed (out|to the next one)|rolling out|off to the next one)',
    plain('finish'),
    { alone: true, unheard: true, examples: ['that is it i am out of here'] },
  ),
  rule('[(all right|right|well|and|so)] (i am|we are) out of here', plain('finish'), {
    alone: true,
    unheard: true,
    examples: ['i am out of here'],
  }),
  // "Come on, finish your soup" ends nothing.
  rule(`(<pause>|and|<pause> (and|ok|so)) ${ENDED}`, finishNow, { only: ends }),
  rule(
    `(that will do it|that is it|i am [all] done|we are [all] done|all done|that is all|that is everything|that is a wrap) [(and|so|ok)] ((close|wrap|write|finish) (it|her|this|this one|that one|him|up) [(out|up)]|finish [(the|this) (visit|job|call)]|call it (good|done))`,
    plain('finish'),
    { alone: true, examples: ['that will do it close her out'] },
  ),
  rule(
    '(i am|we are|all) [(all|about)] (done|finished|through|set) [(here|up|out|with (this|it|this one))] [<pause>] [(and|so|let us)] (wrap it up|close it out|finish [(it|up)]|button it up|write it up|close it up)',
    plain('finish'),
    { unheard: true, alone: true, examples: ['i am all done here wrap it up'] },
  ),
  rule('(i am|we are) [all] (finished up|wrapped up)', plain('finish'), {
    unheard: true,
    only: (frame) => frame.endsAtPause && opensSentence(frame),
    examples: ['i am finished up'],
  }),
  rule('(finish|finish up|finish the visit|close it out|wrap it up|close her out)', finishBehind),
  rule(
    'that is (all|everything) [(for (this (one|unit|call)|today|now|here|me)|i have|i got)]',
    plain('finish'),
    {
      alone: true,
      examples: ['that is everything'],
    },
  ),
  heardCommand(
    '(finish anyway|~(finish|close|end|wrap) (it|this|the visit|the job|up) [(up|out)] (anyway|any way|all the same|regardless|like that|as it is)|~finish (regardless|all the same|any way))',
    plain('finishAnyway'),
    { examples: ['finish anyway'] },
  ),
  heardCommand(
    '(help|~(what can (i|you) (say|do|ask) [(to|for) (you|me)]|help me [out]|what are my options|what (do|can) you (do|understand|know)|i need help|what are the commands|how do i use this|how does this work|what do i say|what can i do|give me some help))',
    plain('help'),
    { alone: true, examples: ['help', 'what can i say'] },
  ),
];
