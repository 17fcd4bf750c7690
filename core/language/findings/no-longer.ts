import { startsClause, wordBehind } from '../words/clause-start.ts';
import { finding } from './finding-of.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { partId, stateId } from '../slots.ts';
import type { PartId } from '../../terms/names.ts';
import type { Finding } from '../utterance.ts';

const ok: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null ? null : { findings: [finding(part, 'ok', frame)] };
};

/** Only as a whole: "not leaking yet", "not leaking enough to see" clears nothing. */
const isWhole = (frame: Frame): boolean =>
  frame.endsAtPause || /^(?:and|but|so|now)$/.test(wordBehind(frame));

/** What was wrong with it and no longer is; what it does, and how it stands, is told by others. */
const CEASED: readonly Finding['state'][] = [
  ...(['noisy', 'leaking', 'loose', 'dirty', 'plugged', 'iced', 'humming', 'hunting'] as const),
  ...(['hot', 'wet', 'oily', 'tripped', 'failed'] as const),
];

const noLonger: Means = (tags, frame) => {
  const state = stateId(tags['state']);
  return CEASED.some((each) => each === state) && isWhole(frame) ? ok(tags, frame) : null;
};

/** What refrigerant, oil or water gets out of; a compressor or a coil that does not leak is not sound for that. */
const TIGHT: ReadonlySet<PartId> = new Set<PartId>([
  ...(['serviceValve', 'suctionServiceValve', 'dischargeServiceValve', 'kingValve'] as const),
  ...(['accessFitting', 'joint', 'hose', 'filterDrier', 'receiver', 'accumulator'] as const),
  ...(['liquidLine', 'suctionLine', 'dischargeLine', 'sightGlass', 'oilSeparator'] as const),
  ...(['drainPan', 'drainLine', 'waterValve', 'liquidLineSolenoid', 'headPressureValve'] as const),
]);

const isTight: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part !== null && TIGHT.has(part) && isWhole(frame) ? ok(tags, frame) : null;
};

/** Kept as it was said of what else it may be wrong with. */
const notLeaking: Means = (tags, frame) =>
  isTight(tags, frame) ?? (isWhole(frame) ? { remarks: [frame.wordsOf(frame.span)] } : null);

/** "No leaks at the service valve", where nothing else is named with it. */
const noLeaksAt: Means = (tags, frame) => (startsClause(frame) ? isTight(tags, frame) : null);

/** Where wet tells of a leak: a drain line that is dry may as well be plugged. */
const DRY: ReadonlySet<PartId> = new Set<PartId>([
  ...(['serviceValve', 'suctionServiceValve', 'dischargeServiceValve', 'kingValve'] as const),
  ...(['accessFitting', 'joint', 'hose', 'drainPan', 'waterValve'] as const),
]);
const isDry: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part !== null && DRY.has(part) && isWhole(frame) ? ok(tags, frame) : null;
};

/** Of the unit no part is sound for it, and nothing was found. */
const ofTheUnit: Means = (_tags, frame) =>
  isWhole(frame) ? { remarks: [frame.wordsOf(frame.span)] } : {};

/** "So it's not the probe": what was held to be bad a moment ago is not. */
const notThatOne: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part !== null && part === frame.context.foundBad && isClause(frame)
    ? ok(tags, frame)
    : null;
};
const isClause = (frame: Frame): boolean => startsClause(frame);

const NOW = '(anymore|any more|any longer|now|at all now|at all anymore)';
const AT_ALL = '[(at all|anywhere|a bit|one bit|a drop|now|anymore|any more|any longer)]';
const SEE =
  '[(there is|there are|i see|i have|we have|i have got|and|(i|we) [(still|do not|can not|did not|am not|are not)] (see|seeing|find|have|got|getting|found|got))]';
const THERE = '(on|at|in|around|anywhere on|anywhere around|near|from|out of|off)';

/** What was wrong and is so no longer, and what was looked at for a leak and has none. */
export const NO_LONGER_RULES: readonly Rule[] = [
  rule(
    '[(so|ok|well|then|turns out)] (it|that) (is|was) not <the> <part> [(after all|then|at all)]',
    notThatOne,
    { unheard: true, examples: [] },
  ),
  rule(
    `<the> <part> ((is|are|was|were) not <very> <state> ${NOW}|(is|are|was|were) no longer <very> <state>)`,
    noLonger,
    { unheard: true, examples: ['compressor is not noisy anymore'] },
  ),
  rule(
    `<the> (unit|system|machine|box|cooler|freezer|case|walk in|reach in) (is|was) (not|no longer) (short cycling|cycling on and off|kicking on and off|icing up|icing over|freezing up|tripping [(out|off)]|making noise|leaking|rattling) ${AT_ALL}`,
    ofTheUnit,
    { unheard: true, examples: ['unit is not short cycling anymore'] },
  ),
  rule(
    `<the> <part> (is|are|was|were) not (leaking|dripping|weeping|seeping) [(by|oil|gas|refrigerant|water)] ${AT_ALL}`,
    notLeaking,
    { unheard: true, examples: ['king valve is not leaking'] },
  ),
  rule(
    `${SEE} (no|zero|any|not any|not a|without [any]) (leak|leaks|sign of a leak|signs of a leak|drips) ${THERE} <the> [<bit>] <part> ${AT_ALL}`,
    noLeaksAt,
    { unheard: true, examples: ['no leaks at the service valve'] },
  ),
  rule(
    `<the> <part> (is|are|was|were|looks|feels) [(nice and|good and|bone|totally|completely|all|still|now)] dry [(now|anymore|as a bone|again)] [<pause>] [[and] [it is] (not (leaking|dripping|weeping)|no (leak|leaks|drips|oil|water))] ${AT_ALL}`,
    isDry,
    { unheard: true, examples: ['drain pan is dry and not leaking'] },
  ),
];
