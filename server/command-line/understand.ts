import { understand } from '../../core/language/understand.ts';
import type { Command } from './command.ts';
import { explanationText } from './explanation-text.ts';
import { LANGUAGE_OPTIONS_USAGE, parseExplainedOptions } from './language-options.ts';
import { lines } from './lines.ts';
import { wrongCall } from './wrong-call.ts';

export const understandCommand: Command = {
  usage: `gloveside understand [options] < SENTENCES
  A sentence a line on standard input; what each meant, one JSON object a line, in the same order.

  --explain            in place of the JSON, for people: the rules that read each sentence and where,
                       what was left over, and which rules nearly read it and what they lacked
${LANGUAGE_OPTIONS_USAGE}`,
  run: async (args, terminal) => {
    const call = parseExplainedOptions(args);
    if (call.kind === 'unusable') return wrongCall(terminal, 'understand', call.why);
    const { context, words } = call;
    if (words.length > 0) {
      const why = `sentences come on standard input, not as "${words.join(' ')}"`;
      return wrongCall(terminal, 'understand', why);
    }
    const answer = (line: string): string =>
      call.explain === true
        ? explanationText(line, context)
        : JSON.stringify(understand(line, context));
    for await (const line of lines(terminal.input)) {
      await terminal.print(answer(line));
    }
    return 0;
  },
};
