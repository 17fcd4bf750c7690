import { parseJsgf } from '../../core/hearing/parse-jsgf.ts';
import { wordNet } from '../../core/hearing/word-net.ts';
import { wordStates } from '../../core/hearing/word-states.ts';

/** Whether a grammar's text holds a sentence, word for word. Of a large one only what is asked of it is worked out. */
export function grammarHolds(jsgf: string): (words: readonly string[]) => boolean {
  const grammar = parseJsgf(jsgf);
  if (grammar.kind === 'malformed') throw new Error(grammar.message);
  const outcome = wordNet(grammar);
  if (outcome.kind === 'malformed') throw new Error(outcome.message);
  const states = wordStates(outcome.net);
  const at = kept(states.at);
  const after = kept((state: number) => {
    const { places } = at(state);
    return kept((word: string): readonly number[] => {
      const found = places.flatMap(({ node, back }) =>
        states
          .wordsAt(node)
          .filter((step) => step.word === word)
          .map(({ to, logWeight }) => ({ node: to, back, logWeight })),
      );
      return found.length === 0 ? [] : [states.join(found).to];
    });
  });
  const afterWord = (from: ReadonlySet<number>, word: string): ReadonlySet<number> => {
    const begun = [...from].flatMap((state) => at(state).again.map(({ to }) => to));
    return new Set([...from, ...begun].flatMap((state) => after(state)(word)));
  };
  return (words) =>
    [...words.reduce(afterWord, new Set([states.begin]))].some((state) => at(state).ends !== null);
}

function kept<Key, Value>(find: (key: Key) => Value): (key: Key) => Value {
  const known = new Map<Key, Value>();
  return (key) => {
    const value = known.get(key) ?? find(key);
    known.set(key, value);
    return value;
  };
}
