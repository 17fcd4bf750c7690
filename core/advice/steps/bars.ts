import { FLUIDS } from '../../fluids/fluids.ts';
import { type ProcedureId, STEP_BARS, type StepBarId } from '../../terms/procedures.ts';
import type { VisitState } from '../../visit/state.ts';
import { standingFindings } from '../standing-findings.ts';
import { dischargeShutWhileRunning, liquidIsTrapped, liquidReturns } from '../hazards.ts';

interface Bar {
  readonly of: readonly ProcedureId[];
  readonly holds: (state: VisitState) => boolean;
  readonly source: string;
}

/** What draws the hoses' charge through the running compressor. */
const THROUGH_THE_COMPRESSOR: readonly ProcedureId[] = [
  'gaugesOff',
  'gaugesOffFittings',
  'pumpDown',
];
const GAUGES: readonly ProcedureId[] = ['gaugesOn', 'gaugesOnFittings'];
const WITH_A_MACHINE: readonly ProcedureId[] = ['recovery', 'evacuation'];
const MOVES_GAS = [...THROUGH_THE_COMPRESSOR, ...GAUGES, ...WITH_A_MACHINE];

export const BARS: Record<StepBarId, Bar> = {
  flammableOrToxic: {
    of: MOVES_GAS,
    holds: ({ unit: { refrigerant } }) =>
      refrigerant !== null && FLUIDS[refrigerant].safetyGroup !== 'A1',
    source:
      'achrnews.com/articles/166073, service tips for R-290; mda.state.mn.us, ammonia; safety group by ANSI/ASHRAE Standard 34',
  },
  carbonDioxide: {
    of: MOVES_GAS,
    holds: ({ unit: { refrigerant } }) => refrigerant === 'R-744',
    source:
      'standstill near 853 psia at 70 °F by the equation of state; hose ratings: common practice',
  },
  mixedCharge: {
    of: THROUGH_THE_COMPRESSOR,
    holds: ({ unit: { chargeDoubt } }) => chargeDoubt !== null,
    source: 'one gas to a cylinder: g-wonlinetextbooks.com, page 285; the rest is common practice',
  },
  frontSeatedDischarge: {
    of: [...MOVES_GAS, 'pressureTest', 'valvesAndCaps'],
    holds: dischargeShutWhileRunning,
    source: 'no relief between piston and valve: from memory of makers’ manuals',
  },
  trappedLiquid: {
    of: [...THROUGH_THE_COMPRESSOR, 'recovery'],
    holds: liquidIsTrapped,
    source: 'a condensing-unit maker’s manual; common practice',
  },
  frozenSuction: {
    of: THROUGH_THE_COMPRESSOR,
    holds: (state) =>
      standingFindings(state).some(
        ({ finding: { part, state: found } }) => FREEZES.has(part) && found === 'iced',
      ),
    source: 'common practice',
  },
  liquidReturning: {
    of: THROUGH_THE_COMPRESSOR,
    holds: liquidReturns,
    source: 'common practice',
  },
  noReceiver: {
    of: ['pumpDown'],
    holds: ({ unit: { metering } }) => metering === 'capTube',
    source: 'common practice: a capillary tube is charged critically and has no receiver',
  },
};

const FREEZES: ReadonlySet<string> = new Set([
  'evaporator',
  'suctionLine',
  'compressor',
  'accumulator',
  'suctionServiceValve',
]);

/** The first reason, by danger, that these steps are not to be done on this unit as it stands. */
export function barOf(procedure: ProcedureId, state: VisitState): StepBarId | null {
  return STEP_BARS.find((id) => BARS[id].of.includes(procedure) && BARS[id].holds(state)) ?? null;
}
