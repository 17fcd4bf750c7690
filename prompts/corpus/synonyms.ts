import type { CorpusLine } from './corpus-line.ts';

/** How a visit is told on paper; where one does not fit its sentence, the guard leaves it out. */
const OF_THE_NOTE: readonly (readonly string[])[] = [
  ['you called us about', 'you called us because of', 'you asked us to come about'],
  ['we came because of', 'we came about', 'we were called for', 'we were called because of'],
  ['we found that', 'we saw that', 'it turned out that', 'on the unit we found that'],
  ['when we looked', 'when we got there', 'when we looked the unit over', 'on the unit itself'],
  ['by what we measured', 'going by our readings', 'by our readings', 'going by what we measured'],
  ['when that happens', 'once that happens', 'in that state', 'left like that', 'with that'],
  ['if that is so', 'if that is the cause', 'if that is what it was', 'if so'],
  ['the temperature inside', 'the temperature in the box', 'the box'],
  ['came down', 'went down', 'dropped', 'fell'],
  ['went up', 'rose', 'climbed'],
  ['stayed', 'remained', 'held'],
  ['where it should be', 'where it belongs'],
  ['took out', 'recovered'],
  ['put in', 'added', 'filled in'],
  ['our recommendation is', 'our advice is'],
  [
    'what is still to do is',
    'the next thing to do is',
    'the next step is',
    'what is left to do is',
  ],
  ['still to be done', 'left to be done', 'still to do'],
  ['as we left it', 'as it stands'],
  ['we will come back', 'we will be back', 'we have to come back'],
  ['another visit is needed', 'there will be another visit'],
  ['called for', 'called out for', 'went out for'],
  ['findings', 'found on the unit', 'what was found'],
  ['the readings before work', 'the readings'],
  ['by the scale', 'by weight'],
  ['return visit', 'another visit'],
  ['on the visit', 'on site'],
  ['about the product we noted', 'our note on the product', 'what we noted of the product'],
];

/**
 * Words that may stand for each other without changing what is said: no number, direction or degree. They need
 * not fit everywhere: what the guard does not let through is not learnt.
 */
const GROUPS: readonly (readonly string[])[] = [
  ['right now', 'just now', 'at the moment', 'now'],
  ['reads', 'is at', 'is reading', 'sits at', 'stands at', 'shows'],
  ['should be', 'ought to be'],
  ['so it is', 'which means it is'],
  ['so you have', 'which means you have'],
  ['over', 'above'],
  ['under', 'below'],
  ['find and mend', 'find and fix'],
  ['mend', 'fix'],
  ['replace it', 'change it'],
  ['once more', 'again', 'one more time'],
  ['read it again', 'measure it again', 'take it again'],
  ['came down', 'went down', 'fell', 'dropped'],
  ['came up', 'went up', 'rose', 'climbed'],
  ['since then', 'after that'],
  ['still to be done', 'still to do', 'left to do'],
  ['we found', 'we saw'],
  ['recommendation', 'advice'],
  ['recommend', 'advise'],
  [', because', ', as', ', since'],
  ['on the scale', 'by the scale'],
  ['at the most', 'at most'],
  ['let it cool', 'give it time to cool', 'give it time to cool down'],
  ['before you charge', 'before the charge goes in'],
  ['draws', 'is drawing'],
  ['holds', 'is holding'],
  ['rises', 'is rising'],
  ['for sure', 'for certain'],
  ['around', 'about'],
  ['the box', 'the inside'],
  ['found', 'seen'],
  ['when we left', 'as we left'],
  ['to look at', 'to check'],
  ...OF_THE_NOTE,
];

const SWAPS: readonly (readonly [string, string])[] = GROUPS.flatMap((group) =>
  group.flatMap((one) =>
    group.filter((other) => other !== one).map((other) => [one, other] as const),
  ),
);

/** The line once more for every words of it that have others: one change at a time. */
export function reworded(line: CorpusLine): readonly CorpusLine[] {
  const padded = ` ${line.sentence}`;
  return SWAPS.flatMap(([from, to]) => {
    const at = padded.search(
      new RegExp(`(?<=${from.startsWith(',') ? '' : ' '})${from}(?=[ ,.:;])`),
    );
    // "Is at 0.5 MΩ" is no sentence, where "reads 0.5 MΩ" was one.
    if (at < 0 || (at === 1 && to.startsWith('is '))) return [];
    const sentence = padded.slice(1, at) + to + padded.slice(at + from.length);
    return [{ ...line, sentence }];
  });
}
