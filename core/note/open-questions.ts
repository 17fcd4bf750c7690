import type { FindingStateId, PartId, WorkKindId } from '../terms/names.ts';
import { FINDING_STATES, PARTS } from '../terms/names.ts';
import { coilWord } from '../terms/solenoid-coils.ts';
import type { QuantityId } from '../terms/quantities.ts';
import { leftWords } from '../replies/left-open-sentences.ts';
import type { Finding } from '../language/utterance.ts';
import { VALVES } from '../visit/left-open.ts';
import { maybeBackOn, surelyLeftOpen } from '../visit/power-back.ts';
import { workTodo } from '../replies/work-words.ts';
import { leftToDo } from '../visit/agreed.ts';
import { hasBaseline } from '../visit/baseline.ts';
import type { VisitState } from '../visit/state.ts';
import { isAltered } from '../visit/alterations.ts';
import { isToReadAgain } from '../visit/to-read-again.ts';
import { isCompared, sheetRows } from '../visit/views.ts';
import { circuitLines } from './circuit.ts';
import { isRunningAt } from './findings.ts';
import type { NoteSection } from './note.ts';
import { listed, nameWritten, sentence, valueWritten } from './wording.ts';

/**
 * Whatever someone still has to settle: asked and not answered, read and not read again, opened and not closed. Numbers
 * that nobody claimed are told by their sentence; heard, only how many there are.
 */
export function openSection(state: VisitState): Pick<NoteSection, 'lines' | 'aloud'> {
  const [first, rest] = [[...siteLines(state), ...doubtLines(state)], restLines(state)];
  const lines = [...first, ...numberLines(state), ...rest];
  return state.leftOver.length === 0
    ? { lines }
    : { lines, aloud: [...first, numbersAloud(state.leftOver.length), ...rest] };
}

function numberLines({ leftOver }: VisitState): readonly string[] {
  const said = [...new Set(leftOver.map(({ words }) => words))];
  return said.map((words) => {
    const all = leftOver.filter((each) => each.words === words).map(({ digits }) => digits);
    const lead = all.length === 1 ? 'A number has' : 'Numbers have';
    return sentence(`${lead} no meaning yet: ${listed(all)}, said in "${words}"`);
  });
}

const COUNTS: readonly string[] = ['no', 'one', 'two', 'three', 'four', 'five', 'six'];

function numbersAloud(count: number): string {
  const many = COUNTS[count] ?? String(count);
  return sentence(
    count === 1
      ? `${many} number still needs a name, it is on the screen`
      : `${many} numbers still need a name, they are on the screen`,
  );
}

function restLines(state: VisitState): readonly string[] {
  return [
    ...agreedLines(state),
    ...baselineLines(state),
    ...missingAfterLines(state),
    ...trippedLines(state),
    ...leftOpenLines(state),
    ...circuitLines(state).open,
    ...bypassLines(state),
    ...unresolvedLines(state),
  ];
}

/** A note that nobody can put to an address is billed to nobody. */
function siteLines({ unit, work, readings, findings }: VisitState): readonly string[] {
  const isEmpty = work.length === 0 && readings.length === 0 && findings.length === 0;
  return unit.site === null && !isEmpty ? ['The site was not stated.'] : [];
}

function doubtLines({ doubts }: VisitState): readonly string[] {
  return doubts
    .filter(({ doubt }) => doubt.why !== 'hearsay')
    .map(({ doubt }) =>
      sentence(`Heard but not confirmed: ${nameWritten(doubt)} ${valueWritten(doubt)}`),
    );
}

/** Whoever agreed to it asks whether it was done. */
const agreedLines = (state: VisitState): readonly string[] =>
  leftToDo(state).map(({ do: kind, part }) =>
    sentence(`Came to ${workTodo(kind, part)}, and that was not told done`),
  );

function baselineLines(state: VisitState): readonly string[] {
  const { beforeMarkedAt, readings } = state;
  if (isAltered(state) && !hasBaseline(state)) {
    return ['Work was done before any reading: nothing shows how the unit ran before.'];
  }
  return isAltered(state) && beforeMarkedAt === null && readings.length > 0
    ? ['The readings before work were not marked as such.']
    : [];
}

function missingAfterLines(state: VisitState): readonly string[] {
  if (!isAltered(state)) return [];
  const blank = sheetRows(state).filter(({ before, after }) => before !== null && after === null);
  const names = blank
    .filter(
      ({ quantity, place }) =>
        place === null &&
        isCompared(quantity) &&
        !READ_ONCE.has(quantity) &&
        isToReadAgain(quantity, state),
    )
    .map(({ quantity, place }) => nameWritten({ quantity, place }));
  return names.length === 0 ? [] : [sentence(`Not read again after the work: ${listed(names)}`)];
}

/** Read to find the fault: with the part replaced or left as it was there is nothing to read again. */
const READ_ONCE: ReadonlySet<QuantityId> = new Set<QuantityId>(['resistance', 'capacitance']);

/** A control reported tripped, with nothing said later that puts it right. */
function trippedLines(state: VisitState): readonly string[] {
  return state.findings
    .filter(({ finding }) => finding.state === 'tripped' || isFoundOpen(finding))
    .filter(({ finding, at }) => !isMended(finding.part, at, state))
    .map(({ finding }) =>
      sentence(
        `Reported ${coilWord(finding)}${FINDING_STATES[finding.state]} and not reported put right: ${PARTS[finding.part]}`,
      ),
    )
    .filter((line, index, all) => all.indexOf(line) === index);
}

/** A switch or a winding found open; doors, disconnects and valves are among what is left open. */
function isFoundOpen(finding: Finding): boolean {
  const { part, state } = finding;
  // A solenoid that pulled in feeds: it stands open as it should.
  if (part === 'liquidLineSolenoid' && PULLED_IN.test(finding.words)) return false;
  return state === 'open' && !STAND_OPEN.has(part);
}

const PULLED_IN = /\b(?:pull(?:ed|s|ing) in|energi[sz]ed|picked up|clicked)\b/i;

const STAND_OPEN: ReadonlySet<PartId> = new Set<PartId>([
  'door',
  'disconnect',
  'breaker',
  'plug',
  ...VALVES,
]);

const MENDS: ReadonlySet<WorkKindId> = new Set<WorkKindId>([
  'reset',
  'replace',
  'repair',
  'restore',
  'adjust',
  'add',
]);

/** What is one thing to whoever repairs it: a fan is put right by its motor. */
const ONE_THING: readonly (readonly PartId[])[] = [
  ['condenserFan', 'condenserFanMotor'],
  ['evaporatorFan', 'evaporatorFanMotor'],
];

const asOne = (part: PartId): readonly PartId[] =>
  ONE_THING.find((all) => all.includes(part)) ?? [part];

function isMended(part: PartId, since: number, state: VisitState): boolean {
  const { work, findings } = state;
  const parts = asOne(part);
  return (
    work.some(
      ({ work: { did, part: at }, at: when }) =>
        at !== null && parts.includes(at) && when >= since && MENDS.has(did),
    ) ||
    findings.some(
      ({ finding, at }) =>
        parts.includes(finding.part) && at > since && WHOLE_AGAIN.has(finding.state),
    ) ||
    (STOPS_THE_COMPRESSOR.has(part) && letsItRunAgain(part, since, state))
  );
}

const WHOLE_AGAIN: ReadonlySet<FindingStateId> = new Set<FindingStateId>([
  ...(['ok', 'closed', 'running'] as const),
]);

/** With one of these open it stands still; where it runs, the one that was open is closed. */
const STOPS_THE_COMPRESSOR: ReadonlySet<PartId> = new Set<PartId>([
  ...(['overload', 'highPressureSwitch', 'lowPressureSwitch', 'temperatureControl'] as const),
  ...(['contactor', 'breaker', 'fuse'] as const),
]);

/** Around a switch that is jumped out it runs whatever the switch does. */
function letsItRunAgain(part: PartId, since: number, state: VisitState): boolean {
  const isBypassed = state.work.some(
    ({ work }) => work.part === part && (work.did === 'bypass' || work.did === 'disable'),
  );
  if (isBypassed) return false;
  return (
    state.findings.some(
      ({ finding, at }) =>
        finding.part === 'compressor' && finding.state === 'running' && at > since,
    ) ||
    state.readings.some(
      ({ reading, at }) => at > since && reading.place === 'compressor' && isRunningAt(reading),
    )
  );
}

/** Once finished it was the technician's word to leave it so, and the note says that. */
function leftOpenLines(state: VisitState): readonly string[] {
  const told =
    state.finishedAt === null
      ? 'Not reported put back'
      : 'Finished with this not reported put back';
  return [
    ...surelyLeftOpen(state).map((left) => sentence(`${told}: ${leftWords(left)}`)),
    ...maybeBackOn(state).map((left) =>
      sentence(`Not reported put back, and the unit ran after that: ${leftWords(left)}`),
    ),
  ];
}

/** A bypass told only in a memo cannot be reported restored; one that gas goes through was piped so. */
function bypassLines({ memos }: VisitState): readonly string[] {
  return memos
    .filter(({ memo }) =>
      /\b(?:(?<!\b(?:discharge|gas|liquid|oil|water|built in|internal) )bypass(?:ed)?(?! (?:valve|line|pipe|port|regulator|circuit|side))\b|jumper|jumped (?:\S+ ){0,4}out)/i.test(
        memo,
      ),
    )
    .map(({ memo }) => sentence(`Check that it was put back: ${memo}`));
}

function unresolvedLines({ findings }: VisitState): readonly string[] {
  return findings
    .filter(({ finding }) => finding.unresolved === true)
    .map(({ finding }) =>
      sentence(`Not said which fan is meant: ${FINDING_STATES[finding.state]}`),
    );
}
