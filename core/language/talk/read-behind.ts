import { Grammar } from '../../grammar/compile.ts';
import { Matcher } from '../../grammar/match.ts';
import { named, type Tags } from '../../grammar/nodes.ts';
import { parseShape } from '../../grammar/shape.ts';
import { HOLES } from '../holes.ts';
import { amountIn } from '../numbers/measure.ts';
import { reading } from '../readings/reading-means.ts';
import type { Frame } from '../rule.ts';
import { quantityId } from '../slots.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { tokenise } from '../words/tokenise.ts';
import type { Reading } from '../utterance.ts';

/** What is read off gauges and clamps: nobody at the counter tells it. */
const OFF_INSTRUMENTS: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'headPressure',
  'suctionPressure',
  'condensingTemp',
  'evaporatingTemp',
  'ambientTemp',
  'suctionLineTemp',
  'liquidLineTemp',
  'dischargeLineTemp',
  'superheat',
  'subcooling',
]);
/** Behind these the words before go on. */
const GOES_ON: ReadonlySet<string> = new Set(
  'and but or so that if when where because like says said think thinks the my his their was with on of to'.split(
    ' ',
  ),
);

const GRAMMAR = new Grammar();
const READ = GRAMMAR.compile(
  named(
    'readBehind',
    parseShape(
      '([the] <quantity> (is|is at|is now|now|at|is sitting at|is reading|is running) <amount> [now]|(i have got|i have|i am getting|i am reading|i got) <amount> (on|for|of) [(the|my)] <quantity>)',
      HOLES,
    ),
  ),
);

/** What was told first, and what the technician read behind it. */
export interface ToldThenRead {
  readonly told: string;
  readonly readings: readonly Reading[];
}

/**
 * "It was at fifty when he came in suction is thirty two": where recognisers write no comma, what is read off gauges now
 * ends somebody else's words. `null` where nothing is, and where the words themselves may tell it.
 */
export function toldThenRead(words: string, frame: Frame): ToldThenRead | null {
  const tokens = tokenise(words);
  const matcher = new Matcher(GRAMMAR, tokens);
  for (let from = LEAST_TOLD; from < tokens.length; from += 1) {
    if (GOES_ON.has(tokens[from - 1]?.text ?? '')) continue;
    const readings = readingsFrom(matcher, from, frame);
    if (readings !== null) return { told: words.slice(0, tokens[from - 1]?.end), readings };
  }
  return null;
}
/** "It's low." */
const LEAST_TOLD = 3;

/** One behind another, up to the end. */
function readingsFrom(matcher: Matcher, from: number, frame: Frame): readonly Reading[] | null {
  const readings: Reading[] = [];
  for (let at = from; at < matcher.tokens.length;) {
    const longest = matcher.run(READ, at).toSorted((one, other) => other.end - one.end)[0];
    const found = longest === undefined ? null : readIn(longest.tags[0] ?? {}, frame);
    if (longest === undefined || found === null) return null;
    readings.push(found);
    at = longest.end;
  }
  return readings;
}

function readIn(tags: Tags, frame: Frame): Reading | null {
  const quantity = quantityId(tags['quantity']);
  return quantity !== null && OFF_INSTRUMENTS.has(quantity)
    ? reading(quantity, amountIn(tags), frame)
    : null;
}
