import type { PartId, WorkKindId } from '../../terms/names.ts';
import { always, did, named } from './done-to-part.ts';
import { POWER_OFF_RULES } from './power-off.ts';
import { AWAY_RULES } from './set-away.ts';
import { isNotDone } from '../words/not-done.ts';
import { wordBehind, wordsBehind } from '../words/clause-start.ts';
import { type Frame, heardRule, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId } from '../slots.ts';

/** A valve's stem closes the line; what else is closed is only shut again, and that is a finding. */
export const VALVES: ReadonlySet<PartId> = new Set<PartId>([
  'serviceValve',
  'suctionServiceValve',
  'dischargeServiceValve',
  'kingValve',
  'liquidLineSolenoid',
  'evaporatorPressureRegulator',
]);

const closing: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part === null) return null;
  if (VALVES.has(part)) return did('isolate', part, frame);
  return { findings: [{ part, state: 'closed', words: frame.wordsOf(frame.span) }] };
};

const seating =
  (work: WorkKindId): Means =>
  (tags, frame) => {
    const part = partId(tags['part']);
    return part !== null && VALVES.has(part) ? did(work, part, frame) : null;
  };

/** "Unplugged the drain line" clears it; unplugging anything that takes a plug takes its power. */
export const PIPES: ReadonlySet<PartId> = new Set<PartId>([
  'drainLine',
  'drainPan',
  'filterDrier',
  'condenser',
  'evaporator',
  'capillaryTube',
  'filter',
  'liquidLine',
  'suctionLine',
  'expansionValve',
]);

const unplugged: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null || PIPES.has(part) ? null : did('disable', part, frame);
};

/** "Hooked it back up": what was spoken of last, or the plug. */
const thatAgain: Means = (_tags, frame) => {
  const last = isPlugged(frame) ? 'plug' : (frame.context.lastPart ?? 'plug');
  const means = (part: PartId): Meaning => did('restore', part, frame);
  return { ofIt: { means, inSentence: true, otherwise: means(last) } };
};

const isPlugged = (frame: Frame): boolean => /plug/i.test(frame.wordsOf(frame.span));

interface Fitted {
  readonly part: PartId;
  readonly names: string;
  readonly on: WorkKindId;
}

/** Put on and taken off on every call; the words for them alone are talk. */
const FITTED: readonly Fitted[] = [
  {
    part: 'gauges',
    names: '(gages|~gage set|~manifold|~manifold gages|~hoses|~gages and hoses)',
    on: 'connect',
  },
  {
    part: 'caps',
    names: '(caps|~new caps|~cap|~valve caps|~valve cap|~stem caps|~cap nuts)',
    on: 'restore',
  },
  {
    part: 'panel',
    names:
      '(panel|~panels|~cover|~covers|~access panel|~front panel|~back panel|~panel cover|~~(evap|evaporator|coil|fan|fan motor|drain pan|compressor|condenser|control|control box|electrical|electrical box|bottom|top|side|kick) (cover|panel))',
    on: 'restore',
  },
];

const I = '<byMe>';
const MY = '[(the|my|~~that|~~this|~our|~all the|~all my|~both the)]';
const IS = '(is|are|~are both)';
const AGAIN = '[~(now|again|back|still|all)]';

/** "Gauges on, suction twelve": two words that say it by themselves where a sentence begins. */
const atStart =
  (means: Means): Means =>
  (tags, frame) =>
    frame.span.from === 0 ? means(tags, frame) : null;

/** "My gauges are off by two pounds": they read wrong. */
const unlessOffBy =
  (means: Means): Means =>
  (tags, frame) =>
    OFF_BY.test(wordBehind(frame)) ? null : means(tags, frame);
const OFF_BY = /^(?:by|about|around|a|maybe|like|some)$/;

/** "Cover on the condenser is missing": of the one that belongs there. */
const unlessOfPlace =
  (means: Means): Means =>
  (tags, frame) =>
    OF_PLACE.test(frame.endsAtPause ? '' : wordsBehind(frame, 7)) ? null : means(tags, frame);
const OF_PLACE =
  /^(?:(?:the|my|that|this) (?:\w+ ){1,4}?|(?:it|that|this) )(?:is|are|was|were|isn't|aren't|has|looks?|needs?|fell|came|got|leaks?|says|reads)\b/i;

function fittedRules({ part, names, on }: Fitted): readonly Rule[] {
  const put = always(on, part);
  const isOn = unlessOfPlace(put);
  const off = always('remove', part);
  return [
    heardRule(`${MY} ${names} ${IS} ${AGAIN} off [~now]`, unlessOffBy(off), {
      examples: [`my ${sampleOf(names)} are off`],
    }),
    heardRule(`${names} [back] off`, off, { apart: true }),
    rule(`${names} ${AGAIN} (removed|pulled|taken off)`, off),
    rule(`<pause> [(and|both|all|my|the)] ${names} off`, off),
    rule(`${names} off`, atStart(off)),
    rule(`${I} (took|pulled|got|take|taken) ${MY} ${names} off [(now|the unit|it)]`, off),
    rule(`${I} (pulled|removed|took off|disconnected|pulled off) ${MY} ${names}`, off),
    heardRule(`${MY} ${names} ${IS} ${AGAIN} (on|~connected|~hooked up|~tight|~back on)`, put, {
      examples: [`my ${sampleOf(names)} are on`],
    }),
    heardRule(`${names} [~(back|hooked|all)] (on|~up|~connected)`, isOn, { apart: true }),
    rule(`<pause> [(and|both|all|my|the)] ${names} [(back|hooked)] (on|up)`, isOn),
    rule(`${names} [(back|hooked)] (on|up)`, atStart(isOn)),
    rule(`(both|all) [(my|the)] ${names} back on`, put),
    rule(
      `${I} (put|hooked|hook|got|screwed|get|have) ${MY} ${names} [back] (on|up) [(now|it|the unit|the system|here|again)]`,
      put,
    ),
    rule(
      `[(i am|we are|just)] ((hooking|putting|throwing|getting) ${MY} ${names} [back] (on|up)|(hooking up|putting on|throwing on|putting back on|putting back) ${MY} ${names})`,
      put,
      { unheard: true, apart: true, examples: [`putting my ${sampleOf(names)} on`] },
    ),
    rule(`${I} (hooked up|put on|connected|hung|put back|screwed on) ${MY} ${names}`, put),
  ];
}

const sampleOf = (names: string): string => /\w+/.exec(names)?.[0] ?? '';

const JUMPER = '(jumper|~jumpers|~jumper wire|~jumper wires|~bypass|~bypass wire)';
/** "Closed it with a jumper": of what was named last. */
const jumpedIt: Means = (_tags, frame) =>
  isNotDone(frame)
    ? {}
    : {
        ofIt: {
          means: (part) => (JUMPED.has(part) ? did('bypass', part, frame) : null),
          inSentence: false,
        },
      };
/** "Put the switch back in circuit": the one that was spoken of. */
const switchBack: Means = (_tags, frame) => ({
  ofIt: {
    means: (part) => (JUMPED.has(part) ? did('restore', part, frame) : null),
    inSentence: false,
    otherwise: { remarks: [frame.wordsOf(frame.span)] },
  },
});
const JUMPED: ReadonlySet<PartId> = new Set<PartId>([
  ...(['highPressureSwitch', 'lowPressureSwitch', 'temperatureControl', 'overload'] as const),
  ...(['doorSwitch', 'defrostTimer', 'defrostTermination', 'controller', 'contactor'] as const),
  ...(['startRelay', 'fanControl', 'sensor'] as const),
]);

const JUMPER_RULES: readonly Rule[] = [
  rule(
    `${I} ((closed|made|bridged|shorted|jumped|bypassed|jumpered) it (with|using) (a|my|the) ${JUMPER}|(jumped|jumpered|bypassed|jumped around) it [out]|(put|threw|have|stuck) [(a|my)] ${JUMPER} (on|across|around) it)`,
    jumpedIt,
    { examples: ['closed it with a jumper'] },
  ),
  heardRule(
    `${JUMPER} (removed|off|~out|~pulled|~gone|~is removed|~has been removed)`,
    always('remove', 'jumper'),
    {
      apart: true,
      examples: ['jumper removed'],
    },
  ),
  rule(`<pause> ${JUMPER} (removed|off|out|pulled)`, always('remove', 'jumper')),
  rule(
    `[(there is|i have|i have got|i put|put|we have)] [a] ${JUMPER} (on|across|around) <the> <part>`,
    named('bypass'),
    {
      examples: ['there is a jumper on the high pressure switch'],
    },
  ),
  heardRule(
    `${MY} ${JUMPER} ${IS} (off|out|~gone|~removed|~pulled|~off of it)`,
    always('remove', 'jumper'),
    {
      examples: ['the jumper is off'],
    },
  ),
  rule(`${I} (pulled|took|removed) ${MY} ${JUMPER} [(off|out)]`, always('remove', 'jumper'), {
    examples: ['pulled the jumper', 'took the jumper off'],
  }),
  rule(`${I} got ${MY} ${JUMPER} (off|out)`, always('remove', 'jumper')),
  rule(
    `${I} (pulled|took|removed|got) ${MY} [(old|temporary)] ${JUMPER} (off|off of|out of|from) <the> <part>`,
    named('restore'),
    { examples: ['took the jumper off the low pressure switch'] },
  ),
  rule(
    `${I} (took (out|off)|pulled (out|off)|removed|pulled|cut out|yanked) ${MY} [(old|temporary)] ${JUMPER} [that] (somebody|someone|they|he|she|whoever|(the|a) (last|other|previous|night|day|maintenance) (guy|tech|company|crew|fella|outfit)) [had|has] (left|put|stuck|had|ran|installed|jammed|hooked) [in] (on|off|across|from|around|in) <the> <part>`,
    named('restore'),
    {
      unheard: true,
      examples: ['took out the jumper the last guy left on the low pressure switch'],
    },
  ),
  rule(
    `[(and|then|so)] ${I} (put|tied|hooked|wired|got|cut) the (switch|control|safety) back (in|into) [(the|its|it is)] [(circuit|line|loop|series)]`,
    switchBack,
    { unheard: true, examples: ['put the switch back in circuit'] },
  ),
  rule(`${MY} ${JUMPER} ${IS} back (off|out)`, always('remove', 'jumper'), {
    unheard: true,
    examples: ['jumper is back off'],
  }),
  rule(`${I} (jumped|jumpered|bypassed|jump|tied) <the> <part> (out|around)`, named('bypass'), {
    examples: ['jumped the defrost termination out'],
  }),
  heardRule(
    '<the> <part> (is|~are) [still] (jumped out|bypassed|~jumped|~jumpered|~jumpered out)',
    named('bypass'),
    {
      examples: ['low pressure switch is jumped out'],
    },
  ),
];

const SIDE_JUMPER_RULES: readonly Rule[] = [
  rule(
    `${I} (jumped|jumpered|bypassed) [out] [the] (low|low pressure|low side) [out]`,
    always('bypass', 'lowPressureSwitch'),
    { examples: ['jumped the low pressure'] },
  ),
  rule(
    `${I} (jumped|jumpered|bypassed) [out] [the] (high|high pressure|high side|high head) [out]`,
    always('bypass', 'highPressureSwitch'),
    { examples: ['jumped out the high pressure'] },
  ),
  rule(
    `${I} (pulled|took|removed|got) ${MY} ${JUMPER} (off|off of|out of|from) the (low|low pressure|low side)`,
    always('restore', 'lowPressureSwitch'),
    { examples: ['took my jumper off the low pressure'] },
  ),
  rule(
    `${I} (pulled|took|removed|got) ${MY} ${JUMPER} (off|off of|out of|from) the (high|high pressure|high side)`,
    always('restore', 'highPressureSwitch'),
    { examples: ['took my jumper off the high pressure'] },
  ),
  rule(
    `(<pause>|and|<pause> and) ${I} (tied|hooked|wired|put|plugged) it back [(in|up|on|together)]`,
    thatAgain,
    { examples: [] },
  ),
  rule('(i|we) (tied|hooked|wired|put|plugged) it back (in|up|on|together)', thatAgain, {
    examples: ['i tied it back in'],
  }),
];

const PART_RULES: readonly Rule[] = [
  rule(`${I} unplugged <the> <part>`, unplugged, { examples: ['unplugged the evaporator fan'] }),
  rule(
    `(${I} unplugged it|it is unplugged|the unit is unplugged|${I} unplugged the unit)`,
    always('disable', 'plug'),
    {
      examples: ['it is unplugged'],
    },
  ),
  rule('<the> <part> (is|are) [still] (disconnected|unplugged|unhooked|disabled)', unplugged, {
    examples: ['condenser fan is disconnected'],
  }),
  rule('<the> <part> (is|are) [still] (isolated|valved off|front seated)', named('isolate')),
  rule(
    `(${I} (plugged|hooked|wired) it back (in|up)|it is (plugged|hooked|wired) back (in|up)|the unit is plugged back in)`,
    thatAgain,
    { examples: ['plugged it back in'] },
  ),
  rule(`${I} (hooked|plugged|wired|put) <the> <part> back (up|in|on|together)`, named('restore'), {
    examples: ['hooked the condenser fan back up'],
  }),
  rule('<the> <part> (is|are) (hooked|plugged|wired) back (up|in)', named('restore'), {
    examples: ['condenser fan is hooked back up'],
  }),
  heardRule(
    '<the> <part> is back (in the circuit|on|~in|~in place|~in service|~up|~together)',
    named('restore'),
    {
      examples: ['low pressure switch is back in the circuit'],
    },
  ),
  rule(`${I} (closed|shut) <the> <part>`, closing, { examples: ['closed the king valve'] }),
  rule(`${I} front seated <the> <part>`, seating('isolate')),
  rule(`${I} back seated <the> <part>`, seating('restore')),
  rule('<the> <part> (is|are) back (open|seated)', seating('restore'), {
    examples: ['king valve is back open'],
  }),
  heardRule('<the> (valve is|~valves are) back (open|seated)', always('restore', 'serviceValve'), {
    examples: ['the valve is back seated'],
  }),
  rule(`${I} (propped|blocked|left|wedged) <the> <part> open`, named('open'), {
    examples: ['propped the door open'],
  }),
];

/** What was put on, taken off, closed, bypassed or set away, and what is put back. */
export const LEFT_OPEN_RULES: readonly Rule[] = [
  ...JUMPER_RULES,
  ...FITTED.flatMap(fittedRules),
  ...POWER_OFF_RULES,
  ...SIDE_JUMPER_RULES,
  ...AWAY_RULES,
  ...PART_RULES,
];
