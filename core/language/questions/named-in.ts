import { parseShape } from '../../grammar/shape.ts';
import { startersOf } from '../../grammar/starters.ts';
import type { AnswerableId } from '../../terms/quantities.ts';
import type { EquipmentId, PartId, PlaceId } from '../../terms/names.ts';
import { answerableId, equipmentId, partId, placeId, plateItemId } from '../slots.ts';
import { EQUIPMENT_NAMES } from '../vocabulary/fact-names.ts';
import { PART_NAMES } from '../vocabulary/part-names.ts';
import { PLACE_NAMES } from '../vocabulary/place-names.ts';
import { PLATE_ITEM_NAMES } from '../vocabulary/plate-names.ts';
import { DERIVED_NAMES, QUANTITY_NAMES } from '../vocabulary/quantity-names.ts';

interface Name<Id> {
  readonly id: Id;
  readonly said: RegExp;
  /** Its place in the tables. */
  readonly place: number;
  /** What it can begin with. */
  readonly starts: ReadonlySet<string>;
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
  const shaped = tables.flatMap((table) =>
    Object.entries(table).flatMap(([key, shapes]) => {
      const id = idOf(key);
      return id === null ? [] : shapes.map((shape) => ({ id, shape }));
    }),
  );
  return shaped.map(({ id, shape }, place) => {
    const starts = startersOf(parseShape(shape)).words ?? new Set();
    return { id, said: patternOf(shape), place, starts };
  });
}

/** By the words that they begin with: most of hundreds of names need not be looked for. */
function byStart<Id>(names: readonly Name<Id>[]): ReadonlyMap<string, readonly Name<Id>[]> {
  const found = new Map<string, Name<Id>[]>();
  for (const name of names) {
    for (const word of name.starts) found.set(word, [...(found.get(word) ?? []), name]);
  }
  return found;
}

const ASKED = byStart(namesOf<AnswerableId>([QUANTITY_NAMES, DERIVED_NAMES], answerableId));
const PLACES = byStart(namesOf<PlaceId>([PLACE_NAMES], placeId));

const NAMED_PARTS = byStart(namesOf<PartId>([PART_NAMES], partId));

type PlateItemId = keyof typeof PLATE_ITEM_NAMES;
const PLATE_ITEMS = byStart(namesOf<PlateItemId>([PLATE_ITEM_NAMES], plateItemId));
const EQUIPMENT = byStart(namesOf<EquipmentId>([EQUIPMENT_NAMES], equipmentId));

/** Whether such words, behind their first space, begin with a part's name. */
export function startsWithPart(words: string): boolean {
  const [, first = ''] = words.split(' ', 2);
  return (NAMED_PARTS.get(first) ?? []).some(({ said }) => said.exec(words)?.index === 1);
}

/** Whether the first of the words, behind their first space, may begin the name of a quantity or a part. */
export function startsWithName(words: string): boolean {
  const [, first = ''] = words.split(' ', 2);
  return ASKED.has(first) || NAMED_PARTS.has(first);
}

/** The longest name in the words, the first of those: "suction line" is no suction. */
function longestIn<Id>(names: ReadonlyMap<string, readonly Name<Id>[]>, words: string): Id | null {
  const begun = new Set(words.split(' ').flatMap((word) => names.get(word) ?? []));
  let best: (Name<Id> & { readonly length: number }) | null = null;
  for (const name of begun) {
    const length = name.said.exec(words)?.[0].length ?? 0;
    if (length === 0 || (best !== null && length < best.length)) continue;
    if (best === null || length > best.length || name.place < best.place)
      best = { ...name, length };
  }
  return best?.id ?? null;
}

/** What is named anywhere in words that are each followed by a space, the first preceded by one. */
export const quantityNamedIn = (words: string): AnswerableId | null => longestIn(ASKED, words);
export const partNamedIn = (words: string): PartId | null => longestIn(NAMED_PARTS, words);
export const placeNamedIn = (words: string): PlaceId | null => longestIn(PLACES, words);
export const plateItemNamedIn = (words: string): PlateItemId | null =>
  longestIn(PLATE_ITEMS, words);
export const equipmentNamedIn = (words: string): EquipmentId | null => longestIn(EQUIPMENT, words);
