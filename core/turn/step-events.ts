import type { Verdict } from '../advice/verdict.ts';
import type { EventBody } from '../visit/events.ts';
import type { VisitState } from '../visit/state.ts';

/** Where the steps stand after what was told: kept, so that they go on after the page was closed. */
export function stepEvents(
  verdicts: readonly Verdict[],
  { steps }: VisitState,
): readonly EventBody[] {
  return verdicts.flatMap((verdict): readonly EventBody[] => {
    if (verdict.kind !== 'known') return [];
    if (verdict.answer === 'stepsDone') return [{ type: 'stepsLeft', v: 1 }];
    if (verdict.answer !== 'step') return [];
    const { procedure, number, told } = verdict;
    if (told === 'begun') return [{ type: 'stepsBegun', v: 1, procedure }];
    return steps?.number === number ? [] : [{ type: 'stepReached', v: 1, step: number }];
  });
}
