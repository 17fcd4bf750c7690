import type { PartId } from '../../terms/names.ts';

/** What a cap is screwed onto: of anything else a cap is a can. */
export const HAS_CAP: ReadonlySet<PartId | null> = new Set<PartId | null>([
  ...(['serviceValve', 'suctionServiceValve', 'dischargeServiceValve'] as const),
  ...(['kingValve', 'accessFitting', 'caps'] as const),
  ...(['liquidLineSolenoid', 'evaporatorPressureRegulator'] as const),
]);

/** In words: "new core, new cap on it". */
export const NAMES_WHAT_HAS_CAP =
  /\b(?:core|schrader|valve|stem|(?:service|access|charging) port)s?\b/i;

const CALLED_A_CAN = /\b(?:run|start|fan|dual|motor|capacitors?)\b/i;
const CAP = /\bcaps?\b/i;

/** "New core, new cap on it": beside what has one to screw on, a cap is no capacitor. */
export const isScrewedOn = (part: PartId | null, words: string): boolean =>
  part === 'runCapacitor' && CAP.test(words) && !CALLED_A_CAN.test(words);
