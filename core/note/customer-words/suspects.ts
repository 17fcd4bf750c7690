import type { SuspectId } from '../../advice/circuit/circuit.ts';
import { PLAIN_PARTS } from './parts.ts';

const { name: relay } = PLAIN_PARTS.contactor;

/** Where the power was followed to, as its owner would point at it. */
export const PLAIN_SUSPECTS: Record<SuspectId, string> = {
  highPressureSwitch: PLAIN_PARTS.highPressureSwitch.name,
  lowPressureSwitch: PLAIN_PARTS.lowPressureSwitch.name,
  temperatureControl: PLAIN_PARTS.temperatureControl.name,
  defrostTimer: PLAIN_PARTS.defrostTimer.name,
  doorSwitch: PLAIN_PARTS.doorSwitch.name,
  overload: PLAIN_PARTS.overload.name,
  contactor: relay,
  contacts: `the contacts of ${relay}`,
  liquidLineSolenoid: PLAIN_PARTS.liquidLineSolenoid.name,
  compressor: PLAIN_PARTS.compressor.name,
  condenserFan: PLAIN_PARTS.condenserFan.name,
  evaporatorFan: PLAIN_PARTS.evaporatorFan.name,
  supply: 'the power supply',
  returnPath: 'the neutral wire of the power supply',
  legOne: 'the first wire of the power supply',
  legTwo: 'the second wire of the power supply',
  legThree: 'the third wire of the power supply',
};
