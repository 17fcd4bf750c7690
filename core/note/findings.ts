import { causesOf } from '../advice/causes/causes-of.ts';
import { only } from '../advice/sheet.ts';
import { CAUSES } from '../terms/causes.ts';
import { FINDING_STATES, PARTS, SIGHT_GLASS_STATES } from '../terms/names.ts';
import type { VisitState } from '../visit/state.ts';
import { circuitLines } from './circuit.ts';
import { otherMemos } from './complaint.ts';
import { readingWritten, sentence } from './wording.ts';

export function findingLines(state: VisitState): readonly string[] {
  const { findings, readings, unit } = state;
  return [
    ...findings.map(({ finding }) =>
      sentence(`${PARTS[finding.part]}: ${FINDING_STATES[finding.state]}`),
    ),
    ...readings
      .filter(({ reading }) => reading.event !== undefined)
      .map(({ reading }) => sentence(readingWritten(reading))),
    ...circuitLines(state).found,
    ...(unit.sightGlass === null
      ? []
      : [sentence(`Sight glass ${SIGHT_GLASS_STATES[unit.sightGlass]}`)]),
    ...otherMemos(state).map(({ memo }) => sentence(memo)),
    ...likelyLine(state),
  ];
}

/** What the readings before the work pointed to: likely, never a fact, and only where readings speak for it. */
function likelyLine(state: VisitState): readonly string[] {
  const found = causesOf({ ...only(state, ['before']), work: [] });
  if (found.kind !== 'known') return [];
  const leading = found.value.causes.filter(
    ({ cause, standing }) => standing === 'leading' && cause !== 'nothingWrong',
  );
  const isRead = leading.some((row) => row.for.some(({ kind }) => kind === 'deviation'));
  if (!isRead) return [];
  const names = leading.map(({ cause }) => CAUSES[cause]).join(' or ');
  return [sentence(`Likely, by the readings before work: ${names}`)];
}
