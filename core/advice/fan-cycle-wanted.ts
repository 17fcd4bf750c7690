import { FAN_CYCLE } from '../calculations/control-defaults.ts';
import { fanCycleFormula } from '../calculations/head-control.ts';
import type { VisitState } from '../visit/state.ts';
import { type Aimpoint, steadyEquipment } from './aimpoint.ts';
import { andThen, type Found, worked } from './found.ts';

/** Where a condenser fan's control is usually set: the condensing temperatures between which its pair lies. */
export function fanCycleWanted(end: 'on' | 'off', state: VisitState): Found<Aimpoint> {
  const [low, high] = FAN_CYCLE.value[end];
  return andThen(steadyEquipment(state), () =>
    worked<Aimpoint>(
      { value: (low + high) / 2, low, high, basis: 'usualFanPair' },
      { formula: fanCycleFormula, cautions: ['designTableOnly'], sources: [FAN_CYCLE.source] },
    ),
  );
}
