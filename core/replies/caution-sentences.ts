import type { CautionId } from '../advice/verdict.ts';

/** Each caution aloud: what can happen or what the number stands on, and what to do. No numbers in any. */
export const CAUTION_SENTENCES: Record<CautionId, string> = {
  flammable:
    'Careful: this refrigerant burns. No torch, no heat gun, air moving, and never more than the nameplate charge.',
  highPressureCarbonDioxide:
    'Careful: carbon dioxide stands far above ordinary gauges and hoses. Never trap liquid between valves.',
  toxicAmmonia:
    'Careful: ammonia is toxic. Do not open it without breathing protection and a second person.',
  liquidMayReturn:
    'Careful: superheat is near zero, so liquid may be coming back to the compressor. Check the instruments, then the feed and the airflow.',
  flashGas:
    'Careful: subcooling is near zero, so vapour may be in the liquid line. Look at the sight glass.',
  glideBasis: 'This blend glides: dew for superheat, bubble for subcooling, the middle for a coil.',
  chartsDiffer: 'Printed charts differ by about a degree here.',
  designTableOnly:
    'By rule of thumb for this kind of unit; the maker and the nameplate come first.',
  designLoadOnly:
    'With a fixed restriction suction floats with load and head: compare it only near the set point.',
  pullDown:
    'The box is still pulling down: the coil runs colder against the air than it will at the set point.',
  compressionRatioHigh:
    'That compression ratio is high for a single stage: expect hot discharge. Read the discharge line.',
  idealGas: 'That is by the ideal gas law: allow a little more at high pressure.',
  aboveCompressorLimit: "That is above the usual limit: follow the compressor maker's own.",
  doNotOperate: 'Do not run it like that.',
  verifyWithAuthority: 'Verify that with the rules in force where you are.',
  neverOverfill: 'Never overfill a cylinder: go by its own plate, on a scale.',
  wetOrWrongRefrigerant:
    'The line is colder than the pressure allows: check the instruments and the refrigerant, and take it that liquid is coming back.',
  brazing:
    'No flame until the refrigerant is recovered and nitrogen is trickling through an open end.',
  openingTheSystem:
    'Recover first, bring it to slightly above atmosphere, and wear gloves and goggles before anything is opened.',
  chargeByNameplate: 'Never more than the nameplate charge, and always weighed in.',
  noVenting:
    'Never vent: recover it, unless local law says otherwise for this very refrigerant and use.',
  repeatedReset: 'Do not keep resetting it: a safety that opens has a cause. Find the cause first.',
  liveWork:
    'Treat it as live: lock out, bleed the capacitors with a resistor, and prove the meter before and after.',
  workBeforeBaseline: 'Work was reported before any reading: there is no baseline to compare with.',
};
