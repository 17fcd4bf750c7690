import { understand } from '../../core/language/understand.ts';
import type { Command } from './command.ts';
import { LANGUAGE_OPTIONS_USAGE, parseLanguageOptions } from './language-options.ts';
import { lines } from './lines.ts';
import { wrongCall } from './wrong-call.ts';

export const understandCommand: Command = {
  usage: `gloveside understand [options] < SENTENCES
  A sentence a line on standard input; what each meant, one JSON object a line, in the same order.

${LANGUAGE_OPTIONS_USAGE}`,
  run: async (args, terminal) => {
    const call = parseLanguageOptions(args);
    if (call.kind === 'unusable') return wrongCall(terminal, 'understand', call.why);
    const { context, words } = call;
    if (words.length > 0) {
      const why = `sentences come on standard input, not as "${words.join(' ')}"`;
      return wrongCall(terminal, 'understand', why);
    }
    for await (const line of lines(terminal.input)) {
      await terminal.print(JSON.stringify(understand(line, context)));
    }
    return 0;
  },
};
