import { choice, named, type Node, scope, sequence, summed, tag } from '../../grammar/nodes.ts';
import { digit, ONES, teen, tens } from './number-words.ts';
import { numberIn, tagsIn } from '../slots.ts';
import type { Tags } from '../../grammar/nodes.ts';

/** A number behind which one more figure can only be a tenth: "twelve" and "thirty two", never "thirty". */
const ended = choice(teen(1), sequence(tens(1), digit(1)));
const WHOLE = summed('wholeBeforeTenth', choice(ended, sequence(digit(100), ended)));
const FIGURE = summed('figureBeforeTenth', digit(1));
const TWO_FIGURES = summed('twoFiguresBeforeTenth', sequence(digit(10), digit(1)));
const TENTH = summed('tenth', digit(1));

/** Said in one breath: behind a pause comes another number. */
const unbroken = (name: string, node: Node): Node => ({
  kind: 'rule',
  name,
  node,
  fold: 'merge',
  unbroken: true,
});

/** "Eleven five": nobody says eleven and a half otherwise in fewer words, and no number goes on so. */
const SURE = unbroken('surelyDropped', sequence(scope('whole', WHOLE), scope('tenth', TENTH)));

/** "Eight two" is said of 8.2 and of 82. */
const EITHER = unbroken(
  'maybeDropped',
  sequence(
    scope('whole', choice(TWO_FIGURES, FIGURE)),
    scope('tenth', TENTH),
    tag({ either: true }),
  ),
);

/** A number said without its point, where meters show one. */
export const DROPPED_SURELY = named('droppedSurely', SURE);
export const DROPPED = named('dropped', choice(SURE, EITHER));

/** With its point, and without one where it may have been said so. */
export interface Dropped {
  readonly value: number;
  readonly or: number | null;
}

export function droppedIn(tags: Tags): Dropped | null {
  const whole = numberIn(tagsIn(tags['whole'])?.['number']);
  const tenth = numberIn(tagsIn(tags['tenth'])?.['number']);
  if (whole === null || tenth === null) return null;
  const figures = whole * 10 + tenth;
  return { value: figures / 10, or: tags['either'] === true ? figures : null };
}

/** "Seven two", at the end: 72, or 7.2 without its point. */
export const isTwoFigures = (words: string): boolean => TWO_FIGURES_LAST.test(words);
const TWO_FIGURES_LAST = new RegExp(
  `\\b(?:${ONES.join('|')}) (?:${ONES.join('|')})(?: amps?)?$`,
  'i',
);

/** "Amps are six point eight, plate says seven two": of 7.2 and 72 amps the one beside which that was read. */
export const pointedBeside = (plate: number, read: number | null, words: string): number =>
  isTwoFigures(words) && read !== null && read * MOST_OVER < plate ? plate / 10 : plate;
/** Ours: a plate that holds more than so many times what is drawn was not read so. */
const MOST_OVER = 4;
