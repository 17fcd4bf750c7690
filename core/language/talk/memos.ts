import { ANY_WEEKDAY } from '../../terms/calendar.ts';
import { startsClause } from '../words/clause-start.ts';
import { heardRule, type Means, type Rule, rule } from '../rule.ts';
import { spanIn } from '../slots.ts';

/** "Log this as before", "write down that's my before" mark the readings. */
const MARKS =
  /^(?:as |(?:that|this|these|those|it)?(?:'s|'re)? ?(?:is |are )?)?(?:the |my |our )?(?:before|after)s?$/i;

const memo: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  return span === null || MARKS.test(frame.wordsOf(span)) ? null : { memos: [frame.wordsOf(span)] };
};

/** "Remember that job in February", "I remember it was ten below": what is remembered, and what ought to be. */
const unlessRemembered: Means = (tags, frame) => {
  if (!startsClause(frame)) return null;
  const { from, to } = frame.span;
  return REMEMBERED.test(frame.wordsOf({ from: Math.max(0, from - 1), to }))
    ? {}
    : memo(tags, frame);
};
const REMEMBERED =
  /^(?:(?:i|we|you) remember\b|(?:\S+ )?remember (?:when|how|back|last|(?:that|the) (?:time|job|one|guy|call|day|night|summer|winter|store|place|year))\b)/i;

/** A finite grammar cannot hear free words: these it can, and they are the commonest complaints. */
const COMPLAINT =
  '(it has been (warm|running warm|icing up|leaking|noisy)|it keeps tripping|it is not (cooling|holding temp)|it will not (start|shut off)|it is (leaking|noisy|warm|running all the time))';
const SINCE = `[since (${ANY_WEEKDAY}|yesterday|last night|this morning|last week)]`;

/** Sentences kept word for word. */
export const MEMO_RULES: readonly Rule[] = [
  rule('note <pause> <rest>', memo, { unheard: true, only: startsClause, examples: [] }),
  rule('(jot|scribble|write) (this|that) down [(that|to)] <rest>', memo, {
    unheard: true,
    examples: ['jot this down the gate code is four five'],
  }),
  rule(
    '(do not|no need to|you do not (have|need) to|never mind) (write|put|log|note|record|keep|count|save|jot) (down|in|the|a|any|my) <clause>',
    () => ({}),
    { examples: ['do not write down twelve'] },
  ),
  heardRule(`memo [customer says] ${COMPLAINT} ${SINCE}`, heardMemo, {
    examples: ['memo customer says it has been warm since friday'],
  }),
  rule(
    '(memo|note to self|(note|message) (to|for) ([the] office|dispatch|[the] (boss|shop|manager)|myself|me)|for the note|for the record|for the notes|put in the notes|note for the office|note for (the next (guy|tech)|next time)|log (a note|this)|do not let me forget|remind me (to|that)|(put|leave|drop|stick|write) [me] [down] a note [(in there|in|down|on (this|it))]|put (this|that|it) in the (note|notes|report)) [(that|saying|to)] <rest>',
    memo,
    {
      examples: ['memo the lid hinge is broken on the left side'],
    },
  ),
  rule('remember [(that|to)] <rest>', unlessRemembered, {
    examples: ['remember the gate code is four five one two'],
  }),
  rule(
    '(make a note|add a note|take a note|write down|write this down|jot down|put down|note down|take this down|record|add to the note|put in the note|note) (that|to|saying) <rest>',
    memo,
    {
      examples: ['make a note that the door was left open'],
    },
  ),
  rule(
    '(make a note|add a note|take a note|write down|write this down|jot down|note down|take this down|memo to (self|office)|the complaint (is|was)|complaint (is|was)|complaint|customer complaint (is|was)|customer complaint|their complaint is|complaint today is|add to the (note|notes|report)|put in the (note|report)|(let|tell) the office [know]|tell the next (guy|tech)) [(that|to|about)] <rest>',
    memo,
    {
      examples: ['complaint is warm product'],
    },
  ),
];

/** All that was said after the word that opens it. */
function heardMemo(...[, frame]: Parameters<Means>): ReturnType<Means> {
  return { memos: [frame.wordsOf({ from: frame.span.from + 1, to: frame.span.to })] };
}
