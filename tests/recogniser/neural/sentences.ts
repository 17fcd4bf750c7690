import {
  parseDictionary,
  soundWords,
  type Pronunciations,
} from '../../../core/hearing/dictionary.ts';
import { sampleNode } from '../../support/sample-node.ts';
import { AMOUNT } from '../../../core/language/numbers/amounts.ts';
import { vocabulary } from '../../../core/language/heard/recogniser-grammar.ts';
import { sampleSentences } from '../../support/samples.ts';
import { PRONUNCIATIONS } from '../../../core/language/vocabulary/pronunciations.ts';
import { sampleDigits } from './digits.ts';
import { pickOne } from './random.ts';
import { sampleTalk } from './talk.ts';

/** A sentence to be spoken: `text` as a synthesiser takes it, `phones` the sounds of each of `words`. */
export interface Sentence {
  readonly kind: Kind;
  readonly text: string;
  readonly words: readonly string[];
  readonly phones: readonly string[];
}

type Random = () => number;
type Kind = 'sentence' | 'number' | 'digits' | 'word' | 'salad' | 'dictionary' | 'talk';

/** How many of a hundred are of each kind: readings and numbers first, as that is what must be right. */
const SHARES: Record<Kind, number> = {
  sentence: 42,
  number: 15,
  digits: 14,
  word: 7,
  salad: 9,
  dictionary: 6,
  talk: 7,
};

/** Trade words that synthesisers read as if they were English ones, as they should be read. */
export const RESPELLED: Readonly<Record<string, string>> = {
  evap: 'ee vap',
  megohms: 'meg ohms',
  microfarads: 'micro farads',
  psi: 'p s i',
  psig: 'p s i g',
  setpoint: 'set point',
  subcooling: 'sub cooling',
  superheat: 'super heat',
  txv: 't x v',
};

/** Sentences without end. A word that no dictionary sounds out costs its sentence, never its label. */
export function createSentences(dictionary: string, random: Random): () => Sentence {
  const heard = vocabulary();
  const all = parseDictionary(dictionary);
  const known = new Map(Object.entries({ ...all, ...PRONUNCIATIONS }));
  const plain = Object.keys(all).filter((word) => /^[a-z]{2,9}$/.test(word));
  const sayers: Record<Kind, () => readonly string[]> = {
    sentence: () => sayFromGrammar(random),
    number: () => sampleNode(AMOUNT, random).words,
    digits: () => sampleDigits(random),
    word: () => [pickOne(heard, random)],
    salad: () => several(2, 6, random).map(() => pickOne(heard, random)),
    dictionary: () => several(1, 5, random).map(() => pickOne(plain, random)),
    talk: () => sampleTalk(random),
  };
  const next = (): Sentence => {
    const kind = pickKind(random);
    const words = sayers[kind]().filter((word) => word !== ',');
    return soundOut(kind, words, known) ?? next();
  };
  return next;
}

/** One sentence in a breath, or two of them: "head one ninety two suction fourteen". */
function sayFromGrammar(random: Random): readonly string[] {
  const said = sampleSentences(random() < 0.25 ? 2 : 1, random);
  return said.flatMap(({ text }) => text.split(' '));
}

function soundOut(
  kind: Kind,
  words: readonly string[],
  known: ReadonlyMap<string, readonly string[]>,
): Sentence | undefined {
  const { pronunciations, missing } = soundWords(words, '', soundsOf(words, known));
  if (words.length === 0 || words.length > 16 || missing.length > 0) return undefined;
  const phones = words.map((word) => pronunciations[word]?.[0] ?? '');
  const text = words.map((word) => RESPELLED[word] ?? word).join(' ');
  return { kind, text, words, phones };
}

/** The few of a hundred thousand words that a sentence needs, and what stands before their `'s`. */
function soundsOf(
  words: readonly string[],
  known: ReadonlyMap<string, readonly string[]>,
): Pronunciations {
  const wanted = words.flatMap((word) => [word, word.replace(/'s$/, '')]);
  return Object.fromEntries(
    wanted.flatMap((word) => {
      const sounds = known.get(word);
      return sounds === undefined ? [] : [[word, sounds] as const];
    }),
  );
}

function pickKind(random: Random): Kind {
  const kinds: readonly Kind[] = Object.keys(SHARES).filter(isKind);
  let left = random() * Object.values(SHARES).reduce((sum, share) => sum + share, 0);
  for (const kind of kinds) {
    left -= SHARES[kind];
    if (left < 0) return kind;
  }
  return 'sentence';
}

const isKind = (name: string): name is Kind => name in SHARES;

function several(low: number, high: number, random: Random): readonly number[] {
  return Array.from({ length: low + Math.floor(random() * (high - low + 1)) }, (_, at) => at);
}
