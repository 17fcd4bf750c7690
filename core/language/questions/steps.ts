import type { ProcedureTaskId } from '../../terms/procedures.ts';
import { heardRule, type Means, type Rule, rule } from '../rule.ts';
import { ask } from './asking.ts';
import type { StepTo } from '../utterance.ts';

const steps =
  (about: ProcedureTaskId): Means =>
  () =>
    ask({ ask: 'steps', about });

/** "Next" and "back" are steps only while steps are told; "again" is then the step, whatever was said since. */
const move =
  (to: StepTo): Means =>
  (_tags, frame) =>
    frame.context.stepping ? ask({ ask: 'step', to }) : null;

const HOW =
  '(how (do|should|would|can) i|walk me through|talk me through|take me through|what are the steps (to|for)|steps (to|for)|show me how to|tell me how to)';

const JOBS: Record<ProcedureTaskId, readonly string[]> = {
  gaugesOn: [
    '(put|putting|hook up|hooking up|get|getting|connect|connecting) [(my|the)] (gages|manifold|hoses) [on] [without [getting] air [in]]',
    '(hook|hooking) [(my|the)] (gages|hoses) up [without [getting] air [in]]',
    '(purge|purging) [(my|the)] (hoses|hose|gages)',
  ],
  gaugesOff: [
    '(get|getting) [(the|my)] (gas|refrigerant|liquid|charge|freon) out of [(the|my)] (hoses|hose|gages) [and back [(in|into) (the unit|the system|it)]]',
    '(take|taking|get|getting|pull|pulling) [(my|the)] (gages|hoses|manifold) off',
    '(empty|emptying|clear|clearing) [(the|my)] (hoses|gages)',
  ],
  pumpDown: [
    '(pump|pumping) (it|this|the unit|the system) down',
    '(pump down|pumping down) [(it|the unit|the system)]',
    'a pump down',
  ],
  valvesAndCaps: [
    '(close|closing|button|buttoning) (it|this|the unit|everything) up',
    '(put|putting) [all] (the|my) (valves|valves and caps|caps) back',
    '(restore|restoring) the valves',
  ],
  recovery: [
    '(recover|recovering|reclaim) [(it|the charge|the gas|the refrigerant|this|the freon)]',
    '(a|the) recovery',
    'recovery',
  ],
  evacuation: [
    '(evacuate|evacuating) [(it|the system|the unit|this)]',
    '(pull|pulling) a [deep] vacuum [on (it|the system|this)]',
    '(a|the) evacuation',
  ],
  pressureTest: [
    '(pressure test|pressure testing|nitrogen test) [(it|the system|the unit|this)]',
    'a (pressure|nitrogen) test',
  ],
};

const isJob = (id: string): id is ProcedureTaskId => id in JOBS;

const JOB_RULES = Object.keys(JOBS)
  .filter(isJob)
  .map((id) => rule(`${HOW} (${JOBS[id].join('|')})`, steps(id)));

/** Jobs told step by step. */
export const STEP_QUESTIONS: readonly Rule[] = [
  heardRule('how do i get the gas out of the hoses', steps('gaugesOff'), {
    examples: ['how do i get the gas out of the hoses'],
  }),
  heardRule('how do i put my gages on', steps('gaugesOn'), {
    examples: ['how do i put my gauges on'],
  }),
  heardRule('how do i pump it down', steps('pumpDown'), { examples: ['how do i pump it down'] }),
  heardRule('how do i close it up', steps('valvesAndCaps'), { examples: ['how do i close it up'] }),
  ...JOB_RULES,
  heardRule(
    '(next step|next|~next one|~go to the next [(step|one)]|~what is next|~what next|~ok next|~then what|~now what|~done|~did that|~that is done|~got it)',
    move('next'),
    { alone: true },
  ),
  heardRule(
    '(go back|step back|~back|~back one|~back up [(one|a step)]|~previous [step]|~the one before|~last step)',
    move('back'),
    { alone: true },
  ),
  heardRule(
    '(again|~that step again|~same step|~(read|say) (it|the step|that step) again)',
    move('again'),
    {
      alone: true,
    },
  ),
  heardRule(
    '(which step|~what step [(am i|are we)] [(on|at)]|~where (am i|are we|was i|were we)|~which step (am i|are we) (on|at)|~what was the step)',
    move('which'),
    { alone: true },
  ),
];
