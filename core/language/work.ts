import type { PartId, WorkKindId } from '../terms/names.ts';
import { settledFan } from './fans.ts';
import { type Means, type Rule, heardRule, rule } from './rule.ts';
import { partId, tagsIn, workId } from './slots.ts';

const done: Means = (tags, frame) => {
  const did = workId(tags['work']);
  const named = partId(tags['part']);
  const part = named === null ? null : settledFan(named, frame.context);
  return did === null ? null : { work: [{ did, part, words: frame.wordsOf(frame.span) }] };
};

/** "recovered the refrigerant": the work needs no part. */
const doneWithout: Means = (tags, frame) => {
  const did = workId(tags['work']);
  return did === null || !PARTLESS.includes(did) ? null : done(tags, frame);
};

const PARTLESS = ['recover', 'evacuate', 'pressureTest', 'leakCheck', 'defrost'];

/** "Replaced the start relay, start cap and overload": the same was done at each. */
const doneAtEach: Means = (tags, frame) => {
  const did = workId(tags['work']);
  const parts = [tags['part'], tagsIn(tags['second'])?.['part'], tagsIn(tags['third'])?.['part']];
  const words = frame.wordsOf(frame.span);
  const work = parts
    .map(partId)
    .flatMap((part) => (part === null || did === null ? [] : [{ did, part, words }]));
  return work.length === 0 ? null : { work };
};

/** Work of a name, where only the words around it tell it. */
const didSo =
  (did: WorkKindId, part?: PartId): Means =>
  (tags, frame) => ({
    work: [{ did, part: part ?? partId(tags['part']), words: frame.wordsOf(frame.span) }],
  });

/** What was not done, or not by us and now: no work of this visit. */
const notOurs: Means = () => ({});

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
  rule(`<the> [new] <part> (has been|have been|is been|was|were|got|is|are) [all] <done>`, done, {
    examples: ['the condenser has been cleaned'],
  }),
  rule('[the] <part> <done>', done, { alone: true, examples: ['condenser cleaned'] }),
  rule(
    `${I} <done> <the> <part> (and|<pause>) <the> <part:second> [(and|<pause> [and]) <the> <part:third>]`,
    doneAtEach,
    {
      examples: ['cleaned the condenser and the evaporator'],
    },
  ),
  rule(
    `[a] (new|brand new) <part> [(is|has been|was|got)] (installed|in|put in|on|put on)`,
    didSo('replace'),
    {
      examples: ['new condenser fan motor installed'],
    },
  ),
  rule(
    `${I} (repaired|fixed|patched|brazed|soldered|sealed|tightened) [up] (the|a|that) leak (at|on|in|by) <the> <part>`,
    didSo('repair'),
    { examples: ['repaired the leak at the joint'] },
  ),
  rule(
    `${I} (melted|thawed|steamed|chipped|knocked|cleared|got) [all] [the] ice (off|out of|off of|from) <the> <part>`,
    didSo('defrost'),
    { examples: ['melted the ice off the evaporator'] },
  ),
  rule(
    `${I} (put|ran|threw|kicked|started|forced) [(it|the unit|the box|this|<the> <part>)] [(in|into|through|on)] [a] [(manual|forced|hot gas)] defrost [cycle]`,
    didSo('defrost'),
    { examples: ['put it in defrost'] },
  ),
  rule(
    `${I} (added|put in|topped off|topped up|topped off with) [(some|a little|more|a bit of|a little bit of|a touch of)] [the] (refrigerant|gas|charge|freon)`,
    didSo('add'),
    { examples: ['added refrigerant', 'topped off the charge'] },
  ),
  rule(
    `${I} (restored [the] power|(turned|powered|switched|fired) it (back on|back up|on again)|put power back (on|to) [it])`,
    didSo('restore', 'disconnect'),
    { examples: ['restored power'] },
  ),
  rule(
    `${I} ((killed|cut|shut off|turned off) [the] power (to|at) <the> <part:at>|(shut|turned|switched) (off the unit|the unit off|it off)|(shut off|turned off|locked out|isolated) the unit)`,
    didSo('isolate', 'disconnect'),
    { examples: ['shut the unit off'] },
  ),
  rule(
    `(have not|has not|had not|never|did not|nobody|nobody has|no one|no one has|not) [(yet|even)] <done> <the> <part> [yet]`,
    notOurs,
    { examples: ['i have not cleaned the condenser yet'] },
  ),
  rule(
    `(he|she|they|who|somebody|someone|<who>|the [last] (guy|tech|company|crew)|(last|other|another|previous|some) (guy|tech|company|crew)) [(just|already|had|have|has|never)] <done> <the> <part>`,
    notOurs,
    { examples: ['the last guy replaced the compressor'] },
  ),
  rule('(i|we|you|they|he|somebody) (should|could|would|might) have <done> <the> <part>', notOurs, {
    examples: ['i should have cleaned the condenser first'],
  }),
  rule(
    `${I} <done> <the> <part> (last (time|visit|week|month|year|summer|winter)|yesterday|a (week|month|year) ago|the other day)`,
    notOurs,
    { examples: ['we replaced the compressor last year'] },
  ),
  rule(`${I} <done> [${EVERYTHING}] with [dry] nitrogen`, doneWithout, {
    examples: ['pressure tested with nitrogen'],
  }),
  rule(`${I} <done>`, doneWithout, { alone: true, examples: ['pressure tested'] }),
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
