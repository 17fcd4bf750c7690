import { FINDING_STATES, PARTS, SIGHT_GLASS_STATES } from '../terms/names.ts';
import type { VisitState } from '../visit/state.ts';
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
    ...(unit.sightGlass === null
      ? []
      : [sentence(`Sight glass ${SIGHT_GLASS_STATES[unit.sightGlass]}`)]),
    ...otherMemos(state).map(({ memo }) => sentence(memo)),
  ];
}
