import { OHMS_AT } from '../electrical/electrical.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { placeId } from '../slots.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { ask, plain } from './asking.ts';

/** What a meter is read for at a place: of a can what it holds, of a winding ohms, of anything else volts. */
const meteredAt =
  (kind: 'target' | 'value'): Means =>
  (tags) => {
    const place = placeId(tags['place']);
    if (place === null) return null;
    const isCan = place === 'runCapacitor' || place === 'startCapacitor';
    const about: QuantityId = isCan ? 'capacitance' : (OHMS_AT[place] ?? 'voltage');
    return ask({ ask: kind, about });
  };

/** "What should that run cap be": of a can alone; a contactor is nothing of the kind. */
const canBe: Means = (tags, frame) =>
  tags['place'] === 'runCapacitor' || tags['place'] === 'startCapacitor'
    ? meteredAt('target')(tags, frame)
    : null;

const current =
  (kind: 'target' | 'value'): Means =>
  () =>
    ask({ ask: kind, about: 'current' });

/** Of a heater that was spoken of it is told by its ohms or its rating. */
const pullWanted: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const { lastPart, lastPlace } = frame.context;
  const isOther =
    place !== null || /\b(?:motor|fan|unit|compressor)\b/i.test(frame.wordsOf(frame.span));
  const about = [place, ...(isOther ? [] : [lastPart, lastPlace])].find(
    (each) => each === 'defrostHeater' || each === 'doorHeater',
  );
  return about === 'defrostHeater' || about === 'doorHeater'
    ? ask({ ask: 'judge', about })
    : current('target')(tags, frame);
};

const IT =
  '(it|she|this|that|this thing|this one|~~(that one|each [one]|each of (them|those)|they|those|the (good|new|other|last) one|one [of them])|<the> (<place>|motor|fan|unit))';
const THING = '(it|this|that|she|the (compressor|unit))';
const PULL = '(pull|draw|be (pulling|drawing)|amp)';
const AGAIN = '[(again|at|right now|now|before|earlier|last|first)]';

/** What a meter ought to show or showed, and what trips and burns things. */
export const METERED_QUESTIONS: readonly Rule[] = [
  rule(
    'what (should|would|must|ought) <the> <place> [to] (be|read|measure|test|check|come in) [(at|out at)] [(to|for this)]',
    canBe,
    { unheard: true, examples: ['what should that run cap be'] },
  ),
  rule(
    `(what|how much|how many amps|what amps) (should|would|ought|must) ${IT} [to] ${PULL} ${AGAIN}`,
    pullWanted,
    {
      unheard: true,
      examples: ['what should she pull'],
    },
  ),
  rule(
    `(what|how much|how many amps|what amps) (is|are) ${IT} supposed to ${PULL} ${AGAIN}`,
    pullWanted,
    {
      unheard: true,
      examples: ['what is it supposed to draw'],
    },
  ),
  rule(`(what|how much) (was|is) ${IT} (pulling|drawing|amping) ${AGAIN}`, current('value'), {
    unheard: true,
    examples: ['what was it pulling again'],
  }),
  rule(
    '(what|how much|how many ohms) (am i|are we|are you|should i|should we|do i|do you) [(supposed to|meant to|want to)] (read|get|see|have|look for|be reading|be getting|expect|measure) (on|at|across|for|from|between) <the> <place>',
    meteredAt('target'),
    { unheard: true, examples: ['what am i supposed to read on common to start'] },
  ),
  rule(
    'what (did|have|do) (i|we|you) (get|got|have|read|see|measure|say|tell you) (on|at|across|for|from|between) <the> <place> [(again|before|earlier|last)]',
    meteredAt('value'),
    { unheard: true, examples: ['what did i get on common to start'] },
  ),
  rule('what would (i|we) get (on|at|across|from|between) <the> <place>', meteredAt('value'), {
    unheard: true,
    examples: ['what would i get on common to start'],
  }),
  rule(
    `what ((would|could|will|can|might|makes|is making|is going to|does|keeps) [(make|making|cause|causing)] ${THING} [to] (trip|tripping|kick out|kicking out|go out|cut out|cutting out|shut down|go off|pop)|(keeps|is|would be) (tripping|kicking|knocking|cutting|shutting) ${THING}) [(out|off)] [on [(the|it is)] (high|low|head|suction|high head|high pressure|low pressure|low side|high side|overload|internal overload|thermal)] [(like that|again|like this)]`,
    plain('causes'),
    { unheard: true, examples: ['what would make it trip on high head'] },
  ),
  rule(
    'what (kills|burns [up]|eats [up]|takes out|cooks|blows|makes|would (kill|burn|burn up|blow|cook|take out)|could (kill|burn|blow|cook|take out)) <the> <part> [(like that|like this|fail|burn|burn up|chatter|blow|weld|stick|that fast|so fast)]',
    plain('causes'),
    { unheard: true, examples: ['what kills a contactor like that'] },
  ),
  rule(
    '(has|did) (this|it|this thing|that|this unit|this one|the (unit|compressor)) [ever] (tripped|done this|gone out|quit|gone down|kicked out|done that|trip|failed|acted up|burned up|leaked) [(out|off|on (high|low|overload))] (before|in the past|already|last time)',
    () => ask({ ask: 'history' }),
    { unheard: true, examples: ['has this thing tripped before'] },
  ),
];
