import type { Token } from '../../grammar/tokens.ts';

/** Words that end like a plural and are none, or that count something of ours: units, and what is done rather than counted. */
const NO_THINGS: ReadonlySet<string> = new Set(
  (
    'is was has does this its us yes gas plus minus less bus across always perhaps towards besides ' +
    'degrees pounds inches ounces volts amps ohms watts microns millibars pascals bars grams kilos kilograms kilopascals kelvins ' +
    'microfarads mics mikes megs megohms lbs kelvin celsius psis hundreds thousands millions tenths halves thirds ' +
    'quarters fourths fifths eighths sixteenths points percents ones twos threes fours fives sixes sevens eights nines ' +
    'tens twenties thirties forties fifties sixties seventies eighties nineties zeros ohs ' +
    'reads shows looks seems runs says sits holds stays goes comes gets means makes sounds takes keeps feels drops rises ' +
    'trips climbs falls starts stops works needs wants wants pulls draws cuts kicks opens closes cycles checks tests ' +
    'lakhs crores firsts measures hits reaches moves bounces swings jumps settles ends turns rides hangs'
  ).split(' '),
);

/** Behind which "one" is a number after all. */
const OF_A_NUMBER: ReadonlySet<string> = new Set(
  (
    'and point dot hundred thousand million half quarter to too for fore or at on in by over under above below psi ' +
    'pound degree inch ounce volt amp ohm watt micron millibar pascal bar gram kilo microfarad meg megohm minute is percent ' +
    'or so as no wait but from out with when after then not it'
  ).split(' '),
);

/** "One end": pointed out, not counted. */
export const isPointedOut = ({ text, pause, value }: Token): boolean =>
  !pause && value === null && text.length > 1 && !OF_A_NUMBER.has(text);

/**
 * Whether a number before it counts things: "two hundred cubes" was read off no instrument. Told by the plural's
 * ending, since the things that a technician may count are as many as there are nouns.
 */
export const isCountedThing = ({ text, pause }: Token): boolean =>
  !pause &&
  text.length > 3 &&
  text.endsWith('s') &&
  !text.endsWith('ss') &&
  !text.endsWith('ths') &&
  !NO_THINGS.has(text);
