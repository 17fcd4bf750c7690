import type { Expansion, JsgfRules } from '../../../core/hearing/parse-jsgf.ts';

/** Whether a grammar holds the sentence, word for word. */
export function accepts(grammar: JsgfRules, words: readonly string[]): boolean {
  const known = new Map<string, ReadonlySet<number>>();

  const ruleEnds = (rule: string, start: number): ReadonlySet<number> => {
    const key = `${rule} ${start}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    known.set(key, new Set());
    const body = grammar.rules.get(rule);
    const ends = body === undefined ? new Set<number>() : endsOf(body, start);
    known.set(key, ends);
    return ends;
  };

  /** Where what begins at `start` may end. */
  const endsOf = (expansion: Expansion, start: number): ReadonlySet<number> => {
    switch (expansion.kind) {
      case 'word':
        return new Set(words[start] === expansion.word ? [start + 1] : []);
      case 'reference':
        return ruleEnds(expansion.rule, start);
      case 'sequence':
        return expansion.parts.reduce<ReadonlySet<number>>(
          (ends, part) => after(ends, part),
          new Set([start]),
        );
      case 'choice':
        return union(expansion.options.map((option) => endsOf(option.expansion, start)));
      case 'optional':
        return union([new Set([start]), endsOf(expansion.expansion, start)]);
      case 'repeat': {
        const ends = new Set(endsOf(expansion.expansion, start));
        for (const end of ends) {
          for (const more of endsOf(expansion.expansion, end)) ends.add(more);
        }
        return expansion.least === 0 ? union([new Set([start]), ends]) : ends;
      }
      case 'never':
        return new Set();
    }
  };
  const after = (ends: ReadonlySet<number>, part: Expansion): ReadonlySet<number> =>
    union([...ends].map((end) => endsOf(part, end)));

  return grammar.publicRules.some((rule) => ruleEnds(rule, 0).has(words.length));
}

const union = (sets: readonly ReadonlySet<number>[]): ReadonlySet<number> =>
  new Set(sets.flatMap((set) => [...set]));
