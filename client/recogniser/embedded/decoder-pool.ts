import type { DecoderPort } from '../../../core/hearing/decoder-port.ts';

/**
 * A decoder for each grammar in use: compiling a whole grammar takes 0.1–0.3 s, switching to one that
 * is compiled takes nothing. Three, as the dialogue has three expectations.
 */
const MOST_DECODERS = 3;

export interface DecoderPool {
  /** A decoder with this grammar set, or the words that it cannot sound. */
  readonly take: (jsgf: string) => Promise<Taken>;
  /** Compiles it for later where there is room; never at the cost of one that is compiled. */
  readonly warm: (jsgf: string) => Promise<void>;
  /** One apart from those, for grammars of a few sentences that are used once. */
  readonly chooser: () => Promise<DecoderPort>;
}

export type Taken =
  | { readonly kind: 'taken'; readonly decoder: DecoderPort }
  | { readonly kind: 'unknownWords'; readonly words: readonly string[] };

export function createDecoderPool(create: () => Promise<DecoderPort>): DecoderPool {
  // Insertion order is order of last use: the first is the one to give up.
  const byGrammar = new Map<string, DecoderPort>();
  const spare: DecoderPort[] = [];
  let chooser: Promise<DecoderPort> | null = null;

  const obtain = async (): Promise<DecoderPort> => {
    const kept = spare.pop();
    if (kept !== undefined) return kept;
    const [oldest] = byGrammar;
    if (byGrammar.size < MOST_DECODERS || oldest === undefined) return create();
    byGrammar.delete(oldest[0]);
    return oldest[1];
  };

  const take = async (jsgf: string): Promise<Taken> => {
    const known = byGrammar.get(jsgf);
    const decoder = known ?? (await obtain());
    const unknown = known === undefined ? decoder.setGrammar(jsgf) : [];
    if (unknown.length > 0) {
      spare.push(decoder);
      return { kind: 'unknownWords', words: unknown };
    }
    byGrammar.delete(jsgf);
    byGrammar.set(jsgf, decoder);
    return { kind: 'taken', decoder };
  };

  return {
    take,
    chooser: () => (chooser ??= create()),
    warm: async (jsgf) => {
      if (!byGrammar.has(jsgf) && byGrammar.size < MOST_DECODERS) await take(jsgf);
    },
  };
}
