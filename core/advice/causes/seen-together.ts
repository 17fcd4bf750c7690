import type { CauseId } from '../../terms/causes.ts';
import type { FindingStateId, PartId } from '../../terms/names.ts';
import type { VisitState } from '../../visit/state.ts';
import { standingFindings } from '../standing-findings.ts';
import { RATIOS } from './finding-rules.ts';
import type { Evidence } from './observation.ts';

/** Seen together, it leaves nothing of the fault: what one of them alone only speaks against. */
const RULED_OUT = 1 / RATIOS.shows ** 2;

type Seen = (parts: readonly PartId[], states: readonly FindingStateId[]) => boolean;

/**
 * Two sights that tell more than each by itself (common practice). A coil free of ice with its fans on is no iced coil.
 * A clear glass has liquid at the valve, and near a receiver no subcooling says nothing of the charge: with a bulb that
 * does not answer, the valve is it.
 */
export function seenTogether(state: VisitState): readonly Evidence[] {
  const standing = standingFindings(state).map(({ finding }) => finding);
  const seen: Seen = (parts, states) =>
    standing.some((finding) => parts.includes(finding.part) && states.includes(finding.state));
  const isClearCoil =
    seen(['evaporator'], ['ok']) &&
    seen(['evaporatorFan', 'evaporatorFanMotor'], ['running', 'ok']);
  const isDeadValve =
    state.unit.sightGlass === 'clear' && seen(['expansionValve'], ['closed', 'failed', 'plugged']);
  return [
    ...(isClearCoil
      ? [
          against({ kind: 'finding', part: 'evaporator', state: 'ok' }, [
            'icedCoil',
            'defrostFailed',
          ]),
        ]
      : []),
    ...(isDeadValve
      ? [against({ kind: 'sightGlass', state: 'clear' }, ['undercharge', 'flashGas'])]
      : []),
  ];
}

const against = (shown: Evidence['shown'], causes: readonly CauseId[]): Evidence => ({
  shown,
  ratios: new Map(causes.map((cause) => [cause, RULED_OUT] as const)),
  inputs: [],
});
