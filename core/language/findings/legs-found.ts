import { finding } from './finding-of.ts';
import { remark } from '../plain-means.ts';
import { type Means, type Rule, rule } from '../rule.ts';

/** "Fuse blown on L two": which leg it feeds stays in its words. */
const fuseBlown: Means = (_tags, frame) => ({ findings: [finding('fuse', 'failed', frame)] });

const BLOWN = '(blown|blew|open|bad|dead|popped|burnt|gone)';
const BAD =
  '(low|dead|weak|missing|gone|out|down|hot|lost|dropping out|burnt [off]|burned [off]|loose|black|brown)';

/** What is told of a leg of the supply, which no meter has read yet. */
export const LEG_FOUND_RULES: readonly Rule[] = [
  rule(
    `(<the> fuse [(is|has|was)] [got] ${BLOWN} (on|in|for) [the] <leg>|[the] ${BLOWN} fuse (on|in|for) [the] <leg>|<the> fuse (on|in|for) [the] <leg> (is|was|has) [got] ${BLOWN}|[the] <leg> fuse (is|was) ${BLOWN})`,
    fuseBlown,
    { unheard: true, examples: ['fuse is blown on leg two', 'blown fuse on l one'] },
  ),
  rule(
    `(<leg>|[(only|just)] (one|a|the other|that|either) (leg|phase)|(two|both|all three|two of the three) (legs|phases)) (is|are|was|were) [(a little|way|really|completely|totally)] ${BAD}`,
    remark,
    { unheard: true, apart: true, examples: ['leg two is dead', 'two legs are low'] },
  ),
  rule(`(two|both|all three) (legs|phases) ${BAD}`, remark, {
    unheard: true,
    alone: true,
    examples: ['two legs low'],
  }),
  rule(
    '[(i|we|it|they)] [(am|is|are|have|has|was)] (missing|lost|dropped|dropping|losing|short) (a|one) (leg|phase)',
    remark,
    { unheard: true, apart: true, examples: ['missing a leg'] },
  ),
];
