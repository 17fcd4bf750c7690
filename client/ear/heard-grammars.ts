import type { Expectation } from '../../core/language/context.ts';
import { type KnownNames, NO_NAMES } from '../../core/language/names/known-names.ts';
import {
  type HeardGrammar,
  RARE_WEIGHT,
  recogniserGrammar,
} from '../../core/language/heard/recogniser-grammar.ts';

/** The grammars that sentences are heard by, printed or fetched once each: an ear opens again after every sentence. */
export interface HeardGrammars {
  /** What may be said next; the same list as long as nothing of it changes. */
  readonly expecting: (expectation: Expectation, names: KnownNames) => readonly HeardGrammar[];
  /** All that sentences switch between, with the names that were listened for last. */
  readonly all: () => readonly (readonly HeardGrammar[])[];
  /** Fetches what is rarely said. Until that is here, and where it does not come, what is likely is heard alone. */
  readonly load: () => Promise<void>;
}

const EXPECTATIONS: readonly Expectation[] = ['anything', 'number', 'yesOrNo'];

/** Printing what is rarely said takes 0.3 s: the build writes it, a file for each expectation. */
export function createHeardGrammars(
  fetchRare: (expectation: Expectation) => Promise<string>,
): HeardGrammars {
  const printed = new Map<Expectation, Printed>();
  const rare = new Map<Expectation, string>();
  let names = NO_NAMES;
  const expecting = (expectation: Expectation, wanted: KnownNames): readonly HeardGrammar[] => {
    // Only where anything may be said are names among it.
    const named = expectation === 'anything' ? wanted : NO_NAMES;
    const known = printed.get(expectation);
    if (known?.names === named) return known.grammars;
    const grammars = [{ text: recogniserGrammar(expectation, named), weight: 1 }];
    const text = rare.get(expectation);
    if (text !== undefined) grammars.push({ text, weight: RARE_WEIGHT });
    printed.set(expectation, { names: named, grammars });
    return grammars;
  };
  return {
    expecting: (expectation, wanted) => {
      names = wanted;
      return expecting(expectation, wanted);
    },
    all: () => EXPECTATIONS.map((expectation) => expecting(expectation, names)),
    load: async () => {
      const missing = EXPECTATIONS.filter((expectation) => !rare.has(expectation));
      await Promise.all(
        missing.map(async (expectation) => {
          rare.set(expectation, await fetchRare(expectation));
          printed.delete(expectation);
        }),
      );
    },
  };
}

interface Printed {
  readonly names: KnownNames;
  readonly grammars: readonly HeardGrammar[];
}
