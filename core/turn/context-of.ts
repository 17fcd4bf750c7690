import type { Context, Expectation } from '../language/context.ts';
import type { VisitState } from '../visit/state.ts';
import { latestAmount, openQuestion } from '../visit/views.ts';

/** What the visit so far lends to the reading of the next sentence. */
export function contextOf(state: VisitState): Context {
  return {
    units: state.settings.units,
    refrigerant: state.unit.refrigerant,
    asked: state.wanted,
    lastQuantity: state.lastQuantity,
    lastPlace: state.lastPlace,
    lastPart: state.lastPart,
    headPressure: latestAmount(state, 'headPressure'),
    suctionPressure: latestAmount(state, 'suctionPressure'),
  };
}

/** What the dialogue expects next: it narrows the grammar the recogniser is given. */
export function expectationOf(state: VisitState): Expectation {
  if (openQuestion(state)?.kind === 'doubt') return 'yesOrNo';
  return state.wanted === null ? 'anything' : 'number';
}
