import type { AnswerableId } from '../../terms/quantities.ts';
import type { PartId, PlaceId } from '../../terms/names.ts';
import { answerableId, partId, placeId } from '../slots.ts';
import { PART_NAMES } from '../vocabulary/part-names.ts';
import { PLACE_NAMES } from '../vocabulary/place-names.ts';
import { DERIVED_NAMES, QUANTITY_NAMES } from '../vocabulary/quantity-names.ts';

interface Name<Id> {
  readonly id: Id;
  readonly said: RegExp;
}

/** A name's shape as a pattern over words that each end in a space. */
function patternOf(shape: string): RegExp {
  const pattern = shape
    .replaceAll('~', '')
    .replace(/[\w]+/g, '$& ')
    .replace(/([\w] )\s+|([[\]()|])\s+/g, '$1$2')
    .replaceAll('[', '(?:')
    .replaceAll('(', '(?:')
    .replaceAll('(?:?:', '(?:')
    .replaceAll(']', ')?');
  return new RegExp(`(?<= )(?:${pattern})`);
}

function namesOf<Id extends string>(
  tables: readonly Readonly<Record<string, readonly string[]>>[],
  idOf: (id: string) => Id | null,
): readonly Name<Id>[] {
  return tables.flatMap((table) =>
    Object.entries(table).flatMap(([key, shapes]) => {
      const id = idOf(key);
      return id === null ? [] : shapes.map((shape) => ({ id, said: patternOf(shape) }));
    }),
  );
}

const ASKED = namesOf<AnswerableId>([QUANTITY_NAMES, DERIVED_NAMES], answerableId);
const PLACES = namesOf<PlaceId>([PLACE_NAMES], placeId);

const NAMED_PARTS = namesOf<PartId>([PART_NAMES], partId);

/** Whether such words, behind their first space, begin with a part's name. */
export const startsWithPart = (words: string): boolean =>
  NAMED_PARTS.some(({ said }) => said.exec(words)?.index === 1);

/** The longest name in the words, the first of those: "suction line" is no suction. */
function longestIn<Id>(names: readonly Name<Id>[], words: string): Id | null {
  let best: { readonly id: Id; readonly length: number } | null = null;
  for (const { id, said } of names) {
    const length = said.exec(words)?.[0].length ?? 0;
    if (length > (best?.length ?? 0)) best = { id, length };
  }
  return best?.id ?? null;
}

/** What is named anywhere in words that are each followed by a space, the first preceded by one. */
export const quantityNamedIn = (words: string): AnswerableId | null => longestIn(ASKED, words);
export const placeNamedIn = (words: string): PlaceId | null => longestIn(PLACES, words);
