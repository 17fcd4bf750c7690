import type { CauseId } from '../../terms/causes.ts';
import type { PartId, WorkKindId } from '../../terms/names.ts';
import type { CheckId } from '../verdict.ts';
import type { Cost } from './check-costs.ts';
import type { Feed } from './matrix-row.ts';

export interface Check extends Cost {
  readonly check: CheckId;
  /** How often it finds what it looks for, by the cause that is there (from memory); others now and then. */
  readonly finds: Partial<Record<CauseId, number>>;
  /** Not to be asked for again once one of these was reported on. */
  readonly parts: readonly PartId[];
  readonly doneBy?: WorkKindId;
  readonly feed?: Feed;
}

/** What a check finds where nothing of the kind is wrong. */
export const FALSE_FIND = 0.07;

/** Minutes, risks and hits are common practice or from memory: no source gives them. */
export const CHECKS: readonly Check[] = [
  {
    check: 'lookCondenser',
    minutes: 1,
    risk: 'look',
    finds: { dirtyCondenser: 0.95 },
    parts: ['condenser'],
  },
  {
    check: 'lookCondenserFan',
    minutes: 1,
    risk: 'look',
    finds: { condenserFanOut: 0.97, fanControlStuckOff: 0.9 },
    parts: ['condenserFan', 'condenserFanMotor'],
  },
  {
    check: 'lookEvaporatorFan',
    minutes: 1,
    risk: 'look',
    finds: { evaporatorFanOut: 0.97 },
    parts: ['evaporatorFan', 'evaporatorFanMotor'],
  },
  {
    check: 'lookEvaporator',
    minutes: 3,
    risk: 'look',
    finds: { icedCoil: 0.95, defrostFailed: 0.9, evaporatorFanOut: 0.5 },
    parts: ['evaporator'],
  },
  {
    check: 'lookDoors',
    minutes: 1,
    risk: 'look',
    finds: { openBox: 0.85, heavyLoad: 0.5 },
    parts: ['doorGasket', 'door', 'product'],
  },
  {
    check: 'lookSightGlass',
    minutes: 1,
    risk: 'look',
    finds: { undercharge: 0.85, flashGas: 0.85, liquidLineRestriction: 0.5 },
    parts: ['sightGlass'],
    feed: 'valve',
  },
  {
    check: 'feelDrier',
    minutes: 2,
    risk: 'touch',
    finds: { liquidLineRestriction: 0.85 },
    parts: ['filterDrier'],
  },
  {
    check: 'checkInletAir',
    minutes: 2,
    risk: 'look',
    finds: { hotRoom: 0.9, lowAmbient: 0.5 },
    parts: [],
  },
  {
    check: 'checkFanControl',
    minutes: 5,
    risk: 'live',
    finds: { fanControlStuckOff: 0.9, fanControlStuckOn: 0.85, fanControlCycling: 0.85 },
    parts: ['fanControl'],
  },
  { check: 'checkChargeRecord', minutes: 5, risk: 'look', finds: { overcharge: 0.6 }, parts: [] },
  {
    check: 'searchLeaks',
    minutes: 20,
    risk: 'look',
    finds: { undercharge: 0.8 },
    parts: ['joint', 'accessFitting'],
    doneBy: 'leakCheck',
  },
  {
    check: 'checkBulb',
    minutes: 3,
    risk: 'touch',
    finds: { valveFlooding: 0.7 },
    parts: ['expansionValveBulb'],
    feed: 'valve',
  },
  {
    check: 'warmBulb',
    minutes: 10,
    risk: 'touch',
    finds: { valveStarving: 0.85 },
    parts: ['expansionValve'],
    feed: 'valve',
  },
  {
    check: 'defrostHeaters',
    minutes: 8,
    risk: 'live',
    finds: { defrostFailed: 0.85 },
    parts: ['defrostHeater', 'defrostTimer', 'defrostTermination'],
  },
  {
    check: 'compressorTest',
    minutes: 20,
    risk: 'disturbs',
    finds: { leakyValves: 0.85 },
    parts: [],
  },
  {
    check: 'standstillTest',
    minutes: 45,
    risk: 'disturbs',
    finds: { nonCondensables: 0.9 },
    parts: [],
  },
  {
    check: 'suctionDrop',
    minutes: 10,
    risk: 'gauges',
    finds: { suctionRestriction: 0.9 },
    parts: [],
  },
  {
    check: 'equaliseTime',
    minutes: 10,
    risk: 'disturbs',
    finds: { capillaryBlocked: 0.8 },
    parts: ['capillaryTube'],
    feed: 'fixed',
  },
  {
    check: 'supplyAtStart',
    minutes: 3,
    risk: 'live',
    finds: { badSupply: 0.85 },
    parts: [],
  },
  {
    check: 'iceBulb',
    minutes: 10,
    risk: 'touch',
    finds: { valveFlooding: 0.75 },
    parts: ['expansionValve'],
    feed: 'valve',
  },
  {
    check: 'lookDefrost',
    minutes: 1,
    risk: 'look',
    finds: { stuckInDefrost: 0.95 },
    parts: ['defrostTimer', 'defrostTermination'],
  },
  {
    // It comes back fast through a solenoid or valves that leak, slowly where there is little to come back.
    check: 'timeRise',
    minutes: 10,
    risk: 'disturbs',
    finds: { leakingSolenoid: 0.85, leakyValves: 0.6 },
    parts: ['liquidLineSolenoid'],
  },
  {
    check: 'testStartGear',
    minutes: 8,
    risk: 'touch',
    finds: { startGear: 0.85 },
    parts: ['startRelay', 'startCapacitor'],
  },
  {
    // A maker gives 45 to 60 minutes for an internal overload to reset.
    check: 'coolOverload',
    minutes: 60,
    risk: 'touch',
    finds: { overloadOpen: 0.9 },
    parts: ['overload'],
  },
];
