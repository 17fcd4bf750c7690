import type { PartId } from '../../terms/names.ts';
import { HOLDS_GAS } from '../findings/leaks-and-valves.ts';
import { amountIn } from '../numbers/measure.ts';
import { remark } from '../plain-means.ts';
import { type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId } from '../slots.ts';
import { isNotDone } from '../words/not-done.ts';

/** Of the tube that was named or spoken of; with what and how stands in the words, which the next man wants. */
const mended: Means = (tags, frame) => {
  if (isNotDone(frame)) return null;
  const words = frame.wordsOf(frame.span);
  const remarks = [words];
  const of = (part: PartId): Meaning =>
    HOLDS_GAS.has(part) ? { work: [{ did: 'repair', part, words }], remarks } : { remarks };
  const named = partId(tags['part']);
  if (named !== null) return of(named);
  return { ofIt: { means: of, inSentence: false, otherwise: { remarks } } };
};

/** Ours: what flows through while it is brazed is hardly more than the air around it, and no test. */
const MOST_FLOWING = 20;

/** "Flowing nitrogen through it, about two three pounds": no pressure that it is tested at. */
const flows: Means = (tags, frame) => {
  const { value, high } = amountIn(tags);
  const isMore = (high ?? value ?? 0) > MOST_FLOWING && !NEXT_TO.test(frame.wordsOf(frame.span));
  return isMore ? null : remark(tags, frame);
};
/** "Two three pounds" are two or three. */
const NEXT_TO = /\b(?:one two|two three|three four|four five|five six)\b/i;

const I = '<byUs>';
const SPOT =
  '(the|that|my) [(bad|leaking|rubbed|rub|worn|old|kinked|damaged|chafed)] (spot|section|piece|part|bit|inch|rub|kink|leak)';
const CUT_OUT = `(cut|cut out|took out|sawed out) (${SPOT}|it) [out] [(on|in|of|out of) <the> <part>] [<pause>] (and|then|and then)`;
const BRAZED =
  '(brazed|soldered|sweated|silver soldered|silver brazed|spliced|welded|put|stuck|fitted|flared)';
const PIECE =
  '(a|an|the) [new] [(short|little|small|inch|two inch)] (piece|section|length|bit|stick|coupling|sleeve|patch|splice|union|jumper)';
const WITH = '[with (a|two) [(copper|brass|quarter inch)] (coupling|couplings|sleeve|union|patch)]';
const SLEEVED = '(sleeved|coupled|spliced|patched|bridged)';

const FLOWING =
  '(flowing|flowed|bleeding|bled|trickling|trickled|purging|purged|sweeping|running|ran)';
const THROUGH = '[(through|into|in)] [(it|the (lines|line|system|joints|pipe|tubing|circuit))]';
const WHILE =
  '[(while|as|when) (i|we) (am|was|braze|brazed|are|were) [(brazing|brazed|braze)] [it]]';
const ABOUT = '[<pause>] [(at|just|only)]';
const LOW_FLOW = '((a couple [of]|a few) (pounds|psi|p s i)|<amount>)';

/** What is done to a tube that leaks, and the nitrogen that flows meanwhile. */
export const TUBING_RULES: readonly Rule[] = [
  rule(
    `${I} [${CUT_OUT}] ${BRAZED} [in] ${PIECE} (of [new] <part> [in [there]]|(in|over|across|on) <the> <part>)`,
    mended,
    {
      unheard: true,
      examples: ['cut the bad spot out and brazed a new piece of cap tube in'],
    },
  ),
  rule(
    `${I} ([${CUT_OUT}] ${BRAZED} [in] ${PIECE} [(in|over it|across it|on it|in it|in there)]|${CUT_OUT} ${SLEEVED} it ${WITH}|${SLEEVED} (it|that|that spot|the spot) ${WITH})`,
    mended,
    { unheard: true, apart: true, beforeTold: true, examples: [] },
  ),
  rule(
    `[(i|we|and|i am|i have|got)] (${FLOWING} [(a little|some|a trickle of)] [dry] nitrogen ${THROUGH}|[dry] nitrogen [(is|was)] ${FLOWING} ${THROUGH}) ${ABOUT} ${LOW_FLOW} [(or so|just a trickle)] ${WHILE}`,
    flows,
    { unheard: true, examples: ['flowing nitrogen through it about two three pounds'] },
  ),
  rule(
    `[(i|we|and|i am|i have)] ${FLOWING} ${ABOUT} ${LOW_FLOW} of [dry] nitrogen ${THROUGH} ${WHILE}`,
    flows,
    { unheard: true, examples: ['flowing two to three pounds of nitrogen'] },
  ),
];
