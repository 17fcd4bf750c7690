import { cylinderFill, cylinderFillFormula } from '../calculations/cylinder-fill.ts';
import { toGaugePressure, toMass } from '../units/branding.ts';
import { convert, fromBase } from '../units/convert.ts';
import type { Mass } from '../units/quantity-values.ts';
import { SHOWN_UNITS } from '../units/shown-unit.ts';
import type { QuantityId } from '../terms/quantities.ts';
import { chargeBalance } from '../visit/charge-balance.ts';
import { amountOf, type ReadingEntry } from '../visit/views.ts';
import type { VisitState } from '../visit/state.ts';
import { readAmount, refrigerantOf, shownUnit } from './current.ts';
import { andThen, both, calculated, needing, worked, type Found } from './found.ts';
import { brandedAs, needPlate, plateOf } from './judged/read-at.ts';
import type { LimitAnswer } from './limits-verdict.ts';
import type { Input } from './verdict.ts';

type LimitId = LimitAnswer['about'];
type LimitOf<L extends LimitId> = Extract<LimitAnswer, { readonly about: L }>;
type Limits = {
  readonly [L in LimitId]: (state: VisitState) => Found<LimitOf<L>>;
};

const LIMITS: Limits = { testPressure, cylinderFill: cylinder, charge };

/** The most that may be put on or in: by the plate, the cylinder's stamp and what is known of the charge. */
export function limitFound(about: LimitId, state: VisitState): Found<LimitAnswer> {
  return LIMITS[about](state);
}

const PLATE = 'the unit’s nameplate: design pressures; the lowest component rating comes first';

/** The low side is in the circuit too, and rated lower: without its rating nothing is said. */
function testPressure(state: VisitState): Found<LimitOf<'testPressure'>> {
  const low = brandedAs(plateOf(state, 'lowSide'), toGaugePressure, needPlate('nameplateLowSide'));
  return andThen(low, (lowSide) => {
    const high = brandedAs(
      plateOf(state, 'highSide'),
      toGaugePressure,
      needPlate('nameplateHighSide'),
    );
    const isHigh = high.kind === 'known' && high.value < lowSide;
    const value = isHigh ? high.value : lowSide;
    return worked(
      {
        answer: 'limit',
        about: 'testPressure',
        ...fromBase(value, shownUnit('testPressure', state) ?? 'psi'),
        ruledBy: isHigh ? 'highSide' : 'lowSide',
      },
      { cautions: ['pressureTest'], sources: [PLATE] },
    );
  });
}

const weight = (state: VisitState, quantity: QuantityId): Found<Mass> =>
  brandedAs(readAmount(state, quantity), toMass, needing(quantity));

function cylinder(state: VisitState): Found<LimitOf<'cylinderFill'>> {
  const stamped = both(weight(state, 'waterCapacity'), weight(state, 'tareWeight'));
  return andThen(both(refrigerantOf(state), stamped), ([refrigerant, [waterCapacity, tare]]) => {
    if (refrigerant === 'R-744')
      return { kind: 'refused', about: null, reason: 'noFillRule', refrigerant };
    const found = cylinderFill({ refrigerant, waterCapacity, tare });
    return andThen(calculated(found, cylinderFillFormula, state), ({ net, gross }) => {
      const unit = SHOWN_UNITS[state.settings.units].mass;
      const now = weight(state, 'cylinderWeight');
      const room = now.kind === 'known' ? fromBase(gross - now.value, unit).value : null;
      return worked(
        {
          answer: 'limit',
          about: 'cylinderFill',
          ...fromBase(gross, unit),
          net: fromBase(net, unit).value,
          room,
        },
        { inputs: now.kind === 'known' ? now.inputs : [] },
      );
    });
  });
}

const BY_THE_PLATE =
  'the unit’s nameplate charge; a critical charge is weighed in: common practice';

/** Only after it was pulled empty is what was weighed in since all that is inside. */
function charge(state: VisitState): Found<LimitOf<'charge'>> {
  const { charged, since, isEmpty } = chargeBalance(state);
  return andThen(plateOf(state, 'charge'), (plate) => {
    const inside = charged && convert(charged, plate.unit);
    const left = isEmpty ? plate.value : inside && plate.value - inside.value;
    return worked<LimitOf<'charge'>>(
      { answer: 'limit', about: 'charge', ...plate, left },
      {
        cautions: ['chargeByNameplate'],
        sources: [BY_THE_PLATE],
        inputs: left === null ? [] : since.flatMap(moved),
      },
    );
  });
}

const moved = ({ reading, at }: ReadingEntry): readonly Input[] => {
  const amount = amountOf(reading);
  return amount ? [{ name: reading.quantity, ...amount, from: 'read', at }] : [];
};
