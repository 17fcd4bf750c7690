import { isNumber } from '../numbers/number-tokens.ts';
import { ONES, TENS } from '../numbers/number-words.ts';
import { tokenise } from '../words/tokenise.ts';
import type { Context, ToldBefore } from '../context.ts';
import type { Command, Utterance } from '../utterance.ts';
import type { Reads } from './reads.ts';
import { sameKind, type ToldItem } from './same-but-one.ts';
import { both, nothingSaid } from './told.ts';

// A number that a pause cut in two: "rla thirteen point", "six"; "suction fifty", "eight, amps are eleven nine".

const POINT = /^(.+) point[.,]?\s*$/i;
const OPENS = new RegExp(
  `^((?:and |uh |um )*(?:${ONES.join('|')}|[0-9]))(?![\\w.])[ ,.]*(.*)$`,
  'i',
);
const ENDS_OPEN = new RegExp(`(?:\\b(?:${TENS.join('|')})|\\bhundred|[1-9]0| point)$`, 'i');

/** "Amps six point": what is told so far, in words that tell that more of it comes; `null` where it ends otherwise. */
export function endsAtPoint(text: string, context: Context, reads: Reads): Utterance | null {
  const before = POINT.exec(text)?.[1];
  if (before === undefined || !isNumber(tokenise(before).at(-1))) return null;
  const said = reads(before, context);
  const isLast = ({ words }: { readonly words: string }): boolean => before.endsWith(words);
  const open = <Told extends { readonly words: string }>(told: Told): Told =>
    isLast(told) ? { ...told, words: `${told.words} point` } : told;
  return { ...said, text, readings: said.readings.map(open), facts: said.facts.map(open) };
}

/**
 * A figure that opens a sentence and is nobody's belongs to the number that was told last, where that one may go on so.
 *
 * @returns `null` where it is read as something else, or makes no value of the same.
 */
export function restOfNumber(said: Utterance, context: Context, reads: Reads): Utterance | null {
  const [last] = context.told;
  const [, figure, rest = ''] = OPENS.exec(said.text) ?? [];
  if (figure === undefined || last == null || !ENDS_OPEN.test(last.words)) return null;
  const behind = rest === '' ? nothingSaid(rest) : reads(rest, context);
  if (behind.unclaimed.length + 1 !== said.unclaimed.length) return null;
  const whole = wholeOf(last, reads(`${last.words} ${figure}`, context));
  return whole === null ? null : withWhole(whole, { ...behind, text: said.text });
}

/** The same thing with all of its number. */
function wholeOf({ told }: ToldBefore, { readings, facts, unclaimed }: Utterance): ToldItem | null {
  if (unclaimed.length > 0) return null;
  const all: readonly ToldItem[] = [
    ...readings.map((reading): ToldItem => ({ of: 'reading', reading })),
    ...facts.map((fact): ToldItem => ({ of: 'fact', fact })),
  ];
  return all.find((is) => sameKind(told, is)) ?? null;
}

function withWhole(whole: ToldItem, said: Utterance): Utterance | null {
  if (whole.of === 'fact') {
    const undo: Command = { do: 'undo', earlier: true, ago: 0 };
    return {
      ...said,
      facts: both([whole.fact], said.facts),
      commands: both([undo], said.commands),
    };
  }
  if (whole.of !== 'reading' || whole.reading.value === undefined) return null;
  const { quantity, place, value, unit } = whole.reading;
  const where = place === null ? {} : { place };
  const how = unit === null ? {} : { unit };
  const amend: Command = { do: 'amend', quantity, value, ...where, ...how };
  return { ...said, commands: both([amend], said.commands) };
}
