import type { Tags } from '../grammar/nodes.ts';
import type { PartId } from '../terms/names.ts';
import type { QuantityId } from '../terms/quantities.ts';
import { amountIn, measured, readingOf } from './measure.ts';
import { liesAbove } from './plausible.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from './rule.ts';
import { tagsIn } from './slots.ts';
import type { Reading } from './utterance.ts';

/** A setting is a pressure: degrees are a thermostat's, and not ours to keep as one. */
function setting(quantity: QuantityId, amount: Tags | null, frame: Frame): readonly Reading[] {
  const found =
    amount === null ? null : readingOf(quantity, amountIn(amount), { place: null, frame });
  return found === null ? [] : [found];
}

const settings = (readings: readonly Reading[], expected: number): ReturnType<Means> =>
  readings.length === expected ? { readings } : null;

const one =
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

/** What cuts in as well as out is the low side's control, unless the condenser fan's was spoken of. */
const inAndOut: Means = (tags, frame) => {
  const low = pairOf('low', tags, frame);
  if (low === null) return null;
  const ofFan = (part: PartId): Meaning | null =>
    part === 'fanControl' ? pairOf('fan', tags, frame) : null;
  return { ofIt: { means: ofFan, inSentence: false, otherwise: low } };
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

const LOW = '(low pressure (switch|control)|low side|low pressure|low|suction (switch|control))';
const HIGH =
  '(high pressure (switch|control)|high side|high pressure|high|head pressure (switch|control))';
const STAMPED =
  '(is (stamped|marked|labeled|labelled|printed)|says|stamped|marked) [(at|for|with)]';
const IN =
  '([set to] (cuts in|cut in|cutting in|cuts back in|cut back in|came back in|kicked back in|comes back in)|cut in is|cut in is set|set (at|for) [a] cut in [of])';
const OUT = '(cuts out|cutting out|cut out is|cut out is set|set to cut out)';

/** "High side says two forty": a gauge does, where no control is named. */
const stamped =
  (quantity: 'lowCutoutPressure' | 'highCutoutPressure'): Means =>
  (tags, frame) =>
    /\bsays\b/i.test(frame.wordsOf(frame.span)) && !NAMES_CONTROL.test(frame.wordsOf(frame.span))
      ? null
      : one(quantity)(tags, frame);
const NAMES_CONTROL = /\b(?:switch|control)\b/i;

const SET = '(set|adjusted|changed|turned|dialed|cranked|moved)';

/** "Set the high pressure to three eighty": no gauge reads so, its control does. */
const setBy =
  (part: 'lowPressureSwitch' | 'highPressureSwitch'): Means =>
  (tags, frame) => {
    const control = CONTROLS[part];
    const setting = control === undefined ? null : one(control)(tags, frame);
    const words = frame.wordsOf(frame.span);
    return setting && { ...setting, work: [{ did: 'adjust', part, words }] };
  };

/** At which pressures the controls act. */
export const CONTROL_RULES: readonly Rule[] = [
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
    `[the] [(it|${LOW}|control|switch)] [is] ${IN} [(at|of)] <amount:in> [and] [it] [(cuts|cut)] [back] out [is] [at] <amount:out>`,
    inAndOut,
    { examples: ['cuts in at thirty and cuts out at ten'] },
  ),
  rule(
    `[the] [(it|${LOW}|control|switch)] [is] ${OUT} [(at|of)] <amount:out> [and] [it] [(cuts|cut)] [back] in [is] [at] <amount:in>`,
    inAndOut,
    { examples: ['cuts out at ten and back in at thirty'] },
  ),
  rule(
    `([the] ${LOW} [(is|was)] (set|cuts) [(at|for|to)]|[(i|we)] (set|adjusted|reset|changed) [the] ${LOW} (at|for|to)) (<amount:in> in [and] [(at|set at)] <amount:out> out|<amount:out> out [and] [(at|set at)] <amount:in> in)`,
    inAndOut,
    {
      examples: [
        'low side is set at twenty in five out',
        'set the low pressure for five out twenty five in',
      ],
    },
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
  rule(`[the] [(it|${LOW})] [is] ${IN} at <amount>`, one('lowCutinPressure'), {
    examples: ['it cuts in at thirty'],
  }),
  rule(`[the] ${LOW} [is] ${OUT} at <amount>`, one('lowCutoutPressure'), {
    examples: ['low side cuts out at ten'],
  }),
  rule(`[the] ${HIGH} [is] ${OUT} at <amount>`, one('highCutoutPressure'), {
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
