import type { Data, Tags } from '../grammar/nodes.ts';
import { CAUSES } from '../terms/causes.ts';
import {
  EQUIPMENT,
  type EquipmentId,
  FINDING_STATES,
  METERING_DEVICES,
  PARTS,
  PLACES,
  SIGHT_GLASS_STATES,
  WORK_KINDS,
} from '../terms/names.ts';
import { DERIVED_QUANTITIES, QUANTITIES } from '../terms/quantities.ts';
import { REFRIGERANTS, type RefrigerantId } from '../terms/refrigerants.ts';
import type { Span } from './rule.ts';
import type { Fact } from './utterance.ts';
import { PLATE_ITEM_NAMES } from './vocabulary/plate-names.ts';

/** Reads an id out of a tag: tags are plain data, and only the tables say what an id is. */
export function idIn<Table extends object>(
  table: Table,
): (data: Data | undefined) => keyof Table | null {
  const isId = (data: Data | undefined): data is string & keyof Table =>
    typeof data === 'string' && Object.hasOwn(table, data);
  return (data) => (isId(data) ? data : null);
}

export const quantityId = idIn(QUANTITIES);
export const derivedId = idIn(DERIVED_QUANTITIES);
export const answerableId = idIn({ ...QUANTITIES, ...DERIVED_QUANTITIES });
export const placeId = idIn(PLACES);
export const partId = idIn(PARTS);
export const stateId = idIn(FINDING_STATES);
export const workId = idIn(WORK_KINDS);
export const causeId = idIn(CAUSES);
export const equipmentId = idIn(EQUIPMENT);
export const plateItemId = idIn(PLATE_ITEM_NAMES);

/** What kind of unit it is, how many doors it has, and whether the words call it a freezer. */
export function equipmentFact(tags: Tags, words: string): Fact | null {
  const value = equipmentId(tags['equipment']);
  if (value === null) return null;
  if (value === 'remoteCondensingUnit') return { fact: 'condensingUnit', value: 'remote', words };
  const doors = numberIn(tagsIn(tags['doors'])?.['number']);
  const freezer = EITHER.includes(value) ? freezerIn(words) : null;
  return {
    fact: 'equipment',
    value,
    ...(doors === null ? {} : { doors }),
    ...(freezer === null ? {} : { freezer }),
    words,
  };
}

/** The class of the box and, where the words say so, that all of it stands in one piece. */
export function boxFacts(tags: Tags, words: string): readonly Fact[] {
  const box = equipmentFact(tags, words);
  if (box === null) return [];
  return SELF_CONTAINED.test(words) ? [box, selfContainedAs(words)] : [box];
}

const SELF_CONTAINED = /\bself[- ]contained\b/i;

export const selfContainedAs = (words: string): Fact => ({
  fact: 'condensingUnit',
  value: 'selfContained',
  words,
});

const EITHER: readonly EquipmentId[] = ['reachIn', 'prepTable', 'displayCase'];

/** Whether the words call it a freezer or a cooler, where they call it either. */
function freezerIn(words: string): boolean | null {
  if (/\b(?:freezers?|frozen|ice cream|low temp)\b/i.test(words)) return true;
  return /\b(?:coolers?|fridges?|refrigerators?|medium temp|med temp)\b/i.test(words)
    ? false
    : null;
}
export const meteringId = idIn(METERING_DEVICES);
export const sightGlassId = idIn(SIGHT_GLASS_STATES);

const isRefrigerant = (data: Data | undefined): data is RefrigerantId =>
  REFRIGERANTS.some((id) => id === data);
export const refrigerantId = (data: Data | undefined): RefrigerantId | null =>
  isRefrigerant(data) ? data : null;

export const numberIn = (data: Data | undefined): number | null =>
  typeof data === 'number' ? data : null;

/** A number that was said with its sign. */
export function signedIn(tags: Tags): number | null {
  const number = numberIn(tags['number']);
  return number !== null && number !== 0 && tags['negative'] === true ? -number : number;
}

export const tagsIn = (data: Data | undefined): Tags | null =>
  typeof data === 'object' ? data : null;

export function spanIn(data: Data | undefined): Span | null {
  const tags = tagsIn(data);
  const from = numberIn(tags?.['from']);
  const to = numberIn(tags?.['to']);
  return from === null || to === null ? null : { from, to };
}
