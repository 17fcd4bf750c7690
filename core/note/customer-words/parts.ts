import { PARTS, type PartId } from '../../terms/names.ts';

/** A part as its owner would point at it. */
interface PlainPart {
  readonly name: string;
  /** What is left of the name once it was said: "that coil". */
  readonly noun: string;
  readonly plural?: true;
}

const part = (name: string, noun: string): PlainPart => ({ name, noun });

/** No word that only the trade knows: what each part is for says more than what it is called. */
export const PLAIN_PARTS: Record<PartId, PlainPart> = {
  compressor: part('the compressor', 'compressor'),
  condenser: part('the coil that gets rid of the heat', 'coil'),
  condenserFan: part('the fan that blows the heat away', 'fan'),
  condenserFanMotor: part('the motor of the fan that blows the heat away', 'motor'),
  evaporator: part('the cooling coil', 'coil'),
  evaporatorFan: part('the fan that blows the cold air', 'fan'),
  evaporatorFanMotor: part('the motor of the fan that blows the cold air', 'motor'),
  highPressureSwitch: part('the safety switch against high pressure', 'switch'),
  lowPressureSwitch: part('the switch that stops it at low pressure', 'switch'),
  temperatureControl: part('the thermostat', 'thermostat'),
  controller: part('the electronic control', 'control'),
  contactor: part('the relay that switches the power', 'relay'),
  startRelay: part('the relay that starts the motor', 'relay'),
  startCapacitor: part('the capacitor that starts the motor', 'capacitor'),
  runCapacitor: part('the capacitor that keeps the motor turning', 'capacitor'),
  overload: part('the motor protection', 'protection'),
  defrostTimer: part('the timer that starts the defrost', 'timer'),
  defrostHeater: part('the heater that melts the ice', 'heater'),
  defrostTermination: part('the switch that ends the defrost', 'switch'),
  drainPan: part('the drain pan', 'pan'),
  drainLine: part('the drain', 'drain'),
  drainHeater: part('the heater that keeps the drain from freezing', 'heater'),
  doorGasket: part('the door seal', 'seal'),
  door: part('the door', 'door'),
  doorHeater: part('the heater in the door frame', 'heater'),
  doorSwitch: part('the door switch', 'switch'),
  hinge: part('the door hinge', 'hinge'),
  light: part('the light', 'light'),
  thermometer: part('the thermometer', 'thermometer'),
  sensor: part('the temperature sensor', 'sensor'),
  expansionValve: part('the valve that feeds the cooling coil', 'valve'),
  expansionValveBulb: part('the sensor of the valve that feeds the cooling coil', 'sensor'),
  capillaryTube: part('the thin tube that feeds the cooling coil', 'tube'),
  filterDrier: part('the filter in the refrigerant line', 'filter'),
  sightGlass: part('the window in the refrigerant line', 'window'),
  receiver: part('the refrigerant tank', 'tank'),
  accumulator: part('the tank that protects the compressor', 'tank'),
  oilSeparator: part('the part that sends the oil back', 'part'),
  liquidLine: part('the refrigerant line to the cooling coil', 'line'),
  suctionLine: part('the refrigerant line back to the compressor', 'line'),
  dischargeLine: part('the hot refrigerant line', 'line'),
  liquidLineSolenoid: part('the valve that shuts the refrigerant off', 'valve'),
  hotGasValve: part('the valve that lets in the warm gas to melt the ice', 'valve'),
  waterValve: part('the water valve', 'valve'),
  waterPump: part('the water pump', 'pump'),
  headPressureValve: part('the valve that keeps it working in the cold', 'valve'),
  evaporatorPressureRegulator: part(
    'the valve that keeps the cooling coil from getting too cold',
    'valve',
  ),
  crankcaseHeater: part('the heater that keeps the oil warm', 'heater'),
  serviceValve: part('a service valve', 'valve'),
  suctionServiceValve: part('the service valve on the cold side', 'valve'),
  dischargeServiceValve: part('the service valve on the hot side', 'valve'),
  kingValve: part('the valve at the refrigerant tank', 'valve'),
  accessFitting: part('the fitting that the service hoses go on', 'fitting'),
  joint: part('a joint in the refrigerant piping', 'joint'),
  hose: part('a hose', 'hose'),
  wiring: part('the wiring', 'wiring'),
  terminal: part('an electrical connection', 'connection'),
  fuse: part('a fuse', 'fuse'),
  breaker: part('the circuit breaker', 'breaker'),
  disconnect: part('the power switch of the unit', 'switch'),
  plug: part('the power plug', 'plug'),
  transformer: part('the transformer that powers the controls', 'transformer'),
  fanBlade: part('the fan blade', 'blade'),
  fan: part('a fan', 'fan'),
  fanControl: part('the control of the fan that blows the heat away', 'control'),
  filter: part('the filter', 'filter'),
  product: part('the product', 'product'),
  gauges: { ...part('our gauges', 'gauges'), plural: true },
  caps: { ...part('the valve caps', 'caps'), plural: true },
  panel: part('the cover', 'cover'),
  jumper: part('a wire around a switch', 'wire'),
  phaseMonitor: part('the device that guards the power to the unit', 'device'),
  surgeProtector: part('the device that guards against power surges', 'device'),
  delayRelay: part('the relay that delays the start', 'relay'),
  crankcaseRegulator: part('the valve that keeps the load off the compressor', 'valve'),
  checkValve: part('the valve that lets refrigerant through one way', 'valve'),
  reliefValve: part('the safety valve', 'valve'),
  fusiblePlug: part('the safety plug on the refrigerant tank', 'plug'),
  oilPressureControl: part('the safety switch for the oil', 'switch'),
  strainer: part('the screen in the refrigerant line', 'screen'),
  headGasket: part('a seal inside the compressor', 'seal'),
  valvePlate: part('the valves inside the compressor', 'valves'),
  dischargeThermostat: part('the switch that guards against a hot compressor', 'switch'),
  floatSwitch: part('the switch that floats on the water', 'switch'),
  condensatePump: part('the pump that drains the water', 'pump'),
  motorMount: part('the bracket of a motor', 'bracket'),
  fanGuard: part('the guard around a fan', 'guard'),
  speedDrive: part('the control of the motor speed', 'control'),
  insulation: part('the insulation of a line', 'insulation'),
  heatExchanger: part('the heat exchanger between the lines', 'exchanger'),
  vibrationEliminator: part('the flexible piece of a line', 'piece'),
  gearMotor: part('the motor that turns the ice out', 'motor'),
  auger: part('the screw that moves the ice', 'screw'),
  binControl: part('the switch that stops it when the bin is full', 'switch'),
  doorGlass: part('the door glass', 'glass'),
};

/** How the parts of one note are named: in full where one is spoken of first, and "that coil" from then on. */
export interface Naming {
  name(id: PartId): string;
}

/** Two coils cannot both be "that coil": where their nouns are the same, both keep their full names. */
export function createNaming(all: readonly PartId[]): Naming {
  const said = new Set<PartId>();
  const isAlone = (id: PartId): boolean =>
    new Set(all).size > 0 &&
    ![...new Set(all)].some(
      (other) => other !== id && PLAIN_PARTS[other].noun === PLAIN_PARTS[id].noun,
    );
  return {
    name: (id) => {
      const { name, noun, plural } = PLAIN_PARTS[id];
      const isAgain = said.has(id) && isAlone(id) && name !== `the ${noun}`;
      said.add(id);
      if (!isAgain) return name;
      return `${plural ? 'those' : 'that'} ${noun}`;
    },
  };
}

/** The office's and the next technician's own words. */
export const tradeNaming: Naming = { name: (id) => `the ${PARTS[id]}` };

export const isMany = (id: PartId): boolean => PLAIN_PARTS[id].plural === true;
