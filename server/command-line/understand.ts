import type { Context } from '../../core/language/context.ts';
import {
  recogniserGrammar,
  recogniserGrammarAbnf,
} from '../../core/language/heard/recogniser-grammar.ts';
import { talkNumbers } from '../../core/language/settle/talk-numbers.ts';
import { understand } from '../../core/language/understand.ts';
import type { Utterance } from '../../core/language/utterance.ts';
import type { UnderstoodLine } from '../../core/wire/utterance-schema.ts';
import type { Command } from './command.ts';
import { explanationText } from './explanation-text.ts';
import {
  expectation,
  LANGUAGE_OPTIONS_USAGE,
  parseUnderstandingOptions,
} from './language-options.ts';
import { lines } from './lines.ts';
import { wrongCall } from './wrong-call.ts';

/** With the numbers of what was talk, where there are any: they are nobody's to record or to ask about. */
function withTalk(utterance: Utterance, context: Context): UnderstoodLine {
  const talk = talkNumbers(utterance.text, context);
  return talk.length === 0 ? utterance : { ...utterance, talk };
}

const PRINTERS = { jsgf: recogniserGrammar, abnf: recogniserGrammarAbnf } as const;
const isForm = (form: string): form is keyof typeof PRINTERS => Object.hasOwn(PRINTERS, form);

export const understandCommand: Command = {
  usage: `gloveside understand [options] < SENTENCES
  A sentence a line on standard input; what each meant, one JSON object a line, in the same order. Numbers that
  stand in talk are listed under "talk", each with the words around it: nothing is made of them.

  --explain            in place of the JSON, for people: the rules that read each sentence and where,
                       what was left over, and which rules nearly read it and what they lacked
  --grammar FORM       reads no sentence, and prints the grammar of what is likely said next, for another
                       recogniser: jsgf, or abnf for the ABNF form of SRGS
${LANGUAGE_OPTIONS_USAGE}`,
  run: async (args, terminal) => {
    const call = parseUnderstandingOptions(args);
    if (call.kind === 'unusable') return wrongCall(terminal, 'understand', call.why);
    const { context, words, grammar } = call;
    if (words.length > 0) {
      const why = `sentences come on standard input, not as "${words.join(' ')}"`;
      return wrongCall(terminal, 'understand', why);
    }
    if (grammar !== undefined) {
      if (!isForm(grammar)) {
        const why = `--grammar takes ${Object.keys(PRINTERS).join(' or ')}, not "${grammar}"`;
        return wrongCall(terminal, 'understand', why);
      }
      await terminal.print(PRINTERS[grammar](expectation(context), context.names).trimEnd());
      return 0;
    }
    const answer = (line: string): string =>
      call.explain === true
        ? explanationText(line, context)
        : JSON.stringify(withTalk(understand(line, context), context));
    for await (const line of lines(terminal.input)) {
      await terminal.print(answer(line));
    }
    return 0;
  },
};
