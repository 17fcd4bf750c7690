import { FIGURE, goesOnMeasured, holdsNumber } from '../words/own-reading.ts';
import { NAME_WORDS } from '../names/name-words.ts';
import { toldThenRead } from './read-behind.ts';
import { startsClause, wordBefore } from '../words/clause-start.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { spanIn } from '../slots.ts';
import { WordSet } from '../words/word-set.ts';

/** Kept as a memo or doubted, whichever its numbers allow; what is read off gauges behind it is ours. */
const hearsay: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  if (span === null) return null;
  // "What did he say the head was"
  if (/^(?:do|does|did|would)$/i.test(wordBefore(frame))) return null;
  const words = frame.wordsOf(span);
  // "The last guy was here in October he says and all he did was…": said of what stands before it.
  if (/^(?:and|but|so)\b/i.test(words) && !startsClause(frame)) return null;
  const both = toldThenRead(words, frame);
  if (both === null) return { hearsay: words };
  const { from, to } = frame.span;
  const told = frame.wordsOf({ from, to }).slice(0, both.told.length - words.length);
  return { memos: [told], readings: both.readings };
};

/** "Teacher says the milk cooler was at fifty": whoever it is, it is no instrument and no paper, and not us. */
const saidBySomebody: Means = (tags, frame) => {
  const { to } = frame.span;
  const from = clauseFrom(frame);
  const speaker = frame.wordsOf({ from, to: frame.span.from });
  if (!SPEAKER.test(speaker) || NOBODY.test(speaker) || holdsNumber(speaker)) return null;
  if (NAMES.hasWord(wordBefore(frame).toLowerCase())) return null;
  const told = frame.wordsOf({ from, to });
  return holdsNumber(told) ? hearsay(tags, frame) : { memos: [told] };
};

/** Where the clause begins in which it stands. */
function clauseFrom(frame: Frame): number {
  let { from } = frame.span;
  while (from > 0 && !PAUSE.test(frame.wordsOf({ from: from - 1, to: from + 1 }))) from -= 1;
  return from;
}
const PAUSE = /[,.;:?!…—]/;
/** "High side says two forty" */
const NAMES = new WordSet(NAME_WORDS);
const SPEAKER = /^[a-z']+(?: [a-z']+){0,6}$/i;
const NOBODY =
  /\b(?:i|i'[a-z]+|we|we'[a-z]+|you|it|it's|that|this|which|name ?plate|plate|tag|sticker|label|decal|gau?ges?|meter|display|watt ?meter|multi ?meter|megger|manometer|ohm ?meter|readout|screen|thermometer|probe|stat|thermostat|controller|clock|watch|book|chart|manual|phone|app|sign|paper|scale|what|as|like|never|not|nobody|head|suction|box|can|cap|clamp|door|one|mine)\b/i;

/** Somebody's words go on to the end; "owner says it's leaking, head one ninety" up to where we go on ourselves. */
const upTo =
  (where: 'end' | 'pause', means: Means): Means =>
  (tags, frame) => {
    const span = spanIn(tags['clause']);
    if (span === null) return null;
    const isOurs = goesOnMeasured(frame.wordsOf({ from: span.from, to: endOf(frame) }));
    return isOurs === (where === 'pause') ? means(tags, frame) : null;
  };

const MOST_WORDS = 200;

function endOf(frame: Frame): number {
  let { to } = frame.span;
  while (to - frame.span.to < MOST_WORDS && frame.wordsOf({ from: to, to: to + 1 }) !== '') to += 1;
  return to;
}

interface Told {
  readonly shape: string;
  readonly means: Means;
  readonly examples: readonly string[];
}

const TOLD: readonly Told[] = [
  {
    shape:
      '(<who>|he|she|they|somebody|someone|my boss|the boss|boss|dispatch|the office|the supply house|tech support|(my|the|our|his|her) (helper|apprentice|partner|buddy|coworker|lead|supervisor|service manager|guy|wife|husband)) (says|said|told me [that]|told us|claims|claimed|thinks|thought|figures|figured|reckons|reports|reported|complained|complains|mentioned|states|stated|is saying|was saying|swears|say|told|is telling (me|us)|was telling (me|us)|tells (me|us)|is sure|is worried|was worried)',
    means: hearsay,
    examples: ['customer says it was at fifty', 'he said it was at fifty'],
  },
  {
    shape:
      '[(the|that|some|their|our|whatever|another)] ((last|other|previous|first|day|night|original|service) (guy|tech|company|crew|mechanic|technician|outfit) [(before me|here|that was here)]|(guy|tech|company|crew|mechanic|technician|outfit|one) (before me|that was here [before [me]]|who was here [before [me]])|~~(installer|contractor|installing contractor|electrician|plumber|builder|general contractor|mechanical contractor|factory rep)) (says|said|told (me|us|them|him|her)|claims|claimed|thinks|thought|reported|figured|wrote|swore|mentioned|(left|put|has|had) [(me|us|them|behind)] a (note|tag|sticker) [(that|on it|here|in (here|there|it)|on the (door|unit|box|panel))] [that] (says|saying|said))',
    means: hearsay,
    examples: ['the last tech told them the compressor was shot'],
  },
  {
    shape: '(i was told|we were told|i am told|i have been told)',
    means: hearsay,
    examples: ['i was told it was at fifty'],
  },
  {
    shape: '(says|said|told me|told us|claims|claimed|mentioned|swears|swore|reported|complained)',
    means: saidBySomebody,
    examples: [],
  },
  {
    shape: '(according to|per) <who>',
    means: hearsay,
    examples: ['according to the customer it was at fifty'],
  },
  {
    shape:
      '(his|her|their) (gages|gage|meter|reading|readings|note|notes|ticket|paperwork|thermometer|wall thermometer|stick thermometer) [(on|in|by|at) the (wall|door|box|case|kitchen|cooler|freezer|shelf|counter)] (says|say|said|showed|had|read)',
    means: hearsay,
    examples: ['his gages said one ninety on the head'],
  },
];

/** "Fish was fifty, says the cook": who said it comes last. */
const saidBehind: Means = (_tags, frame) =>
  frame.endsAtPause ? { hearsay: frame.wordsOf(frame.span).replace(WHO_SAYS, '') } : null;
/** Not "two he" of "twenty two he says". */
const SPEAKS = `(?!\\S+ (?:he|she|they) |${FIGURE}\\b)(?:the |my )?\\S+(?: \\S+)?`;
const WHO_SAYS = new RegExp(
  `[,\\s]+(?:(?:says|said|claims|claimed|swears|according to|per) .*|${SPEAKS} (?:says|said|claims|claimed|told me|swears|wrote|put|noted|logged|had)(?: down)?)$`,
  'i',
);

const WHEN_THEY =
  '[<pause>] [(when|before|after) (they|we|he|she|the (cook|chef|manager|staff)) (opened|closed|got (in|here)|came in|left|started|opened up)] [(this morning|last night|yesterday|earlier|today)]';
const TOLD_BY =
  '(<who>|he|she|they|somebody|dispatch|the office|the (last|other) (guy|tech|company|fella|man)|my (helper|apprentice|partner))';

/** What somebody else said: never a reading of ours. */
export const HEARSAY_RULES: readonly Rule[] = [
  rule(
    `[the] <quantity> <link> <amount> ${WHEN_THEY} [<pause>] ((says|said|claims|claimed|swears|according to|per) ${TOLD_BY}|${TOLD_BY} (says|said|claims|claimed|told me|swears))`,
    saidBehind,
    { unheard: true, examples: ['fish was fifty when they opened this morning says the cook'] },
  ),
  rule(
    `[(it|that)] [(was|is)] ([the] <quantity> <link> <amount>|<amount> (on|for) [the] <quantity>) [<pause>] [(is what|was what|that is what)] ${TOLD_BY} (wrote|put|noted|logged|had) [down]`,
    saidBehind,
    { unheard: true, examples: ['twenty two on superheat he wrote'] },
  ),
  ...TOLD.flatMap(({ shape, means, examples }) => [
    rule(`${shape} <rest>`, upTo('end', means), { examples }),
    rule(`${shape} <clause>`, upTo('pause', means)),
  ]),
];
