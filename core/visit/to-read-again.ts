import type { PartId } from '../terms/names.ts';
import type { AnswerableId } from '../terms/quantities.ts';
import type { VisitState } from './state.ts';

/** What proves a motor's insulation is as good after a contactor was changed as before: only its own work undoes it. */
const PROVEN_OF: Partial<Record<AnswerableId, readonly PartId[]>> = {
  insulationResistance: [
    'compressor',
    'condenserFanMotor',
    'evaporatorFanMotor',
    'wiring',
    'terminal',
  ],
};
/** Tightened and cleaned, a terminal insulates as before. */
const PUTS_IN = new Set<string>(['replace', 'repair', 'add']);

/** Whether the work done touches what was read, so that its after is missing without it. */
export function isToReadAgain(quantity: AnswerableId, { work }: VisitState): boolean {
  const parts = PROVEN_OF[quantity];
  if (parts === undefined) return true;
  return work.some(
    ({ work: { did, part } }) => part !== null && PUTS_IN.has(did) && parts.includes(part),
  );
}
