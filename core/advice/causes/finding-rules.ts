import type { CauseId } from '../../terms/causes.ts';
import type { FindingStateId, PartId, SightGlassId } from '../../terms/names.ts';

/** What was seen: it shows the fault itself, or only goes with it. */
export type Weight = 'shows' | 'hints';

/**
 * How many times likelier the sight is under the cause than under none (from memory). Seen outright it outweighs
 * two contradicting readings; a hint outweighs none.
 */
export const RATIOS: Readonly<Record<Weight, number>> = { shows: 12, hints: 2.5 };

export interface FindingRule {
  readonly parts: readonly PartId[];
  readonly states: readonly FindingStateId[];
  readonly for: Partial<Record<CauseId, Weight>>;
  readonly against: Partial<Record<CauseId, Weight>>;
  readonly source: string;
}

const CUSTOM = 'common practice';
const ICED = 'achrnews.com/articles/135634, causes of and cures for an iced evaporator';
const STOPPED: readonly FindingStateId[] = ['notRunning', 'failed', 'burnt', 'open', 'tripped'];
const RUNNING: readonly FindingStateId[] = ['running', 'ok'];
const CONDENSER_FAN: readonly PartId[] = ['condenserFan', 'condenserFanMotor'];
const EVAPORATOR_FAN: readonly PartId[] = ['evaporatorFan', 'evaporatorFanMotor'];
const DEFROST: readonly PartId[] = ['defrostHeater', 'defrostTimer', 'defrostTermination'];
const COMPRESSOR: readonly PartId[] = ['compressor'];
const START_GEAR: readonly PartId[] = ['startRelay', 'startCapacitor'];
const TUBES: readonly PartId[] = ['joint', 'accessFitting', 'serviceValve', 'liquidLine'];

interface Sight {
  readonly parts: readonly PartId[];
  readonly states: readonly FindingStateId[];
}
const rule = (
  { parts, states }: Sight,
  points: Partial<Pick<FindingRule, 'for' | 'against' | 'source'>>,
): FindingRule => ({ parts, states, for: {}, against: {}, source: CUSTOM, ...points });

export const FINDING_RULES: readonly FindingRule[] = [
  rule(
    { parts: ['condenser'], states: ['dirty', 'plugged'] },
    { for: { dirtyCondenser: 'shows' } },
  ),
  rule({ parts: ['condenser'], states: ['ok'] }, { against: { dirtyCondenser: 'shows' } }),
  rule(
    { parts: ['headPressureValve'], states: ['open', 'failed', 'missing'] },
    { for: { lowAmbient: 'shows' } },
  ),
  rule(
    { parts: CONDENSER_FAN, states: STOPPED },
    { for: { condenserFanOut: 'shows', fanControlStuckOff: 'hints' } },
  ),
  rule(
    { parts: CONDENSER_FAN, states: RUNNING },
    { against: { condenserFanOut: 'shows', fanControlStuckOff: 'shows' } },
  ),
  rule(
    { parts: ['evaporator'], states: ['iced', 'plugged', 'dirty'] },
    {
      for: { icedCoil: 'shows', defrostFailed: 'hints', evaporatorFanOut: 'hints' },
      source: ICED,
    },
  ),
  rule(
    { parts: ['evaporator'], states: ['ok'] },
    { against: { icedCoil: 'shows', defrostFailed: 'shows' }, source: ICED },
  ),
  rule({ parts: EVAPORATOR_FAN, states: STOPPED }, { for: { evaporatorFanOut: 'shows' } }),
  rule({ parts: EVAPORATOR_FAN, states: RUNNING }, { against: { evaporatorFanOut: 'shows' } }),
  rule({ parts: DEFROST, states: STOPPED }, { for: { defrostFailed: 'shows' } }),
  rule({ parts: DEFROST, states: RUNNING }, { against: { defrostFailed: 'hints' } }),
  rule({ parts: TUBES, states: ['leaking'] }, { for: { undercharge: 'shows' } }),
  rule({ parts: TUBES, states: ['oily'] }, { for: { undercharge: 'hints' } }),
  rule(
    { parts: ['evaporator', 'condenser'], states: ['leaking', 'oily'] },
    { for: { undercharge: 'hints' } },
  ),
  rule(
    { parts: ['filterDrier'], states: ['iced', 'wet', 'plugged'] },
    { for: { liquidLineRestriction: 'shows' } },
  ),
  rule({ parts: ['filterDrier'], states: ['ok'] }, { against: { liquidLineRestriction: 'hints' } }),
  rule(
    { parts: ['kingValve'], states: ['closed', 'failed'] },
    { for: { liquidLineRestriction: 'shows' } },
  ),
  rule(
    { parts: ['liquidLineSolenoid'], states: ['closed', 'failed'] },
    { for: { solenoidShut: 'shows', liquidLineRestriction: 'hints' } },
  ),
  rule(
    { parts: ['expansionValve'], states: ['closed', 'plugged', 'failed'] },
    { for: { valveStarving: 'shows' } },
  ),
  rule(
    { parts: ['expansionValve'], states: ['iced'] },
    { for: { undercharge: 'hints', valveStarving: 'hints' }, source: ICED },
  ),
  rule({ parts: ['expansionValve'], states: ['open'] }, { for: { valveFlooding: 'shows' } }),
  rule(
    { parts: ['expansionValveBulb'], states: ['loose', 'missing'] },
    { for: { valveFlooding: 'shows' } },
  ),
  rule(
    { parts: ['expansionValveBulb'], states: ['leaking', 'failed'] },
    { for: { valveStarving: 'shows' } },
  ),
  rule(
    { parts: ['capillaryTube'], states: ['plugged', 'iced'] },
    { for: { capillaryBlocked: 'shows' } },
  ),
  rule(
    { parts: ['compressor'], states: ['iced', 'wet'] },
    { for: { valveFlooding: 'hints', overcharge: 'hints', evaporatorFanOut: 'hints' } },
  ),
  rule(
    { parts: COMPRESSOR, states: ['noisy'] },
    { for: { leakyValves: 'hints', startGear: 'hints' } },
  ),
  rule(
    { parts: COMPRESSOR, states: ['humming'] },
    { for: { startGear: 'shows', badSupply: 'hints', overloadOpen: 'hints' } },
  ),
  rule(
    { parts: COMPRESSOR, states: ['hot'] },
    { for: { overloadOpen: 'hints', startGear: 'hints' } },
  ),
  rule(
    { parts: COMPRESSOR, states: ['notRunning'] },
    { for: { overloadOpen: 'hints', startGear: 'hints', stuckInDefrost: 'hints' } },
  ),
  rule(
    { parts: COMPRESSOR, states: ['running', 'ok'] },
    { against: { overloadOpen: 'shows', startGear: 'shows', stuckInDefrost: 'shows' } },
  ),
  // Fast after a pump-down it leaks back, slowly there is little to come back: either way it starts again and again.
  rule(
    { parts: COMPRESSOR, states: ['shortCycling'] },
    {
      for: {
        undercharge: 'hints',
        liquidLineRestriction: 'hints',
        leakingSolenoid: 'hints',
        leakyValves: 'hints',
      },
    },
  ),
  rule({ parts: START_GEAR, states: STOPPED }, { for: { startGear: 'shows' } }),
  rule({ parts: START_GEAR, states: ['ok'] }, { against: { startGear: 'shows' } }),
  rule(
    { parts: ['overload'], states: ['open', 'tripped'] },
    { for: { overloadOpen: 'shows', startGear: 'hints', badSupply: 'hints' } },
  ),
  rule({ parts: ['overload'], states: ['closed', 'ok'] }, { against: { overloadOpen: 'shows' } }),
  rule(
    { parts: ['fanControl'], states: ['open', 'notRunning'] },
    { for: { fanControlStuckOff: 'shows' }, against: { fanControlStuckOn: 'shows' } },
  ),
  rule(
    { parts: ['fanControl'], states: ['closed', 'running'] },
    { for: { fanControlStuckOn: 'shows' }, against: { fanControlStuckOff: 'shows' } },
  ),
  rule(
    { parts: ['fanControl'], states: ['failed'] },
    {
      for: { fanControlStuckOff: 'hints', fanControlStuckOn: 'hints', fanControlCycling: 'hints' },
    },
  ),
  rule(
    { parts: ['fanControl'], states: ['ok'] },
    {
      against: {
        fanControlStuckOff: 'shows',
        fanControlStuckOn: 'shows',
        fanControlCycling: 'shows',
      },
    },
  ),
  rule(
    { parts: ['fanControl', ...CONDENSER_FAN], states: ['shortCycling'] },
    { for: { fanControlCycling: 'shows' } },
  ),
  // Head that swings makes a valve hunt; so does vapour in the liquid.
  rule(
    { parts: ['expansionValve'], states: ['hunting'] },
    { for: { fanControlCycling: 'hints', flashGas: 'hints' } },
  ),
  rule(
    { parts: ['expansionValve'], states: ['ok'] },
    { against: { valveStarving: 'shows', valveFlooding: 'shows' } },
  ),
  rule(
    { parts: ['liquidLineSolenoid'], states: ['leaking', 'open'] },
    { for: { leakingSolenoid: 'shows' } },
  ),
  rule(
    { parts: ['liquidLineSolenoid'], states: ['ok'] },
    { against: { leakingSolenoid: 'shows', solenoidShut: 'shows' } },
  ),
  rule({ parts: ['evaporator'], states: ['stuckInDefrost'] }, { for: { stuckInDefrost: 'shows' } }),
  rule(
    { parts: ['evaporator'], states: ['defrosting', 'warm', 'hot'] },
    { for: { stuckInDefrost: 'hints' } },
  ),
  rule(
    { parts: ['evaporator'], states: ['defrosted', 'iced', 'cold'] },
    { against: { stuckInDefrost: 'shows' } },
  ),
  rule({ parts: ['defrostHeater'], states: ['running'] }, { for: { stuckInDefrost: 'hints' } }),
  rule(
    { parts: ['doorGasket', 'door', 'hinge'], states: ['failed', 'loose', 'missing', 'open'] },
    { for: { openBox: 'shows', heavyLoad: 'hints' } },
  ),
  rule({ parts: ['product'], states: ['hot'] }, { for: { openBox: 'hints', heavyLoad: 'shows' } }),
  rule(
    { parts: ['doorGasket', 'door'], states: ['ok', 'closed'] },
    { against: { openBox: 'hints' } },
  ),
  rule(
    { parts: ['highPressureSwitch'], states: ['tripped'] },
    { for: { dirtyCondenser: 'hints', condenserFanOut: 'hints', fanControlStuckOff: 'hints' } },
  ),
  rule(
    { parts: ['lowPressureSwitch'], states: ['tripped'] },
    {
      for: {
        undercharge: 'hints',
        liquidLineRestriction: 'hints',
        evaporatorFanOut: 'hints',
        leakingSolenoid: 'hints',
      },
    },
  ),
];

/** Its coil gone, a solenoid stands shut: whatever "open" was said of is the wire. */
export const DEAD_COIL = rule(
  { parts: ['liquidLineSolenoid'], states: ['open', 'burnt', 'failed'] },
  { for: { solenoidShut: 'shows' }, against: { leakingSolenoid: 'shows' } },
);

/** Bubbles go with vapour in the line, whatever put it there; a clear glass says only that there is liquid. */
export const SIGHT_GLASS_RULES: Readonly<
  Record<SightGlassId, Pick<FindingRule, 'for' | 'against'>>
> = {
  bubbling: {
    for: { undercharge: 'hints', flashGas: 'hints', liquidLineRestriction: 'hints' },
    against: { overcharge: 'hints' },
  },
  empty: { for: { undercharge: 'shows' }, against: { overcharge: 'shows' } },
  clear: { for: {}, against: { undercharge: 'hints', flashGas: 'hints' } },
};
