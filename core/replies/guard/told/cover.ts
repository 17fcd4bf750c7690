import { endsOf, patternOf, slotForm, words, type SlotForms } from './pattern.ts';
import type { Told } from './told.ts';

/** How far a sentence could be read as what the verdict says, and what it left out. */
export type Covered =
  | { readonly kind: 'whole' }
  | { readonly kind: 'stuck'; readonly at: string }
  | { readonly kind: 'unsaid'; readonly what: string };

/** Words that say nothing between two statements. More than four of them in a row is babble. */
const GLUE = new Set(
  "and so but it is it's that that's this the then which means as at where you are you're have here there".split(
    ' ',
  ),
);
const MARKS = new Set(['.', ',', ':', ';']);
const MOST_GLUE = 4;

interface Reading {
  readonly sentence: readonly string[];
  readonly slots: SlotForms;
  readonly statements: readonly string[];
  readonly tried: Set<string>;
  /** The furthest word reached: what comes after it is what no statement explains. */
  furthest: number;
  /** The most statements said in a reading that reached the end. */
  best: bigint | null;
}

interface Place {
  readonly at: number;
  readonly said: bigint;
  readonly glue: number;
}

/** Reads a sentence as statements of the verdict, each once at most, in any order, with nothing left over. */
export function cover(sentence: string, told: Told): Covered {
  const reading = readingOf(sentence, told);
  const needed = (1n << BigInt(told.must.length)) - 1n;
  if (isCovered({ at: 0, said: 0n, glue: 0 }, reading, needed)) return { kind: 'whole' };
  if (reading.best === null) return { kind: 'stuck', at: reading.sentence[reading.furthest] ?? '' };
  const { best } = reading;
  const unsaid = told.must.find((_, index) => (best & (1n << BigInt(index))) === 0n);
  return { kind: 'unsaid', what: unsaid ?? '' };
}

function readingOf(sentence: string, { must, may = [], slots }: Told): Reading {
  return {
    sentence: words(sentence),
    slots: formsOf(slots),
    statements: [...must, ...may],
    tried: new Set(),
    furthest: 0,
    best: null,
  };
}

function formsOf(slots: Told['slots']): SlotForms {
  const forms: Record<string, SlotForms[string]> = {};
  for (const [role, { text, also }] of Object.entries(slots)) {
    forms[role] = [text, ...also].map(slotForm);
  }
  return forms;
}

function isCovered(place: Place, reading: Reading, needed: bigint): boolean {
  const { at, said, glue } = place;
  const key = `${at} ${said} ${glue}`;
  if (reading.tried.has(key)) return false;
  reading.tried.add(key);
  reading.furthest = Math.max(reading.furthest, at);
  if (at === reading.sentence.length) {
    reading.best ??= said & needed;
    return (said & needed) === needed;
  }
  return nextPlaces(place, reading).some((next) => isCovered(next, reading, needed));
}

function nextPlaces({ at, said, glue }: Place, reading: Reading): readonly Place[] {
  const told = reading.statements.flatMap((written, index) => {
    const bit = 1n << BigInt(index);
    if ((said & bit) !== 0n) return [];
    return endsOf(patternOf(written), at, reading)
      .filter((end) => end > at)
      .map((end) => ({ at: end, said: said | bit, glue: 0 }));
  });
  const word = reading.sentence[at] ?? '';
  if (MARKS.has(word)) return [...told, { at: at + 1, said, glue }];
  const isFiller = GLUE.has(word.toLowerCase()) && glue < MOST_GLUE;
  return isFiller ? [...told, { at: at + 1, said, glue: glue + 1 }] : told;
}
