import { JUDGED, type JudgedId } from '../../terms/judged.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { idIn } from '../slots.ts';
import { ask, TELL } from './asking.ts';

const THE = '[(the|that|this|these|those|my|your)]';
const STILL = '[(still|really|actually|all|any|too|looking)]';
const FINE =
  '(good|bad|ok|weak|all right|alright|right|fine|shot|gone|normal|high|low|where (it|they) should be|in range|within (tolerance|range|limits)|up to spec|to spec|reading right|working|holding up)';
const WHETHER = `(${TELL}|i would like to know|see|check) (if|whether)`;

const LEGS = `${THE} [three] (legs|phases)`;
const EVEN = '(balanced|even|equal|close [enough]|the same|within (two|three|five) percent)';

const judgedId = idIn(JUDGED);

const judge =
  (about: JudgedId): Means =>
  () =>
    ask({ ask: 'judge', about });

/** The ways in which the same is asked: before its name and behind it, straight and in passing. */
const WAYS = [
  `(is|are|was|were|do|does|did) ${THE} <judged> [(look|check out|test|read|sound|seem)] ${STILL} ${FINE}`,
  `${THE} <judged> <pause> (is|are) (it|they|that|those) ${STILL} ${FINE}`,
  `${THE} <judged> (any good|good or bad|ok or not|check out ok)`,
];

const judgeNamed: Means = (tags, frame) => {
  const about = judgedId(tags['judged']);
  return about === null ? null : judge(about)(tags, frame);
};

/** Whether what was measured is as it should be, of everything that is judged by its name. */
export const GOOD_OR_BAD_QUESTIONS: readonly Rule[] = [
  ...WAYS.map((shape) => rule(shape, judgeNamed, { unheard: true })),
  rule(`${WHETHER} ${THE} <judged> (is|are|look|looks|was|were) ${STILL} ${FINE}`, judgeNamed, {
    unheard: true,
    examples: ['tell me if the run cap is any good'],
  }),
  rule(`(are|is) ${LEGS} ${EVEN} [on (volts|voltage)]`, judge('voltageImbalance'), {
    unheard: true,
    examples: ['are my three legs close enough on volts'],
  }),
  rule(
    `(are|is) (${LEGS} ${EVEN} on (amps|current)|${THE} (amps|currents) (on|across|between) ${LEGS} ${EVEN})`,
    judge('currentImbalance'),
    { unheard: true, examples: ['are the amps on the three legs balanced'] },
  ),
  rule(
    `(did|does|will) (it|this|she|we) (pass|hold|make) ${THE} [(nitrogen|standing)] (pressure test|nitrogen test|leak test|standing test)`,
    judge('pressureTest'),
    { examples: ['did it pass the pressure test'] },
  ),
];
