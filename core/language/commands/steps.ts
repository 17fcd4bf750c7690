import { heardCommand, type Rule } from '../rule.ts';
import { command } from './command.ts';

/** "Stop" puts the microphone on hold, unless steps are being told. */
export const STEP_COMMANDS: readonly Rule[] = [
  heardCommand(
    '(leave the steps|stop the steps|~stop|~quit|~cancel|~never mind|~no more steps|~(end|quit|cancel|forget|drop) the steps|~that is enough|~i (have got|have|got|know) it [from here])',
    (_tags, frame) => (frame.context.stepping ? command({ do: 'leaveSteps' }) : null),
    { alone: true },
  ),
];
