import type { CautionId } from '../advice/verdict.ts';

/** Each caution aloud: what can happen or what the number stands on, and what to do. No numbers in any. */
export const CAUTION_SENTENCES: Record<CautionId, string> = {
  flammable:
    'Careful: this refrigerant burns. No torch, no heat gun, air moving, and never more than the nameplate charge.',
  mayBurn:
    'Take it that this refrigerant burns until the nameplate says otherwise: no spark, no flame, air moving.',
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
    'That is a rule of thumb for this kind of unit; the maker and the nameplate come first.',
  designLoadOnly:
    'With a fixed restriction suction floats with load and head: compare it only near the set point.',
  pullDown:
    'The box is still pulling down: the coil runs colder against the air than it will at the set point.',
  compressionRatioHigh:
    'That compression ratio is high for a single stage: expect hot discharge. Read the discharge line.',
  idealGas: 'That is by the ideal gas law: allow a little either way.',
  aboveCompressorLimit: "That is above the usual limit: follow the compressor maker's own.",
  doNotOperate: 'Do not run it like that.',
  verifyWithAuthority: 'Verify that with the rules in force where you are.',
  neverOverfill: 'Never overfill a cylinder: go by its own plate, on a scale.',
  wetOrWrongRefrigerant:
    'The line is colder than the pressure allows: check the instruments and the refrigerant, and take it that liquid is coming back.',
  liquidAboveBubble:
    'The liquid line is warmer than the head allows: check the clamp, the gauge and the refrigerant. If they are right, it carries vapour.',
  brazing:
    'No flame until the refrigerant is recovered and nitrogen is trickling through an open end.',
  openingTheSystem:
    'Recover first, bring it to slightly above atmosphere, and wear gloves and goggles before anything is opened.',
  chargeOffPlate: 'By the scale the charge is well off the nameplate: check what was weighed.',
  chargeByNameplate: 'Never more than the nameplate charge, and always weighed in.',
  noVenting:
    'Never vent: recover it, unless local law says otherwise for this very refrigerant and use.',
  repeatedReset: 'Do not keep resetting it: a safety that opens has a cause.',
  noBypass: 'Do not run it with a safety bypassed: nothing then stops the pressure or the heat.',
  resetAgain:
    'Reset again: each one runs it back into what opened it, and the compressor pays. Leave it off until you have the cause.',
  liveWork:
    'Treat it as live: lock out, bleed the capacitors with a resistor, and prove the meter before and after.',
  pressureTest:
    'Careful: a regulator with a relief behind it, nitrogen only, never oxygen, and never above the lowest rating in the circuit.',
  testAboveRating:
    'That test is above the lowest rating in the circuit: stand clear and let it down.',
  useMicronGauge:
    'A dial cannot show a deep vacuum: read it with an electronic gauge, away from the pump.',
  iceInSystem:
    'Water left in there is ice now and goes slowly: break with nitrogen, warm it, and pull again.',
  noPowerInVacuum: 'Never test the insulation of a compressor, or start it, under vacuum.',
  recoverFirst: 'Recover to the level the law sets before you open it, and hold it there.',
  scaleTooCoarse: 'That scale is too coarse for so small a charge: use a finer one.',
  gasPoolsLow:
    'Careful: the gas is heavier than air and pools low, and it takes the place of the air. Leave if the monitor sounds.',
  dryIce:
    'Careful: below the triple point carbon dioxide turns to dry ice and plugs the line. Bring the pressure up with vapour first.',
  toxicGas:
    'Careful: that gas is harmful to breathe. Leave, air the room, and go back only with protection.',
  probeTheProduct: 'That counts for the food, not for the air: probe the product.',
  operatorDecides:
    'Report the times and temperatures: what becomes of the food is for the operator and the health authority.',
  householdGuidance: 'That is household guidance: a shop follows its own code and plan.',
  steamBurns: 'Careful: steam burns. Keep your hand and the lead out of it.',
  workBeforeBaseline: 'Work was reported before any reading: there is no baseline to compare with.',
  pressureLimit:
    'The nameplate and the relief valve set the top: never raise a cut-out to stop the trips.',
  pullsVacuum:
    'That cut-out is in a vacuum: a leak there draws air in. Ask the compressor maker how low it may go.',
  coldStart:
    'In the coldest weather the low side may never reach that cut-in, so the unit stays off with a warm box.',
  tripsLate:
    'It opened later than it is set: a safety that is late protects nothing. Do not run it until it opens where it should.',
  coldHeadStarves:
    'Cold air and nothing to hold head up: the valve may starve with nothing broken. Do not add gas for it.',
  winterCharge:
    'Where head is held by flooding, the extra liquid is the winter charge: do not take it out.',
  zeroProvesNothing:
    'Zero volts across a switch does not prove it closed: prove the supply first, then look for another one open.',
  notProvenDead:
    'That does not prove it dead: a broken leg is fed back through the load. Measure line to line, with a meter proved before and after.',
  ghostVoltage:
    'Part of the voltage there may be a ghost on a sensitive meter, or a bad contact: read it again with a low-impedance meter.',
  outsideNameplateVoltage:
    "That is outside the nameplate's voltage: the motor runs hot, or does not start. Find why before it runs on.",
  deadAndDisconnected:
    'Ohms only with the power locked out, the capacitors bled and the leads off, standing to one side of the terminals.',
  overloadMayBeOpen:
    'The internal overload may only be open: let the compressor cool, which takes hours, and measure again before it is condemned.',
  sumDoesNotAdd:
    'Run and start windings do not add up to the reading through both: zero the leads, clean the terminals and measure again.',
  capacitorCharge:
    'A capacitor holds its charge: bleed it through a resistor, wait, and measure it. Never short it.',
  insulationTest:
    'Never a megohm test on a compressor under vacuum, nor through a starter or a board: take the leads off first.',
  groundFault:
    'Keep the power off: a grounded compressor can blow its terminals out when it is energised.',
  notRunningAmps:
    'That figure sizes wires and protection: it is not what the compressor should draw today.',
  fanStaysLive:
    "Only the compressor's circuit is off: the condenser fan still runs and its wiring is live.",
  hotSurface:
    'The discharge line burns: clamp the probe on with the compressor off, and keep hands away.',
  liquidBurns: 'Liquid burns skin and eyes: gloves and goggles.',
  liquidToCompressor: 'Slowly: liquid wrecks the compressor. Throttle it at once if suction jumps.',
  lockOut: 'Lock it out, try to start it, and prove it dead before hands go in.',
  frontSeatedDischarge:
    'Never start it with the discharge valve closed: nothing relieves the head. Open it all the way first.',
  airDisplaced:
    'Gas takes the place of air without a smell: keep air moving, and leave if you feel light-headed.',
  compressorTerminals:
    'Terminals can blow out: power off, cover on before it is energised, and stand to one side.',
  openUnderVacuum:
    'It is under vacuum: opened now it draws in air and water. Bring it just above atmosphere first.',
  heatedCylinder: 'Never a flame on a cylinder or a line full of liquid: warm water at most.',
  bypassedSafety:
    'A bypassed safety protects nothing: stay with it while it runs, and take the jumper off before you go.',
  neverOxygen: 'Never oxygen, and never shop air: with oil they explode. Dry nitrogen only.',
  trappedLiquid:
    'Liquid shut in between closed valves bursts the line as it warms: open one, or recover it, at once.',
};
