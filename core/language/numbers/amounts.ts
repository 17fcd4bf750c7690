import {
  choice,
  greedy,
  heardAs,
  named,
  optional,
  pause,
  repeat,
  scope,
  sequence,
  tag,
  unheard,
  written,
  word,
} from '../../grammar/nodes.ts';
import { parseShape } from '../../grammar/shape.ts';
import {
  COUNTED_NUMBER,
  HUNDREDS_OF_GRAMS,
  NUMBER,
  SHORT_NUMBER,
  UNDER_SIXTEEN,
  WHOLE_NUMBER,
} from './numbers.ts';
import { LETTER_C, UNIT, WORDED_UNIT } from './units.ts';

/** What stands between a quantity and its value. */
export const LINKS = named(
  'link',
  parseShape(
    '[(is|at|was|~(is|was) (climbing|rising|dropping|falling|coming (up|down)|going (up|down)) [and] [it is] (now|at|now at)|~(checks|tests|measures|checked|tested|measured) at|~(is|was|are|has|have) ([(right|back)] (up|down) to|dropped [(down|back)] to|come [back] (up|down) to|climbed [(up|back)] to|gone [(up|down)] to|pulled [down] to|pulling down to|crept up to|dropping to|fallen to|risen to|rising to|climbing to|getting to)|~(is|was) (at|now|sitting [(at|on)]|running|reading|showing|down to|up to|still|bouncing|floating|swinging|going|moving|hovering [at]|hanging (at|around)|pegged at|stuck at|steady at|settled [out] at|parked at|like|you know|let is see|let us see)|~(reads|reading|shows|was|are|were|now|equals|to|of|running|sitting at|sits at|(holding|held) [at]|set at|set to|set for|came in at|came to|comes to|up to|down to|went to|dropped to|climbed to|pulled down to|pulling|it is|got|measured|checks|measures|showing|on|says|is set at|is set to|is set for|is like|is running at|is holding [at]|is pulling|~~is using|that is|looks like|comes in at|came up to|came down to|stays at|stayed at|weighs|is weighing|has|is reading at|is coming in at|for|(is|has) been [at]|is right at|right at))]',
  ),
);

/** Words that tell nothing of a value, any run of which may stand before it; a hedge is no such word, and "over" tells more. */
const LOOSE_WORDS =
  'first|anywhere|(settled|leveled|evened|steadied|balanced|topped|bottomed) (in|out|off)|a (sorry|toasty|balmy|whopping|miserable|lousy|healthy|measly|crazy|ridiculous|comfortable|cozy|mere|chilly|nice)|done|hung|sat|stood|yonder|up yonder|in there|dives|dove|dived|plunges|plunged|sinks|sank|tanks|tanked|spikes|spiked|shoots|shot|is|are|was|were|has|have|been|being|at|to|just|only|still|already|now|right|currently|even|sitting|riding|running|reading|holding|hovering|hanging|held|holds|floating|bouncing|showing|going|getting|coming|came|come|comes|went|goes|gone|got|gets|dropped|drops|drop|dropping|fell|fallen|falls|falling|climbed|climbs|climbing|crept|creeps|creeping|rose|risen|rising|jumped|jumps|settled|settles|stays|stayed|staying|stuck|parked|pegged|steady|solid|flat|back|hit|reached|touched|up|down|all|the|way|like|well|really|pretty|it|that|there|here|this|finally|so|then|again|says|reads|shows|said|showed|read|looks|looking|dead|exactly|a|an|good|high|low|hot|cold|warm|too|bit|little|kind|of|sort|about to be|by now|fine|perfect|normal|ok|right on|on the money|spot on|dead on|where it (should|ought to|needs to) be|(right|about|pretty much) where (i|we) want it|in range|in line|coming off|comes off|came off|come off|today|every time|i am|i have|we have|we are|gives me|giving me|tells me|sits|runs|rides|bounces|swings|hunts|cycling|cycles|varies|ranges|wanders|drifts|hunting|ranging|drifting|pulled|pulling|pulls|swinging|swings|measured|measures|measuring|works|worked|weighed|checks|checked|tested|out|started|starts|began|ended|finished|like a (rock|stone)|fast|quick|quickly|slowly|straight|in the (toilet|dirt|basement|tank)|through the roof|sky high|cooking|roasting|boiling|freezing|burning|screaming|about to';

/**
 * Of these words those that are long enough to be heard. A run of short ones fits almost any sound: "pressure two seventy
 * seven" was heard as "pressure are too is seventy seven".
 */
const HEARD_LOOSE =
  '[(is|was|are|has|it is)] [(just|still|already|now|right|currently|only)] (sitting|riding|running|reading|holding|hovering|hanging|floating|bouncing|showing|going|getting|coming|came|come|went|dropped|drops|fell|fallen|climbed|climbs|crept|rose|risen|jumped|settled|settles|stays|stayed|staying|stuck|parked|pegged|steady|swings|swinging|runs|sits|been|hunting|drifting|ended|started|just|still|currently|now) [(back|right|pretty|steady|solid|out|all the way|around)] [(up|down)] [(at|to)]';

export const LOOSE = named(
  'loose',
  heardAs(repeat(parseShape(LOOSE_WORDS), 1, 7), parseShape(HEARD_LOOSE)),
);

const HEDGE = parseShape(
  '(about|around|roughly|approximately|~almost|~nearly|~maybe|~close to|~just (under|over|about)|~somewhere [around]|~something like|~like about|~right around|~approx|~pushing|~just (shy of|above|below)|~a (hair|touch|little|bit|tick|shade) (over|under|above|below|better than)|~knocking on|~upwards of|~at least|~easily|~every bit of|~right at about|~call it|~pretty much|~in the neighborhood of)',
);

const HEDGED = sequence(HEDGE, tag({ hedged: true }));

const HEDGED_BEHIND = sequence(
  parseShape('or so|ish|odd|give or take|more or less|or thereabouts|or close to it'),
  tag({ hedged: true }),
);

const plain = named(
  'plainAmount',
  sequence(
    optional(unheard(HEDGED)),
    optional(
      choice(
        sequence(parseShape('minus|negative'), tag({ negative: true })),
        // "box plus four": where it freezes outside, zero has two sides.
        unheard(parseShape('plus|positive')),
      ),
    ),
    NUMBER,
    // "box forty psi" is not a box at forty.
    choice(
      greedy(WORDED_UNIT),
      LETTER_C,
      // "three quarters of a pound"
      unheard(sequence(parseShape('[of] (a|an)'), WORDED_UNIT)),
    ),
    optional(unheard(sequence(parseShape('below [zero]|under zero'), tag({ negative: true })))),
    greedy(unheard(HEDGED_BEHIND)),
  ),
);

const BREAK = parseShape(
  '(no wait|~(no|wait|sorry|make that|make it|i mean|i meant|scratch that|strike that|correction|rather|actually|or rather|excuse me|no no)) [~(no|wait|sorry|make that|make it|i mean|it is|that is|actually|scratch that)] [~(it is|that is|sorry|i mean|make that)]',
);

const overLimit = sequence(
  parseShape('over limit|~(ol|o l|infinite|infinity|open line|out of limits)'),
  tag({ overlimit: true }),
);

const range = choice(
  parseShape('[<hedge>] between <number:low> and <counted:high> [<unit>]', {
    hedge: HEDGED,
    number: NUMBER,
    counted: COUNTED_NUMBER,
    unit: UNIT,
  }),
  parseShape(
    '<short:low> (or|<pause>) <short:high> (right in there|somewhere in there|in there somewhere|in that (range|area|neighborhood))',
    { short: SHORT_NUMBER, pause },
  ),
  parseShape('[<hedge>] [from] <number:low> (to|through|or) <number:high> [<unit>]', {
    hedge: HEDGED,
    number: NUMBER,
    unit: UNIT,
  }),
);

/** Pounds and ounces said together make one weight; "two pounds and a half" is not half an ounce over. */
const POUNDS = '<number:pounds> (pounds|pound) [and]';
const compound = choice(
  parseShape(`${POUNDS} <number:ounces> (ounces|ounce)`, { number: NUMBER }),
  parseShape(`${POUNDS} <few:ounces>`, { number: NUMBER, few: UNDER_SIXTEEN }),
  sequence(
    scope(
      'pounds',
      sequence(choice(word('a'), unheard(word('another'))), word('pound'), tag({ number: 1 })),
    ),
    parseShape('[and] <few:ounces> [(ounces|ounce)]', { few: UNDER_SIXTEEN }),
  ),
);

const corrected = sequence(scope('wrong', plain), BREAK, choice(compound, plain, overLimit));

/** "One kilo two hundred": behind kilos three figures are grams. */
const kilos = choice(
  parseShape(
    '<number:kilos> (kilo|kilos|kg|kilogram|kilograms) [and] <number:grams> (grams|gram|g)',
    {
      number: WHOLE_NUMBER,
    },
  ),
  parseShape('<number:kilos> (kilo|kilos|kg|kilogram|kilograms) [and] <hundreds:grams>', {
    number: WHOLE_NUMBER,
    hundreds: HUNDREDS_OF_GRAMS,
  }),
);

/** "a pound and a half", "about two kilos and three quarters" */
const andParts = sequence(
  optional(HEDGED),
  choice(sequence(choice(word('a'), word('an')), tag({ number: 1 })), WHOLE_NUMBER),
  UNIT,
  choice(
    sequence(parseShape('and a half'), tag({ over: 0.5 })),
    sequence(parseShape('and (a|one) quarter'), tag({ over: 0.25 })),
    sequence(parseShape('and three quarters'), tag({ over: 0.75 })),
  ),
);

/** One value with whatever unit was said beside it. */
export const AMOUNT = named(
  'amount',
  choice(plain, unheard(choice(compound, kilos, andParts, corrected, range, overLimit))),
);

/** What is weighed, which may be hedged in pounds and ounces as well: "five pounds three or so". */
export const WEIGHT = named(
  'weight',
  choice(
    AMOUNT,
    written(sequence(optional(HEDGED), choice(compound, kilos, andParts), optional(HEDGED_BEHIND))),
  ),
);
