import type { CauseId } from '../terms/causes.ts';

/** A cause in the middle of a sentence. */
export const CAUSE_PHRASES: Record<CauseId, string> = {
  undercharge: 'a low charge',
  overcharge: 'an overcharge',
  dirtyCondenser: 'a dirty condenser',
  condenserFanOut: 'a condenser fan out',
  fanControlStuckOff: 'a condenser fan control stuck off',
  hotRoom: 'hot air at the condenser',
  nonCondensables: 'air in the system',
  liquidLineRestriction: 'a restriction in the liquid line or drier',
  valveStarving: 'an expansion valve starving the coil',
  valveFlooding: 'an expansion valve flooding the coil',
  capillaryBlocked: 'a blocked capillary tube',
  flashGas: 'flash gas in the liquid line',
  icedCoil: 'an iced or blocked evaporator',
  evaporatorFanOut: 'an evaporator fan out',
  defrostFailed: 'a failed defrost',
  leakyValves: 'leaky compressor valves',
  suctionRestriction: 'a restriction in the suction line',
  heavyLoad: 'a heavy load or a pull-down',
  openBox: 'warm air or warm product getting in',
  lowAmbient: 'cold air at the condenser',
  stuckUnloaded: 'a compressor stuck unloaded',
  badSupply: 'low or high voltage',
  nothingWrong: 'nothing wrong',
};
