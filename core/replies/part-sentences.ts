import type { ExplainedPartId, Explains } from '../terms/explained-parts.ts';

/** Common practice, in one sentence each: what it does, and where it usually sits. */
export const PART_SENTENCES: Record<ExplainedPartId, Record<Explains, string>> = {
  nameplate: {
    does: 'The nameplate says what the maker allows: the refrigerant and its charge, the voltage, the amps and the pressures.',
    sits: 'Usually on the condensing unit’s side or behind its panel, or inside a cabinet on the side wall.',
  },
  compressor: {
    does: 'The compressor draws low-pressure vapour from the evaporator and pushes it out hot and at high pressure.',
    sits: 'In the condensing unit: the black shell or the bolted body that both big lines go to.',
  },
  condenser: {
    does: 'The condenser gives off the heat, and turns hot vapour to liquid.',
    sits: 'On the condensing unit, behind the fan that blows warm air: below or on top of a cabinet, or outdoors.',
  },
  evaporator: {
    does: 'The evaporator takes up the heat of the box, and turns liquid to vapour.',
    sits: 'Inside the box: behind the fans of a walk-in, behind a panel of a cabinet.',
  },
  receiver: {
    does: 'The receiver holds the liquid that the system does not need just now.',
    sits: 'Usually a small tank on the condensing unit’s base, right behind the condenser’s outlet.',
  },
  accumulator: {
    does: 'The accumulator catches liquid in the suction line, so that it does not reach the compressor.',
    sits: 'In the suction line, right before the compressor.',
  },
  filterDrier: {
    does: 'The drier holds back dirt and water.',
    sits: 'In the liquid line, usually right behind the receiver, or before the cap tube.',
  },
  sightGlass: {
    does: 'The sight glass shows whether the liquid line is full, and often whether it is dry.',
    sits: 'In the liquid line, usually right behind the drier.',
  },
  expansionValve: {
    does: 'The expansion valve feeds the evaporator as much liquid as it can boil, and keeps the superheat.',
    sits: 'At the evaporator’s inlet, where the liquid line ends.',
  },
  expansionValveBulb: {
    does: 'The bulb feels the suction line, and opens or closes the expansion valve by it.',
    sits: 'Clamped on the suction line at the evaporator’s outlet, usually insulated.',
  },
  capillaryTube: {
    does: 'The cap tube feeds the evaporator through its own narrow length, with nothing that moves.',
    sits: 'From the drier to the evaporator’s inlet, often soldered along the suction line.',
  },
  liquidLineSolenoid: {
    does: 'The solenoid shuts the liquid line when its coil has no power, so that the unit pumps itself down.',
    sits: 'In the liquid line, often near the evaporator, sometimes at the condensing unit.',
  },
  headPressureValve: {
    does: 'The head pressure valve holds head up in the cold, by keeping liquid in the condenser.',
    sits: 'Between the condenser’s outlet and the receiver, outdoors.',
  },
  kingValve: {
    does: 'The king valve shuts the liquid in the receiver, for a pump-down.',
    sits: 'At the receiver’s outlet.',
  },
  serviceValve: {
    does: 'A service valve opens the way to a gauge, or shuts the line, by its stem.',
    sits: 'On the compressor, one at suction and one at discharge, under a cap.',
  },
  accessFitting: {
    does: 'An access fitting lets a gauge in through a small core that a hose presses open.',
    sits: 'On a short stub of the suction and the discharge line, under a cap.',
  },
  highPressureSwitch: {
    does: 'The high-pressure switch stops the compressor when head goes too high.',
    sits: 'Near the compressor, with a thin tube to the discharge side; many have a reset button.',
  },
  lowPressureSwitch: {
    does: 'The low-pressure switch stops the compressor when suction falls too low: short of gas, shut off, or pumped down.',
    sits: 'Near the compressor, with a thin tube to the suction side; often in one box with the high one.',
  },
  temperatureControl: {
    does: 'The thermostat calls for cooling and ends it, by the temperature of the box or of the coil.',
    sits: 'In the box, on its wall or in the control panel, with its bulb in the air or at the coil.',
  },
  contactor: {
    does: 'The contactor switches the compressor’s power when the controls feed its coil.',
    sits: 'In the electrical box of the condensing unit.',
  },
  overload: {
    does: 'The overload opens when the motor draws too much or runs too hot, and closes again as it cools.',
    sits: 'On the compressor’s terminals under their cover, or inside the shell.',
  },
  startRelay: {
    does: 'The start relay puts the start winding in for the start, and takes it out again.',
    sits: 'On the compressor’s terminals, or in its electrical box.',
  },
  startCapacitor: {
    does: 'The start capacitor gives the motor its push as it starts, for a moment only.',
    sits: 'In or on the compressor’s electrical box: usually the black can.',
  },
  runCapacitor: {
    does: 'The run capacitor works with the motor’s start winding all the time that it runs.',
    sits: 'Near its motor or in the electrical box: usually the metal can.',
  },
  defrostTimer: {
    does: 'The defrost timer stops the cooling some times a day, and lets the heaters thaw the coil.',
    sits: 'In the control panel of a freezer, or in a box of its own near it.',
  },
  defrostHeater: {
    does: 'The defrost heater thaws the evaporator.',
    sits: 'In or under the evaporator’s fins, behind its panel.',
  },
  defrostTermination: {
    does: 'The termination switch ends the defrost when the coil is warm, and lets the fans wait until it is cold.',
    sits: 'Clamped on the evaporator, usually on its outlet or its end plate.',
  },
  drainHeater: {
    does: 'The drain heater keeps meltwater from freezing on its way out.',
    sits: 'In or around the drain line, inside the freezer.',
  },
  crankcaseHeater: {
    does: 'The crankcase heater keeps refrigerant out of the oil while the compressor stands.',
    sits: 'Around the bottom of the compressor, or in a well of it.',
  },
  fanControl: {
    does: 'The fan control starts and stops the condenser fan, so that head does not fall too low in the cold.',
    sits: 'On the condensing unit, with a thin tube to the high side.',
  },
  disconnect: {
    does: 'The disconnect cuts the unit’s power, and takes your lock.',
    sits: 'Usually within sight of the unit, on the wall or on the condensing unit.',
  },
  transformer: {
    does: 'The transformer makes the low voltage that the controls run on.',
    sits: 'In the electrical box.',
  },
};
