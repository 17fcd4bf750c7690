import { amountIn, isVacuumUnit } from '../numbers/measure.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import type { Work } from '../utterance.ts';
import { fixed } from './reading-means.ts';

/** Ours: a pump-down ends below; what was pulled to more was a vacuum, or a box. */
export const MOST_PUMPED_DOWN = 50;
/** Ours: without a unit, and without "pumped", what ends as low as this is no box either. */
const MOST_PULLED_DOWN = 10;

const pumpedDown = (frame: Frame): Work => ({
  did: 'pumpDown',
  part: null,
  words: frame.wordsOf(frame.span),
});

/** What the low side is drawn down to in our work tells nothing of how the unit runs. */
export function drawnDown(meant: Meaning): Meaning {
  const { readings = [] } = meant;
  return { ...meant, readings: readings.map((each) => ({ ...each, event: 'drawnDown' })) };
}

/** Somebody pumped it down, by valve and compressor: "pumps down" is what it does by itself. */
export const asPumpedDown = (meant: Meaning | null, frame: Frame): Meaning | null =>
  meant && /\bpumped\b/i.test(frame.wordsOf(frame.span))
    ? { ...drawnDown(meant), work: [pumpedDown(frame)] }
    : meant;

/** "Pumped it down to two pounds": what the low side stands at with the charge shut in. Inches and microns are a vacuum pump's. */
export const pumpedDownTo: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  if (isVacuumUnit(unit)) return fixed('vacuum')(tags, frame);
  const suction = fixed('suctionPressure')(tags, frame);
  const isVacuum = unit === 'inches' || unit === 'inHg';
  const isLow = value !== null && value < MOST_PUMPED_DOWN && !isVacuum;
  return isLow ? asPumpedDown(suction, frame) : suction;
};

/** "Pumped down and held at two pounds" */
export const pumpedAndHeld: Means = (tags, frame) => {
  const suction = fixed('suctionPressure')(tags, frame);
  return suction && { ...drawnDown(suction), work: [pumpedDown(frame)] };
};

/** "Pulled it down to zero and shut it off": of a box, a vacuum or a recovery nobody shuts the unit off at so little. */
const pulledAndShutOff: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const isPressure = unit === null || unit === 'pounds' || unit === 'psi';
  if (!isPressure || value === null || value > MOST_PULLED_DOWN) return null;
  const { lastQuantity } = frame.context;
  const isOther = lastQuantity === 'vacuum' || lastQuantity === 'refrigerantRecovered';
  const suction = isOther ? null : fixed('suctionPressure')(tags, frame);
  const words = frame.wordsOf(frame.span);
  return (
    suction && {
      ...drawnDown(suction),
      work: [pumpedDown(frame), { did: 'isolate', part: 'disconnect', words }],
    }
  );
};

/** "Recovered it down to ten inches": as low as this is of the low side, and no weight. */
const recoveredTo: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  if (value === null || value >= MOST_PUMPED_DOWN || (unit === null && value !== 0)) return null;
  const suction = fixed('suctionPressure')(tags, frame);
  if (suction?.readings === undefined) return null;
  const words = frame.wordsOf(frame.span);
  const work: readonly Work[] = /\brecovered\b/i.test(words)
    ? [{ did: 'recover', part: null, words }]
    : [];
  return { ...drawnDown(suction), work };
};

export const PUMPED_DOWN_RULES: readonly Rule[] = [
  rule(
    '[(i|we|and|just|then)] (pulled|ran|took|brought|sucked) (it|her|the (system|unit|low side)) [all the way] down to <amount> [<pause>] (and|then|and then) [i] (shut|turned|switched) (it|her|the unit) (off|down)',
    pulledAndShutOff,
    { unheard: true, examples: ['pulled it down to zero and shut it off'] },
  ),
  rule(
    '[(i|we|and|just|then)] (recovered|[the] recovery (is|has (it|her)|has got (it|her)|got (it|her))|[the] (recovery machine|machine) (has|has got|got|pulled|took|brought) (it|her|the system)) [(it|her|the (system|unit|charge|gas|rest [of (it|the charge)]))] [all the way] [down] to <amount>',
    recoveredTo,
    { unheard: true, examples: ['recovered it down to ten inches'] },
  ),
];
