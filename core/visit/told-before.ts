import type { ToldBefore } from '../language/context.ts';
import type { VisitEvent } from './events.ts';
import type { VisitState } from './state.ts';

/** So far back a few words put something right: what was told longer ago is named. */
const LATELY = 6;

/** What was kept last, the newest first: as far back as "no, eleven ounces" may reach. */
export function toldBefore(state: VisitState): readonly (ToldBefore | null)[] {
  return state.undoable
    .slice(-LATELY)
    .toReversed()
    .map((id) => readingTold(state, id) ?? eventTold(state.history.find((each) => each.id === id)));
}

function readingTold({ readings }: VisitState, id: string): ToldBefore | null {
  const entry = readings.find((each) => each.id === id);
  return entry === undefined
    ? null
    : { words: entry.reading.words, told: { of: 'reading', reading: entry.reading } };
}

function eventTold(event: VisitEvent | undefined): ToldBefore | null {
  switch (event?.type) {
    case 'factStated':
      return { words: event.fact.words, told: { of: 'fact', fact: event.fact } };
    case 'findingReported':
      return { words: event.finding.words, told: { of: 'finding', finding: event.finding } };
    case 'workDone':
      return { words: event.work.words, told: { of: 'work', work: event.work } };
    case 'recommendationMade': {
      const { recommendation } = event;
      return { words: recommendation.words, told: { of: 'recommendation', recommendation } };
    }
    case 'timerStarted': {
      const { minutes, about } = event;
      const words = `${String(minutes)} minutes on the ${about ?? 'timer'}`;
      return { words, told: { of: 'command', command: { do: 'timer', minutes, about } } };
    }
    default:
      return null;
  }
}
