import type { Context, Expectation } from '../language/context.ts';
import { type KnownNames, NO_NAMES } from '../language/known-names.ts';
import type { VisitEvent } from '../visit/events.ts';
import type { VisitState } from '../visit/state.ts';
import { latestAmount, openQuestion, type OpenQuestion } from '../visit/views.ts';

/** What the visit so far lends to the reading of the next sentence. */
export function contextOf(state: VisitState, names: KnownNames = NO_NAMES): Context {
  return {
    units: state.settings.units,
    refrigerant: state.unit.refrigerant,
    equipment: state.unit.equipment,
    asked: state.wanted,
    askedPlace: state.wantedPlace,
    lastQuantity: state.lastQuantity,
    lastPlace: state.lastPlace,
    lastPart: state.lastPart,
    stepping: state.steps !== null,
    asksYes: openQuestion(state)?.of.id === state.history.at(-1)?.id && state.history.length > 0,
    openFan: openFan(state),
    headPressure: latestAmount(state, 'headPressure'),
    suctionPressure: latestAmount(state, 'suctionPressure'),
    names,
    timing: state.timers.length > 0,
  };
}

function openFan({ findings }: VisitState): Context['openFan'] {
  const last = findings.at(-1)?.finding;
  return last?.unresolved === true ? last.state : null;
}

/** What an open question wants to hear. A choice between two values is answered by one of them. */
export function expectationOf(question: OpenQuestion | null): Expectation {
  if (question?.kind !== 'doubt') return 'anything';
  return question.of.doubt.or === undefined ? 'yesOrNo' : 'number';
}

/**
 * What the reply to these events asks for, which narrows the grammar for the next sentence alone: a question
 * raised now, else a reading wanted now. Older questions wait on the sheet.
 */
export function expectationAfter(events: readonly VisitEvent[], state: VisitState): Expectation {
  const open = openQuestion(state);
  if (open !== null && events.some(({ id }) => id === open.of.id)) return expectationOf(open);
  return events.some(({ type }) => type === 'readingWanted') ? 'number' : 'anything';
}
