import { equipmentName } from '../../core/terms/names.ts';
import { kindOf } from '../../core/visit/unit-kind.ts';
import type { UnitFacts } from '../../core/visit/state.ts';

/** What the unit is called: by its name, or by what it is. */
export function unitName(unit: UnitFacts): string {
  const { name, freezer, doors, site } = unit;
  const of = kindOf(unit);
  const kind = of && `${doors === null ? '' : `${doors}-door `}${equipmentName(of, freezer)}`;
  return [name ?? kind ?? 'this unit', site].filter(Boolean).join(', ');
}
