import type { Tags } from '../../grammar/nodes.ts';
import type { PartId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { isCutShort } from '../numbers/cut-numbers.ts';
import { amountIn, measured, readingOf } from '../numbers/measure.ts';
import { liesAbove } from '../numbers/plausible.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { trippedAt } from '../readings/readings.ts';
import { leftToAsk } from '../readings/reading-means.ts';
import { remark } from '../plain-means.ts';
import { partId, tagsIn } from '../slots.ts';
import type { Reading } from '../utterance.ts';

/** A setting is a pressure: degrees are a thermostat's, and not ours to keep as one. */
function setting(quantity: QuantityId, amount: Tags | null, frame: Frame): readonly Reading[] {
  const found =
    amount === null ? null : readingOf(quantity, amountIn(amount), { place: null, frame });
  return found === null ? [] : [found];
}

const settings = (readings: readonly Reading[], expected: number): ReturnType<Means> =>
  readings.length === expected ? { readings } : null;

export const one =
  (quantity: QuantityId): Means =>
  (tags, frame) =>
    settings(setting(quantity, tags, frame), 1);

const PAIRS = {
  low: ['lowCutinPressure', 'lowCutoutPressure'],
  fan: ['fanCutinPressure', 'fanCutoutPressure'],
} as const;

function pairOf(which: keyof typeof PAIRS, tags: Tags, frame: Frame): Meaning | null {
  const [into, out] = PAIRS[which];
  const cutIn = setting(into, tagsIn(tags['in']), frame);
  const cutOut = setting(out, tagsIn(tags['out']), frame);
  return settings([...cutIn, ...cutOut], 2);
}

/** What cycles a condenser fan, by whatever of it was named; an evaporator's fan waits for its coil to be cold. */
const CYCLED: readonly (PartId | null)[] = [
  'fanControl',
  'condenserFan',
  'condenserFanMotor',
  'fan',
];

/**
 * What cuts in as well as out is the control that was named, else the low side's, unless the condenser fan's was spoken
 * of before.
 */
export const inAndOut: Means = (tags, frame) => {
  const named = partId(tags['part']);
  if (isCutShort(frame) || (named !== null && named !== 'lowPressureSwitch' && !isCycled(named)))
    return null;
  const low = pairOf('low', tags, frame);
  if (low === null) return null;
  if (named !== null) return isCycled(named) ? pairOf('fan', tags, frame) : low;
  const ofFan = (part: PartId): Meaning | null =>
    part === 'fanControl' && !isTooLow(tagsIn(tags['in']) ?? {}, frame)
      ? pairOf('fan', tags, frame)
      : null;
  if (mayBeDegrees(tags)) return isOfThermostat(frame) ? remark(tags, frame) : bothLeft(tags);
  const isNoLow = controlBySetting(tagsIn(tags['in']) ?? {}, frame) === 'highCutoutPressure';
  return { ofIt: { means: ofFan, inSentence: false, otherwise: isNoLow ? bothLeft(tags) : low } };
};

/** "Cuts in at thirty nine and out at thirty three": as close together and as high as a thermostat's, said in neither unit. */
function mayBeDegrees(tags: Tags): boolean {
  const into = amountIn(tagsIn(tags['in']) ?? {});
  const out = amountIn(tagsIn(tags['out']) ?? {});
  const isBare = into.unit === null && out.unit === null;
  if (!isBare || into.value === null || out.value === null) return false;
  return into.value >= LEAST_CUT_IN && into.value - out.value <= CLOSEST;
}
/** "Set it at thirty six." "Cut in forty, cut out thirty four." */
const isOfThermostat = ({ context: { lastPart, lastQuantity } }: Frame): boolean =>
  lastPart === 'temperatureControl' || lastQuantity === 'setpointTemp';
/** Ours: a low pressure control that lets in so high cuts out further below. */
const LEAST_CUT_IN = 30;
const CLOSEST = 8;

export const isCycled = (part: PartId | null): boolean => CYCLED.includes(part);

/** "Fan kicks on at thirty" is no pressure that a condenser is held at. */
const isTooLow = (tags: Tags, frame: Frame): boolean => {
  const found = measured('headPressure', amountIn(tags), frame.context.units);
  if (found?.value === undefined || found.unit === null) return true;
  return liesAbove(LOW_BELOW, { value: found.value, unit: found.unit });
};

/** Where a control that was named lets in and cuts out, or the one that can be set so. */
const acts =
  (which: 'in' | 'out'): Means =>
  (tags, frame) => {
    const part = partId(tags['part']);
    if (isCutShort(frame)) return null;
    if (isCycled(part)) {
      if (isTooLow(tags, frame)) return null;
      return one(which === 'in' ? 'fanCutinPressure' : 'fanCutoutPressure')(tags, frame);
    }
    if (which === 'out')
      return part === null ? outOfLast(tags, frame) : settingByKind(tags, part, frame);
    return part === null || part === 'lowPressureSwitch' ? letsIn(tags, frame) : null;
  };

const bothLeft = (tags: Tags): Meaning => ({
  unclaimed: ['in', 'out'].flatMap((slot) => leftToAsk(tagsIn(tags[slot]) ?? {}).unclaimed ?? []),
});

/** "Cuts in at two twenty" is no low side's: of the fan, where that was spoken of, else asked about. */
const letsIn: Means = (tags, frame) => {
  const low = one('lowCutinPressure')(tags, frame);
  if (low === null) return null;
  const otherwise = controlBySetting(tags, frame) === 'highCutoutPressure' ? leftToAsk(tags) : low;
  const means = (part: PartId): Meaning | null =>
    isCycled(part) && !isTooLow(tags, frame) ? one('fanCutinPressure')(tags, frame) : null;
  // "Thermostat's set for thirty six, cuts in at forty"
  const ofSetting = (read: QuantityId): Meaning | null =>
    read === 'setpointTemp' ? { remarks: [frame.wordsOf(frame.span)] } : null;
  return {
    ofThat: { means: ofSetting, otherwise },
    ofIt: { means, inSentence: false, otherwise },
  };
};

const fanAlone =
  (which: 'in' | 'out'): Means =>
  (tags, frame) =>
    isCycled(partId(tags['part'])) ? acts(which)(tags, frame) : null;

export const actsOutAndIn: Means = (tags, frame) => {
  const [into, out] = [tagsIn(tags['in']), tagsIn(tags['out'])];
  if (into === null || out === null) return null;
  const part = tags['part'] === undefined ? {} : { part: tags['part'] };
  const readings = [
    ...(acts('out')({ ...out, ...part }, frame)?.readings ?? []),
    ...(acts('in')({ ...into, ...part }, frame)?.readings ?? []),
  ];
  return settings(readings, 2);
};

const fanInAndOut: Means = (tags, frame) => {
  const pair = pairOf('fan', tags, frame);
  const words = frame.wordsOf(frame.span);
  return pair && { ...pair, work: [{ did: 'adjust', part: 'fanControl', words }] };
};

/**
 * Common practice: low-pressure controls are set below 90 psi and high-pressure ones above 120. What lies between,
 * and what carbon dioxide's are set to, is asked about.
 */
const LOW_BELOW = { value: 90, unit: 'psi' } as const;
const HIGH_ABOVE = { value: 120, unit: 'psi' } as const;

function controlBySetting(tags: Tags, { context }: Frame): QuantityId | null {
  const found = measured('headPressure', amountIn(tags), context.units);
  if (found?.value === undefined || found.unit === null || context.refrigerant === 'R-744')
    return null;
  const setAt = { value: found.value, unit: found.unit };
  if (liesAbove(LOW_BELOW, setAt)) return 'lowCutoutPressure';
  return liesAbove(setAt, HIGH_ABOVE) ? 'highCutoutPressure' : null;
}

const CONTROLS: Partial<Record<PartId, QuantityId>> = {
  highPressureSwitch: 'highCutoutPressure',
  lowPressureSwitch: 'lowCutoutPressure',
};

/** A fan's control or the low side's, told from where it opens. */
const namedOutAndIn: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (isCycled(part)) return actsOutAndIn(tags, frame);
  return part === 'lowPressureSwitch' ? inAndOut(tags, frame) : null;
};

/** The setting of the control that was named; of nothing that was named, of the only one that can be set to it. */
export function settingByKind(tags: Tags, part: PartId | null, frame: Frame): Meaning | null {
  const control = part === null ? controlBySetting(tags, frame) : (CONTROLS[part] ?? null);
  return control === null ? null : one(control)(tags, frame);
}

/** Of which control is told by what was spoken of before, or by what only one of them can be set to. */
const outOfLast: Means = (tags, frame) => {
  const { lastPart, lastPlace, lastQuantity } = frame.context;
  const last = [lastPart, lastPlace, lastQuantity];
  if (last.includes('lowPressureSwitch') || last.includes('lowCutinPressure')) {
    return one('lowCutoutPressure')(tags, frame);
  }
  if (last.includes('highPressureSwitch')) return one('highCutoutPressure')(tags, frame);
  return settingByKind(tags, null, frame);
};

const ACTS = '((cuts|cut|kicks|kicked|is cutting|goes|went|shuts|shut) (out|off))';
const LOW = '(low pressure (switch|control)|low side|low pressure|low|suction (switch|control))';
const HIGH =
  '(high pressure (switch|control)|high side|high pressure|high|head pressure (switch|control))';
const STAMPED =
  '(is (stamped|marked|labeled|labelled|printed)|says|stamped|marked) [(at|for|with)]';
const IN =
  '([set to] (cuts in|cut in|cutting in|cuts back in|cut back in|came back in|kicked back in|comes back in)|cut in is|cut in is set|set (at|for) [a] cut in [of])';
const OUT = '(cuts out|cutting out|cut out is|cut out is set|set to cut out)';
/** What it does each time; "kicked out" tells of once. */
const OPENS =
  '((kicks|drops|shuts|cycles|turns|goes|trips) (out|off)|kicking (out|off)|opens|trips|breaks)';
const BACK = '[it] [(cuts|cut|come|comes|kick|kicks|cycles|is|goes|picks|right|then|closes|makes)]';
const GOES_OUT =
  '([(set|~~supposed|~~meant) to] (cut|cuts|cutting|kick|kicks|drop|drops|go|goes|shut|shuts|cycle|cycles|turn|turns|~~kicked|~~dropped|~~went|~~shut|~~cycled|~~turned) [~~(it|the fan|the fans)] (out|off)|[(set|~~supposed|~~meant) to] (open|opens|trip|trips|~~opened))';
const SET_OUT = '(set to (cut|kick|drop|go|shut|cycle|turn|open|trip) [(out|off)])';
const COMES_IN =
  '[(set|~~supposed|~~meant) to] (cut|cuts|cutting|kick|kicks|come|comes|cycle|cycles|turn|turns|~~kicked|~~came|~~cycled|~~turned|~~bring|~~brings|~~brought) [~~(it|the fan|the fans)] [back] (in|on)';
/** Which control it is, told behind the values. */
const ON_IT = '[(on|for|of) <the> <part>]';

/** "High side says two forty": a gauge does, where no control is named. */
const stamped =
  (quantity: 'lowCutoutPressure' | 'highCutoutPressure'): Means =>
  (tags, frame) =>
    /\bsays\b/i.test(frame.wordsOf(frame.span)) && !NAMES_CONTROL.test(frame.wordsOf(frame.span))
      ? null
      : one(quantity)(tags, frame);
const NAMES_LOW = /\b(?:low|suction)\b/i;
const NAMES_CONTROL = /\b(?:switch|control)\b/i;

const SET = '(set|adjusted|changed|turned|dialed|cranked|moved)';
const SETTING =
  '(setting|adjusting|turning|dialing|cranking|moving|brought|bringing|dropped|dropping|lowered|lowering|raised|raising|took|taking|bumped|bumping|put|putting|reset)';
const MAKES = '(close|make|closing|[to] cut in|come [back] on|kick [back] on)';
const BREAKS = '(open|break|opening|[to] cut out|go off|kick off|drop out)';

/** "Brought the cut-out down to five": of the control that was spoken of, else of the one that can be set so. */
const adjustedTo =
  (which: 'in' | 'out'): Means =>
  (tags, frame) => {
    const ofFan = isCycled(frame.context.lastPart);
    const means = ofFan ? acts(which) : which === 'in' ? one('lowCutinPressure') : outOfLast;
    const told = means(ofFan ? { ...tags, part: 'fanControl' } : tags, frame);
    const [set] = told?.readings ?? [];
    const part = set === undefined ? undefined : CONTROL_OF[set.quantity];
    return part === undefined
      ? told
      : { ...told, work: [{ did: 'adjust', part, words: frame.wordsOf(frame.span) }] };
  };

/** What is set by each. */
export const CONTROL_OF: Partial<Record<QuantityId, PartId>> = {
  highCutoutPressure: 'highPressureSwitch',
  lowCutoutPressure: 'lowPressureSwitch',
  lowCutinPressure: 'lowPressureSwitch',
  fanCutinPressure: 'fanControl',
  fanCutoutPressure: 'fanControl',
  setpointTemp: 'temperatureControl',
};

/** "Set the high pressure to three eighty": no gauge reads so, its control does. */
const setBy =
  (part: 'lowPressureSwitch' | 'highPressureSwitch'): Means =>
  (tags, frame) => {
    const control = CONTROLS[part];
    const setting = control === undefined ? null : one(control)(tags, frame);
    const words = frame.wordsOf(frame.span);
    return setting && { ...setting, work: [{ did: 'adjust', part, words }] };
  };

/** "Cut out on high pressure at three ninety five": the machine did; "the cut out on the high" is set so. */
const cutOutOn: Means = (tags, frame) =>
  /^cut out on high (?:pressure|head)\b(?!.*\b(?:is|set)\b)/i.test(frame.wordsOf(frame.span))
    ? trippedAt({ ...tags, part: 'highPressureSwitch' }, frame)
    : one('highCutoutPressure')(tags, frame);

/** At which pressures the controls act. */
export const CONTROL_RULES: readonly Rule[] = [
  // Asked and answered in one breath: "what's the cutout set at, plate says four hundred".
  rule(
    `[(so|and|let us see)] (what is|where is) [the] [(high pressure|high side|high|head|low pressure|low side|low)] cut out [(set|set (at|for|to)|at|supposed to be)] [<pause>] [(ok|so|the|my|it is|its)] [(plate|nameplate|label|tag|sticker|control|switch|stamp)] [(says|is|reads|shows|is set at|is stamped|stamped)] <amount>`,
    (tags, frame) =>
      (NAMES_LOW.test(frame.wordsOf(frame.span)) ? one('lowCutoutPressure') : outOfLast)(
        tags,
        frame,
      ),
    { unheard: true, examples: ['what is the cut out set at plate says four hundred'] },
  ),
  rule(
    `<the> (thermostat|stat|temperature control|temp control|cold control) ${ACTS} at <amount> [[<pause>] [(and|but|then)] [(cuts|cut|kicks|kicked|comes|came|goes|went)] [back] (in|on) at <amount:other>]`,
    // It cuts out by how warm it is, and no setting of ours is of that.
    (_tags, frame) => ({ remarks: [frame.wordsOf(frame.span)] }),
    { unheard: true, examples: ['stat cuts out at thirty four and back in at forty'] },
  ),
  rule(
    `[(i|we)] ${SET} [the] [(${LOW}|control|switch)] cut in [(to|at|for|up to|down to)] <amount:in> [<pause>] [and] [the] cut out [(to|at|for|is|up to|down to)] <amount:out> ${ON_IT}`,
    inAndOut,
    {
      unheard: true,
      examples: ['dialed the low pressure cut in to twenty five and the cut out to ten'],
    },
  ),
  rule(
    `[(i|we)] ${SET} [the] [(${LOW}|control|switch)] cut out [(to|at|for|up to|down to)] <amount:out> [<pause>] [and] [the] cut in [(to|at|for|is|up to|down to)] <amount:in> ${ON_IT}`,
    inAndOut,
    { unheard: true, examples: ['set the cut out at ten and the cut in at thirty'] },
  ),
  rule(
    `[(i|we)] (set|adjusted|put|reset|changed) [the] [condenser] [fan] (fan|fan cycling|fan cycle|fan pressure) (control|switch) (to|for|at) [cut] (in|on) [at] <amount:in> [and] [(cut|to cut)] (out|off) [at] <amount:out>`,
    fanInAndOut,
    { examples: ['set the fan control to cut in at one ninety and out at one fifty'] },
  ),
  rule(
    `[(i|we)] (set|adjusted|put|reset|changed) it (to|for|at) [cut] (in|on) [at] <amount:in> [and] [(cut|to cut)] (out|off) [at] <amount:out>`,
    inAndOut,
    { examples: ['set it to cut in at one ninety and out at one fifty'] },
  ),
  rule(
    `[(i|we|and)] [have] [(it|is|it is|got it)] ${SET} [it] (to|for|at) (${MAKES} [at] <amount:in> [<pause>] [and] [(to|for)] ${BREAKS} [at] <amount:out>|${BREAKS} [at] <amount:out> [<pause>] [and] [(to|for)] ${MAKES} [at] <amount:in>)`,
    inAndOut,
    { unheard: true, examples: ['set it for close at thirty and open at ten'] },
  ),
  rule(
    `[(i|we)] [(am|have|just)] (${SET}|${SETTING}) [the] [${LOW}] cut out [(pressure|setting)] [(down|up|back|back down|back up)] to <amount>`,
    adjustedTo('out'),
    { unheard: true, examples: ['brought the cut out down to five'] },
  ),
  rule(
    `[(i|we)] [(am|have|just)] (${SET}|${SETTING}) [the] [${LOW}] cut in [(pressure|setting)] [(down|up|back|back down|back up)] to <amount>`,
    adjustedTo('in'),
    { unheard: true, examples: ['brought the cut in down to twenty'] },
  ),
  rule(
    `[the] [(it|${LOW}|control|switch)] [is] ${IN} [(at|of)] <amount:in> [and] [it] [(cuts|cut)] [back] out [is] [at] <amount:out> ${ON_IT}`,
    inAndOut,
    { examples: ['cuts in at thirty and cuts out at ten'] },
  ),
  rule(
    `[the] [(it|${LOW}|control|switch)] [is] ${OUT} [(at|of)] <amount:out> [and] [it] [(cuts|cut)] [back] in [is] [at] <amount:in> ${ON_IT}`,
    inAndOut,
    { examples: ['cuts out at ten and back in at thirty'] },
  ),
  rule(
    `[the] [(it|she|${LOW}|control|switch)] [(is|set to)] (${OUT}|${OPENS}|${SET_OUT}) [(at|of)] <amount:out> [<pause>] [(and|then)] ${BACK} (back [(in|on|up)]|(closes|makes) [back]) [at] <amount:in> ${ON_IT}`,
    inAndOut,
    { unheard: true, examples: ['kicks off at eight back on at thirty'] },
  ),
  rule(
    `<the> <part> [is] (${GOES_OUT}|${OPENS}) [at] <amount:out> [<pause>] [(and|then)] (${BACK} back (in|on)|(closes|makes|comes on|cuts in|kicks on|came on|came in|came back in|came back on|came back|kicked on|kicked back on|closed|made|on) [back]) [at] <amount:in>`,
    namedOutAndIn,
    { unheard: true, examples: ['fan cycle switch opens at one fifty closes at two ten'] },
  ),
  rule(
    `[(i|we)] ${SET} [the] ${LOW} [(up|down|back)] (to|at|for) <amount>`,
    setBy('lowPressureSwitch'),
    {
      examples: ['set the low pressure to ten'],
    },
  ),
  rule(
    `[(i|we)] ${SET} [the] ${HIGH} [(up|down|back)] (to|at|for) <amount>`,
    setBy('highPressureSwitch'),
    {
      examples: ['set the high pressure to three eighty'],
    },
  ),
  rule(`[the] ${LOW} ${STAMPED} <amount>`, stamped('lowCutoutPressure'), {
    examples: ['low pressure control is stamped ten'],
  }),
  rule(`[the] ${HIGH} ${STAMPED} <amount>`, stamped('highCutoutPressure'), {
    examples: ['high pressure switch is stamped four hundred'],
  }),
  rule(
    `([the] (switch|control|pressure control|pressure switch|cut out) (is (stamped|marked|labeled|labelled|printed)|stamped) [(at|for|with)] <amount>|it (says|reads) <amount> on the (switch|control|cut out))`,
    outOfLast,
    { examples: ['switch is stamped four hundred', 'it says four hundred on the switch'] },
  ),
  rule(`[the] ${LOW} [is] ${IN} at <amount>`, one('lowCutinPressure'), {
    examples: ['low side cuts in at thirty'],
  }),
  rule(`[it] [is] ${IN} at <amount>`, acts('in'), { examples: ['it cuts in at thirty'] }),
  rule(`<the> <part> [is] ${COMES_IN} (at|on) <amount>`, fanAlone('in'), {
    examples: ['condenser fan cuts in at two twenty'],
  }),
  rule(`<the> <part> [is] ${GOES_OUT} at <amount>`, fanAlone('out'), {
    examples: ['fan cycling control is cutting out at one fifty five'],
  }),
  rule(
    `<the> <part> [is] ${COMES_IN} at <amount:in> [<pause>] [and] [it] ${GOES_OUT} [at] <amount:out>`,
    (tags, frame) => (isCycled(partId(tags['part'])) ? actsOutAndIn(tags, frame) : null),
    { examples: ['condenser fan is set to come on at two forty and go off at one seventy'] },
  ),
  rule(`<amount> (is|was) (where|what) [(it|<the> <part>)] [is] ${GOES_OUT} [at]`, acts('out'), {
    examples: ['three ninety five is where the high pressure switch is set to open'],
  }),
  rule(`<amount> (is|was) (where|what) [(it|<the> <part>)] [is] ${COMES_IN} [at]`, acts('in'), {
    examples: ['twenty eight is where the low pressure control cuts in'],
  }),
  rule(
    `<amount:out> (is|was) where [(it|<the> <part>)] [is] ${GOES_OUT} [at] [<pause>] and <amount:in> [is] where it (${COMES_IN}|comes back) [at]`,
    actsOutAndIn,
    { examples: ['one eighty is where the fan drops out and two thirty where it comes back on'] },
  ),
  rule('<amount> (is|was) the cut in (on|for|of) <the> <part>', acts('in'), {
    examples: ['twenty eight pounds is the cut in on the low pressure switch'],
  }),
  rule('<amount> (is|was) the cut out (on|for|of) <the> <part>', acts('out'), {
    examples: ['four hundred is the cut out on the high pressure switch'],
  }),
  rule(`[the] ${LOW} [is] (${OUT}|set to open|${OPENS}) at <amount>`, one('lowCutoutPressure'), {
    examples: ['low side cuts out at ten'],
  }),
  rule(`[the] ${LOW} [is] ${SET_OUT} (at|on) <amount>`, one('lowCutoutPressure'), {
    unheard: true,
    examples: ['low side is set to kick off at ten'],
  }),
  rule(`[the] ${HIGH} [is] ${SET_OUT} (at|on) <amount>`, one('highCutoutPressure'), {
    unheard: true,
    examples: ['high side is set to kick off at four hundred'],
  }),
  rule(
    `[the] cut out [(on|for) [the] ${LOW}] (is [set] [(at|for|to)]|set (at|for|to)) <amount>`,
    (tags, frame) =>
      (NAMES_LOW.test(frame.wordsOf(frame.span)) ? one('lowCutoutPressure') : outOfLast)(
        tags,
        frame,
      ),
    { unheard: true, examples: ['cut out is set for four hundred'] },
  ),
  rule(`[the] cut out (on|for) [the] ${HIGH} [(is|set|is set)] [(at|for|to)] <amount>`, cutOutOn, {
    unheard: true,
    examples: ['cut out on the high is set for four hundred'],
  }),
  rule(
    `[the] cut in (on|for) [the] ${LOW} [(is|set|is set)] [(at|for|to)] <amount>`,
    one('lowCutinPressure'),
    { unheard: true, examples: ['cut in on the low is twenty two'] },
  ),
  rule(`[the] ${HIGH} [is] (${OUT}|set to open|${OPENS}) at <amount>`, one('highCutoutPressure'), {
    examples: ['high pressure switch cuts out at three eighty'],
  }),
  rule(
    `[the] ([(it|switch|control|pressure control|pressure switch)] [is] ${OUT} at|cut out is) <amount>`,
    outOfLast,
    {
      examples: ['it cuts out at three eighty'],
    },
  ),
];
