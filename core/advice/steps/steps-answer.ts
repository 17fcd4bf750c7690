import type { StepTo } from '../../language/utterance.ts';
import {
  type ProcedureId,
  PROCEDURES,
  type ProcedureTaskId,
  stepAt,
} from '../../terms/procedures.ts';
import type { VisitState } from '../../visit/state.ts';
import type { Known, Needs, Refused, Verdict } from '../verdict.ts';
import { barOf, BARS } from './bars.ts';
import { STEPS } from './step-data.ts';

/** The first step of a job, or what must be known before it, or why not on this unit. */
export function beginSteps(task: ProcedureTaskId, state: VisitState): Verdict {
  const procedure = procedureOf(task, state);
  const bar = barred(procedure ?? task, state);
  if (bar) return bar;
  const need = neededFor(task, state);
  if (need) return need;
  return procedure === null ? NEEDS_VALVES : (stepOf(procedure, 1, 'begun') ?? NO_STEPS);
}

const BY: Record<StepTo, number> = { next: 1, back: -1, again: 0, which: 0 };

/** What was found since is weighed anew at every step. */
export function moveSteps(to: StepTo, state: VisitState): Verdict {
  if (state.steps === null) return NO_STEPS;
  const { procedure, number } = state.steps;
  const bar = barred(procedure, state);
  if (bar) return bar;
  const wanted = Math.max(1, number + BY[to]);
  const told = to === 'which' ? 'asked' : 'moved';
  return stepOf(procedure, wanted, told) ?? { ...READ, answer: 'stepsDone', procedure };
}

function procedureOf(task: ProcedureTaskId, { unit }: VisitState): ProcedureId | null {
  if (task !== 'gaugesOn' && task !== 'gaugesOff') return task;
  if (unit.valves === null) return null;
  if (unit.valves === 'serviceValves') return task;
  return task === 'gaugesOn' ? 'gaugesOnFittings' : 'gaugesOffFittings';
}

function barred(procedure: ProcedureId, state: VisitState): Refused | null {
  const bar = barOf(procedure, state);
  if (bar === null) return null;
  const { source } = BARS[bar];
  return { kind: 'refused', about: null, reason: 'stepsBarred', procedure, bar, source };
}

/** Where the gas decides, it is asked for; where the receiver does, the metering device. */
function neededFor(task: ProcedureTaskId, { unit }: VisitState): Needs | null {
  const isKnown = unit.refrigerant !== null || unit.chargeDoubt !== null;
  if (NEEDS_GAS.has(task) && !isKnown) return { kind: 'needs', about: null, need: 'refrigerant' };
  if (task === 'pumpDown' && unit.metering === null) {
    return { kind: 'needs', about: null, need: 'metering' };
  }
  return null;
}

const NEEDS_GAS: ReadonlySet<ProcedureTaskId> = new Set<ProcedureTaskId>([
  'gaugesOn',
  'gaugesOff',
  'pumpDown',
  'recovery',
  'evacuation',
]);

const NEEDS_VALVES: Needs = { kind: 'needs', about: null, need: 'valves' };
const NO_STEPS: Refused = { kind: 'refused', about: null, reason: 'noStepsRunning' };
const READ = { kind: 'known', formula: null, inputs: [], source: null, cautions: [] } as const;

function stepOf(procedure: ProcedureId, number: number, told: StepKnown['told']): StepKnown | null {
  const step = stepAt(procedure, number);
  if (step === null) return null;
  const { caution, source } = STEPS[step];
  const of = PROCEDURES[procedure].steps.length;
  return { ...READ, source, answer: 'step', procedure, step, number, of, caution, told };
}

type StepKnown = Extract<Known, { readonly answer: 'step' }>;
