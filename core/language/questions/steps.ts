import type { ProcedureTaskId } from '../../terms/procedures.ts';
import { heardRule, type Means, type Rule, rule } from '../rule.ts';
import { idIn } from '../slots.ts';
import { TASK_NAMES } from '../vocabulary/task-names.ts';
import { ask } from './asking.ts';
import type { StepTo } from '../utterance.ts';

const steps =
  (about: ProcedureTaskId): Means =>
  () =>
    ask({ ask: 'steps', about });

const taskId = idIn(TASK_NAMES);
const stepsOf: Means = (tags, frame) => {
  const about = taskId(tags['task']);
  return about === null ? null : steps(about)(tags, frame);
};

/** "Next" and "back" are steps only while steps are told; "again" is then the step, whatever was said since. */
const move =
  (to: StepTo): Means =>
  (_tags, frame) =>
    frame.context.stepping ? ask({ ask: 'step', to }) : null;

const HOW =
  '(how (do|should|would|can) (i|we|you)|how to|[(can you|could you)] (walk|talk|take|run|lead|guide) me [(step by step|again)] through|[(what are|what is|give me|tell me|read me|show me|remind me of)] the (steps|procedure|order|sequence) (to|for|of|on)|steps (to|for)|(show|tell|teach|remind) me how [(to|i|we|you)]|what is the (right|proper|best|safe) way to)';

/** "Valves and caps, what's the order": the job first. */
const OF_IT =
  '((what is|what are|what was|give me|tell me|remind me of|read me|show me) the (order|steps|procedure|sequence) [(on|for|of) (it|that|this)]|[(can you|could you)] (walk|talk|take|run|lead) me through (it|that|this) [step by step]|how (do|should|would) (i|we|you) (do|go about) (it|that|this)|how does (it|that|this) go|step by step)';

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
  rule(`${HOW} <task>`, stepsOf, { examples: ['how do i take my gages off'] }),
  rule(`<task> [<pause>] ${OF_IT} [again]`, stepsOf, {
    unheard: true,
    examples: ['closing up what is the order again'],
  }),
  heardRule(
    '(next step|next|~next one|~go to the next [(step|one)]|~what is next|~what next|~ok next|~then what|~what (do i do|comes|is) (after that|then)|~now what|~done|~did that|~[i am] (done|finished|through) with (that|this) [(one|step)]|~that is done|~got it)',
    move('next'),
    { alone: true },
  ),
  heardRule(
    '(go back|step back|~go back (one|a step) [step]|~back|~back one|~back up [(one|a step)]|~previous [step]|~the one before|~last step)',
    move('back'),
    { alone: true },
  ),
  heardRule(
    '(again|~that step again|~same step|~repeat (that|the) step|~(read|say) (it|the step|that step) again)',
    move('again'),
    {
      alone: true,
    },
  ),
  heardRule(
    '(which step|~what step [(am i|are we)] [(on|at)]|~where (am i|are we|was i|were we)|~which step (am i|are we) (on|at)|~what was the step|~(give|tell|show|read) me the steps [again]|~what (are|were) the steps [again])',
    move('which'),
    { alone: true },
  ),
];
