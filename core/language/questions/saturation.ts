import { wordBehind } from '../words/clause-start.ts';
import { amountIn, unitFor } from '../numbers/measure.ts';
import type { Tags } from '../../grammar/nodes.ts';
import { SHOWN_UNITS } from '../../units/shown-unit.ts';
import { heardRule, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { refrigerantId } from '../slots.ts';
import { ask } from './asking.ts';

/** A saturation is asked by a temperature or by a pressure: without a unit it could be either, above zero. */
const saturation: Means = (tags, frame) => {
  const amount = amountIn(tags);
  if (amount.value === null) return null;
  const { units } = frame.context;
  const words = frame.wordsOf(frame.span);
  // Common practice: saturation asked of a refrigerant by a bare figure is the temperature of a pressure.
  const isOfGas = tags['refrigerant'] !== undefined && SATURATION_FOR.test(words);
  const as = tags['as'] ?? asWorded(words) ?? (isOfGas ? 'pressure' : null);
  const isTemperature = as === 'temperature' || amount.value < 0;
  const said = amount.unit ?? (isTemperature ? 'degrees' : null);
  const loose = said ?? (as === 'pressure' ? SHOWN_UNITS[units].gaugePressure : null);
  // Forty what? Asked about, rather than the refrigerant alone taken for what the unit runs on.
  if (loose === null) return unclaimedOf(amount.value, tags);
  const unit = unitFor(loose, 'temperature', units) ?? unitFor(loose, 'gaugePressure', units);
  if (unit === null) return null;
  const value = unit === 'inHg' ? 0 - Math.abs(amount.value) : amount.value;
  return ask({ ask: 'saturation', value, unit, refrigerant: refrigerantId(tags['refrigerant']) });
};

/** Asked for a pressure, the number is a temperature, and the other way about. */
function asWorded(words: string): 'temperature' | 'pressure' | null {
  const asksPressure = /\b(?:pressure|psi)\b/i.test(words);
  const asksTemperature = /\btemp/i.test(words);
  if (asksPressure === asksTemperature) return null;
  return asksPressure ? 'temperature' : 'pressure';
}

const SATURATION_FOR = /\bsaturat(?:ion|ed) (?:for|at|of)\b/i;

const unclaimedOf = (value: number, tags: Tags): Meaning | null =>
  refrigerantId(tags['refrigerant']) === null ? null : { unclaimed: [String(value)] };

const ON = '[(on|~for|~with|~of|~in) [~the] <refrigerant>]';
/** What it is asked as. */
const AS =
  '((in|as|for) [a] (pressure|psi|pounds|temp|temperature|degrees|saturation)|(come|work) [out] (to|at))';

/** "How many degrees is fifteen pounds": what is counted is what it is asked as. */
const ofHowMany: Means = (tags, frame) => {
  const isOfPressure = /^how many degrees/i.test(frame.wordsOf(frame.span));
  return saturation({ ...tags, as: isOfPressure ? 'pressure' : 'temperature' }, frame);
};

/** "Is what in degrees": what it is asked as is the other of the two. */
const byCounted: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  if (/\b(?:degrees|temp\w*)$/i.test(words)) return saturation({ ...tags, as: 'pressure' }, frame);
  const isOfCold = /\b(?:pounds|psi|pressure)$/i.test(words);
  return saturation(isOfCold ? { ...tags, as: 'temperature' } : tags, frame);
};

/** What is looked up the other way: cold is never a pressure, and a bare figure that is looked up by "where" is one. */
const whereTo: Means = (tags, frame) => saturation({ as: 'pressure', ...tags }, frame);

/** The pressure of a temperature, or the temperature of a pressure. */
export const SATURATION_QUESTIONS: readonly Rule[] = [
  heardRule(`what is <amount> ${ON}`, saturation, {
    examples: ['what is one hundred degrees on two ninety'],
  }),
  rule(`what (is|does|would) <amount> ${ON} [be] ${AS} ${ON}`, saturation, {
    unheard: true,
    examples: ['what is fifteen pounds in degrees'],
  }),
  rule(
    `(what would <amount> ${ON} be|what [(temp|temperature|pressure|psi|saturation)] <amount> ${ON} (is|comes [out] to|works out to|would be|equals) [${AS}]|what (temp|temperature|pressure|psi|saturation) (do|should|would|will) (i|we|it) (want|need|have|get|be at|see) (for|at|with) <amount>|what saturation is <amount>|(look up|give me the (temp|temperature|saturation) (for|at|of)) <amount>) ${ON}`,
    saturation,
    { unheard: true, examples: ['what would fifteen psi be', 'what temp fifteen psi is'] },
  ),
  rule(`<amount> ${ON} in (psi|pressure|pounds) ${ON}`, saturation, {
    alone: true,
    unheard: true,
    tags: { as: 'temperature' },
    examples: ['forty degrees in psi'],
  }),
  rule(`<amount> ${ON} (in|to) (degrees|temperature|a temperature) ${ON}`, saturation, {
    alone: true,
    unheard: true,
    tags: { as: 'pressure' },
    examples: ['fifteen pounds in degrees'],
  }),
  rule(
    `how many (degrees|pounds|psi) (is|does|are|would) <amount> ${ON} [(be|make|give me|come to|come out to)] ${ON}`,
    ofHowMany,
    { unheard: true, examples: ['how many psi is forty degrees'] },
  ),
  rule(
    `what (pressure|psi|temperature|temp) (does|would|will|do i get (at|from|for|out of)|am i at (at|with)|goes with|is that at) <amount> ${ON} [(come|work) [out]] [(be|to|at|give me|make)] ${ON}`,
    saturation,
    { unheard: true, examples: ['what temp does twelve psi come out to'] },
  ),
  rule(
    `(where|what) (is|does|would|do|will) <amount> ${ON} [(be|put (me|us|it))] ((p t|pt|chart|saturate|convert|cross) [(over|out)] (to|at|out)|(p t|pt|saturate)|come in on the [(p t|pt)] chart|land on the [(p t|pt)] chart|fall on the [(p t|pt)] chart) ${ON}`,
    whereTo,
    { unheard: true, examples: ['where does two ninety p t to on four forty eight'] },
  ),
  rule(`what (pressure|psi) is <amount> ${ON}`, saturation, {
    tags: { as: 'temperature' },
    examples: ['what pressure is one ten on four oh four a'],
  }),
  rule(`what (temperature|temp) is <amount> ${ON}`, saturation, {
    tags: { as: 'pressure' },
    examples: ['what temperature is one forty six'],
  }),
  rule(
    `(what is the|what is|give me the|saturation|the) (saturation|saturated|saturation temp|saturated temperature|~(saturated|sat) (temp|pressure)|~sat|saturation temperature|saturation pressure|boiling point|pressure|temperature) (at|for|of) <amount> ${ON}`,
    saturation,
    {
      examples: ['what is the saturation temperature for one forty six psi'],
    },
  ),
  rule(
    `[(what is|give me)] [the] (saturation [(temp|temperature|pressure)]|convert|p t|pt) [(at|for|of|on)] <amount> [(on|for|with|of|in) <refrigerant>]`,
    saturation,
    { examples: ['saturation at one ten degrees'] },
  ),
  rule(
    '(pt|p t|p t chart|saturation [(temp|temperature|pressure)]|sat (temp|pressure)|pressure|temperature|temp) (for|of|on) <refrigerant> (at|with) <amount>',
    saturation,
    { examples: ['pt for two ninety at thirty degrees'] },
  ),
  rule(
    '(what (pressure|temperature|temp|psi)|where|what) (does|would|will|~is|~do|~should) <refrigerant> (boil|condense|evaporate|saturate|be|~boiling|~condensing|~evaporating|~saturating) [(at|~off at|~out at)] [<pause>] [(at|with|~if it is at|~when it is at)] <amount>',
    saturation,
    { examples: ['what pressure does four oh four boil at zero degrees'] },
  ),
  rule(
    `what does <amount> [(condensing|evaporating|degrees condensing|saturated)] (come (to|out to)|equal|work out to|convert to|correspond to|give [me]|translate to) ${ON}`,
    (tags, frame) =>
      /condens|evap|saturat/i.test(frame.wordsOf(frame.span))
        ? saturation({ ...tags, as: 'temperature' }, frame)
        : saturation(tags, frame),
    { examples: ['what does one ten condensing come to on four forty eight'] },
  ),
  rule(`[the] (pressure|psi) (at|for|of) <amount> ${ON}`, saturation, {
    alone: true,
    tags: { as: 'temperature' },
    examples: ['pressure at ninety five degrees'],
  }),
  rule(`[the] (temperature|temp) (at|for|of) <amount> ${ON}`, saturation, {
    alone: true,
    tags: { as: 'pressure' },
    examples: ['temperature at forty psi'],
  }),
  rule(`<amount> ${ON} (is|equals|makes|gives) (what|how much)`, saturation, {
    // "Half a pound is what leaked out" asks nothing.
    only: (frame) =>
      /^(?:|in|at|on|for|degrees?|psi|pounds|temp|temperature)$/.test(wordBehind(frame)),
    examples: ['fifty degrees on r 22 equals what'],
  }),
  rule(
    `<amount> ${ON} ((is|would be) (what|how much|how many) (pressure|psi)|is (what|how much) in (pressure|psi)|what pressure)`,
    saturation,
    {
      tags: { as: 'temperature' },
      examples: ['twenty degrees on one thirty four is what pressure'],
    },
  ),
  rule(
    `<amount> ${ON} ((is|would be) what (temperature|temp)|is (what|how much) in (degrees|temperature)|(is|would be) how many degrees|what (temp|temperature))`,
    saturation,
    { tags: { as: 'pressure' }, examples: ['sixty psi on two ninety is what temperature'] },
  ),
  rule(
    `<amount> ${ON} <pause> what (is|does) (that|it) [(come to|come out to|be)] [(in|as|for) [a] (pressure|psi|temp|temperature|degrees|pounds)] ${ON}`,
    saturation,
    { examples: [] },
  ),
  rule(
    '<refrigerant> at <amount> [(so|and)] (what is (that|it)|what do i get|what should that be|what does that come to|what would that be)',
    saturation,
    { examples: ['four forty eight at ninety five degrees what is that'] },
  ),
  rule('<refrigerant> at <amount> [is] what (pressure|temp|temperature)', saturation, {
    examples: ['four oh four at thirty degrees what pressure'],
  }),
  rule(
    '<refrigerant> at <amount> (is|equals|comes (out to|to)|works out to) (what|how much|how many) [(in|as|for)] [(degrees|temperature|temp|pounds|psi|pressure)]',
    byCounted,
    { unheard: true, examples: ['four oh four at sixty two pounds is what in degrees'] },
  ),
  rule(
    `how (cold|hot|warm|many degrees) (is|does|would|will) <amount> ${ON} [(be|get|run|make (it|that)|come (out)|boil)] ${ON}`,
    saturation,
    {
      unheard: true,
      tags: { as: 'pressure' },
      examples: ['how cold is twenty pounds on four forty eight'],
    },
  ),
  rule('<amount> (is|equals|makes|gives) (what|how much) (on|for|with) <refrigerant>', saturation, {
    unheard: true,
    examples: ['thirty psi equals what on four forty eight'],
  }),
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
