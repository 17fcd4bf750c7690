import { type Means, type Rule, rule } from '../rule.ts';
import { partId, tagsIn } from '../slots.ts';

/** "No wait, just the relay, the overload was fine": what was said of the other part is taken back. */
const onlyThat: Means = (tags, frame) => {
  const other = partId(tagsIn(tags['other'])?.['part']);
  const part = partId(tags['part']);
  if (other === null || part === null || other === part) return null;
  const words = frame.wordsOf(frame.span);
  const isLast = frame.context.lastPart === other;
  return {
    ...(isLast ? { commands: [{ do: 'undo', earlier: true }] } : {}),
    findings: [{ part: other, state: 'ok', words }],
  };
};

/** What was said of two parts and is true of one. */
export const ONLY_THAT_RULES: readonly Rule[] = [
  rule(
    '[(no|wait|no wait|sorry|correction|actually|hold on)] [it was] (just|only) the <part> [<pause>] [(and|because)] the <part:other> (was|is) [still] (fine|good|ok|all right)',
    onlyThat,
    { examples: ['no wait just the start relay the overload was fine'] },
  ),
];
