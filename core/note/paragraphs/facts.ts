import { chargeBalance } from '../../visit/charge-balance.ts';
import { deviationNow } from '../../advice/compare.ts';
import type { DoneRow, FoundRow } from '../../advice/history-verdict.ts';
import type { Work } from '../../language/utterance.ts';
import { isGrounded } from '../../advice/grounded.ts';
import { MENDS, withoutWithdrawn } from '../../advice/standing-findings.ts';
import { seenBefore, isSameFound } from '../../advice/history.ts';
import { wanted } from '../../advice/targets.ts';
import type { Made } from '../../replies/recommendation-sentences.ts';
import type { CauseId } from '../../terms/causes.ts';
import type { RefrigerantId } from '../../terms/refrigerants.ts';
import type { Amount } from '../../units/amount.ts';
import type { CivilDate } from '../../units/civil-date.ts';
import { convert } from '../../units/convert.ts';
import { isBeforeAlteration, isSinceAlteration } from '../../visit/alterations.ts';
import { type Agreed, agreedBefore } from '../../visit/agreed.ts';
import type { EventId } from '../../visit/events.ts';
import type { LeftOpen } from '../../visit/left-open.ts';
import { surelyLeftOpen } from '../../visit/power-back.ts';
import {
  holdsSome,
  refrigerantAccounts,
  type RefrigerantAccount,
  type SaidNone,
  saidNone,
  withoutNothing,
} from '../../visit/refrigerant-account.ts';
import { asOne, ranSince, STOPS } from '../../visit/ran.ts';
import type { VisitState } from '../../visit/state.ts';
import { amountOf, isNewer, latestAmount, latestReading } from '../../visit/views.ts';
import { causeSaid, complaintMemos, productMemos } from '../complaint.ts';
import { circuitSuspects, type CircuitSuspects } from '../circuit.ts';
import {
  causesHeld,
  isAmiss,
  isLeftSo,
  PASSES,
  likelyCauses,
  measuredWeak,
  withoutTheGeneral,
  withoutWorking,
} from '../findings.ts';
import { probed, type Probed } from '../../visit/probed.ts';
import { doneAsSaid } from '../kept-as-said.ts';
import { isForNew, isValveTurned, timeWords } from '../work.ts';
import { faultSeen, type SeenRow } from './words.ts';

/** Everything that the paragraphs of a note may tell; what no fact holds, no sentence may say. */
export type NoteFact =
  | { readonly fact: 'calledFor'; readonly memo: string }
  | { readonly fact: 'cameTo'; readonly all: readonly Agreed[] }
  /** What the technician held to be wrong. */
  | { readonly fact: 'cause'; readonly cause: CauseId }
  /** The same where it has no name of its own. */
  | { readonly fact: 'causeSaid'; readonly words: string }
  /** What the readings before the work point to. */
  | { readonly fact: 'likely'; readonly causes: readonly CauseId[] }
  | ({ readonly fact: 'byVoltage' } & CircuitSuspects)
  | { readonly fact: 'seen'; readonly rows: readonly SeenRow[] }
  | { readonly fact: 'done'; readonly rows: readonly CalledRow[] }
  | { readonly fact: 'noWork' }
  /** How long it took, by the clock and as the technician tells it. */
  | { readonly fact: 'onSite'; readonly time: string }
  | { readonly fact: 'moved'; readonly account: RefrigerantAccount }
  | { readonly fact: 'nothingMoved'; readonly said: SaidNone }
  | ({ readonly fact: 'charge' } & ChargeNow)
  | ({ readonly fact: 'box' } & BoxMoved)
  | { readonly fact: 'product'; readonly was: readonly Probed[]; readonly now: readonly Probed[] }
  | { readonly fact: 'productSaid'; readonly memo: string }
  | { readonly fact: 'left'; readonly left: readonly LeftOpen[] }
  | { readonly fact: 'notToBeSwitchedOn' }
  | { readonly fact: 'toDo'; readonly all: readonly Made[] }
  | { readonly fact: 'comeBack'; readonly made: Made }
  | { readonly fact: 'foundBefore'; readonly on: CivilDate; readonly rows: readonly FoundRow[] }
  | { readonly fact: 'notDoneSince'; readonly on: CivilDate; readonly all: readonly Made[] };

/** The very part that went in, by the name that it is listed under, is what the office bills. */
export interface CalledRow extends DoneRow {
  readonly called?: string;
}

export interface ChargeNow {
  readonly now: Amount;
  readonly nameplate: Amount | null;
  /** Over the nameplate; below zero, under it. */
  readonly over: Amount | null;
  /** What the nameplate holds and was no longer there when it was taken out. */
  readonly missing: Amount | null;
  readonly refrigerant: RefrigerantId | null;
}

export interface BoxMoved {
  readonly was: Amount | null;
  readonly now: Amount;
  readonly change: 'down' | 'up' | 'same' | null;
  readonly set: Amount | null;
  readonly against: 'reached' | 'above' | 'below' | null;
}

export type FactOf<Name extends NoteFact['fact']> = Extract<NoteFact, { readonly fact: Name }>;

/** The facts of the visit as it stands, in the order a reader wants them. */
export function noteFacts(
  state: VisitState,
  past: readonly VisitState[] = [],
): readonly NoteFact[] {
  return [
    ...complaintMemos(state).map(({ memo }): NoteFact => ({ fact: 'calledFor', memo })),
    ...cameForFacts(state),
    ...reasonFacts(state),
    ...workFacts(state),
    ...refrigerantFacts(state),
    ...boxFacts(state),
    ...productFacts(state),
    ...leftFacts(state),
    ...toDoFacts(state),
    ...historyFacts(state, past),
  ];
}

function cameForFacts(state: VisitState): readonly NoteFact[] {
  const all = agreedBefore(state);
  return all.length === 0 ? [] : [{ fact: 'cameTo', all }];
}

/** As many as are kept in mind, beside what was mended: that is told whole. */
const MOST_FOUND = 3;

/** What the readings make likely is told where neither the technician nor what was seen says what it was. */
function reasonFacts(state: VisitState): readonly NoteFact[] {
  const rows = seenRows(state);
  const seen: readonly NoteFact[] = rows.length > 0 ? [{ fact: 'seen', rows }] : [];
  const causes = causesHeld(state);
  if (causes.length > 0) {
    return [...causes.map((cause): NoteFact => ({ fact: 'cause', cause })), ...seen];
  }
  const said = causeSaid(state);
  if (said !== null) return [{ fact: 'causeSaid', words: said }, ...seen];
  if (rows.some((row) => faultSeen(row) !== null)) return seen;
  const suspects = circuitSuspects(state);
  if (suspects !== null) return [...seen, { fact: 'byVoltage', ...suspects }];
  const likely = likelyCauses(state);
  return likely.length === 0 ? seen : [...seen, { fact: 'likely', causes: likely }];
}

function seenRows(state: VisitState): readonly SeenRow[] {
  const amiss = withoutWorking(withoutWithdrawn(state).filter(({ finding }) => isAmiss(finding)));
  const isBefore = isBeforeAlteration(state);
  const isLeft = isLeftSo(state);
  const isSince = isSinceAlteration(state);
  const isMended = isMendedLater(state);
  const before = amiss.filter(
    (entry) => isBefore(entry) || (isSince(entry) && !isLeft(entry)) || isMended(entry),
  );
  const told = withoutTheGeneral(before.length > 0 ? before : amiss);
  const mended = new Set(told.filter(isMended).map(({ finding }) => finding));
  const found = [...told.map(({ finding }) => finding), ...measuredWeak(state)];
  const rows = found.filter((row, at) => found.findIndex(isSameFound(row)) === at);
  const rest = rows.filter((row) => !mended.has(row));
  const leftOut = new Set(rest.slice(0, Math.max(0, rows.length - MOST_FOUND)));
  return rows
    .filter((row) => !leftOut.has(row))
    .map(({ part, state: seen, words }): SeenRow => ({ part, state: seen, words }));
}

/** Found at any time, and put right behind that: it was a cause, whatever else had been mended before it was found. */
function isMendedLater(state: VisitState): (entry: VisitState['findings'][number]) => boolean {
  return ({ id, finding }) =>
    !PASSES.has(finding.state) &&
    state.work.some(
      ({ id: done, work: { did, part } }) =>
        (part === null
          ? did === 'defrost' && finding.state === 'iced'
          : asOne(finding.part).includes(part) && MENDS.has(did)) && isNewer(state, done, id),
    );
}

function workFacts(state: VisitState): readonly NoteFact[] {
  const time = timeWords(state);
  const rows = withoutTrials(
    state.work.flatMap(({ id, work }) =>
      isValveTurned(work) || isForNew(work, state) || isOverByRunning(work, id, state)
        ? []
        : [calledRow(work)],
    ),
  );
  const once = rows.filter((row, at) => rows.findIndex(isSameDone(row)) === at);
  const isEmpty =
    (state.recommendations.length === 0 && state.readings.length === 0) ||
    doneAsSaid(state).length > 0;
  const done: readonly NoteFact[] =
    once.length > 0 ? [{ fact: 'done', rows: once }] : isEmpty ? [] : [{ fact: 'noWork' }];
  return [...done, ...(time === null ? [] : [{ fact: 'onSite', time } as const])];
}

/** Leads that were pulled for the meter are back on where the part ran after that. */
const isOverByRunning = ({ did, part }: Work, id: EventId, state: VisitState): boolean =>
  part !== null && STOPS.has(did) && ranSince(part, id, state);

function calledRow({ did, part, called }: Work): CalledRow {
  return { did, part, ...(called === undefined ? {} : { called }) };
}

const isSameDone =
  (one: CalledRow) =>
  (other: CalledRow): boolean =>
    one.did === other.did && one.part === other.part && one.called === other.called;

const TRIED: ReadonlySet<DoneRow['did']> = new Set<DoneRow['did']>([
  ...(['bypass', 'disable', 'isolate', 'open', 'setForTest'] as const),
]);

/** A switch that was bypassed to see the unit run, and put back or replaced behind that, was tried. */
function withoutTrials(rows: readonly CalledRow[]): readonly CalledRow[] {
  const laterDone = (by: DoneRow['did'], part: DoneRow['part'], from: number): number =>
    rows.findIndex((row, at) => at > from && row.did === by && row.part === part);
  const gone = new Set(
    rows.flatMap(({ did, part }, at) => {
      const isTried = part !== null && TRIED.has(did);
      const back = isTried ? laterDone('restore', part, at) : -1;
      if (back !== -1) return [at, back];
      return isTried && did === 'bypass' && laterDone('replace', part, at) !== -1 ? [at] : [];
    }),
  );
  return rows.filter((_row, at) => !gone.has(at));
}

function refrigerantFacts(state: VisitState): readonly NoteFact[] {
  const accounts = refrigerantAccounts(state).map(withoutNothing).filter(holdsSome);
  if (accounts.length > 0) {
    return [
      ...accounts.map((account): NoteFact => ({ fact: 'moved', account })),
      ...chargeFacts(state),
    ];
  }
  const isEmpty = state.work.length === 0 && state.readings.length === 0;
  return isEmpty ? [] : [{ fact: 'nothingMoved', said: saidNone(state) }];
}

/** Where it was emptied and weighed in anew, what is in it is known. */
function chargeFacts(state: VisitState): readonly NoteFact[] {
  const { charged, nameplate, takenOut } = chargeBalance(state);
  if (charged === null) return [];
  const differ = (more: Amount, less: Amount): Amount => ({
    ...more,
    value: Number((more.value - less.value).toFixed(2)),
  });
  const missing = nameplate && takenOut ? differ(nameplate, takenOut) : null;
  return [
    {
      fact: 'charge',
      now: charged,
      nameplate,
      over: nameplate && differ(charged, nameplate),
      missing: missing && missing.value > 0 ? missing : null,
      refrigerant: state.unit.refrigerant,
    },
  ];
}

function boxFacts(all: VisitState): readonly NoteFact[] {
  const state = measuredOnly(all);
  const last = latestReading(state, 'boxTemp');
  const now = last && amountOf(last.reading);
  if (!now) return [];
  const before = latestReading(state, 'boxTemp', { phase: 'before' });
  const was = before && before.id !== last.id ? amountOf(before.reading) : null;
  const set = latestAmount(state, 'setpointTemp');
  const change = was && changeOf(was, now);
  return [{ fact: 'box', was, now, change, set, against: set && againstSet(state) }];
}

/** What somebody reported was inside before nobody measured. */
const measuredOnly = (state: VisitState): VisitState => ({
  ...state,
  readings: state.readings.filter(({ reported }) => reported === undefined),
});

function changeOf(was: Amount, now: Amount): BoxMoved['change'] {
  const since = convert(now, was.unit);
  if (since === null) return null;
  if (since.value === was.value) return 'same';
  return since.value > was.value ? 'up' : 'down';
}

/** By the same rule that answers "how far off is the box": what is within the usual range has got there. */
function againstSet(state: VisitState): BoxMoved['against'] {
  const target = wanted('boxTemp', state);
  if (target.kind !== 'known') return null;
  const off = deviationNow('boxTemp', target.value, state);
  if (off === null) return null;
  const { low, high } = target.value;
  const isWithin =
    low !== undefined && high !== undefined && off.measured >= low && off.measured <= high;
  if (off.direction === 'on' || isWithin) return 'reached';
  return off.direction === 'over' ? 'above' : 'below';
}

function productFacts(state: VisitState): readonly NoteFact[] {
  const [was, now] = [probed(state, 'before'), probed(state, 'since')];
  const isRead = was.length > 0 || now.length > 0;
  const read: readonly NoteFact[] = isRead ? [{ fact: 'product', was, now }] : [];
  return [
    ...read,
    ...productMemos(state).map(({ memo }): NoteFact => ({ fact: 'productSaid', memo })),
  ];
}

function leftFacts(state: VisitState): readonly NoteFact[] {
  const left = surelyLeftOpen(state).filter((each) => !isJumperOfOld(each, state));
  return [
    ...(left.length === 0 ? [] : [{ fact: 'left', left } as const]),
    ...(isGrounded(state) ? [{ fact: 'notToBeSwitchedOn' } as const] : []),
  ];
}

/** Whether a jumper went on to the new one nobody told: asked among what is open, and claimed to no reader. */
const isJumperOfOld = ({ part, as, id }: LeftOpen, state: VisitState): boolean =>
  as === 'bypassed' &&
  state.work.some(
    ({ id: done, work }) =>
      work.did === 'replace' && work.part === part && isNewer(state, done, id),
  );

const isReturn = ({ recommendation: { do: kind } }: Made): boolean => kind === 'comeBack';

function toDoFacts({ recommendations }: VisitState): readonly NoteFact[] {
  const all = recommendations.filter((made) => !isReturn(made));
  return [
    ...(all.length === 0 ? [] : [{ fact: 'toDo', all } as const]),
    ...recommendations.filter(isReturn).map((made): NoteFact => ({ fact: 'comeBack', made })),
  ];
}

function historyFacts(state: VisitState, past: readonly VisitState[]): readonly NoteFact[] {
  const seen = seenBefore(state, past);
  if (seen === null) return [];
  const { on, rows, left } = seen;
  return [
    ...(rows.length === 0 ? [] : [{ fact: 'foundBefore', on, rows } as const]),
    ...(left.length === 0 ? [] : [{ fact: 'notDoneSince', on, all: left } as const]),
  ];
}
