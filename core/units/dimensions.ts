/**
 * Kinds of measured quantity that must never be mixed. Gauge and absolute pressure are two kinds, and so
 * are a point on a temperature scale and a difference between two points.
 */
export type Dimension =
  | 'gaugePressure'
  | 'absolutePressure'
  | 'temperature'
  | 'temperatureDifference'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'capacitance'
  | 'power'
  | 'apparentPower'
  | 'mass'
  | 'duration'
  | 'frequency'
  | 'length'
  | 'volume'
  | 'concentration'
  | 'carbonDioxideEquivalent'
  | 'ratio';
