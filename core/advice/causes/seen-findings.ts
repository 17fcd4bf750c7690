import type { Finding } from '../../language/utterance.ts';
import type { CauseId } from '../../terms/causes.ts';
import { coilFault, partSeen } from '../../terms/solenoid-coils.ts';
import type { VisitState } from '../../visit/state.ts';
import { standingFindings } from '../standing-findings.ts';
import { CAUSE_IDS } from './cause-ids.ts';
import {
  DEAD_COIL,
  FINDING_RULES,
  RATIOS,
  SIGHT_GLASS_RULES,
  type FindingRule,
} from './finding-rules.ts';
import type { Evidence, Ratios } from './observation.ts';

/** Only what some cause is weighed by: a burnt-out light is no evidence. */
export function findingEvidence(state: VisitState): readonly Evidence[] {
  return standingFindings(state).flatMap(({ finding }) => {
    const rules = rulesOf(finding);
    const shown = { kind: 'finding', ...partSeen(finding) } as const;
    return rules.map((rule) => ({ shown, ratios: ratiosOfRule(rule), inputs: [] }));
  });
}

function rulesOf(finding: Finding): readonly FindingRule[] {
  const rules = coilFault(finding) === null ? FINDING_RULES : [DEAD_COIL];
  return rules.filter(
    ({ parts, states }) => parts.includes(finding.part) && states.includes(finding.state),
  );
}

export function sightGlassEvidence({ unit: { sightGlass } }: VisitState): readonly Evidence[] {
  if (sightGlass === null) return [];
  const shown = { kind: 'sightGlass', state: sightGlass } as const;
  return [{ shown, ratios: ratiosOfRule(SIGHT_GLASS_RULES[sightGlass]), inputs: [] }];
}

/** A fault that was seen speaks against nothing being off. */
export function ratiosOfRule(rule: Pick<FindingRule, 'for' | 'against'>): Ratios {
  const ratio = (cause: CauseId): number => {
    const [yes, no] = [rule.for[cause], rule.against[cause]];
    if (yes) return RATIOS[yes];
    if (no) return 1 / RATIOS[no];
    const isFault = Object.keys(rule.for).length > 0;
    return cause === 'nothingWrong' && isFault ? 1 / RATIOS.hints : 1;
  };
  return new Map(CAUSE_IDS.map((cause) => [cause, ratio(cause)] as const));
}
