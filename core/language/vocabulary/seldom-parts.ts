import type { PartId } from '../../terms/names.ts';

/** Names that are only written: what it takes to hear them is worth more than how often they are said. */
export const SELDOM_PARTS: Partial<Record<PartId, readonly string[]>> = {
  phaseMonitor: [
    '~~(phase|phase loss|phase failure|phase protection|three phase|line voltage|voltage) (monitor|monitors)',
    '~~(phase|phase loss|phase failure|phase protection) (relay|protector)',
  ],
  surgeProtector: ['~~(surge|spike) (protector|protectors|suppressor|arrestor|arrester)'],
  delayRelay: [
    '~~(time delay|delay) (relay|relays|timer)',
    '~~(delay on (make|break)|anti short cycle|short cycle) (timer|relay|control)',
  ],
  crankcaseRegulator: [
    '~~(crankcase|crank case) pressure (regulator|regulating valve|valve)',
    '~~((c p r|cpr) [valve]|(hold back|holdback) valve)',
  ],
  headPressureValve: ['~~(flooding|flooded head|head control|head pressure regulating) valve'],
  checkValve: ['~~check (valve|valves)'],
  reliefValve: ['~~([pressure] relief|safety relief) (valve|valves)', '~~rupture disc'],
  fusiblePlug: ['~~(fusible|soft) plug'],
  oilPressureControl: [
    '~~oil (pressure|failure|safety|pressure safety|pressure failure) (control|switch)',
  ],
  strainer: ['~~[(liquid [line]|suction [line]|inlet|line)] (strainer|strainers)'],
  headGasket: ['~~[compressor] head (gasket|gaskets)', `~~(gasket|gaskets) on the compressor head`],
  valvePlate: ['~~[compressor] (valve plate|reed valve|reed valves)'],
  dischargeThermostat: ['~~discharge [line] (thermostat|limit)'],
  floatSwitch: ['~~float (switch|switches)'],
  condensatePump: ['~~condensate (pump|pumps)'],
  motorMount: ['~~(fan|motor|fan motor) (mount|mounts|bracket|brackets)'],
  fanGuard: ['~~[(condenser|evaporator|evap)] fan (guard|guards|shroud|grille)'],
  speedDrive: ['~~(variable speed|variable frequency) drive', '~~(v f d|vfd)'],
  insulation: [
    '~~(pipe|line|suction line|liquid line|suction|tube) insulation',
    '~~insulation (on|of|around) [(the|this|that|my)] (suction line|liquid line|suction|pipe|pipes|lines)',
  ],
  heatExchanger: ['~~heat exchanger'],
  vibrationEliminator: ['~~vibration (eliminator|eliminators|absorber|absorbers)'],
  gearMotor: ['~~(gear motor|gearmotor|gear box|gearbox|auger motor)'],
  auger: ['~~auger'],
  binControl: ['~~bin (switch|thermostat|stat|control)'],
  doorGlass: [
    '~~(heated|front|curved|door) glass',
    '~~glass (in|on|of) [(the|this|that)] (door|doors|lid|case)',
  ],
  sensor: ['~~[pressure] (transducer|transducers)'],
  fanControl: ['~~fan speed (controller|control)'],
  filterDrier: ['~~(suction|liquid) [line] filter'],
  drainLine: ['~~(drain|p) trap'],
  light: ['~~led (driver|drivers|strip|strips|fixture|fixtures)'],
};
