import { type Means, type Rule, rule } from './rule.ts';

const nothing: Means = () => ({});

/** What is told of other units, of units in general, of hopes, and of what would have to be paid for. */
export const NOT_OF_THIS_UNIT: readonly Rule[] = [
  rule(
    '(on|with) [(the|my|that|his)] (last|other|previous) (one|unit|box|job|call|machine|system|store|stop) <clause>',
    nothing,
    { examples: ['on the last one suction was ten'] },
  ),
  rule(
    '[(my|his|her|their)] (buddy|neighbor|cousin|uncle|friend) is (box|walk in|cooler|freezer|fridge|unit|system|machine|place|store|house) <clause>',
    nothing,
    { examples: ["my buddy's walk-in runs at thirty eight"] },
  ),
  rule(
    '[(most|any)] (a|any|most) (good|normal|healthy|typical|clean|new|well charged) (system|systems|unit|units|box|one|ones|compressor|machine|reach in|walk in) (runs|run|is|are|has|have|will|would|should|holds|pulls|reads|likes|like) <clause>',
    nothing,
    { examples: ['a good system runs about eight degrees subcooling'] },
  ),
  rule(
    '(if|when|in case|unless) (it|you|they|we|he|she|somebody) (need|needs|needed|want|wants|wanted|have to|had to) [(to|a|an|the)] [new] <part> [<pause>] [and] [(a|an|the)] [new] <part:second> [[<pause>] and [(a|an|the)] [new] <part:third>] <clause>',
    () => ({ supposed: true }),
    { examples: ["if you need a new compressor, drier and contactor that's four grand"] },
  ),
  rule(
    '[(i|we|he|she|they)] [(am|was|were|are)] (hoping|looking|shooting|aiming|praying|wishing) for <amount>',
    nothing,
    { examples: ['was hoping for two hundred megs'] },
  ),
  // Bubbles of soap are not those in the glass.
  rule(
    '[(and|but|there is|there are|i see|got|saw)] (no|no more|not any more|not any) bubbles [(coming)] (with|from|in|off|on) [(the|my)] (soap|soap bubbles|bubble mix|leak spray|suds)',
    nothing,
    { examples: ['no more bubbles with soap'] },
  ),
  rule('<the> <part> (is|was|should be) good for <clause>', nothing, {
    examples: ['this compressor is good for about ten years'],
  }),
];
