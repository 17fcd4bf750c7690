import { HEATERS, type PartId } from '../../terms/names.ts';
import type { Context } from '../context.ts';
import type { Finding } from '../utterance.ts';
import { TURNS } from '../words/fans.ts';

/** "Disconnect's off and locked out. It's grounded": what has no winding is not, nor what was just told to run well. */
export const mayBeGrounded = (part: PartId, { told }: Context): boolean =>
  WOUND.has(part) &&
  !told.some(
    (each) =>
      each?.told.of === 'finding' &&
      each.told.finding.part === part &&
      RUNS_WELL.has(each.told.finding.state),
  );
const WOUND: ReadonlySet<PartId> = new Set<PartId>([
  ...TURNS,
  ...HEATERS,
  ...(['contactor', 'wiring', 'transformer', 'waterPump', 'condensatePump', 'gearMotor'] as const),
  ...(['liquidLineSolenoid', 'hotGasValve', 'waterValve', 'speedDrive'] as const),
]);
const RUNS_WELL: ReadonlySet<Finding['state']> = new Set<Finding['state']>(['running', 'ok']);
