import type { Lexicon, WordGroup } from '../../../prompts/decode/lexicon.ts';
import { SPECIAL } from '../../../prompts/decode/prompt-tokens.ts';
import { roleOf } from '../../../prompts/decode/sentence-tokens.ts';
import type { Example } from './examples.ts';

/** Marks that a sentence may be parted by, whether a corpus has them yet or not. */
const MARKS = ['##.', '##,', '##:', '##;'];

/** Every token there is, and which words may word what. */
export function lexiconOf(examples: readonly Example[]): Lexicon {
  const tokens = tokensOf(examples);
  const ids = new Map(tokens.map((token, id) => [token, id]));
  const groups = new Map<string, { group: Omit<WordGroup, 'words'>; words: Set<number> }>();
  for (const { line, sentence } of examples) {
    const { kind, register, needs } = line;
    const key = [kind, register, ...needs.toSorted()].join(' ');
    const found = groups.get(key) ?? { group: { kind, register, needs }, words: new Set() };
    for (const token of sentence) if (roleOf(token) === null) found.words.add(ids.get(token) ?? 0);
    groups.set(key, found);
  }
  const all = [...groups.values()].map(({ group, words }) => ({ ...group, words: [...words] }));
  return {
    tokens,
    groups: all.map((group) => withoutWider(group, all)).filter(hasWords),
    follows: followsOf(examples, ids),
  };
}

const hasWords = ({ words }: WordGroup): boolean => words.length > 0;

/** What a group that needs less allows already. */
function withoutWider(group: WordGroup, all: readonly WordGroup[]): WordGroup {
  const wider = all.filter(
    ({ kind, register, needs }) =>
      kind === group.kind &&
      register === group.register &&
      needs.length < group.needs.length &&
      needs.every((need) => group.needs.includes(need)),
  );
  const known = new Set(wider.flatMap(({ words }) => words));
  return { ...group, words: group.words.filter((word) => !known.has(word)).sort((a, b) => a - b) };
}

function followsOf(
  examples: readonly Example[],
  ids: ReadonlyMap<string, number>,
): readonly (readonly number[])[] {
  const follows = Array.from(ids, () => new Set<number>());
  for (const { sentence } of examples) {
    const steps = [SPECIAL.say, ...sentence, SPECIAL.end].map((token) => ids.get(token) ?? 0);
    for (const [at, id] of steps.entries()) if (at > 0) follows[steps[at - 1] ?? 0]?.add(id);
  }
  return follows.map((set) => [...set].sort((a, b) => a - b));
}

function tokensOf(examples: readonly Example[]): readonly string[] {
  const used = new Set(examples.flatMap(({ prompt, sentence }) => [...prompt, ...sentence]));
  for (const mark of MARKS) used.delete(mark);
  return [...Object.values(SPECIAL), ...MARKS, ...[...used].sort()];
}
