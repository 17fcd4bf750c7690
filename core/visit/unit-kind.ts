import type { EquipmentId } from '../terms/names.ts';
import type { UnitFacts } from './state.ts';

/** What the unit is to be judged by: the class of its box, or its condensing unit where only that is known. */
export function kindOf({ equipment, condensingUnit }: UnitFacts): EquipmentId | null {
  return equipment ?? (condensingUnit === 'remote' ? 'remoteCondensingUnit' : null);
}

/** Whether the condenser stands apart from the box, where the day's air goes through it. */
export const isRemote = ({ condensingUnit, condenser }: UnitFacts): boolean =>
  condensingUnit === 'remote' || condenser === 'remote';

/** Whether it keeps things frozen, by its class or by what was told of it. */
export const isFreezer = ({ equipment, freezer }: UnitFacts): boolean =>
  equipment === 'walkInFreezer' || freezer;
