import { amountIn, unitFor } from '../measure.ts';
import type { Tags } from '../../grammar/nodes.ts';
import { heardRule, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { refrigerantId } from '../slots.ts';
import { ask } from './asking.ts';

/** A saturation is asked by a temperature or by a pressure: without a unit it could be either. */
const saturation: Means = (tags, frame) => {
  const amount = amountIn(tags);
  if (amount.value === null) return null;
  const { units } = frame.context;
  const said = amount.unit ?? (tags['as'] === 'temperature' ? 'degrees' : null);
  const loose = said ?? (tags['as'] === 'pressure' ? (units === 'us' ? 'psi' : 'bar') : null);
  // Forty what? Asked about, rather than the refrigerant alone taken for what the unit runs on.
  if (loose === null) return unclaimedOf(amount.value, tags);
  const unit = unitFor(loose, 'temperature', units) ?? unitFor(loose, 'gaugePressure', units);
  if (unit === null) return null;
  const value = unit === 'inHg' ? 0 - Math.abs(amount.value) : amount.value;
  return ask({ ask: 'saturation', value, unit, refrigerant: refrigerantId(tags['refrigerant']) });
};

const unclaimedOf = (value: number, tags: Tags): Meaning | null =>
  refrigerantId(tags['refrigerant']) === null ? null : { unclaimed: [String(value)] };

const ON = '[(on|~for|~with|~of|~in) [~the] <refrigerant>]';

/** The pressure of a temperature, or the temperature of a pressure. */
export const SATURATION_QUESTIONS: readonly Rule[] = [
  heardRule(`what is <amount> ${ON}`, saturation, {
    examples: ['what is one hundred degrees on two ninety'],
  }),
  rule(`what (pressure|psi) is <amount> ${ON}`, saturation, {
    tags: { as: 'temperature' },
    examples: ['what pressure is one ten on four oh four a'],
  }),
  rule(`what (temperature|temp) is <amount> ${ON}`, saturation, {
    tags: { as: 'pressure' },
    examples: ['what temperature is one forty six'],
  }),
  rule(
    `(what is the|what is|give me the|saturation|the) (saturation|saturation temp|saturated temperature|saturation temperature|saturation pressure|boiling point|pressure|temperature) (at|for|of) <amount> ${ON}`,
    saturation,
    {
      examples: ['what is the saturation temperature for one forty six psi'],
    },
  ),
  rule(
    '(saturation [(temp|temperature|pressure)]|convert|p t for|pt for) [(at|for|of)] <amount> [(on|for|with|of|in) <refrigerant>]',
    saturation,
    { examples: ['saturation at one ten degrees'] },
  ),
  rule(
    '(pt|p t|p t chart|saturation [(temp|temperature|pressure)]|sat (temp|pressure)|pressure|temperature|temp) (for|of|on) <refrigerant> (at|with) <amount>',
    saturation,
    { examples: ['pt for two ninety at thirty degrees'] },
  ),
  rule(
    '(what (pressure|temperature|temp|psi)|where|what) (does|would|will) <refrigerant> (boil|condense|evaporate|saturate|be) [at] [(at|with)] <amount>',
    saturation,
    { examples: ['what pressure does four oh four boil at zero degrees'] },
  ),
  rule('what is <refrigerant> at <amount>', saturation, {
    examples: ['what is four oh four at twenty degrees'],
  }),
  rule('[for] <refrigerant> (at|what is) <amount>', saturation, {
    examples: ['two ninety at one hundred degrees'],
    alone: true,
  }),
  rule(
    '(what is the|what is|give me the|the) (saturation|saturation temp|saturation temperature|saturation pressure|boiling point) (for|of|on) <refrigerant> at <amount>',
    saturation,
    { examples: ['what is the saturation temperature for 404a at 50 psi'] },
  ),
];
