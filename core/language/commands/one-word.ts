import { opensSentence, startsInWords, wordsBehind } from '../words/clause-start.ts';
import { goesOnMeasured, holdsReading } from '../words/own-reading.ts';
import { type Frame, type Rule, rule } from '../rule.ts';
import { plain } from './command.ts';

/** "Is it done", "right after": fillers elsewhere, but one word is none with them. */
const isAllThatIsSaid = (frame: Frame): boolean =>
  opensSentence(frame) && wordsBehind(frame, 1) === '';

/** "Before, head one ninety, suction twenty" heads what is read; "head one ninety, after" marks what was. */
const marksReadings = (frame: Frame): boolean => {
  if (!frame.endsAtPause || isAllThatIsSaid(frame)) return false;
  const behind = wordsBehind(frame, MOST_WORDS);
  if (opensSentence(frame)) return goesOnMeasured(`${frame.wordsOf(frame.span)}, ${behind}`);
  const before = frame.wordsOf({ from: 0, to: frame.span.from });
  return behind === '' && startsInWords(frame) && holdsReading(before);
};
const MOST_WORDS = 20;

/** Behind what was asked, told to be done or is being timed, "done" is said of that. */
const endsVisit = (frame: Frame): boolean => {
  const { asksYes, openNumber, timing, awaitsDoing } = frame.context;
  return isAllThatIsSaid(frame) && !(asksYes || openNumber !== null || timing || awaitsDoing);
};

const PLEASE = '[(now|please)]';

/** What is done with both hands in gloves: told in one word, by who has told it a hundred times. */
export const ONE_WORD_COMMANDS: readonly Rule[] = [
  rule(`[mark [(it|this|that)]] [as] [(the|my)] (before|befores) ${PLEASE}`, plain('markBefore'), {
    unheard: true,
    alone: true,
    only: isAllThatIsSaid,
    examples: ['before', 'mark as before'],
  }),
  rule(`[mark [(it|this|that)]] [as] [(the|my)] (after|afters) ${PLEASE}`, plain('markAfter'), {
    unheard: true,
    alone: true,
    only: isAllThatIsSaid,
    examples: ['after', 'mark as after'],
  }),
  ...(['before', 'after'] as const).map((which) =>
    rule(which, plain(which === 'before' ? 'markBefore' : 'markAfter'), {
      unheard: true,
      only: marksReadings,
    }),
  ),
  rule('(done|finished|end of (visit|job|call))', plain('finish'), {
    unheard: true,
    alone: true,
    only: endsVisit,
    examples: ['done'],
  }),
];
