import { stateOf } from '../findings/state-of.ts';
import { opensSentence } from '../words/clause-start.ts';
import { heardRule, type Means, type Rule, rule } from '../rule.ts';
import { causeId, partId, tagsIn } from '../slots.ts';

const cause: Means = (tags, frame) => {
  const value = causeId(tags['cause']);
  return value === null
    ? null
    : { facts: [{ fact: 'cause', value, words: frame.wordsOf(frame.span) }] };
};

/** "Turns out it was the run capacitor": a part that is to blame has failed. */
/** The first is what it is held to be; the other is to blame as well, and not found so again. */
const twoCauses: Means = (tags, frame) => {
  const [one, other] = [tagsIn(tags['one']), tagsIn(tags['other'])].map((named) =>
    causeId(named?.['cause']),
  );
  const words = frame.wordsOf(frame.span);
  return one == null || other == null || one === other
    ? null
    : { facts: [{ fact: 'cause', value: one, words }], remarks: [words] };
};

const partToBlame: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const words = frame.wordsOf(frame.span);
  return part === null ? null : { findings: [{ part, state: 'failed', words }] };
};

const stateToBlame: Means = (tags, frame) => stateOf('state')(tags, frame);

const WAS = '(is|was|has been)';
/** Said once it is found; "I think it's" is not found yet. */
const FOUND = `(the cause is|~[the] [root] (cause|problem|trouble|culprit|fault|issue|diagnosis) ${WAS}|~(it|that) turned out to be|~turns out (it|that|the problem|the cause) ${WAS}|~i am calling it|~i call it)`;
const BLAMED = `([the] [root] (cause|problem|trouble|culprit|fault|issue|diagnosis) ${WAS}|(it|that) turned out to be|turns out (it|that|the problem|the cause) ${WAS}|what i found was|i am calling it)`;
const ARTICLE = '[(a|~an|~the|~some)]';

/** Thinking aloud keeps nothing. */
const notYetFound: Means = () => ({});

const outOfCharge: Means = (_tags, frame) => ({
  facts: [{ fact: 'cause', value: 'undercharge', words: frame.wordsOf(frame.span) }],
});

/** Of a sight glass it is told what it shows; of anything else nobody knows what is meant, so the words are kept. */
const lowOrEmpty: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const isEmptyGlass = frame.context.lastPart === 'sightGlass' && /empty$/i.test(words);
  return isEmptyGlass
    ? { facts: [{ fact: 'sightGlass', value: 'empty', words }] }
    : { remarks: [words] };
};

/** The technician's own verdict: it outranks what the readings made likely. */
export const CAUSE_RULES: readonly Rule[] = [
  heardRule(`${FOUND} ${ARTICLE} <cause>`, cause, {
    examples: ['the cause was air in the system', 'turns out it was a restricted drier'],
  }),
  rule(`${FOUND} ${ARTICLE} <cause:one> [<pause>] (and|plus) ${ARTICLE} <cause:other>`, twoCauses, {
    unheard: true,
    examples: ['the cause was air in the system and a dirty condenser'],
  }),
  rule(
    `((it|that|[the] unit|[the] system) ${WAS}|i found|found|we found) ${ARTICLE} <charge>`,
    cause,
    {
      examples: ["it's low on charge", 'it was overcharged'],
    },
  ),
  rule(
    `(i (think|guess|bet|suspect|am thinking)|maybe|probably|(it|that) (might|may|could) be) [(it|that) (is|was|might be|could be)] ${ARTICLE} <cause>`,
    notYetFound,
    { examples: ["i think it's low on charge"] },
  ),
  rule(
    `[so] (<the> (system|unit) ${WAS} <very> flat|(it|she|<the> (system|unit)) ${WAS} <very> (bone dry|gas flat|dead flat|flat on gas)|<the> system ${WAS} <very> (low|short|empty)|<the> charge ${WAS} <very> (low|short|gone|down)|[there is] no (charge|gas|refrigerant) [left] in (it|there|the system|the unit))`,
    outOfCharge,
    { examples: ['system is low', 'it is bone dry'] },
  ),
  rule(
    `(i (think|guess|bet|suspect|am thinking)|maybe|probably|it is probably) (it|she|that) [(is|was|might be|could be)] <very> (low|short|flat|empty|a little low)`,
    notYetFound,
    { examples: ['i think it is low'] },
  ),
  rule('(it|she|that) (is|was) <very> (low|empty)', lowOrEmpty, {
    alone: true,
    examples: ['it is empty'],
  }),
  rule('(so|then|and) (it is|that is) (a|the) [(bad|failed|faulty|dead)] <part>', partToBlame, {
    examples: ['so it is the defrost timer'],
  }),
  rule('<charge>', cause, {
    apart: true,
    beforeTold: true,
    only: opensSentence,
    examples: ['low on charge'],
  }),
  rule(
    `([the] [root] (cause|problem|trouble|culprit|fault|issue) ${WAS}|(it|that) turned out to be|turns out (it|that|the problem|the cause) ${WAS}) (a|an|the) [(bad|failed|faulty|dead)] <part>`,
    partToBlame,
    { examples: ['turns out it was the run capacitor', 'the problem was a bad contactor'] },
  ),
  rule(
    `${BLAMED} (a|an|the) [(badly|partly|really|old)] (stuck|weak|worn [out]|restricted|seized|cracked|broken|blown|sticking|sticky|welded|torn|clogged|leaky|leaking|frozen|swollen|shorted|pitted) <part>`,
    partToBlame,
    { unheard: true, examples: ['the cause was a stuck expansion valve'] },
  ),
  rule(`${BLAMED} (a|an|the) <state> <part>`, stateToBlame, {
    unheard: true,
    examples: ['the cause was a burnt contactor'],
  }),
];
