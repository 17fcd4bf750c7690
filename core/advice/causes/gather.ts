import type { VisitState } from '../../visit/state.ts';
import type { Found } from '../found.ts';
import { circumstances } from './circumstances.ts';
import { deadCoilEvidence } from './dead-coil.ts';
import { judgedSymptom } from './judged-symptoms.ts';
import { motorEvidence } from './motor-evidence.ts';
import { feedOf } from './matrix.ts';
import { ratiosOfSeen, type Evidence, type Judged } from './observation.ts';
import { findingEvidence, sightGlassEvidence } from './seen-findings.ts';
import { seenTogether } from './seen-together.ts';
import { SAME_READING, type SymptomId } from './symptom.ts';

/** What can be weighed now, and what still lacks a reading. */
export interface Gathered {
  /** Readings against their targets, and what was seen: without any of it there is no answer. */
  readonly evidence: readonly Evidence[];
  /** The air and the box: they weigh in, but name no cause by themselves. */
  readonly around: readonly Evidence[];
  readonly judged: readonly SymptomId[];
  readonly missing: readonly SymptomId[];
  /** Why the first of them could not be judged. */
  readonly lacks: Found<Judged> | null;
}

export function gather(state: VisitState): Gathered {
  const groups = SAME_READING.map((group) => ({ group, best: bestOf(group, state) }));
  const judged = groups.flatMap(({ best }) => (best.found.kind === 'known' ? [best] : []));
  const unread = groups.filter(({ best }) => best.found.kind === 'needs');
  const failed = groups.find(({ best }) => best.found.kind !== 'known');
  return {
    evidence: [
      ...judged.flatMap(({ found }) => weighed(found, state)),
      ...findingEvidence(state),
      ...sightGlassEvidence(state),
    ],
    around: [
      ...circumstances(state),
      ...motorEvidence(state),
      ...seenTogether(state),
      ...deadCoilEvidence(state),
    ],
    judged: judged.map(({ symptom }) => symptom),
    missing: unread.map(({ best }) => best.symptom),
    lacks: failed?.best.found ?? null,
  };
}

interface Attempt {
  readonly symptom: SymptomId;
  readonly found: Found<Judged>;
}

/** The first of those that show the same thing which can be judged, else the first with what it lacks. */
function bestOf(group: readonly SymptomId[], state: VisitState): Attempt {
  const attempts = group.map((symptom) => ({ symptom, found: judgedSymptom(symptom, state) }));
  const known = attempts.find(({ found }) => found.kind === 'known');
  const [first] = attempts;
  return known ?? first ?? { symptom: 'superheat', found: judgedSymptom('superheat', state) };
}

function weighed(found: Found<Judged>, state: VisitState): readonly Evidence[] {
  if (found.kind !== 'known') return [];
  const ratios = ratiosOfSeen(found.value, feedOf(state.unit.metering));
  return [{ shown: found.value.shown, ratios, inputs: found.inputs }];
}
