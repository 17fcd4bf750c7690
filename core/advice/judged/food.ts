import {
  coldHolding,
  coldHoldingFormula,
  FOOD_TEMPERATURES,
} from '../../calculations/food-times.ts';
import { fromBase } from '../../units/convert.ts';
import { degreesF } from '../../units/quantity-values.ts';
import type { VisitState } from '../../visit/state.ts';
import { isFreezer } from '../../visit/unit-kind.ts';
import { shownUnit, temperatureOf } from '../current.ts';
import { andThen, calculated, worked, type Found } from '../found.ts';
import type { JudgedOf } from './judged-verdict.ts';

/** Above it what was frozen has thawed (pure water; food a little lower). */
const THAWS = degreesF(32);

/**
 * The food's own temperature against cold holding. Whether it is kept or thrown away is not said here: it hangs on
 * times that the operator knows, and on the local code.
 */
export function food(state: VisitState): Found<JudgedOf<'food'>> {
  return andThen(temperatureOf(state, 'productTemp'), (product) =>
    andThen(calculated(coldHolding(product), coldHoldingFormula, state), ({ verdict }) => {
      const unit = shownUnit('productTemp', state) ?? 'degF';
      const isThawed = isFreezer(state.unit) && product > THAWS;
      return worked({
        answer: 'judged',
        about: 'food',
        finding: isThawed ? 'thawed' : verdict,
        ...fromBase(product, unit),
        limit: fromBase(isThawed ? THAWS : FOOD_TEMPERATURES.coldHold.value, unit),
      });
    }),
  );
}
