import { splitFormula } from '../calculations/coil-differences.ts';
import { DESIGN_SPLITS } from '../calculations/shop-defaults.ts';
import { fromBase } from '../units/convert.ts';
import {
  raise,
  temperatureDifference,
  type TemperatureDifference,
} from '../units/quantity-values.ts';
import type { VisitState } from '../visit/state.ts';
import { designRow, steadyEquipment } from './aimpoint.ts';
import { condensingWanted, splitClass } from './condensing-wanted.ts';
import { readAmount, refrigerantOf, shownUnit, temperatureOf } from './current.ts';
import { andThen, both, worked, type Found } from './found.ts';
import type { HottestDayAnswer } from './limits-verdict.ts';
import { measured } from './measured.ts';
import { gaugeAt } from './targets.ts';
import type { Refused } from './verdict.ts';
import { toTemperatureDifference } from '../units/branding.ts';

const BY_WATER: Refused = { kind: 'refused', about: 'headPressure', reason: 'headFollowsTheWater' };

/**
 * Head on the hottest day as the unit runs now: that day's air plus today's own split, a dirty coil's with it. For
 * want of it, or while a control holds head up, the design split. With the cut-out told, what is left to it.
 */
export function hottestDay(state: VisitState): Found<HottestDayAnswer> {
  if (state.unit.condenser === 'waterCooled') return BY_WATER;
  const told = both(refrigerantOf(state), temperatureOf(state, 'designAmbientTemp'));
  return andThen(both(told, splitToUse(state)), ([[refrigerant, hottest], { split, from }]) => {
    const coil = raise(hottest, split);
    return andThen(gaugeAt(refrigerant, coil, state), (head) => {
      const degrees = shownUnit('condensingTemp', state) ?? 'degF';
      const shown = fromBase(head, shownUnit('headPressure', state) ?? 'psi');
      const apart = shownUnit('split', state) ?? 'dF';
      const cutout = readAmount(state, 'highCutoutPressure');
      return worked(
        {
          answer: 'hottestDay',
          ...shown,
          through: { about: 'condensingTemp', ...fromBase(coil, degrees) },
          ambient: { about: 'designAmbientTemp', ...fromBase(hottest, degrees) },
          split: { about: 'split', ...fromBase(split, apart) },
          splitFrom: from,
          cutout: cutout.kind === 'known' ? against(cutout.value.value, shown.value) : null,
        },
        { inputs: cutout.kind === 'known' ? cutout.inputs : [] },
      );
    });
  });
}

const against = (limit: number, head: number): HottestDayAnswer['cutout'] => ({
  limit,
  room: Math.abs(limit - head),
  side: limit >= head ? 'inside' : 'past',
});

interface SplitToUse {
  readonly split: TemperatureDifference;
  readonly from: HottestDayAnswer['splitFrom'];
}

function splitToUse(state: VisitState): Found<SplitToUse> {
  const now = measured('split', state);
  const value = now.kind === 'known' ? toTemperatureDifference(now.value) : null;
  if (now.kind === 'known' && value !== null && !isHeld(state)) {
    return { ...now, value: { split: value, from: 'measured' } };
  }
  return andThen(steadyEquipment(state), (equipment) =>
    andThen(designRow(DESIGN_SPLITS, splitClass(equipment, state), splitFormula), (row) =>
      worked({ split: temperatureDifference(row.value), from: 'design' }),
    ),
  );
}

function isHeld(state: VisitState): boolean {
  const aim = condensingWanted(state);
  if (aim.kind === 'needs') return aim.need === 'headControl' || aim.need === 'heldHeadPressure';
  return (
    aim.kind === 'known' && (aim.value.basis === 'headControl' || aim.value.basis === 'fanCycling')
  );
}
