import { causesOf } from '../advice/causes/causes-of.ts';
import { only } from '../advice/sheet.ts';
import { type CauseId, CAUSES } from '../terms/causes.ts';
import type { Finding, Reading } from '../language/utterance.ts';
import {
  FINDING_STATES,
  type FindingStateId,
  HEATERS,
  PLACES,
  SIGHT_GLASS_STATES,
} from '../terms/names.ts';
import { namedAsFound } from '../terms/which-one.ts';
import { alterations, isBeforeAlteration, isSinceAlteration } from '../visit/alterations.ts';
import { sightGlassSeen, type SightGlassSeen } from '../visit/sight-glass.ts';
import { factsTold } from '../visit/facts-told.ts';
import type { VisitState } from '../visit/state.ts';
import { isNewer } from '../visit/views.ts';
import { circuitLines } from './circuit.ts';
import { causeSaid } from './complaint.ts';
import { jobRemarks } from './kept-as-said.ts';
import { toldState, tradeState } from './told-state.ts';
import { foundWeak } from './verdicts.ts';
import { listed, readingWritten, sentence } from './wording.ts';
import { AS_IT_SHOULD_BE, withoutWithdrawn } from '../advice/standing-findings.ts';

/** What was found is of the unit as it was before the work; how it was left stands under "after". */
export function findingLines(state: VisitState): readonly string[] {
  const { readings } = state;
  const findings = withoutWithdrawn(state);
  const isSince = isSinceAlteration(state);
  const isLeft = isLeftSo(state);
  return once([
    ...withoutTheGeneral(findings.filter((entry) => !isLeft(entry))).map(seenLine),
    ...measuredWeak(state).map((finding) => seenLine({ finding })),
    ...readings
      .filter(({ reading: { event } }) => event === 'tripped' || event === 'standing')
      .map(({ reading }) => sentence(readingWritten(reading))),
    ...circuitLines(state).found,
    ...sightGlassSeen(state)
      .filter((seen) => !isSince(seen))
      .map(glassLine),
    ...jobRemarks(state)
      .filter((entry) => !isSaidAfter(entry, isSince))
      .map(({ memo }) => sentence(memo)),
    ...causeLine(state),
  ]);
}

/** What was seen once the work was done: a fan that turns again belongs under "after", not beside "not running". */
export function seenAfterLines(state: VisitState): readonly string[] {
  const isSince = isSinceAlteration(state);
  const isLeft = isLeftSo(state);
  return once([
    ...state.findings.filter(isLeft).map(seenLine),
    ...runningByItsCurrent(state),
    ...sightGlassSeen(state).filter(isSince).map(glassLine),
    ...jobRemarks(state)
      .filter((entry) => isSaidAfter(entry, isSince))
      .map(({ memo }) => sentence(memo)),
  ]);
}

/** "Condenser fan running, point five amps" is read of the fan, and tells that it runs. */
function runningByItsCurrent(state: VisitState): readonly string[] {
  const isSince = isSinceAlteration(state);
  return state.readings
    .filter((entry) => isSince(entry) && isRunningAt(entry.reading))
    .flatMap(({ reading: { place } }) =>
      place === null ? [] : [sentence(`${PLACES[place]}: ${FINDING_STATES.running}`)],
    );
}

export const isRunningAt = ({ quantity, value, words }: Reading): boolean =>
  quantity === 'current' && (value ?? 0) > 0 && /\brunning\b/i.test(words);

type Seen = VisitState['findings'][number];

/** Told since the work was done, and not of what had been wrong before it: "the cap was weak" names a cause. */
export function isLeftSo(state: VisitState): (entry: Seen) => boolean {
  const isSince = isSinceAlteration(state);
  return (entry) => isSince(entry) && !isToldOfBefore(entry.finding);
}

/** What a meter found and nobody told of the part. */
export function measuredWeak(state: VisitState): readonly Finding[] {
  return foundWeak(state)
    .filter(
      (part) => !state.findings.some(({ finding }) => finding.part === part && isAmiss(finding)),
    )
    .map((part) => ({ part, state: 'failed', words: 'weak' }));
}

const PAST = /\b(?:was|were|had been|turned out|turns out|the cause|the problem|the culprit)\b/i;

const isToldOfBefore = (finding: Finding): boolean =>
  isAmiss(finding) && !PASSES.has(finding.state) && PAST.test(finding.words);

/** What a part is for the moment, and no fault of it. */
export const PASSES: ReadonlySet<FindingStateId> = new Set<FindingStateId>([
  ...(['warm', 'cold', 'hot', 'wet', 'defrosting', 'defrosted'] as const),
]);

/** A heater that is warm, and a coil that defrosts, do their work: beside what is at fault they were not found so. */
export function withoutWorking(entries: readonly Seen[]): readonly Seen[] {
  const works = ({ finding: { part, state } }: Seen): boolean =>
    state === 'defrosting' || (state === 'warm' && HEATERS.some((heater) => heater === part));
  const isFault = ({ finding }: Seen): boolean => !PASSES.has(finding.state);
  return entries.some(isFault) ? entries.filter((entry) => !works(entry)) : entries;
}

/** "The cause was the contactor" behind "contacts are burnt" says no more of it. */
export function withoutTheGeneral(entries: readonly Seen[]): readonly Seen[] {
  const isGeneral = ({ state, words }: Finding): boolean =>
    state === 'failed' && toldState({ state, words }) === null;
  const isFault = ({ state }: Finding): boolean => isAmiss({ state }) && !PASSES.has(state);
  return entries.filter(
    ({ finding }) =>
      !isGeneral(finding) ||
      !entries.some(
        ({ finding: other }) => other.part === finding.part && isFault(other) && !isGeneral(other),
      ),
  );
}

/** Told twice, it was found once. */
const once = (lines: readonly string[]): readonly string[] => [...new Set(lines)];

type Told = ReturnType<typeof jobRemarks>[number];
type IsSince = ReturnType<typeof isSinceAlteration>;

/** "First batch was good" is how the unit was left; a memo that was dictated may be of any time. */
const isSaidAfter = (entry: Told, isSince: IsSince): boolean =>
  entry.remark === true && isSince(entry);

export const isAmiss = ({ state }: Pick<Finding, 'state'>): boolean => !AS_IT_SHOULD_BE.has(state);

const seenLine = ({ finding }: Pick<Seen, 'finding'>): string =>
  sentence(`${namedAsFound(finding.part, finding.words)}: ${tradeState(finding)}`);

const glassLine = ({ value }: SightGlassSeen): string =>
  sentence(`Sight glass ${SIGHT_GLASS_STATES[value]}`);

/**
 * What the technician held to be wrong; else what the readings before the work pointed to: likely, never a fact,
 * and only where readings speak for it.
 */
function causeLine(state: VisitState): readonly string[] {
  const held = causesHeld(state);
  if (held.length > 0) {
    return [
      sentence(
        `${held.length === 1 ? 'Cause' : 'Causes'}: ${listed(held.map((id) => CAUSES[id]))}`,
      ),
    ];
  }
  const said = causeSaid(state);
  if (said !== null) return [sentence(`Cause: ${said}`)];
  const names = likelyCauses(state).map((cause) => CAUSES[cause]);
  return names.length === 0
    ? []
    : [sentence(`Likely, by the readings before work: ${names.join(' or ')}`)];
}

/** A cause that was held to be wrong and worked on before another was found: both were. */
export function causesHeld(state: VisitState): readonly CauseId[] {
  const { cause: last } = state.unit;
  if (last === null) return [];
  const told = factsTold(state).flatMap(({ id, fact }) =>
    fact.fact === 'cause' ? [{ id, cause: fact.value }] : [],
  );
  const worked = alterations(state);
  const mended = told
    .slice(0, -1)
    .filter(({ id }, at) => {
      const next = told[at + 1];
      return worked.some(
        (done) => isNewer(state, done, id) && next !== undefined && isNewer(state, next.id, done),
      );
    })
    .map(({ cause }) => cause);
  return [...new Set([...mended.filter((cause) => cause !== last), last])];
}

export function likelyCauses(state: VisitState): readonly CauseId[] {
  const found = causesOf(asFound(state));
  if (found.kind !== 'known') return [];
  const leading = found.value.causes.filter(
    ({ cause, standing }) => standing === 'leading' && cause !== 'nothingWrong',
  );
  const isRead = leading.some((row) => row.for.some(({ kind }) => kind === 'deviation'));
  if (!isRead) return [];
  return leading.map(({ cause }) => cause);
}

/** A fan that turned after its capacitor was replaced must not speak against the fan that stood still. */
function asFound(state: VisitState): VisitState {
  const isBefore = isBeforeAlteration(state);
  const glass = sightGlassSeen(state).findLast(isBefore)?.value ?? null;
  return {
    ...only(state, ['before']),
    work: [],
    findings: state.findings.filter(isBefore),
    unit: { ...state.unit, sightGlass: glass },
  };
}
