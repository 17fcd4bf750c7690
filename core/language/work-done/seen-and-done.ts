import type { FindingStateId, PartId } from '../../terms/names.ts';
import { startsClause } from '../words/clause-start.ts';
import { electrical, one } from '../electrical/electrical.ts';
import { FANS, settledFan, TURNS } from '../words/fans.ts';
import { finding } from '../findings/finding-of.ts';
import { amountIn } from '../numbers/measure.ts';
import { isNotDone } from '../words/not-done.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId } from '../slots.ts';
import { remarkWithoutNumber } from '../plain-means.ts';

/** "Evap fans shut off when you open the door": what it does at somebody's hand is no state of it. */
const doesAtHand: Means = (tags, frame) => {
  const told = remarkWithoutNumber(tags, frame);
  const part = partId(tags['part']);
  const { doing } = tags;
  if (told === null || part === null) return null;
  return doing === undefined || doing === 'running' || doing === 'notRunning'
    ? { ...told, names: part }
    : null;
};

/** "Fan kicks on and off by itself": a compressor that does so short cycles; what a fan is to do nobody told. */
const onAndOff: Means = (tags, frame) =>
  tags['part'] === 'compressor'
    ? { findings: [finding('compressor', 'shortCycling', frame)] }
    : doesAtHand(tags, frame);

const MOTOR_OF: Partial<Record<PartId, PartId>> = {
  condenserFan: 'condenserFanMotor',
  evaporatorFan: 'evaporatorFanMotor',
};

/** Bearings that go are their motor's end. */
const bearingGoes: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part === null || !TURNS.includes(part)) return null;
  return { findings: [finding(MOTOR_OF[part] ?? part, 'failed', frame)] };
};

const ofFans =
  (state: FindingStateId): Means =>
  (tags, frame) => {
    const part = partId(tags['part']);
    if (part === null || !TURNS.includes(part)) return null;
    const of = (each: PartId): Meaning => ({ findings: [finding(each, state, frame)] });
    if (part !== 'fan') return of(part);
    const means = (last: PartId): Meaning => of(FAN_OF[last] ?? 'fan');
    return { ofIt: { means, inSentence: true, otherwise: of('fan') } };
  };
/** "Evap's iced up, two fans down": its own. */
const FAN_OF: Partial<Record<PartId, PartId>> = {
  evaporator: 'evaporatorFan',
  condenser: 'condenserFan',
  ...Object.fromEntries(FANS.map((fan) => [fan, fan])),
};

const WASHED: readonly PartId[] = [
  ...(['condenser', 'evaporator', 'filter', 'drainPan', 'fanBlade', 'condenserFan'] as const),
  ...(['evaporatorFan', 'drainLine'] as const),
];

/** "Hit the condenser with foaming cleaner, rinsed it" */
const washed: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part === null || !WASHED.includes(part) || isNotDone(frame)) return null;
  const words = frame.wordsOf(frame.span);
  return { work: [{ did: 'wash', part: settledFan(part, frame.context), words }] };
};

/** "Can't hold my hand on the discharge line" */
const tooHot: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const isByHand = /\bhand\b/i.test(frame.wordsOf(frame.span));
  return part === null || !isByHand ? null : { findings: [finding(part, 'hot', frame)] };
};

/** Ours: run capacitors are of no more; a bare number above may be the volts on it. */
const MOST_OF_RUN = 150;
/** "Fan cap tested four point one": what a capacitor tests at are microfarads. */
const tested: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  if (value === null || value > MOST_OF_RUN || (unit !== null && unit !== 'uF')) return null;
  const isStart = /\bstart\b/i.test(frame.wordsOf(frame.span));
  const place = isStart ? 'startCapacitor' : 'runCapacitor';
  return one(electrical({ ...tags, unit: 'uF' }, place, frame));
};

const begins = (frame: Frame): boolean => startsClause(frame);

const AT_HAND =
  '(when|if|every time|whenever|as soon as|once|anytime|any time|until) (you|i|we|they|somebody|someone|the door|anybody|a door) <clause>';
const ON_OFF =
  '(on and off|off and on|in and out|on then off|back and forth|on off on off) [(by (itself|themselves)|all (day|the time)|constantly|every (few|couple of|couple) (minutes|seconds)|again|a lot|like it should|on pressure)]';
const WITH =
  'with (some|a|the|a little|my|a bunch of|plenty of|hot|water|coil|foaming|foam|acid|alkaline|degreaser|soap|cleaner) [(foaming|foam|coil|acid|alkaline|non acid|self rinsing|hot|mild|garden|pressure|soapy|water)] [(coil|foaming)] [(cleaner|foam|degreaser|soap|hose|water|washer|brush|solution|bleach|sprayer|spray)]';

/** What was seen and done, told in words that are no state and no work by themselves. */
export const SEEN_AND_DONE_RULES: readonly Rule[] = [
  rule(`<the> <part> <doing> ${AT_HAND}`, doesAtHand, {
    unheard: true,
    only: begins,
    examples: ['evap fans shut off when you open the door'],
  }),
  rule(
    `<the> <part> [(keeps|kept|is|just|will)] (kicks|kick|kicking|comes|come|coming|cycles|cycle|cycling|goes|go|going|turns|turn|turning|cuts|cut|cutting|clicks|clicking|starts) ${ON_OFF}`,
    onAndOff,
    { unheard: true, examples: ['fan kicks on and off by itself'] },
  ),
  rule(
    `<the> <part> [is] (bearing|bearings|bushing|bushings) (is|are|has|have|sound|sounds|was|were) [(really|about|pretty|just|starting to|all|like they are)] (going|gone|going bad|going out|bad|shot|failing|go|worn|worn out|noisy|loud|squealing|screaming|growling|rough|dry|seized|wiped out|on the way out|tight|loose|toast|had it)`,
    bearingGoes,
    { unheard: true, examples: ['evap fan motor bearing is going'] },
  ),
  rule(
    '[(i have|i have got|there is|there are|got|with|and)] (two|three|four|a couple [of]|both|half the|one of the) <part> [(are|is)] (down|out|dead|off|stopped|not (running|turning|spinning|working))',
    ofFans('notRunning'),
    { unheard: true, examples: ['two condenser fans down'] },
  ),
  rule(
    `[(i|we|and|then|just|i just)] (hit|sprayed|blasted|foamed|soaked|doused|hosed|coated|scrubbed|treated|shot) <the> <part> [(down|off|out|good|real good)] ${WITH} [<pause>] [(and|then|and then)] [(let it (sit|soak|work|dwell)) [<pause>]] [(and|then)] [(rinsed|rinsed|hosed|flushed|washed) [(it|that|everything)] [(off|out|down|good|through)]]`,
    washed,
    { unheard: true, examples: ['hit the condenser with foaming cleaner rinsed it'] },
  ),
  rule(
    '<the> [(run|start|fan|dual|compressor|motor|condenser fan|evap fan|hard start)] (cap|capacitor) [(is|only|just)] (tested|tests|testing|measured|measures|measuring|metered|checked|checks) [(out|in)] [(at|good at|bad at|low at)] [(only|just)] <amount>',
    tested,
    { unheard: true, examples: ['fan cap tested four point one'] },
  ),
  rule(
    '[(i|you|we)] (can not|could not|can barely|could barely|can hardly) [even] (hold|keep|put|leave|lay|touch) [(my|your|a)] [hand] [on] <the> <part>',
    tooHot,
    { unheard: true, examples: ['can not hold my hand on the discharge line'] },
  ),
  rule(
    '[so] (i am|we are|i will be|we will be|i am going to be) (ordering|getting|grabbing|bringing|picking up|pricing) (one|another one|a new one|a couple) [(today|tomorrow|now|in the morning|from the (shop|supply house)|up|in|for it|for this)]',
    (_tags, frame) => ({ remarks: [frame.wordsOf(frame.span)] }),
    { unheard: true, examples: ['i am ordering one'] },
  ),
  rule(
    `[(there is|got|we have|i have|i see)] (snow|frost|ice) (all over|built up on|hanging (off|from)|on|covering) <the> (ceiling|walls|wall|floor|shelves|product|boxes|door frame|roof) [(of|in|inside) (the|this) (freezer|box|cooler|walk in)]`,
    remarkWithoutNumber,
    { unheard: true, examples: ['there is snow all over the ceiling of the freezer'] },
  ),
];
