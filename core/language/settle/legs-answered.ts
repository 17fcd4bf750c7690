import type { Context } from '../context.ts';
import { LEG_PAIRS } from '../../terms/three-phase.ts';
import type { DraftUtterance } from './told.ts';

const VOLTS =
  /^(?:(?:yes|yeah|yep|yup|correct|right|sure)[ ,]*)?(?:(?:that's|those are|they're|it's) )?(?:(?:the |my )?(?:volts|voltages?|line volts|leg volts))?[ ,]*(?:line to line|leg to leg|phase to phase|on the legs|across the legs|between the legs)?[.!]?$/i;

/** "Yes", "volts", "leg to leg": of the three numbers that were asked about just now. */
export function tellLegs(all: DraftUtterance, { openLegs }: Context): void {
  if (openLegs === null) return;
  const isYes = all.commands.some(({ do: what }) => what === 'yes');
  const words = all.text.trim();
  if (!isYes && (words === '' || !VOLTS.test(words))) return;
  all.commands = all.commands.filter(({ do: what }) => what !== 'yes');
  all.readings = LEG_PAIRS.flatMap((place, at) => {
    const value = openLegs[at];
    const unit = { unit: 'V', unitFrom: 'said' } as const;
    return value === undefined ? [] : [{ quantity: 'voltage', value, ...unit, place, words }];
  });
}
