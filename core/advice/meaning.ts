import type { Finding } from '../language/utterance.ts';
import type { FindingStateId, PartId, PlaceId } from '../terms/names.ts';
import type { QuantityId } from '../terms/quantities.ts';
import type { VisitEvent } from '../visit/events.ts';
import type { VisitState } from '../visit/state.ts';
import { amountOf } from '../visit/views.ts';
import { isTracing } from './circuit/next-place.ts';
import { tracedFault, tracedNext } from './circuit/stopped.ts';
import { switchAnswer } from './circuit/switch-answer.ts';
import { guided } from './guides.ts';
import type { Known, Verdict } from './verdict.ts';

type Told = Extract<
  VisitEvent,
  { readonly type: 'readingTaken' | 'findingReported' | 'factStated' | 'memoTaken' | 'workDone' }
>;

const TOLD: ReadonlySet<VisitEvent['type']> = new Set<VisitEvent['type']>([
  'readingTaken',
  'findingReported',
  'factStated',
  'memoTaken',
  'workDone',
]);

const isTold = (event: VisitEvent): event is Told => TOLD.has(event.type);

/** What was told last: questions tell nothing. */
export const lastTold = ({ history }: VisitState): Told | null => history.findLast(isTold) ?? null;

/** Whether what was told in the last sentence was seen and not read: "is that normal" is of that. */
export function sawLast({ history }: VisitState): boolean {
  const last = history.findLast((event) => isTold(event) || event.type === 'questionAsked');
  const before = history.findLast(
    (event) => event !== last && (isTold(event) || event.type === 'questionAsked'),
  );
  const told = last?.type === 'questionAsked' ? before : last;
  return told?.type === 'findingReported' || told?.type === 'memoTaken';
}

const SWITCHES: ReadonlySet<PlaceId> = new Set<PlaceId>([
  'highPressureSwitch',
  'lowPressureSwitch',
  'temperatureControl',
  'defrostTimer',
  'doorSwitch',
  'overload',
  'loadSide',
]);

/** Whether a switch was metered last, or nothing at a load: no rating says whether that is good. */
export function tracedLast(state: VisitState): boolean {
  const told = lastTold(state);
  if (told?.type !== 'readingTaken' || !isTracing(state)) return false;
  const { place, value } = told.reading;
  return place !== null && (SWITCHES.has(place) || value === 0);
}

/** What the rest of the answers give it. */
export interface Ways {
  readonly causes: (state: VisitState) => Verdict;
  readonly compare: (about: QuantityId, state: VisitState) => Verdict;
}

/** What a test or a rating judges by itself: it tells of no cause. */
const JUDGED: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'testPressure',
  'vacuum',
  'productTemp',
  'capacitance',
  'resistance',
  'insulationResistance',
  'voltage',
  'current',
]);

const FAULTS: ReadonlySet<FindingStateId> = new Set<FindingStateId>(['failed', 'burnt']);

/** What it means that was told last: of a meter where its fault is, of a reading its causes, of a test its verdict. */
export function meaningOf(state: VisitState, ways: Ways): Verdict {
  const traced = metersMeaning(state);
  if (traced !== null) return traced;
  const told = lastTold(state);
  if (told?.type === 'readingTaken' && JUDGED.has(told.reading.quantity))
    return ways.compare(told.reading.quantity, state);
  if (told?.type === 'findingReported' && isFault(told.finding))
    return guided('faultItself', state);
  const causes = tracedFault(state) ?? ways.causes(state);
  const isSeen = told?.type === 'findingReported' || told?.type === 'memoTaken';
  return isSeen && leadsNowhere(causes) ? guided('lookTellsNothing', state) : causes;
}

/** Burnt or dead whatever the readings say; a coil that is open has no path through it. */
const isFault = ({ part, state: found }: Finding): boolean =>
  FAULTS.has(found) || (found === 'open' && COILS.has(part));

const COILS: ReadonlySet<PartId> = new Set<PartId>([
  'liquidLineSolenoid',
  'defrostHeater',
  'drainHeater',
  'doorHeater',
  'crankcaseHeater',
  'transformer',
  'fuse',
]);

const leadsNowhere = (verdict: Verdict): boolean =>
  verdict.kind === 'needs' ||
  (verdict.kind === 'known' &&
    verdict.answer === 'causes' &&
    !verdict.causes.some(({ standing }) => standing === 'leading'));

/** Of the switch or the load that was just metered, where its own voltage settles it; else of the whole circuit. */
function metersMeaning(state: VisitState): Verdict | null {
  const last = state.readings.at(-1)?.reading;
  if (!isTracing(state) || lastTold(state)?.type !== 'readingTaken' || last === undefined)
    return ohmsMeaning(state);
  const own = last.place === null ? null : switchAnswer(last.place, state);
  if (own?.kind === 'known' && own.answer === 'switch' && SETTLED.has(own.state)) return own;
  return tracedNext(state) ?? own;
}

type SwitchState = Extract<Known, { readonly answer: 'switch' }>['state'];
const SETTLED: ReadonlySet<SwitchState> = new Set<SwitchState>([
  'open',
  'passing',
  'fed',
  'partial',
  'noPath',
  'noSupply',
  'notFed',
]);

/** No path on the meter has no number. */
function ohmsMeaning(state: VisitState): Verdict | null {
  const told = lastTold(state);
  if (told?.type !== 'readingTaken') return null;
  const { reading } = told;
  if (reading.quantity !== 'resistance' || reading.place === null) return null;
  if (amountOf(reading) !== null && reading.overlimit !== true) return null;
  const own = switchAnswer(reading.place, state);
  return own.kind === 'known' ? own : null;
}

/**
 * What stopped it: a cut-out that is told against its pressure, else what the meter found open, else the causes. A
 * switch that opened on the pressure it is set for did its job.
 */
export function whatStopped(
  state: VisitState,
  ways: Ways & { readonly margin: (about: QuantityId, state: VisitState) => Verdict },
): Verdict {
  const low = ways.margin('lowCutoutPressure', state);
  const high = ways.margin('highCutoutPressure', state);
  const isPast = (verdict: Verdict): boolean =>
    verdict.kind === 'known' && verdict.answer === 'margin' && verdict.side === 'past';
  if (isPast(high)) return high;
  if (isPast(low)) return low;
  const asksCutout = low.kind === 'needs' && low.need === 'lowCutoutPressure';
  if (asksCutout && foundOpen(state) === 'lowPressureSwitch') return low;
  return tracedFault(state) ?? ways.causes(state);
}

/** The one that the meter found open. */
function foundOpen(state: VisitState): string | null {
  const opened = state.readings.flatMap(({ reading }) => {
    const { place, quantity } = reading;
    const own = quantity === 'voltage' && place !== null ? switchAnswer(place, state) : null;
    return own?.kind === 'known' && own.answer === 'switch' && own.state === 'open' ? [place] : [];
  });
  return opened.at(-1) ?? null;
}
