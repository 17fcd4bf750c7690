/** What can be wrong with the refrigeration side, in the words it is named with. */
export const CAUSES = {
  undercharge: 'low charge',
  overcharge: 'overcharge',
  dirtyCondenser: 'dirty condenser',
  condenserFanOut: 'condenser fan out',
  fanControlStuckOff: 'condenser fan control stuck off',
  hotRoom: 'hot air at the condenser',
  nonCondensables: 'air in the system',
  liquidLineRestriction: 'restricted liquid line or drier',
  valveStarving: 'expansion valve starving',
  valveFlooding: 'expansion valve flooding',
  capillaryBlocked: 'blocked capillary tube',
  flashGas: 'flash gas in the liquid line',
  icedCoil: 'iced or blocked evaporator',
  evaporatorFanOut: 'evaporator fan out',
  defrostFailed: 'failed defrost',
  leakyValves: 'leaky compressor valves',
  suctionRestriction: 'restricted suction line',
  heavyLoad: 'heavy load or pull-down',
  openBox: 'warm air or product getting in',
  lowAmbient: 'cold air at the condenser',
  stuckUnloaded: 'compressor stuck unloaded',
  badSupply: 'low or high voltage',
  fanControlStuckOn: 'condenser fan control stuck on',
  fanControlCycling: 'condenser fan control cycling too fast',
  stuckInDefrost: 'stuck in defrost',
  leakingSolenoid: 'leaking liquid-line solenoid',
  solenoidShut: 'liquid-line solenoid not opening',
  startGear: 'bad start gear',
  overloadOpen: 'open overload',
  nothingWrong: 'nothing off',
} as const;
export type CauseId = keyof typeof CAUSES;

/** How much speaks for a cause, without a number that would sound more exact than it is. */
export type CauseStanding = 'leading' | 'possible' | 'unlikely';
