import type { PartId } from '../terms/names.ts';
import { wordBehind } from './clause-start.ts';
import { ONES, TEENS, TENS } from './number-words.ts';
import type { Frame, Means } from './rule.ts';

/** "Replaced the gasket and compressor amps twelve": what stands behind the last part is told of that part alone. */
const TELLS = new RegExp(
  `^(?:${[
    "is|'s|are|'re|was|isn't|aren't|has|needs|won't|not|keeps|went|looks|sounds|seems|feels|smells|works|rattles|hums|buzzes|leaks|sticks",
    'amps?|volts?|voltage|current|ohms|temp|temperature|pulling|drawing|draws|pulls|reads|reading|shows|running|tests|tested|checks|rated|set|at',
    'fans?|motor|coil|heater|valve|line|switch|relay|pan|gasket|blade|control|stat|cut|hinge|lid|board|bulb|closer|latch|fuse|contacts',
    [...ONES, ...TEENS, ...TENS].join('|'),
  ].join('|')})$|^\\d`,
  'i',
);

/** Whether the words up to there are a list of parts that ends with them. */
export const endsTheList = (frame: Frame): boolean => !TELLS.test(wordBehind(frame));

/** Other things that are named by the part that they are on, and parts whose name goes on. */
const ON_PARTS =
  /^(?:closers?|handles?|latch|sweep|frames?|glass|brackets?|mounts?|covers?|housing|knobs?|shroud|guards?|grilles?|harness|kit|springs?|rails?|track|rollers?|pads?|feet|grommets?|fans?|motors?|blades?|dryers?|gaskets?|hinges?)$/i;

/** "Needs a new door closer" is said of no door. */
export const nameGoesOn = (frame: Frame): boolean => ON_PARTS.test(wordBehind(frame));

export const unlessNameGoesOn =
  (means: Means): Means =>
  (tags, frame) =>
    nameGoesOn(frame) ? null : means(tags, frame);

/** "New relay and cap": beside a start relay the cap is the start cap, unless it is called something else. */
export const capBeside = (
  parts: readonly (PartId | null)[],
  words: string,
): readonly (PartId | null)[] =>
  parts.includes('startRelay') && !/\b(?:run|fan|dual|motor)\b/i.test(words)
    ? parts.map((part) => (part === 'runCapacitor' ? 'startCapacitor' : part))
    : parts;
