import { toBase } from '../../units/convert.ts';
import type { PartId, PlaceId } from '../../terms/names.ts';
import type { VisitState } from '../../visit/state.ts';

const THIRD_LEG: ReadonlySet<PlaceId> = new Set<PlaceId>([
  'lineThree',
  'lineTwoThree',
  'lineOneThree',
]);

/** What starts and runs a motor on one phase. */
const OF_ONE_PHASE: ReadonlySet<PlaceId | PartId | null> = new Set<PlaceId | PartId>([
  'runCapacitor',
  'startCapacitor',
  'startRelay',
]);

/** No plate names three phases at less (common practice: 200 V and up). */
const LEAST_OF_THREE = 150;

/** Whether the unit is known to have no third leg: told, or by what only one phase needs. */
export function isSinglePhase(state: VisitState): boolean {
  const { readings, findings, work, unit } = state;
  if (readings.some(({ reading: { place } }) => place !== null && THIRD_LEG.has(place)))
    return false;
  const told = saidPhase(state);
  if (told !== null) return told === 'single';
  const volts = unit.nameplate.voltage;
  if (volts !== undefined && toBase(volts) < LEAST_OF_THREE) return true;
  return (
    readings.some(({ reading: { place } }) => OF_ONE_PHASE.has(place)) ||
    findings.some(({ finding: { part } }) => OF_ONE_PHASE.has(part)) ||
    work.some((done) => OF_ONE_PHASE.has(done.work.part))
  );
}

/** The plate's phase stands in the words that its voltage was told in. */
function saidPhase({ history }: VisitState): 'single' | 'three' | null {
  const told = history.flatMap((event) => {
    if (event.type !== 'factStated' || event.fact.fact !== 'nameplate') return [];
    const [, phase] = /\b(single|one|1|three|3)[ -]phase\b/i.exec(event.fact.words) ?? [];
    return phase === undefined ? [] : [phase.toLowerCase()];
  });
  const last = told.at(-1);
  if (last === undefined) return null;
  return last === 'three' || last === '3' ? 'three' : 'single';
}
