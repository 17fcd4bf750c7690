import { SHOWN_UNITS, thermalSystem } from '../../units/shown-unit.ts';
import { amountIn, unitFor } from '../numbers/measure.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { placeId, quantityId, refrigerantId } from '../slots.ts';
import type { SafetyTopic } from '../utterance.ts';
import { aboutIn, ask, MY, plain } from './asking.ts';

const history: Means = () => ask({ ask: 'history' });
const testLimit: Means = () => ask({ ask: 'limit', about: 'testPressure' });
const safety =
  (about: SafetyTopic): Means =>
  () =>
    ask({ ask: 'safety', about });

const asksAbout =
  (kind: 'target' | 'value' | 'compare'): Means =>
  (tags) => {
    const about = aboutIn(tags);
    return about === null ? null : ask({ ask: kind, about });
  };

/** A pressure in degrees is what it boils or condenses at. */
const inDegrees: Means = (tags, { context: { lastQuantity } }) => {
  const named = quantityId(tags['quantity']) ?? lastQuantity;
  if (named === 'headPressure') return ask({ ask: 'value', about: 'condensingTemp' });
  return named === 'suctionPressure' ? ask({ ask: 'value', about: 'evaporatingTemp' }) : null;
};

/** Above it a number alone is no temperature that anything here boils or condenses at. From memory. */
const HOTTEST = { us: 200, si: 95 } as const;

/** A number alone may be a temperature or a pressure: which one, its size or what is asked for tells. */
const saturation: Means = (tags, frame) => {
  const { value, unit: said } = amountIn(tags);
  const { units } = frame.context;
  if (value === null) return null;
  const asksHeat = /\b(?:what|a what) (?:coil|temp)/i.test(frame.wordsOf(frame.span));
  const isPressure = asksHeat || value > HOTTEST[thermalSystem(units)];
  const bare = value < 0 ? 'degrees' : isPressure ? SHOWN_UNITS[units].gaugePressure : null;
  const loose = said ?? bare;
  if (loose === null) return { unclaimed: [String(value)] };
  const unit = unitFor(loose, 'temperature', units) ?? unitFor(loose, 'gaugePressure', units);
  if (unit === null) return null;
  return ask({
    ask: 'saturation',
    value: unit === 'inHg' ? 0 - Math.abs(value) : value,
    unit,
    refrigerant: refrigerantId(tags['refrigerant']),
  });
};

const switchOpen: Means = (tags) => {
  const place = placeId(tags['place']);
  return place === null ? null : ask({ ask: 'switch', about: place });
};

const ON = '[(on|for|with|in) [the] <refrigerant>]';
const THEM =
  '(he|she|they|we|it|anybody|anyone|somebody|someone|whoever|the (last|other|previous|old) (guy|fella|fellow|tech|man|bloke|lad|crew|company|outfit|mechanic|one)|that (other|last) (guy|fella|fellow|tech|man|bloke|lad|crew|company|outfit|one))';
const DID =
  '(find|do|put [in]|change|replace|fix|leave|say|charge|add|recover|use|blame|set|adjust|swap|have)';
const THEN =
  '(last (time|visit|month|week|year|spring|summer|fall|winter|trip|call)|the last (time|visit|trip|call)|in the (spring|summer|fall|winter)|back then|before|the time before|in (january|february|march|april|may|june|july|august|september|october|november|december))';
const RECKON =
  '[<pause>] [(do (you|we) (know|think|reckon)|any idea|by chance|roughly|or what|eh|then|bud|mate)]';

/** Questions as people put them to people, where the number, the pronoun or the word order is another. */
export const FREE_QUESTIONS: readonly Rule[] = [
  rule(
    '(why is (it|that|this|she)|how come (it|that|this|she) is) [(so|running|way|that|this)] [(so|that|this)] (high|low|hot|cold|warm|loud)',
    plain('causes'),
    { unheard: true, examples: ['how come it is so high'] },
  ),
  rule(
    'what (do|would|did) you (think|reckon|say|figure|suggest) (i|we) (should|ought to|need to) (check|look at|do|try|measure|test) [(next|first|now)]',
    plain('nextCheck'),
    { unheard: true, examples: ['what do you think i should check next'] },
  ),
  rule(
    'what (have|did) ((i|we) not (done|do|finished|finish)|not (i|we) (done|do|finished)) [yet]',
    plain('leftOpen'),
    { unheard: true, examples: ['what have i not done yet'] },
  ),
  rule(
    `what (did|would|has|had) ${THEM} ${DID} [(it|here|this|that|them|in|on it|in it|with it|to it|on this|in this|on this one)] [(with|for)] [${THEN}] ${RECKON}`,
    history,
    {
      unheard: true,
      only: (frame) =>
        /\b(?:last|spring|summer|fall|winter|before|then|previous|other|old|guy|fella|tech|bloke|lad|crew)\b/i.test(
          frame.wordsOf(frame.span),
        ),
      examples: ['what did the last fella find here'],
    },
  ),
  rule(
    `(who (replaced|changed|cleaned|fixed|charged|serviced|put in|installed|touched|worked on) <the> <part> (before|last|last time|the last time)|when was <the> <part> (replaced|changed|cleaned|fixed|serviced|swapped|put in) last|when was (somebody|someone|anybody|anyone|one of us|a tech) last (out|here) [(to|on|at)] [(this [one]|it|here|this (unit|box))]|who (topped it up|charged it|worked on (it|this)|was (here|out here|on this)|serviced (it|this)|fixed (it|this)|touched (it|this)|cleaned (it|this)) (last|before|last time) [and how much]|was it (low [on (gas|charge)]|tripped|iced [up]|dirty|plugged|leaking|out|warm|down) (the last (time|visit)|last (time|visit|month|year)) [too]) ${RECKON}`,
    history,
    { unheard: true, examples: ['who topped it up last'] },
  ),
  rule(
    `(have|did) (i|we) [(already|ever)] (tell|told|give|gave|say|said|mention|mentioned) [you] [(what|about)] ${MY} <asked> [(is|was|were)] ${RECKON}`,
    asksAbout('value'),
    { unheard: true, examples: ['did i tell you the head'] },
  ),
  rule(
    '(have|did) (i|we) [(already|ever)] (tell|told|give|gave|mention|mentioned) you [(what|about)] ([the] (model|model number|serial|serial number|charge|plate|nameplate|make|gas|refrigerant)|what (gas|refrigerant|freon) (is in (it|here|this)|it (has|takes|uses|runs on)))',
    plain('readback'),
    { unheard: true, examples: ['have i told you the model number'] },
  ),
  rule(
    '(run me through|take me through|walk me through|fill me in on|catch me up on) (what (you|we) [(have|got|have got)]|what we are at|where we are [at]|it all|everything [so far])',
    plain('readback'),
    { unheard: true, examples: ['run me through what you have'] },
  ),
  rule(
    '(what (are you putting|is going|goes|did you put|will you put|have you put) (on|in|down on) the (report|note|ticket|paperwork|write up|bill)|what does it say (under|for|in the) (recommendations|findings|work|the work|readings)) [(for (them|the (customer|office|owner|manager))|so far|then)]',
    plain('note'),
    { unheard: true, examples: ['what are you putting on the report for the customer'] },
  ),
  rule(
    '(what [(usually|normally|mostly|generally)] (causes|would cause|makes) (that|this|it [(do (that|this))])|what is (up|the matter|the deal|the story) with (it|this|her|him|this one|that) [then]|what am i looking at here)',
    plain('causes'),
    { unheard: true, examples: ['what usually causes that'] },
  ),
  rule(
    `(could|would|will|might|does|can) (that|it|this) (push|drive|run|bring|drop|pull|make|take|put|get) ${MY} <quantity> [(up|down|all the way)] [(up|down)] [(to|at|past|over|under)] [<amount>]`,
    plain('causes'),
    { unheard: true, examples: ['could that push my head to three hundred'] },
  ),
  rule(
    'what (else|more) do you (need|want) [(from me|to know|off me)]|(how (do|would|can|should) (i|you|we) (tell|know) (if|whether|that) (it is|that is|this is|it was) [just] <the> <part>|how (do|would|can|should) (i|you|we) (check|test|ohm|prove|rule out) <the> <part>)',
    plain('nextCheck'),
    { unheard: true, examples: ['how would i check the expansion valve bulb'] },
  ),
  rule(
    `what is ${MY} (saturation|saturated temp|sat temp|boiling point|dew [point]|bubble [point]|condensing point) (at|for|of) <amount> ${ON}|(where|what temp|what temperature) does (it|this|the (gas|refrigerant|liquid|coil)|that) (boil|condense|saturate|sit) at <amount> ${ON}|[the] (dew|bubble|boiling) point (at|for|of) <amount> ${ON}|[so] <amount> ${ON} (that is|is|works out to|comes out to|makes) (what|a what) (coil|coil temp|coil temperature|temp|temperature|saturation)|what is the (dew|bubble) at <amount> ${ON}`,
    saturation,
    { unheard: true, examples: ['what is my saturation at two twenty'] },
  ),
  rule(
    `what (does|would|is) ${MY} <quantity> (mean|work out to|come [out] to|convert to|equal|translate to|give me|make|get me) (in|for|as|for a|as a) (degrees|temp|temperature|coil temp|condensing|saturation|condensing temp|evap temp)|what is (that|it|this) (in|as) (degrees|temperature|temp|saturation|a temp)`,
    inDegrees,
    { unheard: true, examples: ['what does that suction mean in degrees'] },
  ),
  rule(`what is (that|it|this) (for|in|on|give me for) ${MY} <asked>`, asksAbout('value'), {
    unheard: true,
    examples: ['what is that for compression ratio'],
  }),
  rule(
    '[is] that [(about|look|looking|sound)] (right|ok|normal|close) or what',
    () => ask({ ask: 'compare', about: null }),
    { unheard: true, alone: true, examples: ['that about right or what'] },
  ),
  rule(
    `(where|what) is ${MY} <asked> (supposed|meant|going) to (land|settle [(out|in)]|end up|come in|finish [up]|sit|wind up|run|be [at]|read)`,
    asksAbout('target'),
    { unheard: true, examples: ['where is my subcooling supposed to land'] },
  ),
  rule(
    `(how (hot|high|low|cold) is too (hot|high|low|cold)|what is too (hot|high|low|cold)|where does it get too (hot|high|low|cold)) (for|on|in|with) ${MY} <asked>|what is the (lowest|highest|most|least|max|maximum|minimum|coldest|hottest) (i|you|we) (can|should|want to|dare) (let|have|run|see|allow) ${MY} <asked> [(get|go|be|run|drop|climb)] [to]`,
    asksAbout('target'),
    { unheard: true, examples: ['how hot is too hot on a discharge line'] },
  ),
  rule(
    'how (hard|high|far) can (i|we|you) (push|take|run|crank|go with) [(the|this|my)] (nitrogen|nitro|test|pressure test|test pressure) [(up|to|before <clause>)] [(on|in) (this|it|here)]|what can (i|we|you) (take|push|run|go|test) [(the|this|it)] [(nitrogen|low side|high side|system)] [up] to [(with (nitrogen|nitro)|on (this|it|here))]|what (can|will|does|would) (the (low side|high side|coil|evaporator|condenser|system|line set)|this (thing|unit|system|coil)|it) (stand|take|handle|hold|hold up to) (for|on|in|during) [(a|the)] [(nitrogen|pressure|leak)] test',
    testLimit,
    { unheard: true, examples: ['what can the low side stand for test'] },
  ),
  rule(
    '(does (that|this|it) mean|is that telling me|so is) <the> <place> (is|has) [(gone|been)] (out|open|tripped|opened|gone|dropped out)|(did|has) <the> <place> (let go|kick out|kicked out|drop out|dropped out|go out|gone out|pop|popped|go|gone) [or (what|not)]',
    switchOpen,
    { unheard: true, examples: ['did the high pressure switch let go'] },
  ),
  rule(
    '(do i need to|should i|do i have to|got to) (worry|be worried|be careful|fret) about (a spark|sparks|fire|flames|it (lighting [up]|catching|going up)|an ignition source|ignition) [(on|with|around|in|near) (<refrigerant>|this [(stuff|gas|one)]|here|it)]',
    safety('handling'),
    { unheard: true, examples: ['do i need to worry about a spark on two ninety'] },
  ),
  rule(
    '(can|should|could|may) i (put|stick|lay) (my|the|a) (meter|leads|probes|hands|fingers|screwdriver) (across|on|to|near|in) (the|that|this) (cap|capacitor|can|start cap|run cap) [or will it (bite|shock|zap|get) [me]]',
    safety('capacitor'),
    { unheard: true, examples: ['can i put my meter across the cap or will it bite'] },
  ),
];
