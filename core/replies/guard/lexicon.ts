import { EQUIPMENT, METERING_DEVICES, PARTS, PLACES } from '../../terms/names.ts';
import { quantityTerm, type AnswerableId } from '../../terms/quantities.ts';
import { REFRIGERANTS } from '../../terms/refrigerants.ts';
import { SHORT_NAMES } from '../names.ts';

/** What a name in a sentence may stand for; "contactor" is a place and a part. */
export interface Meaning {
  readonly kind: 'quantity' | 'place' | 'part' | 'refrigerant' | 'equipment' | 'metering';
  readonly id: string;
}

interface Name {
  readonly words: string;
  readonly meanings: readonly Meaning[];
}

/** Other words for a quantity that a sentence may use, or may wrongly bring in. */
const ALSO_SAID: Partial<Record<AnswerableId, readonly string[]>> = {
  headPressure: ['head pressure', 'high side', 'discharge pressure'],
  suctionPressure: ['low side', 'back pressure'],
  condensingTemp: ['condensing temp', 'saturated condensing'],
  evaporatingTemp: ['evaporating temp', 'saturated suction', 'evaporator temperature'],
  ambientTemp: ['ambient temperature', 'outside air'],
  boxTemp: ['box temp', 'cabinet', 'return air'],
  setpointTemp: ['setpoint', 'setting'],
  split: ['split'],
  temperatureDifference: ['td'],
  superheat: ['super heat'],
  subcooling: ['sub-cooling', 'subcool'],
  highCutoutPressure: ['high cut-out'],
  lowCutoutPressure: ['low cut-out'],
  lowCutinPressure: ['low cut-in'],
};

export const NAMES_LONGEST_FIRST = namesLongestFirst();

function namesLongestFirst(): readonly Name[] {
  const names = new Map<string, Meaning[]>();
  const add = (words: string, kind: Meaning['kind'], id: string): void => {
    const key = words.toLowerCase();
    names.set(key, [...(names.get(key) ?? []), { kind, id }]);
  };
  for (const id of Object.keys(SHORT_NAMES).filter(isAnswerable)) {
    const all = new Set([SHORT_NAMES[id], quantityTerm(id).name, ...(ALSO_SAID[id] ?? [])]);
    for (const words of all) add(words, 'quantity', id);
  }
  for (const [id, words] of Object.entries(PLACES)) add(words, 'place', id);
  for (const [id, words] of Object.entries(PARTS)) add(words, 'part', id);
  for (const [id, words] of Object.entries(EQUIPMENT)) add(words, 'equipment', id);
  for (const [id, words] of Object.entries(METERING_DEVICES)) add(words, 'metering', id);
  for (const id of REFRIGERANTS) add(id, 'refrigerant', id);
  return [...names]
    .map(([words, meanings]) => ({ words, meanings }))
    .sort((a, b) => b.words.length - a.words.length);
}

function isAnswerable(id: string): id is AnswerableId {
  return id in SHORT_NAMES;
}
