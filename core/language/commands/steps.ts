import { ask } from '../questions/asking.ts';
import { heardCommand, type Means, type Rule } from '../rule.ts';
import { command } from './command.ts';

/** Named, they are left even where none are told: the answer says that there are none. */
const leave: Means = (_tags, frame) => {
  if (frame.context.stepping) return command({ do: 'leaveSteps' });
  return /\bsteps\b/i.test(frame.wordsOf(frame.span)) ? ask({ ask: 'step', to: 'which' }) : null;
};

/** "Stop" puts the microphone on hold, unless steps are being told. */
export const STEP_COMMANDS: readonly Rule[] = [
  heardCommand(
    '(leave the steps|stop the steps|~stop|~quit|~cancel|~never mind|~no more steps|~(end|quit|cancel|forget|drop) the steps|~that is enough|~i (have got|have|got|know) it [from here]|~~(leave|skip) (it|that|this|them|these|the steps) [for now]|~~forget (it|about (it|that|them|the steps))|~~never mind (it|that|this|them|the steps)|~~i do not (need|want) (it|that|them|[the] steps|any steps) [anymore]|~~enough [of (that|the steps)])',
    leave,
    { alone: true },
  ),
];
