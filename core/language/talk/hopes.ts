import { startsClause } from '../words/clause-start.ts';
import { amountIn } from '../numbers/measure.ts';
import { holdsNumber, namesReading } from '../words/own-reading.ts';
import { reading } from '../readings/reading-means.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { quantityId, spanIn, tagsIn } from '../slots.ts';
import { remark } from '../plain-means.ts';

/** Behind these comes what is: "I'd like to see ten, I've got four". */
const GOES_ON =
  /\b(?:(?<!\b(?:when|if|once|until|till|while|where|before|after|how|what|as) )(?:it's|it is)|i've|i have|i got|i'm|now|but|we've|we have|currently|instead|(?:and|so) (?:my|the) \w+ (?:weighs|reads|is at|is sitting))\b/i;

function isHoped(told: string, frame: Frame): boolean {
  return startsClause(frame) && namesReading(told) && !GOES_ON.test(told);
}

/** What is to be read yet, or never will be. What is wanted done is told by others. */
const notRead: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  if (span === null || !isHoped(frame.wordsOf(span), frame)) return null;
  return SETS.test(frame.wordsOf(span)) ? remark(tags, frame) : {};
};
/** "I'm gonna bring the cut-out down to five": what is about to be set is not lost, nor set yet. */
const SETS =
  /^(?:set|bring|drop|turn|take|move|raise|lower|bump|crank|put) (?:the|that|this|it|her)\b.*\b(?:cut ?-?(?:in|out)|stat|thermostat|set ?point|control|switch|differential)\b/i;

/** Told of a quantity that nobody read: until it is so, so that it is so, where it is so for somebody else. */
const unread: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  if (span === null || !startsClause(frame)) return null;
  const told = frame.wordsOf(span);
  return holdsNumber(told) && !GOES_ON.test(told) ? {} : null;
};

/** The same of a part: nobody saw it so. */
const unseen: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  if (span === null || !startsClause(frame)) return null;
  const told = frame.wordsOf(span);
  return GOES_ON.test(told) || NAME_GOES_ON.test(told) ? null : {};
};
/** "Drain pan" is no drain. */
const NAME_GOES_ON =
  /^(?:pan|line|motor|motors|coil|fan|fans|pressure|switch|control|valve|heater|gasket|relay|cap|bulb|screen|timer|clock|side)\b/i;

/** "Compressor was bad last year" */
const seenBefore = remark;

/** "I thought head was two ten but it's two oh one" */
const readAfterAll: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const found =
    quantity === null ? null : reading(quantity, amountIn(tagsIn(tags['read']) ?? {}), frame);
  return found === null ? null : { readings: [found] };
};

const I = '[(and|but|so|ok)] [(i|we|you|they|he|she)]';
const BE = '[(am|are|is|was|were|just|really|still|would|had|have|will)]';

const ON_ANOTHER_DAY =
  '(last (year|month|week|summer|winter|spring|fall|time|visit|call)|yesterday|the other day|(a|<number>) (year|month|week|years|months|weeks|days) ago|when (i|we) were [last] here|the last time)';

/** What is hoped, expected, aimed at and supposed: no instrument showed it. */
export const HOPE_RULES: readonly Rule[] = [
  rule(
    '[(and|but|so|ok)] (maybe|(make|be) sure [that]|[there is] no way|(i|we) thought|[(i|we)] [(am|was|were|are)] (hoping|praying|afraid|wondering if|worried)|nobody (said|says|told me)|(do|did|does|would) (you|he|they|she|they) (think|know|say|figure|suppose)|(my|his|her|their|a) (buddy|friend|brother|brother in law|cousin|partner|neighbor|helper|boss) is) [(the|my|that|this|a|his)] <part> (is|are|was|were|has|had|got|will|did|does) <clause>',
    unseen,
    {
      unheard: true,
      examples: ['make sure the compressor is running', 'i thought the contactor was bad'],
    },
  ),
  rule(
    '[(and|so|but)] ((you|we|i) [(never|do not|would not)] want|(it|they|that|we|you|he) (do|does|will|would) not (get|end up with|let|make)) [(to get|to have)] <the> <part> <clause>',
    unseen,
    { unheard: true, examples: ['you never want the compressor hot'] },
  ),
  rule(
    '[(and|so|but)] <the> <part> is [(probably|definitely|just|only|always)] (going to|about to|bound to|liable to) <clause>',
    seenBefore,
    { unheard: true, examples: ['the compressor is going to be hot'] },
  ),
  rule('(does|do|did) <the> <part> (look|sound|feel|seem|smell|act) <clause>', unseen, {
    unheard: true,
    examples: ['does the compressor look bad'],
  }),
  ...['<very> <state>', '<done>'].map((so) =>
    rule(
      `<the> <part> (was|were|got|had been) [(already|also|still|all)] ${so} ${ON_ANOTHER_DAY}`,
      seenBefore,
      {
        unheard: true,
        examples:
          so === '<done>'
            ? ['compressor was replaced last year']
            : ['compressor was bad last year'],
      },
    ),
  ),
  rule(
    '[(and|but|so|ok)] ((until|till|once|by the time|whenever|say|make sure [that]|be sure [that]|[there is] no way|let (us|is) (get|keep|hold|bring)|let|(my|his|her|their|a) (buddy|friend|brother|brother in law|cousin|partner|neighbor|helper|boss) is|target|desired|ideal|goal) [(the|my|that|this|your)] (<quantity>|<place> [(amps|amp draw|current)])|when [(the|my|that|this)] <quantity> (gets|reaches|hits|comes|goes|drops|climbs|falls|rises)) <clause>',
    unread,
    {
      unheard: true,
      examples: [
        'make sure head is one ninety',
        'until superheat is twelve',
        'target head is one ninety',
      ],
    },
  ),
  rule(
    '[(i|we)] (thought|figured|could have sworn|would have said|assumed) [(the|my)] <quantity> was [at] <amount> (but|and) (it is|it was|it is really|it is actually|now it is) [at] <amount:read>',
    readAfterAll,
    { examples: ['i thought head was two ten but it is two oh one'] },
  ),
  rule(
    `${I} ${BE} [(just|really|still)] (hoping|hope|expecting|expect|figuring|figure|guessing|guess|assuming|assume|trying (to|for)|~~planning (to|on)|~~plan (to|on)|~~considering|looking (for|to)|shooting|aiming|going (to|for)|need|needs|want|wants|got to|have to|would (like|love)|(i|we|they|he|she) (like|love)|thought|thinking) <clause>`,
    notRead,
    { examples: ['hoping suction comes up to twenty'] },
  ),
  rule(
    '[(it|she|that|they|this|this thing|suction|head|superheat|box|subcooling|pressure|pressures|amps)] (could|can|might|may|ought to|should|would) (be|go|get|run|hit|draw|pull|climb|drop|end up|settle|come) <clause>',
    notRead,
    { examples: ['it could be as high as three hundred on the head'] },
  ),
  rule(
    '[(the|my|our|that|factory|design|maker is|a)] (target|spec|goal|design|aim|rule|norm) [(here|on (this|it))] (is|says|calls for|would be|was) <clause>',
    notRead,
    { examples: ['spec is ten degrees superheat at the compressor'] },
  ),
  rule(
    '[(it|they|she|this thing|that)] used to (be|run|sit|read|hold|draw|pull) <clause>',
    notRead,
    {
      examples: ['used to run at fifteen pounds suction'],
    },
  ),
];
