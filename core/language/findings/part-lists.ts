import type { PartId } from '../../terms/names.ts';
import { wordBehind } from '../words/clause-start.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import { NAME_WORDS } from '../names/name-words.ts';
import { HAS_CAP, isScrewedOn } from '../words/caps.ts';
import { spelledOut } from '../words/own-reading.ts';
import type { Frame, Means } from '../rule.ts';
import { WordSet } from '../words/word-set.ts';

/** "Replaced the gasket and compressor amps twelve": what stands behind the last part is told of that part alone. */
const TELLS = new RegExp(
  `^(?:${[
    "is|'s|are|'re|was|isn't|aren't|has|needs|won't|not|keeps|went|looks|sounds|seems|feels|smells|works|rattles|hums|buzzes|leaks|sticks",
    'did|does|never|would|could|says|said|came|comes|goes|blew|blows|trips|failed|quit|stopped|reads|needed|should|has|had|wants|ought|must|will|can|tripped|tripping|leaking|stuck|burnt|frozen|iced|plugged|shot|looks?',
    'amps?|volts?|voltage|current|ohms|temp|temperature|pulling|drawing|draws|pulls|reads|reading|shows|running|tests|tested|checks|rated|set|at',
    'fans?|motor|driers?|dryers?|coil|heater|valve|line|switch|relay|pan|gasket|blade|control|stat|cut|hinge|lid|board|bulb|closer|latch|fuse|contacts|terminals?|points|windings?|sensor|probe|screen|cable',
    [...ONES, ...TEENS, ...TENS].join('|'),
  ].join('|')})$|^\\d`,
  'i',
);

/** Whether the words up to there are a list of parts that ends with them. */
export const endsTheList = (frame: Frame): boolean => {
  const next = wordBehind(frame);
  return !TELLS.test(next) && !(DONE.test(next) && !isDoneTo(frame));
};

/** "Reset the switch and condenser brushed": done at that part; "and the condenser, replaced the drier" at another. */
const DONE = /^[a-z]+ed$/i;
const isDoneTo = (frame: Frame): boolean => {
  const { to } = frame.span;
  const [, next = ''] = frame.wordsOf({ from: to, to: to + 2 }).split(' ');
  return /^(?:the|a|an|my|both|all|some|it|new|old)$/i.test(next) || MANY.hasWord(next);
};
const MANY = new WordSet(NAME_WORDS);

/** Other things that are named by the part that they are on, and parts whose name goes on. */
const ON_PARTS =
  /^(?:closers?|handles?|latch|sweep|frames?|glass|brackets?|mounts?|covers?|housing|knobs?|shroud|guards?|grilles?|harness|kit|springs?|rails?|track|rollers?|pads?|feet|grommets?|fans?|motors?|blades?|dryers?|gaskets?|hinges?)$/i;

/** "TXV bulb came loose" tells of the bulb. */
export const isWholeMetering = (frame: Frame): boolean =>
  !/^(?:bulb|is|'s|was|has|won't|isn't|came)$/i.test(wordBehind(frame));

/** "Set a timer for twenty", "I need a timer for ten minutes": asked of us, and no clock of the unit. */
export const isTimerOfOurs = (frame: Frame): boolean => {
  const words = frame.wordsOf(frame.span);
  if (!/ timer$/i.test(words)) return false;
  const { to } = frame.span;
  return SET_FOR_US.test(words) || FOR_SO_LONG.test(frame.wordsOf({ from: to, to: to + 2 }));
};
const FOR_SO_LONG = new RegExp(
  `^(?:for|of|on) (?:\\d|an? |half|${[...ONES, ...TEENS, ...TENS].join('|')})`,
  'i',
);
const SET_FOR_US = /\b(?:set|start|run) (?:me )?(?:a|an|another) timer$/i;

/** A job that is called by its part: "a coil cleaning", "a thermostat adjustment". */
const JOBS = /^(?:cleaning|washing|wash|brushing|adjustment|inspection|repair|rebuild)$/i;

/** "Needs a new door closer" is said of no door, and "quote him a coil cleaning" of no new coil. */
export const nameGoesOn = (frame: Frame): boolean =>
  JOBS.test(wordBehind(frame)) || (ON_PARTS.test(wordBehind(frame)) && !isNextToldOf(frame));

/** "Condenser needs to be cleaned gasket needs replacing": what stands behind is told of by itself, unless it is on a door. */
function isNextToldOf(frame: Frame): boolean {
  const { to } = frame.span;
  const [next = '', verb = ''] = spelledOut(frame.wordsOf({ from: to, to: to + 2 })).split(' ');
  return ON_PARTS.test(next) && TOLD_OF.test(verb) && !HAS_PARTS.test(frame.wordsOf(frame.span));
}
const TOLD_OF = /^(?:is|are|was|has|needs|should|ought|wants|looks|must|will|replaced|cleaned)$/i;
const HAS_PARTS = /\b(?:doors?|lids?|fans?|drawers?)$/i;

export const unlessNameGoesOn =
  (means: Means): Means =>
  (tags, frame) =>
    nameGoesOn(frame) || isTimerOfOurs(frame) ? null : means(tags, frame);

/**
 * "New relay and cap": beside a start relay the cap is the start cap, unless it is called something else, and beside a
 * core or a valve it is what screws onto it.
 */
export function capBeside(
  parts: readonly (PartId | null)[],
  words: string,
): readonly (PartId | null)[] {
  if (/\b(?:run|fan|dual|motor)\b/i.test(words)) return parts;
  const isScrewed = parts.some((part) => HAS_CAP.has(part)) && isScrewedOn('runCapacitor', words);
  if (!isScrewed && !parts.includes('startRelay')) return parts;
  return parts.map((part) =>
    part === 'runCapacitor' ? (isScrewed ? 'caps' : 'startCapacitor') : part,
  );
}
