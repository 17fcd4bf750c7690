import type { VisitState } from '../../visit/state.ts';
import type { Found } from '../found.ts';
import type { NextCheck } from '../verdict.ts';
import { contactLoss, readPoles } from './contact-loss.ts';
import { findLostLeg, lostLeg } from './lost-leg.ts';

/** What the supply itself asks for, before the leads go on along the controls and before any cause is weighed. */
export function circuitStep(state: VisitState): Found<NextCheck> | null {
  const leg = lostLeg(state);
  if (leg) return findLostLeg(leg);
  const contacts = contactLoss(state);
  return contacts && readPoles(contacts);
}
