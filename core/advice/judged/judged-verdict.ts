import type { NonCondensableVerdict } from '../../calculations/non-condensables.ts';
import type { WindingState } from '../../calculations/windings.ts';
import type { JudgedId } from '../../terms/judged.ts';
import type { Amount } from '../../units/amount.ts';
import type { UnitId } from '../../units/units.ts';

/** What each thing judged can be found to be: closed, so that a sentence for each is a total record. */
export interface JudgedFindings {
  readonly runCapacitor: 'low' | 'within' | 'high';
  readonly startCapacitor: 'low' | 'within' | 'high';
  readonly windings: WindingState;
  readonly insulation: 'aboveFloor' | 'belowFloor';
  readonly compressorCurrent: 'underRating' | 'overRating' | 'lockedRotor';
  readonly supplyVoltage: 'low' | 'within' | 'high';
  readonly voltageImbalance: 'within' | 'aboveLimit' | 'stop';
  readonly currentImbalance: 'within' | 'aboveLimit';
  readonly nonCondensables: NonCondensableVerdict;
  readonly food: 'within' | 'above' | 'thawed';
  readonly pressureTest: 'holds' | 'leaks' | 'rises';
  readonly highPressureSwitch: 'whereSet' | 'early' | 'late';
  readonly lowPressureSwitch: 'whereSet' | 'early' | 'late';
  readonly dischargeLine: 'withinLimit' | 'aboveLimit' | 'floodBack';
  readonly leakRate: 'within' | 'overThreshold' | 'notCovered';
  readonly defrostHeater: HeaterFinding;
  readonly doorHeater: HeaterFinding;
}

/** `expected`: the heater's amps were worked out, but not read; `byRating`: its ohms, with the amps as their limit. */
export type HeaterFinding = 'expected' | 'byRating' | 'asExpected' | 'off' | 'noCurrent';

/** A number with what it is held against; which of them there are depends on what is judged. */
interface Figures {
  /** What was read or worked out; null where the meter was over its limit. */
  readonly value: number | null;
  readonly unit: UnitId;
  /** The rating, setting, floor or limit. */
  readonly limit: Amount | null;
  /** What was measured, where the value is how far off that is. */
  readonly read?: Amount;
}

/** Whether a part, a test or a control is as it should be. */
export type JudgedAnswer = {
  readonly [J in JudgedId]: {
    readonly answer: 'judged';
    readonly about: J;
    readonly finding: JudgedFindings[J];
  } & Figures;
}[JudgedId];

export type JudgedOf<J extends JudgedId> = Extract<JudgedAnswer, { readonly about: J }>;
