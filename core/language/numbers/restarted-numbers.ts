import { choice, named, optional, pause, sequence, summed, word } from '../../grammar/nodes.ts';
import { AND_PARTS, POINT } from './fractions.ts';
import { plus, TEENS, TENS } from './number-words.ts';

/** Of two places: "four four point five" is forty-four and a half, figure by figure. */
const TWICE: readonly (readonly [string, number])[] = [
  ...TEENS.map((said, index) => [said, index + 10] as const),
  ...TENS.map((said, index) => [said, (index + 2) * 10] as const),
];

/** "Fourteen, fourteen and a half": begun, and begun again to say it whole. */
export const RESTARTED = named(
  'restarted',
  choice(
    ...TWICE.map(([said, value]) =>
      sequence(
        word(said),
        optional(pause),
        summed(`saidWhole${value}`, sequence(plus(said, value), choice(POINT, AND_PARTS))),
      ),
    ),
  ),
);
