import type { VisitState } from '../../visit/state.ts';
import { worked, type Found } from '../found.ts';
import type { NextCheck } from '../verdict.ts';
import { circuitStep } from '../circuit/circuit-step.ts';
import { beliefOf } from './causes-of.ts';
import { nextCautions } from './check-costs.ts';
import { outsideDefrost } from './defrost-state.ts';
import { gather } from './gather.ts';
import { type Lacks, nextOf } from './next-of.ts';

/** What to do next, with the readings that the choice stands on. */
export function nextCheckOf(visit: VisitState, lacks: Lacks | null = null): Found<NextCheck> {
  const state = outsideDefrost(visit);
  const step = circuitStep(state);
  if (step) return step;
  const gathered = gather(state);
  const inputs = [...gathered.evidence, ...gathered.around].flatMap((each) => each.inputs);
  const next = nextOf(gathered, beliefOf(gathered, state), { state, lacks });
  return worked(next, {
    cautions: nextCautions(next),
    inputs: [...new Map(inputs.map((input) => [input.name, input])).values()],
    sources: [
      'expected information by minutes and risk; minutes, risks and hits: common practice and from memory',
    ],
  });
}
