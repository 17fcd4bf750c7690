import type { QuantityId } from '../../terms/quantities.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { ask } from './asking.ts';

const target =
  (about: QuantityId): Means =>
  () =>
    ask({ ask: 'target', about });

/** Of the side that was spoken of last; the high one where nothing says otherwise. */
const ofLast: Means = (tags, frame) => {
  const { lastPart, lastPlace, lastQuantity } = frame.context;
  const isLow =
    [lastPart, lastPlace].includes('lowPressureSwitch') ||
    lastQuantity === 'suctionPressure' ||
    lastQuantity === 'lowCutoutPressure';
  return target(isLow ? 'lowCutoutPressure' : 'highCutoutPressure')(tags, frame);
};

const THE = '[(the|that|this|my|our)]';
const CONTROL = '[pressure] (switch|control|cut out|limit|safety)';
const HIGH = `(high [(side|head)] ${CONTROL}|head pressure (switch|control))`;
const LOW = `(low [side] ${CONTROL}|suction ${CONTROL})`;
const OPENS =
  '(open|trip|cut out|kick out|kick off|cut off|let go|go off|go out|shut (it|her|the unit) (down|off)|cut it off)';
const CLOSES =
  '(cut in|cut back in|close|kick in|kick back in|come back [(in|on)]|make|come in|reset)';

/** "Where does the high pressure switch cut out", "what's the low side control supposed to open at". */
const asked = (control: string, acts: string): string =>
  `(((what|where|at what (pressure|point)|how (high|low|far down|far up)) (does|should|would|will|do|did) ${THE} ${control}|(what|where) is ${THE} ${control} (supposed|meant|set|made|going) to) ${acts} [(at|by itself|on this [(one|unit)])]|when (does|should|would) ${THE} ${control} ${acts})`;

/** At which pressures the controls ought to act. */
export const SWITCH_POINT_QUESTIONS: readonly Rule[] = [
  rule(asked(HIGH, OPENS), target('highCutoutPressure'), {
    unheard: true,
    examples: ['what does the high pressure switch cut out at'],
  }),
  rule(asked(LOW, OPENS), target('lowCutoutPressure'), {
    unheard: true,
    examples: ['where should the low pressure control open'],
  }),
  rule(asked(LOW, CLOSES), target('lowCutinPressure'), {
    unheard: true,
    examples: ['where is the low side switch supposed to cut back in'],
  }),
  rule(
    `(what|where) (do|should|would|did) (i|we|you|they) set ${THE} cut out (on|for) [the] low [(side|pressure)] [(at|to)]`,
    target('lowCutoutPressure'),
    { unheard: true, examples: ['where do i set the cut out on the low side'] },
  ),
  rule(
    `(what|where) (do|should|would|did) (i|we|you|they) set ${THE} cut out (on|for) [the] high [(side|pressure)] [(at|to)]`,
    target('highCutoutPressure'),
    { unheard: true, examples: ['where should i set the cut out on the high side'] },
  ),
  rule(asked('(switch|control|cut out)', OPENS), ofLast, {
    unheard: true,
    examples: ['where is that switch supposed to open'],
  }),
];
