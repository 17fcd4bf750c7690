import type { CauseId } from '../../terms/causes.ts';

/** A cause in the middle of a sentence, as somebody who owns the unit would put it. */
export const PLAIN_CAUSES: Record<CauseId, string> = {
  undercharge: 'too little refrigerant in the unit',
  overcharge: 'too much refrigerant in the unit',
  dirtyCondenser: 'dirt on the coil that gets rid of the heat',
  condenserFanOut: 'a stopped fan at the coil that gets rid of the heat',
  fanControlStuckOff: 'a control that kept the fan that blows the heat away switched off',
  hotRoom: 'hot air around the unit',
  nonCondensables: 'air in the refrigerant piping',
  liquidLineRestriction: 'a blockage in the refrigerant line or its filter',
  valveStarving: 'a valve that gave the cooling coil too little refrigerant',
  valveFlooding: 'a valve that gave the cooling coil too much refrigerant',
  capillaryBlocked: 'a blocked tube at the cooling coil',
  flashGas: 'refrigerant that boiled before it got to the cooling coil',
  icedCoil: 'ice or a blockage on the cooling coil',
  evaporatorFanOut: 'a stopped fan at the cooling coil',
  defrostFailed: 'a defrost that did not work',
  leakyValves: 'worn valves inside the compressor',
  suctionRestriction: 'a blockage in the refrigerant line back to the compressor',
  heavyLoad: 'more warm product than the unit could cool at once',
  openBox: 'warm air or warm product getting in',
  lowAmbient: 'cold air around the outdoor part of the unit',
  stuckUnloaded: 'a compressor stuck at part of its power',
  badSupply: 'a supply voltage that was too low or too high',
  fanControlStuckOn: 'a control that kept the fan that blows the heat away running in the cold',
  fanControlCycling: 'a control that switched the fan that blows the heat away too often',
  stuckInDefrost: 'a defrost that would not end',
  leakingSolenoid: 'a shut-off valve in the refrigerant line that did not close',
  solenoidShut: 'a shut-off valve in the refrigerant line that did not open',
  startGear: 'the parts that start the compressor',
  overloadOpen: 'a motor protection that had switched the compressor off',
  nothingWrong: 'nothing that we could measure',
};

/**
 * What such a fault does, true of every unit that has it: a whole clause, so that it can be told beside a cause
 * that is only likely. Common practice, the service side as in the symptom matrix of `core/advice/causes`.
 */
export const EFFECTS: Record<CauseId | 'noPower' | 'neverOff', string | null> = {
  undercharge:
    'there is too little refrigerant to carry the heat out, so the unit runs on and on and the box still gets warm',
  overcharge: 'the pressure rises, so the unit works harder and cools less',
  dirtyCondenser:
    'the heat cannot get out, so the unit runs long, cools poorly and can shut itself off',
  condenserFanOut: 'the heat cannot get out, so the unit cools poorly and can shut itself off',
  fanControlStuckOff: 'the heat cannot get out, so the unit cools poorly and can shut itself off',
  hotRoom: 'the unit cannot get rid of its heat, so it runs long and cools poorly',
  nonCondensables:
    'the air takes the room that the refrigerant needs, so the pressure rises and the unit cools less',
  liquidLineRestriction: 'too little refrigerant gets to the cooling coil, so the box gets warm',
  valveStarving: 'too little refrigerant gets to the cooling coil, so the box gets warm',
  valveFlooding: 'liquid refrigerant gets back to the compressor and can wreck it',
  capillaryBlocked: 'too little refrigerant gets to the cooling coil, so the box gets warm',
  flashGas: 'too little refrigerant gets to the cooling coil, so the box gets warm',
  icedCoil: 'no air gets through the cooling coil, so the box gets warm',
  evaporatorFanOut: 'the cold stays in the coil and does not get into the box',
  defrostFailed: 'ice grows on the cooling coil until no air gets through it, so the box gets warm',
  leakyValves: 'the compressor pumps less than it should, so the box gets warm',
  suctionRestriction: 'too little refrigerant gets back to the compressor, so the box gets warm',
  heavyLoad: 'the box stays warm until the heat of what was put in is out again',
  openBox: 'the unit has to cool what comes in from outside, so it runs long and the box gets warm',
  lowAmbient: 'the pressure falls so low that too little refrigerant gets to the cooling coil',
  stuckUnloaded: 'the compressor pumps less than it should, so the box gets warm',
  badSupply: 'the motors run hot and can burn out',
  fanControlStuckOn:
    'the pressure falls so low in the cold that too little refrigerant gets to the cooling coil',
  fanControlCycling: 'the pressure swings, so the cooling is uneven',
  stuckInDefrost: 'the unit heats when it should cool',
  leakingSolenoid: 'refrigerant gets into the cooling coil while the unit stands',
  solenoidShut:
    'no refrigerant gets to the cooling coil, so the unit shuts itself off and the box gets warm',
  startGear: 'the compressor cannot start, so nothing is cooled',
  overloadOpen: 'the compressor stands still, so nothing is cooled',
  nothingWrong: null,
  noPower: 'the unit gets no power, so nothing is cooled',
  neverOff: 'the unit is not switched off any more and runs on and on',
};
