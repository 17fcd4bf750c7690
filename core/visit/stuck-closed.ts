import type { Finding } from '../language/utterance.ts';
import type { PartId } from '../terms/names.ts';

/** What closes a circuit and has to open it again. */
const SWITCHES: ReadonlySet<PartId> = new Set<PartId>([
  ...(['contactor', 'startRelay', 'temperatureControl', 'defrostTimer', 'fanControl'] as const),
  ...(['lowPressureSwitch', 'highPressureSwitch', 'oilPressureControl', 'floatSwitch'] as const),
  ...(['defrostTermination', 'doorSwitch', 'binControl', 'overload'] as const),
]);
const STUCK = /\b(?:stuck|welded)\b/i;

/** A switch that is stuck closed, or welded, is broken: closed as it should be it is not. A valve that is stuck shut is shut. */
export const asFaultFound = (finding: Finding): Finding =>
  finding.state === 'closed' && SWITCHES.has(finding.part) && STUCK.test(finding.words)
    ? { ...finding, state: 'failed' }
    : finding;
