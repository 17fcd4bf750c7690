import type { EquipmentId } from '../../terms/names.ts';
import type { Context } from '../context.ts';
import { equipmentNamedIn } from '../questions/named-in.ts';
import type { Reading } from '../utterance.ts';
import { spelledOut } from '../words/own-reading.ts';
import { both, type DraftUtterance } from './told.ts';

/**
 * "Prep table's at thirty nine", told on the visit of an undercounter: of another box than this visit's, and kept in its
 * words. A walk-in is called one whether it is a cooler or a freezer.
 */
export function tellOtherBoxes(all: DraftUtterance, { equipment }: Context): void {
  if (equipment === null || !BOXES.has(equipment)) return;
  const others = all.readings.filter((each) => isOfOther(each, equipment));
  if (others.length === 0) return;
  all.readings = all.readings.filter((each) => !others.includes(each));
  all.remarks = both(
    all.remarks,
    others.map(({ words }) => words),
  );
}

function isOfOther({ quantity, words }: Reading, equipment: EquipmentId): boolean {
  if (quantity !== 'boxTemp') return false;
  const named = equipmentNamedIn(` ${spelledOut(words).toLowerCase()} `);
  return named !== null && BOXES.has(named) && boxOf(named) !== boxOf(equipment);
}

const boxOf = (id: EquipmentId): EquipmentId => (id === 'walkInFreezer' ? 'walkInCooler' : id);
const BOXES: ReadonlySet<EquipmentId> = new Set<EquipmentId>([
  ...(['reachIn', 'prepTable', 'displayCase', 'walkInCooler', 'walkInFreezer'] as const),
]);
