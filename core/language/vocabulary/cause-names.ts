import type { CauseId } from '../../terms/causes.ts';

/** What a technician calls the trouble, once it is found. */
export const CAUSE_NAMES: Record<Exclude<CauseId, 'nothingWrong'>, readonly string[]> = {
  undercharge: [
    'low on charge',
    '~(low on (charge|refrigerant|gas|freon))',
    '~((low|short) [on] charge)',
    '~(undercharged|under charged)',
    '~((short|out|empty) of (charge|refrigerant|gas|freon))',
  ],
  overcharge: [
    'overcharged',
    '~(overcharged|over charged)',
    '~(overcharge)',
    '~(too much (charge|refrigerant|gas))',
  ],
  dirtyCondenser: [
    'dirty condenser',
    '~((dirty|plugged|clogged|filthy) (condenser|condenser coil))',
  ],
  condenserFanOut: [
    'bad condenser fan',
    '~((dead|bad|failed|seized) condenser fan [motor])',
    '~(condenser fan out)',
  ],
  fanControlStuckOff: [
    '~((bad|stuck|failed) (fan cycling|fan cycle|fan pressure) (control|switch))',
  ],
  hotRoom: ['~(hot (air|room) [at the condenser])', '~(hot air getting back to the condenser)'],
  nonCondensables: [
    'air in the system',
    '~(air in (it|the system|there))',
    '~([the] (non condensables|noncondensables|non condensable|noncondensable|non condensable gas))',
    '~(air in the refrigerant)',
  ],
  liquidLineRestriction: [
    'restricted dryer',
    '~((restricted|plugged|clogged|blocked) [filter] (drier|dryer))',
    '~((restricted|kinked|plugged|blocked) liquid line)',
    '~([liquid line] restriction)',
  ],
  valveStarving: [
    '~((starving|plugged|starved) (txv|t x v|expansion valve))',
    '~((txv|t x v|expansion valve) (starving|starving the coil|stuck closed))',
  ],
  valveFlooding: [
    '~((overfeeding|over feeding|flooding) (txv|t x v|expansion valve))',
    '~((txv|t x v|expansion valve) (overfeeding|over feeding|flooding|stuck open))',
  ],
  capillaryBlocked: [
    'plugged cap tube',
    '~((plugged|blocked|restricted|clogged) (cap tube|capillary [tube]))',
  ],
  flashGas: ['~(flash gas [in the liquid line])'],
  icedCoil: [
    'iced evaporator',
    '~((iced|iced up|frozen|blocked|frosted) (evaporator|evap|coil|evaporator coil))',
  ],
  evaporatorFanOut: [
    'bad evaporator fan',
    '~((dead|bad|failed|seized) (evaporator|evap) fan [motor])',
  ],
  defrostFailed: ['~((failed|bad) defrost)', '~(defrost not working)'],
  leakyValves: [
    'bad valves',
    '~((leaky|bad|leaking|broken) [compressor] valves)',
    '~(weak compressor)',
  ],
  suctionRestriction: [
    '~((restricted|plugged|kinked) suction (line|filter))',
    '~(suction restriction)',
  ],
  heavyLoad: ['~((heavy|too much) load)', '~(pull down load)', '~(warm product load)'],
  openBox: [
    'bad door gasket',
    '~((bad|torn|leaking) [door] gasket)',
    '~(door (left|propped) open)',
    '~(warm air getting in)',
  ],
  lowAmbient: ['~(low ambient)', '~(cold air at the condenser)'],
  stuckUnloaded: ['~(stuck unloader|unloader stuck)', '~(compressor stuck unloaded)'],
  badSupply: ['~((low|high|bad) (voltage|supply|power))'],
  fanControlStuckOn: ['~([condenser] fan (control|switch) stuck (on|closed))'],
  fanControlCycling: ['~([condenser] fan (control|switch) cycling too fast)'],
  stuckInDefrost: ['~(stuck defrost)', '~(defrost (stuck on|not ending|not terminating))'],
  leakingSolenoid: ['~((leaking|leaky) [liquid line] solenoid [valve])'],
  solenoidShut: ['~~([liquid line] solenoid [valve] (not opening|that will not open))'],
  startGear: [
    '~((bad|failed|burnt) (start gear|start components|start relay|start capacitor|hard start kit))',
  ],
  overloadOpen: ['~((open|bad|tripped) [internal] overload)'],
};
