import { arrows, CUSTOM, type MatrixRow } from './matrix-row.ts';

const ANYTHING = arrows('?', '?', '?', '?', '?', '?', '?', '?');

/**
 * Faults that no steady reading shows: the compressor stands still, or the pressures swing. They are weighed by what
 * is seen, heard and clamped, and by whether head and suction are apart at all.
 */
export const STOPPED_ROWS: readonly MatrixRow[] = [
  { cause: 'fanControlCycling', feed: null, arrows: ANYTHING, source: `head swings: ${CUSTOM}` },
  {
    cause: 'stuckInDefrost',
    feed: null,
    arrows: ANYTHING,
    source: `compressor off, heater amps, warm coil: ${CUSTOM}`,
  },
  {
    cause: 'leakingSolenoid',
    feed: null,
    arrows: ANYTHING,
    source: `suction comes back fast after a pump-down: ${CUSTOM}`,
  },
  {
    cause: 'startGear',
    feed: null,
    arrows: ANYTHING,
    source: `locked-rotor amps, a hum, pressures equal: ${CUSTOM}`,
  },
  {
    cause: 'overloadOpen',
    feed: null,
    arrows: ANYTHING,
    source: `no amps at rated volts, hot shell, common open to both windings: ${CUSTOM}`,
  },
];
