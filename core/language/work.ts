import { type Means, type Rule, heardRule, rule } from './rule.ts';
import { partId, workId } from './slots.ts';

const done: Means = (tags, frame) => {
  const did = workId(tags['work']);
  const part = partId(tags['part']);
  return did === null ? null : { work: [{ did, part, words: frame.wordsOf(frame.span) }] };
};

/** "recovered the refrigerant": the work needs no part. */
const doneWithout: Means = (tags, frame) => {
  const did = workId(tags['work']);
  return did === null || !PARTLESS.includes(did) ? null : done(tags, frame);
};

const PARTLESS = ['recover', 'evacuate', 'pressureTest', 'leakCheck', 'defrost'];

const I =
  '[(i|we|~just|~i just|~have|~i have|~we have|~went ahead and|~i went ahead and|~i have just|~also|~i also|~and)]';
const EVERYTHING =
  '(the system|it|the unit|everything|the box|the refrigerant|the charge|the whole system|the gas|all the refrigerant|system|refrigerant|all joints)';

/** What was done at a part. */
export const WORK_RULES: readonly Rule[] = [
  heardRule(`${I} <done> <the> <part>`, done, {
    examples: ['i washed the condenser', 'i brushed the condenser'],
  }),
  rule(`${I} <done> <the> (old|bad|new|worn|dirty|torn|broken|failed|whole|loose) <part>`, done, {
    examples: ['replaced the torn door gasket'],
  }),
  rule(`<the> [new] <part> (has been|was|got) <done>`, done, {
    examples: ['the condenser has been cleaned'],
  }),
  rule('[the] <part> <done>', done, { alone: true, examples: ['condenser cleaned'] }),
  rule(`${I} <done> ${EVERYTHING}`, doneWithout, {
    examples: ['evacuated the system', 'i leak checked it'],
  }),
  rule(`${I} pulled a vacuum [on ${EVERYTHING}]`, doneWithout, {
    tags: { work: 'evacuate' },
    examples: ['pulled a vacuum'],
  }),
  rule(
    `${I} (did|ran|done) (a|the) (leak check|leak test|leak search) [on ${EVERYTHING}]`,
    doneWithout,
    {
      tags: { work: 'leakCheck' },
      examples: ['did a leak check'],
    },
  ),
  rule(`${I} (did|ran) (a|the) (pressure test|nitrogen test) [on ${EVERYTHING}]`, doneWithout, {
    tags: { work: 'pressureTest' },
    examples: ['did a pressure test'],
  }),
];
