import { fluidCautions } from '../calculations/fluid-cautions.ts';
import type { Question, SafetyTopic } from '../language/utterance.ts';
import type { PartId } from '../terms/names.ts';
import type { VisitState } from '../visit/state.ts';
import { measured } from './measured.ts';
import type { CautionId } from './verdict.ts';

/** Everything the state of the visit calls for, asked or not. */
export function cautionsFor(state: VisitState): readonly CautionId[] {
  const all: readonly (readonly CautionId[])[] = [
    fluidCautionsOf(state),
    nearZero(state),
    keepsTripping(state) ? ['repeatedReset'] : [],
    resetAgain(state) ? ['resetAgain'] : [],
    state.readings.some(({ reading }) => reading.quantity === 'voltage') ? ['liveWork'] : [],
    workedBlind(state) ? ['workBeforeBaseline'] : [],
  ];
  return [...new Set(all.flat())];
}

/** What burns, poisons or stands at extreme pressure: it goes with every number about the unit. */
export function fluidCautionsOf({ unit: { refrigerant } }: VisitState): readonly CautionId[] {
  if (refrigerant === null) return [];
  return fluidCautions(refrigerant).filter((id) => id !== 'chartsDiffer');
}

function nearZero(state: VisitState): readonly CautionId[] {
  return (['superheat', 'subcooling'] as const).flatMap((about) => {
    const found = measured(about, state);
    if (found.kind === 'needs') return [];
    return (found.cautions ?? []).filter((id) => NEAR_ZERO.has(id));
  });
}

const NEAR_ZERO: ReadonlySet<CautionId> = new Set<CautionId>([
  'liquidMayReturn',
  'flashGas',
  'wetOrWrongRefrigerant',
]);

const SAFETIES: ReadonlySet<PartId> = new Set<PartId>(['highPressureSwitch', 'overload']);

function keepsTripping({ findings, work }: VisitState): boolean {
  return (
    findings.some(({ finding }) => finding.state === 'tripped' && SAFETIES.has(finding.part)) ||
    work.some(({ work: { did, part } }) => did === 'reset' && part !== null && SAFETIES.has(part))
  );
}

/** Once is how it is found; twice is running it back into what opened it. */
function resetAgain({ work }: VisitState): boolean {
  const resets = work.filter(
    ({ work: { did, part } }) => did === 'reset' && (part === null || SAFETIES.has(part)),
  );
  return resets.length > 1;
}

function workedBlind({ readings, work }: VisitState): boolean {
  return work.length > 0 && !readings.some(({ phase }) => phase === 'before');
}

/** What must be heard with a question about safety, whatever the answer. */
export const SAFETY_CAUTIONS: Record<SafetyTopic, readonly CautionId[]> = {
  brazing: ['brazing'],
  opening: ['openingTheSystem'],
  charging: ['chargeByNameplate'],
  venting: ['noVenting'],
  resetting: ['repeatedReset'],
  bypassing: ['noBypass', 'liveWork'],
  energising: ['liveWork'],
};

/** What goes with a question that cannot be answered yet. */
export function questionCautions(ask: Question['ask'], about: unknown): readonly CautionId[] {
  if (ask !== 'limit') return [];
  return about === 'cylinderFill' ? ['neverOverfill'] : ['chargeByNameplate'];
}
