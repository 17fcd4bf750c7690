import { fill, fits } from '../record/fill.ts';
import type { PhraseRecord, Register } from '../record/phrase-record.ts';
import type { Said } from '../../core/replies/said.ts';
import { type Constraint, createConstraint } from './constraint.ts';
import { createDice } from './dice.ts';
import type { Lexicon } from './lexicon.ts';
import { promptTokens } from './prompt-tokens.ts';
import { toTokens } from './sentence-tokens.ts';

/** The model behind its library: goes on with the prompt under a constraint, and gives the sentence it wrote. */
export type Writer = (prompt: string, constraint: Constraint) => Promise<string>;

export interface Wanted {
  readonly record: PhraseRecord;
  readonly register: Register;
  /** The guard's word on the filled sentence. */
  readonly passes: (text: string) => boolean;
  readonly seed: number;
  readonly last: Phrased | null;
}

export interface Phrased {
  readonly said: Said;
  /** With its slots. */
  readonly sentence: string;
  /** From 1. */
  readonly tries: number;
}

export const MOST_TRIES = 4;
/** The first try keeps near what the model finds likeliest, the later ones stray further. */
const TEMPERATURES = [0.7, 0.8, 0.9, 1] as const;

/** The first of a few tries that says the record's slots, passes, and is not what was said last; or null. */
export async function phraseInTries(
  write: Writer,
  lexicon: Lexicon,
  wanted: Wanted,
): Promise<Phrased | null> {
  const { record, register, passes, seed, last } = wanted;
  const lastOpening = last === null ? null : (toTokens(last.sentence)[0] ?? null);
  const asked = { record, register, lastOpening };
  const prompt = promptTokens(asked).join(' ');
  for (const [index, temperature] of TEMPERATURES.entries()) {
    const roll = createDice(seed * MOST_TRIES + index);
    const sentence = await write(prompt, createConstraint(asked, lexicon, { temperature, roll }));
    const isWhole = sentence.endsWith('.') && fits(sentence, record);
    const said = isWhole ? fill(sentence, record) : null;
    if (said && said.text !== last?.said.text && passes(said.text)) {
      return { said, sentence, tries: index + 1 };
    }
  }
  return null;
}
