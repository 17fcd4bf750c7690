import type { CauseId } from '../../terms/causes.ts';

/**
 * How often each is found on a call about a warm box, before anything is read (from memory: no count was found in
 * print; they need not add up to one). They were tuned on the 38 published cases, so the 33 that these put first
 * flatter: with even priors it is 25, with each source held out of the tuning 30. Halving or doubling any one of them changes the first place of no
 * published case but those that the sensitivity test names.
 */
export const PRIORS: Readonly<Record<CauseId, number>> = {
  undercharge: 0.12,
  overcharge: 0.09,
  dirtyCondenser: 0.1,
  condenserFanOut: 0.06,
  fanControlStuckOff: 0.01,
  hotRoom: 0.04,
  nonCondensables: 0.02,
  liquidLineRestriction: 0.07,
  valveStarving: 0.05,
  valveFlooding: 0.04,
  capillaryBlocked: 0.04,
  flashGas: 0.01,
  icedCoil: 0.08,
  evaporatorFanOut: 0.06,
  defrostFailed: 0.05,
  leakyValves: 0.05,
  suctionRestriction: 0.01,
  heavyLoad: 0.06,
  openBox: 0.05,
  lowAmbient: 0.02,
  stuckUnloaded: 0.005,
  badSupply: 0.01,
  fanControlStuckOn: 0.004,
  fanControlCycling: 0.015,
  stuckInDefrost: 0.01,
  leakingSolenoid: 0.015,
  solenoidShut: 0.04,
  startGear: 0.03,
  overloadOpen: 0.03,
  nothingWrong: 0.12,
};

/** Something that no row describes: it keeps its weight when every row is contradicted. */
export const SOMETHING_ELSE = 0.05;
