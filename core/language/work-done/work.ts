import { wordBehind } from '../words/clause-start.ts';
import { capBeside, endsTheList, unlessNameGoesOn } from '../findings/part-lists.ts';
import { CLEANING, type PartId, type WorkKindId } from '../../terms/names.ts';
import { isTakenOutByFault } from '../words/taken-out.ts';
import { isDoneTo } from '../words/done-to.ts';
import { fanBeside, FANS, settledFan } from '../words/fans.ts';
import { partSwapped } from '../findings/finding-of.ts';
import { PIPES, VALVES } from './left-open.ts';
import { isPowered } from './powered-again.ts';
import type { Tags } from '../../grammar/nodes.ts';
import { type Frame, heardRule, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { IT, SPLIT, SPLIT_IT } from '../words/split-verbs.ts';
import { isNotDone } from '../words/not-done.ts';
import { partId, tagsIn, workId } from '../slots.ts';
import { nothing } from '../plain-means.ts';
import { DONE_BY_OTHERS_RULES, doneByOthers } from './done-by-others.ts';

const done: Means = unlessNameGoesOn((tags, frame) => {
  const did = workId(tags['work']);
  const named = partId(tags['part']);
  const words = frame.wordsOf(frame.span);
  const part = named === null ? null : settledFan(partMeant(did, named, frame), frame.context);
  if (did === null || isTakenOutByFault(frame)) return null;
  // "Pulled the product" is what became of it, and leaves the unit without nothing.
  if (part === 'product' && did === 'remove') return { remarks: [words] };
  // "Got the fan unplugged" took its power.
  const isCut = part !== null && !PIPES.has(part) && /\bunplugged\b/i.test(words);
  return { work: [{ did: isCut ? 'disable' : did, part, words }] };
});

/** The coil that ice is taken off is the evaporator's. */
const coilWorkedOn = (did: WorkKindId | null, part: PartId, words: string): PartId =>
  did === 'defrost' && part === 'condenser' && !/cond|outdoor/i.test(words) ? 'evaporator' : part;

function partMeant(did: WorkKindId | null, named: PartId, frame: Frame): PartId {
  const words = frame.wordsOf(frame.span);
  const part = coilWorkedOn(did, named, words);
  return did === 'replace' ? partSwapped(part, frame) : part;
}

/** "Timer's set for four defrosts a day" tells where it stands. */
const unlessSetTo: Means = (tags, frame) =>
  (/\bset$/i.test(frame.wordsOf(frame.span)) && /^(?:for|to|at|on)$/.test(wordBehind(frame))) ||
  FOUND_PULLED.test(frame.wordsOf(frame.span))
    ? null
    : done(tags, frame);
/** "Disconnect was pulled", "the contactor is welded": so they were found. */
const FOUND_PULLED =
  /\bdisconnect (?:was|were) pulled$|\b(?:contactors?|relays?|thermostats?|stats?|switch(?:es)?|controls?|timers?|clocks?|terminations?|contacts?|points)(?:'s| is| are| was| were| got) (?:all )?welded$/i;

/** "recovered the refrigerant": the work needs no part. */
const doneWithout: Means = (tags, frame) => {
  const did = workId(tags['work']);
  return did === null || !PARTLESS.includes(did) ? null : done(tags, frame);
};

const PARTLESS = ['recover', 'evacuate', 'pumpDown', 'pressureTest', 'leakCheck', 'defrost'];

/** "Jumpered the stat and the compressor took right off": the last is told of anew. */
const DOES =
  /^(?:took|fired|came|kicked|went|shot|comes|kicks|is|was|still|finally|just|would|tripped|trips|held|holds|quit|stopped|pulled|pulls)$/i;

/** "Replaced the start relay, start cap and overload": the same was done at each. */
const doneAtEach: Means = (tags, frame) => {
  const did = workId(tags['work']);
  if (did === null || DOES.test(wordBehind(frame)) || isTakenOutByFault(frame)) return null;
  const told = [tags['part'], tagsIn(tags['second'])?.['part'], tagsIn(tags['third'])?.['part']];
  const words = frame.wordsOf(frame.span);
  const parts = capBeside(told.map(partId), words).filter((part) => part !== null);
  const work = parts.map((part) => ({ did, part: fanBeside(parts, part, frame.context), words }));
  return work.length === 0 ? null : { work };
};

/** Work of a name, where only the words around it tell it. */
const didSo = (did: WorkKindId, part?: PartId): Means =>
  unlessNameGoesOn((tags, frame) => ({
    work: [{ did, part: part ?? partWorkedOn(did, tags, frame), words: frame.wordsOf(frame.span) }],
  }));

function partWorkedOn(did: WorkKindId, tags: Tags, frame: Frame): PartId | null {
  const named = partId(tags['part']);
  return named === null ? null : partMeant(did, named, frame);
}

/** A valve that was shut for it is not what was brazed. */
function jointOf(part: PartId, words: string, frame: Frame): PartId {
  const isBrazed = /\b(?:brazed|soldered|sweated|welded)\b/i.test(words);
  return isBrazed && VALVES.has(part) ? 'joint' : settledFan(part, frame.context);
}

/** "Leak checked every joint on the liquid line": the joint, and not the line that it is on. */
const doneAtBit: Means = (tags, frame) =>
  done(ON_LINE.test(frame.wordsOf(frame.span)) ? { ...tags, part: 'joint' } : tags, frame);
const ON_LINE =
  /\b(?:joints?|fittings?|flares?|elbows?|unions?|brazes?)(?: \w+)? (?:on|in|at|of|along) (?:the |my |a )?(?:suction|liquid|discharge|hot gas|vapor)/i;

/** "Brushed it", "put in a new one": of the part that was named. */
const didIt =
  (kind?: WorkKindId): Means =>
  (tags, frame) => {
    const did = kind ?? workId(tags['work']);
    if (did === null || did === 'add' || did === 'open') return null;
    const words = frame.wordsOf(frame.span);
    // "Pulled the fuses, set them aside" adjusts nothing.
    if (did === 'adjust' && PUT_DOWN.test(`${words} ${wordBehind(frame)}`)) return {};
    if (isNotDone(frame)) return {};
    const means = (named: PartId): Meaning => {
      const meant = CLEANING.has(did) ? dirtyOf(named, frame) : named;
      const part = coilWorkedOn(did, jointOf(meant, words, frame), words);
      return isDoneTo(part, { did, words })
        ? { work: [{ did, part, words }] }
        : { remarks: [words] };
    };
    return { ofIt: { means, inSentence: false } };
  };

/** "Condenser's dirty, fan's running though": what is then blown out is what was found dirty. */
const dirtyOf = (part: PartId, { context }: Frame): PartId =>
  FANS.includes(part) ? (context.dirtyCoil ?? part) : part;

const PUT_DOWN =
  /\bset (?:it|them|'?em|that|those|her) (?:aside|down|off|on|over|in|out|to the side)\b/i;

/** What was not done, or not by us and now: no work of this visit. */
const notOurs = nothing;

const I = '<byUs>';
const EVERYTHING =
  '(the system|it|the whole (thing|unit|system|circuit)|all of it|all the (joints|fittings|connections|flares)|every joint|the unit|everything|the box|the refrigerant|the charge|the whole system|the gas|all the refrigerant|system|refrigerant|all joints)';

/** A coil is vacuumed of its dirt, a system of its air. */
const vacuumedIt: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const means = (part: PartId): Meaning | null =>
    DUSTY.has(part) ? { work: [{ did: 'clean', part, words }] } : null;
  return {
    ofIt: {
      means,
      inSentence: false,
      otherwise: { work: [{ did: 'evacuate', part: null, words }] },
    },
  };
};
const DUSTY: ReadonlySet<PartId> = new Set<PartId>([
  ...(['condenser', 'evaporator', 'drainLine', 'drainPan', 'filter', 'fanBlade'] as const),
  ...(['condenserFan', 'evaporatorFan'] as const),
]);

const NEW_BIT = '(coil|coils|core|cores|head|strap|spring|seat|stem)';

/** What was done at a part. */
export const WORK_RULES: readonly Rule[] = [
  rule(`${I} vacuumed (it|them|her) (out|off|up)`, vacuumedIt, { examples: [] }),
  heardRule(`${I} <done> <the> <part>`, done, {
    examples: ['i washed the condenser', 'i brushed the condenser'],
  }),
  rule(`${I} <done> <the> <bit> <part>`, doneAtBit, {
    examples: ['tightened the packing nut on the king valve'],
  }),
  rule(
    `${I} <done> <the> [(left|right|top|bottom|middle|back|front|other|center|upper|lower|first|second|one)] [hand] (old|bad|new|worn|dirty|torn|broken|failed|whole|entire|loose|same|left|right|top|bottom|middle|back|front|other|center|upper|lower) [(side|hand|one)] <part>`,
    done,
    {
      examples: ['replaced the torn door gasket'],
    },
  ),
  rule(
    `${I} <done> <the> (leaking|leaky|frozen [up]|iced [up]|clogged [up]|plugged [up]|burnt [(out|up)]|dead|blown|stuck|cracked|corroded|noisy|kinked|tripped|seized|pitted|welded|weak|rusted) <part>`,
    done,
    { unheard: true, examples: ['repaired the leaking joint'] },
  ),
  rule(
    `<the> [new] <part> (has been|have been|is been|was|were|got|is|are) [all] <done>`,
    unlessSetTo,
    {
      examples: ['the condenser has been cleaned'],
    },
  ),
  rule(
    `${I} (pulled|got|took|vacuumed) [all] [the] (charge|refrigerant|gas|freon) [(out|out of it|off)]`,
    didSo('recover'),
    { examples: ['pulled the charge'] },
  ),
  rule('(i|we) did <todo> <the> <part>', done, { examples: ['i did clean the condenser'] }),
  rule(
    `${I} (pulled|took|disconnected|unhooked|lifted|unplugged) <the> (leads|wires|lead|wire|plug|connector) [off] (off|off of|from|on|at|to) <the> <part>`,
    didSo('disable'),
    { examples: ['took the wires off the condenser fan'] },
  ),
  rule(
    `${I} (pulled|took|disconnected|unhooked|lifted|unplugged) <the> <part> (leads|wires|lead|wire|plug|connector) [off]`,
    didSo('disable'),
    { examples: ['pulled the defrost heater leads'] },
  ),
  rule(
    `${I} (pinched|crimped|pinched off|crimped off) [(off|it|it off)] [(and|then)] (brazed|soldered|sealed|welded) [it] [(shut|off|closed|over|up)]`,
    didSo('repair', 'accessFitting'),
    { examples: ['pinched and brazed it shut'] },
  ),
  rule(
    `${I} (pinched|crimped) [off] <the> ([(process|~~access|~~charging|~~pinch off)] (stub|tube|stubs|~~tubes)|line|~~lines) [~~off] [(and|then)] [[~~silver] (brazed|soldered|sealed|welded)] [(it|~~them)] [(shut|off|closed|over|up)]`,
    didSo('repair', 'accessFitting'),
    { examples: ['pinched off the stub and brazed it'] },
  ),
  rule(`${I} (steamed|melted|thawed|defrosted|heated) <the> <part> (off|out|down|clear)`, done, {
    tags: { work: 'defrost' },
    examples: ['steamed the evaporator off'],
  }),
  rule(
    `${I} (repaired|fixed|patched|brazed|soldered|sealed) [up] (the|a|that) leak [(up|shut)]`,
    didSo('repair'),
    { examples: ['soldered the leak up'] },
  ),
  rule(
    `${I} (cut out|pulled|took out|removed|cut) <the> <part> and <the> <part:second> [out] and (changed|replaced|put in new ones for|swapped) (both|them both|both of them|them)`,
    doneAtEach,
    {
      unheard: true,
      tags: { work: 'replace' },
      examples: ['cut out the dryer and the cap tube and changed both'],
    },
  ),
  rule('[the] <part> <done>', done, {
    apart: true,
    // "Hose blew off": by itself.
    only: (frame) => !/\bblew (?:off|out|up)$/i.test(frame.wordsOf(frame.span)),
    beforeTold: true,
    examples: ['condenser cleaned'],
  }),
  rule(
    `${I} <done> <the> <part> (and|<pause>) <the> [~~new] <part:second> [(and|<pause> [and]) <the> [~~new] <part:third>]`,
    doneAtEach,
    {
      only: endsTheList,
      examples: ['cleaned the condenser and the evaporator'],
    },
  ),
  rule(`${I} <done> <the> <part> (the|my) <part:second> and <the> <part:third>`, doneAtEach, {
    only: endsTheList,
    examples: ['replaced the start relay the start cap and the overload'],
  }),
  rule(
    `${I} (put|installed|got|stuck|threw|mounted|fitted) [(a|some)] new ${NEW_BIT} (on|in|for|into) <the> <part>`,
    didSo('replace'),
    { examples: [] },
  ),
  ...SPLIT.map(([did, said]) => rule(`${I} ${said}`, didSo(did))),
  rule(`${I} (hit|pushed|pressed|punched) (the|a) reset [button]`, didSo('reset'), {
    examples: ['pushed the reset button'],
  }),
  rule(
    `[a] (new|brand new) <part> and [(a|new|a new)] <part:second> [(is|are|both)] (in|installed|on|put in|mounted|~~(went in|went on))`,
    doneAtEach,
    { tags: { work: 'replace' }, examples: ['new contactor and run cap in'] },
  ),
  rule(
    `(<the> [new] <part> is (in|installed|put in|mounted)|[a] new <part> in [place])`,
    didSo('replace'),
    { apart: true, examples: ['new start relay is in'] },
  ),
  rule(
    '<the> new <part> is [all] (brazed|sweated|soldered|welded|wired|bolted|screwed|mounted|hung) (in|up|on)',
    didSo('replace'),
    { unheard: true, examples: ['new start relay is wired in'] },
  ),
  rule(
    `${I} [(am|was|just)] ((finished|finished up|got done|got through|done|am done|ended up|wound up|completed|just got done|just finished) <working> <the> <part>|had to <todo> <the> [(new|whole|old)] <part>)`,
    done,
    { examples: ['just finished cleaning the condenser'] },
  ),
  rule(
    `[a] (new|brand new) <part> [(is|has been|was|got)] (installed|in|put in|on|put on)`,
    didSo('replace'),
    {
      examples: ['new condenser fan motor installed'],
    },
  ),
  rule(
    `${I} (repaired|fixed|patched|brazed|soldered|sealed|tightened|welded|epoxied|rebrazed|sweated) [(up|over|shut)] (the|a|that) [(small|little|bad)] (leak|pinhole|hole|crack|split|break|kink|rub through) (at|on|in|by) <the> [<bit>] <part>`,
    didSo('repair'),
    { examples: ['repaired the leak at the joint'] },
  ),
  rule(
    `${I} [(am|was|just)] (finished|got done|am done|done|ended up|wound up|just finished) (repairing|fixing|patching|brazing|soldering|sealing|welding) [up] (the|a|that) [(small|little|bad)] (leak|pinhole|hole|crack|split) (at|on|in|by) <the> [<bit>] <part>`,
    didSo('repair'),
    { examples: ['ended up repairing the leak at the suction line'] },
  ),
  rule(
    `${I} (melted|thawed|steamed|chipped|knocked|cleared|got|removed|broke|scraped|took|beat|cleaned) [all] [the] ice (off|out of|off of|from) <the> <part>`,
    done,
    { tags: { work: 'defrost' }, examples: ['melted the ice off the evaporator'] },
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
  rule(`${I} (topped it (off|up)|gassed it up|filled it up|charged it up)`, didSo('add'), {
    examples: ['topped it off'],
  }),
  rule('power on', didSo('restore', 'disconnect'), {
    apart: true,
    beforeTold: true,
    examples: ['power on'],
  }),
  rule('power off', didSo('isolate', 'disconnect'), {
    apart: true,
    beforeTold: true,
    examples: ['power off'],
  }),
  rule(`${I} left it locked (out|off) [and tagged]`, didSo('isolate', 'disconnect'), {
    examples: ['left it locked out'],
  }),
  rule(
    `${I} (restored [the] power|(turned|powered|switched|fired) it (back on|back up|on again)|put power back (on|to) [it])`,
    didSo('restore', 'disconnect'),
    { only: isPowered, examples: ['restored power'] },
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
    doneByOthers,
    { examples: ['the last guy replaced the compressor'] },
  ),
  ...DONE_BY_OTHERS_RULES,
  rule(
    `(i|we|they|he|she|<pause>|you) (do not|did not|will not|am not|are not|is not|can not|could not|would not|cannot|never) [(want|need|going|have|about|able|ready)] [to] (<todo>|touch|cut) (it|them|that|<the> <part>) [(yet|now|again|anymore|today)]`,
    notOurs,
    { examples: ['i do not want to reset it yet'] },
  ),
  rule(
    '(do not|did not|will not|not going to) [(want|need|have)] [to] (<todo>|touch|cut) (it|them|that|<the> <part>) [(yet|now|again|anymore|today)]',
    notOurs,
    { alone: true, examples: ['do not want to reset it yet'] },
  ),
  rule(
    `(he|she|they|somebody|someone|who|<who>|the [last] (guy|tech|company|crew)) [(just|already|had|have|has|keep|kept|keeps)] <done> (it|them|that) [(once|twice|again|three times|a few times|last (week|month|year|night|summer|winter)|yesterday|this morning)]`,
    notOurs,
    { examples: ['they reset it twice'] },
  ),
  rule(
    '[(i|we|you|they|he|somebody)] ((should|could|would|might|must) have|[(am|is|are|was|were)] (supposed|meant) to have|did you|have you) <done> <the> [(old|new)] <part>',
    notOurs,
    {
      examples: ['i should have cleaned the condenser first'],
    },
  ),
  rule(
    `${I} <done> <the> [old] [one] <part> (last (time|visit|week|month|year|summer|winter)|yesterday|a (week|month|year) ago|the other day)`,
    notOurs,
    { examples: ['we replaced the compressor last year'] },
  ),
  rule(`${I} <done> [${EVERYTHING}] with [dry] nitrogen`, doneWithout, {
    examples: ['pressure tested with nitrogen'],
  }),
  rule(`${I} <done>`, doneWithout, { apart: true, examples: ['pressure tested'] }),
  rule(`${I} <done> ${EVERYTHING}`, doneWithout, {
    examples: ['evacuated the system', 'i leak checked it'],
  }),
  rule(
    `${I} (steamed|melted|thawed|defrosted) (it|the ice|that|all (of it|that|the ice)) (off|out|down|away) [with (hot water|a steamer|steam|a hose|warm water|water|a heat gun)]`,
    didSo('defrost'),
    { examples: ['melted it off with hot water'] },
  ),
  rule(`(i|we) have got ${EVERYTHING} [all] <done>`, doneWithout, {
    examples: ['we have got it evacuated'],
  }),
  rule('(i|we) have got <the> <part> [all] <done>', done, {
    // "Got the control set to cut out at four hundred" tells where it stands.
    only: (frame) => !/^(?:to|at|for)$/.test(wordBehind(frame)),
    examples: ['i have got the door switch bypassed'],
  }),
  rule(`${I} (triple|double|deep) evacuated [${EVERYTHING}]`, doneWithout, {
    tags: { work: 'evacuate' },
    examples: ['triple evacuated'],
  }),
  rule(`${I} (vacuumed|evacuated) ${EVERYTHING} (out|down)`, doneWithout, {
    tags: { work: 'evacuate' },
    examples: ['vacuumed it down'],
  }),
  ...SPLIT_IT.map(([did, said]) => rule(`${I} ${said}`, didIt(did))),
  rule(`[(i|we|and|finally)] got (it|them) <done>`, didIt(), {
    apart: true,
    unheard: true,
    examples: ['got it swapped out'],
  }),
  rule(`it (has been|is been|got) <done>`, didIt(), {
    apart: true,
    unheard: true,
    examples: ['it got replaced'],
  }),
  rule(`${I} <done> ${IT}`, didIt(), {
    // "Pulled it down to four hundred" took nothing out.
    only: (frame) => !/^down$/i.test(wordBehind(frame)),
    examples: ['brushed it'],
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
  rule(
    `(${I} pumped|${I} [(am|was|just)] (finished|done|got done|am done|just got done|just finished) pumping) (${EVERYTHING}|her|this thing|the charge) down [into the receiver]`,
    didSo('pumpDown'),
    { examples: ['pumped it down'] },
  ),
  rule('[(it|the unit|the system|everything) is] [all] pumped down', didSo('pumpDown'), {
    apart: true,
    examples: ['it is pumped down'],
  }),
  rule(`${I} (did|ran|done) a pump down [on ${EVERYTHING}]`, didSo('pumpDown'), {
    examples: ['did a pump down'],
  }),
  rule(`${I} (did|ran) (a|the) (pressure test|nitrogen test) [on ${EVERYTHING}]`, doneWithout, {
    tags: { work: 'pressureTest' },
    examples: ['did a pressure test'],
  }),
];
