/** Closed sets of trade names: the id the data uses and the words it is printed with. */

export const PLACES = {
  highPressureSwitch: 'high-pressure switch',
  lowPressureSwitch: 'low-pressure switch',
  contactor: 'contactor',
  lineSide: 'line side',
  loadSide: 'load side',
  compressor: 'compressor',
  condenserFan: 'condenser fan',
  evaporatorFan: 'evaporator fan',
  temperatureControl: 'temperature control',
  defrostTimer: 'defrost timer',
  overload: 'overload',
  startRelay: 'start relay',
  startCapacitor: 'start capacitor',
  runCapacitor: 'run capacitor',
  liquidLineSolenoid: 'liquid-line solenoid',
  doorSwitch: 'door switch',
  hotGasValve: 'hot gas valve',
  commonStart: 'common to start',
  commonRun: 'common to run',
  runStart: 'run to start',
  commonGround: 'common to ground',
  startGround: 'start to ground',
  runGround: 'run to ground',
  lineOne: 'line one',
  lineTwo: 'line two',
  lineThree: 'line three',
  defrostHeater: 'defrost heater',
  doorHeater: 'door heater',
  drainHeater: 'drain heater',
  crankcaseHeater: 'crankcase heater',
  timerOne: 'timer terminal one',
  timerTwo: 'timer terminal two',
  timerThree: 'timer terminal three',
  timerFour: 'timer terminal four',
  terminalOneTwo: 'terminal one to terminal two',
  terminalTwoThree: 'terminal two to terminal three',
  terminalOneThree: 'terminal one to terminal three',
  lineOneTwo: 'line one to line two',
  lineTwoThree: 'line two to line three',
  lineOneThree: 'line one to line three',
} as const;
export type PlaceId = keyof typeof PLACES;

/** What is printed on one of these is on no plate of the unit. */
export const HEATERS = [
  'defrostHeater',
  'doorHeater',
  'drainHeater',
  'crankcaseHeater',
] as const satisfies readonly PlaceId[];
export type HeaterId = (typeof HEATERS)[number];

export const PARTS = {
  compressor: 'compressor',
  condenser: 'condenser',
  condenserFan: 'condenser fan',
  condenserFanMotor: 'condenser fan motor',
  evaporator: 'evaporator',
  evaporatorFan: 'evaporator fan',
  evaporatorFanMotor: 'evaporator fan motor',
  highPressureSwitch: 'high-pressure switch',
  lowPressureSwitch: 'low-pressure switch',
  temperatureControl: 'temperature control',
  controller: 'controller',
  contactor: 'contactor',
  startRelay: 'start relay',
  startCapacitor: 'start capacitor',
  runCapacitor: 'run capacitor',
  overload: 'overload',
  defrostTimer: 'defrost timer',
  defrostHeater: 'defrost heater',
  defrostTermination: 'defrost termination',
  drainPan: 'drain pan',
  drainLine: 'drain line',
  drainHeater: 'drain heater',
  doorGasket: 'door gasket',
  door: 'door',
  doorHeater: 'door heater',
  doorSwitch: 'door switch',
  hinge: 'hinge',
  light: 'light',
  thermometer: 'thermometer',
  sensor: 'sensor',
  expansionValve: 'expansion valve',
  expansionValveBulb: 'expansion valve bulb',
  capillaryTube: 'capillary tube',
  filterDrier: 'filter drier',
  sightGlass: 'sight glass',
  receiver: 'receiver',
  accumulator: 'accumulator',
  oilSeparator: 'oil separator',
  liquidLine: 'liquid line',
  suctionLine: 'suction line',
  dischargeLine: 'discharge line',
  liquidLineSolenoid: 'liquid-line solenoid',
  headPressureValve: 'head pressure valve',
  evaporatorPressureRegulator: 'evaporator pressure regulator',
  hotGasValve: 'hot gas valve',
  waterValve: 'water valve',
  waterPump: 'water pump',
  crankcaseHeater: 'crankcase heater',
  serviceValve: 'service valve',
  suctionServiceValve: 'suction service valve',
  dischargeServiceValve: 'discharge service valve',
  kingValve: 'king valve',
  accessFitting: 'access fitting',
  joint: 'joint',
  hose: 'hose',
  wiring: 'wiring',
  terminal: 'terminal',
  fuse: 'fuse',
  breaker: 'breaker',
  disconnect: 'disconnect',
  plug: 'plug',
  transformer: 'transformer',
  fanBlade: 'fan blade',
  fan: 'fan',
  fanControl: 'condenser fan control',
  filter: 'filter',
  product: 'product',
  gauges: 'gauges',
  caps: 'caps',
  panel: 'panel',
  jumper: 'jumper',
  phaseMonitor: 'phase monitor',
  surgeProtector: 'surge protector',
  delayRelay: 'time-delay relay',
  crankcaseRegulator: 'crankcase pressure regulator',
  checkValve: 'check valve',
  reliefValve: 'relief valve',
  fusiblePlug: 'fusible plug',
  oilPressureControl: 'oil pressure control',
  strainer: 'strainer',
  headGasket: 'head gasket',
  valvePlate: 'valve plate',
  dischargeThermostat: 'discharge thermostat',
  floatSwitch: 'float switch',
  condensatePump: 'condensate pump',
  motorMount: 'motor mount',
  fanGuard: 'fan guard',
  speedDrive: 'variable-speed drive',
  insulation: 'insulation',
  heatExchanger: 'heat exchanger',
  vibrationEliminator: 'vibration eliminator',
  gearMotor: 'gear motor',
  auger: 'auger',
  binControl: 'bin control',
  doorGlass: 'door glass',
} as const;
export type PartId = keyof typeof PARTS;

/** What cuts the power to the unit. */
export const POWER_PARTS = ['disconnect', 'breaker', 'plug'] as const satisfies readonly PartId[];
export type PowerPart = (typeof POWER_PARTS)[number];
export const isPowerPart = (part: PartId): part is PowerPart =>
  POWER_PARTS.some((each) => each === part);

export const FINDING_STATES = {
  dirty: 'dirty',
  plugged: 'plugged',
  iced: 'iced up',
  notRunning: 'not running',
  running: 'running',
  tripped: 'tripped',
  open: 'open',
  closed: 'closed',
  leaking: 'leaking',
  hot: 'hot',
  noisy: 'noisy',
  loose: 'loose',
  burnt: 'burnt',
  missing: 'missing',
  failed: 'failed',
  grounded: 'grounded',
  ok: 'all right',
  wet: 'wet',
  oily: 'oily',
  warm: 'warm',
  cold: 'cold',
  shortCycling: 'short cycling',
  hunting: 'hunting',
  humming: 'humming, not starting',
  defrosting: 'in defrost',
  defrosted: 'out of defrost',
  stuckInDefrost: 'stuck in defrost',
} as const;
export type FindingStateId = keyof typeof FINDING_STATES;

/** Work by its verb: as done, and as still to do. */
export const WORK_KINDS = {
  clean: { done: 'cleaned', todo: 'clean' },
  reset: { done: 'reset', todo: 'reset' },
  replace: { done: 'replaced', todo: 'replace' },
  adjust: { done: 'adjusted', todo: 'adjust' },
  repair: { done: 'repaired', todo: 'repair' },
  tighten: { done: 'tightened', todo: 'tighten' },
  remove: { done: 'removed', todo: 'remove' },
  add: { done: 'added', todo: 'add' },
  recover: { done: 'recovered', todo: 'recover' },
  evacuate: { done: 'evacuated', todo: 'evacuate' },
  pumpDown: { done: 'pumped down', todo: 'pump down' },
  pressureTest: { done: 'pressure tested', todo: 'pressure test' },
  leakCheck: { done: 'leak checked', todo: 'leak check' },
  brush: { done: 'brushed', todo: 'brush' },
  wash: { done: 'washed', todo: 'wash' },
  defrost: { done: 'defrosted', todo: 'defrost' },
  restore: { done: 'restored', todo: 'restore' },
  isolate: { done: 'isolated', todo: 'isolate' },
  bypass: { done: 'bypassed', todo: 'bypass' },
  disable: { done: 'disabled', todo: 'disable' },
  open: { done: 'opened', todo: 'open' },
  connect: { done: 'connected', todo: 'connect' },
  setForTest: { done: 'set away for a test', todo: 'set away for a test' },
  order: { done: 'ordered', todo: 'order' },
  comeBack: { done: 'checked again', todo: 'come back' },
  /** What no other verb says: told in the words that it is called by. */
  asSaid: { done: 'done', todo: 'do' },
} as const;
export type WorkKindId = keyof typeof WORK_KINDS;

/** What leaves a coil or a fan clean, however it was done. */
export const CLEANING: ReadonlySet<WorkKindId> = new Set<WorkKindId>(['clean', 'wash', 'brush']);

export const EQUIPMENT = {
  reachIn: 'reach-in',
  walkInCooler: 'walk-in cooler',
  walkInFreezer: 'walk-in freezer',
  prepTable: 'prep table',
  displayCase: 'display case',
  iceMachine: 'ice machine',
  remoteCondensingUnit: 'remote condensing unit',
} as const;
export type EquipmentId = keyof typeof EQUIPMENT;

/** "Display case freezer": a kind that may be either, and is one. */
export const equipmentName = (id: EquipmentId, isFreezer: boolean): string =>
  isFreezer ? `${EQUIPMENT[id]} freezer` : EQUIPMENT[id];

/** Where the compressor and the condenser stand: apart from the box that they serve, or in it. */
export const CONDENSING_UNITS = {
  remote: 'remote condensing unit',
  selfContained: 'self-contained',
} as const;
export type CondensingUnitId = keyof typeof CONDENSING_UNITS;

export const METERING_DEVICES = {
  txv: 'thermostatic expansion valve',
  capTube: 'capillary tube',
  eev: 'electronic expansion valve',
  orifice: 'fixed orifice',
} as const;
export type MeteringId = keyof typeof METERING_DEVICES;

export const SIGHT_GLASS_STATES = { clear: 'clear', bubbling: 'bubbling', empty: 'empty' } as const;
export type SightGlassId = keyof typeof SIGHT_GLASS_STATES;

/** What carries the heat away, and whether it stands in the room or apart from it. */
export const CONDENSERS = {
  airCooled: 'air-cooled condenser',
  waterCooled: 'water-cooled condenser',
  remote: 'remote air-cooled condenser',
} as const;
export type CondenserId = keyof typeof CONDENSERS;

/** What holds head up when the air is cold. */
export const HEAD_CONTROLS = {
  floodingValve: 'head pressure valve',
  fanCycling: 'fan cycling on pressure',
  fanSpeed: 'fan speed control',
  none: 'no head pressure control',
} as const;
export type HeadControlId = keyof typeof HEAD_CONTROLS;
