import { ANY_WEEKDAY } from '../../terms/calendar.ts';
import { settledFan } from '../words/fans.ts';
import { startsClause } from '../words/clause-start.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { partId, tagsIn, workId } from '../slots.ts';
import type { Fact } from '../utterance.ts';

/** "I'm here to change the compressor and the drier": agreed before this visit, and nothing of it done yet. */
const cameTo: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const named = workId(tags['work']) ?? 'replace';
  const kind = named === 'add' && /\bnew\b/i.test(words) ? 'replace' : named;
  if (!startsClause(frame)) return null;
  const parts = [tags, tagsIn(tags['second']), tagsIn(tags['third'])].flatMap((of) => {
    const part = partId(of?.['part']);
    return part === null ? [] : [settledFan(part, frame.context)];
  });
  const facts = parts.map((value): Fact => ({ fact: 'cameTo', do: kind, value, words }));
  return facts.length === 0 ? null : { facts };
};

const LEAD = '[(ok|okay|so|alright|and|well|hey|this time|today)]';
const US = '(i am|we are)';
const HERE =
  '(here|back|back here|back out [here]|out here|back at it|here today|back today|here again)';
const CAME =
  `([${US}] ${HERE}|[(i|we)] (came|come) [(back|out|by|back out|here)]|this is (a|the|my) (return|second) (visit|trip|call)|[(i|we)] [just] (got|was|were) (sent|called) (back|out|over|back out)|(return|second|follow up) (visit|trip|call)` +
  '|(job|call|ticket|work order|order) (today|here|for today)|[(the|my)] (job|call|ticket|work order|plan) [today] (is|says|was))';
const THE = '[(the|a|an|that|their|his|her|my|this|both|these|those)] [(new|old|bad|failed|dead)]';
const PUT_IN =
  '(fit|stick in|hang|do|finish|get in|drop in|braze in|throw in|set) [(the|a|that|their|my)] new';
const AND = '(and|plus|and also)';
const PARTS = `<part> [${AND} ${THE} <part:second> [${AND} ${THE} <part:third>]]`;
const AGREED =
  '(ordered|quoted|recommended|talked about|looked at|condemned|found [bad]|diagnosed|wrote up|told them about)';
/** Behind the part: which one it is, and when it was agreed on. */
const TODAY = `[[that] (i|we|they|you|he) ${AGREED}] [(on|from)] [(last (week|month|time|trip|visit|night)|yesterday|the other day|(${ANY_WEEKDAY})|today|now|this morning|this afternoon|finally|in there|on it|in it)]`;
const CHANGE_OUT = '(change out|changeout|changing out|swap [out]|replacement|install|change)';

/** What a visit is for, as it was agreed. */
export const CAME_TO_RULES: readonly Rule[] = [
  rule(
    `${LEAD} ${CAME} [today] (to|for me to) [(finally|go ahead and)] <todo> ${THE} ${PARTS} ${TODAY}`,
    cameTo,
    {
      unheard: true,
      examples: [
        'i am here to replace the compressor',
        'came back to replace the contactor and the relay',
      ],
    },
  ),
  rule(`${LEAD} ${CAME} [today] (to|for me to) ${PUT_IN} ${PARTS} ${TODAY}`, cameTo, {
    unheard: true,
    examples: ['back to fit the new condenser fan motor'],
  }),
  rule(
    `${LEAD} ${CAME} [today] (to|for me to) (put|stick|drop|get|throw|braze) ${THE} ${PARTS} in ${TODAY}`,
    cameTo,
    {
      unheard: true,
      examples: ['here to put the new compressor in'],
    },
  ),
  rule(
    `${LEAD} [${CAME}] [today] (for|doing|to do) (a|the|that|this) <part> ${CHANGE_OUT} ${TODAY}`,
    cameTo,
    {
      unheard: true,
      alone: true,
      examples: ['here for the compressor swap', 'doing a compressor change out today'],
    },
  ),
];
