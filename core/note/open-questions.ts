import type { PartId, WorkKindId } from '../terms/names.ts';
import { FINDING_STATES, PARTS } from '../terms/names.ts';
import type { VisitState } from '../visit/state.ts';
import { sheetRows } from '../visit/views.ts';
import { circuitLines } from './circuit.ts';
import { listed, nameWritten, sentence, valueWritten } from './wording.ts';

/** Whatever someone still has to settle: asked and not answered, read and not read again, opened and not closed. */
export function openLines(state: VisitState): readonly string[] {
  return [
    ...doubtLines(state),
    ...state.leftOver.map(({ digits, words }) =>
      sentence(`A number has no meaning yet: ${digits}, said in "${words}"`),
    ),
    ...baselineLines(state),
    ...missingAfterLines(state),
    ...leftOpenLines(state),
    ...circuitLines(state).open,
    ...bypassLines(state),
    ...unresolvedLines(state),
  ];
}

function doubtLines({ doubts }: VisitState): readonly string[] {
  return doubts
    .filter(({ doubt }) => doubt.why !== 'hearsay')
    .map(({ doubt }) =>
      sentence(`Heard but not confirmed: ${nameWritten(doubt)} ${valueWritten(doubt)}`),
    );
}

function baselineLines({ beforeMarkedAt, work, readings }: VisitState): readonly string[] {
  if (work.length > 0 && !readings.some(({ phase }) => phase === 'before')) {
    return ['Work was done before any reading: nothing shows how the unit ran before.'];
  }
  return beforeMarkedAt === null && readings.length > 0
    ? ['The readings before work were not marked as such.']
    : [];
}

function missingAfterLines(state: VisitState): readonly string[] {
  if (state.work.length === 0) return [];
  const blank = sheetRows(state).filter(({ before, after }) => before !== null && after === null);
  const names = blank
    .filter(({ quantity }) => !STAYS.has(quantity))
    .map(({ quantity, place }) => nameWritten({ quantity, place }));
  return names.length === 0 ? [] : [sentence(`Not read again after the work: ${listed(names)}`)];
}

/** What is set, weighed or tested once is not read again. */
const STAYS = new Set<string>([
  'setpointTemp',
  'highCutoutPressure',
  'lowCutoutPressure',
  'lowCutinPressure',
  'refrigerantAdded',
  'refrigerantRecovered',
  'refrigerantCharge',
  'cylinderWeight',
  'testPressure',
  'vacuum',
]);

const MENDS: ReadonlySet<WorkKindId> = new Set<WorkKindId>([
  'reset',
  'replace',
  'repair',
  'restore',
  'adjust',
  'add',
]);

/** A part found open or tripped, isolated or taken out, with nothing said later that puts it right. */
function leftOpenLines(state: VisitState): readonly string[] {
  const found = state.findings
    .filter(({ finding }) => finding.state === 'open' || finding.state === 'tripped')
    .filter(({ finding, at }) => !isMended(finding.part, at, state))
    .map(({ finding }) =>
      sentence(
        `Reported ${FINDING_STATES[finding.state]} and not reported put right: ${PARTS[finding.part]}`,
      ),
    );
  const undone = state.work.flatMap(({ work: { did, part }, at }) =>
    (did === 'isolate' || did === 'remove') && part !== null && !isMended(part, at, state)
      ? [
          sentence(
            `${did === 'isolate' ? 'Isolated' : 'Removed'} and not reported restored: ${PARTS[part]}`,
          ),
        ]
      : [],
  );
  return [...new Set([...found, ...undone])];
}

function isMended(part: PartId, since: number, { work, findings }: VisitState): boolean {
  return (
    work.some(({ work: done, at }) => done.part === part && at >= since && MENDS.has(done.did)) ||
    findings.some(
      ({ finding, at }) =>
        finding.part === part &&
        at > since &&
        (finding.state === 'ok' || finding.state === 'closed'),
    )
  );
}

/** Bypasses are told in memos: there is no word of their own for them in a finding. */
function bypassLines({ memos }: VisitState): readonly string[] {
  return memos
    .filter(({ memo }) => /\b(bypass|jumper|jumped out)/i.test(memo))
    .map(({ memo }) => sentence(`Check that it was put back: ${memo}`));
}

function unresolvedLines({ findings }: VisitState): readonly string[] {
  return findings
    .filter(({ finding }) => finding.unresolved === true)
    .map(({ finding }) =>
      sentence(`Not said which fan is meant: ${FINDING_STATES[finding.state]}`),
    );
}
