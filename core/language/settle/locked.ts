import type { PartId } from '../../terms/names.ts';
import type { Work } from '../utterance.ts';
import type { DraftUtterance } from './told.ts';

/** "Locked it out": what is only switched off, or only tagged, has no lock on it. */
export function tellLocked(all: DraftUtterance, text: string): void {
  if (all.work.some(isSwitchedOff) && toldLocked(text)) all.work = all.work.map(withLock);
}

const withLock = (work: Work): Work => (isSwitchedOff(work) ? { ...work, locked: true } : work);

const TAKE_A_LOCK: ReadonlySet<PartId> = new Set<PartId>(['disconnect', 'breaker', 'plug']);
const isSwitchedOff = ({ did, part }: Work): boolean =>
  did === 'isolate' && part !== null && TAKE_A_LOCK.has(part);

/** Not a compressor that is locked up, and no door. */
const LOCK =
  /\b(?:lock(?:ed|s)?(?! (?:rotor|up\b|(?:the|that|this|my) (?!disconnect|breaker|switch|power|plug)))|padlock(?:ed)?|lockout|loto)\b/i;
/** "Haven't locked it out yet", "no lock on it", "before I lock it", "the lock is off" */
const NO_LOCK =
  /\b(?:not|n't|haven't|didn't|never|no|without|before|gonna|going to|need(?:s)? (?:to|a)|will|forgot)\b[^,.]{0,12}\block|\block(?:out)?(?: is|'s)? (?:off|back)\b/i;
const toldLocked = (text: string): boolean => LOCK.test(text) && !NO_LOCK.test(text);
