import { type Means, type Rule, rule } from '../rule.ts';

/** What hoses go on, where the unit has no valves of its own. */
const fittings: Means = (_tags, frame) => ({
  facts: [{ fact: 'valves', value: 'accessFittings', words: frame.wordsOf(frame.span) }],
});

/** Ports that are put on a sealed system. */
export const PORT_RULES: readonly Rule[] = [
  rule(
    '[(i|we)] [have] (put|installed|added|stuck|used|using) [(a|some|on)] (line taps|line tap valves|piercing valves|a piercing valve|saddle valves|saddle valve|line tap|piercing valve) [(on|on it|on both sides)]',
    fittings,
    { examples: ['put line taps on'] },
  ),
  rule(
    '[((i|we) do not have|it does not have|there are|no) [(any|no)] [(service|access)] ports [(on|in) (it|this [(thing|one|unit)]|here)] [<pause>] [(so|and)]] (i am|we are|i will|i had to|had to|i|we) (putting|put|install|installing|use|using|stick) [(a|some|on)] (line tap|line taps|piercing valve|piercing valves|bullet piercer|bullet piercers|saddle valve|saddle valves) [on [(it|both sides|<the> (suction line|discharge line|process tube|low side|high side))]]',
    fittings,
    { unheard: true, examples: ['i am putting line taps on'] },
  ),
];
