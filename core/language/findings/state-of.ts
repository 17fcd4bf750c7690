import { wordBefore, wordBehind } from '../words/clause-start.ts';
import { cameOffElse } from '../words/comes-off.ts';
import { finding } from './finding-of.ts';
import type { PartId } from '../../terms/names.ts';
import { pointsAtOne } from '../../terms/which-one.ts';
import type { Frame, Means } from '../rule.ts';
import { numberIn, partId, stateId, tagsIn } from '../slots.ts';
import { BREAKS, stateAt, TELLS, WORKS } from '../words/state-at.ts';

/** "Pull the bulb off" is no bulb that stands still. */
const saysOnlyOff = (part: PartId, frame: Frame): boolean =>
  ![...WORKS, ...BREAKS, ...TELLS].includes(part) && /\boff$/i.test(frame.wordsOf(frame.span));

/** "Till I got a fan on it", "compressor's on the roof": what is put or stands somewhere does not run there. */
const saysOnlyOn = (frame: Frame): boolean => {
  const words = frame.wordsOf(frame.span);
  const { to } = frame.span;
  return (
    / on$/i.test(words) &&
    (/^an? /i.test(words) || PLACE.test(frame.wordsOf({ from: to, to: to + 1 })))
  );
};
const PLACE = /^(?:the|a|an|top|its|it|my|our|their|this|that|these|those)$/i;

/** "Red light on" is no lamp that lights a box. */
const isSignal = (frame: Frame): boolean =>
  SIGNAL.test(`${wordBefore(frame)} ${frame.wordsOf(frame.span)}`);
const SIGNAL =
  /\b(?:red|green|yellow|amber|orange|blue|fault|alarm|status|trouble|indicator|warning)(?:'s)? (?:light|lamp|led)/i;

/** "Coil" alone is the condenser's where it is dirty, and where it has frost the evaporator's. */
export const onlyFrosts = (part: PartId, frame: Frame): PartId =>
  part === 'condenser' && FROSTS.test(frame.wordsOf(frame.span)) ? 'evaporator' : part;
const FROSTS =
  /^(?!.*(?:condens|outdoor)).*\b(?:ic(?:e|ed|ing)|frost|froze|frozen|frosting|frosted)\b/i;

/** A part and the state it is said to be in, where it can be. */
export const stateOf =
  (slot: 'state' | 'doing'): Means =>
  (tags, frame) => {
    const named = partId(tags['part']);
    const said = stateId(tags[slot]);
    const part = named === null ? null : onlyFrosts(named, frame);
    const state = part === null || said === null ? null : stateAt(part, said);
    if (state === 'loose' && cameOffElse(frame)) return null;
    if (part !== null && COILS.has(part) && isSplit(frame)) return null;
    if (state === 'missing' && MISSES.test(wordBehind(frame))) return null;
    if (part !== null && state === 'notRunning' && saysOnlyOff(part, frame)) return null;
    if (state === 'running' && (saysOnlyOn(frame) || (part === 'light' && isSignal(frame))))
      return null;
    return part === null || state === null ? null : { findings: [finding(part, state, frame)] };
  };

/** "Condenser split's way up": by how much it differs from the air, and no tear. */
const isSplit = (frame: Frame): boolean =>
  /(?<!(?: (?:is|was|are)|['’]s)) split$/i.test(frame.wordsOf(frame.span)) &&
  !/^(?:open|in|down|at the|along)\b/i.test(wordBehind(frame));
const COILS: ReadonlySet<PartId> = new Set<PartId>(['condenser', 'evaporator']);

/** "Motor's missing a bolt": what is missed is told behind it. */
const MISSES = /^(?:a|an|one|its|some|half|two|most|part)$/;

/** "Product forty one, looks good": what has a temperature is not told apart by numbers, and nothing stands there in dozens. */
export const ofOneOfFew: Means = (tags, frame) => {
  const which = numberIn(tagsIn(tags['which'])?.['number']) ?? 0;
  const words = frame.wordsOf(frame.span);
  const isNumbered = /\bnumber\b/i.test(words);
  if (pointsAtOne(`${wordBefore(frame)} ${words}`)) return null;
  if (!isNumbered && (which > MOST_OF_A_KIND || HAS_VALUE.has(partId(tags['part'])))) return null;
  return stateOf('state')(tags, frame);
};
const MOST_OF_A_KIND = 12;
const HAS_VALUE: ReadonlySet<PartId | null> = new Set<PartId>([
  ...(['product', 'suctionLine', 'liquidLine', 'dischargeLine'] as const),
]);
