/** The closed classes of small words that change what a sentence says about a number. */

/** Which way a difference goes: over and under a target, inside and past a limit, up and down since before. */
export const DIRECTION_WORDS = {
  over: 'over',
  above: 'over',
  high: 'over',
  higher: 'over',
  under: 'under',
  below: 'under',
  low: 'under',
  lower: 'under',
  inside: 'inside',
  past: 'past',
  up: 'up',
  rose: 'up',
  down: 'down',
  fell: 'down',
  dropped: 'down',
} as const satisfies Record<string, string>;
export type DirectionWord = (typeof DIRECTION_WORDS)[keyof typeof DIRECTION_WORDS];

const DIRECTIONS = new Map<string, DirectionWord>(Object.entries(DIRECTION_WORDS));
export const directionOf = (word: string): DirectionWord | undefined => DIRECTIONS.get(word);

/** "Not", and what does its work. */
const NEGATIONS = new Set(
  'not no never none nothing neither nor without hardly cannot barely'.split(' '),
);
export const isNegation = (word: string): boolean =>
  NEGATIONS.has(word) || word.endsWith("n't") || word.startsWith('non-');

/** Words before a number that say which of a verdict's numbers it is. */
const CUES = {
  should: 'target',
  ought: 'target',
  target: 'target',
  expected: 'target',
  want: 'target',
  aim: 'target',
  is: 'measured',
  reads: 'measured',
  read: 'measured',
  sits: 'measured',
  runs: 'measured',
  shows: 'measured',
  stands: 'measured',
  dew: 'dew',
  bubble: 'bubble',
  at: 'at',
} as const satisfies Record<string, string>;
const CUE_WORDS = new Map<string, Cue>(Object.entries(CUES));
export type Cue =
  (typeof CUES)[keyof typeof CUES] | 'bare' | 'difference' | 'low' | 'high' | 'before' | 'after';
export const cueOf = (word: string): Cue | undefined => CUE_WORDS.get(word);

/**
 * Words that carry no fact. A sentence with any other word is not let through: "replace", "safe" or
 * "twice" would say something that no verdict said.
 */
const GLUE = new Set(
  (
    'a about and are be been by for from here it its just now of on reading right so that the there ' +
    "this to was were with you your you're it's that's around comes works means puts makes gives which " +
    'as but where out sit comes work before after'
  ).split(' '),
);
export const isGlue = (word: string): boolean => GLUE.has(word) || CUE_WORDS.has(word);
