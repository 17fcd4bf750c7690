import { type Rule, rule } from '../rule.ts';
import { command } from './command.ts';

const FOR_A_BIT = '[[for] (a|one|just a) (second|sec|minute|moment|bit)]';
const HOLD = `(hang on|hold on|hold up|hold it|wait|whoa|stop|pause|give me ${FOR_A_BIT}|one (second|sec|minute|moment))`;
const NOT_HEARD =
  '[i] (did not|could not|can not|do not) (hear|catch|get) (you|that|it|all of that)';
const AGAIN_PLEASE =
  '(what did you [just] say|what would you [just] say|say (that|it) again|repeat that|what was that|come again|one more time|again [please])';

/** Said twice over or the long way round: "hang on, hold up, pause" says one thing. */
const SAID_TWICE = [
  {
    does: 'pause',
    said: `${HOLD} ${FOR_A_BIT} [<pause>] [(and|just)] (${HOLD}|(stop|quit) (listening|talking)|mute|be quiet) ${FOR_A_BIT} [<pause>] [(pause|stop|wait|(stop|quit) listening)]`,
  },
  {
    does: 'resume',
    said: '[(ok|alright|all right)] (i am back|back|i am here|here i am) [<pause>] [(you can|go ahead and|let us)] (resume|continue|go on|go ahead|keep going|start listening|listen|carry on) [(now|again)]',
  },
  {
    does: 'resume',
    said: '[(ok|alright|all right)] [you can] go ahead [and] (resume|continue|start listening|listen) [(now|again)]',
  },
  {
    does: 'finish',
    said: '(finish|wrap|close) [it] up (the|this|my) (visit|call|job|note|ticket)',
  },
  {
    does: 'help',
    said: '(what can (you|i) (do|say|ask) [<pause>] [i need] help|help [me] [<pause>] what can (you|i) (do|say|ask))',
  },
  {
    does: 'repeat',
    said: `(sorry|wait|huh|what|pardon|excuse me) [<pause>] [${NOT_HEARD}] [<pause>] ${AGAIN_PLEASE}`,
  },
  { does: 'repeat', said: `${NOT_HEARD} [<pause>] [can you] ${AGAIN_PLEASE}` },
] as const;

export const SAID_TWICE_COMMANDS: readonly Rule[] = SAID_TWICE.map(({ does, said }) =>
  rule(said, () => command({ do: does }), { unheard: true, alone: true, examples: [] }),
);
