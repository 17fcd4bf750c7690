import type { CauseId } from '../../terms/causes.ts';
import { arrows, CUSTOM, type MatrixRow } from './matrix-row.ts';

const ANYTHING = arrows('?', '?', '?', '?', '?', '?', '?', '?');

const row = (cause: CauseId, shownBy: string): MatrixRow => ({
  cause,
  feed: null,
  arrows: ANYTHING,
  onSight: true,
  source: `${shownBy}: ${CUSTOM}`,
});

/**
 * Faults that no steady reading shows: the compressor stands still, the pressures swing, or only the off cycle tells.
 * They are weighed by what is seen, heard and clamped, and by whether head and suction are apart at all.
 */
export const STOPPED_ROWS: readonly MatrixRow[] = [
  row('fanControlCycling', 'head swings and the valve hunts'),
  row('stuckInDefrost', 'compressor off, heater amps, warm coil'),
  row('leakingSolenoid', 'suction comes back fast after a pump-down'),
  row('solenoidShut', 'it pumps down and stays off, and no liquid comes'),
  row('startGear', 'locked-rotor amps, a hum, pressures equal'),
  row('overloadOpen', 'no amps at rated volts, hot shell, common open to both windings'),
];
