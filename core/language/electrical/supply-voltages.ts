import { remark } from '../plain-means.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { numberIn, tagsIn } from '../slots.ts';
import { wordBefore, wordBehind } from '../words/clause-start.ts';
import type { Fact } from '../utterance.ts';

/** Both voltages that a plate names, the lower one first. */
const bothVoltages: Means = (tags, frame) => {
  const said = [tags['first'], tags['second']].map((each) => numberIn(tagsIn(each)?.['number']));
  const [lower, upper] = said.filter((each) => each !== null).toSorted((one, other) => one - other);
  if (lower === undefined || upper === undefined || lower === upper) return null;
  const plate = { fact: 'nameplate', unit: 'V', words: frame.wordsOf(frame.span) } as const;
  const facts: readonly Fact[] = [
    { ...plate, item: 'voltage', value: lower },
    { ...plate, item: 'upperVoltage', value: upper },
  ];
  return { facts };
};

/** Of three that are run together nobody can tell which two are the unit's: they are asked about one by one. */
const allThree: Means = (tags) => ({
  unclaimed: ['one', 'two', 'three']
    .flatMap((slot) => numberIn(tagsIn(tags[slot])?.['number']) ?? [])
    .map(String),
});

/** "It's a two thirty volt unit"; what it is fed by stays in its words, since nobody metered it. */
const oneVoltage: Means = (tags, frame) => {
  const value = numberIn(tagsIn(tags['one'])?.['number']);
  if (value === null) return null;
  const words = frame.wordsOf(frame.span);
  const facts: readonly Fact[] = [{ fact: 'nameplate', item: 'voltage', value, unit: 'V', words }];
  return tags['two'] === undefined ? { facts } : { facts, remarks: [words] };
};

/** "I've got three phase four sixty" may be metered: kept in its words. */
const printedOrMetered: Means = (tags, frame) =>
  /^(?:got|have|has|reading)$/i.test(wordBefore(frame))
    ? remark(tags, frame)
    : oneVoltage(tags, frame);

const IT_IS =
  '[(it is|this is|this one is|that is|unit is|the unit is|runs on|it runs on|it takes|rated|rated for|it is rated|it is rated for|working on|i am on)] [(a|an)]';
const PHASE = '(single|one|three) phase';
const THING = '(unit|system|machine|power|supply|box|compressor|motor|service|equipment)';
/** What tells that the figures before it are a supply's. */
const SUPPLIED = `((volt|volts) [${PHASE}] [${THING}]|${PHASE} [${THING}]|${THING})`;

/** What a plate's one voltage is told of: a motor's may be metered at it. */
const RUN_BY_IT = '(unit|system|machine|box|equipment)';

/** Plates with two voltages on them. */
export const SUPPLY_VOLTAGE_RULES: readonly Rule[] = [
  rule(`${IT_IS} <voltages> [${SUPPLIED}]`, bothVoltages, {
    alone: true,
    examples: ['two oh eight two thirty'],
  }),
  rule(
    `${IT_IS} ${PHASE} [<pause>] [(and|at)] <joinedVoltages> [(volt|volts)] [${THING}]`,
    bothVoltages,
    {
      unheard: true,
      apart: true,
      examples: ['it is three phase two oh eight two thirty'],
    },
  ),
  rule(`${IT_IS} <joinedVoltages> ${SUPPLIED}`, bothVoltages, {
    examples: ['it is a two oh eight to two thirty volt unit'],
  }),
  rule(
    `[the] (nameplate|plate|tag|data plate|name plate|sticker|label) (is|says|shows|reads|has) <joinedVoltages> [${SUPPLIED}]`,
    bothVoltages,
    { examples: ['plate says two oh eight two thirty'] },
  ),
  rule(
    `[the] (nameplate|plate|tag|data plate|name plate|rated) (voltage|volts) [(is|says|shows|reads)] <joinedVoltages> [${SUPPLIED}]`,
    bothVoltages,
    { unheard: true, examples: ['nameplate voltage is two oh eight two thirty'] },
  ),
  rule(
    `${IT_IS} <nominal:one> (volt [${PHASE}] ${RUN_BY_IT}|${PHASE} ${RUN_BY_IT}|${RUN_BY_IT}) [on (a|an|the|their) <nominal:two> [volt] (supply|circuit|feed|service|panel)]`,
    oneVoltage,
    { unheard: true, alone: true, examples: ['it is a two thirty volt unit'] },
  ),
  rule(
    `(it runs on|it takes|this runs on|this one runs on|unit runs on|the unit runs on|rated|rated for|it is rated|it is rated for) <nominal:one> [(volt|volts)] [${PHASE}]`,
    oneVoltage,
    { unheard: true, alone: true, examples: ['it runs on two thirty'] },
  ),
  rule(`${IT_IS} ${PHASE} [<pause>] [at] <nominal:one> [(volt|volts)]`, printedOrMetered, {
    unheard: true,
    only: (frame) => frame.endsAtPause || /^(?:with|and|on)$/.test(wordBehind(frame)),
    examples: ['three phase four sixty'],
  }),
  rule(`${IT_IS} <nominal:one> <nominal:two> <nominal:three> [${SUPPLIED}]`, allThree, {
    alone: true,
    examples: ['one fifteen two oh eight two thirty'],
  }),
];
