import { settledFan } from '../words/fans.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { partId } from '../slots.ts';

const sameOfPart: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const words = frame.wordsOf(frame.span);
  return part === null ? null : { also: { part: settledFan(part, frame.context), words } };
};

const BEHIND = '(<pause> [(and|but)]|and|but)';

/** "Evaporator's iced up and so is the condenser": what was told last in the sentence, of another part. */
export const TOLD_ALSO_RULES: readonly Rule[] = [
  `${BEHIND} so (is|are|was|were|does|do|did|has) <the> <part>`,
  `${BEHIND} <the> <part> (is|are|was|were|does|did) (too|as well|also)`,
  `${BEHIND} (neither|nor) (is|are|was|were|does|do|did|will|would) <the> <part>`,
  `${BEHIND} <the> <part> (is|are|was|were|does|do|did|will) not either`,
  `${BEHIND} [the] same (with|for|goes for|on|at|thing (with|on|for)|story (with|on)|deal (with|on)) <the> <part>`,
  '<pause> [and] <the> <part> (too|as well)',
].map((shape) => rule(shape, sameOfPart, { unheard: true, examples: [] }));
