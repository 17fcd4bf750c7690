import type { Tags } from '../../grammar/nodes.ts';
import { isNominalVoltage } from '../numbers/nominal-voltages.ts';
import { amountIn } from '../numbers/measure.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, tagsIn } from '../slots.ts';
import type { Fact } from '../utterance.ts';
import { startsClause } from '../words/clause-start.ts';
import { clippedOunces } from '../numbers/clipped-weight.ts';
import { chargeWithoutUnit, nameplate } from './facts.ts';
import { OF_PLATE, PLATE, platedEach, refrigerantAndCharge, SAYS } from './plate-facts.ts';

/** Each that was told; a bare figure before "phase" is its supply. */
const told = (tags: Tags, frame: Frame): readonly Tags[] =>
  [tags, tagsIn(tags['second']), tagsIn(tags['third'])]
    .filter((each) => each !== null)
    .map((each) => (isBareSupply(each, frame) ? { ...each, phase: true } : each));
const isBareSupply = (tags: Tags, frame: Frame): boolean => {
  const { unit, value } = amountIn(tags);
  const isPhased = /\bphase$/i.test(frame.wordsOf(frame.span));
  return isPhased && unit === null && value !== null && isNominalVoltage(value);
};

/** All that a plate tells, each thing once: "three pounds two ounces" is one weight. */
function eachOnce(all: readonly Tags[], frame: Frame): readonly Fact[] | null {
  const [first, second, third] = all;
  const facts = platedEach({ ...first, ...(second && { second }), ...(third && { third }) }, frame);
  const items = facts?.facts?.map((fact) => (fact.fact === 'nameplate' ? fact.item : fact.fact));
  return new Set(items).size === all.length ? (facts?.facts ?? null) : null;
}

const isWeight = (tags: Tags): boolean => {
  const { unit } = amountIn(tags);
  return unit === 'pounds' || unit === 'oz' || unit === 'kg' || unit === 'g';
};
const isSupply = (tags: Tags): boolean => {
  const { unit, value } = amountIn(tags);
  const isVolts = unit === 'V' || (unit === null && tags['phase'] === true);
  return isVolts && value !== null && isNominalVoltage(value);
};

/** "It says eight pounds and two thirty volts": no instrument shows a weight and a supply. */
const weightBesideSupply: Means = (tags, frame) => {
  const all = told(tags, frame);
  const facts = all.some(isWeight) && all.some(isSupply) ? eachOnce(all, frame) : null;
  return facts && { facts };
};

/** Nor a refrigerant: "it says four oh four a, eight pounds, two thirty volts". */
const gasAndMore: Means = (tags, frame) => {
  const gas = refrigerantAndCharge(tags, frame)?.facts?.filter(
    ({ fact }) => fact === 'refrigerant',
  );
  const facts = eachOnce(told(tags, frame), frame);
  return gas === undefined || facts === null ? null : { facts: [...gas, ...facts] };
};

/** "Six ten on the plate": six pounds ten, where no supply and nothing else that a plate says is told so. */
const clippedCharge: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const isClipped =
    unit === null && value !== null && clippedOunces(value, frame.wordsOf(frame.span)) !== null;
  return isClipped && Number.isInteger(value) && !isNominalVoltage(value)
    ? chargeWithoutUnit(tags, frame)
    : null;
};

/** "Design two fifty": of which side nobody says, and it is kept as it was read out. */
const designOfOne: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const isPressure = unit === null || unit === 'pounds' || unit === 'psi' || unit === 'bar';
  const stands = startsClause(frame) && frame.endsAtPause;
  return isPressure && value !== null && stands ? { remarks: [frame.wordsOf(frame.span)] } : null;
};

/** "…, volts two oh eight, amps seven": behind a plate, which told neither before. */
const behindPlate =
  (item: 'voltage' | 'ratedLoadAmps'): Means =>
  (tags, frame): Meaning | null => {
    const before = frame.wordsOf({ from: 0, to: frame.span.from });
    const isTold = (item === 'voltage' ? /\bvolt/i : /\bamp/i).test(before);
    return OF_PLATE.test(before) && !isTold && endsThere(frame)
      ? nameplate(item)(tags, frame)
      : null;
  };
const endsThere = (frame: Frame): boolean => frame.endsAtPause;

/** "One fifteen, six amps", right behind what the plate said of something else. */
const nextOnPlate: Means = (tags, frame) => {
  const voltage = numberIn(tagsIn(tags['one'])?.['number']);
  const { unit } = amountIn(tags);
  if (voltage === null || unit !== 'A') return null;
  const amps = nameplate('ratedLoadAmps')(tags, frame)?.facts ?? [];
  const words = frame.wordsOf(frame.span);
  return {
    facts: [{ fact: 'nameplate', item: 'voltage', value: voltage, unit: 'V', words }, ...amps],
  };
};
/** "Voltage two oh eight single phase": no meter tells of phases, and a nominal voltage is what is printed. */
const suppliedAt: Means = (tags, frame) => {
  const value = numberIn(tagsIn(tags['one'])?.['number']);
  const words = frame.wordsOf(frame.span);
  return value === null || frame.context.workBegun
    ? null
    : { facts: [{ fact: 'nameplate', item: 'voltage', value, unit: 'V', words }] };
};
const isBehindPlate = ({ context: { told, workBegun, lastQuantity } }: Frame): boolean => {
  const last = told[0]?.told;
  return (
    last?.of === 'fact' && last.fact.fact === 'nameplate' && !workBegun && lastQuantity === null
  );
};

const CHARGED = '(full|total|factory|nameplate|plate|tag|system|rated)';
const IT = '(it|this|this one|~(sticker|label|tag) [on] [the] (door|back|side|inside))';
const AND = '[<pause>] [(and|with|at)]';
const PHASE = '[[<pause>] (single|three|one) phase]';

/** What is read out from a plate in one breath, whatever it is called. */
export const PLATE_READ_OUT_RULES: readonly Rule[] = [
  rule(
    `[the] (${PLATE}|${IT}) ${SAYS} [here] <refrigerant> ${AND} <amount> ${AND} <amount:second> [${AND} <amount:third>] ${PHASE}`,
    gasAndMore,
    { unheard: true, examples: ['it says four oh four a eight pounds two thirty volts'] },
  ),
  rule(
    `<refrigerant> (it says|says|is what it says) [(here|(on|right on) (the|this) (plate|nameplate|tag|label|sticker))] ${AND} <amount>`,
    gasAndMore,
    { unheard: true, examples: ['four oh four a it says on the plate nineteen ounces'] },
  ),
  rule(
    `[${IT}] (says|reads|lists|shows) [here] <amount> ${AND} <amount:second> [${AND} <amount:third>] ${PHASE}`,
    weightBesideSupply,
    {
      unheard: true,
      only: startsClause,
      examples: ['it says eight pounds and two thirty volts'],
    },
  ),
  rule(
    `[the] [(${PLATE}|${IT}) (says|shows|reads|has|lists)] [the] [nameplate] design [pressure] [(is|of|at|says)] <amount>`,
    designOfOne,
    { unheard: true, examples: ['plate says design two fifty'] },
  ),
  rule(
    `[[the] (${PLATE}|${IT}) ${SAYS}] [the] [~~a] ${CHARGED} charge [(is|of|at|says)] <amount>`,
    chargeWithoutUnit,
    { unheard: true, alone: true, examples: ['factory charge one ten'] },
  ),
  rule(
    `([the] ${PLATE} [(says|is|calls for|has)] [charge] <amount>|[it is] <amount> [(is what is|it says)] (on|per|by|off) [the] ${PLATE}|it (takes|holds) <amount>)`,
    clippedCharge,
    { unheard: true, alone: true, examples: ['six ten on the plate'] },
  ),
  rule(`<nominal:one> [(volt|volts)] ${PHASE} ${AND} <amount>`, nextOnPlate, {
    unheard: true,
    alone: true,
    only: isBehindPlate,
    examples: [],
  }),
  rule('(voltage|volts) [is] <nominal:one> [(volt|volts)] (single|three|one) phase', suppliedAt, {
    unheard: true,
    apart: true,
    examples: ['voltage two oh eight single phase'],
  }),
  rule('<pause> [and] (volts|voltage) <amount>', behindPlate('voltage'), {
    unheard: true,
    examples: [],
  }),
  rule('<pause> [and] (amps|amperage) <amount>', behindPlate('ratedLoadAmps'), {
    unheard: true,
    examples: [],
  }),
];
