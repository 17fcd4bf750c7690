import { equipmentName } from '../../core/terms/names.ts';
import type { UnitFacts } from '../../core/visit/state.ts';

/** What the unit is called: by its name, or by what it is. */
export function unitName({ name, equipment, freezer, doors, site }: UnitFacts): string {
  const kind =
    equipment && `${doors === null ? '' : `${doors}-door `}${equipmentName(equipment, freezer)}`;
  return [name ?? kind ?? 'this unit', site].filter(Boolean).join(', ');
}
