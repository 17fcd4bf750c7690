import { combineGrammars } from '../../core/hearing/jsgf.ts';
import { heardGrammars, recogniserGrammar } from '../../core/language/heard/recogniser-grammar.ts';
import { tokenise } from '../../core/language/words/tokenise.ts';
import { grammarHolds } from '../support/grammar-holds.ts';
import { type CorpusLine, readCorpus } from './corpus.ts';

/** Not for anybody's ear: free words, and figures as they are typed. */
const isAside = ({ said, meant }: CorpusLine): boolean =>
  /^(?:memo|remark) /.test(meant) || /\d/.test(said);

/** Nothing, or only numbers that nothing claims. */
const isEmpty = ({ meant }: CorpusLine): boolean => /^(NOTHING|UNCLAIMED)/.test(meant);

/** The hand-written lines that mean something and could be said, and whether each is heard word for word. */
export interface HeardLines {
  readonly lines: readonly CorpusLine[];
  /** By what small recognisers hear, and by everything that is heard. */
  readonly isLikely: (line: CorpusLine) => boolean;
  readonly isHeard: (line: CorpusLine) => boolean;
}

export function heardLines(): HeardLines {
  const likely = grammarHolds(recogniserGrammar('anything'));
  const whole = grammarHolds(combineGrammars(heardGrammars('anything')) ?? '');
  return {
    lines: readCorpus().filter((line) => !isEmpty(line) && !isAside(line)),
    isLikely: ({ said }) => likely(wordsOf(said)),
    isHeard: ({ said }) => whole(wordsOf(said)),
  };
}

/** As they are understood, pauses left out: an ear hears no comma. */
export const wordsOf = (said: string): readonly string[] =>
  tokenise(said)
    .map(({ text }) => text)
    .filter((text) => /[a-z]/.test(text));
