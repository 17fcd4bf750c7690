import { startsClause } from '../words/clause-start.ts';
import { FIGURE, holdsNumber, spelledOut } from '../words/own-reading.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { spanIn } from '../slots.ts';
import { nothingAtClauseStart, remark } from '../plain-means.ts';

/** "Should be two thirty at the contactor": no meter showed it. */
const notRead = nothingAtClauseStart;

/** What was read on another day or another unit stands in the note as it was said. */
const readBefore = remark;

const supposed: Means = (_tags, frame) => (startsClause(frame) ? { supposed: true } : null);

/** "Should the head hit two eighty, we'd trip": a condition, where somebody does something behind it; alone it asks. */
const inverted: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  if (span === null || !startsClause(frame)) return null;
  return WOULD_THEN.test(spelledOut(frame.wordsOf(span))) || holdsNumber(frame.wordsOf(span))
    ? { supposed: true }
    : null;
};
const WOULD_THEN =
  /\b(?:i|we|you|they|it|he|she|that|somebody|someone) (?:will|would|can|could|should|had|have to|need|might|is going|are going)\b|[,;] |\b(?:call|shut|kill|just|let|replace|swap|come)\b/i;

/** What somebody else read is asked about. */
const readByOther: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  if (!startsClause(frame) || !holdsNumber(words)) return null;
  return { hearsay: words.replace(WHO_READ, '') };
};
const WHO_READ = /^.*?\b(?:got|had|has|saw|reads?|measured|found|gets|getting|reading|seeing)\s+/i;

const IT = '<measurable>';
const AT = '(on|at|across|in|for|of|to|into|over|through|from|between)';
/** A figure and what it is of, told behind it. */
const FIGURE_AT = `<amount> ${AT} <the> ${IT}`;
/** The other way round. */
const IT_AT = (verb: string): string =>
  `<the> [(new|old|other)] ${IT} ${verb} [(at|to|of|only|exactly)] <amount>`;

const NOT =
  '(am|are|is|was|were|do|did|does|can|could|have|has|had|will|would|should) not|never|not';
const HAVE =
  '(have|has|had|get|gets|got|see|sees|read|reads|show|shows|draw|pull|measure|be|been|getting|seeing|reading|showing|drawing|pulling) [got]';
const WOULD =
  '(should|would|could|can|may|might|must|will|need to|needs to|ought to|has to|have to|wants to|is supposed to|are supposed to|supposed to|is meant to|is going to)';
const EARLIER = '(this morning|earlier [(today|on)]|before [(i|we) <clause>])';
const OTHERS =
  '(he|she|they|<who>|(my|his|our|the) (helper|apprentice|partner|buddy|lead|guy|other guy))';

/** What is of something that a meter or a gauge shows, and nobody read: supposed, asked, denied, looked for, another's. */
/** "Looks good, suction's seventy four" tells of ours. */
const isUnbroken = (frame: Frame): boolean =>
  !/^(?:\w+ )?(?:good|normal|healthy|typical|new)[,.;:!?]/i.test(frame.wordsOf(frame.span));

/** "Checking the line side, two oh six" tells what was found there. */
const isInOneBreath = (frame: Frame): boolean => !BROKEN_FIGURE.test(frame.wordsOf(frame.span));
const BROKEN_FIGURE = new RegExp(`[,.;:] (?:${FIGURE})\\b`, 'i');

export const NOT_MEASURED_RULES: readonly Rule[] = [
  rule(
    `[(and|but|so)] ${IT_AT(`((${WOULD}|${NOT}) [${HAVE}]|needs|takes|requires|wants|calls for|(should|would|could|might|may) be (getting|reading|showing|drawing|pulling))`)}`,
    notRead,
    { unheard: true, examples: ['contactor needs two thirty volts'] },
  ),
  rule(
    `[(and|but|so)] [(i|we|you|it|there|that|they)] (${WOULD}|${NOT}) [(just|only|still|even|really)] [${HAVE}] ${FIGURE_AT}`,
    notRead,
    { unheard: true, examples: ['i am not getting one ninety on the head'] },
  ),
  rule(
    `[so] ((do|did|should|could|would|can|will|does|am|are) (i|we|you|it|there)|(is|are|was|should|could|would|can) (there|it)) [${HAVE}] ${FIGURE_AT}`,
    notRead,
    { unheard: true, examples: ['do i have two thirty volts at the contactor'] },
  ),
  rule(
    `[so] (is|was|are|were|should|could|would|can|will|does|did|might) ${IT_AT(`[(be|at|${HAVE}|really|actually|still)]`)}`,
    notRead,
    { unheard: true, examples: ['is the contactor two thirty volts'] },
  ),
  rule(
    `[(and|so|then)] (check|verify|confirm|make sure|be sure|look|looking|test|testing|see if|see whether|watch|wait|waiting|shoot|shooting|aim|aiming|checking) [(for|that|if|until)] [(you|we|i|it|there) [(have|has|get|gets|see|is|are|am)] [(got|getting|at|reading)]] (${FIGURE_AT}|${IT_AT(`[(is|are|reads|read|has|gets|at|stays)]`)})`,
    notRead,
    {
      unheard: true,
      only: isInOneBreath,
      examples: ['check for two thirty volts at the contactor'],
    },
  ),
  rule(
    `[(and|but)] (it|this|that|you|they|we|these|those) (takes|take|needs|need|wants|want|requires|require|calls for|call for|likes|like) ${FIGURE_AT}`,
    notRead,
    { unheard: true, examples: ['it takes two thirty volts at the contactor'] },
  ),
  rule(
    `[(and|but)] ${OTHERS} (got|had|has|saw|read|reads|measured|found|gets|is (getting|reading|seeing)|was (getting|reading|seeing)) ${FIGURE_AT}`,
    readByOther,
    { unheard: true, examples: ['he got two thirty volts at the contactor'] },
  ),
  rule(
    `[(and|but)] [(i|we|it|there)] (had|got|saw|read|was|were|was (getting|reading|seeing|at)) ${FIGURE_AT} ${EARLIER}`,
    readBefore,
    { unheard: true, examples: ['i had two thirty volts at the contactor this morning'] },
  ),
  rule(
    `(earlier [today]|this morning|yesterday|last (time|week|month|visit)) (i|we|it|there) (had|got|saw|read|was|was (getting|reading|seeing)) ${FIGURE_AT}`,
    readBefore,
    { unheard: true, examples: ['earlier it had one ninety on the head'] },
  ),
  rule(`[(and|but)] ${IT_AT('(was|were|had|read|was reading)')} ${EARLIER}`, readBefore, {
    unheard: true,
    examples: ['contactor was two thirty volts this morning'],
  }),
  rule(`when ${IT_AT('(reads|shows|says|gets|gets to|has|draws|pulls)')}`, supposed, {
    unheard: true,
    examples: ['when contactor reads two thirty volts'],
  }),
  rule(
    `[(and|so|but|then|well)] [(i am|we are|i|we|am|was|he is|they are)] [(just|still|also|probably)] (planning [on]|plan on|figuring on|figure on|thinking (about|of|on)|talking about|looking at|counting on|leaning (towards|toward)|considering|debating|about to start|getting ready to start|will be|would be|might be|may be|could be|going to (be|start)) [(just|maybe|probably|also)] (adding|putting in|putting|weighing in|charging [(in|it with|with)]|pulling [out]|recovering|taking out|dropping in|dumping in|putting back in|bleeding off) [another] <amount> [(in|to it|back|back in|more|out)]`,
    notRead,
    { unheard: true, examples: ['planning on adding eight ounces'] },
  ),
  rule(
    `[(and|but|so)] should (<the> (<measurable>|<part>)|it|she|this thing|the pressure|the (unit|box|pressures)|they|anything) [(ever|even|somehow)] (hit|go|get|reach|climb|drop|fall|rise|come|run|read|trip|quit|fail|start|stop|leak|ice|freeze|break|burn|kick|exceed|creep|spike|die|let) <clause>`,
    inverted,
    { unheard: true, examples: ['should the head hit two eighty we would trip out'] },
  ),
  rule(
    `[(a|any|most)] (good|normal|healthy|typical|brand new) ${IT} (reads|read|runs|is|has|draws|pulls|shows|should|will) <clause>`,
    notRead,
    {
      unheard: true,
      only: isUnbroken,
      examples: ['a good common to ground reads two hundred megs'],
    },
  ),
];
