import { UNITS } from '../../core/units/units.ts';

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
const SYMBOLS = Object.values(UNITS)
  .map(({ symbol }) => escaped(symbol))
  .toSorted((a, b) => b.length - a.length)
  .join('|');
/** A refrigerant's name; a number with its sign and unit. */
const TOGETHER = new RegExp(`(\\bR-\\w+|[-−]?\\d[\\d.,:]*\\d?(?: (?:${SYMBOLS})(?![\\w/]))?)`);

/** A text whose numbers keep their units on one line: "118" at a line's end and "°F" on the next misreads. */
export function Unbroken({ text }: { text: string }) {
  return (
    <>
      {splitTogether(text).map((part, index) =>
        index % 2 === 0 ? (
          part
        ) : (
          <span key={index} class="together">
            {part}
          </span>
        ),
      )}
    </>
  );
}

/** Every second part, from the second on, must not be broken. */
export function splitTogether(text: string): readonly string[] {
  return text.split(TOGETHER);
}
