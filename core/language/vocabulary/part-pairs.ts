import type { PartId } from '../../terms/names.ts';

const ON = '(on|of|in|for|at|inside|to|off) [(the|this|that|my|our|your)]';
const WHICH = '[(left|right|top|bottom|front|back|upper|lower|middle)]';
const HEAT = '(heater|heaters|heat tape|heat cable|heat trace|element)';

/** Parts told by what they are on, where the two together are one of ours: "the coil on the contactor". Only written. */
export const PART_PAIRS: Partial<Record<PartId, readonly string[]>> = {
  condenser: [`~~(coil|coils) ${ON} (condenser|condensing unit)`],
  condenserFan: [`~~(fan|fans) ${ON} ${WHICH} (condenser coil|condensing unit|outdoor coil)`],
  condenserFanMotor: [
    `~~(fan motor|fan motors|motor|motors) ${ON} ${WHICH} (condenser [(fan|coil)]|condensing unit|outdoor (fan|coil))`,
  ],
  evaporator: [
    `~~(coil|coils) ${ON} (evaporator|evap)`,
    '~~(coil|coils) (in|inside) [(the|this|that|my)] (box|cooler|freezer|walk in|case|reach in)',
  ],
  evaporatorFan: [`~~(fan|fans) ${ON} ${WHICH} (evaporator|evap|indoor|cooling) coil`],
  evaporatorFanMotor: [
    `~~(fan motor|fan motors|motor|motors) ${ON} ${WHICH} (evaporator|evap) [(fan|coil)]`,
  ],
  fan: [
    `~~(fan|fans|fan motor|fan motors) ${ON} ${WHICH} coil`,
    `~~(motor|motors) ${ON} ${WHICH} fan`,
  ],
  fanBlade: [`~~(blade|blades) ${ON} ${WHICH} [(condenser|evaporator|evap)] (fan [motor]|motor)`],
  contactor: [
    `~~(coil|coils|contacts|contact|points) ${ON} [(compressor|heater|fan|defrost)] (contactor|contactors)`,
  ],
  startRelay: [
    `~~(coil|coils|contacts|contact|points) ${ON} [(start|potential|current)] (relay|relays)`,
  ],
  startCapacitor: [`~~(cap|capacitor) ${ON} (start relay|potential relay|relay)`],
  runCapacitor: [
    `~~(cap|capacitor|run cap|run capacitor) ${ON} ${WHICH} (compressor|condenser [fan] [motor]|evaporator fan [motor]|evap fan [motor]|fan [motor]|motor)`,
  ],
  temperatureControl: [`~~(contacts|contact|points) ${ON} (thermostat|stat|temperature control)`],
  defrostTimer: [
    `~~(contacts|contact|points|motor) ${ON} (defrost (timer|clock)|timer|time clock)`,
  ],
  highPressureSwitch: [
    `~~(contacts|contact|points) ${ON} (high pressure (switch|control)|high side switch)`,
  ],
  lowPressureSwitch: [
    `~~(contacts|contact|points) ${ON} (low pressure (switch|control)|low side switch)`,
  ],
  liquidLineSolenoid: [
    `~~(coil|coils) ${ON} ([(liquid line|liquid|pump down)] (solenoid|solenoids) [valve])`,
  ],
  hotGasValve: [
    `~~(coil|coils) ${ON} (hot gas|harvest) [(bypass|defrost)] (valve|solenoid [valve])`,
  ],
  waterValve: [
    `~~(coil|coils) ${ON} (water|water inlet|inlet|inlet water|dump|purge|fill) (valve|solenoid [valve])`,
  ],
  defrostHeater: [
    `~~(heater|heaters|element|elements) ${ON} ${WHICH} (evaporator [coil]|evap [coil]|coil)`,
  ],
  drainHeater: [
    `~~${HEAT} ${ON} (drain [(line|pan|tube)]|pan|drip pan|condensate (line|pan|drain))`,
  ],
  doorHeater: [`~~${HEAT} ${ON} ${WHICH} (door [frame]|doors|frame|mullion)`],
  crankcaseHeater: [`~~(heater|heaters) ${ON} (compressor|crankcase|crank case)`],
  doorSwitch: [`~~switch ${ON} ${WHICH} (door|doors)`],
  expansionValve: [
    `~~(screen|strainer|power head|powerhead) ${ON} (txv|t x v|tev|t e v|tx valve|expansion valve)`,
  ],
  expansionValveBulb: [`~~(bulb|sensing bulb) ${ON} (txv|t x v|expansion valve|suction line)`],
  filterDrier: [
    `~~(core|cores) ${ON} [(liquid|suction) [line]] [filter] (dryer|dryers)`,
    `~~(filter|dryer) ${ON} (liquid|suction) line`,
  ],
  terminal: [
    '~~(lug|lugs|terminal|terminals|connection|screw) (on|at) [(the|this|that)] (line|load|top|bottom) side [(of|on) [(the|this|that)] [(left|right|middle|center|first|second|third|main)] (fuse|fuses|fuse block|breaker|disconnect|contactor)]',
  ],
  joint: [
    `~~(nut|nuts|flare nut|flare nuts|union|elbow|tee|ell|coupling) ${ON} (suction|liquid|discharge|hot gas) line`,
  ],
  accessFitting: [
    `~~(core|cores|valve core|schrader [core]) ${ON} ((suction|liquid|discharge) [(line|side)]|(low|high) side|service (valve|port|ports)|access (valve|port|fitting)|port|ports|schrader [valve])`,
  ],
  caps: [
    `~~(cap|caps) ${ON} ([(king|service|stop|suction|discharge|liquid|receiver|access|schrader|suction service|discharge service|liquid line service)] (valve|valves)|[(service|access|charging|suction|discharge|liquid)] (port|ports)|schrader|access fitting|stem)`,
  ],
};
