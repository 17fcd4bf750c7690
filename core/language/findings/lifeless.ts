import type { Means } from '../rule.ts';
import { pointsAtOne } from '../../terms/which-one.ts';
import { partId } from '../slots.ts';
import { wordBefore, wordBehind } from '../words/clause-start.ts';
import { TURNS } from '../words/fans.ts';
import { BREAKS } from '../words/state-at.ts';
import { finding } from './finding-of.ts';

/** A part that is dead, out or down: what turns stands still, what breaks the power is open, and anything else has failed. */
export const lifeless: Means = (tags, frame) => {
  const part = partId(tags['part']);
  // "Out of balance", "out of its clamp": it may well run.
  if (part === null || /^of$/.test(wordBehind(frame))) return null;
  // "The condenser fan's fine but the evaporator one is dead" tells of no coil.
  if (pointsAtOne(`${wordBefore(frame)} ${frame.wordsOf(frame.span)}`)) return null;
  const state = TURNS.includes(part) ? 'notRunning' : 'failed';
  // An overload that is out will come back in.
  const found = part === 'overload' ? 'tripped' : state;
  return { findings: [finding(part, BREAKS.includes(part) ? 'open' : found, frame)] };
};
